"""Whatever a reader types, they are told what is wrong and the nearest that works; never a traceback."""

from __future__ import annotations

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from scantling.calculators import SLUGS, calculator, run
from scantling.measure import Display

EVERY = pytest.mark.parametrize("slug", SLUGS)
BAD = [
    "0",
    "-3",
    "-1/2 in",
    "words",
    "9999999",
    "1" * 40,
    "1/0",
    "",
    "   ",
    "12 in in",
    "1e400",
    "½½",
    "<b>",
    "3 kg",
    "∞",
]
NEAREST = re.compile(r"the nearest that works is (.+)")


def check(answer):
    """Require an answer, or faults that each name a question and say how to mend it."""
    if answer.is_good:
        answer.to_text()
        answer.to_data()
        answer.scene()
        answer.plot()
        return
    asked = {ask.name for ask in answer.calculator.asks}
    for fault in answer.faults:
        assert fault.place.path[0] in asked
        assert fault.message
        assert not fault.message.endswith(".")
        assert fault.message in answer.to_text()


def follow(slug, texts, display):
    """Take every suggestion of a nearest answer until nothing is wrong; return the last answer."""
    for _ in range(8):
        answer = run(slug, texts, display)
        offers = {
            str(fault.place.path[0]): found[1]
            for fault in answer.faults
            if (found := NEAREST.fullmatch(fault.help))
        }
        if not offers:
            return answer
        texts = {**texts, **offers}
    return answer


@EVERY
@pytest.mark.parametrize("display", [Display(), Display("mm")], ids=["in", "mm"])
def test_every_question_takes_every_bad_answer(slug, display):
    """Zero, less than nothing, words, a huge number and worse are either an answer or a fault with a name."""
    for ask in calculator(slug).asks:
        for text in BAD:
            check(run(slug, {ask.name: text}, display))


@EVERY
@pytest.mark.parametrize("display", [Display(), Display("mm")], ids=["in", "mm"])
@pytest.mark.parametrize("text", ["0", "-3", "999999", "0.001"])
def test_the_nearest_that_works_does_work(slug, display, text):
    """Typing what is suggested, as often as something is, leads to an answer."""
    for ask in calculator(slug).asks:
        if ask.kind in {"length", "thickness", "count", "number", "percent", "money"}:
            answer = follow(slug, {ask.name: text}, display)
            assert answer.is_good, (ask.name, [(fault.message, fault.help) for fault in answer.faults])


@EVERY
def test_all_faults_are_told_at_once(slug):
    """With every field wrong, every field is named."""
    asks = [ask for ask in calculator(slug).asks if ask.kind != "choice"]
    answer = run(slug, {ask.name: "words" for ask in asks})

    assert [fault.place.path[0] for fault in answer.faults] == [ask.name for ask in asks]


@pytest.mark.parametrize(
    ("slug", "texts", "name", "said", "mend"),
    [
        (
            "strips",
            {"kerf": "3/8", "board": "1/4", "strip": "1/8"},
            "kerf",
            "as wide as the board",
            "3/16 in",
        ),
        ("strips", {"kerf": "2 in"}, "kerf", "too large", "1/2 in"),
        ("strips", {"strip": "9 in"}, "strip", "wider than the board", "5 1/2 in"),
        ("strips", {"strip": "5 in", "straightening": "1 in"}, "strip", "what there is to rip", "4 1/2 in"),
        ("equal-spaces", {"dividers": "60"}, "dividers", "leave no room", "47"),
        ("equal-spaces", {"dividers": "1", "ends": "dividers"}, "dividers", "too few", "2"),
        ("equal-spaces", {"dividers": "2.5"}, "dividers", "no whole number", "2"),
        ("slats", {"slat": "70 in"}, "slat", "too large", "4 ft"),
        ("brace", {"width": "40 in"}, "width", "too wide to lean", "35 15/16 in"),
        ("segments", {"stock": "12 in"}, "stock", "closes the middle", "8 15/16 in"),
        ("taper", {"foot": "2 in"}, "foot", "no thinner", "1 11/16 in"),
        ("drawer", {"groove": "1/2 in"}, "groove", "right through", "7/16 in"),
        ("sliding-doors", {"groove_top": "1/8 in"}, "groove-top", "too shallow", "3/8 in"),
        ("shelf-pins", {"drilled": "3/4 in"}, "drilled", "comes out", "11/16 in"),
        ("wood-movement", {"driest": "12"}, "driest", "damper than", "11"),
        ("cost-per-foot", {"piece": "20 ft"}, "piece", "longer than every board", "192 in"),
        ("board-yield", {"parts": "2 of 200 in"}, "parts", "longer than every board", "2 of 144 in"),
        ("sheet-yield", {"parts": "1 of 99 x 50 in"}, "parts", "larger than the sheet", "1 of 96 in x 48 in"),
        ("batch-rounding", {"grow": "6 in"}, "grow", "leave nothing", "4 9/16 in"),
        ("moisture", {"humidity": "100"}, "humidity", "too large", "95"),
        ("screws", {"gauge": "12", "second": "3/4 in"}, "second", "grips", "1 7/16 in"),
    ],
)
def test_what_is_wrong_and_the_nearest_that_works(slug, texts, name, said, mend):
    """The fault names the field, says what is wrong, and offers the nearest answer, which works."""
    answer = run(slug, texts)

    (fault,) = answer.faults
    assert fault.place.path == (name,)
    assert said in fault.message
    assert fault.help == f"the nearest that works is {mend}"
    assert follow(slug, {**texts, name: mend}, Display()).is_good


def test_a_question_that_is_not_asked_is_told_with_the_one_that_was_meant():
    """A mistyped key is not ignored."""
    (fault,) = run("equal-spaces", {"openning": "36 in"}).faults

    assert fault.place.path == ("openning",)
    assert fault.help == "did you mean 'opening'?"


def test_an_unknown_wood_is_told_with_the_one_that_was_meant():
    """A choice is matched whatever its capitals, and a near one is offered."""
    assert run("weight", {"wood": "White  Oak"}).is_good

    (fault,) = run("weight", {"wood": "wite oak"}).faults
    assert fault.help == "did you mean 'white oak'?"


TYPED = st.one_of(
    st.sampled_from(BAD),
    st.integers(-5, 400).map(str),
    st.fractions(0, 60, max_denominator=64).map(lambda one: f"{float(one):.6f}"),
    st.sampled_from(
        ["1/64 in", "3/4", "5/4", "1 1/2 in", "36 in", "8 ft", "900 mm", "2 of 30 x 12 in", "45 deg", "20 lb"]
    ),
    st.text(max_size=12),
)


@EVERY
@settings(max_examples=25)
@given(data=st.data())
def test_any_mixture_is_answered_or_told(slug, data):
    """Any words in any fields give an answer that can be drawn, or faults; nothing else is ever raised."""
    asks = calculator(slug).asks
    texts = {}
    for ask in asks:
        if data.draw(st.booleans()):
            usual = st.sampled_from(ask.choices) if ask.choices else TYPED
            texts[ask.name] = data.draw(usual)

    check(run(slug, texts, data.draw(st.sampled_from([Display(), Display("mm"), Display(denominator=64)]))))
