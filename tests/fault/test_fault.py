"""The values that say what is wrong, where, and how to mend it."""

from __future__ import annotations

import pytest

from scantling.fault import Fault, Faulty, Note, Place, Severity


def test_a_place_goes_down_key_by_key():
    """Each step adds to the path and leaves the place above as it was."""
    top = Place()
    leg = top.at("parts", 0)

    assert leg.at("length") == Place(("parts", 0, "length"))
    assert leg == Place(("parts", 0))
    assert top == Place()


def test_a_part_of_a_part_counts_from_the_text():
    """Characters within characters are counted from the start of the whole text."""
    formula = Place(("lengths", "gap"))

    assert formula.part(4, 20).part(2, 5) == Place(("lengths", "gap"), 6, 9)


def test_the_key_itself_can_be_meant():
    """A place on the key names no characters of the value."""
    assert Place(("parts", "leg"), 2, 4).key() == Place(("parts", "leg"), on_key=True)


def test_a_fault_found_in_a_value_is_moved_to_where_the_value_stands():
    """A reader of one value knows only that value; the reader of the whole knows where it is."""
    found = Fault("unknown-unit", "there is no unit 'inn'", Place(("length",), 3, 6))

    assert found.under(Place(("parts", "leg"))).place == Place(("parts", "leg", "length"), 3, 6)


def test_a_fault_in_a_text_is_moved_by_where_the_text_starts():
    """Characters of an inner text are counted on from where it starts in the outer one."""
    found = Fault("unknown-name", "there is no size 'widht'", Place((), 2, 7))
    outer = Place(("steps", 1), 10, 30)

    assert found.under(outer).place == Place(("steps", 1), 12, 17)


@pytest.mark.parametrize(
    "outer", [Place(("steps", 1)), Place(("steps", 1), 10, 30), Place(("steps", 1), on_key=True)]
)
def test_a_fault_of_a_whole_value_takes_the_place_of_that_value(outer):
    """What is wrong with all of an inner text is wrong with that stretch, or key, of the outer one."""
    assert Fault("empty", "there is nothing here").under(outer).place == outer


def test_moving_a_fault_changes_nothing_else():
    """Code, words, notes and weight stay."""
    found = Fault(
        "twice",
        "'leg' is named twice",
        Place(("leg",)),
        help="rename one",
        notes=(Note("the other is here", Place(("rail",))),),
        severity=Severity.WARNING,
        document="bench",
    )
    moved = found.under(Place(("parts",)))

    assert (moved.code, moved.message, moved.help) == (found.code, found.message, found.help)
    assert (moved.notes, moved.severity, moved.document) == (found.notes, found.severity, found.document)


def test_the_exception_carries_every_fault():
    """Whoever catches it gets all that was found, in order, and words for a log."""
    one, other = Fault("a", "the leg is too long"), Fault("b", "the rail is too wide")

    with pytest.raises(Faulty, match="the leg is too long; the rail is too wide") as caught:
        raise Faulty(fault for fault in (one, other))
    assert caught.value.faults == (one, other)


def test_faults_are_values():
    """Equal faults are equal and hash alike, so that doubles can be dropped."""
    assert len({Fault("a", "x", Place(("k", 1))), Fault("a", "x", Place(("k", 1)))}) == 1
