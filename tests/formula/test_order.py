"""Named formulas that use each other."""

from __future__ import annotations

import random
from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from scantling.fault import Place
from scantling.formula import arrange, read_formula, resolve
from scantling.measure import Length


def formulas(**written):
    """Return formulas by name; an underscore stands for the space in a name."""
    return {name.replace("_", " "): read_formula(text) for name, text in written.items()}


def seen(resolved):
    """Return the code, the place's path and the characters of each fault."""
    return [(fault.code, fault.place.path, fault.place.start, fault.place.end) for fault in resolved.faults]


def test_the_written_order_does_not_matter():
    """A formula may use what is written below it."""
    resolved = resolve(
        formulas(between_legs="width - 2 * leg", leg="overhang * 3", overhang="1 in"), {"width": Length(48)}
    )

    assert resolved.faults == ()
    assert resolved.values["between legs"] == Length(42)
    assert next(iter(resolved.values)) == "width"


@given(st.integers(2, 40), st.randoms(use_true_random=False))
def test_any_written_order_gives_the_same_values(count, draw: random.Random):
    """A chain of formulas is worth the same however it is shuffled."""
    chain = [("x0", "1")] + [
        (f"x{i}", f"x{draw.randrange(i)} + x{draw.randrange(i)}") for i in range(1, count)
    ]
    shuffled = draw.sample(chain, count)
    first = resolve({name: read_formula(text) for name, text in chain}, {})
    second = resolve({name: read_formula(text) for name, text in shuffled}, {})

    assert first.faults == ()
    assert first.values == second.values


def test_a_circle_is_one_fault_at_its_first_definition():
    """A circle names all its members from the first defined, and marks the name that leads on."""
    resolved = resolve(formulas(d="c + 1", b="c", c="a", a="b"), {})
    (fault,) = resolved.faults

    assert fault.code == "circle"
    assert fault.message == "these need each other: b -> c -> a -> b"
    assert fault.place == Place(("b",), 0, 1)
    assert [note.place for note in fault.notes] == [Place(("c",), 0, 1), Place(("a",), 0, 1)]


def test_a_formula_of_itself_is_a_circle():
    """A name that refers to itself gets a clear fault at once."""
    (fault,) = resolve(formulas(rail="rail + 1 in"), {}).faults

    assert (fault.code, fault.message) == ("circle", "'rail' is defined by itself")
    assert fault.place == Place(("rail",), 0, 4)


def test_two_circles_are_two_faults():
    """Circles that do not touch are both reported, in written order."""
    resolved = resolve(formulas(a="b", c="d", b="a", d="c"), {})

    assert [fault.message for fault in resolved.faults] == [
        "these need each other: a -> b -> a",
        "these need each other: c -> d -> c",
    ]


def test_a_fault_is_reported_once():
    """What depends on a faulty formula is left out without a word."""
    resolved = resolve(formulas(a="1 / (2 - 2) * 2", b="a + 1", c="b + 1", d="2 + 3"), {})

    assert [fault.code for fault in resolved.faults] == ["divided-by-zero"]
    assert "d" in resolved.values
    assert "c" not in resolved.values


def test_a_division_by_nothing_at_one_size_only():
    """A fault that one size provokes is found at that size, and dependants are quiet."""
    order = arrange(formulas(gaps="count - 1", gap="width / gaps", twice="2 * gap"), ["width", "count"])
    fine = order.evaluate({"width": Length(48), "count": Fraction(4)})
    faulty = order.evaluate({"width": Length(48), "count": Fraction(1)})

    assert fine.values["twice"] == Length(32)
    assert seen(faulty) == [("divided-by-zero", ("gap",), 8, 12)]
    assert "twice" not in faulty.values


def test_every_unknown_name_is_reported_with_what_was_meant():
    """Unknown names are found before any size is chosen, also in branches not taken."""
    order = arrange(
        formulas(a="if yes then widht else depht", b="a + 1 in", c="leg.lenght"),
        ["width", "depth", "leg.length"],
    )

    assert [(fault.place, fault.help) for fault in order.faults] == [
        (Place(("a",), 12, 17), "did you mean 'width'?"),
        (Place(("a",), 23, 28), "did you mean 'depth'?"),
        (Place(("c",), 0, 10), "did you mean 'leg.length'?"),
    ]
    assert order.formulas == ()
    assert (
        order.evaluate({"width": Length(1), "depth": Length(1), "leg.length": Length(1)}).faults
        == order.faults
    )


def test_a_name_that_was_promised_but_not_given_is_a_fault():
    """Evaluating without a name that was arranged for reports it, not an error of the program."""
    order = arrange(formulas(a="width + 1 in"), ["width"])

    assert seen(order.evaluate({})) == [("unknown-name", ("a",), 0, 5)]


def test_given_values_are_left_as_they_were():
    """Evaluating changes nothing that was given to it."""
    given_values = {"width": Length(48)}
    resolve(formulas(a="width"), given_values)

    assert given_values == {"width": Length(48)}


def test_a_long_chain_needs_no_stack():
    """Five thousand formulas, each leaning on the next, are arranged without recursion."""
    chain = {f"x{i}": read_formula(f"x{i + 1} + 1") for i in range(5000)}
    resolved = resolve(chain, {"x5000": Fraction(0)})

    assert resolved.values["x0"] == 5000


def test_a_long_circle_needs_no_stack():
    """A circle of two thousand formulas is found too."""
    circle = {f"x{i}": read_formula(f"x{(i + 1) % 2000} + 1") for i in range(2000)}
    (fault,) = resolve(circle, {}).faults

    assert fault.message.startswith("these need each other: x0 -> x1 -> ")
