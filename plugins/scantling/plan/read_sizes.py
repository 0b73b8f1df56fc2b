"""Reading what the reader may choose: sizes with their ranges, options, and the choices that are offered."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from fractions import Fraction

from scantling.fault import Fault, Faulty, Place, did_you_mean
from scantling.formula import Formula, Value, name_of, read_formula
from scantling.measure import Angle, Length, write_number
from scantling.plan.entry import Entry
from scantling.plan.model import Option, Size

Placed = tuple[Value, Place]
_ORDERED = (Fraction, Length, Angle)
_WIDEN = "widen 'from' and 'to'"


def _constant(formula: Formula, place: Place, faults: list[Fault]) -> Value | None:
    try:
        return formula.evaluate({})
    except Faulty as faulty:
        faults.extend(fault.under(place) for fault in faulty.faults)
        return None


def read_size(name: str, entry: Entry, faults: list[Fault]) -> Size | None:
    """Return a named size, or None after adding to `faults`."""
    before = len(faults)
    place = entry.place
    written = {
        key: _constant(entry[key], place.at(key), faults)
        for key in ("usual", "from", "to", "by")
        if entry[key] is not None
    }
    offered = [
        (_constant(formula, place.at("offer", index), faults), place.at("offer", index))
        for index, formula in enumerate(entry["offer"])
    ]
    usual = written.get("usual")
    known = {key: value for key, value in written.items() if value is not None}
    choices = [(value, where) for value, where in offered if value is not None]
    if usual is None or len(faults) > before:
        return None
    _check_kinds(name, entry, known, choices, faults)
    if len(faults) > before:
        return None
    least, most = known.get("from", usual), known.get("to", usual)
    step = known.get("by", _usual_step(usual))
    size = Size(name, usual, least, most, step, (), entry["meaning"], place)
    _check_range(size, faults)
    if len(faults) > before:
        return None
    return replace(size, offered=tuple(_within(size, choices, faults)))


def _usual_step(usual: Value) -> Value:
    if isinstance(usual, Length):
        return Length.of_inches(Fraction(1, 2))
    return Angle(Fraction(1)) if isinstance(usual, Angle) else Fraction(1)


def _check_kinds(
    name: str, entry: Entry, known: Mapping[str, Value], choices: Iterable[Placed], faults: list[Fault]
) -> None:
    """Add a fault for each value that is of another kind than the usual one."""
    usual = known["usual"]
    if not isinstance(usual, _ORDERED):
        message = f"the usual {name} is {name_of(usual)}; a size is a length, a number or an angle"
        faults.append(Fault("wrong-unit", message, entry.place.at("usual"), "write it with its unit: 36 in"))
        return
    others = [value for key, value in known.items() if key != "usual"] + [value for value, _ in choices]
    if isinstance(usual, Fraction) and others and not any(isinstance(value, Fraction) for value in others):
        unit = "deg" if isinstance(others[0], Angle) else "in"
        message = f"the usual {name} has no unit; the others are {name_of(others[0]).split()[-1]}s"
        help_line = f"write it with its unit: {write_number(usual)} {unit}"
        faults.append(Fault("missing-unit", message, entry.place.at("usual"), help_line))
        return
    placed = [(f"'{key}' of {name}", value, entry.place.at(key)) for key, value in known.items()]
    placed += [(f"this offered {name}", value, where) for value, where in choices]
    for what, value, where in placed:
        if name_of(value) != name_of(usual):
            help_line = f"write it as {name_of(usual)}, like 'usual'"
            faults.append(Fault("wrong-unit", f"{what} is {name_of(value)}", where, help_line))


def _check_range(size: Size, faults: list[Fault]) -> None:
    if not is_within(size, size.usual):
        message = f"the usual {size.name} lies outside its range"
        faults.append(Fault("outside-range", message, size.place.at("usual"), _WIDEN))
    if not size.step > size.step - size.step:  # type: ignore[operator]
        message = f"the step of {size.name} is nothing or less"
        faults.append(Fault("not-positive", message, size.place.at("by"), "write a step above 0"))


def _within(size: Size, choices: Iterable[Placed], faults: list[Fault]) -> Iterator[Value]:
    """Yield the offered values that lie in the size's range, adding a fault for each other one."""
    for value, place in choices:
        if is_within(size, value):
            yield value
        else:
            message = f"this offered {size.name} lies outside its range"
            faults.append(Fault("outside-range", message, place, _WIDEN))


def is_within(size: Size, value: Value) -> bool:
    """Return whether a value of the right kind lies in a size's range."""
    return size.least <= value <= size.most  # type: ignore[operator]


def read_option(name: str, entry: Entry, faults: list[Fault]) -> Option | None:
    """Return an option, or None after adding to `faults`."""
    if entry["usual"] not in entry["choices"]:
        help_line = did_you_mean(entry["usual"], entry["choices"], kind="choices")
        message = f"'{entry['usual']}' is no choice of '{name}'"
        faults.append(Fault("unknown-choice", message, entry.place.at("usual"), help_line))
        return None
    return Option(name, entry["question"], entry["choices"], entry["usual"], entry.place)


def read_offers(
    offers: Iterable[Mapping[str, str]],
    sizes: Mapping[str, Size],
    options: Mapping[str, Option],
    faults: list[Fault],
) -> tuple[Mapping[str, Value], ...]:
    """Return the whole choices that are offered, without the faulty ones."""
    made = []
    for index, offer in enumerate(offers):
        before = len(faults)
        chosen: dict[str, Value | None] = {}
        for name, text in offer.items():
            place = Place(("offer", index, name))
            if name in options:
                chosen[name] = _chosen_word(text, place, options[name], faults)
            elif name in sizes:
                chosen[name] = _chosen_value(text, place, sizes[name], faults)
            else:
                help_line = did_you_mean(name, [*sizes, *options], kind="sizes and options")
                message = f"there is no size or option '{name}'"
                faults.append(Fault("unknown-name", message, place.key(), help_line))
        if len(faults) == before:
            made.append({name: value for name, value in chosen.items() if value is not None})
    return tuple(made)


def _chosen_word(text: str, place: Place, option: Option, faults: list[Fault]) -> str:
    if text not in option.choices:
        help_line = did_you_mean(text, option.choices, kind="choices")
        message = f"'{text}' is no choice of '{option.name}'"
        faults.append(Fault("unknown-choice", message, place, help_line))
    return text


def _chosen_value(text: str, place: Place, size: Size, faults: list[Fault]) -> Value | None:
    value = _read_constant(text, place, faults)
    if value is None:
        return None
    if name_of(value) != name_of(size.usual):
        help_line = f"write it as {name_of(size.usual)}"
        faults.append(Fault("wrong-unit", f"this offered {size.name} is {name_of(value)}", place, help_line))
        return None
    return next(_within(size, [(value, place)], faults), None)


def _read_constant(text: str, place: Place, faults: list[Fault]) -> Value | None:
    try:
        formula = read_formula(text)
    except Faulty as faulty:
        faults.extend(fault.under(place) for fault in faulty.faults)
        return None
    return _constant(formula, place, faults)
