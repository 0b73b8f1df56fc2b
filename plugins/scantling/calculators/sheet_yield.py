"""A small cutting plan on the spot: rectangles from sheets."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Panel, Result, Table
from scantling.calculators.kit.picture import ROOM, fit, label, scene
from scantling.calculators.kit.whole import Unit, common_unit
from scantling.cutting import Answer, Board, PartItem, Problem, StockItem, solve
from scantling.drawing import Scene, Shape, shorten, text_width
from scantling.measure import Area, Length, Money, local_marks
from scantling.words import counted, say

STEPS = 5_000
"""So few that a phone answers at once; a plan's own page looks much longer."""
MOST_PIECES = 60
MOST_DRAWN = 4
KEPT, FREE = "along the sheet", "either way"


@dataclass(frozen=True, slots=True)
class Cut:
    """The answer of the cutting room with what is needed to read it."""

    answer: Answer
    unit: Unit
    sheet: tuple[Length, Length]
    panels: tuple[Panel, ...]
    names: tuple[str, ...]


def compute(given: Given) -> Result:
    """Return how many sheets, what lies on each, and how much is used."""
    panels: tuple[Panel, ...] = given.values["parts"]
    sheet = (given.length("length"), given.length("width"))
    _must_fit(given, panels, sheet)
    cut = _cut(given, panels, sheet)
    boards = cut.answer.boards
    used = sum((panel.length * panel.width * panel.count for panel in panels), Area(0))
    bought = sheet[0] * sheet[1] * len(boards)
    figures = [
        Figure("sheets", say("Sheets to buy"), len(boards), main=True),
        Figure("pieces", say("Pieces"), sum(panel.count for panel in panels)),
        Figure("used", say("Of the sheets ends up in the pieces"), used / bought * 100, "%", places=0),
        Figure("area", say("Area of the pieces"), used),
    ]
    if given.has("price"):
        price = given.money("price")
        figures.insert(1, Figure("cost", say("Price of the sheets"), price * len(boards), main=True))
        figures.append(
            Figure(
                "by-area",
                say("By area alone that would be"),
                Money(1).times(price.cents * (used / (sheet[0] * sheet[1]))),
            )
        )
    return Result(tuple(figures), _working(used, sheet), (_table(cut),), _remarks(cut), cut)


def _must_fit(given: Given, panels: tuple[Panel, ...], sheet: tuple[Length, Length]) -> None:
    trim = given.length("trim") * 2
    long, wide = sheet[0] - trim, sheet[1] - trim
    if min(long, wide) <= Length(0):
        raise given.refuse("trim", say("trimming takes the whole sheet"), given.under(min(sheet) / 2))
    if given.length("kerf") >= min(sheet):
        raise given.refuse("kerf", say("the kerf is as wide as the sheet"), given.under(min(sheet)))
    if sum(panel.count for panel in panels) > MOST_PIECES:
        message = say("more than {most} pieces are for a plan with its own cutting plan", most=MOST_PIECES)
        raise given.refuse("parts", message, _listed(given, _fewer(panels)))
    free = given.choice("grain") == FREE
    for panel in panels:
        if not _goes(panel, long, wide, free=free):
            size = say(
                "{length} by {width}", length=given.write(panel.length), width=given.write(panel.width)
            )
            message = say("a piece of {size} is larger than the sheet", size=size)
            raise given.refuse(
                "parts", message, _listed(given, tuple(_smaller(one, long, wide, free) for one in panels))
            )


def _goes(panel: Panel, long: Length, wide: Length, *, free: bool) -> bool:
    straight = panel.length <= long and panel.width <= wide
    return straight or (free and panel.width <= long and panel.length <= wide)


def _smaller(panel: Panel, long: Length, wide: Length, free: bool) -> Panel:  # noqa: FBT001 - private
    if _goes(panel, long, wide, free=free):
        return panel
    return Panel(panel.count, min(panel.length, long), min(panel.width, wide))


def _fewer(panels: tuple[Panel, ...]) -> tuple[Panel, ...]:
    left, kept = MOST_PIECES, []
    for panel in panels:
        if left > 0:
            kept.append(Panel(min(panel.count, left), panel.length, panel.width))
            left -= panel.count
    return tuple(kept)


def _listed(given: Given, panels: tuple[Panel, ...]) -> str:
    return ", ".join(
        say("{count} of {size}", count=one.count, size=f"{given.most(one.length)} x {given.most(one.width)}")
        for one in panels
    )


def _cut(given: Given, panels: tuple[Panel, ...], sheet: tuple[Length, Length]) -> Cut:
    kerf, trim = given.length("kerf"), given.length("trim")
    lengths = [kerf, trim, *sheet, *(side for panel in panels for side in (panel.length, panel.width))]
    unit = common_unit(lengths)
    names = tuple(chr(ord("A") + i) if i < 26 else f"A{i - 25}" for i in range(len(panels)))
    grows = given.choice("grain") == FREE
    parts = tuple(
        PartItem(name, "sheet", panel.count, unit.up(panel.length), unit.up(panel.width), may_turn=grows)
        for name, panel in zip(names, panels, strict=True)
    )
    edge = unit.up(trim)
    stock = StockItem("sheet", "sheet", unit.down(sheet[0]), unit.down(sheet[1]), 1, None, edge, edge)
    problem = Problem("small", unit.up(kerf), 3, (stock,), parts)
    return Cut(solve(problem, steps=STEPS), unit, sheet, panels, names)


def _working(used: Area, sheet: tuple[Length, Length]) -> tuple[str, ...]:
    sheets = used / (sheet[0] * sheet[1])
    return (
        say(
            "pieces ÷ one sheet = {sheets} sheets by area alone; what cannot be cut comes on top",
            sheets=local_marks(f"{float(sheets):.2f}"),
        ),
    )


def _table(cut: Cut) -> Table:
    rows = []
    for i, board in enumerate(cut.answer.boards):
        counts = Counter(piece.part for piece in board.pieces)
        rows.append(
            (
                i + 1,
                ", ".join(
                    say("{count} of {size}", count=counts[name], size=name)
                    for name in cut.names
                    if counts[name]
                ),
            )
        )
    return Table(say("On each sheet"), (say("Sheet"), say("Pieces")), tuple(rows))


def _remarks(cut: Cut) -> tuple[str, ...]:
    few = (
        say("No fewer sheets are enough: that is proved.")
        if cut.answer.proved
        else (
            say(
                "At least {bound} would be needed whatever the layout; a longer search might find fewer.",
                bound=cut.answer.bound,
            )
        )
    )
    return (few, say("Every cut goes right across: crosscut, rip, crosscut."))


def _key(given: Given, name: str, panel: Panel) -> str:
    size = f"{given.write(panel.length)} × {given.write(panel.width)}"
    return f"{name}  " + say("{count} of {size}", count=panel.count, size=size)


def draw(given: Given, result: Result) -> Scene:
    """Return the first sheets with their pieces."""
    cut: Cut = result.shape
    top = 22.0
    shapes: list[Shape] = []
    boards = cut.answer.boards[:MOST_DRAWN]
    most = 190.0 if len(boards) == 1 else 130.0
    for i, board in enumerate(boards):
        drawn, bottom = _sheet(given, cut, board, top, most)
        shapes.append(label(20, top - 8, say("sheet {i}", i=i + 1), anchor="start", look="soft"))
        shapes += drawn
        top = bottom + 28
    keys = [_key(given, name, panel) for name, panel in zip(cut.names, cut.panels, strict=True)]
    apart = ROOM / 2 - 10
    columns = 2 if all(text_width(words, 11) < apart - 8 for words in keys) else 1
    for i, words in enumerate(keys):
        x, y = 20 + apart * (i % columns), top + 4 + 15 * (i // columns)
        shapes.append(label(x, y, words, anchor="start"))
    left = len(cut.answer.boards) - len(boards)
    end = top + 15 * -(-len(keys) // columns)
    if left:
        shapes.append(label(20, end + 6, say("and {left} more", left=left), anchor="start", look="soft"))
    told = counted(
        "{count} sheet with the pieces on it, told by letters.",
        "{count} sheets with the pieces on them, told by letters.",
        len(cut.answer.boards),
    )
    return scene(end + 14, shapes, say("Pieces on the sheets"), told)


def _sheet(given: Given, cut: Cut, board: Board, top: float, most: float) -> tuple[list[Shape], float]:
    long, wide = (float(side.inches) for side in cut.sheet)
    frame = fit(long, wide, top=top, most=most, left=20, right=20)
    shapes: list[Shape] = [frame.wood(0, 0, long, wide, fill="waste")]
    for piece in board.pieces:
        x, y, across, up = (
            float(cut.unit.back(one).inches) for one in (piece.x, piece.y, piece.length, piece.width)
        )
        shapes.append(frame.wood(x, y, across, up, grain=""))
        name = shorten(piece.part, 12, across * frame.scale)
        shapes.append(
            label(frame.x(x + across / 2), frame.y(y + up / 2) + 4, name, size=12, look="ink board")
        )
    del given
    return shapes, frame.bottom


CALCULATOR = Calculator(
    slug="sheet-yield",
    title="Pieces from sheets",
    question="How many sheets do I need for these pieces?",
    subject="cutting",
    asks=(
        Ask(
            "parts",
            "Pieces, length by width",
            "rectangles",
            "2 of 30 x 11 1/4 in, 4 of 28 1/2 x 11 1/4 in, 1 of 30 x 30 in",
            "2 of 760 x 285 mm, 4 of 720 x 285 mm, 1 of 760 x 760 mm",
            help="write the length along the grain first",
        ),
        Ask("length", "Sheet, long", "length", "96 in", "2440 mm", "4 in", "20 ft"),
        Ask("width", "Sheet, wide", "length", "48 in", "1220 mm", "4 in", "10 ft"),
        Ask("kerf", "Kerf of the saw", "length", "1/8 in", "3 mm", "0 in", "1/2 in"),
        Ask("trim", "Trimmed off every edge first", "length", "0 in", "0 mm", "0 in", "3 in"),
        Ask("grain", "The grain runs", "choice", KEPT, choices=(KEPT, FREE)),
        Ask("price", "Price of a sheet", "money", optional=True),
    ),
    compute=compute,
    formula=(
        (
            "Three rounds of cuts right across the sheet, each taking a kerf; the fewest sheets that a "
            "short search finds."
        ),
    ),
    source=("The cutting plan is found by the same search as for a whole plan, with less time.",),
    exactness="Every kerf is reckoned exactly. Whether fewer sheets are possible is said beside the answer.",
    caution="A whole sheet is too large for a small table saw: have it cut at the yard, or use a "
    "guided saw on a flat support.",
    example=Example(
        "The shelf unit by the door: two shelves, four uprights and a back, from 4 by 8 sheets.",
        {
            "parts": "2 of 30 x 11 1/4 in, 4 of 28 1/2 x 11 1/4 in, 1 of 30 x 28 1/2 in",
            "length": "96 in",
            "width": "48 in",
        },
    ),
    draw=draw,
    words="plywood layout, panel, cut list, cutting diagram, nesting, waste, 4x8",
    features=("plywood",),
)
