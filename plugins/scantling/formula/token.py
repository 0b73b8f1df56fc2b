"""Cutting a formula into words, numbers and signs."""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import Enum
from fractions import Fraction
from typing import NoReturn

from scantling.fault import Fault, Faulty, Place
from scantling.formula.value import Value
from scantling.measure import SPACES, scan_amount
from scantling.words import say

KEYWORDS = frozenset({"and", "or", "not", "if", "then", "else", "is", "yes", "no"})
"""Words that mean something to the language, and so cannot be part of a name."""
_BLANK = SPACES + "\r\n"

_WORD = r"[^\W\d_]\w*"
_RUN = re.compile(_WORD)
_GAP = re.compile(rf"[{_BLANK}]+")
_DOT = re.compile(rf"\.(?={_WORD})")
# After "is" stand plain words, which may be joined by hyphens: "trim is from off-cuts".
_PLAIN = re.compile(rf"{_WORD}(?:-\w+)*")
_QUOTES = {'"': '"', "'": "'", "“": "”", "‘": "’", "”": "”", "’": "’"}
_SIGNS = {
    **{sign: sign for sign in ("+", "-", "*", "/", "(", ")", ",", "<", ">", "=", "≠", "<=", ">=")},
    "−": "-",
    "–": "-",
    "×": "*",
    "·": "*",
    "÷": "/",
    "≤": "<=",
    "≥": ">=",
}
_MENDS = {
    "**": ("there is no power here", "multiply: x * x"),
    "^": ("there is no power here", "multiply: x * x"),
    "==": ("'==' means nothing here", "write ="),
    "!=": ("'!=' means nothing here", "write is not, or ≠"),
    "<>": ("'<>' means nothing here", "write is not, or ≠"),
    "&&": ("'&&' means nothing here", "write and"),
    "||": ("'||' means nothing here", "write or"),
    "//": ("'//' means nothing here", "write round down(a / b, 1)"),
    "%": ("there are no percentages here", "write a fraction: 15% is 0.15"),
    "!": ("'!' means nothing here", "write not"),
    "[": ("'[' means nothing here", "write round brackets: ( )"),
    "{": ("'{' means nothing here", "write round brackets: ( )"),
    "$": ("there is no money in a formula", "write the number alone"),
    ";": ("';' means nothing here", "write a comma between values: min(a, b)"),
}


class Kind(Enum):
    """What sort of thing a token is."""

    AMOUNT = "amount"
    NAME = "name"
    TEXT = "text"
    KEYWORD = "keyword"
    SIGN = "sign"
    END = "end"


@dataclass(frozen=True, slots=True)
class Token:
    """Some characters that belong together."""

    kind: Kind
    text: str
    """The name, keyword or sign, in its plain spelling."""
    start: int
    end: int
    value: Value = False


def complain(code: str, message: str, start: int, end: int, mend: str = "") -> NoReturn:
    """Raise the one fault that some characters of a formula have."""
    raise Faulty([Fault(code, message, Place(start=start, end=end), mend)])


def tokens_of(text: str) -> list[Token]:
    """Return the tokens of a formula, with an end token last.

    Raises:
        Faulty: at the first characters that mean nothing.
    """
    found: list[Token] = []
    at = _past_blank(text, 0)
    while at < len(text):
        token = _token(text, at, found)
        found.append(token)
        at = _past_blank(text, token.end)
    end = len(text.rstrip()) or len(text)
    found.append(Token(Kind.END, "", end, end))
    return found


def _past_blank(text: str, at: int) -> int:
    gap = _GAP.match(text, at)
    return gap.end() if gap else at


def _token(text: str, at: int, before: list[Token]) -> Token:
    sign = text[at]
    if sign.isdecimal() or sign in ".½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒":
        return _amount(text, at, before)
    if _RUN.match(text, at):
        return _words(text, at, before)
    if sign in _QUOTES:
        return _quoted(text, at)
    return _sign(text, at)


def _amount(text: str, at: int, before: list[Token]) -> Token:
    found = scan_amount(text, at)
    if found is None:
        complain("stray-sign", say("'{text}' means nothing here", text=text[at]), at, at + 1)
    written = text[at : found.end]
    last = before[-1].text if before and before[-1].kind is Kind.SIGN else ""
    if found.hyphen:
        number, _, rest = written.replace("−", "-").partition("-")
        if last in {"*", "/"} or isinstance(found.value, Fraction):
            complain(
                "unclear-hyphen",
                say("'{written}' is one number or a subtraction", written=written),
                at,
                found.end,
                say(
                    "write {number} {rest} for one number, {number} - {rest} to subtract",
                    number=number,
                    rest=rest,
                ),
            )
    if found.slash and last == "/":
        complain(
            "unclear-slash",
            say("'/ {written}' can be read in two ways", written=written),
            at,
            found.end,
            say("write ({written})", written=written),
        )
    return Token(Kind.AMOUNT, written, at, found.end, found.value)


def _words(text: str, at: int, before: list[Token]) -> Token:
    """Return a keyword, or the run of words up to the next keyword as one name."""
    if _after_is(before):
        plain = _run(text, at, _PLAIN)
        if plain is not None:
            return Token(Kind.TEXT, plain[0], at, plain[1], plain[0])
    run = _run(text, at, _RUN)
    if run is None:
        match = _RUN.match(text, at)
        assert match is not None
        return Token(Kind.KEYWORD, match[0], at, match.end())
    name, end = run
    while dot := _DOT.match(text, end):
        attribute = _run(text, dot.end(), _RUN)
        if attribute is None:
            break
        name, end = f"{name}.{attribute[0]}", attribute[1]
    return Token(Kind.NAME, name, at, end)


def _after_is(before: list[Token]) -> bool:
    last = [token.text for token in before[-2:] if token.kind is Kind.KEYWORD]
    return bool(last) and (last[-1] == "is" or last == ["is", "not"])


def _run(text: str, at: int, word: re.Pattern[str]) -> tuple[str, int] | None:
    """Return the words from `at` up to a keyword, with single spaces, and where they end."""
    words: list[str] = []
    end = at
    while (match := word.match(text, at)) and match[0] not in KEYWORDS:
        words.append(match[0])
        end = match.end()
        at = _past_blank(text, end)
        if at == end:
            break
    return (" ".join(words), end) if words else None


def _quoted(text: str, at: int) -> Token:
    end = text.find(_QUOTES[text[at]], at + 1)
    if end < 0:
        complain(
            "open-quote",
            say("these quotes are never closed"),
            at,
            len(text.rstrip()),
            say("put a quote after the last word"),
        )
    words = " ".join(text[at + 1 : end].split())
    return Token(Kind.TEXT, words, at, end + 1, words)


def _sign(text: str, at: int) -> Token:
    for size in (2, 1):
        written = text[at : at + size]
        if written in _MENDS:
            message, mend = _MENDS[written]
            complain("stray-sign", message, at, at + len(written), mend)
        if written in _SIGNS:
            return Token(Kind.SIGN, _SIGNS[written], at, at + len(written))
    complain("stray-sign", say("'{text}' means nothing here", text=text[at]), at, at + 1)
