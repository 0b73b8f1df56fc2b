"""What a plan takes at the least: never more than in truth, so that no plan is ruled out that would do."""

from __future__ import annotations

from itertools import product

from hypothesis import given, settings
from hypothesis import strategies as st

from scantling.measure import Length
from scantling.plan import Fitter, read_plan
from scantling.report import lacking, make_report, stock_needs
from scantling.shop import Owned, read_my_shop, read_shop, shop_of
from tests.support.workshop import bench_data, shop_data

SHOP = read_shop(shop_data())
PLAN = read_plan(bench_data(), "bench")


def owned_shop(owned: list[Owned]):
    """Return the shop of a reader who has these pieces."""
    sizes: dict[str, dict[str, str]] = {}
    for one in owned:
        size = one.size if SHOP.stocks[one.stock].is_sheet else f"{one.length.inches} in"
        sizes.setdefault(one.stock, {})[size] = str(one.count)
    return shop_of(SHOP, read_my_shop({"owned": sizes})[0])[0]


def needs_nothing_more(owned: list[Owned]) -> bool:
    """Return whether the bench's own cutting plan buys no wood, by the solver."""
    shop = owned_shop(owned)
    report = make_report(Fitter(PLAN, shop).fit(), shop)
    return all(line.is_owned for line in report.materials.stocks)


PIECES = st.lists(
    st.builds(
        lambda stock, feet, count: Owned(
            stock, Length(feet * 12), SHOP.stocks[stock].width or Length(48), count
        ),
        st.sampled_from(sorted(SHOP.stocks)),
        st.integers(1, 10),
        st.integers(1, 8),
    ),
    max_size=4,
    unique_by=lambda one: (one.stock, one.length),
)


@given(PIECES)
@settings(max_examples=60)
def test_a_plan_that_needs_nothing_more_is_never_ruled_out(owned):
    """Whatever the solver cuts from what is there, the glance lets through."""
    needs = stock_needs(Fitter(PLAN, SHOP).fit())

    if needs_nothing_more(owned):
        assert lacking(needs, owned) == 0


def test_with_plenty_of_everything_nothing_is_lacking():
    """And the solver agrees: so the test above is not empty."""
    owned = [Owned(key, stock.longest, stock.width or Length(48), 20) for key, stock in SHOP.stocks.items()]
    needs = stock_needs(Fitter(PLAN, SHOP).fit())

    assert needs
    assert lacking(needs, owned) == 0
    assert needs_nothing_more(owned)


def test_with_nothing_all_of_it_is_lacking():
    """Nothing is there, and a board that is too short for the longest piece is as good as none."""
    needs = stock_needs(Fitter(PLAN, SHOP).fit())
    short = [Owned(key, Length(2), Length(1), 1) for key in SHOP.stocks]

    assert lacking(needs, []) == sum(need.area for need in needs)
    assert lacking(needs, short) > 0


def boards_do(pieces: tuple[int, ...], boards: tuple[int, ...], kerf: int) -> bool:
    """Return whether pieces can be cut from boards, by trying every way, in eighths of an inch."""
    for where in product(range(len(boards)), repeat=len(pieces)):
        if all(
            sum(piece + kerf for piece, at in zip(pieces, where, strict=True) if at == board) <= length + kerf
            for board, length in enumerate(boards)
        ):
            return True
    return False


@given(
    st.lists(st.sampled_from([16, 24, 30, 36, 50]), min_size=1, max_size=3, unique=True), st.integers(1, 4)
)
@settings(max_examples=40)
def test_what_is_enough_is_what_every_way_of_cutting_finds(lengths, count):
    """A rack of slats from boards that are there: the engine's answer is that of trying every way."""
    data = {
        "title": "Rack",
        "sizes": {"width": {"usual": "20 in"}},
        "parts": {"slat": {"count": str(count), "from": "2x4", "length": "width - 1 in"}},
    }
    plan = read_plan(data, "rack")
    owned = [Owned("2x4", Length(length), SHOP.stocks["2x4"].width, 1) for length in lengths]
    shop = owned_shop(owned)
    report = make_report(Fitter(plan, shop).fit(), shop)
    kerf = int(SHOP.kerf.inches * 8)

    enough = all(line.is_owned for line in report.materials.stocks)
    trim = int(SHOP.stocks["2x4"].trim_ends.inches * 8)
    boards = tuple(8 * length - 2 * trim for length in lengths)
    assert enough == boards_do((19 * 8,) * count, boards, kerf)
