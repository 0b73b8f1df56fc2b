"""Money and counted words, against the Unicode CLDR as a general library has it."""

from __future__ import annotations

import pytest
from babel import Locale, numbers

from scantling.measure import Money, read_currency, write_money
from scantling.measure.money_forms import FORMS, SIGNS
from scantling.words import LANGUAGES, language_of
from tests.outside.sources import checked

SUMS = (0, 5, 428, 99_999, 123_450, 123_456_789, -428, -123_450)
NO_BREAK = "\N{NO-BREAK SPACE}"


@checked(
    quantity="written-money",
    document="Unicode CLDR, as the library babel has it",
    place="currency formats, number symbols and currency signs of 17 locales",
    kind="library",
)
@pytest.mark.parametrize("locale", sorted(FORMS))
def test_money_is_written_as_in_the_cldr(locale):
    """Every currency, at sums small, large and below nothing.

    The library leaves out the space that CLDR puts between a sign of letters and a digit after it.
    """
    for code in SIGNS:
        for cents in SUMS:
            ours = write_money(Money(cents), read_currency(code, locale))
            theirs = numbers.format_currency(cents / 100, code, locale=locale.replace("-", "_"))
            sign = read_currency(code, locale)
            if sign[-1].isalpha():
                ours, theirs = (text.replace(f"{sign}{NO_BREAK}", sign) for text in (ours, theirs))
            assert ours == theirs


@checked(
    quantity="counted-words",
    document="Unicode CLDR, as the library babel has it",
    place="plural rules and number symbols of English and German",
    kind="library",
)
@pytest.mark.parametrize("code", LANGUAGES)
def test_words_go_with_numbers_as_in_the_cldr(code):
    """Whole numbers that share a wording here share one there, and marks in numbers are the same."""
    language, known = language_of(code), Locale(code)
    pairs = {(language.form(count), known.plural_form(count)) for count in range(1_200)}

    assert len(pairs) == language.forms == len({ours for ours, _ in pairs})
    assert (language.decimal, language.thousands) == (
        known.number_symbols["latn"]["decimal"],
        known.number_symbols["latn"]["group"],
    )
