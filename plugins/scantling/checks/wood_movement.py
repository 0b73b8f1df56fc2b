"""Can a wide solid panel swell and shrink with the seasons?"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from scantling.checks.boxes import Box, boxes, overlap
from scantling.checks.check import Check, Finding, Subject
from scantling.checks.saying import about_up, length
from scantling.checks.statics import movement
from scantling.fault import Severity
from scantling.measure import Length
from scantling.plan import FittedJoin, FittedPart
from scantling.shop import Shop, wood_named
from scantling.words import say

DRY, DAMP = Fraction(6), Fraction(10)
"""Moisture of furniture indoors over the year, percent (FPL-GTR-190 Table 13-2, most areas; from memory)."""
WIDE = Length(6)
"""Narrower boards move too little to harm a frame (common practice)."""
USUAL_SHRINKAGE = Fraction(8)
"""Percent, for woods of which no figure is known: about the middle of Table 4-3."""
LETS_IN = {"groove", "dado", "rabbet"}


def swells(part: FittedPart, shop: Shop) -> Length | None:
    """Return how much wider a solid part is in the damp season than in the dry; None for sheets."""
    source = part.part.source
    stocks = [shop.stocks[name] for name in source.stocks if name in shop.stocks]
    if not stocks or any(stock.is_sheet for stock in stocks):
        return None
    woods = [wood_named(stock.wood) for stock in stocks]
    shrinkage = max((wood.tangential for wood in woods if wood), default=Fraction(0)) or USUAL_SHRINKAGE
    across = part.length if part.part.grain == "width" else part.width
    return movement(across, shrinkage, DRY, DAMP)


def _examine(subject: Subject) -> Iterator[Finding]:
    for join in subject.fitted.joins:
        part = subject.fitted.part(join.join.first)
        if part is None or join.join.how not in LETS_IN:
            continue
        across = part.length if part.part.grain == "width" else part.width
        more = swells(part, subject.shop) if across >= WIDE else None
        if more is not None:
            yield from _let_in(subject, join, part, more)


def _let_in(subject: Subject, join: FittedJoin, part: FittedPart, more: Length) -> Iterator[Finding]:
    grown = say(
        "'{part}' is solid and {width} wide: it swells and shrinks by about {more}",
        part=part.id,
        width=length(part.width),
        more=about_up(more),
    )
    both = (part.id, join.join.second)
    if join.join.glue:
        yield Finding(
            say("{grown}, but is glued into '{second}'", grown=grown, second=join.join.second),
            join.join.place.at("glue").key(),
            "leave the glue out, so that the panel can move in its groove",
            about=both,
        )
    room = _room(subject, join, part)
    if room is not None and room < more:
        yield Finding(
            say(
                "{grown}, but its grooves leave it {room} of room",
                grown=grown,
                room=length(max(room, Length(0))),
            ),
            part.part.place.at("width"),
            f"make it at least {about_up(more)} narrower than the grooves would hold",
            about=both,
        )


def _room(subject: Subject, join: FittedJoin, part: FittedPart) -> Length | None:
    """Return how much room a placed panel has across its grain in the grooves of two facing parts."""
    if join.depth is None:
        return None
    standing = boxes(subject)
    for panel in (box for box in standing if box.part.id == part.id):
        axis = panel.axes[0] if part.part.grain == "width" else panel.axes[1]
        holders = [box for box in standing if box.part.id == join.join.second and _holds(box, panel, axis)]
        below = [box for box in holders if box.centre[axis] < panel.centre[axis]]
        above = [box for box in holders if box.centre[axis] > panel.centre[axis]]
        if below and above:
            low = min(panel.placed.low[axis] - (box.placed.high[axis] - join.depth) for box in below)
            high = min(box.placed.low[axis] + join.depth - panel.placed.high[axis] for box in above)
            return low + high
    return None


def _holds(box: Box, panel: Box, axis: int) -> bool:
    """Return whether a part is one that a panel reaches into along an axis."""
    across = [overlap(box, panel, side) for side in range(3) if side != axis]
    return min(across) > 0 and overlap(box, panel, axis) > 0


WOOD_MOVEMENT = Check(
    name="wood-movement",
    group="Strength and use",
    title="Can a solid panel move with the seasons?",
    meaning="Solid wood grows across its grain in damp months and shrinks in heated ones. A panel from 6 "
    "in of width "
    "that is let into a frame must not be glued there; where it is placed, its grooves must leave it the "
    "room, reckoned "
    "flat-sawn from 6 to 10 % moisture.",
    mend="leave out the glue, and make the panel narrower than its grooves would hold",
    severity=Severity.FAULT,
    examine=_examine,
    source="FPL-GTR-190, Wood Handbook (2010), Eq. 13-2 and 13-3; shrinkage: Table 4-3, or 8 % where it "
    "has none; "
    "moisture indoors: Table 13-2, from memory",
)
"""Computes how much each let-in panel moves, and looks for its room."""
