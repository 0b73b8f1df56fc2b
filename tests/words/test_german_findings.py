"""What a reader is told in German of a size that does not work, or that a careful builder would doubt."""

from __future__ import annotations

import random

import pytest

from scantling.checks import examine
from scantling.pages.live.fit import _ASKED
from scantling.plan import Fitter
from scantling.words import language_of, speaking
from tests.checks.breaking import WAYS
from tests.checks.demo import SLUGS, read, sizes_of, text_of
from tests.support.live import ask, opened

GERMAN = language_of("de")


def _found(fitter: Fitter) -> set[str]:
    """Return what the checks say that a live page asks; what is accepted in vain is the author's."""
    names = {check.name for check in _ASKED}
    return {fault.message for fault in examine(fitter, _ASKED) if fault.code in names}


@pytest.mark.parametrize("slug", SLUGS[::4])
def test_what_a_check_finds_is_told_in_german(slug, tmp_path):
    """Of broken copies of a plan, no finding that a page shows reads as it does in English."""
    chance = random.Random(slug)
    told = 0
    for way in WAYS:
        every = list(way(text_of(slug), sizes_of(slug)))
        for one in chance.sample(every, min(1, len(every))):
            source = read(one.text, tmp_path, slug)
            if source.fitter is None:
                continue
            english = _found(source.fitter)
            with speaking(GERMAN):
                german = _found(source.fitter)
            told += len(german)
            assert len(german) == len(english)
            assert german & english == set(), one.how
    assert told > 4


@pytest.mark.parametrize(
    ("width", "words"),
    [
        ("1.200", "1.200 lässt sich auf zwei Arten lesen"),
        ("90 mm", "liegt außerhalb"),
        ("quatsch", "lässt sich nicht lesen (Länge)"),
        ("12 furlongs", "Längeneinheit „furlongs“ gibt es nicht"),
        ("", ""),
    ],
)
def test_a_size_that_cannot_be_is_told_in_german(width, words):
    """Beside its control, with what would do."""
    session = opened()
    answer = ask(session, ask="open", display={"units": "mm", "fraction": 16, "language": "de"})
    assert answer == {"ok": True}
    answer = ask(session, ask="fit", slug="bench", chosen={"width": width}, part="words")

    if not words:
        assert answer["ok"]
        return
    (fault,) = answer["faults"]
    assert words in fault["message"]
    assert fault["control"] == "size width"


def test_a_size_with_a_comma_is_understood_and_told_with_one():
    """1000,5 mm is a size; what is said, the field and the address have the comma, which is read back."""
    session = opened()
    ask(session, ask="open", display={"units": "mm", "fraction": 16, "language": "de"})
    answer = ask(session, ask="fit", slug="bench", chosen={"width": "1000,5"}, part="words")
    again = ask(session, ask="fit", slug="bench", chosen={"width": answer["sizes"]["width"]["exact"]})

    assert answer["sizes"]["width"]["text"] == "1000,5 mm"
    assert "width 1000,5 mm" in answer["say"]
    assert answer["sizes"]["width"]["exact"] == "1000,5 mm"
    assert again["address"] == answer["address"] == "width=1000%2C5mm"


def test_a_readers_own_shop_may_be_written_with_commas():
    """Kerf and prices of the reader's own; what could be either is left out, and said so."""
    session = opened()
    ask(session, ask="open", display={"units": "mm", "fraction": 16, "language": "de"})
    mine = {"kerf": "2,5", "prices": {"2x4 | 8 ft": "5,40"}}
    good = ask(session, ask="fit", slug="bench", chosen={}, part="words", mine=mine)
    doubtful = ask(session, ask="fit", slug="bench", chosen={}, part="words", mine={"kerf": "1.200"})

    assert good["warnings"] == []
    assert "5,40" in good["fragments"]["materials"]
    assert [one["message"] for one in doubtful["warnings"]] == ["1.200 lässt sich auf zwei Arten lesen."]
