"""The few slips of the theme's own templates that HTML does not allow, mended in the finished page."""

from __future__ import annotations

import re

_SLIPS = (
    (' type="checkbox" id="__drawer" autocomplete="off">', ' type="checkbox" id="__drawer">'),
    (' type="checkbox" id="__search" autocomplete="off">', ' type="checkbox" id="__search">'),
    ('_label" tabindex="">', '_label">'),
)
"""As the theme writes it, and as it may stand: a box completes nothing, and no place in the order is one."""

_TITLE = ('<label class="md-nav__title" for="__toc">', '<label class="md-nav__title">')
"""The title of the list of headings, which opens a drawer only where the page stands in the navigation."""

_NAMED = re.compile(
    r'aria-labelledby="(?P<id>__nav_[\d_]+)_label"'
    r'(?P<more>[^>]*>\s*<label class="md-nav__title") for="(?P=id)">'
)
_MEANT = r'aria-labelledby="\g<id>_title"\g<more> for="\g<id>" id="\g<id>_title">'
"""A part of the navigation with a page of its own is named by a label without words; its title has some."""


def mend(output: str) -> str:
    """Return a finished page without them."""
    for written, meant in _SLIPS:
        output = output.replace(written, meant)
    output = _NAMED.sub(_MEANT, output)
    return output if 'id="__toc"' in output else output.replace(*_TITLE)
