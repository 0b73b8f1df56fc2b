"""How each locale writes money, from the Unicode CLDR: marks, where the sign stands, signs of currencies."""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class MoneyForm:
    """How a locale writes money; a space in a pattern is one at which no line ends."""

    decimal: str
    """What stands before the cents."""
    thousands: str
    """What stands between thousands."""
    pattern: str
    """The sign of the currency as `¤`, the amount as `#`."""
    below: str
    """Likewise for less than nothing."""
    signs: dict[str, str] = field(default_factory=dict)
    """The signs of currencies, by code, that are other ones than in `SIGNS`."""


SIGNS = {
    "USD": "$",
    "EUR": "€",
    "GBP": "£",
    "CAD": "CA$",
    "AUD": "A$",
    "NZD": "NZ$",
    "CHF": "CHF",
    "DKK": "DKK",
    "NOK": "NOK",
    "SEK": "SEK",
    "CZK": "CZK",
    "BRL": "R$",
    "ZAR": "ZAR",
}
"""The sign of each currency that can be named by its code (ISO 4217): those of a hundred parts."""

FORMS = {
    "en-US": MoneyForm(".", ",", "¤#", "-¤#"),
    "en-GB": MoneyForm(".", ",", "¤#", "-¤#", {"USD": "US$"}),
    "en-CA": MoneyForm(".", ",", "¤#", "-¤#", {"USD": "US$", "CAD": "$"}),
    "en-AU": MoneyForm(
        ".",
        ",",
        "¤#",
        "-¤#",
        {"USD": "USD", "EUR": "EUR", "GBP": "GBP", "CAD": "CAD", "AUD": "$", "NZD": "NZD", "BRL": "BRL"},
    ),
    "en-NZ": MoneyForm(".", ",", "¤#", "-¤#", {"USD": "US$", "NZD": "$"}),
    "en-IE": MoneyForm(".", ",", "¤#", "-¤#", {"USD": "US$"}),
    "de-DE": MoneyForm(",", ".", "#\u00a0¤", "-#\u00a0¤", {"AUD": "AU$"}),
    "de-AT": MoneyForm(",", ".", "¤\u00a0#", "-¤\u00a0#", {"AUD": "AU$"}),
    "fr-FR": MoneyForm(
        ",",
        "\u202f",
        "#\u00a0¤",
        "-#\u00a0¤",
        {"USD": "$US", "GBP": "£GB", "CAD": "$CA", "AUD": "$AU", "NZD": "$NZ"},
    ),
    "fr-CA": MoneyForm(
        ",",
        "\u00a0",
        "#\u00a0¤",
        "-#\u00a0¤",
        {"USD": "$\u00a0US", "CAD": "$", "AUD": "$\u00a0AU", "NZD": "$\u00a0NZ"},
    ),
    "nl-NL": MoneyForm(",", ".", "¤\u00a0#", "¤\u00a0-#", {"USD": "US$", "CAD": "C$", "AUD": "AU$"}),
    "pt-BR": MoneyForm(",", ".", "¤\u00a0#", "-¤\u00a0#", {"USD": "US$", "AUD": "AU$"}),
    "da-DK": MoneyForm(",", ".", "#\u00a0¤", "-#\u00a0¤", {"USD": "US$", "AUD": "AU$", "DKK": "kr."}),
    "sv-SE": MoneyForm(
        ",",
        "\u00a0",
        "#\u00a0¤",
        "-#\u00a0¤",
        {
            "USD": "US$",
            "GBP": "GBP",
            "AUD": "AUD",
            "NZD": "NZD",
            "DKK": "Dkr",
            "NOK": "Nkr",
            "SEK": "kr",
            "BRL": "BR$",
        },
    ),
    "nb-NO": MoneyForm(
        ",",
        "\u00a0",
        "#\u00a0¤",
        "-#\u00a0¤",
        {"USD": "USD", "CAD": "CAD", "AUD": "AUD", "NZD": "NZD", "NOK": "kr", "BRL": "BRL"},
    ),
    "fi-FI": MoneyForm(
        ",", "\u00a0", "#\u00a0¤", "-#\u00a0¤", {"CAD": "CAD", "AUD": "AUD", "NZD": "NZD", "BRL": "BRL"}
    ),
    "cs-CZ": MoneyForm(",", "\u00a0", "#\u00a0¤", "-#\u00a0¤", {"USD": "US$", "AUD": "AU$", "CZK": "Kč"}),
}
