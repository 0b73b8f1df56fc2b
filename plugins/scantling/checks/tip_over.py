"""Can it tip over, and does the plan say how to fasten it?"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import about_weight, length, words_of
from scantling.checks.statics import Standing
from scantling.fault import Place, Severity
from scantling.measure import Length, Weight
from scantling.plan import FittedPlan
from scantling.report import part_weight
from scantling.shop import Shop
from scantling.words import say

TALL = Length(27)
"""Height from which ASTM F2057-23 and 16 CFR 1261 look at clothing storage; used here for any storage."""
HIGH = Length(48)
"""Height from which any piece is looked at, whatever it is for (a choice of this project)."""
SLENDER = Fraction(2)
"""A piece more than so many times as high as it is deep is easily tipped (a choice of this project)."""
STORAGE = re.compile(r"\b(?:shel(?:f|ves)|doors?|drawers?|cabinets?|cupboards?|bookcase|case)\b")
"""Names of parts by which a piece is known to hold things, so that a child may climb it."""
OUT = Fraction(2, 3)
"""How far of its depth an open drawer stands out, for the estimate."""
DRAWER = re.compile(r"\bdrawers?\b")
SAID = re.compile(r"\b(?:tip|tips|tipping|topple|anchor|anchors|wall stud|fasten it to|stud)\b")
STANDARDS = "ASTM F2057-23 and 16 CFR 1261 (clothing storage), ASTM F3096 (tip restraints), CPSC Anchor It"


def needs_anchor(fitted: FittedPlan) -> bool:
    """Return whether a piece is tall for its depth and holds things, or is tall and has drawers."""
    overall = fitted.overall()
    height, depth = overall.get("height"), overall.get("depth")
    if height is None or depth is None or height < TALL:
        return False
    slender = height > SLENDER * depth and (height >= HIGH or _holds_things(fitted))
    return slender or has_drawers(fitted)


def _holds_things(fitted: FittedPlan) -> bool:
    return any(STORAGE.search(part.id.casefold()) for part in fitted.parts)


def has_drawers(fitted: FittedPlan) -> bool:
    """Return whether a piece has drawers, by the names of its parts and hardware."""
    names = (*(part.id for part in fitted.parts), *(item.ware for item in fitted.hardware))
    return any(DRAWER.search(name.casefold()) for name in names)


def standing(fitted: FittedPlan, shop: Shop) -> Standing | None:
    """Return the piece as a block that may tip; None where its weight or size is not known."""
    overall = fitted.overall()
    height, depth = overall.get("height"), overall.get("depth")
    total = Weight(0)
    for part in fitted.parts:
        source = part.part.source
        named = fitted.plan.parts[source.offcut_of].source if source.offcut_of else source
        one = part_weight(part, named.stocks[0], shop.stocks) if named.stocks else None
        if one is None:
            return None
        total += one * part.count
    return None if height is None or depth is None or not total.top else Standing(total, depth, height)


def _examine(subject: Subject) -> Iterator[Finding]:
    fitted = subject.fitted
    if not needs_anchor(fitted) or _is_said(subject):
        return
    overall = fitted.overall()
    block = standing(fitted, subject.shop)
    yield Finding(
        say(
            "{height} high and {depth} deep, it tips easily{estimate}; nothing here fastens it",
            height=length(overall["height"]),
            depth=length(overall["depth"]),
            estimate=_estimate(block, drawers=has_drawers(fitted)),
        ),
        Place(("sizes", "height")).key() if "height" in subject.plan.sizes else Place(("title",)),
        "add a wall anchor under 'hardware:', a step that fastens it, and a caution",
    )


def _estimate(block: Standing | None, *, drawers: bool) -> str:
    """Say what tips a piece: about how strong a pull, or how heavy a drawer."""
    if block is None:
        return ""
    if drawers:
        load = block.drawer_load(block.depth * OUT)
        return say(": empty, some {load} on an open drawer begin to tip it", load=about_weight(load))
    return say(": empty, a pull of some {pull} at its top begins to tip it", pull=about_weight(block.pull))


def _is_said(subject: Subject) -> bool:
    kinds = {subject.shop.wares[item.ware].kind for item in subject.fitted.hardware}
    return "wall anchor" in kinds or subject.once("anchor said", _words_say_it)


def _words_say_it(subject: Subject) -> bool:
    plan = subject.plan
    cautions = (*plan.cautions, *(caution for step in plan.steps for caution in step.cautions))
    return any(SAID.search(words_of(caution)) for caution in cautions)


TIP_OVER = Check(
    name="tip-over",
    group="Strength and use",
    title="Can it tip over?",
    meaning="A piece with shelves, doors or drawers from 27 in of height on, and any piece from 48 in "
    "on, that is "
    "more than twice as high as it is deep is easily pulled over by a child; so is one with drawers, "
    "whatever its depth. The estimate takes moments about the front edge, the weight in the middle of the "
    f"depth and nothing inside. It proves nothing: the standards are {STANDARDS}; no plan here claims to "
    "meet them.",
    mend="add a wall anchor and a step that fastens it",
    severity=Severity.WARNING,
    examine=_examine,
    source="27 in: ASTM F2057-23 1.1 and 16 CFR 1261.2, which speak of clothing storage; twice the "
    "depth: a choice "
    "of this project, no published limit",
)
"""Estimates what tips a tall piece, and looks for what fastens it."""
