"""What the room `calculators` computes: the calculators."""

from __future__ import annotations

from scantling.quantities.quantity import Quantity


def _quantity(name: str, title: str, unit: str, meaning: str) -> Quantity:
    return Quantity(id=name, title=title, unit=unit, meaning=meaning, room="calculators")


QUANTITIES: tuple[Quantity, ...] = (
    _quantity(
        "calc-board-feet",
        "Board feet of a board list",
        "board feet",
        "Board feet by the rule chosen, a piece, together and with waste.",
    ),
    _quantity(
        "calc-lumber-price", "Price of lumber by board feet", "cents", "Board feet times the price of one."
    ),
    _quantity(
        "calc-piece-price",
        "Price of a piece and of a board foot",
        "cents",
        "The price of a piece from that of a board foot, and back.",
    ),
    _quantity(
        "calc-cost-per-foot",
        "Price by the foot and by the piece",
        "cents",
        "The price of a board by its length, and by the pieces that it gives.",
    ),
    _quantity(
        "calc-scaled-cost",
        "Cost at another size",
        "cents",
        "A cost on the straight line between two known ones.",
    ),
    _quantity(
        "calc-board-yield",
        "Boards for a list of lengths",
        "cents",
        "The boards to buy for lengths with a kerf between.",
    ),
    _quantity(
        "calc-sheet-yield",
        "Sheets for a list of rectangles",
        "1",
        "The sheets to buy for rectangles with a kerf between.",
    ),
    _quantity(
        "calc-strips",
        "Strips from a board",
        "1",
        "How many strips a board gives, what is left and what one more would need.",
    ),
    _quantity(
        "calc-glue-up",
        "Layers and strips of a blank",
        "1",
        "How many pieces make a blank, and how large it is.",
    ),
    _quantity(
        "calc-equal-spaces",
        "Equal spaces",
        "in, mm",
        "The space between dividers, and where each divider stands.",
    ),
    _quantity(
        "calc-slats",
        "Slats with a largest gap",
        "1",
        "The fewest slats that leave no gap too wide, and the gap.",
    ),
    _quantity("calc-shelf-pins", "Rows of holes", "in, mm", "How many holes fit a row, and where each is."),
    _quantity(
        "calc-batch-rounding", "Sizes that add up", "in, mm", "Sizes rounded so that their sum is kept."
    ),
    _quantity(
        "calc-graduated",
        "Sizes that grow by a step",
        "in, mm",
        "Sizes that differ by a step and fill a whole.",
    ),
    _quantity(
        "calc-brace-angle",
        "Angle of a brace",
        "degrees",
        "The angle at which a brace of real width closes an opening.",
    ),
    _quantity(
        "calc-brace-length",
        "Length of a brace",
        "in, mm",
        "Long point to long point, and the foot on the rail or post.",
    ),
    _quantity(
        "calc-half-lap",
        "Crossing of two braces",
        "in, mm",
        "Where two braces cross, and how long their half-lap is.",
    ),
    _quantity(
        "calc-mitre", "Mitre of a ring", "degrees", "What a saw is turned for a frame of so many sides."
    ),
    _quantity(
        "calc-ring", "Sides of a ring", "in, mm", "Side, short side, and what the ring measures across."
    ),
    _quantity("calc-compound", "Compound mitre", "degrees", "Turn and tilt of a saw for sides that slope."),
    _quantity("calc-taper", "Taper of a leg", "degrees", "The angle of a taper, and the offset of a jig."),
    _quantity("calc-drawer", "Drawer from an opening", "in, mm", "Box, bottom and front of a drawer."),
    _quantity(
        "calc-drawer-slide", "Slide for a drawer", "in, mm", "The longest usual slide that fits a box."
    ),
    _quantity("calc-sliding-doors", "Sliding doors", "in, mm", "Doors, rail and drop."),
    _quantity("calc-hinged-doors", "Hinged doors", "in, mm", "Door, rail and panel."),
    _quantity(
        "calc-door-droop",
        "Droop and swing of a door",
        "in, mm",
        "How far play lets a door droop, and the gap it needs to swing.",
    ),
    _quantity("calc-shelf-sag", "Sag of a shelf", "in, mm", "Deflection in the middle of a loaded shelf."),
    _quantity(
        "calc-shelf-span",
        "Longest span of a shelf",
        "in, mm",
        "The span, and the thickness, at which a shelf sags as far as allowed.",
    ),
    _quantity(
        "calc-movement", "Seasonal movement", "in, mm", "The change of a board's width with its moisture."
    ),
    _quantity(
        "calc-movement-coefficient",
        "Change for one percent of moisture",
        "%",
        "The part of its width by which wood moves for each percent.",
    ),
    _quantity("calc-moisture", "Equilibrium moisture content", "%", "The moisture at which wood settles."),
    _quantity("calc-weight", "Weight of a piece", "lb, kg", "Volume times density of the wood."),
    _quantity("calc-screw", "Screw holes", "in, mm", "Shank, pilot hole and drill for a wood screw."),
    _quantity(
        "calc-screw-length", "Length of a screw", "in, mm", "The usual length that grips and stays inside."
    ),
    _quantity("calc-finish", "Finish for a surface", "gal, l", "Surface times coats over coverage."),
    _quantity("calc-glue", "Glue for joints", "gal, l", "Area times wet film."),
    _quantity(
        "calc-fractions",
        "Sum of fractions",
        "in, mm",
        "What a sum of lengths comes to, and the nearest marks.",
    ),
    _quantity(
        "calc-convert",
        "Length in the other unit",
        "in, mm",
        "Inches as millimetres and back, and the nearest marks.",
    ),
)
