"""`scantling cut`: the bare solver."""

from __future__ import annotations

import json
import sys
from argparse import ArgumentParser, Namespace
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from scantling.cli.command import FAULTY, FINE, Command, misused, say, tell_faults
from scantling.cutting import DEFAULT_STEPS, Problem, solve
from scantling.fault import Fault, Faulty

LARGEST = 10_000_000


def _add_arguments(parser: ArgumentParser) -> None:
    parser.add_argument("problem", metavar="PROBLEM.json", help="a cutting problem; - for standard input")
    parser.add_argument(
        "--steps", type=int, default=DEFAULT_STEPS, help="how much work may be done (usually %(default)s)"
    )


def _run(given: Namespace) -> int:
    if given.steps < 1:
        raise misused("--steps must be 1 or more")
    name = "standard input" if given.problem == "-" else given.problem
    try:
        answer = solve(Problem.from_data(_read(given.problem, name)), steps=given.steps)
    except Faulty as faulty:
        tell_faults(name, _told(faulty.faults))
        return FAULTY
    say(json.dumps(answer.to_data(), ensure_ascii=False, indent=2))
    return FINE


def _read(path: str, name: str) -> Any:
    try:
        data = sys.stdin.buffer.read(LARGEST + 1) if path == "-" else _bytes(Path(path))
    except OSError as error:
        raise misused(f"{name} cannot be read ({error.strerror or 'no reason given'})") from None
    if len(data) > LARGEST:
        raise Faulty([Fault("file-too-large", f"the problem is larger than {LARGEST // 1_000_000} MB")])
    try:
        return json.loads(data)
    except json.JSONDecodeError as error:
        where = f"line {error.lineno}, column {error.colno}"
        raise Faulty([Fault("not-json", f"this is no JSON from {where} on")]) from None
    except RecursionError:
        raise Faulty([Fault("too-deep", "brackets lie too deep within each other")]) from None
    except ValueError:  # bytes that are no UTF-8, or a number of thousands of digits
        raise Faulty([Fault("not-json", "this is no JSON", help="save it with the encoding UTF-8")]) from None


def _bytes(path: Path) -> bytes:
    with path.open("rb") as file:
        return file.read(LARGEST + 1)


def _told(faults: tuple[Fault, ...]) -> Iterator[tuple[str, str, str]]:
    for fault in faults:
        steps = (f"[{key}]" if isinstance(key, int) else f".{key}" for key in fault.place.path)
        yield "".join(steps).lstrip("."), fault.message, fault.help


CUT = Command(
    "cut",
    "solve a bare cutting problem; the answer is JSON on standard output",
    "scantling cut problem.json",
    _add_arguments,
    _run,
)
