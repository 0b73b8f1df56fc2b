"""Exact lengths, areas, angles, weights and money: reading them, reckoning with them, writing them.

Nothing here is a float. A value is rounded once, when it is written, and the rounding can be stated.
"""

from scantling.measure.currency import Currency, is_sign_of, read_currency
from scantling.measure.display import Display, other_display, round_to_total
from scantling.measure.holding import NO_BREAK_SPACE, hold
from scantling.measure.irrational import arc_sine, arc_tangent, cosine, diagonal, root, sine, tangent
from scantling.measure.local_reading import in_plain_marks
from scantling.measure.plain import Angle, Money, Weight
from scantling.measure.quantity import Number, Way, round_number
from scantling.measure.reading import LongUnit, read_angle, read_length, read_number
from scantling.measure.reading_goods import currency_beside, read_area, read_money, read_price, read_weight
from scantling.measure.rounding import Rounded, System
from scantling.measure.scan import SPACES, UNIT_WORDS, Scanned, scan_amount
from scantling.measure.space import MM_PER_INCH, Area, Length, Volume
from scantling.measure.telling import telling_in, told_system
from scantling.measure.trade import (
    board_feet,
    board_feet_hardwood,
    board_feet_nominal,
    linear_feet,
    surface_measure,
)
from scantling.measure.writing import (
    local_decimal,
    local_marks,
    plain_money,
    round_length,
    saw_setting,
    write_angle,
    write_area,
    write_board_feet,
    write_decimal,
    write_fraction,
    write_length,
    write_linear,
    write_money,
    write_number,
    write_round_money,
    write_volume,
    write_weight,
)

__all__ = [
    "MM_PER_INCH",
    "NO_BREAK_SPACE",
    "SPACES",
    "UNIT_WORDS",
    "Angle",
    "Area",
    "Currency",
    "Display",
    "Length",
    "LongUnit",
    "Money",
    "Number",
    "Rounded",
    "Scanned",
    "System",
    "Volume",
    "Way",
    "Weight",
    "arc_sine",
    "arc_tangent",
    "board_feet",
    "board_feet_hardwood",
    "board_feet_nominal",
    "cosine",
    "currency_beside",
    "diagonal",
    "hold",
    "in_plain_marks",
    "is_sign_of",
    "linear_feet",
    "local_decimal",
    "local_marks",
    "other_display",
    "plain_money",
    "read_angle",
    "read_area",
    "read_currency",
    "read_length",
    "read_money",
    "read_number",
    "read_price",
    "read_weight",
    "root",
    "round_length",
    "round_number",
    "round_to_total",
    "saw_setting",
    "scan_amount",
    "sine",
    "surface_measure",
    "tangent",
    "telling_in",
    "told_system",
    "write_angle",
    "write_area",
    "write_board_feet",
    "write_decimal",
    "write_fraction",
    "write_length",
    "write_linear",
    "write_money",
    "write_number",
    "write_round_money",
    "write_volume",
    "write_weight",
]
