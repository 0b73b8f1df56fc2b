"""Sliders and addresses."""

from __future__ import annotations

from urllib.parse import parse_qsl

from hypothesis import given
from hypothesis import strategies as st

from scantling.measure import Display, Length
from scantling.pages.live.choice import address_of, position_of, positions, read_choice, show
from scantling.plan import USUAL, Choice, read_plan
from tests.support.workshop import bench_data

PLAN = read_plan(bench_data(), "bench")
WIDTH = PLAN.sizes["width"]


def test_a_slider_stands_on_steps_and_on_what_the_author_names():
    """From the least to the most by the step, each place once, in order."""
    places = positions(WIDTH)

    assert places == sorted(set(places))
    assert (places[0], places[-1]) == (WIDTH.least, WIDTH.most)
    assert {WIDTH.usual, *WIDTH.offered} <= set(places)
    assert len(places) == 2 * (72 - 30) + 1
    assert [position_of(place, places) for place in places] == list(range(len(places)))


def test_a_fine_range_is_thinned():
    """A slider of a thousand places is no slider."""
    data = bench_data()
    data["sizes"]["width"]["by"] = "1/64 in"
    places = positions(read_plan(data, "bench").sizes["width"])

    assert 100 <= len(places) <= 410


@given(st.integers(30 * 64, 72 * 64), st.sampled_from(["plain", "tapered"]), st.sampled_from(["in", "mm"]))
def test_an_address_leads_back_to_the_choice(sixtyfourths, feet, system):
    """Every size to a 64th and every option survives an address, as a browser reads it."""
    width = Length.of_inches(1) * sixtyfourths / 64
    choice = Choice({"width": width}, {"feet": feet})
    pairs = parse_qsl(address_of(PLAN, choice, USUAL), strict_parsing=bool(address_of(PLAN, choice, USUAL)))
    read = read_choice(PLAN, pairs, Display(system))

    assert read.faults == []
    assert read.sizes.get("width", WIDTH.usual) == width
    assert read.options.get("feet", "plain") == feet


@given(st.integers(30 * 64, 72 * 64), st.sampled_from(["in", "mm"]))
def test_what_a_field_shows_is_what_it_means(sixtyfourths, system):
    """A size written into a field is read back as itself, or within the thousandth of a millimetre shown."""
    width = Length.of_inches(1) * sixtyfourths / 64
    [value] = read_choice(PLAN, [("width", show(width, Display(system)))], Display(system)).sizes.values()

    assert value == width


def test_names_and_words_that_need_quoting_survive():
    """An option with spaces or signs is quoted in the address."""
    data = bench_data()
    data["options"]["feet"]["choices"] = {"plain": "square", "cut & turned, 100 %": "fine"}
    plan = read_plan(data, "bench")
    address = address_of(plan, Choice({}, {"feet": "cut & turned, 100 %"}), USUAL)

    assert dict(parse_qsl(address)) == {"feet": "cut & turned, 100 %"}
