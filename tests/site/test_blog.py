"""The blog of the demo site, its feed and its pictures of links, as they are published."""

from __future__ import annotations

import re
from html import unescape

import feedparser
import pytest
from PIL import Image

from tests.support.whole_page import violations

pytestmark = [
    pytest.mark.browser,
    pytest.mark.timeout(600),
]  # the first test builds the site, if none before has
POSTS = ("a-bench-for-the-ferry-steps", "three-plans-for-a-first-weekend", "when-the-yard-changes-its-prices")
URL = "https://plans.example.org/"


def test_posts_and_plans_are_in_the_feed(site):
    """Twelve plans and three posts, the newest first, each at an address at which there is a page."""
    feed = feedparser.parse((site / "feed.xml").read_bytes())
    links = [entry.link.removeprefix(URL) for entry in feed.entries]
    days = [entry.updated for entry in feed.entries]

    assert feed.bozo == 0
    assert {f"blog/{post}/" for post in POSTS} <= set(links)
    assert len([link for link in links if link.startswith("plans/")]) >= 12
    assert days == sorted(days, reverse=True)
    assert all((site / link / "index.html").is_file() for link in links)


def test_every_page_has_a_picture_for_links(site):
    """Each page of the sitemap names a picture of 1200 by 630 dots below 100 KB, and plans each their own."""
    listed = re.findall(r"<loc>([^<]+)</loc>", (site / "sitemap.xml").read_text("utf-8"))
    pictures = {}
    for address in listed:
        page = (site / address.removeprefix(URL) / "index.html").read_text("utf-8")
        (picture,) = re.findall(r'<meta property="og:image" content="([^"]+)">', page)
        pictures[address] = unescape(picture).removeprefix(URL)

    plans = [name for name in pictures.values() if name.endswith(("link-card.png", "link-card.jpg"))]
    assert len(set(plans)) == len(plans) >= 12
    for name in set(pictures.values()):
        with Image.open(site / name) as picture:
            assert picture.size == (1200, 630), name
        assert (site / name).stat().st_size < 100_000, name


def test_every_plan_and_post_is_in_the_sitemap_and_no_size(site):
    """It has the plans' own pages; sizes, frames and former addresses are found through them."""
    listed = re.findall(r"<loc>([^<]+)</loc>", (site / "sitemap.xml").read_text("utf-8"))
    plans = {path.parent.name for path in site.glob("plans/*/plan.json")}

    assert {one.removeprefix(URL) for one in listed if one.startswith(URL + "plans/")} == {
        "plans/",
        *(f"plans/{plan}/" for plan in plans),
    }
    assert {f"{URL}blog/{post}/" for post in POSTS} <= set(listed)


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_in_the_blog(browser, served, scheme):
    """The list of posts, and a post with a card and one with a frame, are open to everybody."""
    for path in ("blog/", f"blog/{POSTS[0]}/", f"blog/{POSTS[2]}/"):
        page = browser.new_page(viewport={"width": 390, "height": 844}, color_scheme=scheme)
        page.goto(served.url + path)
        found = violations(page)
        wide = page.evaluate("document.documentElement.scrollWidth - innerWidth")
        page.close()

        assert found == []
        assert wide <= 0, path


def test_a_frame_in_a_post_is_as_high_as_its_page(page, served):
    """The whole list is seen, and the post asks nothing of strangers."""
    asked = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(f"{served.url}blog/{POSTS[2]}/")
    frame = page.locator("iframe.sc-in-post")
    frame.scroll_into_view_if_needed()
    inner = page.frame_locator("iframe.sc-in-post")
    inner.locator("tfoot").wait_for()
    page.wait_for_function("document.querySelector('iframe.sc-in-post').height !== '600'")
    height = page.frames[1].evaluate("document.body.offsetHeight")

    assert "Lantern Court bookcase" in inner.locator("h1").inner_text()
    assert abs(frame.bounding_box()["height"] - height) <= 1
    assert [url for url in asked if not url.startswith((served.url, "blob:", "data:"))] == []


def test_a_former_address_leads_to_the_plan(page, served):
    """The workbench was called otherwise once, and is found with the size that a reader chose."""
    page.goto(f"{served.url}plans/drydock-bench/?width=60in")
    page.wait_for_url(f"{served.url}plans/sheet-workbench/?width=60in**")

    assert "Drydock workbench" in page.inner_text("h1")
