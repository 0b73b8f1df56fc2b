"""What search engines read of a built page, and plans like a plan at its foot."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest

from scantling.pages import Choices, make_pages, write_folder
from scantling.pages.related import MOST, related
from scantling.source import read_catalog
from tests.support.catalogs import BENCH, build_small_site, hostile_plan, write_catalog
from tests.support.many_plans import made_up

SCRIPT = re.compile(r'<script type="application/ld\+json">(.*?)</script>', re.DOTALL)


def built_with_plugin(folder: Path) -> Path:
    """Build a site with the plugin."""
    build_small_site(folder)
    return folder / "site"


def built_from_folder(folder: Path) -> Path:
    """Build the folder of finished pages as any site generator would."""
    home = write_catalog(folder, stool=BENCH, evil=hostile_plan())
    choices = Choices(site_url="https://yard.example.org/")
    write_folder(make_pages(read_catalog(home), choices), folder / "out")
    command = [sys.executable, "-m", "mkdocs", "build", "--strict"]
    told = {**os.environ, "NO_MKDOCS_2_WARNING": "1"}
    done = subprocess.run(command, cwd=folder / "out", env=told, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return folder / "out" / "site"


@pytest.fixture(scope="module", params=[built_with_plugin, built_from_folder])
def site(request, tmp_path_factory) -> Path:
    """Return a built site with a good and a hostile plan."""
    return request.param(tmp_path_factory.mktemp("site"))


def read(page: Path) -> dict:
    """Return the one piece of structured data on a page."""
    (found,) = SCRIPT.findall(page.read_text("utf-8"))
    assert not set("<>&") & set(found)
    return json.loads(found)


def test_a_plan_is_told_as_its_own_data_has_it(site):
    """Steps, tools, supplies and cost are those of `plan.json`; nothing is offered, no time made up."""
    plan = json.loads((site / "plans" / "stool" / "plan.json").read_text("utf-8"))
    told = read(site / "plans" / "stool" / "index.html")

    assert (told["@context"], told["@type"]) == ("https://schema.org", "HowTo")
    assert (told["name"], told["description"]) == (plan["title"], plan["summary"])
    assert [(step["position"], step["name"]) for step in told["step"]] == [
        (step["number"], step["title"]) for step in plan["steps"]
    ]
    assert [one["name"] for one in told["tool"]] == list(
        dict.fromkeys(["saw", "drill", *(tool for step in plan["steps"] for tool in step["tools"])])
    )
    assert [(one["name"].split(", ")[0], one["requiredQuantity"]) for one in told["supply"]] == [
        (line["item"], line["quantity"]) for line in plan["materials"]
    ]
    assert told["estimatedCost"] == plan["totals"]["cost"]["text"]
    assert told["url"] == "https://yard.example.org/plans/stool/"
    assert "totalTime" not in told
    assert "Offer" not in json.dumps(told)
    for step in told["step"]:
        page = (site / "plans" / "stool" / "index.html").read_text("utf-8")
        assert f'id="{step["url"].partition("#")[2]}"' in page
    assert (site / "plans" / "stool" / told["image"].rpartition("/")[2]).is_file()


def test_the_catalog_is_a_list_of_its_plans(site):
    """Each plan has its place, its title and an address at which there is a page."""
    told = read(site / "plans" / "index.html")

    assert (told["@type"], told["numberOfItems"]) == ("ItemList", 2)
    assert [one["position"] for one in told["itemListElement"]] == [1, 2]
    for one in told["itemListElement"]:
        path = one["url"].removeprefix("https://yard.example.org/")
        assert (site / path / "index.html").is_file()
    assert {one["name"] for one in told["itemListElement"]} >= {"Quay stool"}


def test_hostile_words_stay_inside(site):
    """A title that ends scripts is read back as it was typed, from a page with one piece of data."""
    told = read(site / "plans" / "evil" / "index.html")

    assert told["name"].startswith("Evil stool <script>")


def test_an_offered_size_leaves_it_to_the_plan(site):
    """Only the plan's own page is told of, since the others name it as the one that counts."""
    assert not SCRIPT.findall((site / "plans" / "stool" / "width-30in" / "index.html").read_text("utf-8"))


def test_plans_like_a_plan_stand_at_its_foot(tmp_path):
    """A page links to plans that share a tag or a room, from the offered sizes as well, never to itself."""
    plans = {
        "stool": BENCH,
        "twin": BENCH.replace("Quay stool", "Twin stool"),
        "other": BENCH.replace("tags: [stool, quick, outdoors]", "tags: [shelf]").replace(
            "room: entry", "room: office"
        ),
    }
    finished = make_pages(read_catalog(write_catalog(tmp_path, **plans)), Choices())
    words = {page.path: page.markdown for page in finished.pages}
    foot = words["plans/stool/index.md"].partition("## Plans like this one")[2]

    assert re.findall(r'href="([^"]*)"', foot) == ["../twin/"]
    assert 'href="../../twin/"' in words["plans/stool/width-30in/index.md"]
    assert "Plans like this one" not in words["plans/other/index.md"]


def test_likeness_is_counted_and_never_of_chance():
    """At most four, the most shared tags first, the same whatever the order in which plans are read."""
    found = [made_up(number) for number in range(90)]
    one = replace(found[0], tags=("a", "b"), room="loft", slug="one")
    near = replace(found[1], tags=("b", "a"), room="", slug="near")
    room = replace(found[2], tags=(), room="loft", slug="room", materials=one.materials)
    far = replace(found[3], tags=("c",), room="hall", slug="far")

    assert [other.slug for other in related([far, room, near, one])["one"]] == ["near", "room"]

    like = related(found)

    assert like == related(found[::-1])
    assert all(len(others) <= MOST for others in like.values())
    assert all(slug not in {other.slug for other in others} for slug, others in like.items())
