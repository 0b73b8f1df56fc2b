"""Sizes in a batch, rounded so that they still add up."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.calculators.kit import (
    Ask,
    Batch,
    Calculator,
    Example,
    Figure,
    Given,
    Result,
    Table,
    Value,
    exactly,
)
from scantling.calculators.kit.picture import fit, inches, label, scene
from scantling.drawing import Scene, Shape
from scantling.measure import Length, Rounded, round_to_total
from scantling.words import say

MOST_PARTS = 60
NOTHING = Length(0)


@dataclass(frozen=True, slots=True)
class Stack:
    """Sizes one after the other, with gaps between."""

    exact: tuple[Length, ...]
    shown: tuple[Rounded, ...]
    gap: Length
    total: Length


def stack_of(total: Length, parts: int, grow: Length, gap: Length) -> tuple[Length, ...]:
    """Return sizes that each exceed the one before by `grow` and fill `total` with gaps between."""
    room = total - gap * (parts - 1)
    first = (room - grow * (parts * (parts - 1) // 2)) / parts
    return tuple(first + grow * i for i in range(parts))


def compute(given: Given) -> Result:
    """Return every size, rounded alone and rounded together."""
    gap = given.length("gap")
    if given.has("sizes"):
        batches: tuple[Batch, ...] = given.values["sizes"]
        exact = tuple(batch.length for batch in batches for _ in range(batch.count))
        if len(exact) > MOST_PARTS:
            raise given.refuse(
                "sizes",
                say("{count} sizes are too many", count=len(exact)),
                mend=say("write at most {most}", most=MOST_PARTS),
            )
        total = sum(exact, NOTHING) + gap * (len(exact) - 1)
    else:
        total = given.length("total")
        _must_fit(given, total, gap)
        exact = stack_of(total, given.count("parts"), given.length("grow"), gap)
    stack = Stack(exact, round_to_total(exact, given.display), gap, total)
    return Result(_figures(given, stack), _working(given, stack), (_table(given, stack),), _remarks(), stack)


def _must_fit(given: Given, total: Length, gap: Length) -> None:
    parts, grow = given.count("parts"), given.length("grow")
    if gap * (parts - 1) >= total:
        raise given.refuse("gap", say("the gaps take the whole"), given.under(total / (parts - 1)))
    room = total - gap * (parts - 1)
    steps = parts * (parts - 1) // 2
    if grow * steps >= room:
        raise given.refuse(
            "grow", say("steps so large leave nothing for the first"), given.under(room / steps)
        )


def _figures(given: Given, stack: Stack) -> tuple[Figure, ...]:
    alone = sum((given.display.round(one).value for one in stack.exact), NOTHING)
    together = sum((one.value for one in stack.shown), NOTHING)
    exact = sum(stack.exact, NOTHING)
    return (
        Figure("first", say("First"), stack.shown[0].value, main=True),
        Figure("last", say("Last"), stack.shown[-1].value, main=True),
        Figure("sum", say("Sizes as shown, added up"), together),
        Figure("whole", say("The whole, gaps included"), stack.total),
        Figure("alone", say("Rounded each alone they would be out by"), abs(alone - exact), fine=True),
        Figure("together", say("Rounded together they are out by"), abs(together - exact), fine=True),
    )


def _working(given: Given, stack: Stack) -> tuple[str, ...]:
    count, shown = len(stack.exact), given.display
    if given.has("sizes"):
        return (
            say(
                "{count} sizes, together {exact}",
                count=count,
                exact=exactly(sum(stack.exact, NOTHING), shown),
            ),
        )
    steps, grow = count * (count - 1) // 2, exactly(given.length("grow"), shown)
    room = exactly(stack.total - stack.gap * (count - 1), shown)
    return (
        say(
            "first: ({room} − {steps} × {grow}) ÷ {count} = {exact}",
            room=room,
            steps=steps,
            grow=grow,
            count=count,
            exact=exactly(stack.exact[0], shown),
        ),
    )


def _table(given: Given, stack: Stack) -> Table:
    rows: list[tuple[Value, ...]] = []
    at = NOTHING
    for i, (exact, shown) in enumerate(zip(stack.exact, stack.shown, strict=True)):
        at = at + shown.value
        rows.append((i + 1, exactly(exact, given.display), given.display.length(exact), shown.text, at))
        at = at + stack.gap
    headings = (say("Part"), say("Exactly"), say("Rounded alone"), say("Cut to"), say("Ends at"))
    return Table(say("Every part"), headings, tuple(rows))


def _remarks() -> tuple[str, ...]:
    return (
        say(
            "Each is within one mark of its exact size, and together they are the whole to the nearest mark."
        ),
    )


def draw(given: Given, result: Result) -> Scene:
    """Return the parts stacked up, each with its size."""
    stack: Stack = result.shape
    high = inches(stack.total)
    frame = fit(high * 0.7, high, most=min(330.0, 46 + 26.0 * len(stack.exact)), left=80, right=90)
    shapes: list[Shape] = [frame.wood(0, 0, frame.wide, high, look="edge paper", grain="")]
    at = 0.0
    for exact, shown in zip(stack.exact, stack.shown, strict=True):
        tall = inches(exact)
        shapes.append(frame.wood(0, at, frame.wide, tall, grain="x" if tall * frame.scale > 16 else ""))
        if tall * frame.scale > 11:
            shapes.append(
                label(frame.x(frame.wide / 2), frame.y(at + tall / 2) + 4, shown.text, look="ink board")
            )
        at += tall + inches(stack.gap)
    shapes.append(frame.upright(0, high, given.write(stack.total)))
    return scene(
        frame.bottom + 16,
        shapes,
        say("Parts that add up"),
        say("{count} parts, together {total}.", count=len(stack.exact), total=given.write(stack.total)),
    )


CALCULATOR = Calculator(
    slug="batch-rounding",
    title="Sizes that must add up",
    question="How do I round a row of sizes so that they still fill the space?",
    subject="laying out",
    asks=(
        Ask("total", "The whole to fill", "length", "28 in", "700 mm", "1/2 in", "100 ft"),
        Ask("parts", "Parts", "count", "4", least="2", most="60"),
        Ask("grow", "Each larger than the one before by", "length", "1 in", "25 mm", "0 in", "10 ft"),
        Ask("gap", "Gap between them", "length", "1/8 in", "3 mm", "0 in", "10 ft"),
        Ask(
            "sizes",
            "Or your own sizes",
            "lengths",
            optional=True,
            help="written here they take the place of the three first",
        ),
    ),
    compute=compute,
    formula=(
        "first = (whole − gaps − grow × parts × (parts − 1) ÷ 2) ÷ parts",
        "rounding: all down to a mark; the marks then missing go to those that lost most",
    ),
    source=("Arithmetic; the rounding is the method of largest remainders.",),
    exactness="Each size is within one mark of the exact one, and the sum is the whole to the nearest mark.",
    example=Example(
        "Five drawer fronts fill 31 in, each 3/4 in higher than the one above, with 1/8 in between.",
        {"total": "31 in", "parts": "5", "grow": "3/4 in", "gap": "1/8 in"},
    ),
    draw=draw,
    words="graduated drawers, stair-step, rounding error, add up, cumulative, divide a space",
    features=("drawer",),
)
