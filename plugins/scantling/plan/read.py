"""From the plain data of a plan to a `Plan`."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from scantling.fault import Fault, Faulty, Note, Place, did_you_mean
from scantling.formula import Formula, Value, name_of, read_formula
from scantling.measure import Angle, Length
from scantling.plan.forms import PLAN, Entry
from scantling.plan.model import Hardware, Join, Option, Part, Plan, Size, Source, Step
from scantling.plan.names import check_names

MOST_PARTS = 1000


def read_plan(data: object, slug: str) -> Plan:
    """Return the plan that `data` describes.

    Args:
        data: nested plain data whose scalars are the author's text; steps and words of the body
            stand under `steps` and `intro`.
        slug: the plan's name in addresses.

    Raises:
        Faulty: with every fault in it.
    """
    faults: list[Fault] = []
    entry = PLAN.read(data, Place(), faults)
    if entry is None:
        raise Faulty(faults)
    plan = _plan(entry, slug, faults)
    check_names(plan, faults)
    if faults:
        raise Faulty(faults)
    return plan


def _plan(entry: Entry, slug: str, faults: list[Fault]) -> Plan:
    same = (
        "title",
        "summary",
        "intro",
        "tags",
        "room",
        "skill",
        "build_time",
        "author",
        "licence",
        "revised",
        "tools",
    )
    sizes = {name: _size(name, size, faults) for name, size in entry["sizes"].items()}
    options = {name: _option(name, option, faults) for name, option in entry["options"].items()}
    return Plan(
        slug=slug,
        **{name: entry[name] for name in same},
        cautions=entry["caution"],
        photo=entry["photo"],
        sizes=sizes,
        offered=tuple(
            _offer(offer, Place(("offer", index)), sizes, options, faults)
            for index, offer in enumerate(entry["offer"])
        ),
        lengths=entry["lengths"],
        options=options,
        parts=_parts(entry["parts"], faults),
        joins=tuple(_join(join, entry["parts"], faults) for join in entry["joins"]),
        hardware={name: _hardware(name, record) for name, record in entry["hardware"].items()},
        steps=tuple(_step(step) for step in entry["steps"]),
        errata=entry["errata"],
        notes=entry["notes"],
        overall=entry["overall"],
        accepts=entry["accept"],
    )


def _constant(formula: Formula | None, place: Place, faults: list[Fault]) -> Value | None:
    if formula is None:
        return None
    try:
        return formula.evaluate({})
    except Faulty as faulty:
        faults.extend(fault.under(place) for fault in faulty.faults)
        return None


def _size(name: str, entry: Entry, faults: list[Fault]) -> Size:
    place = entry.place
    usual = _constant(entry["usual"], place.at("usual"), faults)
    least = _constant(entry["from"], place.at("from"), faults) if entry["from"] else usual
    most = _constant(entry["to"], place.at("to"), faults) if entry["to"] else usual
    step = _constant(entry["by"], place.at("by"), faults) if entry["by"] else _usual_step(usual)
    offered = [
        (_constant(formula, place.at("offer", index), faults), place.at("offer", index))
        for index, formula in enumerate(entry["offer"])
    ]
    size = Size(name, usual, least, most, step, tuple(value for value, _ in offered), entry["meaning"], place)  # type: ignore[arg-type]
    _check_range(size, offered, faults)
    return size


def _usual_step(usual: Value | None) -> Value:
    if isinstance(usual, Length):
        return Length.of_inches(Fraction(1, 2))
    return Angle(Fraction(1)) if isinstance(usual, Angle) else Fraction(1)


def _check_range(size: Size, offered: list[tuple[Value | None, Place]], faults: list[Fault]) -> None:
    named = [("usual", size.usual), ("from", size.least), ("to", size.most), ("by", size.step)]
    if any(value is None for _, value in named) or any(value is None for value, _ in offered):
        return
    for key, value in named:
        if name_of(value) != name_of(size.usual) or isinstance(value, (bool, str)):
            help_line = f"write it as {name_of(size.usual)}, like 'usual'"
            faults.append(
                Fault(
                    "wrong-unit", f"'{key}' of {size.name} is {name_of(value)}", size.place.at(key), help_line
                )
            )
            return
    if not size.least <= size.usual <= size.most:  # type: ignore[operator]
        faults.append(
            Fault(
                "outside-range",
                f"the usual {size.name} lies outside its range",
                size.place.at("usual"),
                "widen 'from' and 'to'",
            )
        )
    if not size.step > _zero(size.step):  # type: ignore[operator]
        faults.append(
            Fault(
                "not-positive",
                f"the step of {size.name} is nothing or less",
                size.place.at("by"),
                "write a step above 0",
            )
        )
    for value, place in offered:
        if name_of(value) != name_of(size.usual):
            faults.append(
                Fault(
                    "wrong-unit",
                    f"this offered {size.name} is {name_of(value)}",
                    place,
                    f"write {name_of(size.usual)}",
                )
            )
        elif not size.least <= value <= size.most:  # type: ignore[operator]
            faults.append(
                Fault(
                    "outside-range",
                    f"this offered {size.name} lies outside its range",
                    place,
                    "widen 'from' and 'to'",
                )
            )


def _zero(value: Value) -> Value:
    return value - value  # type: ignore[operator, return-value]


def _option(name: str, entry: Entry, faults: list[Fault]) -> Option:
    if entry["usual"] not in entry["choices"]:
        help_line = did_you_mean(entry["usual"], entry["choices"], kind="choices")
        faults.append(
            Fault(
                "unknown-choice",
                f"'{entry['usual']}' is no choice of '{name}'",
                entry.place.at("usual"),
                help_line,
            )
        )
    return Option(name, entry["question"], entry["choices"], entry["usual"], entry.place)


def _offer(
    offer: Mapping[str, str],
    place: Place,
    sizes: Mapping[str, Size],
    options: Mapping[str, Option],
    faults: list[Fault],
) -> Mapping[str, Value | str]:
    chosen: dict[str, Value | str] = {}
    for name, text in offer.items():
        here = place.at(name)
        if name in options:
            if text not in options[name].choices:
                help_line = did_you_mean(text, options[name].choices, kind="choices")
                faults.append(Fault("unknown-choice", f"'{text}' is no choice of '{name}'", here, help_line))
            chosen[name] = text
        elif name in sizes:
            value = _read_constant(text, here, faults)
            if value is not None:
                _check_range(sizes[name], [(value, here)], faults)
                chosen[name] = value
        else:
            help_line = did_you_mean(name, [*sizes, *options], kind="sizes and options")
            faults.append(
                Fault("unknown-name", f"there is no size or option '{name}'", here.key(), help_line)
            )
    return chosen


def _read_constant(text: str, place: Place, faults: list[Fault]) -> Value | None:
    try:
        return read_formula(text).evaluate({})
    except Faulty as faulty:
        faults.extend(fault.under(place) for fault in faulty.faults)
        return None


def letter_of(index: int) -> str:
    """Return A, B ... Z, AA, AB ... for 0, 1 ...: the mark of a part on the diagrams."""
    letters = ""
    index += 1
    while index:
        index, last = divmod(index - 1, 26)
        letters = chr(ord("A") + last) + letters
    return letters


def _parts(entries: Mapping[str, Entry], faults: list[Fault]) -> dict[str, Part]:
    if len(entries) > MOST_PARTS:
        faults.append(
            Fault(
                "too-many-parts", f"more than {MOST_PARTS} kinds of part", Place(("parts",)), "split the plan"
            )
        )
        return {}
    return {
        name: _part(name, letter_of(index), entry, faults)
        for index, (name, entry) in enumerate(entries.items())
    }


_ONE = read_formula("1")


def _part(name: str, letter: str, entry: Entry, faults: list[Fault]) -> Part:
    if entry["from"] is None and not entry["from_offcut_of"]:
        faults.append(
            Fault(
                "missing-key", f"'{name}' says nothing of what it is cut from", entry.place, "add 'from: 2x4'"
            )
        )
    stocks = entry["from"].stocks if entry["from"] else ()
    same = (
        "length",
        "width",
        "thick",
        "only_if",
        "longer",
        "wider",
        "cut_to_fit",
        "least_width",
        "grain",
        "ends",
        "work",
        "note",
    )
    return Part(
        id=name,
        letter=letter,
        source=Source(stocks, entry["from_offcut_of"]),
        count=entry["count"] or _ONE,
        glue_up=entry["glued_up"],
        bands=entry["band"],
        band_with=entry["band_with"],
        placement=entry["place"],
        accepts=entry["accept"],
        place=entry.place,
        **{key: entry[key] for key in same},
    )


def _join(entry: Entry, parts: Mapping[str, Any], faults: list[Fault]) -> Join:
    place = entry.place.at("join")
    first, _, second = (word.strip() for word in entry["join"].partition(" to "))
    if not second:
        faults.append(Fault("not-a-join", "a join names two parts", place, "write 'rail to leg'"))
    for name in (first, second):
        if name and name not in parts:
            faults.append(unknown_part(name, parts, place))
    same = ("fastener", "each", "joints", "depth", "only_if")
    return Join(
        first,
        second,
        how=entry["with"],
        glue=entry["glue"] == "yes",
        place=entry.place,
        **{key: entry[key] for key in same},
    )


def unknown_part(name: str, parts: Mapping[str, Any], place: Place) -> Fault:
    """Return the fault for a part that is not in the plan."""
    notes = (Note("the parts are named here", Place(("parts",)).key()),)
    return Fault(
        "unknown-part", f"there is no part '{name}'", place, did_you_mean(name, parts, kind="parts"), notes
    )


def _hardware(name: str, entry: Entry) -> Hardware:
    same = ("count", "area", "only_if", "note")
    return Hardware(
        id=name,
        ware=entry["ware"] or name,
        length=entry["long"],
        place=entry.place,
        **{key: entry[key] for key in same},
    )


def _step(entry: Entry) -> Step:
    same = ("title", "text", "uses", "needs", "tools", "only_if", "picture", "picture_alt")
    return Step(
        cautions=entry["caution"],
        accepts=entry["accept"],
        place=entry.place,
        **{key: entry[key] for key in same},
    )
