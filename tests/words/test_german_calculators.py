"""Every calculator in German: the same answers, from German numbers, and faults in German."""

from __future__ import annotations

import re

import pytest

from scantling.calculators import MEANT, SLUGS, Shown, calculator, run, run_example
from scantling.measure import Display
from scantling.words import language_of, say, speaking

GERMAN = language_of("de")
WRONG = ("", "q", "1.200", "-7", "1/0 in", "9999999999", "12 furlongs", "1 2 3", "4 of", "2,5,5", "x" * 2_000)
ENGLISH = re.compile(r"\b(?:length|number|angle|price|weight|area|the|is|of|with|write|to)\b")
"""Words of the readers' faults that no German has."""
COMMA = re.compile(r"\d,\d")


def _worth(one: Shown) -> tuple[object, ...]:
    """Return the exact value of a figure; of words, the numbers in them."""
    return one.key, tuple(re.findall(r"[\d/]+", one.value)), one.unit


@pytest.mark.parametrize("slug", SLUGS)
@pytest.mark.parametrize("units", ["in", "mm"])
def test_a_german_answer_is_the_english_one(slug, units):
    """Example and usual numbers, as German fields show them, come to the same."""
    display = Display(units)
    for ask in (run_example, lambda slug, display: run(slug, {}, display)):
        english = ask(slug, display)
        with speaking(GERMAN):
            german = ask(slug, display)
            shown = german.shown()
        assert [_worth(one) for one in shown] == [_worth(one) for one in english.shown()]


@pytest.mark.parametrize("slug", SLUGS)
def test_a_german_field_may_be_sent_back_as_it_stands(slug):
    """What a page puts into its fields is understood when it comes back."""
    with speaking(GERMAN):
        first = run(slug, {}, Display("mm"))
        again = run(slug, dict(first.texts), Display("mm"))

        assert first.to_data() == again.to_data()


@pytest.mark.parametrize("slug", SLUGS)
def test_what_is_wrong_is_told_in_german(slug):
    """No fault of any field reads as it does in English."""
    for ask in calculator(slug).asks:
        for text in WRONG:
            english = run(slug, {ask.name: text}).faults
            with speaking(GERMAN):
                german = run(slug, {ask.name: text}).faults
            told = {words for fault in english for words in (fault.message, fault.help) if words}
            same = {words for fault in german for words in (fault.message, fault.help) if words in told}
            assert same == set(), (ask.name, text)
            for fault in german:
                assert not ENGLISH.search(re.sub("„.*?“", "", fault.message)), fault.message


def test_a_decimal_comma_is_understood():
    """1,5 is one and a half, in a field as in a list, and the answer has a comma too."""
    with speaking(GERMAN):
        answer = run("slats", {"opening": "1500,5", "slat": "38,5", "largest-gap": "90"}, Display("mm"))
        listed = run("board-yield", {"parts": "4 mal 570,5 mm; 2 Stück 760 mm, 3 x 81,5"}, Display("mm"))
        price = run("board-feet", {"price": "1.204,50"})

    assert answer.given.length("opening").mm == 1500.5
    assert COMMA.search(" ".join(answer.working()))
    assert [(one.count, float(one.length.mm)) for one in listed.given.values["parts"]] == [
        (4, 570.5),
        (2, 760.0),
        (3, 81.5),
    ]
    assert price.given.money("price").cents == 120_450


@pytest.mark.parametrize("kind", ["lengths", "rectangles", "prices", "sum", "temperature", "weight"])
def test_what_is_said_to_be_expected_works(kind):
    """The German examples of what to write are understood."""
    asks = {ask.kind: (slug, ask) for slug in SLUGS for ask in calculator(slug).asks}
    with speaking(GERMAN):
        examples = say(MEANT[kind]).rpartition(" wie ")[2].split(" oder ")
        for example in examples:
            slug, ask = asks[kind]
            assert ask.read(example, Display("mm")) is not None, slug


def test_a_choice_may_be_made_in_german_or_by_its_name():
    """An address made in English still works, and so does a word from the page."""
    with speaking(GERMAN):
        by_name = run("board-feet", {"counted": "rough"})
        by_word = run("board-feet", {"counted": "sägerau"})

        assert by_name.shown() == by_word.shown()
        assert by_word.is_good
