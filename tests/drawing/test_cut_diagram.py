"""Cut diagrams show what they are given, to scale, with nothing lost and nothing outside."""

from __future__ import annotations

import math
import re
from dataclasses import replace
from itertools import combinations, pairwise
from xml.etree import ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.drawing import (
    BoardPicture,
    Circle,
    CutPicture,
    Group,
    OffcutPicture,
    PiecePicture,
    Rectangle,
    Text,
    cut_diagram,
    text_width,
    to_svg,
)
from scantling.words import language_of, speaking
from tests.support.shapes import flat

KERF = 0.125


def board(lengths, *, width=3.5, long=96.0, name="leg"):
    """Return a board crosscut into pieces of these lengths."""
    pieces, cuts, x = [], [], 0.0
    for i, length in enumerate(lengths):
        pieces.append(PiecePicture(x, 0, length, width, chr(65 + i % 26), name, f"{length:g} in", f"part{i}"))
        x += length
        cuts.append(CutPicture(x + KERF / 2, 0, x + KERF / 2, width, i + 1, f"crosscut at {length:g} in"))
        x += KERF
    kept = (OffcutPicture(x, 0, long - x, width, f"{long - x:g} in"),) if long - x > 12 else ()
    return BoardPicture(
        "2x4 no. 1", "8 ft", long, width, KERF, tuple(pieces), kept, tuple(cuts), "8 ft", "3 1/2 in"
    )


def boxes(scene, title):
    """Return the rectangles of the groups whose title begins so."""
    return [
        next(shape for shape in group.shapes if isinstance(shape, Rectangle))
        for group in scene.shapes
        if isinstance(group, Group) and group.title.startswith(title)
    ]


SPLITS = st.lists(st.integers(8, 160).map(lambda eighths: eighths / 8 + 1), min_size=1, max_size=9).filter(
    lambda lengths: sum(lengths) + KERF * len(lengths) <= 96
)


@given(SPLITS)
def test_pieces_are_drawn_to_scale_and_kerfs_lie_between(lengths):
    """All lengths have one scale, and between two neighbours a kerf is left."""
    scene = cut_diagram(board(lengths))
    drawn = [box for letter in "ABCDEFGHI" for box in boxes(scene, f"{letter} ")]

    scale = drawn[0].width / lengths[0]
    assert [box.width / scale for box in drawn] == pytest.approx(lengths)
    for left, right in pairwise(drawn):
        assert (right.x - left.x - left.width) / scale == pytest.approx(KERF)


@given(SPLITS, st.sampled_from(["leg", "a strip with quite a long name"]))
def test_every_part_is_named_and_sized_somewhere(lengths, name):
    """What does not fit on a piece stands in the key below, so every size and letter can be read."""
    words = [
        shape.words
        for shape in flat(cut_diagram(board(lengths, name=name)).shapes)
        if isinstance(shape, Text)
    ]

    for i, length in enumerate(lengths):
        letter = chr(65 + i)
        assert any(re.search(rf"(^| ){letter}( |$)", word) for word in words)
        assert any(f"{length:g} in" in word for word in words)
    assert {str(i + 1) for i in range(len(lengths))} <= set(words)


@given(SPLITS, st.sampled_from([360, 440, 700]))
def test_no_words_leave_the_page(lengths, width):
    """All words lie inside the drawing."""
    scene = cut_diagram(board(lengths, name="side strip"), width=width)

    for shape in flat(scene.shapes):
        if isinstance(shape, Text) and not shape.turn:
            room = text_width(shape.words, shape.size)
            left = shape.x - {"start": 0, "middle": room / 2, "end": room}[shape.anchor]
            assert left > -4, shape
            assert left + room < width + 4, shape
            assert 0 < shape.y < scene.height


def test_a_thin_board_says_that_its_width_is_drawn_larger():
    """No scale is changed in silence."""

    def said(picture):
        words = [shape.words for shape in flat(cut_diagram(picture).shapes) if isinstance(shape, Text)]
        return [line for line in words if "times" in line or "-mal" in line]

    assert said(board([20, 30])) == ["The width is drawn 1.8 times as large as the length."]
    assert said(board([20, 30], width=48.0)) == []
    with speaking(language_of("de")):
        assert said(board([20, 30])) == ["Die Breite ist 1,8-mal so groß gezeichnet wie die Länge."]


def test_waste_offcuts_and_parts_differ_without_colour():
    """The whole board is hatched as waste, kept pieces are dotted, parts have grain."""
    root = ET.fromstring(to_svg(cut_diagram(board([40]))))

    fills = [rect.get("fill") or "" for rect in root.iter("{http://www.w3.org/2000/svg}rect")]
    assert any(fill.endswith("-waste)") for fill in fills)
    assert any(fill.endswith("-offcut)") for fill in fills)
    assert [path for path in root.iter("{http://www.w3.org/2000/svg}path") if path.get("class") == "sc-grain"]


def test_the_same_board_gives_the_same_bytes():
    """A diagram depends on nothing but its board."""
    assert to_svg(cut_diagram(board([20, 30]))) == to_svg(cut_diagram(board([20, 30])))


def test_a_diagram_is_told_in_words():
    """Who cannot see it is told the parts, the cuts and what is kept."""
    told = cut_diagram(board([20, 30])).told

    assert "A leg, 20 in; B leg, 30 in" in told
    assert "cut 2: crosscut at 30 in" in told
    assert "kept offcut, 45.75 in" in told


def test_a_full_sheet_stays_small():
    """A sheet of forty pieces is a small file."""
    pieces = [
        PiecePicture(12.1 * i, 9.1 * j, 12, 9, "ABCDE"[j], f"part {j}", "12 in × 9 in", f"p{j}")
        for i in range(7)
        for j in range(5)
    ]
    picture = BoardPicture("3/4 plywood no. 1", "48 in × 96 in", 96, 48, 0.1, tuple(pieces))

    assert len(to_svg(cut_diagram(picture))) < 40_000
    assert math.isclose(
        boxes(cut_diagram(picture), "A")[0].width / boxes(cut_diagram(picture), "A")[0].height, 12 / 9
    )


@pytest.mark.parametrize("like", [1, 6])
@pytest.mark.parametrize("name", ["2x4 no. 1", "3/4 exterior plywood no. 1", "cedar picket no. 11"])
def test_the_words_of_the_heading_stand_apart(name, like):
    """Name, size and the word for the grain never run into each other, whatever face the machine has."""
    told = replace(board([20, 30]), name=name, like_this=like, has_grain=True)
    scene = cut_diagram(told)
    top = [shape for shape in scene.shapes if isinstance(shape, Text) and shape.y < 35]
    spans = []
    for words in top:
        room = text_width(words.words, words.size, bold="strong" in words.look)
        left = words.x - room if words.anchor == "end" else words.x
        spans.append((words.y, left, left + room))

    assert len(spans) == 3
    for (y1, left1, right1), (y2, left2, right2) in combinations(spans, 2):
        assert abs(y1 - y2) >= 12 or right1 + 4 < left2 or right2 + 4 < left1
    assert all(left >= 0 and right <= scene.width for _, left, right in spans)


@pytest.mark.parametrize("face", [1.0, 0.84])
@pytest.mark.parametrize("width", [264.0, 440.0])
def test_no_word_lies_under_a_number_on_the_wood(width, face):
    """Where the lower strip of a board is crosscut, its numbers stand on the wood; names keep off them."""
    named = 0
    for length in range(6, 31):
        pieces, cuts = [], [CutPicture(0, 1.75, 96, 1.75, 1, "rip, fence at 1 5/8 in")]
        for number in range(3):
            x = number * (length + KERF)
            end = x + length + KERF / 2
            pieces.append(PiecePicture(x, 1.8, length, 1.7, "H", "lower slat", f"{length} in", "slat"))
            cuts.append(CutPicture(end, 1.8, end, 3.5, number + 2, f"crosscut at {length} in"))
        made = BoardPicture("1x4", "8 ft", 96, 3.5, KERF, tuple(pieces), cuts=tuple(cuts))
        shapes = list(flat(cut_diagram(made, width=width, face=face).shapes))
        for text in (one for one in shapes if isinstance(one, Text) and "board" in one.look):
            half = text_width(text.words, text.size, bold="strong" in text.look) * face / 2
            near = [one for one in shapes if isinstance(one, Circle) and abs(one.y - text.y) < text.size]
            named += len(text.words) > 1
            assert len(text.words) == 1 or all(abs(one.x - text.x) >= half + 6 for one in near), text.words
    assert named
