"""Words are given at least the room that they take in the widest of the common faces."""

from __future__ import annotations

import pytest
from matplotlib import font_manager
from PIL import ImageFont

from scantling.drawing import text_width

SAID = (
    "3/4 exterior plywood no. 1",
    "cedar picket no. 1 (2 boards cut alike)",
    "24 9/16 in × 5 1/2 in",
    "keep: 22 5/8 in × 5 1/2 in",
    "mitre 33.9°, both leaning the same way",
    "shelf pin holes, right face, two columns",
    "behalten: 571,5 mm × 139,7 mm",
    "1234567890",
)


@pytest.mark.parametrize("weight", ["normal", "bold"])
@pytest.mark.parametrize("said", SAID)
def test_words_take_no_more_room_than_they_are_given(said, weight):
    """In DejaVu Sans, which many machines fall back on, words are no wider than reckoned, nor much less."""
    file = font_manager.findfont(font_manager.FontProperties(family="DejaVu Sans", weight=weight))
    taken = ImageFont.truetype(file, 100).getlength(said) / 100
    given = text_width(said, 1.0, bold=weight == "bold")

    assert taken <= given * 1.01
    assert taken > given * 0.9
