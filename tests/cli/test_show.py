"""`scantling show`."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from scantling.measure import Display
from scantling.plan import offered_choices
from scantling.report import plan_data, report_on
from scantling.source import read_catalog


def test_json_is_the_reports_data(run, catalog):
    """`--json` prints exactly what plan.json holds."""
    _, out, _ = run("show", "first-crate", "--json")
    fitter = read_catalog(Path("plans")).plans[0].fitter

    assert json.loads(out) == json.loads(json.dumps(plan_data(report_on(fitter), Display("in"))))


def test_a_size_may_be_chosen(run, catalog):
    """`--size` fits the plan anew; the same numbers as on the page of that size."""
    _, out, _ = run("show", "first-crate", "--size", "width=24in", "--json")
    fitter = read_catalog(Path("plans")).plans[0].fitter
    offered = next(one for one in offered_choices(fitter.plan) if one.slug == "width-24in")

    assert json.loads(out)["sizes"]["width"]["in"] == "24"
    assert json.loads(out) == json.loads(
        json.dumps(plan_data(report_on(fitter, offered.choice), Display("in")))
    )


def test_the_sheet_has_everything_in_columns(run, catalog):
    """Materials, cut list, cutting plan and sums stand in aligned columns."""
    status, out, _ = run("show", "first-crate")
    lines = out.splitlines()
    materials = lines[lines.index("MATERIALS") :]

    assert status == 0
    assert lines[:3] == ["First crate", "===========", "width 18 in, depth 12 in"]
    assert materials[1].split() == ["qty", "what", "sold", "as", "each", "cost"]
    assert len({line.rindex("$") for line in materials[3:5] if "$" in line}) == 1
    for part in ("side", "end", "slat"):
        assert any(part in line for line in lines[lines.index("CUT LIST") :])
    assert "CUTTING PLAN" in lines
    assert any(line.startswith("cost ") and "$" in line for line in lines[lines.index("SUMS") :])


def test_millimetres(run, catalog):
    """`--units mm` writes every length in millimetres."""
    _, out, _ = run("show", "first-crate", "--units", "mm")

    assert "457 mm" in out
    assert " in " not in out.split("SUMS")[0].split("CUT LIST")[1]


@pytest.mark.parametrize(
    ("words", "status", "told"),
    [
        (("--size", "width=99in"), 1, "99 in is outside"),
        (("--size", "width=24"), 1, "width is a length, not a number"),
        (("--size", "widht=24in"), 2, "did you mean 'width'?"),
        (("--size", "width"), 2, "write --size width=..."),
        (("--size", "width=2 2"), 2, "--size width=2 2: "),
        (("--size", "width=depth"), 2, "there is no size called 'depth'"),
        (("--option", "trim=bought"), 2, "the plan has no option 'trim'"),
    ],
)
def test_a_choice_that_cannot_be_made_is_told(run, catalog, words, status, told):
    """Each with what may be chosen instead."""
    found, out, err = run("show", "first-crate", *words)

    assert (found, out) == (status, "")
    assert told in err


def test_a_faulty_plan_shows_its_faults(run, catalog):
    """There is nothing to show before they are mended."""
    plan = catalog / "plans" / "first-crate" / "plan.md"
    plan.write_text(plan.read_text("utf-8").replace("length: inside", "length: insid"), "utf-8")
    status, out, err = run("show", "first-crate")

    assert (status, out) == (1, "")
    assert "did you mean 'inside'?" in err
    assert "^^^^^" in err


def test_options_may_be_chosen(run, catalog):
    """A chosen option switches parts, and is shown."""
    plan = catalog / "plans" / "first-crate" / "plan.md"
    text = plan.read_text("utf-8").replace(
        "\nparts:\n",
        '\noptions:\n  lid: {question: "A lid?", choices: {"none": open, flat: one board}, usual: none}\n'
        "parts:\n  lid board: {from: 1x4, length: width, only if: lid is flat}\n",
    )
    plan.write_text(text, "utf-8")

    assert "lid board" not in run("show", "first-crate")[1]
    assert "lid: flat" in run("show", "first-crate", "--option", "lid=flat")[1]
    assert "lid board" in run("show", "first-crate", "--option", "lid=flat")[1]
    assert "'flt' is no choice of 'lid'" in run("show", "first-crate", "--option", "lid=flt")[2]
