"""Everything that is wrong with a plan, in one go."""

from __future__ import annotations

import time

import pytest

from scantling.plan import USUAL, survey_plan
from scantling.shop import read_shop
from tests.support.many_parts import many_parts
from tests.support.workshop import bench_data, shop_data, with_part

SHOP = read_shop(shop_data())


def told(data, shop=SHOP) -> list[tuple[str, tuple[str | int, ...]]]:
    """Return code and path of everything that is wrong with data."""
    return [(fault.code, fault.place.path) for fault in survey_plan(data, "bench", shop).faults]


def test_a_good_plan_comes_ready_to_be_fitted():
    """No fault, the plan, and its fitter."""
    survey = survey_plan(bench_data(), "bench", SHOP)

    assert survey.faults == ()
    assert survey.plan is not None
    assert survey.fitter is not None
    assert survey.fitter.fit(USUAL).plan is survey.plan


def test_without_a_shop_what_does_not_need_one_is_looked_at():
    """The plan is read, but cannot be fitted."""
    survey = survey_plan(bench_data(), "bench", None)

    assert (survey.faults, survey.fitter) == ((), None)
    assert survey.plan is not None
    assert told(bench_data(sizes={"width": "48"}, colour="red"), None)[0] == ("unknown-key", ("colour",))


def test_faults_of_every_stage_come_together():
    """An unreadable field, an unknown stock, an undefined name, a length below nothing: all in one run."""
    data = with_part("rail", length="between legs - 50 in")
    data["parts"]["top"]["from"] = "plywood"
    data["parts"]["leg"]["count"] = "4 in in"
    data["hardware"]["exterior oil"] = {"area": "2 * surfase"}

    assert told(data) == [
        ("missing-operator", ("parts", "leg", "count")),
        ("unknown-stock", ("parts", "top", "from")),
        ("unknown-name", ("hardware", "exterior oil", "area")),
        ("not-positive", ("parts", "rail", "length")),
    ]


@pytest.mark.parametrize(
    ("change", "expected"),
    [
        (
            {"lengths": {"between legs": "width - 2 * leg.width", "overhang": "1 lb"}},
            [("missing-operator", ("lengths", "overhang"))],
        ),
        (
            {"sizes": {"width": "48 in to", "height": "17 in", "depth": "14 in"}},
            [("missing-operator", ("sizes", "width"))],
        ),
        ({"lengths": []}, [("not-named", ("lengths",))]),
        ({"parts": []}, [("not-named", ("parts",))]),
    ],
)
def test_what_leans_on_a_fault_is_not_told_as_well(change, expected):
    """Names that are missing only because their own record is faulty make no further fault."""
    data = bench_data(**change)
    found = told(data)

    assert [code for code, _ in found] == [code for code, _ in expected]
    assert [path[: len(where)] for (_, path), (_, where) in zip(found, expected, strict=True)] == [
        where for _, where in expected
    ]


def test_a_fault_only_at_an_offered_size_names_it():
    """What is right at the usual size and wrong at an offered one says at which."""
    data = with_part("rail", length="width - 40 in")
    faults = survey_plan(data, "bench", SHOP).faults

    assert [(fault.code, fault.message) for fault in faults] == [
        ("not-positive", "the length of 'rail' comes to -4 in at width 36 in")
    ]


def test_a_fault_at_the_usual_size_is_told_once():
    """Offered sizes at which the same is wrong add nothing."""
    faults = survey_plan(with_part("rail", length="width - 90 in"), "bench", SHOP).faults

    assert [fault.message for fault in faults] == ["the length of 'rail' comes to -42 in at the usual size"]


@pytest.mark.parametrize(
    "field", ["width", "thick", "only if", "count", "glued up", "longer", "grain", "ends", "band"]
)
def test_any_one_faulty_field_of_a_part_is_one_fault(field):
    """Whatever field of a part cannot be read, nothing else is said of the plan."""
    data = bench_data()
    data["parts"]["rail"][field] = "1 +"

    assert [path for _, path in told(data)] == [("parts", "rail", field)]


def test_a_plan_of_sixty_parts_is_fitted_in_under_five_milliseconds():
    """The quickest of many runs counts, by the processor's clock: the machine may have other work."""
    fitter = many_parts(60)
    taken = []
    for _ in range(60):
        began = time.process_time()
        fitter.fit(USUAL)
        taken.append(time.process_time() - began)

    assert len(fitter.plan.parts) == 60
    assert min(taken) < 0.005
