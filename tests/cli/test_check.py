"""`scantling check`."""

from __future__ import annotations

import json

import pytest


@pytest.fixture
def faulty(catalog):
    """Return a catalog whose plan has two faults, in a folder where commands run."""
    plan = catalog / "plans" / "first-crate" / "plan.md"
    text = plan.read_text("utf-8").replace("skill: first project", "skil: first project")
    plan.write_text(text.replace("uses: slat", "uses: slats"), "utf-8")
    return catalog


def test_a_fresh_catalog_has_no_fault(run, catalog):
    """What `new` makes is right, at every size."""
    assert run("check", "--sweep", "--strict") == (0, "", "1 plan and the shop file: nothing is wrong\n")


def test_every_fault_is_shown_with_its_line_and_a_caret(run, faulty):
    """Both faults are told in one run, the status is 1, and the count stands beside the output."""
    status, out, err = run("check")

    assert status == 1
    assert "plans/first-crate/plan.md:5:1: fault: a plan has no 'skil' [unknown-key]\n" in out
    assert "  5 | skil: first project\n    | ^^^^\n  help: did you mean 'skill'?\n" in out
    assert "there is no part 'slats' [unknown-part]" in out
    assert "(plans/first-crate/plan.md:" in out
    assert err == "1 plan and the shop file: 2 faults\n"


def test_concise_is_a_line_each(run, faulty):
    """`--format concise` is for editors."""
    status, out, _ = run("check", "--format", "concise")

    assert status == 1
    assert out.splitlines()[0] == "plans/first-crate/plan.md:5:1: unknown-key a plan has no 'skil'"
    assert len(out.splitlines()) == 2


def test_github_is_an_annotation_each(run, faulty):
    """`--format github` puts each fault beside its line."""
    _, out, _ = run("check", "--format", "github")

    assert out.startswith(
        "::error file=plans/first-crate/plan.md,line=5,col=1,title=unknown-key,endColumn=5::"
    )


def test_json_is_whole(run, faulty):
    """`--json` prints nothing but JSON, and the status is the same."""
    status, out, err = run("check", "--json")
    findings = json.loads(out)["findings"]

    assert (status, err) == (1, "")
    assert [one["code"] for one in findings] == ["unknown-key", "unknown-part"]
    assert findings[0]["excerpt"] == "skil: first project"


def test_one_plan_may_be_named(run, faulty):
    """By its name, its folder or its file; the others are left alone."""
    assert run("new", "Second box")[0] == 0
    assert run("check", "second-box")[0] == 0
    assert run("check", "plans/second-box")[0] == 0
    assert run("check", "plans/first-crate/plan.md")[0] == 1
    assert (
        run("check", "plans/first-crate/plan.md", "second-box")[2] == "2 plans and the shop file: 2 faults\n"
    )


def test_a_plan_that_is_not_there_is_guessed(run, catalog):
    """A mistyped name is misuse, with the name that was meant."""
    status, _, err = run("check", "first-crat")

    assert status == 2
    assert "did you mean 'first-crate'?" in err


def test_without_a_catalog_one_is_told_how_to_begin(run):
    """In an empty folder nothing is checked."""
    status, _, err = run("check")

    assert status == 2
    assert "scantling new --catalog NAME" in err


def test_a_catalog_elsewhere_may_be_named(run, catalog, tmp_path, monkeypatch):
    """`--plans` names the folder, from wherever one is."""
    monkeypatch.chdir(tmp_path)

    assert run("check", "--plans", "shed/plans")[0] == 0
    assert run("check", "--plans", "nowhere")[0] == 2


def test_a_faulty_shop_file_fails_the_check(run, catalog):
    """Its faults are told with those of the plans."""
    shop = catalog / "plans" / "shop.yml"
    shop.write_text(shop.read_text("utf-8").replace("kerf: 1/8 in", "kerf: 1/8"), "utf-8")
    status, out, _ = run("check", "--format", "concise")

    assert status == 1
    assert out == "plans/shop.yml:4:7: missing-unit 1/8 has no unit\n"


def test_parts_that_cannot_be_cut_fail_the_check(run, catalog):
    """An offcut too small for its part is told by the check, not only when the site is built."""
    plan = catalog / "plans" / "first-crate" / "plan.md"
    strip = "  post: {from: 2x4, glued up: 2 layers, width: 3 in, thick: 2 3/4 in, length: 10 in}\n"
    strip += "  strip: {count: 9, from offcut of: post, width: 3 in, thick: 1/8 in, length: 10 in}\n"
    text = plan.read_text("utf-8").replace("\njoins:\n", f"{strip}\njoins:\n")
    plan.write_text(text.replace("uses: slat\n", "uses: slat, post, strip\n"), "utf-8")
    status, out, _ = run("check", "--format", "concise")

    assert status == 1
    assert "offcut-too-small 7 of 9 'strip' do not fit the offcuts of 'post'" in out
    assert out.count("offcut-too-small") == 1
