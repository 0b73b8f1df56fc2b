"""The plan as its author wrote it: formulas, not numbers."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from scantling.fault import Place
from scantling.formula import Formula, Value
from scantling.measure import Angle, Length
from scantling.plan.placement import Placement
from scantling.plan.prose import Prose


@dataclass(frozen=True, slots=True)
class Size:
    """A named dimension that the reader may choose."""

    name: str
    usual: Value
    least: Value
    most: Value
    step: Value
    offered: tuple[Value, ...]
    """Further values for which a page is made."""
    meaning: str
    place: Place

    def count_steps(self, step: Value | None = None) -> int:
        """Return how many whole steps lie between the least and the most.

        Args:
            step: of another width than the size's own; of the same kind.
        """
        least, most, by = self.least, self.most, self.step if step is None else step
        if isinstance(least, Fraction) and isinstance(most, Fraction) and isinstance(by, Fraction):
            return int((most - least) / by)
        if isinstance(least, Length) and isinstance(most, Length) and isinstance(by, Length):
            return int((most - least) / by)
        if isinstance(least, Angle) and isinstance(most, Angle) and isinstance(by, Angle):
            return int((most - least) / by)
        return 0

    def at(self, index: int, step: Value | None = None) -> Value:
        """Return the value that lies so many steps above the least."""
        least, by = self.least, self.step if step is None else step
        if isinstance(least, Fraction) and isinstance(by, Fraction):
            return least + by * index
        if isinstance(least, Length) and isinstance(by, Length):
            return least + by * index
        if isinstance(least, Angle) and isinstance(by, Angle):
            return least + by * index
        return least

    def steps_from(self, one: Value, other: Value) -> Fraction:
        """Return how many steps lie between two values, whichever is greater."""
        if isinstance(one, Fraction) and isinstance(other, Fraction) and isinstance(self.step, Fraction):
            return abs((one - other) / self.step)
        if isinstance(one, Length) and isinstance(other, Length) and isinstance(self.step, Length):
            return abs((one - other) / self.step)
        if isinstance(one, Angle) and isinstance(other, Angle) and isinstance(self.step, Angle):
            return abs((one - other) / self.step)
        return Fraction(0)


@dataclass(frozen=True, slots=True)
class Option:
    """A choice that the reader makes."""

    name: str
    question: str
    choices: Mapping[str, str]
    """What each choice means, by its name."""
    usual: str
    place: Place


@dataclass(frozen=True, slots=True)
class GlueUp:
    """How a part is glued up from several pieces."""

    count: Formula
    how: str
    """layers (faces together, adds thickness) or wide (edges together, adds width)."""


@dataclass(frozen=True, slots=True)
class EndCut:
    """The cut at one end: square, or a mitre (seen on the face) or bevel (seen on the edge)."""

    kind: str
    angle: Formula | None
    """Degrees away from a square cut."""


@dataclass(frozen=True, slots=True)
class EndCuts:
    """The cuts at both ends."""

    left: EndCut
    right: EndCut
    parallel: bool
    """True when both ends lean the same way (a brace), False when they lean towards each other (a frame)."""


@dataclass(frozen=True, slots=True)
class Work:
    """Work done on a part after it is cut to size: a groove, a dado, a rabbet, holes, a taper."""

    kind: str
    where: str
    """Which face, edge or end, in words."""
    width: Formula | None
    depth: Formula | None
    length: Formula | None
    from_end: Formula | None
    """Distance of the first one from the left end or lower edge."""
    count: Formula | None
    apart: Formula | None
    note: Prose
    place: Place


@dataclass(frozen=True, slots=True)
class Source:
    """What a part is cut from."""

    stocks: tuple[str, ...]
    """Stock in the shop file; several when any will do (a strip ripped from whichever board is cheapest)."""
    offcut_of: str = ""
    """The part whose offcut it is cut from first, or ""."""


@dataclass(frozen=True, slots=True)
class Part:
    """One kind of piece."""

    id: str
    letter: str
    """Short mark for diagrams; the same at every size."""
    source: Source
    count: Formula
    length: Formula
    width: Formula | None
    """None: as wide as the stock."""
    thick: Formula | None
    """None: as thick as the stock, or as its layers together."""
    only_if: Formula | None
    glue_up: GlueUp | None
    longer: Formula | None
    """How much longer the blank is cut, to be trimmed later."""
    wider: Formula | None
    cut_to_fit: Formula | None
    """How much is bought over, for a part that is marked at assembly."""
    least_width: Formula | None
    """The narrowest that will still do, where the saw's kerf eats into the last strip."""
    grain: str
    """length, width or any: which side of the part runs along the stock's length."""
    bands: tuple[str, ...]
    """Edges that are banded: long 1, long 2, short 1, short 2."""
    band_with: str
    ends: EndCuts | None
    work: tuple[Work, ...]
    placement: tuple[Placement, ...]
    """Where its instances sit; none where the author did not say."""
    note: Prose
    accepts: Mapping[str, str]
    """Checks that are silenced here, with the reason."""
    place: Place
    is_grain_said: bool = False
    """True if the author wrote which way the grain runs."""


@dataclass(frozen=True, slots=True)
class Join:
    """Two kinds of part that meet, and what holds them."""

    first: str
    second: str
    how: str
    fastener: str
    """A ware of the shop file, or "" to find one by the thicknesses, or none for glue alone."""
    each: Formula | None
    """Fasteners in one joint."""
    joints: Formula | None
    glue: bool
    depth: Formula | None
    """How deep one part is let into the other."""
    only_if: Formula | None
    place: Place


@dataclass(frozen=True, slots=True)
class Hardware:
    """Something bought that is not wood."""

    id: str
    ware: str
    count: Formula | None
    area: Formula | None
    """Area to be covered, for finish: coats included."""
    length: Formula | None
    """Length to be covered, for what is sold by the roll."""
    only_if: Formula | None
    note: Prose
    place: Place


@dataclass(frozen=True, slots=True)
class Use:
    """What a step uses up: some or all of a part or of hardware."""

    name: str
    count: Formula | None
    """None: all of them."""
    place: Place
    """Of the name."""
    count_place: Place
    """Of the count's formula; of the name where none is written."""


@dataclass(frozen=True, slots=True)
class Step:
    """One step of the building."""

    title: Prose
    text: Prose
    uses: tuple[Use, ...]
    needs: tuple[Use, ...]
    tools: tuple[str, ...]
    cautions: tuple[Prose, ...]
    only_if: Formula | None
    picture: str
    picture_alt: str
    accepts: Mapping[str, str]
    place: Place


@dataclass(frozen=True, slots=True)
class Erratum:
    """What the author would do differently, or got wrong."""

    day: str
    text: Prose
    parts: tuple[str, ...] = ()
    """The parts that it touches."""
    place: Place = field(default_factory=Place)


@dataclass(frozen=True, slots=True)
class Photo:
    """A picture of the piece that the author took or made, at its usual size."""

    file: str
    alt: str
    place: Place
    caption: str = ""
    """What stands below it."""


@dataclass(frozen=True, slots=True)
class Plan:
    """A plan, true at every size in its range."""

    slug: str
    title: str
    summary: Prose
    intro: Prose
    tags: tuple[str, ...]
    room: str
    skill: str
    build_time: str
    author: str
    licence: str
    revised: str
    tools: tuple[str, ...]
    cautions: tuple[Prose, ...]
    photo: Photo | None
    sizes: Mapping[str, Size]
    offered: tuple[Mapping[str, Value | str], ...]
    """Further whole choices (several sizes and options at once) for which a page is made."""
    lengths: Mapping[str, Formula]
    options: Mapping[str, Option]
    parts: Mapping[str, Part]
    joins: tuple[Join, ...]
    hardware: Mapping[str, Hardware]
    steps: tuple[Step, ...]
    errata: tuple[Erratum, ...]
    notes: tuple[Erratum, ...]
    overall: Mapping[str, str] = field(default_factory=dict)
    """Which name gives the width, depth and height of the whole piece."""
    accepts: Mapping[str, str] = field(default_factory=dict)
    formerly: tuple[str, ...] = ()
    """Folders in which it stood before."""

    @property
    def last_change(self) -> str:
        """Return the day of the revision, or of the last mend if that is later; "" where neither is said."""
        return max((self.revised, *(erratum.day for erratum in self.errata)))
