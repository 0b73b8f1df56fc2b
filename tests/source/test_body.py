"""The body of a plan: words, headings, and the keys under a heading."""

from __future__ import annotations

import pytest

BOX = """\
---
title: Box
parts:
  side: {from: 2x4, length: 20 in}
---
"""


def steps(source):
    """Return the steps as plain data."""
    return source.data["steps"]


def test_words_before_the_first_heading_are_the_intro(read):
    """Everything above the first `##` introduces the plan, without blank lines around it."""
    assert read(f"{BOX}\n\n One.\n\n# Two\n\n## Cut\n").data["intro"] == " One.\n\n# Two"


def test_a_heading_in_a_code_block_is_no_step(read):
    """What stands between fences is left alone, whatever it looks like."""
    source = read(f"{BOX}## Cut\n\n~~~~\n## not this\n~~~\n## nor this\n~~~~\n\n## Sand\n")

    assert [step["title"] for step in steps(source)] == ["Cut", "Sand"]
    assert "## nor this" in steps(source)[0]["text"]


def test_deeper_and_higher_headings_belong_to_the_words(read):
    """Only `##` begins a step."""
    source = read(f"{BOX}## Cut\n\n### First\n\n#### Second\n\n##nothing\n")

    assert [step["title"] for step in steps(source)] == ["Cut"]
    assert steps(source)[0]["text"] == "### First\n\n#### Second\n\n##nothing"


def test_closing_signs_of_a_heading_are_dropped(read):
    """`## Cut ##` is the step "Cut"."""
    assert steps(read(f"{BOX}## Cut ##\n"))[0]["title"] == "Cut"


def test_keys_stand_right_under_the_heading(read):
    """Known keys are read until the first line that is none, a blank line after the heading apart."""
    source = read(
        f"{BOX}## Cut\n\nuses: 1 side\nTools: saw, square\nonly if: side.length > 10 in\ncaution: Mind\n"
        "  the blade.\ncaution: Wear glasses.\npicture: cut.jpg\npicture alt: A saw\n\nuses: no key here\n"
    )

    assert source.diagnostics == ()
    assert steps(source)[0] == {
        "title": "Cut",
        "uses": "1 side",
        "tools": "saw, square",
        "only if": "side.length > 10 in",
        "caution": ["Mind\n  the blade.", "Wear glasses."],
        "picture": "cut.jpg",
        "picture alt": "A saw",
        "text": "uses: no key here",
    }


def test_a_silenced_check_has_its_reason(read):
    """`accept: check: reason` may be written as often as wanted."""
    source = read(f"{BOX}## Cut\naccept: tall-step: it is short: really\naccept: other: so be it\n")

    assert steps(source)[0]["accept"] == {"tall-step": "it is short: really", "other": "so be it"}


@pytest.mark.parametrize(
    "line", ["Note: measure twice.", "A warning: it bites.", "http://example.org", "Use: no"]
)
def test_words_with_a_colon_are_words_unless_they_are_nearly_a_key(read, line):
    """A sentence with a colon begins the words; only a misspelled key is taken for one."""
    source = read(f"{BOX}## Cut\n{line}\n")
    is_key = line.startswith("Use:")

    assert [one.code for one in source.diagnostics] == (["unknown-key"] if is_key else [])
    assert ("text" in steps(source)[0]) is not is_key


def test_a_plan_without_a_body_has_neither_intro_nor_steps(read):
    """Nothing is made of nothing."""
    source = read(BOX + "\n\n")

    assert "intro" not in source.data
    assert "steps" not in source.data
