"""The one look of every drawing: a page of a workshop notebook, drawn in pencil with one red pencil by.

Nothing is told by colour alone: lines differ in weight and dashes, areas in pattern.
"""

from __future__ import annotations

from collections.abc import Mapping

PAPER, PENCIL, SOFT, WOOD, WOOD_SIDE, WOOD_TOP, ACCENT, PICKED = (
    "#fbf7ee",
    "#33302b",
    "#6b655b",
    "#f1e3c6",
    "#e4d0a8",
    "#f8eed8",
    "#a63a22",
    "#f6c9a8",
)
LETTERS = "'Gill Sans','Gill Sans MT','Source Sans 3','Noto Sans','Segoe UI',Helvetica,Arial,sans-serif"

LOOKS: Mapping[str, str] = {
    "paper": f"fill:{PAPER}",
    "wood": f"fill:{WOOD}",
    "side": f"fill:{WOOD_SIDE}",
    "top": f"fill:{WOOD_TOP}",
    # pieces of one board run into each other, with no gap of a hair between them
    "wood-on": f"stroke:{WOOD};stroke-width:.6",
    "side-on": f"stroke:{WOOD_SIDE};stroke-width:.6",
    "top-on": f"stroke:{WOOD_TOP};stroke-width:.6",
    "picked": f"fill:{PICKED}",
    "bare": "fill:none",
    "solid": f"fill:{PENCIL}",
    "edge": f"stroke:{PENCIL};stroke-width:1.3;stroke-linejoin:round;stroke-linecap:round",
    "bold": f"stroke:{PENCIL};stroke-width:2.2;stroke-linejoin:round;stroke-linecap:round",
    "thin": f"stroke:{SOFT};stroke-width:.7;stroke-linecap:round",
    "hidden": f"stroke:{SOFT};stroke-width:.8;stroke-dasharray:4 3",
    "unseen": f"stroke:{ACCENT};stroke-width:1.1;stroke-dasharray:5 3",
    "grain": f"stroke:{SOFT};stroke-width:.5;stroke-opacity:.5;fill:none",
    "cut": f"stroke:{ACCENT};stroke-width:1.4;stroke-dasharray:7 2 1.5 2",
    "accent": f"stroke:{ACCENT};stroke-width:2;stroke-linejoin:round;stroke-linecap:round",
    "mark": f"fill:{ACCENT}",
    "ink": f"fill:{PENCIL}",
    "soft": f"fill:{SOFT}",
    "red": f"fill:{ACCENT}",
    "strong": "font-weight:700",
    "halo": f"stroke:{PAPER};stroke-width:3.5;stroke-linejoin:round;paint-order:stroke",
    "board": f"stroke:{WOOD};stroke-width:3.5;stroke-linejoin:round;paint-order:stroke",
}
"""Every look by name, as the style it stands for. A shape may carry several, with spaces between."""

OPEN = {"edge", "bold", "thin", "hidden", "unseen", "cut", "accent"}
"""Looks of lines: a shape that has one of these and no fill is not filled."""

PATTERNS: Mapping[str, str] = {
    # slanted hatching: wood that goes to waste
    "waste": (
        'width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">'
        f'<rect width="6" height="6" fill="{PAPER}"/>'
        f'<line x1="0" y1="0" x2="0" y2="6" stroke="{SOFT}" stroke-width="1.4"/>'
    ),
    # dots: an offcut worth keeping
    "offcut": (
        'width="8" height="8" patternUnits="userSpaceOnUse">'
        f'<rect width="8" height="8" fill="{PAPER}"/>'
        f'<circle cx="2" cy="2" r=".9" fill="{SOFT}"/><circle cx="6" cy="6" r=".9" fill="{SOFT}"/>'
    ),
    # close upright lines: what has just been added
    "new": (
        'width="4" height="4" patternUnits="userSpaceOnUse">'
        f'<rect width="4" height="4" fill="{PICKED}"/>'
        f'<line x1="0" y1="0" x2="0" y2="4" stroke="{ACCENT}" stroke-width=".5"/>'
    ),
    # crossed hatching: taken away by a groove, a rabbet, a notch
    "cutaway": (
        'width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">'
        f'<rect width="5" height="5" fill="{PAPER}"/>'
        f'<path d="M0 0V5M0 0H5" stroke="{ACCENT}" stroke-width=".9"/>'
    ),
}
"""Fillings that are told apart without colour, as the inside of an SVG pattern."""

DARK: Mapping[str, str] = {
    PAPER: "#23211d",
    PENCIL: "#e9e2d3",
    SOFT: "#b3aa99",
    WOOD: "#4a3f2e",
    WOOD_SIDE: "#3d3426",
    WOOD_TOP: "#574a36",
    ACCENT: "#f08a6c",
    PICKED: "#7a4a30",
}
"""The same colours on a dark page."""


def dark_style(within: str) -> str:
    """Return style rules that turn every drawing dark inside what the CSS selector `within` finds."""
    rules = []
    for name, style in LOOKS.items():
        changed = style
        for light, dark in DARK.items():
            changed = changed.replace(light, dark)
        if changed != style:
            rules.append(f"{within} .sc-{name}{{{changed}}}")
    inside = {
        "rect": f"fill:{DARK[PAPER]}",
        "line": f"stroke:{DARK[SOFT]}",
        "circle": f"fill:{DARK[SOFT]}",
    }
    rules += [f"{within} svg.sc pattern {tag}{{{style}}}" for tag, style in inside.items()]
    return "\n".join(rules)
