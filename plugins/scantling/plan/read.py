"""From the plain data of a plan to a `Plan`."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

from scantling.fault import Fault, Faulty, Note, Place, did_you_mean
from scantling.formula import read_formula
from scantling.plan.entry import Entry
from scantling.plan.forms import PLAN
from scantling.plan.model import Hardware, Join, Part, Plan, Source, Step
from scantling.plan.names import check_names
from scantling.plan.poison import Poison
from scantling.plan.read_sizes import read_offers, read_option, read_size
from scantling.plan.screws import FASTENER_KINDS

MOST_PARTS = 1000
_SAME_IN_PLAN = (
    *("title", "summary", "intro", "tags", "room", "skill", "build_time", "author", "licence", "revised"),
    *("formerly", "tools", "photo", "lengths", "errata", "notes", "overall"),
)
_SAME_IN_PART = (
    *("length", "width", "thick", "only_if", "longer", "wider", "cut_to_fit", "least_width", "ends"),
    *("work", "note", "band_with"),
)
_JOIN = re.compile(r"(?P<first>\S.*?)\s+to\s+(?P<second>.*\S)", re.DOTALL)
_SAME_IN_STEP = ("title", "text", "uses", "needs", "tools", "only_if", "picture", "picture_alt")


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
    plan, _ = read_partly(data, slug, faults)
    if faults or plan is None:
        raise Faulty(faults)
    return plan


def read_partly(data: object, slug: str, faults: list[Fault]) -> tuple[Plan | None, Poison]:
    """Return as much of a plan as can be read, adding to `faults` all that is wrong with it.

    What is faulty is left out; the second answer knows its names, so that no further fault is made of
    their absence.
    """
    entry = PLAN.read(data, Place(), faults)
    poison = Poison.of(faults)
    if entry is None:
        return None, poison
    more: list[Fault] = []
    plan = _plan(entry, slug, more)
    check_names(plan, more)
    full = poison.and_of(more)
    faults += [
        fault for fault in more if not (poison if fault.code == "missing-key" else full).is_echo(fault)
    ]
    return plan, full


def _plan(entry: Entry, slug: str, faults: list[Fault]) -> Plan:
    sizes = {name: read_size(name, size, faults) for name, size in entry["sizes"].items()}
    options = {name: read_option(name, option, faults) for name, option in entry["options"].items()}
    known_sizes = {name: size for name, size in sizes.items() if size is not None}
    known_options = {name: option for name, option in options.items() if option is not None}
    for note in (*entry["errata"], *entry["notes"]):
        unknown = (name for name in note.parts if name not in entry["parts"])
        faults += (unknown_part(name, entry["parts"], note.place.at("parts")) for name in unknown)
    return Plan(
        slug=slug,
        **{name: entry[name] for name in _SAME_IN_PLAN},
        cautions=entry["caution"],
        sizes=known_sizes,
        offered=read_offers(entry["offer"], known_sizes, known_options, faults),
        options=known_options,
        parts=_parts(entry["parts"], faults),
        joins=tuple(_join(join, entry["parts"], faults) for join in entry["joins"]),
        hardware={name: _hardware(name, record) for name, record in entry["hardware"].items()},
        steps=tuple(_step(step) for step in entry["steps"]),
        accepts=entry["accept"],
    )


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
        message = f"more than {MOST_PARTS} kinds of part"
        faults.append(Fault("too-many-parts", message, Place(("parts",)), "split the plan"))
        return {}
    lettered = enumerate(entries.items())
    return {name: _part(name, letter_of(index), entry, faults) for index, (name, entry) in lettered}


_ONE = read_formula("1")


def _part(name: str, letter: str, entry: Entry, faults: list[Fault]) -> Part:
    if entry["from"] is None and not entry["from_offcut_of"]:
        message = f"'{name}' says nothing of what it is cut from"
        faults.append(Fault("missing-key", message, entry.place, "add 'from: 2x4'"))
    stocks = entry["from"].stocks if entry["from"] else ()
    return Part(
        id=name,
        letter=letter,
        source=Source(stocks, entry["from_offcut_of"]),
        count=entry["count"] or _ONE,
        glue_up=entry["glued_up"],
        grain=entry["grain"] or "length",
        is_grain_said=bool(entry["grain"]),
        bands=entry["band"],
        placement=entry["place"],
        accepts=entry["accept"],
        place=entry.place,
        **{key: entry[key] for key in _SAME_IN_PART},
    )


def _join(entry: Entry, parts: Mapping[str, Any], faults: list[Fault]) -> Join:
    place = entry.place.at("join")
    written = _JOIN.fullmatch(entry["join"])
    first, second = (written["first"], written["second"]) if written else ("", "")
    if not written:
        faults.append(Fault("not-a-join", "a join names two parts", place, "write 'rail to leg'"))
    else:
        unknown = [side for side in ("first", "second") if written[side] not in parts]
        faults += [unknown_part(written[side], parts, place.part(*written.span(side))) for side in unknown]
    if entry["with"] in FASTENER_KINDS:
        needed = {
            "each": f"how many {entry['with']} go into one joint",
            "joints": "how many joints there are",
        }
        for key, what in needed.items():
            if entry[key] is None:
                message = f"this join does not say {what}"
                faults.append(Fault("missing-key", message, entry.place, f"add '{key}: 2'"))
    return Join(
        first,
        second,
        how=entry["with"],
        glue=entry["glue"] == "yes",
        place=entry.place,
        **{key: entry[key] for key in ("fastener", "each", "joints", "depth", "only_if")},
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
    return Step(
        cautions=entry["caution"],
        accepts=entry["accept"],
        place=entry.place,
        **{key: entry[key] for key in _SAME_IN_STEP},
    )
