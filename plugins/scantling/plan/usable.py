"""Whether a name can be used in a formula."""

from __future__ import annotations

import re

from scantling.formula import FUNCTIONS, KEYWORDS

_NAME = re.compile(r"[^\W\d_]\w*(?: [^\W\d_]\w*)*")


def is_name(name: str) -> bool:
    """Return whether a formula can say `name`: words of letters and digits with single spaces between."""
    return bool(_NAME.fullmatch(name)) and name not in FUNCTIONS and KEYWORDS.isdisjoint(name.split(" "))
