"""Posts beside plans: cards and lists in them, and what is told where they ask for no plan."""

from __future__ import annotations

import re
from urllib.parse import unquote

from tests.host.test_build import build, digests
from tests.support.blog import POST, meta, read, write_blog


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
