"""A dimension line never strikes through its own words."""

from __future__ import annotations

import pytest

from scantling.drawing import Group, across, text_width, upright
from scantling.drawing.dimension_line import slanted
from scantling.drawing.shape import Line, Text


@pytest.mark.parametrize(
    "made",
    [
        across(20, 220, 50, "opening 16 1/2 in"),
        upright(20, 220, 50, "29 13/16 in"),
        slanted((20, 20), (220, 20), "29 13/16 in", (0, 14)),
        slanted((20, 20), (20, 220), "29 13/16 in", (14, 0)),
        slanted((20, 20), (220, 135), "29 13/16 in", (8, -14)),
        slanted((20, 20), (60, 220), "29 13/16 in", (14, -3)),
    ],
)
def test_the_line_is_open_where_its_words_stand(made: Group) -> None:
    """No point of the line lies in the box of the words, which shows between them."""
    words = next(one for one in made.shapes if isinstance(one, Text))
    half = text_width(words.words, words.size) / 2
    for line in (one for one in made.shapes if isinstance(one, Line)):
        for step in range(101):
            x = line.x1 + (line.x2 - line.x1) * step / 100 - words.x
            y = line.y1 + (line.y2 - line.y1) * step / 100 - words.y
            along, up = (-y, x) if words.turn else (x, y)
            assert not (abs(along) < half and -0.75 * words.size < up < 0)


def test_words_that_stand_beside_leave_the_line_whole() -> None:
    """A line too short for its words goes from end to end, with the words beside it."""
    made = across(20, 30, 50, "1 1/2 in")
    assert Line(20, 50, 30, 50, "thin") in made.shapes
    assert next(one for one in made.shapes if isinstance(one, Text)).x > 30
