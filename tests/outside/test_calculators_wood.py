"""Calculators about what wood does, against handbook tables and independent beam solvers."""

from __future__ import annotations

import re
import warnings

import numpy as np
import pint
import pytest

from scantling.measure import Display
from tests.outside.sources import checked
from tests.support.calculating import ask, exact, number

with warnings.catch_warnings():
    warnings.simplefilter("ignore")
    from Pynite import FEModel3D

HANDBOOK = "FPL-GTR-190, Wood Handbook (2010)"
NUMPY = f"numpy {np.__version__.split('.')[0]}"
UNITS = pint.UnitRegistry()

BEAMS = [
    ("resting", "1.24", "11.25", "0.75", "36", "evenly", "60", 0.0743225806),
    ("fixed", "1.24", "11.25", "0.75", "36", "evenly", "60", 0.0148645161),
    ("resting", "1.2", "12", "0.71875", "32", "evenly", "80", 0.0766061934),
    ("fixed", "1.2", "12", "0.71875", "32", "evenly", "80", 0.0153212387),
    ("resting", "1.4", "3.5", "1.5", "48", "in the middle", "150", 0.2507755100),
    ("fixed", "1.4", "3.5", "1.5", "48", "in the middle", "150", 0.0626938776),
]
"""Ends, stiffness, depth, thickness, span, load, and the deflection that three public solvers agree on."""


@checked(
    quantity="calc-shelf-sag",
    document="indeterminatebeam, anaStruct, PyNite",
    place="2.4.0, 1.7.0, 3.2.0: six beams, as recorded; they agree on them to 2e-7 in",
    kind="library",
)
@pytest.mark.parametrize(("ends", "stiff", "depth", "thick", "span", "spread", "load", "sag"), BEAMS)
def test_sag_as_three_solvers_have_it(ends, stiff, depth, thick, span, spread, load, sag):
    """The sag is that of three independent beam solvers."""
    asked = {
        "stiffness": stiff,
        "depth": depth,
        "thickness": thick,
        "span": span,
        "spread": spread,
        "ends": ends,
    }

    found = number("shelf-sag", "sag", load=f"{load} lb", load_as="together", **asked)

    assert found == pytest.approx(sag, abs=5e-7)


@checked(
    quantity="calc-shelf-sag",
    document="pint",
    place=f"{pint.__version__}: pounds of force, pounds to the square inch and in⁴ as N, N/mm² and mm⁴",
    kind="library",
)
def test_the_sum_in_millimetres_goes_together():
    """Load, stiffness and second moment of area are those of the sum in inches, to four figures."""
    board = {"span": "36 in", "depth": "11 1/4 in", "thickness": "3/4 in", "load": "20 lb"}
    working = ask("shelf-sag", Display("mm"), **board).working()[1]
    load, stiffness, second = (
        float(re.search(rf"([\d,.]+) {unit}", working)[1].replace(",", "")) for unit in ("N ", "N/mm²", "mm⁴")
    )
    inches = ask("shelf-sag", **board).working()[1]
    pounds, psi, fourth = (
        float(re.search(rf"([\d,.]+) {unit}", inches)[1].replace(",", "")) for unit in ("lb", "psi", "in⁴")
    )

    assert load == pytest.approx((pounds * UNITS.force_pound).to("newton").magnitude, rel=6e-4)
    assert stiffness == pytest.approx((psi * UNITS.psi).to("megapascal").magnitude, rel=6e-4)
    assert second == pytest.approx((fourth * UNITS.inch**4).to("mm**4").magnitude, rel=6e-4)


def framed(span: float, bending: float, load: float, *, even: bool, clamped: bool) -> float:
    """Return the deflection in the middle of a beam as the finite-element library has it."""
    model = FEModel3D()
    for name, x in (("left", 0), ("middle", span / 2), ("right", span)):
        model.add_node(name, x, 0, 0)
    model.def_support("left", True, True, True, True, clamped, clamped)
    model.def_support("right", False, True, True, False, clamped, clamped)
    model.add_material("wood", bending, bending, 0.3, 0)
    model.add_section("board", 1, 1, 1, 1)
    model.add_member("first", "left", "middle", "wood", "board")
    model.add_member("second", "middle", "right", "wood", "board")
    for member in ("first", "second"):
        if even:
            model.add_member_dist_load(member, "FY", -load / span, -load / span)
    if not even:
        model.add_node_load("middle", "FY", -load)
    model.analyze_linear()
    return -model.nodes["middle"].DY["Combo 1"]


@checked(
    quantity="calc-shelf-sag",
    document="PyNiteFEA, a general library of finite elements",
    place="2.0 or newer, members with even and middle loads on resting and fixed ends",
    kind="library",
)
@pytest.mark.parametrize(
    ("ends", "spread"),
    [("resting", "evenly"), ("fixed", "evenly"), ("resting", "in the middle"), ("fixed", "in the middle")],
)
@pytest.mark.parametrize(
    ("span", "depth", "thick", "load"), [(36, 11.25, 0.75, 75), (48, 3.5, 1.5, 150), (29.5, 12, 0.625, 40)]
)
def test_sag_by_finite_elements(span, depth, thick, load, ends, spread):
    """The library bends the same board just as far."""
    bending = 1.24e6 * depth * thick**3 / 12
    wanted = framed(span, bending, load, even=spread == "evenly", clamped=ends == "fixed")

    asked = {"span": str(span), "depth": str(depth), "thickness": str(thick), "load": f"{load} lb"}
    found = number(
        "shelf-sag", "sag", stiffness="1.24", load_as="together", ends=ends, spread=spread, **asked
    )

    assert found == pytest.approx(wanted, rel=1e-6)


@checked(
    quantity="calc-shelf-sag",
    document="numpy",
    place=f"{NUMPY}: the bending moment summed twice over 20,000 steps",
    kind="library",
)
@pytest.mark.parametrize(
    ("span", "depth", "thick", "load"), [(36, 11.25, 0.75, 75), (30, 9.25, 0.71875, 40), (60, 12, 1.5, 200)]
)
def test_sag_by_summing_the_bending(span, depth, thick, load):
    """Summing the curvature of an evenly loaded board twice gives the same sag."""
    stiffness, steps = 1.24e6, 20_001
    at = np.linspace(0, span, steps)
    moment = load / span * at * (span - at) / 2
    curve = moment / (stiffness * depth * thick**3 / 12)
    width = at[1]
    slope = np.concatenate([[0], np.cumsum((curve[1:] + curve[:-1]) / 2 * width)])
    drop = np.concatenate([[0], np.cumsum((slope[1:] + slope[:-1]) / 2 * width)])
    sag = drop[-1] / 2 - drop[steps // 2]

    asked = {"span": str(span), "depth": str(depth), "thickness": str(thick), "load": f"{load} lb"}
    found = number("shelf-sag", "sag", stiffness="1.24", load_as="together", **asked)

    assert found == pytest.approx(sag, rel=1e-6)


@checked(
    quantity="calc-shelf-span",
    document="Architectural Woodwork Standards, edition 1 (2009)",
    place="4.4.14.10: longest shelves at span/144, 40 and 50 lb to the square foot",
    kind="standard",
)
@pytest.mark.parametrize(
    ("stiff", "thick", "load", "published"),
    [
        ("0.95", "0.75", "40", 40),
        ("0.95", "0.75", "50", 37),
        ("0.95", "1", "40", 53),
        ("1.8", "0.75", "50", 46),
        ("1.8", "1", "40", 66),
        ("1.82", "0.75", "40", 49),
        ("1.82", "0.75", "50", 46),
        ("1.82", "1", "40", 66),
    ],
)
def test_longest_shelves_as_printed(stiff, thick, load, published):
    """The longest span, in whole inches as the standard prints it, is the standard's (one row rounds up)."""
    asked = {"stiffness": stiff, "thickness": thick, "load": f"{load} lb", "limit": "144"}

    found = number("shelf-sag", "longest", load_as="on each square foot", span="30", depth="12", **asked)

    assert published - 0.05 <= found < published + 1


@checked(
    quantity="calc-shelf-span",
    document="numpy",
    place=f"{NUMPY}: roots of the polynomial that sets the sag to the limit",
    kind="library",
)
@pytest.mark.parametrize("spread", ["evenly", "in the middle"])
@pytest.mark.parametrize(("load", "load_as"), [("25", "on each foot"), ("60", "together")])
def test_longest_shelf_by_roots(load, load_as, spread):
    """The span at the limit is the positive root of the sag's equation; so is the thickness."""
    stiff, depth, thick, limit = 1.58e6, 10.0, 0.75, 384.0
    k = 5 / 384 if spread == "evenly" else 1 / 48
    bending = stiff * depth * thick**3 / 12
    if load_as == "together":
        roots = np.roots([k * float(load) * limit / bending, 0, -1])
    else:
        roots = np.roots([k * float(load) / 12 * limit / bending, 0, 0, -1])
    root = max(one.real for one in roots if abs(one.imag) < 1e-6)

    answer = ask(
        "shelf-sag",
        wood="yellow-poplar",
        depth="10",
        thickness="0.75",
        load=f"{load} lb",
        load_as=load_as,
        spread=spread,
        span="33",
        limit="384",
    )

    assert float(exact(answer, "longest")) == pytest.approx(root, rel=1e-9)
    total = float(load) * (33 / 12 if load_as != "together" else 1)
    wanted = np.roots([stiff * depth / 12, 0, 0, -k * total * 33**2 * limit])
    thickness = max(one.real for one in wanted if abs(one.imag) < 1e-6)
    assert float(exact(answer, "thickness")) == pytest.approx(thickness, rel=1e-9)


@checked(
    quantity="calc-movement",
    document=HANDBOOK,
    place="chapter 13, example: white fir, 9.15 in flat-grained, 8 to 11 percent: + 0.067 in, 9.217 in",
    kind="handbook",
)
def test_white_fir_as_printed():
    """The handbook's example board grows by what the handbook says (its shrinkage is 7.0 percent)."""
    answer = ask("wood-movement", width="9.15", now="8", driest="8", dampest="11", shrinkage="7.0")

    assert float(exact(answer, "swells")) == pytest.approx(0.067, abs=1.5e-3)
    assert float(exact(answer, "wide")) == pytest.approx(9.217, abs=1.5e-3)
    assert exact(answer, "shrinks") == 0


@checked(
    quantity="calc-movement-coefficient",
    document=HANDBOOK,
    place="Table 13-5, dimensional change coefficients",
    kind="handbook",
)
@pytest.mark.parametrize(
    ("wood", "radial", "tangential"),
    [
        ("white ash", 0.00169, 0.00274),
        ("red alder", 0.00151, 0.00256),
        ("quaking aspen", 0.00119, 0.00234),
        ("american basswood", 0.00230, 0.00330),
        ("american beech", 0.00190, 0.00431),
        ("yellow birch", 0.00256, 0.00338),
        ("black cherry", 0.00126, 0.00248),
    ],
)
def test_coefficients_as_in_the_table(wood, radial, tangential):
    """For single species the change for one percent is the table's, to its last digit."""
    quarter = number("wood-movement", "coefficient", wood=wood, grain="quarter-sawn") / 100
    flat = number("wood-movement", "coefficient", wood=wood, grain="flat-sawn") / 100

    assert quarter == pytest.approx(radial, abs=6e-6)
    assert flat == pytest.approx(tangential, abs=6e-6)


@checked(
    quantity="calc-movement",
    document=HANDBOOK,
    place="equation 13-2 with the coefficients of Table 13-5, from 10 percent",
    kind="handbook",
)
@pytest.mark.parametrize(
    ("wood", "grain", "coefficient"),
    [
        ("white ash", "flat-sawn", 0.00274),
        ("black cherry", "quarter-sawn", 0.00126),
        ("american beech", "flat-sawn", 0.00431),
    ],
)
def test_movement_by_coefficient(wood, grain, coefficient):
    """Between 6 and 14 percent the movement is width times coefficient times change."""
    found = number(
        "wood-movement", "movement", wood=wood, grain=grain, width="20", now="10", driest="6", dampest="14"
    )

    assert found == pytest.approx(20 * coefficient * 8, rel=5e-3)


EMC = {
    30: {5: 1.4, 30: 6.3, 50: 9.5, 65: 12.4, 80: 16.5, 95: 24.3},
    40: {10: 2.6, 45: 8.7, 60: 11.3, 75: 14.9, 90: 21.0},
    60: {20: 4.6, 35: 7.0, 55: 10.2, 70: 13.3, 85: 18.2},
    70: {30: 6.2, 50: 9.2, 65: 12.0, 80: 16.0},
}
"""Percent, by temperature in degrees Fahrenheit and relative humidity."""


@checked(quantity="calc-moisture", document=HANDBOOK, place="Table 4-2", kind="handbook")
@pytest.mark.parametrize(("temperature", "row"), EMC.items())
def test_moisture_as_in_the_table(temperature, row):
    """The moisture is the table's to a tenth of a percent, and a rounding more."""
    for humidity, published in row.items():
        found = number("moisture", "moisture", temperature=f"{temperature} F", humidity=str(humidity))

        assert found == pytest.approx(published, abs=0.07), humidity


@checked(
    quantity="calc-weight",
    document="NDS supplement 3.1.3, as reckoned by engineering references",
    place="spruce-pine-fir 28.08, douglas fir-larch 33.15, southern pine 36.28, hem-fir 28.72 at 12 percent",
    kind="standard",
)
@checked(
    quantity="calc-weight",
    document=HANDBOOK,
    place="equation 4-7, as worked by oakmissouri.org: gravity 0.40 at 12 percent is 27.97 lb/cu ft",
    kind="handbook",
)
@pytest.mark.parametrize(
    ("wood", "published"),
    [
        ("spruce-pine-fir", 28.0793),
        ("douglas fir-larch", 33.1537),
        ("southern pine", 36.2832),
        ("hem-fir", 28.7182),
        ("ponderosa pine", 27.968),
    ],
)
def test_a_cubic_foot_weighs_what_is_printed(wood, published):
    """A cubic foot of the wood weighs what the reference says, to half a part in a thousand."""
    found = number("weight", "weight", wood=wood, thickness="12", width="12", length="12 in", count="1")

    assert found == pytest.approx(published, rel=6e-4)


@checked(quantity="calc-weight", document="pint", place="0.24 or newer, volume times density", kind="library")
@pytest.mark.parametrize(
    ("thickness", "width", "length", "count"), [(0.75, 48, 96, 1), (1.5, 3.5, 120, 7), (0.5, 12, 30, 4)]
)
def test_weight_in_kilograms(thickness, width, length, count):
    """Pieces of a density in kg/m³ weigh what a units library makes of their volume."""
    density = UNITS.Quantity(28.0793, "lb/ft**3").to("kg/m**3")
    volume = UNITS.Quantity(thickness * width * length * count, "inch**3").to("m**3")
    kilograms = (density * volume).to("kg").magnitude

    asked = {
        "thickness": f"{thickness} in",
        "width": f"{width} in",
        "length": f"{length} in",
        "count": str(count),
    }
    pounds = number("weight", "weight", wood="spruce-pine-fir", **asked)

    assert pounds * 0.45359237 == pytest.approx(kilograms, rel=1e-5)
