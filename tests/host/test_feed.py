"""The feed of plans and posts."""

from __future__ import annotations

import re
import time
from datetime import datetime
from html import unescape
from xml.etree import ElementTree as ET

import feedparser
import pytest

from tests.host.test_build import build
from tests.support.blog import URL, read, write_blog

ATOM = "{http://www.w3.org/2005/Atom}"


@pytest.fixture(scope="module")
def feed(published) -> ET.Element:
    """Return the feed."""
    return ET.parse(published / "feed.xml").getroot()


def test_the_feed_is_read_by_a_feed_reader(published):
    """Plans and posts are there, the newest first, each with an address at which there is a page."""
    found = feedparser.parse((published / "feed.xml").read_bytes())

    assert found.bozo == 0
    assert found.version == "atom10"
    assert [one.title for one in found.entries] == ["Older", "A stool for the quay", "Quay stool"]
    for entry in found.entries:
        assert (published / entry.link.removeprefix(URL) / "index.html").is_file()
    assert found.entries[0].updated == "2026-11-11T08:30:00Z"
    assert time.strftime("%Y-%m-%d", found.entries[0].published_parsed) == "2025-01-02"
    assert found.entries[1].summary == 'A stool, & why "it" <stands>.'
    assert [word.term for word in found.entries[2].tags] == ["stool", "quick", "outdoors"]
    assert (found.feed.title, found.feed.rights) == ("Test yard", "Plans & words: free")


def test_the_feed_has_what_the_standard_asks(feed):
    """RFC 4287, 4.1.1 and 4.1.2: what must be there once is there once, every moment is one of RFC 3339."""
    assert feed.tag == ATOM + "feed"
    for element in (feed, *feed.iter(ATOM + "entry")):
        for name in ("id", "title", "updated"):
            assert len(element.findall(ATOM + name)) == 1, name
        for name in ("published", "summary", "content", "rights", "subtitle"):
            assert len(element.findall(ATOM + name)) <= 1, name
        alternate = [one for one in element.findall(ATOM + "link") if one.get("rel") == "alternate"]
        assert len(alternate) == 1
    assert [one.get("href") for one in feed.findall(ATOM + "link") if one.get("rel") == "self"] == [
        URL + "feed.xml"
    ]
    assert feed.find(f"{ATOM}author/{ATOM}name").text == "Test yard"
    ids = [one.text for one in feed.iter(ATOM + "id")]
    assert len(set(ids)) == len(ids)
    assert all(one.startswith("https://") for one in ids)
    moments = [one.text for name in ("updated", "published") for one in feed.iter(ATOM + name)]
    assert all(datetime.fromisoformat(moment).tzinfo is not None for moment in moments)
    assert feed.find(ATOM + "updated").text == max(
        one.find(ATOM + "updated").text for one in feed.iter(ATOM + "entry")
    )


def test_a_renamed_plan_is_the_same_to_feed_readers(feed):
    """Its entry is known by its first address, so that nobody is shown it as new."""
    ids = {one.find(ATOM + "title").text: one.find(ATOM + "id").text for one in feed.iter(ATOM + "entry")}

    assert ids["Quay stool"] == URL + "plans/wet-stool/"


def test_what_a_feed_shows_has_whole_addresses_and_no_frames(feed):
    """A feed is read elsewhere, by programs that run nothing."""
    shown = [one.text for one in feed.iter(ATOM + "content")]
    inside = "".join(shown)

    assert len(shown) == 3
    assert not re.search(r"<(?:script|style|iframe|svg|form|h1)\b", inside)
    for address in re.findall(r'(?:href|src)="([^"]+)"', inside):
        assert unescape(address).startswith(URL), address
    assert f'<img alt="a rule" src="{URL}blog/rule.png"/>' in inside
    assert inside.count(f'<p><a href="{URL}plans/stool/">Quay stool</a></p>') == 1


def test_pages_say_where_the_feed_is(published):
    """A browser or a feed reader finds it from any page."""
    for path in ("index.html", "plans/stool/index.html", "blog/a-stool-for-the-quay/index.html"):
        href = re.search(
            r'<link rel="alternate" type="application/atom\+xml"[^>]* href="([^"]+)"', read(published, path)
        )[1]
        assert ((published / path).parent / href).resolve() == (published / "feed.xml").resolve()


def test_a_site_without_an_address_has_no_feed(tmp_path):
    """Entries are known by whole addresses; without them nothing points to a feed or a picture."""
    site = write_blog(tmp_path)
    text = (site / "mkdocs.yml").read_text("utf-8").replace("site_url: https://yard.example.org/\n", "")
    (site / "mkdocs.yml").write_text(text, "utf-8")
    (site / "docs" / "blog" / "index.md").write_text("# Blog\n", "utf-8")
    done = build(site)

    assert done.returncode == 0, done.stderr
    assert not (site / "site" / "feed.xml").exists()
    assert not (site / "site" / "robots.txt").exists()
    assert not re.search(r"atom\+xml|og:image|og:url", read(site / "site", "index.html"))


def test_a_site_that_wants_no_feed_has_none(plain):
    """With `feed: false` there is no file, and no page points to one."""
    assert not (plain / "feed.xml").exists()
    assert "atom+xml" not in read(plain, "index.html")
