"""The words of a calculator's picture can be read on a phone, in both languages and both units."""

from __future__ import annotations

from itertools import combinations

import pytest

from scantling.calculators import SLUGS, run_example
from scantling.drawing import Scene, Text, text_width
from scantling.measure import Display
from scantling.words import language_of, speaking
from tests.support.shapes import flat

ON_A_PHONE = 338.0
"""Width of a picture, in pixels of the page, on a phone of 390."""
READABLE = 10.0
"""Pixels of the smallest letters."""


def scenes(slug: str) -> list[Scene]:
    """Return the picture of an example and its curve, in inches and in a German reader's millimetres."""
    found = []
    for code, units in (("en", "in"), ("de", "mm")):
        with speaking(language_of(code)):
            answer = run_example(slug, Display(units))
            found += [scene for scene in (answer.scene(), answer.plot()) if scene is not None]
    return found


def box(text: Text) -> tuple[float, float, float, float]:
    """Return the left, right, upper and lower end of level words."""
    room = text_width(text.words, text.size, bold="strong" in text.look)
    left = text.x - {"start": 0.0, "middle": room / 2, "end": room}[text.anchor]
    return left, left + room, text.y - text.size * 0.72, text.y


@pytest.mark.parametrize("slug", SLUGS)
def test_letters_are_large_enough_for_a_phone(slug):
    """No letter of a picture is smaller than ten pixels on a phone."""
    for scene in scenes(slug):
        for text in flat(scene.shapes):
            if isinstance(text, Text):
                assert text.size * ON_A_PHONE / scene.width >= READABLE, text


@pytest.mark.parametrize("slug", SLUGS)
def test_words_stay_in_the_picture_and_apart(slug):
    """Level words end inside the picture, and none stand on others."""
    for scene in scenes(slug):
        level = [one for one in flat(scene.shapes) if isinstance(one, Text) and not one.turn]
        for text in level:
            left, right, upper, lower = box(text)
            assert left > -1, text
            assert right < scene.width + 1, text
            assert upper > -1, text
            assert lower < scene.height + 1, text
        for one, other in combinations(level, 2):
            (left, right, upper, lower), (start, end, top, bottom) = box(one), box(other)
            apart = right <= start or end <= left or lower <= top or bottom <= upper
            assert apart, (one, other)
