"""The sizes that a plan offers as ready pages."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.measure import Display, Length
from scantling.plan import Choice, describe_choice, offered_choices, read_plan, slug_of, write_choice
from tests.support.workshop import bench_data


def plan(**changes):
    """Return the bench with some of its keys replaced."""
    return read_plan(bench_data(**changes), "bench")


def offers(**changes):
    """Return slug and label of what the bench offers."""
    return [(one.slug, one.label) for one in offered_choices(plan(**changes))]


def sizes(**written):
    """Return the bench's sizes with some replaced."""
    return {**bench_data()["sizes"], **written}


def test_each_offered_value_is_a_page():
    """One choice a value, everything else as usual, in the author's order."""
    offered = offered_choices(plan())

    assert offers() == [("width-36in", "width 36 in"), ("width-60in", "width 60 in")]
    assert [one.choice for one in offered] == [
        Choice({"width": Length(36)}, {}),
        Choice({"width": Length(60)}, {}),
    ]


def test_a_label_shows_lengths_as_readers_see_them():
    """Where millimetres are shown a size is told in them; inches stay as the author wrote them."""
    width, *_ = offered_choices(plan())
    whole = offered_choices(plan(offer=[{"width": "40 in", "feet": "tapered"}]))[-1]

    assert (width.told(Display("mm")), width.told(Display("in"))) == ("width 914 mm", "width 36 in")
    assert whole.told(Display("mm")) == "width 1016 mm, feet tapered"
    assert describe_choice(plan(), width.choice, Display("mm")) == "width 914.4 mm"


def test_whole_choices_name_several_sizes_and_options():
    """`offer:` gives a page to several sizes and options together."""
    offered = offered_choices(plan(offer=[{"width": "40 in", "height": "16 in", "feet": "tapered"}]))[-1]

    assert (offered.slug, offered.label) == (
        "width-40in-height-16in-feet-tapered",
        "width 40 in, height 16 in, feet tapered",
    )
    assert offered.choice == Choice({"width": Length(40), "height": Length(16)}, {"feet": "tapered"})


def test_what_is_usual_gets_no_second_page():
    """The usual size, and a choice that comes twice, are not offered again."""
    written = sizes(
        width={"usual": "48 in", "from": "30 in", "to": "72 in", "offer": ["4 ft", "36 in", "3 ft"]}
    )
    more = [{"width": "36 in"}, {"width": "36 in", "height": "17 1/2 in"}, {"feet": "plain"}]

    assert offers(sizes=written, offer=more) == [("width-36in", "width 36 in")]


def test_fractions_and_metric_values_have_addresses():
    """Fractions of an inch keep their digits; what no tape shows in inches is named in millimetres."""
    written = sizes(
        width={"usual": "48 in", "from": "3/4 in", "to": "72 in", "offer": ["17 1/2 in", "900 mm"]}
    )

    assert offers(sizes=written) == [
        ("width-17-1-2in", "width 17 1/2 in"),
        ("width-900mm", "width 900 mm"),
    ]


def test_numbers_and_angles_are_offered_too():
    """A size may be a count or an angle."""
    written = sizes(
        shelves={"usual": "3", "from": "1", "to": "6", "by": "1", "offer": ["5"]},
        tilt={"usual": "10 deg", "from": "0 deg", "to": "20 deg", "offer": ["15 deg"]},
    )

    assert offers(sizes=written)[2:] == [("shelves-5", "shelves 5"), ("tilt-15deg", "tilt 15 deg")]


def test_two_pages_never_share_an_address():
    """Values whose addresses would be alike are told apart by a number."""
    written = sizes(
        **{
            "a b": {"usual": "1 in", "from": "1 in", "to": "9 in", "offer": ["2 in"]},
            "a  b".replace("  ", " ") + "é": {
                "usual": "1 in",
                "from": "1 in",
                "to": "9 in",
                "offer": ["2 in"],
            },
        }
    )

    slugs = [slug for slug, _ in offers(sizes=written)]
    assert len(set(slugs)) == len(slugs) == 4


@given(words=st.text(max_size=40))
def test_an_address_is_always_safe(words):
    """Small letters, digits and single hyphens between, whatever the name."""
    assert re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", slug_of(words))


@pytest.mark.parametrize(
    ("value", "written"),
    [
        (Length.of_inches(Fraction(35, 2)), "17 1/2 in"),
        (Length.of_inches(Fraction(1, 64)), "1/64 in"),
        (Length.of_inches(Fraction(9000, 254)), "900 mm"),
        (Fraction(3), "3"),
        ("bought", "bought"),
    ],
)
def test_a_choice_is_written_exactly(value, written):
    """What is chosen is never rounded."""
    assert write_choice(value) == written


def test_a_choice_in_words_leaves_out_what_is_usual():
    """Messages say at which size something is wrong."""
    choice = Choice({"width": Length(36), "height": Length.of_inches(Fraction(35, 2))}, {"feet": "tapered"})

    assert describe_choice(plan(), choice, Display()) == "width 36 in, feet tapered"
    assert describe_choice(plan(), Choice({}, {}), Display()) == ""
