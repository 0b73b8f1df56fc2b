"""Laws that hold for all numbers: what must add up does, what closes closes, what is inverse inverts."""

from __future__ import annotations

from fractions import Fraction
from math import isclose

from hypothesis import assume, given
from hypothesis import strategies as st

from scantling.calculators import run
from scantling.calculators.brace import fit_brace
from scantling.calculators.equal_spaces import SPACES_OUTSIDE, lay_out
from scantling.calculators.kit.cube_root import cube_root
from scantling.calculators.segments import CORNERS, FLATS, SIDE, ring_of
from scantling.calculators.slats import fewest
from scantling.calculators.sloped_sides import compound
from scantling.calculators.strips import rip
from scantling.measure import Angle, Length, read_length
from tests.support.calculating import ask, column, exact


def lengths(least, most):
    """Return lengths in sixty-fourths of an inch."""
    return st.integers(int(least * 64), int(most * 64)).map(lambda part: Length(Fraction(part, 64)))


@given(
    lengths(1, 120),
    st.integers(1, 40),
    lengths(0.05, 4),
    st.sampled_from(["spaces", "dividers", "one of each"]),
)
def test_spaces_and_dividers_are_the_opening(opening, dividers, thickness, ends):
    """Spaces and dividers, added up, are exactly the opening, and no divider leaves it."""
    assume(thickness * dividers < opening and (ends != "dividers" or dividers > 1))
    layout = lay_out(opening, dividers, thickness, ends)
    spaces = dividers + {"spaces": 1, "dividers": -1, "one of each": 0}[ends]

    assert layout.space * spaces + thickness * dividers == opening
    assert layout.starts[0] >= Length(0)
    assert layout.starts[-1] + thickness <= opening


@given(lengths(2, 120), st.integers(1, 12), lengths(0.05, 2))
def test_spacers_as_shown_fill_the_opening(opening, dividers, thickness):
    """Spaces rounded together and dividers come within one mark of the opening; alone they may not."""
    assume(thickness * dividers < opening)
    asked = {"opening": f"{opening.inches} in", "thickness": f"{thickness.inches} in"}
    answer = ask("equal-spaces", dividers=str(dividers), ends="one of each", **asked)

    spacers = [read_length(text) for text in column(answer, 0, "Space to cut a spacer for")]

    assert abs(sum(spacers, Length(0)) + thickness * dividers - opening) <= Length(Fraction(1, 32))


@given(lengths(4, 120), lengths(0.25, 6), lengths(0.25, 6))
def test_no_gap_is_too_wide_and_one_slat_less_would_be(opening, slat, largest):
    """The fewest slats leave gaps within the limit; with one fewer they would not be."""
    count = fewest(opening, slat, largest)
    assume(count > 0 and slat * count < opening)

    assert lay_out(opening, count, slat, SPACES_OUTSIDE).space <= largest
    if count > 1:
        assert lay_out(opening, count - 1, slat, SPACES_OUTSIDE).space > largest


@given(lengths(1, 24), lengths(0.05, 6), lengths(0, 0.4), lengths(0, 0.5))
def test_strips_kerfs_and_rest_are_the_board(board, strip, kerf, straightening):
    """What is ripped, what the saw takes and what is left are the board; one more strip would not fit."""
    assume(strip + straightening <= board)
    ripped = rip(board, straightening, strip, kerf)
    dust = board - straightening - strip * ripped.count - ripped.left

    assert ripped.count >= 1
    assert kerf * (ripped.count - 1) <= dust <= kerf * ripped.count
    assert strip * (ripped.count + 1) + kerf * ripped.count > board - straightening


@given(lengths(0.5, 1), lengths(6, 24), st.integers(2, 9))
def test_a_strip_of_the_advised_width_gives_as_many(kerf, board, count):
    """The widest strip for one more piece gives just that many."""
    kerf = kerf / 8
    strip = (board - kerf * (count - 1)) / count

    assert rip(board, Length(0), strip, kerf).count == count


CLOSE = 1e-9


@given(lengths(6, 120), lengths(6, 120), lengths(0.5, 5.5), st.sampled_from(["rails", "posts", "corners"]))
def test_a_brace_closes_its_opening(wide, high, width, seat):
    """All corners lie on the opening's edges, its long edges are parallel and the right distance apart."""
    assume(width < min(wide, high))
    brace = fit_brace(wide, high, width, seat)
    corners = [(float(x.inches), float(y.inches)) for x, y in brace.outline()]
    right, top = float(wide.inches), float(high.inches)

    for x, y in corners:
        assert min(abs(x), abs(x - right), abs(y), abs(y - top)) < CLOSE
        assert -CLOSE <= x <= right + CLOSE
        assert -CLOSE <= y <= top + CLOSE
    along, across = _edges(corners, seat)
    far = (along[0] ** 2 + along[1] ** 2) ** 0.5
    assert isclose(abs(along[0] * across[1] - along[1] * across[0]) / far, float(width.inches), abs_tol=1e-7)


def _edges(corners, seat):
    """Return one long edge as a vector, and a vector from it to the other."""
    if seat == "rails":
        low, foot, _, end = corners
    elif seat == "posts":
        low, end, _, foot = corners
    else:
        _, low, end, _, _, foot = corners
    return (end[0] - low[0], end[1] - low[1]), (foot[0] - low[0], foot[1] - low[1])


@given(st.integers(3, 60), lengths(4, 80), lengths(0.25, 1))
def test_a_ring_measured_another_way_is_the_same_ring(sides, size, stock):
    """A ring made from its side, its flats or its corners has the same side."""
    ring = ring_of(sides, FLATS, size, stock)

    for measured, again in ((CORNERS, ring.corners), (SIDE, ring.side)):
        other = ring_of(sides, measured, again, stock)
        assert isclose(float(other.side.inches), float(ring.side.inches), rel_tol=1e-9)


@given(st.integers(3, 60))
def test_the_mitres_of_a_ring_turn_once_around(sides):
    """All mitres together are a full turn, exactly."""
    assert ring_of(sides, SIDE, Length(5), Length(1)).mitre * (2 * sides) == Angle(360)


@given(st.integers(3, 40), st.integers(0, 89))
def test_a_compound_mitre_lies_between_box_and_frame(sides, slope):
    """Upright sides need only a bevel, flat ones only a mitre; between them the cut obeys both at once."""
    turn, tilt = compound(sides, Angle(slope))

    most = Angle(180) / sides + Angle(Fraction(1, 10**9))

    assert Angle(0) <= turn <= most
    assert Angle(0) <= tilt <= most
    if slope == 0:
        assert turn == Angle(0)
        assert abs((tilt - Angle(180) / sides).degrees) < Fraction(1, 10**9)


@given(st.fractions(0, 10**9, max_denominator=10**6))
def test_a_cube_root_cubes_back(number):
    """The root is the largest with twelve decimals whose cube is not above the number."""
    root = cube_root(number)

    assert root**3 <= number < (root + Fraction(1, 10**12)) ** 3


@given(lengths(12, 72), lengths(6, 24), st.integers(1, 100), st.sampled_from(["evenly", "in the middle"]))
def test_a_shelf_of_the_longest_span_sags_as_allowed(span, depth, load, spread):
    """Asked for its longest span, the shelf sags just what is allowed; so does the advised thickness."""
    asked = {"depth": f"{depth.inches} in", "load": f"{load} lb", "spread": spread, "limit": "200"}
    first = ask("shelf-sag", span=f"{span.inches} in", **asked)
    longest = exact(first, "longest")
    assume(4 < longest < 240)
    again = ask("shelf-sag", span=f"{float(longest):.9f} in", **{**asked, "load": f"{load} lb"})

    assert isclose(float(exact(again, "sag")), float(exact(again, "allowed")), rel_tol=1e-6)
    thickness = exact(first, "thickness")
    assume(Fraction(1, 8) < thickness < 6)
    thick = ask("shelf-sag", span=f"{span.inches} in", thickness=f"{float(thickness):.9f} in", **asked)
    assert isclose(float(exact(thick, "sag")), float(exact(thick, "allowed")), rel_tol=1e-6)


@given(st.integers(0, 30), st.integers(0, 30), st.integers(0, 30), st.integers(8, 240))
def test_a_board_that_dries_and_gets_damp_again_is_as_wide_as_before(now, one, other, width):
    """Moving there and back changes nothing, and more moisture never makes a board narrower."""
    low, high = sorted((one, other))
    shrinkage = {"width": f"{width} in", "shrinkage": "9.1"}
    there = ask("wood-movement", now=str(now), driest=str(low), dampest=str(high), **shrinkage)
    narrow, wide = exact(there, "narrow"), exact(there, "wide")

    assert narrow <= wide
    assert exact(there, "movement") == wide - narrow
    assert exact(there, "shrinks") + exact(there, "swells") == wide - narrow


@given(st.integers(1, 5000), lengths(0.25, 4), lengths(1, 20), lengths(12, 144))
def test_the_price_of_a_piece_gives_back_the_price_of_a_board_foot(cents, thickness, width, length):
    """From board foot to piece and back is the same price, to what a cent of the piece is worth."""
    sides = {
        "thickness": f"{thickness.inches} in",
        "width": f"{width.inches} in",
        "length": f"{length.inches} in",
    }
    piece = ask("piece-price", known="a board foot", price=f"{cents / 100:.2f}", **sides)
    found = int(exact(piece, "piece"))
    assume(found >= 1)

    back = ask("piece-price", known="a piece", price=f"{found // 100}.{found % 100:02d}", **sides)

    slack = Fraction(1, 2) + Fraction(1, 2) / exact(piece, "feet")
    assert abs(exact(back, "board-foot") - cents) <= slack


@given(lengths(6, 60), st.integers(2, 5), lengths(0, 2))
def test_sliding_doors_cover_the_opening(opening, doors, overlap):
    """Doors side by side, less their overlaps, are exactly the opening."""
    answer = run(
        "sliding-doors",
        {"opening": f"{opening.inches} in", "doors": str(doors), "overlap": f"{overlap.inches} in"},
    )
    assume(answer.is_good)

    assert exact(answer, "width") * doors - overlap.inches * (doors - 1) == opening.inches


@given(lengths(5, 40), st.sampled_from(["side-mount", "under-mount", "wood runners"]), lengths(0.25, 1))
def test_a_drawer_and_its_clearance_are_the_opening(opening, runs, side):
    """Box and clearance, or inside and clearance under the box, are exactly the opening."""
    answer = run(
        "drawer",
        {"opening": f"{opening.inches} in", "runs": runs, "side": f"{side.inches} in", "groove": "1/8"},
    )
    assume(answer.is_good)
    clear = {"side-mount": Fraction(1), "under-mount": Fraction(42 * 5, 127), "wood runners": Fraction(1, 8)}[
        runs
    ]
    taken = exact(answer, "inside") if runs == "under-mount" else exact(answer, "width")

    assert taken + clear == opening.inches
    assert exact(answer, "width") == exact(answer, "inside") + 2 * side.inches


@given(lengths(6, 90), st.integers(2, 12), lengths(0, 1), lengths(0, 0.5))
def test_parts_that_grow_fill_the_whole(total, parts, grow, gap):
    """Sizes as shown and gaps add up to the whole within half a mark, however they are rounded."""
    texts = {
        "total": f"{total.inches} in",
        "parts": str(parts),
        "grow": f"{grow.inches} in",
        "gap": f"{gap.inches} in",
    }
    answer = run("batch-rounding", texts)
    assume(answer.is_good)

    assert abs(exact(answer, "sum") + gap.inches * (parts - 1) - total.inches) <= Fraction(1, 32)
    assert exact(answer, "together") <= Fraction(1, 32)
