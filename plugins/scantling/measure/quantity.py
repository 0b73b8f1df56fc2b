"""What every exact quantity shares: one rational amount of one unit, and the sums that make sense."""

from __future__ import annotations

from fractions import Fraction
from math import gcd
from typing import Any, Literal, NoReturn, Self, TypeVar

Number = int | Fraction
"""An exact number without a unit."""
Way = Literal["nearest", "down", "up"]
"""Which way a value is rounded."""


class Quantity:
    """An exact amount of one unit.

    Kept as two whole numbers in lowest terms, since a fit makes thousands of these and a `Fraction`
    costs several times more to add. Only quantities of the same kind add and compare; anything else
    raises `TypeError`, as it would between unlike things in Python.
    """

    __slots__ = ("bottom", "top")
    top: int
    """Numerator of the amount, in lowest terms."""
    bottom: int
    """Denominator of the amount, above nothing."""

    def __init__(self, amount: Number = 0) -> None:
        """Hold `amount` of the kind's own unit; a float is refused."""
        if not isinstance(amount, (int, Fraction)):
            raise TypeError(f"an exact number is wanted, not {type(amount).__name__}")
        _set_top(self, amount.numerator)
        _set_bottom(self, amount.denominator)

    @property
    def amount(self) -> Fraction:
        """The amount in the kind's own unit."""
        return Fraction(self.top, self.bottom)

    def __setattr__(self, name: str, value: object) -> NoReturn:
        raise AttributeError(f"a {type(self).__name__} never changes")

    def __delattr__(self, name: str) -> NoReturn:
        raise AttributeError(f"a {type(self).__name__} never changes")

    def __reduce__(self) -> tuple[Any, ...]:
        return (type(self), (self.amount,))

    def __repr__(self) -> str:
        return f"{type(self).__name__}({self.amount})"

    def __hash__(self) -> int:
        return hash((self.top, self.bottom))

    def __eq__(self, other: object) -> bool:
        if other.__class__ is not self.__class__:
            return NotImplemented
        return self.top == other.top and self.bottom == other.bottom

    def __lt__(self, other: Self) -> bool:
        if other.__class__ is not self.__class__:
            return NotImplemented
        return self.top * other.bottom < other.top * self.bottom

    def __le__(self, other: Self) -> bool:
        if other.__class__ is not self.__class__:
            return NotImplemented
        return self.top * other.bottom <= other.top * self.bottom

    def __gt__(self, other: Self) -> bool:
        if other.__class__ is not self.__class__:
            return NotImplemented
        return self.top * other.bottom > other.top * self.bottom

    def __ge__(self, other: Self) -> bool:
        if other.__class__ is not self.__class__:
            return NotImplemented
        return self.top * other.bottom >= other.top * self.bottom

    def __add__(self, other: Self) -> Self:
        if other.__class__ is not self.__class__:
            return NotImplemented
        here, there = self.bottom, other.bottom
        if here == there:
            return make(self.__class__, self.top + other.top, here)
        return make(self.__class__, self.top * there + other.top * here, here * there)

    def __sub__(self, other: Self) -> Self:
        if other.__class__ is not self.__class__:
            return NotImplemented
        here, there = self.bottom, other.bottom
        if here == there:
            return make(self.__class__, self.top - other.top, here)
        return make(self.__class__, self.top * there - other.top * here, here * there)

    def __neg__(self) -> Self:
        return make(self.__class__, -self.top, self.bottom)

    def __abs__(self) -> Self:
        return self if self.top >= 0 else -self

    def __floordiv__(self, other: Self) -> int:
        """Return how many whole times `other` goes into this."""
        if other.__class__ is not self.__class__:
            return NotImplemented
        return (self.top * other.bottom) // (self.bottom * other.top)

    def __mod__(self, other: Self) -> Self:
        """Return what is left of this after taking `other` as often as it goes."""
        if other.__class__ is not self.__class__:
            return NotImplemented
        return self - times(other, self // other)


Q = TypeVar("Q", bound=Quantity)

_set_top = Quantity.__dict__["top"].__set__
_set_bottom = Quantity.__dict__["bottom"].__set__
_new = object.__new__


def make(kind: type[Q], top: int, bottom: int) -> Q:
    """Return the quantity of `kind` that is `top / bottom`, in lowest terms; `bottom` may be negative."""
    if bottom != 1:
        shared = gcd(top, bottom)
        if bottom < 0:
            shared = -shared
        if shared != 1:
            top //= shared
            bottom //= shared
    quantity = _new(kind)
    _set_top(quantity, top)
    _set_bottom(quantity, bottom)
    return quantity


def times(quantity: Q, number: Number) -> Q:
    """Return the quantity taken `number` times."""
    return make(quantity.__class__, quantity.top * number.numerator, quantity.bottom * number.denominator)


def parted(quantity: Q, number: Number) -> Q:
    """Return one of `number` equal parts of the quantity.

    Raises:
        ZeroDivisionError: if `number` is zero.
    """
    if not number:
        raise ZeroDivisionError
    return make(quantity.__class__, quantity.top * number.denominator, quantity.bottom * number.numerator)


def ratio(one: Quantity, other: Quantity) -> Fraction:
    """Return how many times `other` goes into `one`, exactly."""
    return Fraction(one.top * other.bottom, one.bottom * other.top)


def round_number(number: Number, way: Way = "nearest") -> int:
    """Return the whole number nearest to `number`, halves away from zero; or the next one down or up."""
    top, bottom = number.numerator, number.denominator
    if way == "down":
        return top // bottom
    if way == "up":
        return -(-top // bottom)
    whole = (2 * abs(top) + bottom) // (2 * bottom)
    return whole if top >= 0 else -whole
