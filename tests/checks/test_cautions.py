"""What the page says of work that can hurt, where the author says nothing."""

from __future__ import annotations

import pytest

from scantling.checks import CHECKS, cautions_for, examine
from scantling.checks.topics import TOPICS
from tests.checks.bench_plan import fitter_of, frame


def cautions(data):
    """Return the cautions of a plan at its usual size, by topic."""
    fitter = fitter_of(data)
    return {one.topic: one for one in cautions_for(fitter.fit(), fitter.shop)}


def one_part(stock: str, **part: str):
    """Return a plan of one part."""
    parts = {"piece": {"from": stock, "length": "20 in", **part}}
    return frame(parts=parts, joins=[], lengths={}, overall={}, steps=[{"title": "Sand it", "uses": "piece"}])


def with_tool(tool: str):
    """Return a plan whose second step takes a tool."""
    data = one_part("1x4")
    data["steps"].append({"title": "Go on", "tools": tool})
    return data


CALLED = [
    ("caution-short-rips", one_part("2x4", **{"glued up": "2 layers", "width": "2 in", "thick": "3 in"}), 1),
    ("caution-narrow-strips", one_part("1x4", width="5/8 in"), 1),
    ("caution-table-saw", with_tool("table saw"), 2),
    ("caution-router", with_tool("router"), 2),
    ("caution-nailer", with_tool("brad nailer or hammer"), 2),
    ("caution-fibreboard-dust", one_part("3/4 mdf", width="5 in"), None),
    ("caution-lead-paint", one_part("reclaimed 1x6"), None),
    ("caution-food", {**one_part("1x4"), "tags": ["cutting board"]}, None),
    ("caution-children", {**one_part("1x4"), "room": "child's room"}, None),
    ("caution-bunk-bed", {**one_part("1x4"), "tags": ["bunk bed"]}, None),
]


@pytest.mark.parametrize(("topic", "data", "step"), CALLED, ids=[case[0] for case in CALLED])
def test_work_calls_for_its_caution(topic, data, step):
    """The caution is there, with its source, at its step or for the whole plan."""
    caution = cautions(data)[topic]

    assert caution.where == step
    assert caution.text
    assert caution.source


@pytest.mark.parametrize(("topic", "data", "step"), CALLED, ids=[case[0] for case in CALLED])
def test_the_check_asks_for_the_same(topic, data, step):
    """Where the page inserts a caution, the author is told so, with the words that it says."""
    (fault,) = [one for one in examine(fitter_of(data), CHECKS) if one.code == topic]

    assert cautions(data)[topic].text in fault.help


SPOKEN = {
    "caution-short-rips": "These are short rips.",
    "caution-narrow-strips": "Narrow strips jump.",
    "caution-table-saw": "Use the riving knife.",
    "caution-router": "Clamp the work and let the router stop.",
    "caution-nailer": "Keep your hand away from the nailer.",
    "caution-fibreboard-dust": "Do not breathe the dust.",
    "caution-lead-paint": "Test old paint for lead.",
    "caution-food": "Not for food.",
    "caution-children": "Keep small children away.",
    "caution-bunk-bed": "Put up a guard rail.",
}


@pytest.mark.parametrize(("topic", "data", "step"), CALLED, ids=[case[0] for case in CALLED])
def test_the_author_s_own_words_are_enough(topic, data, step):
    """Nothing is inserted where a caution of the plan or of a step speaks of it."""
    assert topic not in cautions({**data, "caution": [SPOKEN[topic]]})
    data = {**data, "steps": [{**data["steps"][0], "caution": [SPOKEN[topic]]}, *data["steps"][1:]]}

    assert topic not in cautions(data)


def test_oil_calls_for_a_word_on_rags():
    """Linseed oil in a step puts the caution there."""
    data = one_part("1x4")
    data["hardware"] = {"linseed oil": {"area": "surface"}}
    data["steps"].append({"title": "Oil it", "needs": "linseed oil"})

    assert cautions(data)["caution-oily-rags"].where == 2


def test_a_plain_plan_calls_for_none():
    """A pine board that is crosscut and sanded needs no inserted caution."""
    assert cautions(one_part("1x4")) == {}


def test_texts_are_short_and_never_promise():
    """A caution is at most three sentences of 300 characters, and none claims that anything conforms."""
    for topic in TOPICS:
        assert len(topic.text) <= 300, topic.name
        assert topic.source, topic.name
        assert "conforms" not in topic.text
        assert "is safe" not in topic.text
