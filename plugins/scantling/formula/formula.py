"""A formula that has been read and can be reckoned."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from fractions import Fraction
from functools import lru_cache

from scantling.fault import Fault, Faulty, Place, did_you_mean
from scantling.formula.compile import Run, compiled
from scantling.formula.parse import tree_of
from scantling.formula.tree import Comparison, Literal, Name, walk
from scantling.formula.value import Scope, Value, Wanted, require, require_count
from scantling.measure import Angle, Area, Length, round_number
from scantling.words import say

LARGEST = 10**12
FINEST = 10**24
_SETTLED = 10**12


@dataclass(frozen=True, slots=True)
class NameUse:
    """A name in a formula, and where it stands."""

    name: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class WordsUse:
    """A name that a formula compares with words, so that a plan can check that the words are a choice."""

    name: str
    words: str
    start: int
    """Where the words begin."""
    end: int


@dataclass(frozen=True, slots=True)
class Formula:
    """A formula, read once and reckoned as often as wanted.

    Example:
        `read_formula("width - 2 * leg.width").evaluate({"width": Length(48), "leg.width": Length(3)})`
    """

    text: str
    uses: tuple[NameUse, ...] = field(compare=False)
    """Every name it uses, as often as it uses it, in written order."""
    compared: tuple[WordsUse, ...] = field(compare=False)
    """The names that it compares with words."""
    names: tuple[str, ...] = field(compare=False)
    """The names it uses, each once, in written order."""
    run: Run = field(compare=False, repr=False)
    """Reckons without the checks that `evaluate` makes; for `Order`."""

    def __reduce__(self) -> tuple[object, tuple[str]]:
        return (read_formula, (self.text,))

    @property
    def is_constant(self) -> bool:
        """True where no name is used, so that it is worth the same at every size."""
        return not self.names

    def evaluate(self, scope: Scope) -> Value:
        """Return what the formula is worth.

        Args:
            scope: the value of each name; dotted names are plain keys, as `leg.width`.

        Raises:
            Faulty: with every unknown name, or with the first thing that cannot be reckoned.
        """
        try:
            value = self.run(scope)
        except KeyError:
            raise Faulty(self.unknown(scope)) from None
        return settled(value, self.text)

    def as_kind(self, kind: type[Wanted], scope: Scope) -> Wanted:
        """Return what the formula is worth, which must be of `kind`: `formula.as_kind(Length, scope)`.

        Raises:
            Faulty: as `evaluate`, or where it is of another kind.
        """
        return require(self.evaluate(scope), kind, self.text)

    def as_count(self, scope: Scope) -> int:
        """Return what the formula is worth, which must be a whole number, nothing or more.

        Raises:
            Faulty: as `evaluate`, or where it is no count.
        """
        return require_count(self.evaluate(scope), self.text)

    def unknown(self, known: Iterable[str]) -> list[Fault]:
        """Return a fault for each name that is not among the known ones."""
        known = known if isinstance(known, (dict, set, frozenset)) else dict.fromkeys(known)
        return [_unknown(use, known) for use in self.uses if use.name not in known]


@lru_cache(maxsize=2048)
def read_formula(text: str) -> Formula:
    """Read a formula; those read lately are known, since a plan writes many of them more than once.

    Raises:
        Faulty: where it cannot be read; the place holds the characters that are wrong.
    """
    tree = tree_of(text)
    nodes = walk(tree)
    uses = tuple(NameUse(node.name, node.start, node.end) for node in nodes if isinstance(node, Name))
    compared = tuple(use for node in nodes if isinstance(node, Comparison) for use in _compared(node))
    names = tuple(dict.fromkeys(use.name for use in uses))
    return Formula(text, uses, compared, names, compiled(nodes))


def settled(value: Value, text: str) -> Value:
    """Return a value kept within bounds, so that formulas built on formulas stay quick.

    A fraction finer than 1e-24 comes only of multiplying several roots or sines, themselves good to
    1e-12, or of an absurd chain of divisions; it is rounded to the nearest 1e-12.

    Raises:
        Faulty: for a value above 1e12.
    """
    kind = value.__class__
    if kind is Fraction or kind is int:
        top, bottom = value.numerator, value.denominator  # type: ignore[union-attr]
    elif kind is bool or kind is str:
        return value
    else:
        top, bottom = value.top, value.bottom  # type: ignore[union-attr]
    if bottom <= FINEST and -LARGEST * bottom <= top <= LARGEST * bottom and kind is not int:
        return value
    return _settle(value, Fraction(top, bottom), text)


def _settle(value: Value, amount: Fraction, text: str) -> Value:
    if abs(amount) > LARGEST:
        place = Place(start=0, end=len(text))
        raise Faulty(
            [
                Fault(
                    "too-large",
                    say("this is more than a million million"),
                    place,
                    say("see what makes it so large"),
                )
            ]
        )
    if amount.denominator > FINEST:
        amount = Fraction(round_number(amount * _SETTLED), _SETTLED)
    return value.__class__(amount) if isinstance(value, (Length, Area, Angle)) else amount


def _unknown(use: NameUse, known: Iterable[str]) -> Fault:
    near = did_you_mean(use.name, known, kind=say("sizes"), tell=say)
    place = Place(start=use.start, end=use.end)
    return Fault("unknown-name", say("there is no size called '{name}'", name=use.name), place, near)


def _compared(node: Comparison) -> Iterator[WordsUse]:
    for one, other in ((node.left, node.right), (node.right, node.left)):
        if isinstance(one, Name) and isinstance(other, Literal) and isinstance(other.value, str):
            yield WordsUse(one.name, other.value, other.start, other.end)
