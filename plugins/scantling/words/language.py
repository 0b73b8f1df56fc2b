"""What a language is: a table of words, its rule for counting, and its marks in numbers."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

Told = str | tuple[str, ...]
"""One wording, or one for each form of counting."""


def one_or_many(count: int) -> int:
    """Return the form for a number where one thing is told apart from all other numbers.

    Source: Unicode CLDR, plural rules for whole numbers of English and German.
    """
    return 0 if count == 1 else 1


@dataclass(frozen=True, slots=True)
class Language:
    """A language of the site."""

    code: str
    """As HTML and BCP 47 write it: "de"."""
    name: str
    """As it calls itself."""
    locale: str
    """How money and numbers are written where nothing else is said: "de-DE"."""
    decimal: str
    """What stands before the decimals."""
    thousands: str
    """What stands between thousands."""
    words: Mapping[str, Told] = field(default_factory=dict, repr=False)
    """From the English wording, as it stands in the code; counted words from the wording for many."""
    form: Callable[[int], int] = one_or_many
    """Which wording a whole number takes."""
    forms: int = 2
    """How many wordings counted words have."""


ENGLISH = Language("en", "English", "en-US", ".", ",")
"""The language in which the code says what it says."""
