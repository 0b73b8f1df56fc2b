"""Which sizes a sweep tries: the corners, every step of each size alone, and a spread of combinations."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from fractions import Fraction
from itertools import islice, product

from scantling.formula import Value
from scantling.plan import Choice, Plan, Size

MOST_STEPS = 60
"""Steps tried of one size; a finer range is thinned evenly."""
MOST_CORNERS = 64
COMBINATIONS = 48
_PRIMES = (2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37)


def sweep_choices(plan: Plan) -> Iterator[Choice]:
    """Yield the usual choice, then everything that a sweep tries, each once."""
    seen: set[tuple[object, ...]] = set()
    for choice in _all(plan):
        key = (*choice.sizes.values(), *choice.options.values())
        if key not in seen:
            seen.add(key)
            yield choice


def _all(plan: Plan) -> Iterator[Choice]:
    usual = usual_choice(plan)
    free = [size for size in plan.sizes.values() if size.least != size.most]
    yield usual
    for size in plan.sizes.values():
        for value in (*size.offered, *steps_of(size)):
            yield Choice({**usual.sizes, size.name: value}, usual.options)
    yield from (_offered(usual, offer) for offer in plan.offered)
    yield from (Choice(usual.sizes, options) for options in option_choices(plan))
    for corner in islice(product(*((size.least, size.most) for size in free)), MOST_CORNERS):
        sizes = {**usual.sizes, **{size.name: value for size, value in zip(free, corner, strict=True)}}
        yield from (Choice(sizes, options) for options in option_choices(plan))
    yield from _spread(plan, usual, free)


def usual_choice(plan: Plan) -> Choice:
    """Return the choice that the plan is shown at, spelled out."""
    sizes = {name: size.usual for name, size in plan.sizes.items()}
    return Choice(sizes, {name: option.usual for name, option in plan.options.items()})


def _offered(usual: Choice, offer: Mapping[str, Value | str]) -> Choice:
    sizes = {name: offer.get(name, value) for name, value in usual.sizes.items()}
    options = {name: str(offer.get(name, word)) for name, word in usual.options.items()}
    return Choice(sizes, options)


def option_choices(plan: Plan) -> Iterator[dict[str, str]]:
    """Yield combinations of the plan's options, every choice of each at least once."""
    names = list(plan.options)
    for words in islice(product(*(plan.options[name].choices for name in names)), MOST_CORNERS):
        yield dict(zip(names, words, strict=True))


def steps_of(size: Size) -> list[Value]:
    """Return the values of a size from least to most by its step, thinned where there are many."""
    count = size.count_steps()
    stride = max(1, -(-count // MOST_STEPS))
    values = [size.at(index) for index in range(0, count + 1, stride)]
    return values if values[-1] == size.most else [*values, size.most]


def _spread(plan: Plan, usual: Choice, free: list[Size]) -> Iterator[Choice]:
    """Yield combinations spread evenly over the whole range: a Halton sequence, on the grid of steps."""
    options = list(option_choices(plan))
    for index in range(1, COMBINATIONS + 1):
        sizes = dict(usual.sizes)
        for size, prime in zip(free, _PRIMES, strict=False):
            at = int(van_der_corput(index, prime) * (size.count_steps() + 1))
            sizes[size.name] = size.at(at)
        yield Choice(sizes, options[index % len(options)])


def van_der_corput(index: int, base: int) -> Fraction:
    """Return the index's digits mirrored at the point: a number from 0 up to, but not including, 1."""
    mirrored, scale = Fraction(0), Fraction(1)
    while index:
        index, digit = divmod(index, base)
        scale /= base
        mirrored += digit * scale
    return mirrored
