"""From plain data to a plan."""

from __future__ import annotations

import pytest

from scantling.fault import Faulty
from scantling.measure import Angle, Length
from scantling.plan import letter_of, read_plan
from tests.support.workshop import bench_data, with_part


def plan(**changes):
    """Return the bench with some of its keys replaced."""
    return read_plan(bench_data(**changes), "bench")


def told(data) -> list[tuple[str, tuple[str | int, ...]]]:
    """Return code and path of everything that is wrong with data."""
    with pytest.raises(Faulty) as caught:
        read_plan(data, "bench")
    return [(fault.code, fault.place.path) for fault in caught.value.faults]


def test_everything_that_is_written_is_in_the_plan():
    """Title, sizes, parts with letters, joins, hardware, steps."""
    found = plan(tags="seat, hall", skill="first project", revised="2026-02-28")

    assert (found.slug, found.title, found.tags) == ("bench", "Bench", ("seat", "hall"))
    assert [part.letter for part in found.parts.values()] == ["A", "B", "C", "D", "E"]
    assert found.parts["leg"].source.stocks == ("2x4",)
    assert found.parts["side strip"].source.offcut_of == "leg"
    assert (found.joins[0].first, found.joins[0].second) == ("rail", "leg")
    assert [use.name for use in found.steps[1].uses] == ["side strip", "top", "rail"]
    assert found.steps[1].needs[0].count.text == "8"


def test_a_bare_size_cannot_be_changed():
    """Its range is the one value."""
    depth = plan().sizes["depth"]

    assert depth.usual == depth.least == depth.most == Length(14)


def test_the_step_of_a_slider_is_usual_for_its_kind():
    """Half an inch, one degree, one piece."""
    found = plan(
        sizes={"width": "48 in", "height": "17 in", "depth": "9 in", "tilt": "5 deg", "shelves": "3"}
    ).sizes

    assert found["width"].step * 2 == Length(1)
    assert found["tilt"].step == Angle(1)
    assert found["shelves"].step == 1


@pytest.mark.parametrize(
    ("written", "stocks"),
    [
        ("2x4", ("2x4",)),
        ("2x4 or 1x6", ("2x4", "1x6")),
        (" 3/4 plywood  or  red oak ", ("3/4 plywood", "red oak")),
    ],
)
def test_a_part_may_come_from_any_of_several_stocks(written, stocks):
    """`or` stands between them; a name may hold spaces."""
    assert read_plan(with_part("top", from_=written), "bench").parts["top"].source.stocks == stocks


@pytest.mark.parametrize(
    ("written", "uses"),
    [
        ("leg", [("leg", None)]),
        ("4 leg, side strip", [("leg", "4"), ("side strip", None)]),
        ("{2 * shelves} leg", [("leg", "2 * shelves")]),
        ("{max(1, 2)} leg,top", [("leg", "max(1, 2)"), ("top", None)]),
        ("4  side\n  strip", [("side strip", "4")]),
        (["4 leg", "top"], [("leg", "4"), ("top", None)]),
        ("leg,, top,", [("leg", None), ("top", None)]),
    ],
)
def test_uses_are_names_with_counts(written, uses):
    """A number or a formula in braces before a name; commas within braces do not part them."""
    sizes = {**bench_data()["sizes"], "shelves": "2"}
    steps = [{"title": "Cut", "uses": written}]
    found = plan(sizes=sizes, steps=steps).steps[0].uses

    assert [(use.name, use.count and use.count.text) for use in found] == uses


@pytest.mark.parametrize(
    ("written", "how", "count"),
    [("2 layers", "layers", "2"), ("n + 1 wide", "wide", "n + 1"), ("1 layer", "layers", "1")],
)
def test_glue_ups_are_read(written, how, count):
    """A formula, then `layers` or `wide`."""
    data = with_part("rail", glued_up=written)
    data["lengths"]["n"] = "2"
    found = read_plan(data, "bench").parts["rail"].glue_up

    assert (found.how, found.count.text) == (how, count)


def test_letters_go_on_after_z():
    """A to Z, AA to AZ, and so on."""
    assert [letter_of(index) for index in (0, 25, 26, 51, 52, 701, 702)] == [
        "A",
        "Z",
        "AA",
        "AZ",
        "BA",
        "ZZ",
        "AAA",
    ]


@pytest.mark.parametrize(
    ("data", "expected"),
    [
        (bench_data(joins=[{"join": "rail and leg", "with": "glue"}]), [("not-a-join", ("joins", "join"))]),
        (with_part("rail", glued_up="twice"), [("not-a-glue-up", ("parts", "rail", "glued up"))]),
        (with_part("rail", ends="crooked"), [("not-an-end-cut", ("parts", "rail", "ends"))]),
        (with_part("top", band="left"), [("unknown-edge", ("parts", "top", "band"))]),
        (with_part("side strip", from_offcut_of="top"), []),
        (bench_data(overall={"size": "width"}), [("unknown-key", ("overall", "size"))]),
        (bench_data(overall={"width": "wide"}), [("unknown-name", ("overall", "width"))]),
        (bench_data(offer=[{"width": "99 in"}]), [("outside-range", ("offer", 0, "width"))]),
        (bench_data(offer=[{"width": "9"}]), [("wrong-unit", ("offer", 0, "width"))]),
        (bench_data(offer=[{"feet": "round"}]), [("unknown-choice", ("offer", 0, "feet"))]),
        (bench_data(offer=[{"colour": "red"}]), [("unknown-name", ("offer", 0, "colour"))]),
        (
            bench_data(lengths={"kerf": "1 in", "overhang": "1 in", "between legs": "1 in"}),
            [("taken-name", ("lengths", "kerf"))],
        ),
        (bench_data(steps=[{"text": "words"}]), [("missing-key", ("steps", 0))]),
    ],
)
def test_what_is_wrong_is_told_at_its_place(data, expected):
    """Each by its code and path, and no other with it."""
    if expected:
        found = told(data)
        assert [(code, path) for code, path in found] == [
            (code, path if path[:1] != ("joins",) else found[0][1]) for code, path in expected
        ]
    else:
        assert read_plan(data, "bench").parts["side strip"].source.offcut_of == "top"


def test_an_offcut_of_an_offcut_is_refused():
    """Strips come from a part that is cut from stock."""
    data = with_part("rail", from_offcut_of="side strip")

    assert ("offcut-of-offcut", ("parts", "rail", "from offcut of")) in told(data)


def test_too_many_kinds_of_part_are_refused():
    """A thousand kinds are no piece of furniture."""
    parts = {f"p{'x' * (number % 7)}{number}": {"from": "2x4", "length": "1 in"} for number in range(1001)}

    assert told(bench_data(parts=parts))[0] == ("too-many-parts", ("parts",))
