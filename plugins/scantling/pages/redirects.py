"""Small pages at a plan's former addresses that lead to where it stands now.

A static host answers with files alone, so each is a page: it carries on what stood behind the address (the
reader's size, a step) where scripts run, and leads to the page as it is where they do not.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator

from scantling.pages.choices import Choices
from scantling.pages.finished import SideFile
from scantling.pages.html import escape, tag
from scantling.pages.structured import address
from scantling.words import say, spoken

EMBED = "embed"
"""The page for a frame: posts on other sites keep showing the plan."""


def redirects(
    slug: str, title: str, formerly: Iterable[str], sizes: Iterable[str], choices: Choices
) -> Iterator[SideFile]:
    """Yield a page for each address that the plan had.

    Args:
        title: on one line, not escaped.
        formerly: folders in which the plan stood before.
        sizes: what its offered sizes are called in addresses.
    """
    below = ("", *(f"{size}/" for size in sizes if size), f"{EMBED}/")
    for name in formerly:
        for page in below:
            up = "../../" if page else "../"
            whole = address(choices, f"{choices.folder}/{slug}/{page}", near=f"{up}{slug}/{page}")
            path = f"{choices.folder}/{name}/{page}index.html"
            yield SideFile(path, _page(title, f"{up}{slug}/{page}", whole))


def _page(title: str, target: str, whole: str) -> str:
    words = say("This plan has moved: {plan}.", plan=tag("a", escape(title), href=target))
    refresh = tag("meta", http_equiv="refresh", content=f"0; url={target}")
    return (
        f'<!doctype html>\n<html lang="{spoken().code}">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f"<title>{escape(title)}</title>\n{tag('link', rel='canonical', href=whole)}\n"
        f"<script>location.replace({json.dumps(target)} + location.search + location.hash)</script>\n"
        f"<noscript>{refresh}</noscript>\n</head>\n<body>\n<p>{words}</p>\n</body>\n</html>\n"
    )
