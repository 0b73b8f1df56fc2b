"""Reading the tokens of a formula into a tree.

Precedence climbing: each call holds one operator's rank, so a formula without brackets needs only a few
calls, and both the calls and the brackets are counted.
"""

from __future__ import annotations

from collections.abc import Mapping

from scantling.fault import did_you_mean, nearest
from scantling.formula.function import FUNCTIONS
from scantling.formula.token import Kind, Token, complain, tokens_of
from scantling.formula.tree import Call, Chain, Choice, Comparison, Literal, Name, Node, Prefix, Step
from scantling.measure import UNIT_WORDS, local_marks
from scantling.words import say

LONGEST_FORMULA = 2_000
DEEPEST_BRACKETS = 60
_DEEPEST_CALLS = 120
"""As many as the interpreter can hold with room to spare; 60 brackets and what stands between them fit."""

_COMPARISON = 4
_RANKS: Mapping[str, int] = {
    "or": 1,
    "and": 2,
    **dict.fromkeys(("<", "<=", ">", ">=", "=", "≠", "is"), _COMPARISON),
    **dict.fromkeys(("+", "-"), 5),
    **dict.fromkeys(("*", "/"), 6),
}
_NOT, _MINUS = 3, 7
_OPERATORS = (Kind.SIGN, Kind.KEYWORD)
_VALUES = (Kind.AMOUNT, Kind.TEXT)


def tree_of(text: str) -> Node:
    """Return the tree of a formula.

    Raises:
        Faulty: at the first thing that cannot be read.
    """
    if len(text) > LONGEST_FORMULA:
        message = say(
            "a formula has at most {most} characters; this has {count}",
            most=local_marks(f"{LONGEST_FORMULA:,}"),
            count=local_marks(f"{len(text):,}"),
        )
        complain("too-long", message, LONGEST_FORMULA, len(text), say("give a part of it a name of its own"))
    if not text.strip():
        complain("empty", say("nothing is written here; a formula is wanted"), 0, len(text))
    parser = _Parser(text)
    tree = parser.expression(0)
    parser.expect_end()
    return tree


class _Parser:
    """Walks along the tokens of one formula."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.tokens = tokens_of(text)
        self.at = 0
        self.calls = 0
        self.brackets = 0

    @property
    def here(self) -> Token:
        return self.tokens[self.at]

    def take(self) -> Token:
        token = self.tokens[self.at]
        self.at += 1
        return token

    def is_next(self, *texts: str) -> bool:
        return self.here.kind in _OPERATORS and self.here.text in texts

    def expression(self, rank: int) -> Node:
        """Return the longest expression from here whose operators all have at least this rank."""
        self.calls += 1
        if self.calls > _DEEPEST_CALLS:
            self._too_deep(self.here)
        left = self._operand()
        while self.here.kind in _OPERATORS and _RANKS.get(self.here.text, -1) >= max(rank, 1):
            left = self._operation(left)
        self.calls -= 1
        return left

    def _operation(self, left: Node) -> Node:
        sign = self.take()
        rank = _RANKS[sign.text]
        if rank == _COMPARISON:
            return self._comparison(left, sign)
        right = self.expression(rank + 1)
        step = Step(sign.start, right.end, sign.text, right)
        if isinstance(left, Chain) and _RANKS[left.steps[0].operator] == rank:
            return Chain(left.start, right.end, left.first, (*left.steps, step))
        return Chain(left.start, right.end, left, (step,))

    def _comparison(self, left: Node, sign: Token) -> Node:
        operator = sign.text
        if operator == "is" and self.is_next("not"):
            self.take()
            operator = "is not"
        right = self.expression(_COMPARISON + 1)
        if _RANKS.get(self.here.text) == _COMPARISON and self.here.kind in _OPERATORS:
            complain(
                "three-compared",
                say("only two values can be compared at a time"),
                self.here.start,
                self.here.end,
                say("join two comparisons: a < b and b < c"),
            )
        return Comparison(left.start, right.end, operator, left, right)

    def _operand(self) -> Node:
        token = self.take()
        if token.kind in _VALUES:
            return Literal(token.start, token.end, token.value)
        if token.kind is Kind.NAME:
            return self._call(token) if self.is_next("(") else Name(token.start, token.end, token.text)
        if token.text in {"yes", "no"}:
            return Literal(token.start, token.end, token.text == "yes")
        if token.text == "(":
            return self._bracketed(token)
        if token.text in {"-", "+", "not"} and token.kind is not Kind.END:
            operand = self.expression(_NOT if token.text == "not" else _MINUS)
            return Prefix(token.start, operand.end, token.text, operand)
        if token.text == "if":
            return self._choice(token)
        return self._missing(token)

    def _bracketed(self, bracket: Token) -> Node:
        self._open(bracket)
        inner = self.expression(0)
        self._close(bracket)
        return inner

    def _call(self, name: Token) -> Node:
        if name.text not in FUNCTIONS:
            near = did_you_mean(name.text, FUNCTIONS, kind=say("functions"), tell=say)
            complain(
                "unknown-function",
                say("there is no function called '{name}'", name=name.text),
                name.start,
                name.end,
                near,
            )
        bracket = self.take()
        self._open(bracket)
        arguments: list[Node] = []
        while not self.is_next(")"):
            arguments.append(self.expression(0))
            if not self.is_next(","):
                break
            self.take()
        closing = self._close(bracket)
        _check_arguments(name, arguments, closing)
        return Call(name.start, closing.end, name.text, tuple(arguments))

    def _choice(self, word: Token) -> Node:
        condition = self.expression(0)
        self._keyword("then", word)
        then = self.expression(0)
        self._keyword("else", word)
        otherwise = self.expression(0)
        return Choice(word.start, otherwise.end, condition, then, otherwise)

    def _keyword(self, keyword: str, word: Token) -> None:
        if not self.is_next(keyword):
            self._complain_of_neighbours()
            complain(
                "unfinished-if",
                say("this 'if' has no '{keyword}'", keyword=keyword),
                word.start,
                self.here.start or word.end,
                say("write if width > 60 in then 3 else 2"),
            )
        self.take()

    def _open(self, bracket: Token) -> None:
        self.brackets += 1
        if self.brackets > DEEPEST_BRACKETS:
            self._too_deep(bracket)

    def _close(self, bracket: Token) -> Token:
        if not self.is_next(")"):
            self._complain_of_neighbours()
            if self.here.kind is not Kind.END:
                self._left_over()
            complain(
                "open-bracket",
                say("this bracket is never closed"),
                bracket.start,
                bracket.end,
                say("put ) where it ends"),
            )
        self.brackets -= 1
        return self.take()

    def expect_end(self) -> None:
        """Complain about whatever is left over."""
        if self.here.kind is Kind.END:
            return
        self._complain_of_neighbours()
        if self.here.text == ")":
            complain(
                "stray-bracket",
                say("this bracket closes nothing"),
                self.here.start,
                self.here.end,
                say("take it away"),
            )
        self._left_over()

    def _left_over(self) -> None:
        complain(
            "left-over",
            say("'{here}' has no place here", here=self._written(self.here)),
            self.here.start,
            self.here.end,
        )

    def _complain_of_neighbours(self) -> None:
        """Complain of two values side by side, with no operator between them."""
        right = self.here
        begins = right.kind in (*_VALUES, Kind.NAME) or right.text == "("
        if not begins or right.kind is Kind.END:
            return
        left = self.tokens[self.at - 1]
        one, other = self._written(left), "(" if right.text == "(" else self._written(right)
        mend = (
            say("to multiply, write * between them")
            if one == ")"
            else say("to multiply, write {one} * {other}", one=one, other=other)
        )
        if left.kind is Kind.AMOUNT and right.kind is Kind.NAME:
            mend = _unit_mend(right.text.split()[0], mend)
        complain(
            "missing-operator",
            say("nothing says what to do with '{one}' and '{other}'", one=one, other=other),
            left.start,
            right.end,
            mend,
        )

    def _missing(self, token: Token) -> Node:
        if token.kind is Kind.END:
            last = self.tokens[max(0, self.at - 2)]
            complain(
                "unfinished",
                say("something must follow '{last}'", last=self._written(last)),
                last.start,
                last.end,
            )
        what = self._written(token)
        complain(
            "missing-value", say("a value is missing before '{what}'", what=what), token.start, token.end
        )

    def _too_deep(self, token: Token) -> None:
        complain(
            "too-deep",
            say("brackets are nested more than {most} deep", most=DEEPEST_BRACKETS),
            token.start,
            max(token.end, token.start + 1),
            say("give an inner part a name of its own"),
        )

    def _written(self, token: Token) -> str:
        return self.text[token.start : token.end]


def _unit_mend(word: str, multiply: str) -> str:
    """Return the help for a word after a number: the unit that was meant, if it is near one."""
    if len(word) > 2 and nearest(word, UNIT_WORDS):
        return did_you_mean(word, UNIT_WORDS, kind=say("units"), tell=say)
    return say("{multiply}; the units are in, ft, mm, cm, m and deg", multiply=multiply)


def _check_arguments(name: Token, arguments: list[Node], closing: Token) -> None:
    function = FUNCTIONS[name.text]
    if function.fewest <= len(arguments) <= function.most:
        return
    complain(
        "wrong-arguments",
        say("'{name}' is written {pattern}", name=name.text, pattern=function.pattern),
        name.start,
        closing.end,
        say("{count} values are given here", count=len(arguments))
        if len(arguments) != 1
        else say("one value is given here"),
    )
