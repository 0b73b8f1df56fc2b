"""Pictures of links, and what a page's head tells of it."""

from __future__ import annotations

import io

import pytest
from PIL import Image

from tests.support.blog import URL, meta, read


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


def test_each_calculator_has_a_picture_of_its_own(published):
    """A link to a calculator shows its name and its drawing, and no other page's picture."""
    pages = [path.parent.name for path in (published / "calculators").glob("*/index.html")]
    images = {meta(read(published, f"calculators/{slug}/index.html"))["og:image"] for slug in pages}

    assert len(images) == len(pages) > 20
    assert meta(read(published, "calculators/glue/index.html"))["og:image:alt"] == "Glue for joints"
    shared = meta(read(published, "index.html"))["og:image"]
    assert shared not in images
