"""Prose that quotes the plan's numbers."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.fault import Fault, Place
from scantling.plan import Prose, Quote, read_prose

HERE = Place(("steps", 0, "text"))


def read(text: str) -> tuple[list[str], list[Fault]]:
    """Return the pieces of prose, a quote as its formula between guillemets, and the faults."""
    faults: list[Fault] = []
    prose = read_prose(text, HERE, faults)
    return [
        f"«{piece.formula.text}»" if isinstance(piece, Quote) else piece for piece in prose.pieces
    ], faults


@pytest.mark.parametrize(
    ("text", "pieces"),
    [
        ("", []),
        ("Just words.", ["Just words."]),
        ("Cut to **{leg.length}**.", ["Cut to **", "«leg.length»", "**."]),
        ("{a}{b}", ["«a»", "«b»"]),
        ("{{a}} and {a}", ["{a} and ", "«a»"]),
        ("A set is written {{ and }}.", ["A set is written { and }."]),
        ("`{a}` is {a}", ["`{a}` is ", "«a»"]),
        ("``{a} ` {b}`` {c}", ["``{a} ` {b}`` ", "«c»"]),
        ("an open ` tick {a}", ["an open ` tick ", "«a»"]),
        ("```\n{a}\n```\n{b}", ["```\n{a}\n```\n", "«b»"]),
        ("over\ntwo {a +\nb} lines", ["over\ntwo ", "«a +\nb»", " lines"]),
        ("a } alone", ["a } alone"]),
    ],
)
def test_prose_is_words_and_quotes_in_turn(text, pieces):
    """Braces quote a formula, doubled ones are braces, code is left alone."""
    assert read(text) == (pieces, [])


@pytest.mark.parametrize(
    ("text", "code", "start", "end"),
    [
        ("Cut to {leg.length.", "open-brace", 7, 8),
        ("Cut {a\n\nand} go", "open-brace", 4, 5),
        ("Cut to {}.", "empty", 8, 8),
        ("Cut to {1 + }.", "unfinished", 11, 12),
    ],
)
def test_a_quote_that_is_no_formula_is_told_to_the_letter(text, code, start, end):
    """The place is within the words, where the fault stands."""
    _, faults = read(text)

    assert [(fault.code, fault.place.path) for fault in faults] == [(code, HERE.path)]
    assert faults[0].place.start in range(start - 2, end + 1)


def test_every_faulty_quote_is_told():
    """One fault does not hide the next, and good quotes stay."""
    pieces, faults = read("{1 +} and {a} and {* 2} and {")

    assert pieces == [" and ", "«a»", " and  and "]
    assert len(faults) == 3


def test_too_many_quotes_are_refused():
    """A text of thousands of quotes is cut short with a fault."""
    _, faults = read("{a} " * 1000)

    assert [fault.code for fault in faults] == ["too-many-quotes"]


@given(text=st.text(alphabet="ab {}`\n+1", max_size=60))
def test_no_text_breaks_prose_and_no_word_is_lost(text):
    """Without braces and ticks every character stays; with them nothing is ever raised."""
    pieces, _ = read(text)

    if not set("{}`") & set(text):
        assert "".join(pieces) == text


@given(text=st.text(max_size=80))
def test_words_written_with_doubled_braces_come_back(text):
    """Doubling every brace keeps any text as it is, wherever no code begins."""
    text = text.replace("`", "")
    doubled = text.replace("{", "{{").replace("}", "}}")

    assert "".join(read(doubled)[0]) == text


def test_the_quotes_know_their_places():
    """A quote's place is the formula between its braces."""
    faults: list[Fault] = []
    prose = read_prose("To {leg.length}.", HERE, faults)

    assert isinstance(prose, Prose)
    assert [(quote.place.start, quote.place.end) for quote in prose.quotes] == [(4, 14)]
    assert bool(prose)
    assert not read_prose("", HERE, faults)
