"""How much a board swells and shrinks with the seasons."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, decimals, exactly
from scantling.calculators.kit.picture import fit, inches, scene
from scantling.drawing import Axis, Curve, Mark, Plot, Scene, Shape
from scantling.measure import Length
from scantling.shop import WOODS
from scantling.words import say

FLAT, QUARTER = "flat-sawn", "quarter-sawn"
SATURATED = 30
"""Moisture content, percent, above which wood no longer swells, as the handbook's formula takes it."""
MOVING = tuple(name for name, wood in WOODS.items() if wood.tangential)


@dataclass(frozen=True, slots=True)
class Board:
    """A board's width at one moisture, and how it moves."""

    width: Length
    now: Fraction
    dry: Fraction
    damp: Fraction
    shrinkage: Fraction
    """Green to ovendry, percent."""

    def change(self, moisture: Fraction) -> Length:
        """Return how much wider it is at another moisture (FPL-GTR-190 Eq. 13-3)."""
        per_percent = 1 / (SATURATED * 100 / self.shrinkage - SATURATED + self.now)
        return self.width * ((moisture - self.now) * per_percent)


def compute(given: Given) -> Result:
    """Return the width at its driest and dampest, and the movement between."""
    board = _board(given)
    low, high = board.change(board.dry), board.change(board.damp)
    coefficient = 1 / (3000 / board.shrinkage - 20)
    figures = (
        Figure("movement", say("Moves, from driest to dampest"), high - low, way="up", fine=True, main=True),
        Figure("shrinks", say("Narrower than now when driest"), -low, fine=True),
        Figure("swells", say("Wider than now when dampest"), high, fine=True),
        Figure("narrow", say("Width when driest"), board.width + low, fine=True),
        Figure("wide", say("Width when dampest"), board.width + high, fine=True),
        Figure("coefficient", say("Change for one percent of moisture"), coefficient * 100, "%", places=3),
    )
    return Result(figures, _working(given, board), (), _remarks(board), board)


def _board(given: Given) -> Board:
    now, dry, damp = given.number("now"), given.number("driest"), given.number("dampest")
    if dry > damp:
        raise given.refuse(
            "driest",
            say("{dry}% is damper than the {damp}% given as dampest", dry=dry, damp=damp),
            decimals(damp, 4),
        )
    if given.has("shrinkage"):
        shrinkage = given.number("shrinkage")
    else:
        wood = WOODS[given.choice("wood")]
        shrinkage = wood.tangential if given.choice("grain") == FLAT else wood.radial
    return Board(given.length("width"), now, dry, damp, shrinkage)


def _working(given: Given, board: Board) -> tuple[str, ...]:
    shrink = decimals(board.shrinkage, 2)
    lines = []
    for name, moisture in ((say("driest"), board.dry), (say("dampest"), board.damp)):
        change = exactly(board.change(moisture), given.display)
        lines.append(
            f"{name}: {exactly(board.width, given.display)} × ({decimals(moisture, 2)} − "
            f"{decimals(board.now, 2)}) "
            f"÷ (30 × 100 ÷ {shrink} − 30 + {decimals(board.now, 2)}) = {change}"
        )
    return tuple(lines)


def _remarks(board: Board) -> tuple[str, ...]:
    remarks = [say("Let the board move: slots, buttons, a panel loose in its groove, glue at one edge only.")]
    if min(board.now, board.dry) < 6 or max(board.now, board.damp) > 14:
        remarks.append(
            say("Below 6 or above 14 percent the change is a little less regular than this straight line.")
        )
    return tuple(remarks)


def draw(given: Given, result: Result) -> Scene:
    """Return the board's end, its driest and dampest widths, drawn larger than they are."""
    board: Board = result.shape
    wide = inches(board.width)
    frame = fit(wide, wide * 0.16, most=80, top=52, left=70, right=70)
    middle, high = wide / 2, frame.high
    reach = inches(max(abs(board.change(board.dry)), abs(board.change(board.damp)))) or 1.0
    stretch = max(1.0, 40 / (reach * frame.scale))
    low, far = (inches(board.change(one)) * stretch for one in (board.dry, board.damp))
    shapes: list[Shape] = [frame.wood(0, 0, wide, high, look="edge side")]
    for change, look in ((far, "hidden"), (low, "cut")):
        half = (wide + change) / 2
        shapes.append(
            frame.polygon(
                ((middle - half, 0), (middle + half, 0), (middle + half, high), (middle - half, high)), look
            )
        )
    narrow, broad = (board.width + board.change(one) for one in (board.dry, board.damp))
    shapes.append(
        frame.across(
            middle - (wide + low) / 2,
            middle + (wide + low) / 2,
            say("driest {narrow}", narrow=given.fine(narrow)),
            above=14,
        )
    )
    shapes.append(
        frame.across(
            middle - (wide + far) / 2,
            middle + (wide + far) / 2,
            say("dampest {broad}", broad=given.fine(broad)),
            below=22,
        )
    )
    shapes.append(frame.across(0, wide, say("now {width}", width=given.write(board.width)), above=36))
    told = say(
        "{width} now, {narrow} driest, {broad} dampest; drawn larger than it is.",
        width=given.write(board.width),
        narrow=given.fine(narrow),
        broad=given.fine(broad),
    )
    return scene(frame.bottom + 40, shapes, say("The board's end through the seasons"), told)


def plot(given: Given, result: Result) -> Plot:
    """Return the width by the moisture."""
    board: Board = result.shape
    low, high = min(board.dry, board.now, Fraction(4)), max(board.damp, board.now, Fraction(16))
    ends = [(float(at), given.along(board.width + board.change(at))) for at in (low, high)]
    room = (ends[1][1] - ends[0][1]) * 0.15 or 0.01
    marks = tuple(
        Mark(float(at), given.along(board.width + board.change(at)), name)
        for at, name in ((board.dry, say("driest")), (board.damp, say("dampest")))
    )
    return Plot(
        Axis(say("moisture, percent"), float(low), float(high)),
        Axis(say("width, {unit}", unit=given.display.system), ends[0][1] - room, ends[1][1] + room),
        (Curve(tuple(ends)),),
        marks,
        say("Width by moisture"),
        say("The width rises with the moisture; driest and dampest are picked out."),
    )


CALCULATOR = Calculator(
    slug="wood-movement",
    title="Seasonal movement",
    question="How much will this board swell and shrink?",
    subject="wood",
    asks=(
        Ask("wood", "Wood", "choice", "white oak", choices=MOVING),
        Ask(
            "grain",
            "Sawn",
            "choice",
            FLAT,
            choices=(FLAT, QUARTER),
            help="flat-sawn moves along the rings, quarter-sawn across them",
        ),
        Ask("width", "Width across the grain, now", "length", "12 in", "300 mm", "1/8 in", "20 ft"),
        Ask("now", "Moisture now, percent", "percent", "8", least="0", most="30"),
        Ask("driest", "Driest it will be, percent", "percent", "6", least="0", most="30"),
        Ask("dampest", "Dampest it will be, percent", "percent", "11", least="0", most="30"),
        Ask(
            "shrinkage",
            "Shrinkage, green to ovendry, percent, if you know it",
            "percent",
            least="0.5",
            most="20",
            optional=True,
        ),
    ),
    compute=compute,
    formula=(
        "change = width × (other moisture − moisture now) ÷ (30 × 100 ÷ shrinkage − 30 + moisture now)",
    ),
    source=("FPL-GTR-190, Wood Handbook (2010): Eq. 13-3; shrinkage from Table 4-3.",),
    exactness="Exact by the formula. A board between flat- and quarter-sawn moves by something between, "
    "and boards of one species differ.",
    example=Example(
        "The top of the harbour table is white oak, 30 in wide, glued up at 8 percent. Indoors by "
        "the sea it goes "
        "from 7 percent in the heated months to 12.",
        {"wood": "white oak", "grain": FLAT, "width": "30 in", "now": "8", "driest": "7", "dampest": "12"},
    ),
    draw=draw,
    plot=plot,
    words="shrinkage, expansion, humidity, table top, panel gap, breadboard, tangential, radial",
    features=("hardwood", "red oak", "table top"),
    checks=("wood-movement",),
)
