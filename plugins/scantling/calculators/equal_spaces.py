"""Dividers of a known thickness in an opening, with equal spaces between them."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, Table, exactly
from scantling.calculators.kit.picture import fit, inches, label, scene
from scantling.drawing import Scene, Shape
from scantling.measure import Length, round_to_total
from scantling.words import say

SPACES_OUTSIDE, DIVIDERS_OUTSIDE, ONE_OF_EACH = "spaces", "dividers", "one of each"
_MORE = {SPACES_OUTSIDE: 1, DIVIDERS_OUTSIDE: -1, ONE_OF_EACH: 0}
"""How many more spaces than dividers there are."""


@dataclass(frozen=True, slots=True)
class Layout:
    """Where every divider starts, from one end of the opening."""

    opening: Length
    thickness: Length
    space: Length
    starts: tuple[Length, ...]


def lay_out(opening: Length, dividers: int, thickness: Length, ends: str) -> Layout:
    """Return where dividers stand that leave equal spaces."""
    spaces = dividers + _MORE[ends]
    space = (opening - thickness * dividers) / spaces
    first = space if ends == SPACES_OUTSIDE else Length(0)
    return Layout(opening, thickness, space, tuple(first + (space + thickness) * i for i in range(dividers)))


def compute(given: Given) -> Result:
    """Return the space, and every mark from one end."""
    opening, thickness = given.length("opening"), given.length("thickness")
    dividers, ends = given.count("dividers"), given.choice("ends")
    _must_fit(given, opening, thickness, dividers, ends)
    layout = lay_out(opening, dividers, thickness, ends)
    spaces = dividers + _MORE[ends]
    figures = (
        Figure("space", say("Each space"), layout.space, times=spaces, run=say("spaces"), main=True),
        Figure(
            "step",
            say("From one divider to the next"),
            layout.space + thickness,
            times=spaces,
            run=say("steps"),
        ),
        Figure("spaces", say("Spaces"), spaces),
    )
    shown = given.display
    working = (
        (
            f"({exactly(opening, shown)} − {dividers} × {exactly(thickness, shown)}) ÷ {spaces} "
            f"= {exactly(layout.space, shown)}"
        ),
    )
    return Result(figures, working, (_marks(given, layout, spaces),), _remarks(), layout)


def _must_fit(given: Given, opening: Length, thickness: Length, dividers: int, ends: str) -> None:
    fewest = max(1, 1 - _MORE[ends])
    if thickness * fewest >= opening:
        message = say(
            "{fewest} of {thickness} would fill the opening of {opening}",
            fewest=fewest,
            thickness=given.write(thickness),
            opening=given.write(opening),
        )
        raise given.refuse("thickness", message, given.under(opening / fewest))
    if dividers < fewest:
        raise given.refuse(
            "dividers", say("{dividers} is too few to have one at both ends", dividers=dividers), str(fewest)
        )
    if thickness * dividers >= opening:
        most = _most_below(opening, thickness)
        message = say(
            "{dividers} dividers of {thickness} leave no room in {opening}",
            dividers=dividers,
            thickness=given.write(thickness),
            opening=given.write(opening),
        )
        raise given.refuse("dividers", message, str(most))


def _most_below(opening: Length, thickness: Length) -> int:
    """Return how many fit with something left."""
    whole = opening // thickness
    return whole - 1 if opening % thickness == Length(0) else whole


def _marks(given: Given, layout: Layout, spaces: int) -> Table:
    shared = round_to_total([layout.space] * spaces, given.display)
    rows = []
    for i, start in enumerate(layout.starts):
        before = shared[i].text if i < len(shared) else ""
        rows.append((i + 1, start, start + layout.thickness, before))
    headings = (say("Divider"), say("Starts at"), say("Ends at"), say("Space to cut a spacer for"))
    return Table(say("Marks, all from the same end"), headings, tuple(rows))


def _remarks() -> tuple[str, ...]:
    return (
        (
            say(
                "Mark every divider from the same end: then no rounding adds up. Spacers cut to the "
                "last column fill the opening to its rounded size."
            )
        ),
    )


def draw(given: Given, result: Result) -> Scene:
    """Return the opening with its dividers, and the first space measured."""
    layout: Layout = result.shape
    wide = inches(layout.opening)
    frame = fit(wide, wide * 0.3, most=130)
    shapes: list[Shape] = [frame.wood(0, 0, wide, wide * 0.3, look="edge paper", grain="")]
    thick = inches(layout.thickness)
    shapes += [frame.wood(inches(start), 0, thick, frame.high, grain="y") for start in layout.starts]
    first = 0.0 if layout.starts[0] > Length(0) else thick
    words = given.write(layout.space)
    shapes.append(frame.across(first, first + inches(layout.space), words, above=14))
    shapes.append(frame.across(0, wide, given.write(layout.opening), below=36))
    if len(layout.starts) <= 12:
        for i, start in enumerate(layout.starts):
            shapes.append(label(frame.x(inches(start) + thick / 2), frame.bottom + 14, str(i + 1)))
    told = say(
        "{count} dividers in {opening}, {words} between them.",
        count=len(layout.starts),
        opening=given.write(layout.opening),
        words=words,
    )
    return scene(frame.bottom + 56, shapes, say("Dividers in an opening"), told)


CALCULATOR = Calculator(
    slug="equal-spaces",
    title="Equal spaces between dividers",
    question="Where do the dividers go so that all the spaces are the same?",
    subject="laying out",
    asks=(
        Ask("opening", "Opening, inside", "length", "36 in", "900 mm", "1/8 in", "100 ft"),
        Ask("dividers", "Number of dividers", "count", "5", least="1", most="100"),
        Ask("thickness", "Thickness of one", "length", "3/4 in", "18 mm", "1/64 in", "10 ft"),
        Ask(
            "ends",
            "At the two ends of the opening",
            "choice",
            SPACES_OUTSIDE,
            choices=(SPACES_OUTSIDE, DIVIDERS_OUTSIDE, ONE_OF_EACH),
            help="a space at both ends, a divider at both ends, or one of each",
        ),
    ),
    compute=compute,
    formula=(
        "space = (opening − dividers × thickness) ÷ spaces",
        "spaces = dividers + 1 with spaces at both ends, − 1 with dividers at both ends",
    ),
    source=("Arithmetic: spaces and dividers together are the opening.",),
    exactness="Exact; each mark is rounded once, by itself.",
    example=Example(
        "The record bench at the Tern Street Workshop is 46 1/2 in wide inside and gets 3 upright dividers "
        "of 3/4 in plywood.",
        {"opening": "46 1/2 in", "dividers": "3", "thickness": "3/4 in", "ends": SPACES_OUTSIDE},
    ),
    draw=draw,
    words="divider spacing, compartments, cubbies, partitions, even gaps, layout",
    features=("slat", "divider", "shel"),
)
