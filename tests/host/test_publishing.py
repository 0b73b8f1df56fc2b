"""What others read of a published site: posts, the feed, the sitemap, and the pictures of links."""

from __future__ import annotations

import io
import re
import time
from datetime import datetime
from html import unescape
from pathlib import Path
from urllib.parse import unquote
from xml.etree import ElementTree as ET

import feedparser
import pytest
from mkdocs.config.defaults import MkDocsConfig
from PIL import Image

from scantling.host.publishing import Publishing
from tests.host.test_build import build, digests
from tests.support.catalogs import BENCH, LEAN, hostile_plan, write_site

URL = "https://yard.example.org/"
ATOM = "{http://www.w3.org/2005/Atom}"
BLOG = """\
markdown_extensions: [attr_list]
copyright: "Plans &amp; words: <b>free</b>"
"""
POST = """\
---
date: 2026-11-10
categories: [Plans]
description: A stool, & why "it" <stands>.
---

# A stool for the *quay*

The first words.

<!-- more -->

[Quay stool](../../plans/stool/index.md){ .plan-card }

[Quay stool](../../plans/stool/index.md){ .plan-materials }

See [the plan](../../plans/stool/index.md) and ![a rule](rule.png).
"""
MOVED = BENCH.replace("room: entry", "room: entry\nformerly: [wet-stool]")


def write_blog(folder: Path, *, options: str = LEAN, settings: str = BLOG, post: str = POST) -> Path:
    """Write a small site with a blog of two posts below a folder."""
    site = write_site(folder, stool=MOVED, evil=hostile_plan(), settings=settings, options=options)
    written = (site / "mkdocs.yml").read_text("utf-8")
    blog = '{blog: {post_url_format: "{slug}", archive: false}}'
    (site / "mkdocs.yml").write_text(
        written.replace("plugins: [search,", f"plugins: [search, {blog},"), "utf-8"
    )
    posts = site / "docs" / "blog" / "posts"
    posts.mkdir(parents=True)
    (site / "docs" / "blog" / "index.md").write_text("# Blog\n\n[Feed](../feed.xml)\n", "utf-8")
    (posts / "stool.md").write_text(post, "utf-8")
    dates = "{created: 2025-01-02, updated: 2026-11-11T10:30:00+02:00}"
    (posts / "older.md").write_text(f"---\ndate: {dates}\n---\n\n# Older\n\nWords.\n", "utf-8")
    Image.new("RGB", (4, 4)).save(posts / "rule.png")
    return site


@pytest.fixture(scope="module")
def published(tmp_path_factory) -> Path:
    """Return a small site with two plans and two posts, built strictly."""
    site = write_blog(tmp_path_factory.mktemp("published"))
    done = build(site)
    assert done.returncode == 0, done.stdout + done.stderr
    return site / "site"


def read(published: Path, path: str) -> str:
    """Return a page of the site."""
    return (published / path).read_text("utf-8")


# ---- posts ----


def test_a_post_shows_the_card_of_a_plan(published):
    """It is the catalog's card, and its link and its picture lead where they should from the post."""
    page = read(published, "blog/a-stool-for-the-quay/index.html")
    card = re.search(r'<section class="sc-card sc-in-post".*?</section>', page, re.DOTALL)[0]
    (link,), (picture,) = re.findall(r'<a href="([^"]+)"', card), re.findall(r'<img [^>]*src="([^"]+)"', card)
    cards = read(published, "plans/index.html").split('class="sc-card"')[1:]
    ours = next(one for one in cards if "Quay stool" in one)

    assert re.search(r'<b class="sc-cost">[^<]+</b>', ours)[0] in card
    assert ((published / "blog/a-stool-for-the-quay" / link).resolve() / "index.html").is_file()
    drawing = " ".join((published / "plans/stool/card.svg").read_text("utf-8").split())
    assert unquote(picture) == f"data:image/svg+xml,{drawing}", "the first picture of a page stands in it"


def test_a_post_shows_what_to_buy_for_a_plan(published):
    """It is a frame, allowed scripts and new windows alone, around the plan's page for posts."""
    page = read(published, "blog/a-stool-for-the-quay/index.html")
    (frame,) = re.findall(r"<iframe[^>]*>", page)
    source = re.search(r'src="([^"]+)"', frame)[1]

    assert ((published / "blog/a-stool-for-the-quay" / source).resolve() / "index.html").is_file()
    assert 'sandbox="allow-scripts allow-popups allow-popups-to-escape-sandbox"' in frame
    assert f'iframe[src="{source}"]' in page


def test_the_beginning_of_a_post_stands_in_the_blog(published):
    """The list of posts has the words above the mark, and nothing of those below it."""
    page = read(published, "blog/index.html")

    assert "The first words." in page
    assert "sc-in-post" not in page
    assert "iframe" not in page


@pytest.fixture(scope="module")
def plain(tmp_path_factory) -> Path:
    """Return the site with what can be left out left out, and a post that is shown whole in the list."""
    options = f"{LEAN}, feed: false, link_cards: false, style: false"
    post = POST.replace("<!-- more -->", "").replace("categories:", "image: blog/rule.png\ncategories:")
    site = write_blog(tmp_path_factory.mktemp("plain"), options=options, post=post)
    (site / "docs" / "blog" / "index.md").write_text("# Blog\n", "utf-8")
    done = build(site)
    assert done.returncode == 0, done.stdout + done.stderr
    return site / "site"


def test_a_card_in_the_list_of_posts_is_a_link(plain):
    """Where a post is shown whole, the list has a link in the place of the card; it leads to the plan."""
    assert re.search(
        r'<p><a class="plan-card" href="\.\./plans/stool/">Quay stool</a></p>', read(plain, "blog/index.html")
    )


def test_pages_are_set_without_the_look(plain):
    """With `style: false` the theme's own look is left alone, and plans are there all the same."""
    page = read(plain, "plans/stool/index.html")

    assert "notebook.css" not in page
    assert meta(page)["og:title"] == "Quay stool"


def test_a_broken_link_and_a_card_of_no_plan_are_told(tmp_path):
    """A strict build stops, and says which page asks for what."""
    post = POST.replace("stool/index.md){ .plan-card", "index.md){ .plan-card").replace(
        "[the plan](../../plans/stool/", "[the plan](../../plans/stol/"
    )
    done = build(write_blog(tmp_path, post=post))

    assert done.returncode == 1
    assert "blog/posts/stool.md: '{ .plan-card }' stands at a link to no plan: ../../plans/" in done.stderr
    assert "blog/posts/stool.md' contains a link '../../plans/stol/index.md'" in done.stderr


def test_two_builds_are_the_same_bytes(published, tmp_path):
    """In another folder and under another hash seed the blog, the feed and the pictures come out the same."""
    site = write_blog(tmp_path)
    assert build(site, PYTHONHASHSEED="7").returncode == 0

    assert digests(site / "site") == digests(published)


# ---- links in plans ----

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


# ---- the feed ----


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


# ---- the sitemap ----


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


# ---- pictures of links ----


def meta(page: str) -> dict[str, str]:
    """Return what a page's head tells of it, by property."""
    pairs = re.findall(r'<meta (?:property|name)="((?:og|twitter):[^"]+)" content="([^"]*)"', page)
    assert len(dict(pairs)) == len(pairs)
    return {name: unescape(content) for name, content in pairs}


@pytest.mark.parametrize(
    ("path", "title"),
    [
        ("index.html", "Home"),
        ("plans/stool/index.html", "Quay stool"),
        ("plans/evil/index.html", None),
        ("blog/a-stool-for-the-quay/index.html", "A stool for the quay"),
        ("calculators/glue/index.html", None),
    ],
)
def test_a_link_to_a_page_has_a_picture(published, path, title):
    """Its title, words and a picture of 1200 by 630 dots below 100 KB, which is on the site."""
    told = meta(read(published, path))
    file = published / told["og:image"].removeprefix(URL)

    assert title is None or told["og:title"] in {title, "Test yard"}
    assert told["og:url"] == URL + path.removesuffix("index.html")
    assert told["twitter:card"] == "summary_large_image"
    with Image.open(io.BytesIO(file.read_bytes())) as picture:
        assert (picture.size, picture.format) == ((1200, 630), "PNG")
    assert 4_000 < file.stat().st_size < 100_000


def test_an_offered_size_shows_the_plan(published):
    """A link to one size has the plan's picture, and counts as the plan."""
    told = meta(read(published, "plans/stool/width-30in/index.html"))

    assert told["og:url"] == URL + "plans/stool/"
    assert told["og:image"] == URL + "plans/stool/link-card.png"


def test_without_pictures_of_links_nothing_names_one(plain):
    """With `link_cards: false` a page tells its title and its words alone."""
    told = meta(read(plain, "plans/stool/index.html"))

    assert "og:image" not in told
    assert told["twitter:card"] == "summary"
    assert not list(plain.rglob("link-card.*"))


def test_an_author_can_choose_the_picture(plain):
    """What a post names as its `image` is shown."""
    told = meta(read(plain, "blog/a-stool-for-the-quay/index.html"))

    assert told["og:image"] == URL + "blog/rule.png"
    assert "og:image:width" not in told


# ---- what an author may switch on ----


def test_a_counter_and_comments_are_there_only_where_the_author_puts_them(tmp_path, published):
    """By default no page has either; the theme's own settings and templates put them in, into plans too."""
    site = write_blog(tmp_path)
    for name, words in (
        ("comments", "{% if page.meta.comments %}COMMENTS{% endif %}"),
        ("integrations/analytics/custom", "COUNTER"),
    ):
        path = site / "overrides" / "partials" / f"{name}.html"
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(words, "utf-8")
    text = (site / "mkdocs.yml").read_text("utf-8")
    (site / "mkdocs.yml").write_text(
        text.replace("{name: material}", "{name: material, custom_dir: overrides}")
        + "extra: {analytics: {provider: custom}}\n",
        "utf-8",
    )
    post = site / "docs" / "blog" / "posts" / "older.md"
    post.write_text(post.read_text("utf-8").replace("---\ndate", "---\ncomments: true\ndate"), "utf-8")
    done = build(site)

    assert done.returncode == 0, done.stderr
    assert "COUNTER" in read(site / "site", "plans/stool/index.html")
    assert "COMMENTS" in read(site / "site", "blog/older/index.html")
    assert "COMMENTS" not in read(site / "site", "plans/stool/index.html")
    for page in published.rglob("*.html"):
        assert not re.search("COUNTER|COMMENTS|analytics|gtag", page.read_text("utf-8")), page
