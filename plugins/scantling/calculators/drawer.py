"""A drawer box, its bottom and its front, from the opening it goes into."""

from __future__ import annotations

from dataclasses import dataclass

from scantling.calculators.kit import Ask, Calculator, Example, Figure, Given, Result, Table, exactly
from scantling.calculators.kit.picture import fit, inches, label, scene
from scantling.drawing import Rectangle, Scene, Shape
from scantling.measure import Length
from scantling.words import say

SIDE_MOUNT, UNDER_MOUNT, RUNNERS = "side-mount", "under-mount", "wood runners"
OVERLAY, INSET = "overlay", "inset"
USUAL_CLEARANCE = {SIDE_MOUNT: "1 in", UNDER_MOUNT: "42 mm", RUNNERS: "1/8 in"}
"""Together for both sides, where the reader has no sheet at hand (common practice)."""
_SLIDES = {
    "in": tuple(Length(2 * i) for i in range(4, 15)),
    "mm": tuple(Length.of_mm(50 * i) for i in range(5, 15)),
}
"""Lengths in which slides are usually sold: 8 to 28 in by 2 in, 250 to 700 mm by 50 mm (common practice)."""


@dataclass(frozen=True, slots=True)
class Box:
    """A drawer."""

    opening: tuple[Length, Length]
    width: Length
    height: Length
    depth: Length
    side: Length
    """Thickness of its sides."""
    front: tuple[Length, Length]
    bottom: tuple[Length, Length]
    above: Length
    """Free above the box."""


def compute(given: Given) -> Result:
    """Return box, pieces, bottom and front."""
    box = _box(given)
    ends = box.width - box.side * 2 + given.length("joint") * 2
    figures = [
        Figure("width", say("Box, wide outside"), box.width, way="down", main=True),
        Figure("height", say("Box, high"), box.height, way="down", main=True),
        Figure("depth", say("Box, deep"), box.depth, way="down", main=True),
        Figure("inside", say("Box, wide inside"), box.width - box.side * 2, way="down"),
        Figure("ends", say("Length of its front and back"), ends, way="down"),
        Figure("bottom-width", say("Bottom, wide"), box.bottom[0], way="down"),
        Figure("bottom-depth", say("Bottom, deep"), box.bottom[1], way="down"),
        Figure("front-width", say("Drawer front, wide"), box.front[0], way="down"),
        Figure("front-height", say("Drawer front, high"), box.front[1], way="down"),
    ]
    slide = longest_slide(given, box)
    if slide > Length(0):
        figures.append(Figure("slide", say("Longest usual slide that fits the box"), slide))
    return Result(
        tuple(figures), _working(given, box), (_pieces(given, box, ends),), _remarks(given, box), box
    )


def _clearance(given: Given) -> Length:
    if given.has("clear-sides"):
        return given.length("clear-sides")
    return {SIDE_MOUNT: Length(1), UNDER_MOUNT: Length.of_mm(42), RUNNERS: Length(1) / 8}[
        given.choice("runs")
    ]


def _box(given: Given) -> Box:
    wide, high = given.length("opening"), given.length("height")
    side, above, below = given.length("side"), given.length("clear-above"), given.length("clear-below")
    inset = given.choice("front") == INSET
    width = wide - _clearance(given) + (side * 2 if given.choice("runs") == UNDER_MOUNT else Length(0))
    depth = given.length("depth") - given.length("clear-back")
    depth -= given.length("front-thickness") if inset else Length(0)
    height = high - above - below
    _must_fit(given, width, height, depth)
    reach = given.length("groove") * 2 - given.length("slack")
    edge = given.length("edge") * (-2 if inset else 2)
    bottom = (width - side * 2 + reach, depth - side * 2 + reach)
    return Box((wide, high), width, height, depth, side, (wide + edge, high + edge), bottom, above)


def _must_fit(given: Given, width: Length, height: Length, depth: Length) -> None:
    side, none = given.length("side"), Length(0)
    if given.length("groove") >= side:
        raise given.refuse("groove", say("the groove goes right through the side"), given.under(side))
    if given.length("joint") > side:
        raise given.refuse("joint", say("the joint goes right through the side"), given.most(side))
    if width <= side * 2 or width > given.length("opening"):
        wanted = given.length("opening") + (side * 2 - width if width <= side * 2 else none)
        if width > given.length("opening"):
            raise given.refuse(
                "side", say("sides this thick do not fit these slides"), given.most(_clearance(given) / 2)
            )
        raise given.refuse(
            "opening", say("nothing is left between the sides of the drawer"), given.least(wanted + Length(1))
        )
    if height <= given.length("groove-up"):
        short = given.length("groove-up") - height + Length(1)
        raise given.refuse(
            "height", say("the drawer is too low for its bottom"), given.least(given.length("height") + short)
        )
    if depth <= side * 2:
        short = side * 2 - depth + Length(1)
        raise given.refuse(
            "depth", say("the drawer has no depth left"), given.least(given.length("depth") + short)
        )
    if given.choice("front") == INSET:
        low = min(given.length("opening"), given.length("height"))
        if given.length("edge") * 2 >= low:
            raise given.refuse("edge", say("the gap takes the whole front"), given.under(low / 2))


def longest_slide(given: Given, box: Box) -> Length:
    """Return the longest usual slide that is no longer than the box, or nothing on wooden runners.

    A slide is screwed to the side of the box along its whole length, and what is asked for behind the
    box stays free behind the slide too (common practice, no source).
    """
    if given.choice("runs") == RUNNERS:
        return Length(0)
    return max((slide for slide in _SLIDES[given.display.system] if slide <= box.depth), default=Length(0))


def _pieces(given: Given, box: Box, ends: Length) -> Table:
    down = [given.write(size, "down") for size in (box.depth, box.height, ends, *box.bottom, *box.front)]
    depth, height, end, bottom_width, bottom_depth, front_width, front_height = down
    rows = (
        (say("Sides"), 2, depth, height, box.side),
        (say("Front and back of the box"), 2, end, height, box.side),
        (say("Bottom"), 1, bottom_width, bottom_depth, given.length("bottom")),
        (say("Drawer front"), 1, front_width, front_height, given.length("front-thickness")),
    )
    return Table(
        say("Pieces"), (say("Piece"), say("Number"), say("Length"), say("Width"), say("Thickness")), rows
    )


def _working(given: Given, box: Box) -> tuple[str, ...]:
    shown, clear = given.display, _clearance(given)
    opening, side = exactly(box.opening[0], shown), exactly(box.side, shown)
    if given.choice("runs") == UNDER_MOUNT:
        first = say(
            "wide outside: {opening} − {clear} + 2 × {side} = {width}",
            opening=opening,
            clear=exactly(clear, shown),
            side=side,
            width=exactly(box.width, shown),
        )
    else:
        first = say(
            "wide outside: {opening} − {clear} = {width}",
            opening=opening,
            clear=exactly(clear, shown),
            width=exactly(box.width, shown),
        )
    groove, slack = exactly(given.length("groove"), shown), exactly(given.length("slack"), shown)
    inside = exactly(box.width - box.side * 2, shown)
    return (
        first,
        say(
            "bottom, wide: {inside} + 2 × {groove} − {slack} = {bottom}",
            inside=inside,
            groove=groove,
            slack=slack,
            bottom=exactly(box.bottom[0], shown),
        ),
    )


def _remarks(given: Given, box: Box) -> tuple[str, ...]:
    remarks = []
    if not given.has("clear-sides"):
        remarks.append(
            say(
                "The clearance is a usual one: look at the sheet that comes with your slides and put "
                "in theirs."
            )
        )
    if (
        given.length("clear-below") + given.length("groove-up") < Length(1) / 2
        and given.choice("runs") == UNDER_MOUNT
    ):
        remarks.append(say("Under-mount slides need room below the bottom, often 1/2 in: see their sheet."))
    slide = longest_slide(given, box)
    if given.choice("runs") == UNDER_MOUNT and Length(0) < slide < box.depth:
        remarks.append(
            say(
                "Under-mount slides usually want a box exactly as deep as they are long: {slide} here.",
                slide=given.write(slide),
            )
        )
    if given.choice("runs") == RUNNERS and box.height > box.depth:
        remarks.append(say("A drawer higher than it is deep racks on wooden runners."))
    return tuple(remarks)


def draw(given: Given, result: Result) -> Scene:
    """Return the box in its opening, seen from the front."""
    box: Box = result.shape
    wide, high = (inches(one) for one in box.opening)
    frame = fit(wide, high, most=190, left=70, right=70, top=40)
    rim = 12.0
    around = (frame.left - rim, frame.top - rim, wide * frame.scale + 2 * rim, high * frame.scale + 2 * rim)
    shapes: list[Shape] = [
        Rectangle(*around, look="thin side"),
        frame.wood(0, 0, wide, high, look="edge paper", grain=""),
    ]
    left, top = (wide - inches(box.width)) / 2, inches(box.above)
    side, tall = inches(box.side), inches(box.height)
    shapes.append(frame.wood(left, top, inches(box.width), tall, look="thin top", grain=""))
    shapes += [frame.wood(x, top, side, tall, grain="") for x in (left, left + inches(box.width) - side)]
    thick, up = inches(given.length("bottom")), inches(given.length("groove-up"))
    floor = (wide - inches(box.bottom[0])) / 2
    shapes.append(
        frame.wood(floor, top + tall - up - thick, inches(box.bottom[0]), thick, look="edge side", grain="")
    )
    fw, fh = inches(box.front[0]), inches(box.front[1])
    front = (frame.x((wide - fw) / 2), frame.y((high - fh) / 2), fw * frame.scale, fh * frame.scale)
    shapes.append(Rectangle(*front, look="hidden"))
    shapes.append(frame.across(left, left + inches(box.width), given.write(box.width), above=26))
    shapes.append(frame.across(0, wide, given.write(box.opening[0]), below=34))
    shapes.append(frame.upright(0, high, given.write(box.opening[1]), beside=32))
    shapes.append(
        label(
            frame.left - rim, frame.bottom + 62, say("dashed: the drawer front"), anchor="start", look="soft"
        )
    )
    told = say(
        "A box {width} wide in an opening of {opening}; its front is dashed.",
        width=given.write(box.width),
        opening=given.write(box.opening[0]),
    )
    return scene(frame.bottom + 72, shapes, say("Drawer in its opening, from the front"), told)


CALCULATOR = Calculator(
    slug="drawer",
    title="Drawer box from its opening",
    question="How large is the drawer that fits this opening?",
    subject="joining",
    asks=(
        Ask("opening", "Opening, wide", "length", "18 in", "450 mm", "2 in", "8 ft"),
        Ask("height", "Opening, high", "length", "6 in", "150 mm", "1 in", "4 ft"),
        Ask("depth", "Opening, deep", "length", "20 in", "500 mm", "3 in", "6 ft"),
        Ask(
            "runs",
            "It runs on",
            "choice",
            SIDE_MOUNT,
            choices=(SIDE_MOUNT, UNDER_MOUNT, RUNNERS),
        ),
        Ask(
            "clear-sides",
            "Width that the slides ask for, both sides together",
            "length",
            least="0 in",
            most="12 in",
            optional=True,
            help="side-mount and runners: opening less box, outside; under-mount: opening less box, inside; "
            "left open, a usual clearance is taken: 1 in, 42 mm (1 21/32 in) or 1/8 in",
        ),
        Ask("clear-above", "Free above the box", "length", "1/4 in", "6 mm", "0 in", "12 in"),
        Ask("clear-below", "Free below the box", "length", "1/4 in", "6 mm", "0 in", "12 in"),
        Ask("clear-back", "Free behind the box", "length", "1 in", "25 mm", "0 in", "12 in"),
        Ask("side", "Thickness of the box's sides", "length", "1/2 in", "12 mm", "1/8 in", "2 in"),
        Ask(
            "joint",
            "How far front and back go into each side",
            "length",
            "0 in",
            "0 mm",
            "0 in",
            "2 in",
            help="0 for butt joints; the depth of the dado or rabbet otherwise",
        ),
        Ask("bottom", "Thickness of the bottom", "length", "1/4 in", "6 mm", "1/16 in", "1 in"),
        Ask("groove", "Depth of its groove", "length", "1/4 in", "6 mm", "0 in", "1 in"),
        Ask("groove-up", "Groove, up from the lower edge", "length", "1/2 in", "12 mm", "0 in", "2 in"),
        Ask(
            "slack", "Play of the bottom, both sides together", "length", "1/16 in", "1 mm", "0 in", "1/2 in"
        ),
        Ask("front", "Drawer front", "choice", OVERLAY, choices=(OVERLAY, INSET)),
        Ask(
            "edge",
            "Overlay on each side, or gap around an inset front",
            "length",
            "3/8 in",
            "10 mm",
            "0 in",
            "4 in",
        ),
        Ask(
            "front-thickness", "Thickness of the drawer front", "length", "3/4 in", "18 mm", "1/4 in", "3 in"
        ),
    ),
    compute=compute,
    formula=(
        "side-mount, runners: box outside = opening − clearance",
        "under-mount: box inside = opening − clearance, so box outside = opening − clearance + 2 × side",
        "bottom = inside + 2 × groove − play, both ways",
        "front = opening + 2 × overlay, or opening − 2 × gap",
        "slide: the longest usual length that is no longer than the box is deep",
    ),
    source=(
        (
            "Arithmetic; the clearances are for the maker of the slides to say. The usual ones are "
            "common practice."
        ),
    ),
    exactness="Exact; sizes that must go into something are rounded down.",
    caution="A chest of drawers can tip when drawers are open: anchor it to the wall.",
    example=Example(
        "The bench at Tern Street gets a drawer in an opening of 16 3/4 in by 5 in, 18 in deep, on "
        "side-mount slides "
        "that ask for 1/2 in each side, behind a front that overlaps 3/8 in all round.",
        {
            "opening": "16 3/4 in",
            "height": "5 in",
            "depth": "18 in",
            "runs": SIDE_MOUNT,
            "clear-sides": "1 in",
        },
    ),
    draw=draw,
    words="drawer slides, undermount, sidemount, drawer front, groove, bottom panel, clearance",
    features=("drawer",),
)
