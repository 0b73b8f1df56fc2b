"""Links in the words of a plan: the same from all its pages, and told where they lead nowhere."""

from __future__ import annotations

import re

from tests.host.test_build import build
from tests.support.blog import read
from tests.support.catalogs import BENCH, write_site

LINKED = BENCH.replace("A stool of *two", "Like [the other](../other/), [all](../): *two").replace(
    "summary: A stool", "summary: As [the other](../other/#top), a stool"
)
OTHER = BENCH.replace("Quay stool", "Other stool")


def test_a_link_of_a_plan_leads_to_the_same_from_all_its_pages(tmp_path):
    """From an offered size and from the catalog's card it leads where it leads from the plan's page."""
    site = write_site(tmp_path, stool=LINKED, other=OTHER)
    done = build(site)
    assert done.returncode == 0, done.stderr
    for path in ("plans/stool/index.html", "plans/stool/width-30in/index.html", "plans/index.html"):
        (address, *_) = re.findall(r'<a href="([^"#]*)(?:#top)?">the other</a>', read(site / "site", path))
        led = ((site / "site" / path).parent / address).resolve()

        assert led == (site / "site" / "plans" / "other").resolve(), path


def test_broken_links_of_a_plan_are_told_with_their_places(tmp_path):
    """A strict build stops, and shows the line and each link to no page."""
    broken = ("../othr/", "othr.html", "../other/width-31in/", "../../how-to/")
    links = " ".join(f"[x]({address})" for address in broken)
    plan = LINKED.replace("Like [the other](../other/)", f"Like {links}, [it](../other/width-30in/)")
    done = build(write_site(tmp_path, stool=plan, other=OTHER))

    assert done.returncode == 1
    for address in broken:
        assert f"the link '{address}' leads to no page or file" in done.stderr
    assert "plans/stool/plan.md:32:10: warning: the link '../othr/'" in done.stderr
    assert done.stderr.count("[broken-link]") == len(broken)
