"""Slats or balusters across an opening, where no gap may be larger than so much."""

from __future__ import annotations

from scantling.calculators.equal_spaces import SPACES_OUTSIDE, Layout, lay_out
from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, Table, exactly
from scantling.calculators.kit.picture import fit, inches, scene
from scantling.drawing import Scene, Shape
from scantling.measure import Length, round_number
from scantling.words import say


def fewest(opening: Length, slat: Length, largest: Length) -> int:
    """Return the fewest slats that leave no gap above the largest."""
    return max(0, round_number((opening - largest) / (slat + largest), "up"))


def compute(given: Given) -> Result:
    """Return how many slats, the gap, and every mark from one end."""
    opening, slat, largest = given.length("opening"), given.length("slat"), given.length("largest-gap")
    count = fewest(opening, slat, largest)
    if count == 0:
        raise given.refuse(
            "largest-gap",
            say("the opening itself is no wider than {largest}", largest=given.write(largest)),
            given.under(opening),
        )
    if slat * count >= opening:
        message = say(
            "{count} slats of {slat} are wider than {opening}",
            count=count,
            slat=given.write(slat),
            opening=given.write(opening),
        )
        raise given.refuse("slat", message, given.under(opening / count))
    layout = lay_out(opening, count, slat, SPACES_OUTSIDE)
    figures = (
        Figure("slats", say("Slats"), count, main=True),
        Figure(
            "gap", say("Each gap"), layout.space, way="nearest", times=count + 1, run=say("gaps"), main=True
        ),
        Figure("step", say("From one slat to the next"), layout.space + slat, times=count, run=say("steps")),
        Figure("length", say("Slat width, all together"), slat * count),
    )
    rows = tuple((i + 1, start, start + slat) for i, start in enumerate(layout.starts))
    shown = given.display
    working = (
        (
            say(
                "slats: ({opening} − {largest}) ÷ ({slat} + {largest}), rounded up, = {count}",
                opening=exactly(opening, shown),
                largest=exactly(largest, shown),
                slat=exactly(slat, shown),
                count=count,
            )
        ),
        (
            say(
                "gap: ({opening} − {count} × {slat}) ÷ {count2} = {space}",
                opening=exactly(opening, shown),
                count=count,
                slat=exactly(slat, shown),
                count2=count + 1,
                space=exactly(layout.space, shown),
            )
        ),
    )
    table = Table(say("Marks, all from the same end"), (say("Slat"), say("Starts at"), say("Ends at")), rows)
    return Result(figures, working, (table,), _remarks(given, layout, largest), layout)


def _remarks(given: Given, layout: Layout, largest: Length) -> tuple[str, ...]:
    remark = say("Mark every slat from the same end, so that no rounding adds up.")
    if given.display.round(layout.space).value > largest:
        return (
            remark,
            say("The rounded gap is a hair above the limit: mark, do not step off, or add a slat."),
        )
    return (remark,)


def draw(given: Given, result: Result) -> Scene:
    """Return slats between two rails, and the first gap measured."""
    layout: Layout = result.shape
    wide = inches(layout.opening)
    frame = fit(wide, wide * 0.36, most=140)
    high, slat = frame.high, inches(layout.thickness)
    shapes: list[Shape] = [frame.wood(inches(start), 0, slat, high, grain="y") for start in layout.starts]
    shapes += [frame.wood(0, y, wide, high * 0.09, look="edge side") for y in (0.0, high * 0.91)]
    gap = given.write(layout.space)
    shapes.append(frame.across(0, inches(layout.space), gap, above=14))
    shapes.append(frame.across(0, wide, given.write(layout.opening), below=24))
    told = say(
        "{count} slats in {opening}, {gap} between them.",
        count=len(layout.starts),
        opening=given.write(layout.opening),
        gap=gap,
    )
    return scene(frame.bottom + 44, shapes, say("Slats in an opening"), told)


CALCULATOR = Calculator(
    slug="slats",
    title="Slats with a largest gap",
    question="How many slats do I need so that no gap is too wide?",
    subject="laying out",
    asks=(
        Ask("opening", "Opening between the posts", "length", "60 in", "1500 mm", "1/4 in", "100 ft"),
        Ask("slat", "Width of one slat", "length", "1 1/2 in", "38 mm", "1/16 in", "4 ft"),
        Ask("largest-gap", "Largest gap allowed", "length", "3 1/2 in", "90 mm", "1/16 in", "4 ft"),
    ),
    compute=compute,
    formula=(
        "slats = (opening − largest gap) ÷ (slat + largest gap), rounded up",
        "gap = (opening − slats × slat) ÷ (slats + 1)",
    ),
    source=("Arithmetic: slats and gaps together are the opening.",),
    exactness="Exact; each mark is rounded once, by itself.",
    caution=(
        "A guard that keeps a child from falling has a largest gap set by the local building code; "
        "ask there, "
        "and never guess it. Do not build a crib or a child's bed rail from this."
    ),
    example=Example(
        "A bench back for the harbour wall is 58 in between its posts; nobody's cap should fall through, "
        "so gaps stay under 3 in between slats of 2 1/2 in.",
        {"opening": "58 in", "slat": "2 1/2 in", "largest-gap": "3 in"},
    ),
    draw=draw,
    words="balusters, spindles, pickets, railing, gap, spacing, bench back, bed slats",
    features=("slat", "baluster"),
)
