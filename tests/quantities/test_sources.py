"""Every computed number is listed, checked against a source, and told on the page that says so."""

from __future__ import annotations

import re

import pytest

from scantling.quantities import QUANTITIES, Quantity
from tests.outside import page, sources
from tests.outside.sources import Check, checked
from tests.test_rooms import ROOMS

KNOWN = [quantity.id for quantity in QUANTITIES]
SOUND = Check("area", "A book", "table 1", "handbook", "test_x.test_y")


def test_every_quantity_has_a_check():
    """A number that is computed and never compared with the outside fails the suite."""
    assert sources.unchecked(QUANTITIES, sources.all_checks()) == []


def test_every_check_names_a_quantity_and_a_source():
    """Each check says what it checks and where a stranger can look it up."""
    assert [problem for check in sources.all_checks() for problem in check.problems(KNOWN)] == []


def test_every_test_of_the_outside_carries_its_source():
    """In tests/outside/ no test compares a number with one that has no source."""
    bare = [
        f"{module.__name__}.{test.__qualname__}"
        for module in sources.modules()
        for test in sources.tests_of(module)
        if not getattr(test, "checks", ())
    ]

    assert bare == []


def without_versions(text):
    """Return the page as it is whatever version of a library is installed."""
    return re.sub(r"version [\w.]+", "version", text)


def test_the_page_is_current():
    """The committed page is what `make docs` writes now."""
    written = page.write(QUANTITIES, sources.all_checks())

    assert without_versions(page.PAGE.read_text("utf-8")) == without_versions(written), "run `make docs`"


def test_the_list_of_quantities_is_in_order():
    """Ids are unique slugs, every room exists in the design, and no field is empty."""
    assert len(set(KNOWN)) == len(KNOWN)
    for quantity in QUANTITIES:
        assert re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", quantity.id), quantity.id
        assert quantity.room in ROOMS, quantity
        assert quantity.title, quantity
        assert quantity.unit, quantity
        assert quantity.meaning.endswith("."), quantity


@pytest.mark.parametrize(
    ("check", "said"),
    [
        (Check("no-such", "A book", "table 1", "handbook"), "no quantity is called 'no-such'"),
        (Check("area", "A book", "table 1", "hearsay"), "'hearsay' is no kind of source"),
        (Check("area", " ", "table 1", "standard"), "the document is empty"),
        (Check("area", "Some library", "", "library"), "the place is empty"),
    ],
)
def test_a_check_without_a_source_is_found_out(check, said):
    """An unknown quantity, an unknown kind, an empty document and an empty place are each told."""
    (problem,) = check.problems(["area"])

    assert said in problem


def test_common_practice_needs_no_document():
    """A fact of the trade says that it has no source instead of inventing one."""
    assert Check("area", "", "", "common practice").problems(["area"]) == []
    assert SOUND.problems(["area"]) == []


def test_a_quantity_without_a_check_is_found_out():
    """Of two quantities of a room that is there, the one that no check names is returned."""
    area = Quantity("area", "Area", "sq in", "Length times width.", "fault")
    weight = Quantity("weight", "Weight", "lb", "Volume times density.", "fault")
    later = Quantity("later", "Later", "1", "Of a room that is not there yet.", "no_such_room")

    assert sources.unchecked([area, weight, later], [SOUND]) == ["weight"]


def test_a_test_may_carry_several_checks():
    """Decorators add up, and the test is still the same function."""

    def compare():
        return 7

    marked = checked(quantity="area", document="A", place="1", kind="standard")(
        checked(quantity="weight", kind="from memory")(compare)
    )

    assert marked() == 7
    assert [check.quantity for check in marked.checks] == ["weight", "area"]


def test_the_page_escapes_what_a_source_says():
    """A bar or a bracket in a document's name does not break the table."""
    area = Quantity("area", "Area", "sq in", "Length <b>times</b> width.", "measure")
    written = page.write([area], [Check("area", "A | B", "p. 3", "standard", "test_x.test_y")])

    assert "| A \\| B | p. 3 | standard | `test_x.test_y` |" in written
    assert "&lt;b&gt;" in written
