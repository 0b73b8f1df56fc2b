"""A shop's currency: its sign, and the locale in whose way sums are written."""

from __future__ import annotations

from functools import cache
from typing import Self

from scantling.fault import Fault, Faulty, Place, did_you_mean
from scantling.measure.money_forms import FORMS, SIGNS, MoneyForm
from scantling.words import spoken


class Currency(str):
    """The sign of a currency, which knows the locale that it is written in.

    It is plain words wherever a sign is wanted alone, as beside a field.
    """

    __slots__ = ("locale",)
    locale: str
    """As BCP 47 writes it, "de-DE"; "" for that of the language which is spoken."""

    def __new__(cls, sign: str, locale: str = "") -> Self:
        """Hold a sign and a locale."""
        made = super().__new__(cls, sign)
        made.locale = locale
        return made

    def __repr__(self) -> str:
        return f"Currency({super().__repr__()}, {self.locale!r})"

    def __getnewargs__(self) -> tuple[str, str]:  # type: ignore[override]
        return str(self), self.locale


def read_currency(text: str, locale: str = "") -> Currency:
    """Return a currency from its sign, or from its code (ISO 4217).

    Raises:
        Faulty: where the code or the locale is not known; the place is the name of the one that is wrong.
    """
    if locale and locale not in FORMS:
        help_line = did_you_mean(locale, FORMS, kind="locales")
        raise Faulty(
            [
                Fault(
                    "unknown-locale",
                    f"there is no way to write money called '{locale}'",
                    Place(("locale",)),
                    help_line,
                )
            ]
        )
    is_code = len(text) == 3 and text.isascii() and text.isalpha() and text.isupper()
    if is_code and text not in SIGNS:
        message = f"there is no currency '{text}' whose money has hundredths"
        help_line = did_you_mean(text, SIGNS, kind="currencies")
        raise Faulty([Fault("unknown-currency", message, Place(("currency",)), help_line)])
    signs = {**SIGNS, **FORMS[locale].signs} if locale else SIGNS
    return Currency(signs[text] if is_code else text, locale)


@cache
def known_signs() -> tuple[str, ...]:
    """Return the signs and codes by which a currency can be told, those first that hold others."""
    local = {sign for form in FORMS.values() for sign in form.signs.values()}
    return tuple(sorted({*SIGNS, *SIGNS.values(), *local, *"¥₹"}, key=lambda sign: (-len(sign), sign)))


def is_sign_of(sign: str, currency: str) -> bool:
    """Return whether a sign or code beside a price is that of a currency."""
    if sign == currency:
        return True
    try:
        return read_currency(sign, currency.locale if isinstance(currency, Currency) else "") == currency
    except Faulty:
        return False


def money_form(currency: str) -> MoneyForm:
    """Return how sums of a currency are written."""
    locale = currency.locale if isinstance(currency, Currency) else ""
    return FORMS[locale or spoken().locale]
