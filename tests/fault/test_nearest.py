"""Names that were probably meant, and the distance by which they are found."""

from __future__ import annotations

from functools import cache

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.fault import did_you_mean, nearest
from scantling.fault.nearest import MOST_OFFERED, edit_distance

# few letters, so that repeats and swaps are common
words = st.text(alphabet="abc", max_size=7)
any_text = st.text(max_size=12)


@cache
def by_definition(one: str, other: str) -> int:
    """Return the restricted Damerau-Levenshtein distance, straight from its recursive definition."""
    if not one or not other:
        return len(one) + len(other)
    ways = [
        by_definition(one[:-1], other) + 1,
        by_definition(one, other[:-1]) + 1,
        by_definition(one[:-1], other[:-1]) + (one[-1] != other[-1]),
    ]
    if len(one) > 1 and len(other) > 1 and one[-1] == other[-2] and one[-2] == other[-1]:
        ways.append(by_definition(one[:-2], other[:-2]) + 1)
    return min(ways)


@pytest.mark.parametrize(
    ("one", "other", "distance"),
    [
        ("", "", 0),
        ("rail", "rail", 0),
        ("rail", "rails", 1),  # a letter added
        ("width", "widht", 1),  # two neighbours swapped
        ("leg", "peg", 1),  # a letter changed
        ("kitten", "sitting", 3),  # the textbook's example
        ("ca", "abc", 3),  # a swapped pair is not touched again, which is what "restricted" means
        ("", "shelf", 5),
    ],
)
def test_known_distances(one, other, distance):
    """The distance is the textbook's."""
    assert edit_distance(one, other) == distance


@given(words, words)
def test_the_distance_is_what_its_definition_says(one, other):
    """The table row by row gives what the recursive definition gives."""
    assert edit_distance(one, other) == by_definition(one, other)


@given(any_text, any_text)
def test_the_distance_is_symmetric(one, other):
    """It is as far back as there."""
    assert edit_distance(one, other) == edit_distance(other, one)


@given(any_text, any_text)
def test_only_the_same_word_is_at_no_distance(one, other):
    """Zero means equal and equal means zero."""
    assert edit_distance(one, one) == 0
    assert (edit_distance(one, other) == 0) == (one == other)


@given(any_text, any_text)
def test_the_distance_lies_between_the_difference_and_the_longer_length(one, other):
    """Letters that are too many must go, and no more than all must change."""
    distance = edit_distance(one, other)

    assert abs(len(one) - len(other)) <= distance <= max(len(one), len(other))


@given(words, words, words)
def test_a_detour_saves_at_most_half(one, between, other):
    """With swaps the triangle law fails, but each swap stands for two plain edits, for which it holds."""
    detour = edit_distance(one, between) + edit_distance(between, other)

    assert edit_distance(one, other) <= 2 * detour


@given(st.integers(0, 9), st.integers(0, 9), st.integers(0, 9))
def test_a_detour_saves_nothing_where_nothing_can_be_swapped(one, between, other):
    """Among words of one letter the triangle law holds as it stands."""
    detour = edit_distance("a" * one, "a" * between) + edit_distance("a" * between, "a" * other)

    assert edit_distance("a" * one, "a" * other) <= detour


@given(words, words, words, words)
def test_the_distance_of_joined_words_is_at_most_the_sum(one, other, tail, other_tail):
    """Words that are mended part by part are mended whole."""
    apart = edit_distance(one, other) + edit_distance(tail, other_tail)

    assert edit_distance(one + tail, other + other_tail) <= apart


def test_the_nearest_names_come_best_first():
    """Fewer edits come first, then the alphabet."""
    assert nearest("rial", ["trial", "rail", "dial", "leg"]) == ["dial", "rail", "trial"]


def test_a_name_in_other_capitals_is_the_nearest():
    """Capitals are no edit."""
    assert nearest("WIDTH", ["depth", "width"]) == ["width"]


def test_a_short_name_needs_a_nearer_one_than_a_long_one():
    """One edit in three letters is allowed, and one in any name."""
    assert nearest("a", ["bb"]) == []
    assert nearest("a", ["b"]) == ["b"]
    assert nearest("between legs", ["betwen lgs"]) == ["betwen lgs"]
    assert nearest("shelf", ["sheets"]) == []


@given(any_text, st.lists(any_text))
def test_what_is_offered_is_known_and_offered_once(name, known):
    """At most four names are offered, each from the list, whatever its order."""
    offered = nearest(name, known)

    assert len(offered) == len(set(offered)) <= MOST_OFFERED
    assert set(offered) <= set(known)
    assert offered == nearest(name, reversed(known))


def test_a_huge_name_is_compared_at_once():
    """A name of a megabyte is cut before it is compared (the tests' time limit would tell)."""
    assert nearest("x" * 1_000_000, ["width"] * 100) == []


@pytest.mark.parametrize(
    ("name", "known", "said"),
    [
        ("widht", ["width", "height", "depth"], "did you mean 'width'?"),
        ("led", ["leg", "lid", "shelf"], "did you mean one of 'leg', 'lid'?"),
        ("apron", ["leg", "shelf"], "the parts here are 'leg', 'shelf'"),
        ("apron", [], "there are no parts here yet"),
    ],
)
def test_the_help_line_says_what_could_be_meant(name, known, said):
    """One name is proposed, several are listed, and where none is near, what there is."""
    assert did_you_mean(name, known, kind="parts") == said


def test_the_help_line_reads_its_names_once():
    """Names that come from a generator are not used up before they are told."""
    assert did_you_mean("apron", (name for name in ["leg"]), kind="parts") == "the parts here are 'leg'"
