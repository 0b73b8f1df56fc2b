"""The few slips of the theme's own templates that HTML does not allow, mended in the finished page."""

from __future__ import annotations

_SLIPS = (
    (' type="checkbox" id="__drawer" autocomplete="off">', ' type="checkbox" id="__drawer">'),
    (' type="checkbox" id="__search" autocomplete="off">', ' type="checkbox" id="__search">'),
    ('_label" tabindex="">', '_label">'),
)
"""As the theme writes it, and as it may stand: a box completes nothing, and no place in the order is one."""

_TITLE = ('<label class="md-nav__title" for="__toc">', '<label class="md-nav__title">')
"""The title of the list of headings, which opens a drawer only where the page stands in the navigation."""


def mend(output: str) -> str:
    """Return a finished page without them."""
    for written, meant in _SLIPS:
        output = output.replace(written, meant)
    return output if 'id="__toc"' in output else output.replace(*_TITLE)
