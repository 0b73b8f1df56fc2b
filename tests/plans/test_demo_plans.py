"""The demonstration plans hold at every size that they advertise, and their words keep to their numbers."""

from __future__ import annotations

import re
from functools import cache
from itertools import product

import pytest

from scantling.cutting import cut_plan
from scantling.measure import Length
from scantling.plan import Choice, FittedPlan, offered_choices
from scantling.source import Catalog, SourcePlan, read_catalog
from tests.docs.examples import ROOT

SLUGS = sorted(path.parent.name for path in (ROOT / "plans").glob("*/plan.md"))
MOST_CORNERS = 200


@cache
def catalog() -> Catalog:
    """Return the demonstration catalog."""
    return read_catalog(ROOT / "plans", root=ROOT)


def source(slug: str) -> SourcePlan:
    """Return one plan of it, which has no fault."""
    found = catalog().plan(slug)
    assert found is not None
    assert [str(one) for one in found.diagnostics] == []
    return found


def corners(slug: str) -> list[Choice]:
    """Return the ends of every size, in every combination with every option."""
    plan = source(slug).plan
    sizes = [[(size.name, end) for end in (size.least, size.most)] for size in plan.sizes.values()]
    options = [[(option.name, word) for word in option.choices] for option in plan.options.values()]
    found = [Choice(dict(chosen), dict(words)) for chosen in product(*sizes) for words in product(*options)]
    return found[:: len(found) // MOST_CORNERS + 1]


def fits(slug: str) -> list[FittedPlan]:
    """Return the plan as usual, at every offered size, and at its corners."""
    fitter = source(slug).fitter
    choices = [offered.choice for offered in offered_choices(fitter.plan)] + corners(slug)
    return [fitter.fit(), *(fitter.fit(choice) for choice in choices)]


def test_the_shop_file_is_clean():
    """Nothing is wrong with the demonstration shop file, and every article has a price."""
    assert catalog().source_shop.diagnostics == ()
    assert all(ware.price is not None for ware in catalog().shop.wares.values())


@pytest.mark.parametrize("slug", SLUGS)
def test_a_plan_says_what_a_reader_looks_for(slug):
    """Summary, room, skill, time, tools, cautions, three tags, notes with days, and three sizes."""
    plan = source(slug).plan

    assert plan.summary
    assert plan.room
    assert plan.skill
    assert plan.build_time
    assert plan.tools
    assert plan.cautions
    assert len(plan.tags) >= 3
    assert plan.errata or plan.notes
    assert plan.options
    assert 1 + len(offered_choices(plan)) >= 3
    assert plan.licence == "CC BY 4.0"


@pytest.mark.parametrize("slug", SLUGS)
def test_steps_use_up_all_parts(slug):
    """At every offered size and corner the steps use each part as often as it is cut."""
    for fit in fits(slug):
        used: dict[str, int] = {}
        for use in (use for step in fit.steps for use in step.uses):
            used[use.name] = used.get(use.name, 0) + use.count
        assert used == {part.id: part.count for part in fit.parts}, (fit.sizes, fit.options)


@pytest.mark.parametrize("slug", SLUGS)
def test_steps_need_what_is_bought(slug):
    """Where the steps count hardware, they count what the materials list does."""
    for fit in fits(slug):
        needed: dict[str, int] = {}
        for use in (use for step in fit.steps for use in step.needs):
            needed[use.name] = needed.get(use.name, 0) + use.count
        bought: dict[str, int] = {}
        for item in fit.hardware:
            bought[item.ware] = bought.get(item.ware, 0) + int(item.count)
        assert set(needed) == set(bought), (fit.sizes, fit.options)
        counted = {ware: count for ware, count in needed.items() if count}
        assert counted == {ware: bought[ware] for ware in counted}, (fit.sizes, fit.options)


@pytest.mark.parametrize("slug", SLUGS)
def test_tools_of_the_steps_are_on_the_list(slug):
    """Every tool that a step takes is among the tools of the plan."""
    plan = source(slug).plan
    for step in plan.steps:
        assert set(step.tools) <= set(plan.tools)


@pytest.mark.parametrize("slug", SLUGS)
def test_no_part_is_smaller_than_it_can_be_sawn(slug):
    """At every corner a part is long and wide enough to be held and cut."""
    for fit in fits(slug):
        for part in fit.parts:
            assert part.length >= Length(1), part.id
            assert min(part.width, part.thick) >= Length(3) / 16, part.id


@pytest.mark.parametrize("slug", SLUGS)
def test_a_plan_can_be_bought_and_cut(slug):
    """As usual and at every offered size there is a cutting plan, and it costs no less than its bound."""
    shop = catalog().shop
    fitter = source(slug).fitter
    for choice in (Choice({}, {}), *(offered.choice for offered in offered_choices(fitter.plan))):
        cut = cut_plan(fitter.fit(choice), shop)
        assert cut.cost >= cut.bound
        assert cut.boards


@pytest.mark.parametrize("slug", SLUGS)
def test_every_corner_can_be_bought_and_cut(slug):
    """At the ends of the sizes, with all options, parts fit the stock and the offcuts they come from."""
    shop = catalog().shop
    fitter = source(slug).fitter
    choices = corners(slug)
    for choice in choices[:: len(choices) // 24 + 1]:
        assert cut_plan(fitter.fit(choice), shop, steps=1).boards


@pytest.mark.parametrize("slug", SLUGS)
def test_tall_things_are_anchored(slug):
    """A piece that stands higher than 27 in and twice its depth tells its reader to fasten it to a wall."""
    fit = source(slug).fitter.fit()
    overall = fit.overall()
    if overall["height"] < Length(27) or overall["height"] < 2 * overall["depth"]:
        return
    cautions = " ".join(str(piece) for caution in fit.cautions for piece in caution.pieces)
    assert "wall" in re.findall(r"\w+", cautions)


@pytest.mark.parametrize("slug", SLUGS)
def test_lines_are_not_too_long_to_edit(slug):
    """An author's file stays readable: prose lines stay under 160 characters."""
    body = (ROOT / "plans" / slug / "plan.md").read_text("utf-8").split("---\n", 2)[2]
    long = [line for line in body.splitlines() if len(line) > 160 and not line.startswith("caution:")]
    assert long == []
