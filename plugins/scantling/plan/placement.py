"""Where a part's instances sit and how they are turned, as an author writes it.

x runs across from the left, y back from the front, z up from the floor. A part is placed by one of its
sides on each of the three ways; what is left out is at 0.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from scantling.fault import Place
from scantling.form import COUNT, FORMULA, LENGTH_FORMULA, Choice, Field, Form, ListOf, Record, Words
from scantling.formula import Formula

WAYS = ("across", "back", "up")
"""The ways along x, y and z."""
FACES = {"side": 0, "front": 1, "up": 2}
"""Which way a part's wide face looks, and the axis of its thickness."""
LOW, HIGH, MIDDLE = (
    ("left", "front", "bottom"),
    ("right", "back", "top"),
    ("middle", "mid depth", "mid height"),
)
"""What the two ends and the middle of a part are called along each way."""
ANCHORS = (*LOW, *HIGH, *MIDDLE)
"""Every name by which a part can be placed, and by which formulas can find it: `leg.top`."""
EVERY_COPY = {"both": ("across", "back"), "none": ()}


@dataclass(frozen=True, slots=True)
class Repeat:
    """Several along one way: evenly between two places, or at a fixed distance."""

    way: str
    count: Formula | None
    """None: as many as the part's count leaves."""
    start: Formula | None
    to: Formula | None
    ends: str
    every: Formula | None
    place: Place


_INHERITED = (
    *("runs", "faces", "mirror", "repeats", "brace", "rises", "crossed", "long_side"),
    *("lean", "leans", "slides", "swings"),
)
"""What a later place takes from the first where it is silent, beside the sides."""


@dataclass(frozen=True, slots=True)
class Placement:
    """One line of a part's placement; it may stand for several instances."""

    runs: str | None
    faces: str | None
    anchors: Mapping[str, Formula]
    mirror: tuple[str, ...] | None
    repeats: tuple[Repeat, ...] | None
    brace: str | None
    rises: str | None
    crossed: str | None
    long_side: str | None
    lean: Formula | None
    leans: tuple[str, ...] | None
    slides: str | None
    swings: str | None
    place: Place

    def after(self, first: Placement) -> Placement:
        """Return this placement with what it leaves out taken from the first one."""
        anchors = dict(self.anchors)
        for axis in range(3):
            names = (LOW[axis], HIGH[axis], MIDDLE[axis])
            if not any(name in self.anchors for name in names):
                anchors |= {name: first.anchors[name] for name in names if name in first.anchors}
        taken = {key: getattr(first, key) for key in _INHERITED if getattr(self, key) is None}
        mine = {name: getattr(self, name) for name in self.__dataclass_fields__}
        return Placement(**{**mine, **taken, "anchors": anchors})

    @property
    def axes(self) -> tuple[int, int, int]:
        """Along which of x, y, z the length, the width and the thickness run."""
        if self.brace:
            thick = self.across_plane
            low, high = (axis for axis in range(3) if axis != thick)
            return low, high, thick
        length = WAYS.index(self.runs or "across")
        thick = FACES[self.faces] if self.faces else (1 if length == 2 else 2)
        return length, 3 - length - thick, thick

    @property
    def across_plane(self) -> int:
        """For a brace: the axis square to its opening, which is the one not placed at both ends."""
        both = [LOW[axis] in self.anchors and HIGH[axis] in self.anchors for axis in range(3)]
        return both.index(False) if False in both else 1

    @property
    def mirrored(self) -> tuple[int, ...]:
        """The axes along which a mirrored copy is made."""
        return tuple(WAYS.index(way) for way in self.mirror or ())

    @property
    def is_crossed(self) -> bool:
        """True for a pair of braces that cross."""
        return self.crossed is not None and self.crossed != "no"


def _repeat(*, found_at: Place, **fields: Any) -> Repeat:
    return Repeat(start=fields.pop("from"), **fields, place=found_at)


def _placement(*, found_at: Place, **fields: Any) -> Placement:
    anchors = {name: fields.pop(name.replace(" ", "_")) for name in ANCHORS}
    mirror = fields.pop("mirror")
    copies = (
        None if mirror is None else tuple(way for word in mirror for way in EVERY_COPY.get(word, (word,)))
    )
    return Placement(
        anchors={name: formula for name, formula in anchors.items() if formula is not None},
        mirror=copies,
        repeats=fields.pop("repeat"),
        place=found_at,
        **fields,
    )


REPEAT: Form[Repeat] = Form(
    "a repeat",
    _repeat,
    (
        Field("way", Choice(WAYS), "the way they follow each other", required=True, example="up"),
        Field("count", COUNT, "how many; left out: as many as the part's count leaves"),
        Field("from", LENGTH_FORMULA, "where the room for them begins", example="bottom.top"),
        Field("to", LENGTH_FORMULA, "where the room for them ends", example="top.bottom"),
        Field(
            "ends",
            Choice(("gap", "flush")),
            "gap: as much room before the first and after the last as between them; flush: none",
            default="gap",
        ),
        Field("every", LENGTH_FORMULA, "instead of from and to: a fixed distance", example="16 in"),
    ),
    "Several along one way, evenly between two places or at a fixed distance from the first.",
)
"""The form of a repeat."""

PLACE: Form[Placement] = Form(
    "a place",
    _placement,
    (
        Field("runs", Choice(WAYS), "the way its length runs; left out: across"),
        Field(
            "faces",
            Choice(tuple(FACES)),
            "where its wide face looks; left out: up, or front for a part that runs up",
        ),
        Field("left", LENGTH_FORMULA, "where its left side is, from the left of the whole", example="1 in"),
        Field("right", LENGTH_FORMULA, "instead: where its right side is", example="width - 1 in"),
        Field("middle", LENGTH_FORMULA, "instead: where its middle is, from the left", example="width / 2"),
        Field("front", LENGTH_FORMULA, "where its front is, from the front of the whole"),
        Field(
            "back", LENGTH_FORMULA, "instead: where its back is, from the front of the whole", example="depth"
        ),
        Field("mid depth", LENGTH_FORMULA, "instead: where its middle is, from the front"),
        Field("bottom", LENGTH_FORMULA, "where its underside is, from the floor", example="leg.top"),
        Field("top", LENGTH_FORMULA, "instead: where its top is", example="leg.top"),
        Field("mid height", LENGTH_FORMULA, "instead: where its middle is, from the floor"),
        Field(
            "mirror",
            Words(),
            "across, back, up or both (across and back): as many more, mirrored about the whole's middle",
            example="both",
        ),
        Field("repeat", ListOf(Record(REPEAT)), "several of them, evenly; two repeats make a pattern"),
        Field(
            "brace",
            Choice(("rails", "posts", "corners")),
            "a brace in the opening that both ends of two ways give: seated on its rails, on its posts, or "
            "pointed into its corners; gives `fit length` and `fit angle`",
        ),
        Field(
            "rises",
            Choice(("right", "left", "back", "front")),
            "the way a brace goes up; left out: right, or back",
        ),
        Field(
            "crossed",
            Choice(("passing", "half-lap", "no")),
            "two braces that cross: one behind the other, or let into each other",
        ),
        Field(
            "long side",
            Choice((*LOW, *HIGH)),
            "for mitred or bevelled ends: the side that keeps the whole length",
        ),
        Field("lean", FORMULA, "how far it leans from upright or level", example="5 deg"),
        Field(
            "leans",
            Words(),
            "the side to which its top leans; two sides for a leg that is splayed both ways, its ends level",
            example="right, back",
        ),
        Field(
            "slides",
            Choice((*LOW, *HIGH)),
            "the way it is pulled out, with all that slides the same way; nothing may be in its path",
            example="front",
        ),
        Field(
            "swings",
            Choice(("left", "right", "bottom", "top")),
            "the side at which a door or flap is hinged, to open to the front",
            example="left",
        ),
    ),
    "Where a part sits: one side on each way (x across, y back, z up). In a list, what a later place "
    "leaves out is as in the first. Formulas find the first one by `name.left`, `.right`, `.middle`, "
    "`.front`, `.back`, `.mid depth`, `.bottom`, `.top` and `.mid height`.",
)
"""The form of a place."""


def placements_of(placement: tuple[Placement, ...]) -> tuple[Placement, ...]:
    """Return the places with what later ones leave out filled in from the first."""
    return (*placement[:1], *(place.after(placement[0]) for place in placement[1:]))
