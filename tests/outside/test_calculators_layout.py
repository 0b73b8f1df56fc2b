"""Calculators about laying out, against general libraries and published examples."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest

from scantling.measure import read_length
from tests.outside.sources import checked
from tests.support.calculating import ask, column, exact

NUMPY = f"numpy {np.__version__.split('.')[0]}"


def starts(answer, heading="Starts at"):
    """Return where each divider or slat starts, in inches, as shown."""
    return [float(read_length(text).inches) for text in column(answer, 0, heading)]


@checked(quantity="calc-equal-spaces", document="numpy", place=f"{NUMPY}: linspace", kind="library")
@pytest.mark.parametrize(
    ("opening", "dividers", "thickness"), [(36, 5, 0.75), (46.5, 3, 0.75), (23.625, 7, 0.5), (100, 12, 1.5)]
)
@pytest.mark.parametrize("ends", ["spaces", "dividers", "one of each"])
def test_dividers_stand_evenly(opening, dividers, thickness, ends):
    """Dividers start at evenly spread places of the opening, as the library spreads them."""
    if ends == "spaces":
        evenly = np.linspace(-thickness, opening, dividers + 2)[1:-1]
    elif ends == "dividers":
        evenly = np.linspace(0, opening - thickness, dividers)
    else:
        evenly = np.linspace(0, opening, dividers + 1)[:-1]

    answer = ask(
        "equal-spaces",
        opening=str(opening),
        dividers=str(dividers),
        thickness=str(thickness),
        ends=ends,
    )

    assert starts(answer) == pytest.approx(evenly, abs=1 / 32 + 1e-9)
    step = evenly[1] - evenly[0]
    assert float(exact(answer, "step")) == pytest.approx(step, rel=1e-12)


@checked(
    quantity="calc-slats",
    document="eHow, How to determine space between balusters",
    place="72 in between posts, balusters of 1 1/2 in, at most 4 in: 13 balusters, 52.5 in in 14 spaces",
    kind="handbook",
)
def test_balusters_as_printed():
    """The example's count and gap come out."""
    answer = ask("slats", opening="72 in", slat="1 1/2 in", largest_gap="4 in")

    assert exact(answer, "slats") == 13
    assert exact(answer, "gap") == Fraction("52.5") / 14


@checked(
    quantity="calc-slats",
    document="numpy",
    place=f"{NUMPY}: gaps of every count, tried upwards",
    kind="library",
)
@pytest.mark.parametrize(
    ("opening", "slat", "largest"), [(60, 1.5, 3.5), (58, 2.5, 3), (41.25, 0.75, 2), (96, 1.5, 3.9375)]
)
def test_no_fewer_slats_would_do(opening, slat, largest):
    """Of all counts the first whose gaps are small enough is found."""
    counts = np.arange(1, 200)
    gaps = (opening - counts * slat) / (counts + 1)
    first = int(np.argmax(gaps <= largest))

    answer = ask("slats", opening=str(opening), slat=str(slat), largest_gap=str(largest))

    assert exact(answer, "slats") == counts[first]
    assert float(exact(answer, "gap")) == pytest.approx(gaps[first], rel=1e-12)


@checked(quantity="calc-shelf-pins", document="numpy", place=f"{NUMPY}: arange", kind="library")
@checked(quantity="calc-shelf-pins", kind="common practice")
@pytest.mark.parametrize(
    ("height", "bottom", "top", "spacing"),
    [(36, 6, 6, 1.25), (30, 5, 5, 1.25), (72, 8, 3.5, 2), (40, 40, 0.25, 1)],
)
def test_holes_as_the_library_spreads_them(height, bottom, top, spacing):
    """Holes stand at the steps from the first to the last that is allowed."""
    if bottom + top > height:
        bottom = height - top
    steps = np.arange(bottom, height - top + 1e-9, spacing)

    answer = ask(
        "shelf-pins",
        height=str(height),
        bottom=str(bottom),
        top=str(top),
        spacing=str(spacing),
        hole="1/4",
    )

    assert exact(answer, "holes") == len(steps)
    assert starts(answer, "Up") == pytest.approx(steps, abs=1 / 32 + 1e-9)


@checked(
    quantity="calc-batch-rounding",
    document="The usual examples of the method of largest remainders (Hare quota)",
    place="ten seats for six parties; the Alabama paradox, 6, 6 and 2 people for ten and for eleven seats",
    kind="from memory",
)
@pytest.mark.parametrize(
    ("people", "seats"),
    [
        ([47000, 16000, 15800, 12000, 6100, 3100], [5, 2, 1, 1, 1, 0]),
        ([6, 6, 2], [4, 4, 2]),
        ([6, 6, 2], [5, 5, 1]),
    ],
)
def test_marks_are_shared_as_seats_are(people, seats):
    """Sizes that are votes over quota, in sixteenths, come to as many sixteenths as there are seats."""
    quota = Fraction(sum(people), sum(seats))
    sizes = ", ".join(f"{Fraction(votes) / quota / 16} in" for votes in people)

    answer = ask("batch-rounding", sizes=sizes, gap="0 in")

    assert [read_length(text).inches * 16 for text in column(answer, 0, "Cut to")] == seats


@checked(quantity="calc-graduated", document="numpy", place=f"{NUMPY}: linalg.solve", kind="library")
@pytest.mark.parametrize(
    ("total", "parts", "grow", "gap"),
    [(28, 4, 1, 0.125), (31, 5, 0.75, 0.125), (60, 7, 0.3125, 0), (12, 2, 3, 0.5)],
)
def test_graduated_sizes_solve_their_equations(total, parts, grow, gap):
    """First size and sum are what linear equations for all sizes give."""
    matrix = np.zeros((parts, parts))
    right = np.full(parts, float(grow))
    for i in range(parts - 1):
        matrix[i, i], matrix[i, i + 1] = -1, 1
    matrix[-1], right[-1] = 1, total - gap * (parts - 1)
    sizes = np.linalg.solve(matrix, right)

    answer = ask("batch-rounding", total=str(total), parts=str(parts), grow=str(grow), gap=str(gap))

    shown = [float(read_length(text).inches) for text in column(answer, 0, "Cut to")]
    assert shown == pytest.approx(sizes, abs=1 / 16)
    assert exact(answer, "sum") == Fraction(total) - Fraction(gap) * (parts - 1)
