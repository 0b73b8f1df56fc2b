"""What the tests of cutting share: problems, the verifier, and solving with either."""

from __future__ import annotations

import json
import random
from typing import Any

from scantling.cutting import Answer, Problem, solve
from tests.tools.make_problems import problem as made_problem
from tests.tools.verify_cuts import verify


def solved(data: dict[str, Any], **options: int) -> Answer:
    """Solve a problem given as data, and let the verifier check the answer as a file would have it."""
    answer = solve(Problem.from_data(data), **options)
    verify(data, json.loads(json.dumps(answer.to_data())))
    return answer


def generated(seed: int) -> dict[str, Any]:
    """Return the generated problem of a seed."""
    return made_problem(seed)


def crosscut_problem(
    lengths: list[int], counts: list[int], stock: list[tuple[int, int]], kerf: int, **more: int
) -> dict[str, Any]:
    """Return a problem of full-width parts of boards 4 wide."""
    return {
        "unit": "in",
        "kerf": kerf,
        "stages": 3,
        "stock": [
            {"id": f"s{i}", "family": "f", "length": length, "width": 4, "price": price}
            for i, (length, price) in enumerate(stock)
        ],
        "parts": [
            {"id": f"p{i}", "from": "f", "count": count, "length": length, "width": 4, "grain": "length"}
            for i, (length, count) in enumerate(zip(lengths, counts, strict=True))
        ],
        **more,
    }


def shuffled(data: dict[str, Any], seed: int) -> dict[str, Any]:
    """Return the same problem with its stock and parts in another order."""
    mixed = dict(data, stock=list(data["stock"]), parts=list(data["parts"]))
    rng = random.Random(seed)
    rng.shuffle(mixed["stock"])
    rng.shuffle(mixed["parts"])
    return mixed


def scaled(data: dict[str, Any], times: int) -> dict[str, Any]:
    """Return the same problem counted in a smaller unit."""
    sizes = ("length", "width", "trim_ends", "trim_edges", "least_length", "least_width")
    rules = ("least_rip_length", "least_strip_width", "longest_piece", "keep_length", "keep_width")

    def grown(row: dict[str, Any]) -> dict[str, Any]:
        return {key: value * times if key in sizes else value for key, value in row.items()}

    return dict(
        data,
        kerf=data["kerf"] * times,
        **{key: data[key] * times for key in rules if key in data},
        stock=[grown(row) for row in data["stock"]],
        parts=[grown(row) for row in data["parts"]],
    )
