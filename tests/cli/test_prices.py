"""`scantling prices` tells what a price change did, and takes over a store's list whole or not at all."""

from __future__ import annotations

import json
import subprocess

import pytest

from scantling.cli import main

SHOP = """currency: $
prices of: 2026-09-01
kerf: 1/8 in
lumber:
  2x4: {lengths: {8 ft: 4.28, 10 ft: 5.98}}
price lists:
  yard: {item: Article, price: Price, articles: {stud 8: "2x4, 8 ft", stud 10: "2x4, 10 ft"}}
"""
PLAN = """---
title: Sawhorse
parts:
  beam: {count: 2, from: 2x4, length: 40 in}
---
## Cut it
uses: beam

Cut two beams.
"""


@pytest.fixture
def plans(tmp_path):
    """Return a catalog of one plan."""
    (tmp_path / "sawhorse").mkdir()
    (tmp_path / "sawhorse" / "plan.md").write_text(PLAN)
    (tmp_path / "shop.yml").write_text(SHOP)
    return tmp_path


def prices(plans, *words: str) -> int:
    """Run the command on a catalog."""
    return main(["prices", "--plans", str(plans), *words])


def test_without_a_record_it_says_how_to_make_one(plans, capsys):
    """The first run has nothing to compare with."""
    assert prices(plans) == 0
    assert "--keep" in capsys.readouterr().out


def test_a_change_since_the_last_record(plans, capsys):
    """One dearer board makes its plan dearer by the same."""
    prices(plans, "--keep")
    (plans / "shop.yml").write_text(SHOP.replace("4.28", "4.78"))
    capsys.readouterr()

    assert prices(plans, "--json") == 0

    told = json.loads(capsys.readouterr().out)
    assert told["prices"] == [{"name": "2x4 | 8 ft", "before": 428, "after": 478, "slip": ""}]
    assert [(plan["plan"], plan["before"], plan["after"]) for plan in told["plans"]] == [
        ("sawhorse", 428, 478)
    ]


def test_an_import_changes_prices_and_day(plans, capsys):
    """Listed prices are in the shop file afterwards, and the report compares with before."""
    (plans / "yard.csv").write_text("Article,Price\nstud 8,5.00\nstud 10,6.00\n")

    assert prices(plans, "--import", str(plans / "yard.csv"), "--day", "2026-10-05") == 0

    text = (plans / "shop.yml").read_text()
    assert text == SHOP.replace("4.28", "5.00").replace("5.98", "6.00").replace("2026-09-01", "2026-10-05")
    assert "sawhorse: $4.28 before, $5.00 now" in capsys.readouterr().out


def test_a_faulty_list_changes_nothing(plans, capsys):
    """With one bad price nothing at all is written."""
    (plans / "yard.csv").write_text("Article,Price\nstud 8,5.00\nstud 10,-6.00\n")

    assert prices(plans, "--import", str(plans / "yard.csv")) == 1

    assert (plans / "shop.yml").read_text() == SHOP
    assert "nothing was changed" in capsys.readouterr().err
    assert sorted(path.name for path in plans.iterdir()) == ["sawhorse", "shop.yml", "yard.csv"]


def test_since_an_older_shop_file(plans, capsys, tmp_path):
    """An older shop file beside serves as before."""
    old = tmp_path / "old.yml"
    old.write_text(SHOP.replace("4.28", "3.28"))

    assert prices(plans, "--since", str(old)) == 0
    assert "2x4, 8 ft: $3.28" in capsys.readouterr().out


def test_since_a_day_by_git(plans, capsys):
    """The shop file of a day comes from the catalog's history."""

    def git(*words: str, day: str = "2026-09-02T12:00:00") -> None:
        who = ["-c", "user.name=Workshop", "-c", "user.email=workshop@example.org"]
        subprocess.run(
            ["git", *who, *words],
            cwd=plans,
            check=True,
            capture_output=True,
            env={"GIT_COMMITTER_DATE": day, "GIT_AUTHOR_DATE": day, "PATH": "/usr/bin:/bin:/usr/local/bin"},
        )

    git("init", "--quiet")
    git("add", ".")
    git("commit", "--quiet", "-m", "Prices of September")
    (plans / "shop.yml").write_text(SHOP.replace("4.28", "4.78"))
    git("commit", "--quiet", "-am", "Prices of October", day="2026-10-02T12:00:00")

    assert prices(plans, "--since", "2026-09-10") == 0
    assert "$4.28" in capsys.readouterr().out
    assert prices(plans, "--since", "2025-01-01") == 2


def test_a_misused_command_says_how(plans, capsys):
    """A file that is not there, a list that is not known."""
    assert prices(plans, "--since", "nowhere.yml") == 2
    (plans / "yard.csv").write_text("Article,Price\n")
    assert prices(plans, "--import", str(plans / "yard.csv"), "--list", "yrad") == 2
    assert "did you mean 'yard'?" in capsys.readouterr().err
