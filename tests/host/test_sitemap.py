"""The sitemap, and what robots are told."""

from __future__ import annotations

import re
from xml.etree import ElementTree as ET

from mkdocs.config.defaults import MkDocsConfig

from scantling.host.publishing import Publishing
from tests.support.blog import URL, read


def test_the_sitemap_holds_every_page_that_counts_for_itself(published):
    """It is all canonical addresses, each once: no offered size, no page for frames, no former address."""
    listed = re.findall(r"<loc>([^<]+)</loc>", read(published, "sitemap.xml"))
    pages = [path for path in published.rglob("index.html") if "wet-stool" not in path.parts]
    canonical = [
        re.findall(r'<link rel="canonical" href="([^"]*)"', path.read_text("utf-8")) for path in pages
    ]

    assert len(set(listed)) == len(listed)
    for path in ("", "plans/", "plans/stool/", "plans/evil/", "blog/a-stool-for-the-quay/"):
        assert URL + path in listed
    assert not [one for one in listed if re.search("width-30in|embed|wet-stool", one)]
    assert all(len(found) == 1 for found in canonical)
    assert {found[0] for found in canonical} == set(listed)


def test_the_sitemap_is_read_as_the_protocol_has_it(published):
    """https://www.sitemaps.org/protocol.html: a `urlset` of `url`s, each with a `loc` on this site."""
    root = ET.fromstring(read(published, "sitemap.xml"))
    name = "{http://www.sitemaps.org/schemas/sitemap/0.9}"

    assert root.tag == name + "urlset"
    assert [one.tag for one in root] == [name + "url"] * len(root)
    assert all(one.find(name + "loc").text.startswith(URL) for one in root)


def test_robots_are_told_of_the_sitemap(published):
    """At the root of a host `robots.txt` (RFC 9309) lets all in; below a folder there is none."""
    below = MkDocsConfig()
    below.load_dict({"site_name": "Yard", "site_url": URL + "plans/"})
    below.validate()

    assert read(published, "robots.txt") == f"User-agent: *\nAllow: /\n\nSitemap: {URL}sitemap.xml\n"
    assert Publishing(print).files(below) == []
