"""What is wrong with a cutting problem is said at once, by name and place."""

from __future__ import annotations

from typing import Any

import pytest

from scantling.cutting import Problem, solve
from scantling.fault import Faulty, Place


def _problem(**changes: Any) -> dict[str, Any]:
    return {
        "unit": "in",
        "kerf": 1,
        "stages": 3,
        "stock": [{"id": "8ft", "family": "2x4", "length": 96, "width": 4, "price": 500}],
        "parts": [{"id": "leg", "from": "2x4", "count": 4, "length": 20, "width": 4, "grain": "length"}],
        **changes,
    }


def _part(**changes: Any) -> dict[str, Any]:
    return _problem(parts=[dict(_problem()["parts"][0], **changes)])


def _stock(**changes: Any) -> dict[str, Any]:
    return _problem(stock=[dict(_problem()["stock"][0], **changes)])


@pytest.mark.parametrize(
    ("data", "code", "path"),
    [
        (_part(length=97), "fits-no-stock", ("parts", 0)),
        (_part(length=20.5), "not-whole", ("parts", 0, "length")),
        (_part(length=True), "not-whole", ("parts", 0, "length")),
        (_part(count=0), "out-of-range", ("parts", 0, "count")),
        (_part(count=-1), "out-of-range", ("parts", 0, "count")),
        (_part(count=10_000), "too-many-pieces", ("parts",)),
        (_part(count=float("nan")), "not-whole", ("parts", 0, "count")),
        (_part(length="20"), "not-whole", ("parts", 0, "length")),
        (_part(least_length=21), "least-above-full", ("parts", 0, "least_length")),
        (_problem(first_cuts=1.5), "not-whole", ("first_cuts",)),
        (_problem(longest_piece=-1), "out-of-range", ("longest_piece",)),
        (_problem(stages=0), "out-of-range", ("stages",)),
        (_part(grain="across"), "unknown-grain", ("parts", 0, "grain")),
        (_part(**{"from": "2x5"}), "unknown-stock", ("parts", 0, "from")),
        (_part(least_width=5), "least-above-full", ("parts", 0, "least_width")),
        (_stock(price=-1), "out-of-range", ("stock", 0, "price")),
        (_stock(length=10**12), "out-of-range", ("stock", 0, "length")),
        (_stock(available=0), "none-to-be-had", ("parts", 0)),
        (_problem(kerf=-1), "out-of-range", ("kerf",)),
        (_problem(parts=[_problem()["parts"][0]] * 2), "named-twice", ("parts", 1, "id")),
        (_problem(stock="none"), "missing", ("stock",)),
    ],
)
def test_a_fault_names_what_is_wrong_and_where(
    data: dict[str, Any], code: str, path: tuple[Any, ...]
) -> None:
    """Each mistake has its own code and the place of the value."""
    with pytest.raises(Faulty) as caught:
        Problem.from_data(data)
    assert (code, Place(path)) in [(fault.code, fault.place) for fault in caught.value.faults]


def test_all_faults_are_told_at_once() -> None:
    """Three mistakes are three faults."""
    data = _problem(parts=[{"id": "leg", "from": "2x4", "count": 0, "length": 1.5, "width": -4}])
    with pytest.raises(Faulty) as caught:
        Problem.from_data(data)
    assert [fault.place.path[-1] for fault in caught.value.faults] == ["count", "length", "width"]


def test_a_part_that_fits_nothing_is_named() -> None:
    """The message names the part and the largest stock."""
    with pytest.raises(Faulty, match="'leg'") as caught:
        Problem.from_data(_part(length=97))
    assert "'8ft'" in caught.value.faults[0].help


def test_too_little_stock_is_a_fault_and_no_partial_answer() -> None:
    """Eight legs of 30 in do not come from two boards of 8 ft."""
    data = _stock(available=2)
    data["parts"][0].update(count=8, length=30)
    with pytest.raises(Faulty, match="not enough of '2x4' to cut 'leg'") as caught:
        solve(Problem.from_data(data))
    assert caught.value.faults[0].help == "there are 2 of '8ft': allow more, or other sizes"
    assert caught.value.faults[0].code == "not-enough"


def test_owned_pieces_are_used_first() -> None:
    """What is owned costs nothing, so it is bought only what does not come from it."""
    owned = {"id": "owned", "family": "2x4", "length": 62, "width": 4, "price": 0, "available": 1}
    data = _problem(stock=[*_problem()["stock"], owned])
    data["parts"][0].update(count=5)
    assert [(board.stock, len(board.pieces)) for board in solve(Problem.from_data(data)).boards] == [
        ("8ft", 2),
        ("owned", 3),
    ]
