"""What the engine answers to a live page."""

from __future__ import annotations

import json
import re
from base64 import b64decode

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.measure import Display, Length
from scantling.pages import Look, plan_fragments, render_words
from scantling.pages.live.fit import data_address
from scantling.pages.live.session import Session
from scantling.pages.model_file import model_file
from scantling.plan import Choice, Fitter, read_plan
from scantling.report import plan_data, report_on
from scantling.shop import read_shop
from tests.support import placing
from tests.support.live import ask, fit, opened
from tests.support.workshop import bench_data, shop_data


@pytest.fixture(scope="module")
def session():
    """Return a session with the bench open."""
    return opened()


def unmarked(html: str) -> str:
    """Return HTML without the marks of what changed."""
    return re.sub(r"</?mark[^>]*>", "", html)


def test_the_answer_is_what_a_build_makes(session):
    """Fragments and files are those of the build at the same size, but for the marks."""
    plan = read_plan(bench_data(), "bench")
    report = report_on(Fitter(plan, read_shop(shop_data())), Choice({"width": Length.of_inches(41)}, {}))
    look = Look(Display(), render_words(plan), inline=data_address)

    answer = fit(session, {"width": "41"}, files=True)

    assert {name: unmarked(html) for name, html in answer["fragments"].items()} == plan_fragments(
        report, look
    )
    assert json.loads(answer["files"]["plan.json"]) == plan_data(report, Display())


def test_words_and_pictures_together_are_everything(session):
    """A page that asks for words first and pictures after has the whole page."""
    whole = fit(session, {"width": "60"})["fragments"]
    words = fit(session, {"width": "60"}, part="words")["fragments"]
    pictures = fit(session, {"width": "60"}, part="pictures")["fragments"]

    assert {**words, **pictures} == whole
    assert not set(words) & set(pictures)
    assert "data:image" not in "".join(words.values())


@pytest.mark.parametrize(
    ("text", "exact", "address"),
    [
        ("40", "40 in", "width=40in"),
        ("40 1/2", "40 1/2 in", "width=40-1/2in"),
        ("3 ft 6 in", "42 in", "width=42in"),
        ("1000 mm", "1000 mm", "width=1000mm"),
        ("48", "48 in", ""),
    ],
)
def test_a_size_is_read_as_typed_and_told_exactly(session, text, exact, address):
    """Bare numbers are inches here; the address holds the size, and nothing for the author's own."""
    answer = fit(session, {"width": text})

    assert answer["sizes"]["width"]["exact"] == exact
    assert answer["address"] == address
    assert fit(session, {"width": exact})["address"] == address


def test_a_bare_number_is_in_the_readers_units(session):
    """Who chose millimetres types 1000 and means that; lengths come back in millimetres."""
    answer = fit(session, {"width": "1000"}, mine={"units": "mm"})

    assert answer["sizes"]["width"]["text"] == "1000 mm"
    assert answer["sizes"]["height"]["text"] == "444.5 mm"
    assert answer["sizes"]["width"]["range"] == "762\N{NO-BREAK SPACE}mm to 1828.8\N{NO-BREAK SPACE}mm"
    assert "1000&nbsp;mm" in answer["fragments"]["cut-list"]


@pytest.mark.parametrize(
    ("chosen", "control", "words"),
    [
        ({"width": "-1"}, "size width", "from 30 in to 72 in"),
        ({"width": "1e99in"}, "size width", "unit"),
        ({"width": "9" * 500}, "size width", ""),
        ({"width": "<script>alert(1)</script>"}, "size width", "no length"),
        ({"height": "12 deg"}, "size height", ""),
        ({"feet": "none"}, "option feet", "no choice"),
        ({"widht": "40"}, "", "Did you mean 'width'?"),
    ],
)
def test_what_cannot_be_is_explained_beside_its_control(session, chosen, control, words):
    """A refusal names the control and says what would do."""
    answer = fit(session, chosen)

    assert answer["ok"] is False
    [fault] = answer["faults"]
    assert fault["control"] == control
    assert words in f"{fault['message']} {fault['help']}"


def test_an_address_is_forgiven_what_it_gets_wrong(session):
    """What an address says wrongly is told and left out; the rest counts."""
    answer = fit(session, {"width": "-1", "depth": "14 in", "feet": "tapered", "x": "1"}, forgiving=True)

    assert answer["ok"]
    assert answer["address"] == "feet=tapered"
    assert {fault["control"] for fault in answer["warnings"]} == {"size width", ""}


def test_a_combination_that_does_not_work_is_refused_at_what_was_touched():
    """A fault of the plan as a whole is told beside the control that was changed last."""
    data = bench_data()
    data["sizes"]["width"]["to"] = "200 in"
    answer = fit(opened(bench=data), {"width": "150"}, touched="size width")

    assert not answer["ok"]
    assert {fault["control"] for fault in answer["faults"]} == {"size width"}
    assert all("another size" in fault["help"] for fault in answer["faults"])


def test_the_authors_size_has_no_marks_and_others_have(session):
    """What differs from the author's size is marked, with what it was."""
    usual, wider = fit(session), fit(session, {"width": "50"})

    assert "<mark" not in "".join(usual["fragments"].values())
    facts = wider["fragments"]["facts"]
    assert re.search(r'<mark title="as drawn: 48&nbsp;in&nbsp;wide[^>]*>50&nbsp;in&nbsp;wide', facts)
    assert wider["fragments"]["steps"].count("<mark") == 0
    assert "as drawn" in wider["say"]


def test_my_shop_changes_the_cost_and_says_what_it_could_not_use(session):
    """Prices, kerf, sizes left out and pieces owned count; each slip is told beside its field."""
    mine = {
        "kerf": "3/32",
        "prices": {"2x4 | 8 ft": "1.00", "1x6 | 6 ft": "cheap", "gold": "1"},
        "left out": ["2x4 | 10 ft"],
        "owned": {"1x6": {"5 ft": "2", "?": "1"}},
        "longest piece": "-",
    }
    answer = fit(session, mine=mine, files=True)
    data = json.loads(answer["files"]["plan.json"])
    lines = {(line["item"], line["sold"]): line for line in data["materials"]}

    assert data["cutting"]["kerf"]["in"] == "3/32"
    assert lines["2x4", "8 ft"]["unit_price"]["cents"] == 100
    assert lines["1x6", "5 ft mine"]["owned"] is True
    assert {warning["control"] for warning in answer["warnings"]} == {
        "mine longest piece",
        "mine prices 1x6 | 6 ft",
        "mine prices gold",
        "mine owned 1x6 ?",
    }


def test_a_shop_that_carries_nothing_is_explained(session):
    """Where my store lacks what a plan takes, the plan says so and nothing breaks."""
    left_out = [f"2x4 | {size}" for size in ("8 ft", "10 ft")]
    answer = fit(session, mine={"left out": left_out})

    assert not answer["ok"]
    assert answer["faults"]
    assert fit(session)["ok"]


def test_an_offered_page_starts_from_its_own_size(session):
    """The address of an offered page tells what differs from that page, not from the author's size."""
    start = {"width": "36 in"}

    assert fit(session, start=start)["sizes"]["width"]["exact"] == "36 in"
    assert fit(session, start=start)["address"] == ""
    assert fit(session, {"width": "48"}, start=start)["address"] == "width=48in"


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=12),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text(max_size=10), inner, max_size=4),
    max_leaves=12,
)
KEYS = st.sampled_from(
    ["chosen", "mine", "start", "up", "touched", "forgiving", "part", "files", "items", "slug", "plans"]
)


@given(st.text())
def test_any_text_gets_an_answer(text):
    """Whatever text arrives, JSON goes back."""
    assert json.loads(Session().answer(text))["ok"] is False


@given(ask=st.sampled_from(["fit", "trip"]), more=st.dictionaries(KEYS, JSON, max_size=4))
def test_any_question_gets_an_answer(session, ask, more):
    """Whatever stands where a choice, settings or a list should be, an answer comes, and never a bug's."""
    answer = json.loads(session.answer(json.dumps({"ask": ask, "slug": "bench", **more})))

    assert answer["ok"] in {True, False}
    if "plans" not in more:
        assert "broken" not in {fault["code"] for fault in answer.get("faults", ())}


MINE = st.fixed_dictionaries(
    {},
    optional={
        "kerf": JSON,
        "longest piece": JSON,
        "left out": st.lists(JSON, max_size=3),
        "prices": st.dictionaries(st.sampled_from(["2x4 | 8 ft", "wood glue", "x"]), JSON, max_size=3),
        "owned": st.dictionaries(
            st.sampled_from(["2x4", "3/4 plywood", "x"]),
            JSON | st.dictionaries(st.sampled_from(["5 ft", "40 x 30", "0", "4 in x"]), JSON, max_size=3),
            max_size=3,
        ),
        "units": JSON,
        "fraction": JSON,
    },
)


@given(MINE)
def test_damaged_settings_never_stand_in_the_way(session, mine):
    """Settings that make no sense are left out with a word, and the plan is shown."""
    answer = fit(session, mine=mine, part="words")

    assert answer["ok"] or {fault["code"] for fault in answer["faults"]}.isdisjoint({"broken"})


def test_an_unknown_plan_is_said_to_be_unknown(session):
    """A list may name a plan that the site no longer has."""
    assert ask(session, ask="fit", slug="gone")["faults"][0]["message"] == "There is no plan 'gone' here."


def test_the_3d_file_comes_when_it_is_asked_for(session):
    """It is the build's, at the size that was chosen; asked for words, no answer carries it."""
    data = placing.plan_data({"rail": {"length": "width"}})
    data["sizes"]["width"] = {"usual": "48 in", "from": "30 in", "to": "60 in"}
    data["parts"]["rail"]["place"] = {"left": "0 in", "front": "0 in", "bottom": "0 in"}
    frames = opened(frame=data)
    fitted = Fitter(read_plan(data, "frame"), read_shop(shop_data())).fit(
        Choice({"width": Length.of_inches(40)}, {})
    )

    answer = ask(frames, ask="fit", slug="frame", chosen={"width": "40"}, part="model")
    assert b64decode(answer["model"]) == model_file(fitted, Display())
    assert answer["model"] != ask(frames, ask="fit", slug="frame", part="model")["model"]
    assert answer["fragments"] == {}
    assert ask(frames, ask="fit", slug="frame", part="words")["model"] == ""
    assert fit(session, {"width": "60"}, part="model")["model"] == ""


def test_what_each_inch_costs_follows_the_reader(session):
    """Asked for by itself, the chart of costs is reckoned at the reader's choice and prices."""
    drawn = fit(session, {"width": "41"}, part="cost")["fragments"]
    dear = fit(session, {"width": "41"}, part="cost", mine={"prices": {"wood glue": "60.00"}})["fragments"]

    assert list(drawn) == ["cost"]
    assert "$" in unmarked(drawn["cost"])
    assert "data:image/svg+xml" in drawn["cost"]
    assert dear["cost"] != drawn["cost"]
