"""A shop's currency: sign or code, and the way of a locale."""

from __future__ import annotations

import pickle
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.fault import Faulty
from scantling.measure import Currency, Money, plain_money, read_currency, write_money, write_round_money
from scantling.measure.money_forms import FORMS
from scantling.words import language_of, speaking


@pytest.mark.parametrize(
    ("text", "locale", "cents", "shown"),
    [
        ("$", "", 123450, "$1,234.50"),
        ("$", "", -428, "-$4.28"),
        ("EUR", "de-DE", 123450, "1.234,50 €"),
        ("EUR", "de-AT", -428, "-€ 4,28"),
        ("GBP", "en-GB", 123450, "£1,234.50"),
        ("CAD", "fr-CA", 123450, "1 234,50 $"),
        ("SEK", "sv-SE", 5, "0,05 kr"),
        ("DKK", "", 123450, "DKK 1,234.50"),
        ("kr", "", 100, "kr 1.00"),
    ],
)
def test_money_is_written_in_its_locales_way(text, locale, cents, shown):
    """The sign, the marks and the spaces, at which no line ends."""
    written = write_money(Money(cents), read_currency(text, locale))

    assert written.replace("\N{NO-BREAK SPACE}", " ") == shown
    assert " " not in written


def test_a_sign_without_a_locale_follows_the_language():
    """A site in German writes euros as Germans do; a shop that names its locale keeps to it."""
    with speaking(language_of("de")):
        assert write_money(Money(123450), "€") == "1.234,50\N{NO-BREAK SPACE}€"
        assert write_money(Money(123450), read_currency("$", "en-US")) == "$1,234.50"


def test_a_round_sum_is_written_without_cents():
    """Budgets are round; a sum with cents keeps them."""
    euros = read_currency("EUR", "de-DE")

    assert write_round_money(Money(125000), euros) == "1.250\N{NO-BREAK SPACE}€"
    assert write_round_money(Money(125001), euros) == "1.250,01\N{NO-BREAK SPACE}€"


@given(st.integers(0, 10**9), st.sampled_from(sorted(FORMS)))
def test_no_cent_is_lost(cents, locale):
    """The digits of what is written are the cents, in every locale."""
    written = write_money(Money(cents), read_currency("EUR", locale))

    assert Fraction("".join(sign for sign in written if sign.isdigit())) == cents
    assert Fraction(plain_money(Money(cents))) * 100 == cents


def test_a_currency_survives_being_remembered():
    """What was made is kept between builds, its locale too."""
    kept = pickle.loads(pickle.dumps(Currency("€", "de-DE")))

    assert (kept, kept.locale) == ("€", "de-DE")


@pytest.mark.parametrize(
    ("text", "locale", "code", "mended"),
    [
        ("EUT", "", "unknown-currency", "EUR"),
        ("JPY", "", "unknown-currency", "USD"),
        ("EUR", "de_DE", "unknown-locale", "de-DE"),
    ],
)
def test_what_is_not_known_is_told_with_what_is(text, locale, code, mended):
    """A code or a locale that is not there; money without hundredths is none of ours."""
    with pytest.raises(Faulty) as caught:
        read_currency(text, locale)
    (fault,) = caught.value.faults
    assert fault.code == code
    assert mended in fault.help or code == "unknown-currency"
