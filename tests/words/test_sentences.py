"""Wordings of a language belong to the English beside them."""

from __future__ import annotations

import pytest

from scantling.words import LANGUAGES, language_of

OTHERS = sorted(set(LANGUAGES) - {"en"})


@pytest.mark.parametrize("code", OTHERS)
def test_sentences_end_as_the_english_does(code):
    """A sentence or a question stays one; a table whose lines have slipped is found by that."""
    slipped = [
        (english, one)
        for english, told in language_of(code).words.items()
        for one in ((told,) if isinstance(told, str) else told)
        for mark in ".?!"
        if english.rstrip().endswith(mark) != one.rstrip().endswith(mark)
    ]

    assert slipped == []
