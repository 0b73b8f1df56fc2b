"""A plan at one size: every formula a number, every count a whole number."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from scantling.formula import Value
from scantling.measure import Angle, Area, Length
from scantling.plan.model import Erratum, Hardware, Join, Part, Plan, Step, Work
from scantling.plan.placement_placed import Placed
from scantling.plan.prose import Quote
from scantling.words import say


@dataclass(frozen=True, slots=True)
class Choice:
    """What a reader chose: a value for named sizes, a word for options. What is left out is as usual."""

    sizes: Mapping[str, Value]
    options: Mapping[str, str]


USUAL = Choice({}, {})
"""Every size and option as the author set it."""


@dataclass(frozen=True, slots=True)
class FittedProse:
    """Prose at one size: text, and values where the author quoted one."""

    pieces: tuple[str | Quoted, ...]

    def __bool__(self) -> bool:
        """Return whether there is any text."""
        return bool(self.pieces)


NO_PROSE = FittedProse(())


@dataclass(frozen=True, slots=True)
class Quoted:
    """A value quoted in prose, with the formula it came from."""

    value: Value
    quote: Quote


@dataclass(frozen=True, slots=True)
class FittedEnd:
    """The cut at one end, with its angle away from square."""

    kind: str
    angle: Angle


@dataclass(frozen=True, slots=True)
class FittedWork:
    """Work on a part, with its measures; None where the author gave none."""

    work: Work
    width: Length | None
    depth: Length | None
    length: Length | None
    from_end: Length | None
    count: int | None
    apart: Length | None
    note: FittedProse


@dataclass(frozen=True, slots=True)
class Blank:
    """What is cut from stock for one part, before it is glued up or trimmed."""

    along: Length
    """Measure along the stock's length."""
    across: Length
    """Measure across it."""
    pieces: int
    """How many are cut for one part (its layers or its strips)."""
    may_turn: bool
    """True if it may lie across the grain."""
    least_across: Length
    """The narrowest that will do, where kerf eats into the last strip."""


@dataclass(frozen=True, slots=True)
class FittedPart:
    """One kind of piece at one size."""

    part: Part
    count: int
    length: Length
    width: Length
    thick: Length
    layer_thick: Length
    """Thickness of one piece of the blank: a layer's, or the part's own."""
    blank: Blank
    ends: tuple[FittedEnd, FittedEnd] | None
    work: tuple[FittedWork, ...]
    note: FittedProse
    placed: tuple[Placed, ...] = ()
    """Each instance in its place; none where the plan does not say where."""

    @property
    def id(self) -> str:
        """Return the part's name."""
        return self.part.id

    @property
    def letter(self) -> str:
        """Return the part's mark on diagrams."""
        return self.part.letter

    @property
    def is_trimmed(self) -> bool:
        """True if the blank is larger than the finished part."""
        return (
            self.part.glue_up is not None
            or self.blank.along > self.length
            or self.blank.across > self._across
        )

    @property
    def _across(self) -> Length:
        return self.length if self.part.grain == "width" else self.width

    @property
    def surface(self) -> Area:
        """Return the area of the six faces of one piece."""
        return 2 * (self.length * self.width + self.length * self.thick + self.width * self.thick)


@dataclass(frozen=True, slots=True)
class FittedOffcut:
    """A strip that falls off when a part is trimmed after glue-up."""

    of: str
    count: int
    length: Length
    width: Length
    """The larger side of its section."""
    thick: Length


@dataclass(frozen=True, slots=True)
class FittedJoin:
    """A join at one size."""

    join: Join
    each: int
    joints: int
    depth: Length | None
    fastener: str
    """Ware in the shop file, or "" where the join takes none."""

    @property
    def fasteners(self) -> int:
        """Return how many fasteners all its joints take."""
        return self.each * self.joints if self.fastener else 0


@dataclass(frozen=True, slots=True)
class FittedHardware:
    """Something bought that is not wood, at one size."""

    ware: str
    count: Fraction
    """Pieces that the plan takes (screws, not boxes); 0 if it is bought by area or length alone."""
    area: Area | None
    length: Length | None
    note: FittedProse
    hardware: Hardware | None
    """As the author wrote it; None for what follows from joins and banding."""
    whose: str = ""
    """The plan that it is for, where several are bought for at once: told instead of what it joins."""
    joined: tuple[tuple[str, str], ...] = ()
    """The parts that it joins, two and two, where it follows from joins."""
    is_banding: bool = False

    @property
    def why(self) -> str:
        """Return what it is for, where the author did not write it, in the language that is spoken now.

        A plan may be fitted before its page's language is known.
        """
        if self.whose:
            return self.whose
        if self.is_banding:
            return say("banded edges")
        return ", ".join(say("{one} to {other}", one=one, other=other) for one, other in self.joined)


@dataclass(frozen=True, slots=True)
class FittedUse:
    """What a step uses up."""

    name: str
    count: int


@dataclass(frozen=True, slots=True)
class FittedStep:
    """One step at one size."""

    step: Step
    number: int
    title: FittedProse
    text: FittedProse
    uses: tuple[FittedUse, ...]
    needs: tuple[FittedUse, ...]
    cautions: tuple[FittedProse, ...]


@dataclass(frozen=True, slots=True)
class FittedErratum:
    """A dated note at one size."""

    erratum: Erratum
    text: FittedProse


@dataclass(frozen=True, slots=True)
class FittedPlan:
    """A plan at one size."""

    plan: Plan
    sizes: Mapping[str, Value]
    options: Mapping[str, str]
    values: Mapping[str, Value]
    """Every name and what it comes to."""
    parts: tuple[FittedPart, ...]
    """Only those that are there at this size, in the author's order."""
    offcuts: tuple[FittedOffcut, ...] = ()
    joins: tuple[FittedJoin, ...] = ()
    hardware: tuple[FittedHardware, ...] = ()
    steps: tuple[FittedStep, ...] = ()
    summary: FittedProse = NO_PROSE
    intro: FittedProse = NO_PROSE
    cautions: tuple[FittedProse, ...] = ()
    errata: tuple[FittedErratum, ...] = ()
    notes: tuple[FittedErratum, ...] = ()

    @property
    def is_usual(self) -> bool:
        """True if every size and option is as the author set it."""
        plan = self.plan
        return all(self.sizes.get(size.name) == size.usual for size in plan.sizes.values()) and all(
            self.options.get(name) == option.usual for name, option in plan.options.items()
        )

    def part(self, name: str) -> FittedPart | None:
        """Return the part of that name, or None if it is not there at this size."""
        return next((part for part in self.parts if part.id == name), None)

    def overall(self) -> dict[str, Length]:
        """Return the width, depth and height of the whole piece, as far as the plan names them."""
        found: dict[str, Length] = {}
        for axis in ("width", "depth", "height"):
            value = self.values.get(self.plan.overall.get(axis, axis))
            if isinstance(value, Length):
                found[axis] = value
        return found
