"""The picture that a link to a page shows elsewhere."""

from __future__ import annotations

import io

import pytest
from PIL import Image

from scantling.pages import Choices, LinkCard, draw_card, draw_card_with, make_pages
from scantling.source import read_catalog
from tests.support.catalogs import BENCH, write_catalog

CHOICES = Choices(site_url="https://yard.example.org/", site_name="Test yard", link_cards=True)


def card_of(folder, plan: str, pictures=()) -> tuple[str, bytes]:
    """Return the name and the bytes of the card of a plan that is called `stool`."""
    home = write_catalog(folder, stool=plan)
    for name, picture in pictures:
        picture.save(home / "stool" / name)
    made = make_pages(read_catalog(home), CHOICES)
    assert made.faults == ()
    (card,) = (file for file in made.files if "/link-card." in file.path)
    page = next(page for page in made.pages if page.path == "plans/stool/index.md")
    assert page.meta["image"] == card.path
    return card.path, card.content


def seen(content: bytes) -> Image.Image:
    """Return a card as its colours."""
    assert len(content) < 100_000
    picture = Image.open(io.BytesIO(content)).convert("RGB")
    assert picture.size == (1200, 630)
    return picture


def test_a_plan_has_a_card_with_its_drawing(tmp_path):
    """It is a PNG, with something drawn in its right half, and the same bytes each time."""
    path, content = card_of(tmp_path / "one", BENCH)
    place = seen(content).crop((670, 90, 1110, 540))

    assert path == "plans/stool/link-card.png"
    assert len(place.getcolors(1 << 20)) > 5
    assert card_of(tmp_path / "two", BENCH) == (path, content)


def test_a_photo_fills_its_place(tmp_path):
    """A plan with a photo shows it, as a JPEG, with nothing of what the camera wrote into it."""
    photo = Image.effect_noise((3000, 2000), 90).convert("RGB")
    photo.paste((10, 200, 30), (1000, 0, 2000, 2000))
    plan = BENCH.replace("room: entry", "room: entry\nphoto: {file: stool.jpg, alt: A stool}")
    path, content = card_of(tmp_path, plan, [("stool.jpg", photo)])
    red, green, blue = seen(content).getpixel((890, 315))

    assert path == "plans/stool/link-card.jpg"
    assert green > 150 > max(red, blue)
    assert not Image.open(io.BytesIO(content)).getexif()


@pytest.mark.parametrize(
    "title",
    [
        "",
        "A",
        "word " * 60,
        "W" * 300,
        "<script>alert(1)</script> & {{7*7}}",
        "Größe ½ – “so”",
        "木の椅子 Ω й",
    ],
)
def test_any_words_can_be_set(title):
    """However long or strange a title is, the card is drawn, and no word leaves it at the right."""
    content = draw_card(LinkCard(title, "Test yard", ("a fact", title)))
    edge = seen(content).crop((1150, 20, 1200, 600))

    assert len(edge.getcolors(1 << 16)) <= 3


def test_a_price_is_told_from_the_cheapest_size(tmp_path):
    """A dearer wood makes another card; a note that the card does not show makes none."""
    before = card_of(tmp_path / "one", BENCH)

    noted = BENCH.replace("note: two thin coats", "note: three thin coats")
    assert card_of(tmp_path / "three", noted) == before
    dearer = BENCH.replace("from: 1x6, length: width}", "from: 2x4, length: width}")
    assert card_of(tmp_path / "four", dearer) != before


def test_a_site_without_an_address_makes_none(tmp_path):
    """Nobody could find it."""
    made = make_pages(read_catalog(write_catalog(tmp_path, stool=BENCH)), Choices())

    assert not [file for file in made.files if "/link-card." in file.path]
    assert "image" not in made.pages[1].meta


def test_words_alone_fill_a_card():
    """A card without a picture has its title large and low, so that no half of it is empty."""
    card = seen(draw_card(LinkCard("A stool", "Test yard", ("For a quay.",)))).convert("L")
    inked = [y for y in range(600) if card.crop((56, y, 1144, y + 1)).getextrema()[0] < 120]

    assert min(inked) < 100
    assert max(inked) > 500
    assert sum(300 < y < 600 for y in inked) > 100


@pytest.mark.parametrize(("high", "is_wide"), [(100, True), (360, False)])
def test_a_drawing_stands_where_it_is_larger(high, is_wide):
    """A low one lies below short words over the whole card, a high one beside them."""
    box = f'viewBox="0 0 360 {high}"'
    svg = f'<svg xmlns="http://www.w3.org/2000/svg" {box}><rect width="360" height="{high}"/></svg>'
    card = seen(draw_card_with(LinkCard("Stool", "Test yard", ("How high?",)), svg.encode()))

    black = [x for x in range(0, 1200, 4) if sum(card.getpixel((x, 440))) < 60]
    assert (min(black) < 300) == is_wide
    assert max(black) > 800
