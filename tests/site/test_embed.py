"""A plan in a post on another site, in a real browser."""

from __future__ import annotations

import re
from html import unescape
from html.parser import HTMLParser

import pytest

from scantling.pages import Choices, make_pages
from scantling.source import read_catalog
from tests.support.catalogs import BENCH, EVIL, hostile_plan, write_catalog
from tests.support.whole_page import violations

pytestmark = pytest.mark.browser
MOST = 60_000
"""Bytes that the page may weigh, its picture included."""


def publish(folder, choices: Choices, **plans: str) -> dict[str, str | bytes]:
    """Write what lies beside a catalog's pages into a folder, and return it with the pages' Markdown."""
    finished = make_pages(read_catalog(write_catalog(folder / "source", **plans)), choices)
    for file in finished.files:
        path = folder / "site" / file.path
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(file.content.encode() if isinstance(file.content, str) else file.content)
    return {
        **{file.path: file.content for file in finished.files},
        **{page.path: page.markdown for page in finished.pages},
    }


@pytest.fixture(scope="module")
def shown(tmp_path_factory, serve_folder):
    """Return where a site is served, what is on it, and the folder and address of another site."""
    folder = tmp_path_factory.mktemp("embed")
    (folder / "site").mkdir()
    served = serve_folder(folder / "site")
    made = publish(folder, Choices(site_url=served.url), stool=BENCH, evil=hostile_plan())
    (folder / "blog").mkdir()
    return served.url, made, folder / "blog", serve_folder(folder / "blog").url


def snippet(made) -> str:
    """Return what the plan page says to put into a post."""
    found = re.search(r"<textarea[^>]*>(.*?)</textarea>", made["plans/stool/index.md"], re.DOTALL)
    return unescape(found[1])


def post(folder, inner: str) -> None:
    """Write a post on the other site."""
    (folder / "post.html").write_text(
        '<!doctype html><html lang="en"><meta charset="utf-8"><title>Post</title>'
        f'<link rel="icon" href="data:,"><body style="margin:0">{inner}</body></html>',
        "utf-8",
    )


def settled(page) -> int:
    """Wait until the frame is as high as the page in it, its picture included, and return how high."""
    frame = page.frames[1]
    frame.wait_for_function("document.images[0].complete && document.images[0].naturalWidth > 0")
    frame.wait_for_function("wide => innerWidth === wide", arg=page.viewport_size["width"])
    for _ in range(100):
        height = frame.evaluate("document.body.offsetHeight")
        shown = page.evaluate("document.querySelector('iframe').clientHeight")
        if height == shown:
            break
        page.wait_for_timeout(100)
    assert height == shown
    return shown


def test_a_frame_is_as_high_as_its_page(page, shown):
    """In a sandbox on another origin the list is seen whole, and again when the post becomes narrow."""
    _, made, folder, blog = shown
    post(folder, snippet(made))
    page.goto(blog + "post.html")
    page.frame_locator("iframe").locator("h1").wait_for()
    wide = settled(page)
    frame = page.frames[1]

    assert "Quay stool" in frame.inner_text("h1")
    assert "wood screw 2\N{NO-BREAK SPACE}in, box of 50" in frame.inner_text("table")
    assert frame.evaluate("origin") == "null"

    page.set_viewport_size({"width": 260, "height": 700})

    assert settled(page) > wide
    assert frame.evaluate("document.body.scrollWidth <= innerWidth")


@pytest.mark.parametrize("width", [280, 360, 480, 800])
def test_a_wide_frame_has_the_list_beside_the_picture(browser, shown, width):
    """A narrow frame has it below; no page scrolls sideways, and none leaves room on one side alone."""
    page = browser.new_page(viewport={"width": width, "height": 900})
    page.goto(shown[0] + "plans/stool/embed/")
    figure, table, whole = (page.locator(name).bounding_box() for name in ("figure", "table", "main"))

    beside = table["x"] >= figure["x"] + figure["width"]
    assert beside == (width >= 700)
    assert beside or table["y"] >= figure["y"] + figure["height"]
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    assert abs(whole["x"] - (width - whole["x"] - whole["width"])) <= 1
    page.close()


def test_a_frame_that_is_allowed_nothing_shows_it_all_the_same(browser, shown):
    """With an empty sandbox, where no script runs, the picture and the list are there."""
    _, made, folder, blog = shown
    frame = re.sub(r'sandbox="[^"]*"', 'sandbox=""', snippet(made).partition("<script>")[0])
    post(folder, frame)
    page = browser.new_page()  # it will log that the script was kept from running
    with page.expect_response(lambda response: response.url.endswith(".svg")) as picture:
        page.goto(blog + "post.html")

    assert picture.value.ok
    assert "2x4, " in page.frame_locator("iframe").locator("table").inner_text()
    page.close()


def test_axe_finds_nothing_in_it(browser, shown):
    """The small page is as open to everybody as the others, by day and by night."""
    for scheme in ("light", "dark"):
        page = browser.new_page(viewport={"width": 390, "height": 844}, color_scheme=scheme)
        page.goto(shown[0] + "plans/stool/embed/")
        found = violations(page)
        page.close()

        assert found == []


def test_hostile_words_do_nothing_in_it(page, shown):
    """A plan whose every word tries to break out shows them as words, in the frame and as a fragment."""
    for file in ("index.html", "fragment.html"):
        page.goto(shown[0] + "plans/evil/embed/" + file)

        assert page.evaluate("window.hacked") is None
        assert EVIL.split("`")[0].split("{{")[0] in " ".join(page.inner_text("body").split())


class _Weighed(HTMLParser):
    """Collects the pictures of a page and whatever else it asks for."""

    def __init__(self) -> None:
        super().__init__()
        self.pictures: list[str] = []
        self.others: list[str] = []

    def handle_starttag(self, tag, attrs):
        told = dict(attrs)
        if tag == "img":
            self.pictures.append(told["src"])
        elif "src" in told or (tag == "link" and told.get("rel") == "stylesheet"):
            self.others.append(tag)


def weigh(page: str, beside) -> int:
    """Return what a page weighs with its one picture, of which `beside` gives the bytes by address."""
    found = _Weighed()
    found.feed(page)
    assert found.others == []
    assert len(found.pictures) <= 1
    return len(page.encode()) + sum(len(beside(address)) for address in found.pictures)


def test_it_is_light(shown):
    """The page with its picture weighs less than 60 KB, and asks for nothing else."""
    _, made, _, _ = shown
    page = made["plans/stool/embed/index.html"]

    weight = weigh(page, lambda address: made["plans/stool/" + address.removeprefix("../")].encode())

    assert 1_000 < weight < MOST


@pytest.mark.timeout(600)  # builds the site, if no test before has
def test_each_plan_of_the_demo_is_light(site):
    """So is that of every demo plan."""
    pages = sorted(site.glob("plans/*/embed/index.html"))

    assert len(pages) >= 12
    for page in pages:
        weight = weigh(page.read_text("utf-8"), lambda address, at=page: (at.parent / address).read_bytes())
        assert weight < MOST, page


def test_the_fragment_is_plain(shown):
    """What mail and feeds get has no style, script, picture or class, and whole addresses."""
    url, made, _, _ = shown
    words = made["plans/stool/embed/fragment.html"]

    assert set(re.findall(r"<(\w+)", words)) == {"h3", "a", "p", "ul", "li"}
    assert re.findall(r"<\w+ ([^>]*)>", words) == [f'href="{url}plans/stool/"']


def test_a_site_without_an_address_says_nothing_of_posts(tmp_path):
    """Without `site_url` there is no snippet, which would lead nowhere, and no fragment."""
    made = publish(tmp_path, Choices(), stool=BENCH)

    assert "Put this plan into a post" not in made["plans/stool/index.md"]
    assert "plans/stool/embed/fragment.html" not in made
    assert 'href="../"' in made["plans/stool/embed/index.html"]
