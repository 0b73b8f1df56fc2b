"""Elevations: all that is written stands on the page."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

import pytest

from scantling.drawing import elevation, make_model, text_width
from scantling.drawing.elevation import FACES
from scantling.drawing.shape import Group, Shape, Text
from scantling.measure import Display
from scantling.source import read_catalog


def texts(shapes: Iterable[Shape]) -> Iterator[Text]:
    """Yield every text of some shapes."""
    for shape in shapes:
        if isinstance(shape, Group):
            yield from texts(shape.shapes)
        elif isinstance(shape, Text):
            yield shape


@pytest.mark.parametrize("width", [264.0, 440.0])
@pytest.mark.parametrize("system", ["in", "mm"])
def test_words_beside_a_line_end_on_the_page(root, width, system):
    """On narrow and wide pages, of every demo plan, in inches and in millimetres."""
    seen = 0
    for found in read_catalog(root / "plans").plans:
        model = make_model(found.fitter.fit(), Display(system))
        assert model is not None
        for name in FACES:
            for text in texts(elevation(model, name, width=width).shapes):
                if text.anchor == "start" and not text.turn:
                    seen += 1
                    assert text.x + text_width(text.words, text.size) <= width, (found.slug, name, text.words)
    assert seen
