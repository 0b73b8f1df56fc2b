"""`scantling calc`: one calculator."""

from __future__ import annotations

import json
from argparse import ArgumentParser, Namespace
from importlib import import_module
from typing import Any

from scantling.cli.command import FAULTY, FINE, Command, misused, say, tell_faults
from scantling.cli.tables import table
from scantling.fault import did_you_mean
from scantling.measure import Display
from scantling.words import LANGUAGES, language_of, speaking
from scantling.words import say as told


def _add_arguments(parser: ArgumentParser) -> None:
    parser.add_argument("name", metavar="NAME", nargs="?", help="a calculator; without one, all are listed")
    parser.add_argument("inputs", metavar="KEY=VALUE", nargs="*", help="what is known; the rest is as usual")
    parser.add_argument("--units", choices=("in", "mm"), default="in", help="inches (usual) or millimetres")
    parser.add_argument("--json", action="store_true", help="print the answer as JSON")
    parser.add_argument("--language", choices=LANGUAGES, default="en", help="of the answer: en (usual) or de")


def _run(given: Namespace) -> int:
    with speaking(language_of(given.language)):
        return _answer(given)


def _answer(given: Namespace) -> int:
    room: Any = import_module("scantling.calculators")
    if given.name is None:
        return _list(room.calculators(), as_json=given.json)
    if given.name not in room.SLUGS:
        raise misused(
            f"there is no calculator '{given.name}'",
            did_you_mean(given.name, room.SLUGS, kind="calculators"),
        )
    answer = room.run(given.name, _inputs(given.inputs), Display(given.units))
    if given.json:
        say(json.dumps(answer.to_data(), ensure_ascii=False, indent=2))
    elif answer.is_good:
        say(answer.to_text())
    else:
        tell_faults(given.name, ((_input(fault), fault.message, fault.help) for fault in answer.faults))
    return FINE if answer.is_good else FAULTY


def _input(fault: Any) -> str:
    return str(fault.place.path[0]) if fault.place.path else ""


def _list(known: tuple[Any, ...], *, as_json: bool) -> int:
    if as_json:
        named = [
            {"name": one.slug, "title": told(one.title), "question": told(one.question)} for one in known
        ]
        say(json.dumps({"calculators": named}, ensure_ascii=False, indent=2))
    else:
        say(table((told("name"), told("question")), [(one.slug, told(one.question)) for one in known]))
    return FINE


def _inputs(written: list[str]) -> dict[str, str]:
    pairs = {}
    for one in written:
        key, sign, text = one.partition("=")
        if not sign:
            raise misused(f"'{one}' does not say what it should be", "write key=value")
        pairs[key] = text
    return pairs


CALC = Command(
    "calc",
    "answer one question by a calculator; without a name, list them",
    "scantling calc board-feet thickness=1in width=6in length=8ft",
    _add_arguments,
    _run,
)
