"""Scenes become SVG that is sound, small, safe and the same every time."""

from __future__ import annotations

from xml.etree import ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.drawing import (
    LOOKS,
    PATTERNS,
    Circle,
    Group,
    Line,
    Move,
    Path,
    Polygon,
    Polyline,
    Rectangle,
    Scene,
    Strokes,
    Text,
    dark_style,
    to_svg,
)

SVG = "{http://www.w3.org/2000/svg}"


def scene(*shapes, title="A leg", told=""):
    """Return a small scene."""
    return Scene(100, 50, shapes, title, told)


def test_every_shape_is_written():
    """Each kind of shape becomes its element; grain is written to one decimal, as nobody measures it."""
    root = ET.fromstring(
        to_svg(
            scene(
                Line(0, 0, 1, 1),
                Polyline(((0, 0), (1, 1))),
                Polygon(((0, 0), (1, 1), (1, 0))),
                Rectangle(0, 0, 5, 5, round=1),
                Circle(1, 1, 1),
                Strokes(((0, 0, 1, 1), (2, 2, 3, 3)), "edge"),
                Strokes(((0, 0.25, 1.52, 1), (2, 2, 3, 3))),
                Path(
                    (0, 0),
                    (Move((1, 1)), Move((2, 2), ((1, 2),)), Move((3, 3), ((1, 1), (2, 2)))),
                    closed=True,
                ),
                Group((Text(1, 2, "words", turn=-90),), title="a group", part="leg"),
            )
        )
    )

    tags = [element.tag.removeprefix(SVG) for element in root.iter()]
    for tag in ("line", "polyline", "polygon", "rect", "circle", "path", "g", "text"):
        assert tag in tags
    assert root.find(f"{SVG}g").get("data-part") == "leg"
    assert [path.get("d") for path in root.iter(f"{SVG}path")] == [
        "M0 0L1 1M2 2L3 3",
        "M0.0 0.2L1.5 1.0M2.0 2.0L3.0 3.0",
        "M0 0L1 1Q1 2 2 2C1 1 2 2 3 3Z",
    ]


@given(st.text(max_size=60))
def test_words_of_a_plan_cannot_break_out(words):
    """Whatever a plan says stays words: the drawing parses, holds no new element, and reads the same."""
    shape = Group((Text(0, 0, words),), title=words, part=words)
    root = ET.fromstring(to_svg(scene(shape, title=words, told=words)))

    known = {"svg", "title", "desc", "style", "g", "text"}
    assert {element.tag.removeprefix(SVG) for element in root.iter()} <= known
    kept = "".join(
        " " if letter in "\t\n\r" else letter
        for letter in words
        if letter in "\t\n\r"
        or (letter >= " " and letter not in "\ufffe\uffff" and not "\ud800" <= letter <= "\udfff")
    )
    assert (root.find(f"{SVG}g/{SVG}text").text or "") == kept


def test_it_is_named_and_told_for_those_who_cannot_see_it():
    """The drawing has a title and a description, and points at both."""
    root = ET.fromstring(to_svg(scene(told="Four legs.")))

    ids = root.get("aria-labelledby").split()
    told = [root.find(f"*[@id='{name}']").text for name in ids]
    assert root.get("role") == "img"
    assert told == ["A leg", "Four legs."]


def test_two_drawings_share_no_id():
    """Drawings on one page do not borrow each other's patterns."""
    one = to_svg(scene(Rectangle(0, 0, 5, 5, "edge", "waste")))
    other = to_svg(scene(Rectangle(0, 0, 6, 5, "edge", "waste")))

    def ids(svg):
        return {element.get("id") for element in ET.fromstring(svg).iter() if element.get("id")}

    assert ids(one)
    assert not ids(one) & ids(other)
    assert to_svg(scene(Rectangle(0, 0, 5, 5, "edge", "waste"))) == one


@pytest.mark.parametrize(
    ("value", "written"),
    [
        (0.0, "0"),
        (-0.0001, "0"),
        (0.5, ".5"),
        (-0.25, "-.25"),
        (12.0, "12"),
        (1 / 3, ".33"),
        (120.10, "120.1"),
    ],
)
def test_coordinates_are_short(value, written):
    """No coordinate has more than two decimals, a superfluous zero or a negative nothing."""
    assert f'x="{written}"' in to_svg(scene(Text(value, 0, "a")))


def test_looks_and_patterns_that_are_not_there_are_refused():
    """A misspelt look fails at once instead of drawing black."""
    with pytest.raises(KeyError):
        to_svg(scene(Line(0, 0, 1, 1, "egde")))
    with pytest.raises(KeyError):
        to_svg(scene(Rectangle(0, 0, 1, 1, "edge", "hatch")))


@pytest.mark.parametrize("name", PATTERNS)
def test_every_pattern_is_sound(name):
    """Each pattern can be read as XML, and tells its area apart by lines or dots."""
    root = ET.fromstring(to_svg(scene(Rectangle(0, 0, 9, 9, "edge", name))))

    pattern = root.find(f"{SVG}defs/{SVG}pattern")
    assert len(pattern) >= 2


def test_the_dark_page_changes_every_coloured_look():
    """Each look that has a colour has a rule for the dark page."""
    rules = dark_style(".dark")

    for name, style in LOOKS.items():
        assert (f".sc-{name}{{" in rules) == ("#" in style)
