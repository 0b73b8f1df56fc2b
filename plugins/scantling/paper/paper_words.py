"""What the printed sheets say themselves, for the typesetter, which knows no language."""

from __future__ import annotations

from scantling.words import mark, say

_WORDS = {
    "page": mark("page {page} of {all}"),
    "drawing": mark("drawing"),
    "unprinted": mark("Picture not printed:"),
    "ruler": mark("These lines measure 1 in and 25 mm if it was printed at 100 %:"),
    "web": mark("This plan on the web, at this size:"),
    "code": mark("Code that leads to "),
    "templates": mark("Full-size templates"),
    "full-size": mark(
        'Print these pages at 100 % ("actual size"), and measure the two lines below before you trust them. '
        "Where there are several tiles, cut along the broken lines and join them in the order of their "
        "names, cross on cross; a name that is missing has no line on it. "
        "Check a template against the sizes in the cut list before you saw."
    ),
}


def paper_words() -> dict[str, str]:
    """Return the words by the names that `plan.typ` has for them."""
    return {name: say(words) for name, words in _WORDS.items()}
