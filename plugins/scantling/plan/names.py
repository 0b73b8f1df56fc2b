"""Names in a plan: none twice, none that the formulas cannot reach, none that is nowhere defined."""

from __future__ import annotations

from scantling.fault import Fault, Note, Place, did_you_mean
from scantling.plan.model import Plan
from scantling.plan.offers import slug_of
from scantling.plan.usable import is_name

GIVEN = ("kerf", "surface")
"""Names that every plan has: the saw's kerf and the area of all parts."""


def check_names(plan: Plan, faults: list[Fault]) -> None:
    """Add a fault for each name that is unusable, used twice, or refers to nothing."""
    _check_usable(plan, faults)
    _check_offcuts(plan, faults)
    for number, step in enumerate(plan.steps):
        del number
        for use in step.uses:
            if use.name not in plan.parts:
                note = Note("the parts are named here", Place(("parts",)).key())
                help_line = did_you_mean(use.name, plan.parts, kind="parts")
                faults.append(
                    Fault("unknown-part", f"there is no part '{use.name}'", use.place, help_line, (note,))
                )
    _check_overall(plan, faults)
    _check_formerly(plan, faults)


def _check_usable(plan: Plan, faults: list[Fault]) -> None:
    seen: dict[str, Place] = {}
    for section in ("sizes", "lengths", "options", "parts"):
        for name in getattr(plan, section):
            place = Place((section, name)).key()
            if not is_name(name):
                help_line = (
                    "begin each word with a letter, as in shelf2; only letters, digits and single spaces"
                )
                faults.append(
                    Fault("unusable-name", f"'{name}' cannot be used in a formula", place, help_line)
                )
            if name in GIVEN:
                faults.append(
                    Fault(
                        "taken-name",
                        f"'{name}' already means something in every plan",
                        place,
                        "choose another name",
                    )
                )
            if name in seen:
                note = Note("it is first used here", seen[name])
                faults.append(
                    Fault(
                        "named-twice",
                        f"'{name}' names two things",
                        place,
                        "give one of them another name",
                        (note,),
                    )
                )
            seen.setdefault(name, place)


def _check_offcuts(plan: Plan, faults: list[Fault]) -> None:
    for part in plan.parts.values():
        other = part.source.offcut_of
        place = part.place.at("from offcut of")
        if other and other not in plan.parts:
            faults.append(
                Fault(
                    "unknown-part",
                    f"there is no part '{other}'",
                    place,
                    did_you_mean(other, plan.parts, kind="parts"),
                )
            )
        elif other and plan.parts[other].source.offcut_of:
            help_line = f"name the part whose offcut '{other}' comes from"
            faults.append(
                Fault("offcut-of-offcut", f"'{other}' is itself cut from an offcut", place, help_line)
            )
        if other and part.glue_up:
            faults.append(
                Fault(
                    "glued-offcut",
                    "a part from an offcut cannot be glued up",
                    part.place.at("glued up"),
                    "leave one of them out",
                )
            )


def _check_overall(plan: Plan, faults: list[Fault]) -> None:
    for axis, name in plan.overall.items():
        place = Place(("overall", axis))
        if axis not in {"width", "depth", "height"}:
            help_line = did_you_mean(axis, ("width", "depth", "height"), kind="directions")
            faults.append(Fault("unknown-key", f"'{axis}' is no overall size", place.key(), help_line))
        elif name not in plan.sizes and name not in plan.lengths:
            help_line = did_you_mean(name, [*plan.sizes, *plan.lengths], kind="sizes and lengths")
            faults.append(Fault("unknown-name", f"there is no size or length '{name}'", place, help_line))


def _check_formerly(plan: Plan, faults: list[Fault]) -> None:
    for number, name in enumerate(plan.formerly):
        place = Place(("formerly", number))
        if name != slug_of(name):
            help_line = f"write it as the folder was called: {slug_of(name)}"
            faults.append(Fault("unusable-folder", f"'{name}' was never an address", place, help_line))
        elif name == plan.slug:
            message = f"'{name}' is what this plan's folder is called now"
            faults.append(Fault("address-taken", message, place, "leave it out"))
