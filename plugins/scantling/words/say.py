"""Telling words in the language that is spoken."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar

from scantling.words.language import ENGLISH, Language

_SPOKEN: ContextVar[Language] = ContextVar("language", default=ENGLISH)


def spoken() -> Language:
    """Return the language that is spoken."""
    return _SPOKEN.get()


@contextmanager
def speaking(language: Language) -> Iterator[None]:
    """Speak a language within a `with` block."""
    before = _SPOKEN.set(language)
    try:
        yield
    finally:
        _SPOKEN.reset(before)


def say(english: str, /, **values: object) -> str:
    """Return words in the language that is spoken, with values in the place of their names.

    Example:
        `say("{count} needed", count=4)`
    """
    told = _SPOKEN.get().words.get(english, english)
    words = told if isinstance(told, str) else told[-1]
    return words.format_map(values) if values else words


def counted(one: str, many: str, count: int, /, **values: object) -> str:
    """Return words that depend on a number, which they may quote as `{count}`."""
    language = _SPOKEN.get()
    told = language.words.get(many)
    if told is None or isinstance(told, str):
        words = one if count == 1 else told or many
    else:
        words = told[language.form(count)]
    return words.format_map({"count": count, **values})


def mark(english: str, /) -> str:
    """Return English as it is: `say` is asked for it later, where it is shown."""
    return english
