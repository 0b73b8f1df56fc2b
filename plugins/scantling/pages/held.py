"""HTML in which no line ends where it would part what is read in one breath."""

from __future__ import annotations

import re

from scantling.measure import NO_BREAK_SPACE, hold

NO_BREAK = "&nbsp;"
"""Between two words of HTML that stay on one line."""
_PIECE = re.compile(r"<[^>]*>|[^<]+")
_DAY = re.compile(r"(?P<after>(?<=\w) )?(?P<day>\b\d{4}-\d\d-\d\d\b)")


def held(html: str) -> str:
    """Return HTML whose measures, counts and days each stay on one line; its tags are left as they are."""
    return _PIECE.sub(_held_piece, html)


def _held_piece(piece: re.Match[str]) -> str:
    if piece[0].startswith("<"):
        return piece[0]
    return _DAY.sub(_held_day, hold(piece[0]).replace(NO_BREAK_SPACE, NO_BREAK))


def _held_day(day: re.Match[str]) -> str:
    """Return a day such as 2026-11-02, whose hyphens would let a line end, with the word that leads to it."""
    return f'{NO_BREAK if day["after"] else ""}<span class="sc-day">{day["day"]}</span>'
