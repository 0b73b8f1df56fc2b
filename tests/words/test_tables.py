"""The tables of every language: whole, with nothing left over, with the same values in each wording."""

from __future__ import annotations

import re
from collections import Counter

import pytest

from scantling.checks.topics import TOPICS
from scantling.pages.theme import TEMPLATE_WORDS
from scantling.plan import ROOMS, SKILLS
from scantling.plan.part_forms import JOINS, WORKS
from scantling.plan.screws import FASTENER_KINDS
from scantling.words import LANGUAGES, language_of
from scantling.words.german import TABLES
from tests.support.our_words import asked, in_templates, of_calculators, of_checks, unmarked

OTHERS = [code for code in LANGUAGES if code != "en"]
TRADE = {
    *WORKS,
    *JOINS,
    *FASTENER_KINDS.values(),
    *("square", "mitre", "bevel", "left", "right", "layers"),
    *("width", "depth", "height", "thickness"),
    *SKILLS,
    *ROOMS,
}
"""Words that a plan file chooses from, and that a page shows."""
LETTERS = re.compile(r"[A-Za-z]{2}|\d\.\d")
"""What must be told in each language: words, and numbers with a decimal mark."""
CAUTIONS = {words for topic in TOPICS for words in (topic.text, topic.source)}


def _every() -> dict[str, bool]:
    told = {words for words in (*of_calculators(), *of_checks()) if LETTERS.search(words)}
    known = dict.fromkeys(TRADE | CAUTIONS | told, False)
    known.update(asked())
    return known


@pytest.mark.parametrize("code", OTHERS)
def test_every_wording_is_there_in_every_language(code):
    """What the code, the scripts and the templates tell is in the table."""
    table = language_of(code).words

    assert sorted(words for words in _every() if words not in table) == []


@pytest.mark.parametrize("code", OTHERS)
def test_no_table_holds_what_nobody_tells(code):
    """A wording that has changed in the code is not left behind."""
    assert sorted(set(language_of(code).words) - set(_every())) == []


@pytest.mark.parametrize("code", OTHERS)
def test_each_wording_names_the_same_values(code):
    """No value gets lost, and none is asked for that nobody gives."""
    for english, told in language_of(code).words.items():
        for wording in (told,) if isinstance(told, str) else told:
            assert _values(wording) == _values(english), english


@pytest.mark.parametrize("code", OTHERS)
def test_words_that_count_have_every_form_and_others_have_one(code):
    """As many wordings as the language has forms, where a number decides."""
    language, every = language_of(code), _every()
    for english, told in language.words.items():
        forms = 1 if isinstance(told, str) else len(told)
        assert forms == (language.forms if every.get(english) else 1), english


@pytest.mark.parametrize("code", OTHERS)
def test_spaces_at_the_ends_are_kept(code):
    """Wordings that are put together stay apart as they are in English."""
    for english, told in language_of(code).words.items():
        for wording in (told,) if isinstance(told, str) else told:
            assert (wording[:1] == " ", wording[-1:] == " ") == (english[:1] == " ", english[-1:] == " "), (
                english
            )


def test_no_wording_is_made_on_the_spot():
    """A wording that is put together from pieces could not be found by a translator."""
    assert list(unmarked()) == []


def test_no_wording_stands_in_two_tables():
    """Which of two would be told would depend on their order."""
    counts = Counter(words for table in TABLES for words in table)

    assert [words for words, count in counts.items() if count > 1] == []


def test_templates_look_up_what_they_are_given():
    """Each wording of a template is among those that a site hands over, and none is handed over in vain."""
    assert in_templates() == set(TEMPLATE_WORDS)


def _values(wording: str) -> set[str]:
    return set(re.findall(r"\{(\w+)\}", wording))
