"""Whatever somebody writes, nothing comes of it but a plan or diagnostics."""

from __future__ import annotations

import json
from unittest.mock import patch

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st

from scantling.source import (
    load_plan,
    load_shop,
    render_concise,
    render_full,
    render_github,
    render_html,
    to_data,
    yaml_data,
)
from scantling.source.document import Found, make_document, read_document
from scantling.source.spans import Spans
from tests.fixtures.reading import cases

GOOD = """\
---
title: Bench
summary: A bench, {width} wide.
sizes:
  width: {usual: 48 in, from: 30 in, to: 72 in, by: 1/2 in, offer: [36 in, 60 in]}
lengths:
  inside: width - 2 * leg.width
options:
  trim: {question: "Which trim?", choices: {none: none, bought: bought}, usual: none}
parts:
  leg: {count: 4, from: 2x4, glued up: 2 layers, width: 2 3/4 in, thick: 2 3/4 in, length: 17 in}
  strip: {count: 2, from offcut of: leg, width: 1/2 in, length: 9 in, only if: trim is bought}
  top: {from: 3/4 plywood, length: width, width: 14 in, band: all}
joins:
  - {join: leg to top, with: glue, joints: 4}
hardware:
  wood glue: 1
---
Words.

## Make it
uses: leg, {2} strip
caution: Mind the blade.

Cut to {inside}.
"""
PIECES = (
    *(
        "parts",
        "sizes",
        "title",
        "leg",
        "from",
        "2x4",
        "length",
        "20 in",
        "{leg.length}",
        "## ",
        "---\n",
        ": ",
    ),
    *(
        "- ",
        "[",
        "]",
        "{",
        "}",
        "'",
        '"',
        "&a",
        "*a",
        "!!",
        "|\n  ",
        ">\n  ",
        "\t",
        "\n",
        "\n  ",
        "# ",
        "%",
        "@",
    ),
    *(
        "`",
        "```\n",
        "\x85",
        "\u2028",
        "🚪",
        "木",
        "\ufeff",
        "\x00",
        "1e9",
        "9" * 30,
        "((((",
        "~",
        "null",
        "<<",
    ),
    *("=", ",", "1/0", "½", "-", "\\"),
)
WORDS = st.sampled_from(PIECES)


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    """Return a folder for what hypothesis writes."""
    return tmp_path_factory.mktemp("fuzz")


def read_any(data: bytes, folder, shop):
    """Read a plan, show all that is said of it in every way, and return it."""
    path = folder / "plan.md"
    path.write_bytes(data)
    source = load_plan(path, shop, root=folder)
    lines = max(1, source.document.text.count("\n") + 1)
    for one in source.diagnostics:
        assert one.spot.path == "plan.md"
        assert 1 <= one.spot.line <= lines
        assert 1 <= one.spot.column <= len(one.spot.excerpt) + 1
        assert (one.spot.end_line, one.spot.end_column) >= (one.spot.line, one.spot.column)
        assert one.message
    json.dumps([to_data(one) for one in source.diagnostics])
    for render in (render_full, render_concise, render_github, render_html):
        render(source.diagnostics).encode("utf-8", "strict")
    if not source.diagnostics:
        assert source.fitter is not None
        source.fitter.fit()
    return source


def test_the_plan_that_is_spoiled_below_is_well(folder, small_shop):
    """The plan from which the following tests start has no fault."""
    assert read_any(GOOD.encode(), folder, small_shop).diagnostics == ()


@given(data=st.binary(max_size=300))
def test_any_bytes(data, folder, small_shop):
    """Random bytes give diagnostics."""
    read_any(data, folder, small_shop)


@given(words=st.lists(WORDS | st.text(max_size=5), max_size=40))
def test_any_heap_of_words(words, folder, small_shop):
    """Pieces of plans in any order give diagnostics."""
    read_any(
        f"---\n{''.join(words)}\n---\n{''.join(reversed(words))}".encode("utf-8", "replace"),
        folder,
        small_shop,
    )


@given(at=st.integers(0, len(GOOD)), gone=st.integers(0, 12), words=st.lists(WORDS, max_size=2))
def test_a_plan_with_a_stretch_replaced(at, gone, words, folder, small_shop):
    """A good plan with any stretch of it replaced is read, or told what is wrong."""
    read_any((GOOD[:at] + "".join(words) + GOOD[at + gone :]).encode("utf-8"), folder, small_shop)


TREES = st.recursive(
    WORDS | st.text(max_size=8) | st.integers() | st.booleans() | st.none() | st.floats(),
    lambda inner: (
        st.lists(inner, max_size=3) | st.dictionaries(WORDS | st.text(max_size=6), inner, max_size=3)
    ),
    max_leaves=12,
)
SECTIONS = [
    "title",
    "sizes",
    "lengths",
    "options",
    "parts",
    "joins",
    "hardware",
    "offer",
    "overall",
    "caution",
]
SECTIONS += ["photo", "errata", "tags", "accept", "summary"]


@given(changed=st.dictionaries(st.sampled_from(SECTIONS), TREES, min_size=1, max_size=3))
def test_a_plan_with_any_data_in_its_sections(changed, folder, small_shop):
    """Well-formed YAML of any shape is told what is wrong with it."""
    front = {**yaml.safe_load(GOOD.split("---\n")[1]), **changed}
    text = yaml.safe_dump(front, allow_unicode=True, sort_keys=False)
    read_any(f"---\n{text}---\n## Cut\nuses: leg\n".encode("utf-8", "replace"), folder, small_shop)


KEYS = (
    *(
        "count",
        "from",
        "length",
        "width",
        "thick",
        "glued up",
        "longer",
        "wider",
        "cut to fit",
        "least width",
    ),
    *("grain", "band", "ends", "work", "only if", "from offcut of"),
)
VALUES = (
    *(
        "0",
        "-1",
        "1/0",
        "a",
        "leg.length",
        "leg",
        "20 in",
        "1 in * 1 in",
        "45 deg",
        "yes",
        "'x'",
        "9999999",
        "",
    ),
    *("top.count", "2x4", "3/4 plywood", "2 layers", "3 wide", "all", "mitre 45 deg", "any", "groove"),
)


@given(record=st.dictionaries(st.sampled_from(KEYS), st.sampled_from(VALUES), max_size=6))
def test_a_part_with_any_fields(record, folder, small_shop):
    """A part of any fields, each holding anything that some field may hold, is fitted or told of."""
    lines = "".join(f"    {key}: {value}\n" for key, value in record.items())
    read_any(GOOD.replace("  top:", f"  odd:\n    note: odd\n{lines}  top:").encode(), folder, small_shop)


FRONT = GOOD.split("---\n")[1]
SPOILED = st.builds(
    lambda at, gone, words: FRONT[:at] + "".join(words) + FRONT[at + gone :],
    st.integers(0, len(FRONT)),
    st.integers(0, 12),
    st.lists(WORDS | st.text(max_size=3), max_size=3),
)


@given(text=SPOILED | st.lists(WORDS | st.text(max_size=5), max_size=30).map("".join))
def test_the_quick_yaml_reader_says_the_same_as_the_slow_one(text):
    """What is read, and where it stands, does not depend on how PyYAML was built."""
    text = make_document("plan.md", text.encode("utf-8", "replace").decode()).text
    found: list[Found] = []
    text = read_document("plan.md", text.encode(), found).text
    told = []
    for quick in (yaml.CSafeLoader, yaml.SafeLoader):
        spans, faults = Spans(), []
        with patch.object(yaml_data, "_QUICK", quick):
            told.append((yaml_data.read_yaml(text, 0, len(text), spans, faults), faults, spans.by_path))

    assert told[0] == told[1]


@given(words=st.lists(WORDS | st.text(max_size=5), max_size=40))
def test_any_shop_file(words, folder):
    """Pieces of shop files in any order give a shop or diagnostics."""
    path = folder / "shop.yml"
    path.write_bytes(f"kerf: 1/8 in\nlumber:\n  2x4: {''.join(words)}".encode("utf-8", "replace"))
    found = load_shop(path, root=folder)

    assert (found.shop is None) == any(one.is_fault for one in found.diagnostics)


@pytest.mark.parametrize("case", cases("faults/plan.md"), ids=lambda case: case.name)
def test_what_is_said_never_depends_on_the_run(case, folder, small_shop):
    """The same file gives the same diagnostics, in the same order, each once."""
    first = read_any(case.given.encode(), folder, small_shop).diagnostics
    again = read_any(case.given.encode(), folder, small_shop).diagnostics

    assert first == again
    assert len(set(first)) == len(first)
