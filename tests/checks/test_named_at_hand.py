"""What the words of a step reach for is on the plan's lists, or the author is told."""

from __future__ import annotations

import pytest

from tests.checks.demo import found_in, read, text_of

CODE = "named-at-hand"


def _found(tmp_path, *changes: tuple[str, str], slug: str = "book-bin") -> list[tuple[str, int, int]]:
    """Return message, line and column of what is found in a demo plan with some of its words changed."""
    text = text_of(slug).text
    for old, new in changes:
        assert old in text
        text = text.replace(old, new)
    found = found_in(read(text, tmp_path, slug))
    return [(one.message, one.spot.line, one.spot.column) for one in found if one.code == CODE]


def _where(text: str, words: str) -> tuple[int, int]:
    before = text[: text.index(words)]
    return before.count("\n") + 1, len(before) - before.rfind("\n")


def test_filler_that_only_the_words_name_is_told_where_they_name_it(tmp_path):
    """A step that fills holes with wood filler is told of at that word, where the materials list has none."""
    changes = (("  wood filler: 1\n", ""), (", wood filler\n", "\n"))
    text = text_of("book-bin").text
    for old, new in changes:
        text = text.replace(old, new)

    found = _found(tmp_path, *changes)

    assert found == [
        ("this step takes wood filler, which is not on the materials list", *_where(text, "wood filler"))
    ]


@pytest.mark.parametrize(
    "words",
    [
        "Lay the hinges in.",
        "Stick it with double-sided tape.",
        "Fasten it with staples.",
        "Pare it with a sharp chisel.",
        "Tap it home with a hammer.",
        "Plane the edges.",
    ],
)
def test_each_thing_named_is_looked_for(words, tmp_path):
    """Something to buy or a tool that no list of the plan has is told of, once."""
    assert len(_found(tmp_path, ("Drill\nfirst, sink", f"{words} Drill\nfirst, sink"))) == 1


@pytest.mark.parametrize(
    "words",
    [
        "Use no hammer here.",
        "It holds without staples.",
        "Press it in instead of driving dowels.",
        "All lie in one plane.",
        "Rout with the router on its side.",
    ],
)
def test_what_is_not_taken_is_not_asked_for(words, tmp_path):
    """What a step names because it is not to be used is no fault, nor is a word that means something else."""
    assert _found(tmp_path, ("Drill\nfirst, sink", f"{words} Drill\nfirst, sink")) == []


def test_a_tool_that_another_step_lists_is_at_hand(tmp_path):
    """A chisel in the plan's list answers for every step."""
    changes = (
        ("Drill\nfirst, sink", "Pare it with a chisel. Drill\nfirst, sink"),
        ("clamps, square, tape measure", "clamps, chisel, square, tape measure"),
    )

    assert _found(tmp_path, *changes) == []


def test_staples_want_a_staple_gun(tmp_path):
    """A step that needs staples and lists nothing to drive them is told so."""
    text = text_of("herb-planter").text.replace(
        "sander, staple gun, utility knife\n", "sander, utility knife\n"
    )

    found = [
        one.message for one in found_in(read(text, tmp_path, "herb-planter")) if one.code == "tools-needed"
    ]

    assert found == ["this step needs staple 3/8 in, but has no staple gun among its tools"]
