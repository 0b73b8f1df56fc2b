"""Calculators about buying wood and cutting it up, against published examples and general libraries."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pint
import pytest

from scantling.measure import read_length
from tests.outside.sources import checked
from tests.support.calculating import ask, column, exact, number
from tests.tools.verify_cuts import verify

NUMPY = f"numpy {np.__version__.split('.')[0]}"
UNITS = pint.UnitRegistry()


@checked(
    quantity="calc-board-feet",
    document="US Navy training manual Engineering Aid Basic",
    place="section 6, board measure",
    kind="handbook",
)
@checked(
    quantity="calc-board-feet",
    document="Worked examples of a sawmill's and a furniture maker's board-foot pages",
    place="3x8 10 ft is 20, 1x12 10 ft is 10, 1x3 8 ft is 2, 1 in by 8 in by 8 ft is 5.33",
    kind="handbook",
)
@pytest.mark.parametrize(
    ("thickness", "width", "length", "published"),
    [
        ("2", "4", "14 ft", 9.3333),
        ("3", "8", "10 ft", 20),
        ("1", "12", "10 ft", 10),
        ("1", "3", "8 ft", 2),
        ("4/4", "8", "8 ft", 5.3333),
    ],
)
def test_board_feet_as_printed(thickness, width, length, published):
    """One piece counts the board feet that the example prints."""
    found = number("board-feet", "total", thickness=thickness, width=width, length=length, count="1")

    assert found == pytest.approx(published, abs=5e-5)


@checked(
    quantity="calc-board-feet",
    document="NHLA rules, as shown by the American Hardwood Export Council, grading sawn lumber",
    place="measurement: 2 in, 6 1/4 in by 8 ft has a surface measure of 4 and holds 8 board feet",
    kind="standard",
)
@checked(
    quantity="calc-board-feet",
    document="NHLA rules, surface measure, as quoted by a lumber exporter",
    place="6 1/2 in by 8 ft: 4; 8 in by 12 ft: 8; 10 in by 13 ft: 11",
    kind="handbook",
)
@pytest.mark.parametrize(
    ("thickness", "width", "length", "published"),
    [
        ("8/4", "6 1/4", "8 ft", 8),
        ("4/4", "6 1/2", "8 ft", 4),
        ("1", "8", "12 ft", 8),
        ("4/4", "10", "13 ft", 11),
    ],
)
def test_rough_hardwood_is_tallied_by_whole_feet_of_face(thickness, width, length, published):
    """The face is rounded first, as the rule says."""
    asked = {"thickness": thickness, "width": width, "length": length}

    assert number("board-feet", "total", counted="rough", count="1", **asked) == published


@checked(quantity="calc-board-feet", document="pint", place="0.24 or newer, unit board_foot", kind="library")
@pytest.mark.parametrize(
    ("thickness", "width", "length", "count", "waste"),
    [(1.5, 3.5, 96, 3, 0), (0.75, 5.5, 144, 10, 15), (2.75, 11.25, 31.5, 2, 20)],
)
def test_actual_board_feet_with_waste(thickness, width, length, count, waste):
    """The volume of all pieces with the allowance is what a units library makes of it."""
    volume = thickness * width * length * count * (1 + waste / 100) * UNITS.inch**3
    texts = {"thickness": str(thickness), "width": str(width), "length": f"{length} in"}

    found = number("board-feet", "buy", counted="actual", count=str(count), waste=str(waste), **texts)

    assert found == pytest.approx(volume.to("board_foot").magnitude, rel=1e-12)


@checked(
    quantity="calc-lumber-price", document="pint", place="0.24 or newer, price per board_foot", kind="library"
)
@checked(
    quantity="calc-piece-price", document="pint", place="0.24 or newer, price per board_foot", kind="library"
)
@pytest.mark.parametrize(
    ("thickness", "width", "length", "price"), [(1, 6, 96, 5.40), (2, 10, 120, 3.15), (1.25, 7, 84, 8.99)]
)
def test_prices_follow_from_the_board_feet(thickness, width, length, price):
    """Both calculators charge what a units library does, to the cent."""
    sides = {"thickness": str(thickness), "width": str(width), "length": f"{length} in"}
    volume = thickness * width * length * UNITS.inch**3
    cents = (volume * (price * 100) / UNITS.board_foot).to("dimensionless").magnitude

    whole = number("board-feet", "cost", count="1", waste="0", price=f"{price:.2f}", **sides)
    piece = number("piece-price", "piece", price=f"{price:.2f}", **sides)

    assert abs(whole - cents) <= 0.5 + 1e-9
    assert piece == whole


@checked(quantity="calc-cost-per-foot", document="numpy", place=f"{NUMPY}: divide, argmin", kind="library")
@pytest.mark.parametrize(
    ("feet", "prices"),
    [((8, 10, 12, 16), (4.28, 5.85, 6.98, 9.96)), ((6, 8, 10), (5.20, 6.42, 8.90)), ((8, 12), (3.98, 5.96))],
)
def test_the_cheapest_foot(feet, prices):
    """The cheapest by the foot is the least of the quotients, and every quotient is shown to the cent."""
    each = np.divide(prices, feet)
    text = ", ".join(f"{one} ft = {price:.2f}" for one, price in zip(feet, prices, strict=True))

    answer = ask("cost-per-foot", prices=text)

    assert exact(answer, "per-foot") == round(100 * each.min())
    shown = [float(one.removeprefix("$")) for one in column(answer, 0, "By the foot")]
    assert shown == pytest.approx(each, abs=0.005 + 1e-9)
    best = next(one for one in answer.shown() if one.key == "cheapest-foot")
    assert best.shop == f"{feet[int(each.argmin())]} ft"


@checked(
    quantity="calc-cost-per-foot",
    document="numpy",
    place=f"{NUMPY}: pieces counted by arange",
    kind="library",
)
@pytest.mark.parametrize("piece", [34.5, 22.5, 95.875, 47.9375])
def test_the_cheapest_piece(piece):
    """Pieces are counted where each saw cut ends; the least price over that count wins."""
    feet, prices = (6, 8, 10, 12), (5.20, 6.42, 8.90, 9.97)
    counts = [len(np.arange(piece, one * 12 + 1e-9, piece + 0.125)) for one in feet]
    costs = [100 * price / count for price, count in zip(prices, counts, strict=True) if count]
    text = ", ".join(f"{one} ft = {price:.2f}" for one, price in zip(feet, prices, strict=True))

    answer = ask("cost-per-foot", prices=text, piece=f"{piece} in", kerf="1/8")

    assert column(answer, 0, "Pieces") == [str(count) for count in counts]
    assert abs(exact(answer, "per-piece") - min(costs)) <= 0.5


@checked(quantity="calc-scaled-cost", document="numpy", place=f"{NUMPY}: interp", kind="library")
@pytest.mark.parametrize("wanted", [36, 40.5, 48, 54, 59.25, 60])
def test_a_cost_between_two_sizes(wanted):
    """Between known sizes the cost is interpolated as the library does it."""
    sizes, costs = [36, 48, 60], [6120, 7490, 9640]
    text = ", ".join(f"{size} in = {cost / 100:.2f}" for size, cost in zip(sizes, costs, strict=True))

    found = number("scale-plan", "cost", wanted=f"{wanted} in", costs=text)

    assert abs(found - np.interp(wanted, sizes, costs)) <= 0.5 + 1e-9


SEVERAL = {
    **dict.fromkeys([99, 95, 92, 83, 79, 71, 66, 63, 55, 54, 50, 40, 38, 36, 33, 32, 29, 24, 17, 14, 10], 1),
    **dict.fromkeys([77, 19], 2),
}
CENTS = {100: 100, 120: 120, 150: 150}


@checked(
    quantity="calc-board-yield",
    document="The usual worked example of a kerf",
    place="three pieces of 31 7/8 in from 8 ft, and only two of 32 in, with a kerf of 1/8 in",
    kind="common practice",
)
@pytest.mark.parametrize(
    ("pieces", "boards", "kerf", "known"),
    [
        ({31.875: 9}, {96: 100}, "1/8 in", 300),
        ({32: 9}, {96: 100}, "1/8 in", 500),
        ({32: 9}, {96: 100}, "0 in", 300),
    ],
)
def test_boards_cost_what_the_best_plan_costs(pieces, boards, kerf, known):
    """The boards cost the known least."""
    parts = ", ".join(f"{count} of {length} in" for length, count in pieces.items())
    offers = ", ".join(f"{length} in = {cents / 100:.2f}" for length, cents in boards.items())

    answer = ask("board-yield", parts=parts, boards=offers, kerf=kerf)

    assert exact(answer, "cost") == known


@checked(
    quantity="calc-board-yield",
    document="VPSolver, example of bin packing in several sizes",
    place="examples/vpsolver/example_vsbpp.py: least cost 1280",
    kind="handbook",
)
def test_a_short_search_comes_near_the_best_plan_and_does_not_boast():
    """The example's cost is met within a twentieth, and no better bound than its optimum is claimed."""
    parts = ", ".join(f"{count} of {length} in" for length, count in SEVERAL.items())
    offers = ", ".join(f"{length} in = {cents / 100:.2f}" for length, cents in CENTS.items())

    answer = ask("board-yield", parts=parts, boards=offers, kerf="0 in")

    assert 1280 <= exact(answer, "cost") <= 1344
    assert answer.result.shape.answer.bound <= 1280
    assert answer.result.shape.answer.proved == (exact(answer, "cost") == 1280)


@checked(
    quantity="calc-sheet-yield",
    document="tests/tools/verify_cuts.py",
    place="a checker of cutting plans that shares no code with the solver",
    kind="library",
)
@pytest.mark.parametrize(
    ("parts", "known"),
    [
        ("8 of 24 x 24 in", 1),
        ("9 of 24 x 24 in", 2),
        ("4 of 47 15/16 x 23 15/16 in", 1),
        ("20 of 30 x 12 in, 12 of 15 x 7 1/2 in", 3),
        ("3 of 90 x 20 in", 2),
    ],
)
def test_sheets_hold_what_they_are_said_to_hold(parts, known):
    """The layout passes the independent checker, on as many sheets as rows and area allow."""
    kerf = "1/8 in" if "24 x 24" not in parts else "0 in"

    answer = ask("sheet-yield", parts=parts, kerf=kerf)
    cost, _, used = verify(*_seam(answer, kerf))

    assert exact(answer, "sheets") == cost == known
    assert float(exact(answer, "used")) / 100 == pytest.approx(used, rel=1e-9)


def _seam(answer, kerf):
    """Return problem and answer in the form of the cutting seam, from what the calculator worked with."""
    cut = answer.result.shape
    parts = [
        {
            "id": name,
            "from": "sheet",
            "count": panel.count,
            "length": cut.unit.up(panel.length),
            "width": cut.unit.up(panel.width),
            "grain": "length",
        }
        for name, panel in zip(cut.names, cut.panels, strict=True)
    ]
    long, wide = (cut.unit.down(side) for side in cut.sheet)
    stock = {"id": "sheet", "family": "sheet", "length": long, "width": wide, "price": 1}
    problem = {
        "unit": "small",
        "kerf": cut.unit.up(read_length(kerf)),
        "stages": 3,
        "stock": [stock],
        "parts": parts,
    }
    return problem, cut.answer.to_data()


@checked(quantity="calc-strips", document="numpy", place=f"{NUMPY}: arange over the cuts", kind="library")
@pytest.mark.parametrize(
    ("board", "strip", "kerf", "straight"),
    [(5.5, 1.5, 0.125, 0), (7.25, 0.75, 0.125, 0.125), (11.25, 0.25, 0.09375, 0), (3.5, 0.78125, 0.125, 0)],
)
def test_strips_end_where_the_cuts_do(board, strip, kerf, straight):
    """The strips are as many as their far edges on the board; the last cut leaves the rest."""
    useful = board - straight
    edges = np.arange(strip, useful + 1e-9, strip + kerf)
    asked = {"board": str(board), "strip": str(strip), "kerf": str(kerf), "straightening": str(straight)}

    answer = ask("strips", **asked)

    assert exact(answer, "strips") == len(edges)
    assert float(exact(answer, "left")) == pytest.approx(max(0, useful - edges[-1] - kerf), abs=1e-12)
    more = edges[-1] + kerf + strip - useful
    assert float(exact(answer, "short")) == pytest.approx(more, abs=1e-12)


@checked(quantity="calc-glue-up", document="numpy", place=f"{NUMPY}: ceil", kind="library")
@checked(quantity="calc-glue-up", kind="common practice")
@pytest.mark.parametrize(
    ("thickness", "width", "layer", "strip", "layers", "strips"),
    [(2.75, 2.75, 1.5, 3.5, 2, 1), (1.25, 24, 1.5, 3.5, 1, 8), (3.5, 12, 0.75, 5.5, 5, 3)],
)
def test_a_blank_is_large_enough_and_no_larger_than_it_must_be(
    thickness, width, layer, strip, layers, strips
):
    """Layers and strips are the quotients rounded up; one less would be too small."""
    sizes = {"thickness": thickness, "width": width, "layer": layer, "strip": strip}

    answer = ask(
        "glue-up", planing="1/8", trim="1/4", jointing="1/16", **{k: str(v) for k, v in sizes.items()}
    )

    assert exact(answer, "layers") == np.ceil((thickness + 0.125) / layer) == layers
    assert exact(answer, "strips") == strips
    assert exact(answer, "blank-width") >= width + Fraction(1, 4)
    assert exact(answer, "blank-width") - (strip - 0.125) < width + 0.25 or strips == 1
