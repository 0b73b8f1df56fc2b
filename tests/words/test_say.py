"""Telling words: in English as they stand in the code, in another language from its table."""

from __future__ import annotations

import pytest

from scantling.fault import Faulty
from scantling.words import ENGLISH, counted, language_of, say, speaking, spoken, spoken_by


def test_english_is_told_as_it_stands():
    """Without a word about language the site speaks English."""
    assert spoken() is ENGLISH
    assert say("Cut list") == "Cut list"
    assert say("{amount} needed", amount=4) == "4 needed"


def test_another_language_is_told_within_its_block_alone():
    """German inside, English again after it, also where something went wrong inside."""

    def fail() -> None:
        with speaking(language_of("de")):
            assert say("Cut list") == "Zuschnittliste"
            raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError):
        fail()
    assert say("Cut list") == "Cut list"


def test_words_that_count_take_the_form_of_their_number():
    """One plan, two plans; ein Plan, zwei Pläne."""
    assert [counted("{count} plan", "{count} plans", count) for count in (0, 1, 2)] == [
        "0 plans",
        "1 plan",
        "2 plans",
    ]
    with speaking(language_of("de")):
        assert [counted("{count} plan", "{count} plans", count) for count in (0, 1, 2)] == [
            "0 Pläne",
            "1 Plan",
            "2 Pläne",
        ]


def test_what_an_author_wrote_is_no_pattern():
    """Braces in a value are the author's, and stay."""
    assert say("Plan by {author}", author="{day} & co") == "Plan by {day} & co"


def test_an_unknown_language_is_told_of_with_those_that_there_are():
    """The fault names the languages."""
    with pytest.raises(Faulty) as caught:
        language_of("tlh")
    (fault,) = caught.value.faults
    assert "'tlh'" in fault.message
    assert "de" in fault.help


def test_a_page_of_an_unknown_language_is_answered_in_english():
    """A page kept from another version may ask in a language that is gone."""
    assert spoken_by("tlh") is ENGLISH
