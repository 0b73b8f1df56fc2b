"""A form reads a record, names every fault in it, describes itself and makes its schema."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.fault import Fault, Place
from scantling.form import (
    LENGTH,
    NUMBER,
    Choice,
    Date,
    EitherOf,
    Field,
    Form,
    Formulas,
    ListOf,
    Named,
    Raw,
    Record,
    Text,
    Words,
    YesNo,
    describe,
    schema,
)
from scantling.measure import Length

HERE = Place(("box",))


@dataclass(frozen=True)
class Box:
    """What the form under test makes."""

    values: dict[str, Any]
    place: Place


def box(*, found_at: Place, **values: Any) -> Box:
    """Return a box of whatever the form read."""
    return Box(values, found_at)


FORM: Form[Box] = Form(
    "a box",
    box,
    (
        Field("length", LENGTH, "how long", required=True, example="12 in"),
        Field("colour", Choice(("red", "green")), "which colour", default="red"),
        Field("label", Text(20), "what stands on it", required=True, default="", example="nails"),
        Field("only if", Text(), "when it is there", default=""),
    ),
    "Something to keep things in.",
    short="length",
)


def read(data: object, form: Form[Box] = FORM) -> tuple[Box | None, list[Fault]]:
    """Return what the form makes of data, and the faults."""
    faults: list[Fault] = []
    return form.read(data, HERE, faults), faults


def told(faults: list[Fault]) -> list[tuple[str, tuple[Any, ...]]]:
    """Return code and path of each fault."""
    return [(fault.code, fault.place.path) for fault in faults]


def test_a_record_is_made_of_all_its_fields():
    """What is written is read, what is left out is as usual, spaces in keys become underscores."""
    made, faults = read({"length": "8 in", "label": " nails "})

    assert faults == []
    assert made == Box(
        {"length": Length(8), "colour": "red", "label": "nails", "only_if": ""},
        HERE,
    )


def test_a_bare_value_fills_the_short_field():
    """A record that mostly needs one thing may be written as that alone; its place is the record's."""
    _, faults = read("8")

    assert told(faults) == [("missing-unit", ("box",)), ("missing-key", ("box",))]
    assert (faults[0].place.start, faults[0].place.end) == (0, 1)


def test_every_fault_is_told_at_once():
    """Unknown keys, unreadable values and missing ones stand in one list."""
    _, faults = read({"lenth": "8 in", "colour": "rd", "only if": []})

    assert told(faults) == [
        ("unknown-key", ("box", "lenth")),
        ("unknown-choice", ("box", "colour")),
        ("missing-key", ("box",)),
        ("wrong-kind", ("box", "only if")),
    ]
    assert faults[0].place.on_key
    assert faults[0].help == "did you mean 'length'?"
    assert faults[2].help == "add 'label: nails'"


def test_a_misspelled_key_is_not_missing_as_well():
    """One slip is told once."""
    _, faults = read({"lenth": "8 in", "label": "x"})

    assert told(faults) == [("unknown-key", ("box", "lenth"))]


def test_a_faulty_record_is_made_as_far_as_it_can_be():
    """A fault in one field does not hide the others; without what is required nothing is made."""
    made, faults = read({"length": "8 in", "colour": "blue"})

    assert len(faults) == 2
    assert made is not None
    assert made.values["colour"] == "red"
    assert made.values["label"] == ""
    assert read({"length": "8", "label": "x"})[0] is None


@pytest.mark.parametrize("data", [["a"], [], 3])
def test_what_is_no_record_is_told_so(data):
    """Where lines of `key: value` are due, the keys are listed."""
    form = Form("a box", box, FORM.fields)
    made, faults = read(data, form)

    assert made is None
    assert told(faults) == [("not-a-record", ("box",))]
    assert faults[0].help == "it may have: length, colour, label, only if"


@pytest.mark.parametrize(
    ("kind", "data", "value"),
    [
        (Text(), " words ", "words"),
        (Words(), "saw, square ,", ("saw", "square")),
        (Words(), [" saw", "square"], ("saw", "square")),
        (YesNo(), "Yes", True),
        (YesNo(), "false", False),
        (Date(), "2024-02-29", "2024-02-29"),
        (Raw(), {"a": ["b"]}, {"a": ["b"]}),
        (ListOf(LENGTH), "2 in", (Length(2),)),
        (ListOf(LENGTH), ["2 in", "3 in"], (Length(2), Length(3))),
        (Named(LENGTH, "lengths by name"), {"a": "2 in"}, {"a": Length(2)}),
        (EitherOf(Record(FORM), Text()), "words", "words"),
    ],
)
def test_kinds_read_what_they_should(kind, data, value):
    """Each kind of value, as an author writes it."""
    faults: list[Fault] = []

    assert kind.read(data, HERE, faults) == value
    assert faults == []


@pytest.mark.parametrize(
    ("kind", "data", "codes"),
    [
        (Text(5), "six letters", [("too-long", ("box",))]),
        (Text(), "", [("empty", ("box",))]),
        (Text(), {}, [("wrong-kind", ("box",))]),
        (Words(), ["saw", {}], [("wrong-kind", ("box", 1))]),
        (YesNo(), "maybe", [("not-yes-or-no", ("box",))]),
        (Date(), "2026-02-30", [("not-a-day", ("box",))]),
        (Date(), "2023-02-29", [("not-a-day", ("box",))]),
        (Date(), "1900-02-29", [("not-a-day", ("box",))]),
        (Date(), "2026-00-01", [("not-a-day", ("box",))]),
        (Date(), "٢٠٢٦-01-01", [("not-a-day", ("box",))]),
        (Date(), "2026-04-31", [("not-a-day", ("box",))]),
        (Date(), "1.2.2026", [("not-a-day", ("box",))]),
        (ListOf(LENGTH), ["2 in", "3", "x"], [("missing-unit", ("box", 1)), ("not-a-length", ("box", 2))]),
        (Named(LENGTH, "lengths by name"), "2 in", [("not-named", ("box",))]),
        (Named(LENGTH, "lengths by name"), {"a": "x"}, [("not-a-length", ("box", "a"))]),
        (Formulas(), {"a": "1 +", "b": "2"}, [("unfinished", ("box", "a"))]),
    ],
)
def test_kinds_tell_what_is_wrong_and_where(kind, data, codes):
    """Each kind of value, written wrongly."""
    faults: list[Fault] = []
    kind.read(data, HERE, faults)

    assert told(faults) == codes


def test_a_description_has_a_line_a_field():
    """The format reference is made of these."""
    assert describe(FORM)[0] == ("length (needed)", LENGTH.describe(), "how long", "12 in")
    assert [line[0] for line in describe(FORM)] == ["length (needed)", "colour", "label (needed)", "only if"]


def test_a_schema_says_the_same_as_the_form():
    """Keys, what is required, choices, and the short way to write it."""
    made = schema(FORM)["anyOf"][1]

    assert list(made["properties"]) == ["length", "colour", "label", "only if"]
    assert made["required"] == ["length", "label"]
    assert made["properties"]["colour"]["enum"] == ["red", "green"]
    assert made["additionalProperties"] is False


DATA = st.recursive(
    st.text(max_size=8) | st.sampled_from(["1 in", "yes", "2026-01-01", "red"]),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=4), inner, max_size=3),
    max_leaves=6,
)
KINDS = [Text(3), Words(), YesNo(), Date(), LENGTH, NUMBER, Choice(("red",)), Record(FORM), ListOf(LENGTH)]
KINDS += [Named(NUMBER, "numbers"), Formulas(), EitherOf(Record(FORM), LENGTH)]


@given(data=DATA, kind=st.sampled_from(KINDS))
def test_no_data_ever_breaks_a_kind(data, kind):
    """Whatever stands there, a kind reads it or tells at or below its place what is wrong."""
    faults: list[Fault] = []
    kind.read(data, HERE, faults)

    assert all(fault.place.path[:1] == HERE.path for fault in faults)
    assert kind.describe()
    assert isinstance(kind.schema(), dict)
