"""The author's photos: small, upright, without what the camera wrote into them."""

from __future__ import annotations

import io
import re

import pytest
from PIL import Image, ImageCms

from scantling.pages import Choices, make_pages
from scantling.pages.photo_sizing import photo_size, sized
from scantling.source import read_catalog
from tests.support.catalogs import BENCH, write_catalog
from tests.support.pictures import picture

SHOWN = BENCH.replace("room: entry\n", "room: entry\nphoto: {file: my stool.jpg, alt: A stool on a quay}\n")
STEPPED = SHOWN.replace("tools: saw\n", "tools: saw\npicture: legs.png\npicture alt: Four legs\n")


def camera_data(orientation: int = 1) -> Image.Exif:
    """Return what a camera writes: its name, how it was held, and where it was."""
    told = Image.Exif()
    told[0x010F] = "Camera of nobody"
    told[0x0112] = orientation
    told.get_ifd(0x8825)[2] = (50.0, 30.0, 0.0)
    return told


def opened(content: bytes) -> Image.Image:
    """Return a picture, read whole."""
    image = Image.open(io.BytesIO(content))
    image.load()
    return image


def made(folder, plan: str, **pictures: bytes):
    """Return the pages of one plan with pictures beside it."""
    home = write_catalog(folder, stool=plan)
    for name, content in pictures.items():
        (home / "stool" / name).write_bytes(content)
    return make_pages(read_catalog(home), Choices())


def test_a_page_offers_each_width_that_lies_beside_it(tmp_path):
    """Head, card and step name files that are there, as wide as they say, with room kept for them."""
    finished = made(
        tmp_path, STEPPED, **{"my stool.jpg": picture(2000, 1500), "legs.png": picture(700, 900, "PNG")}
    )
    files = {file.path: file.content for file in finished.files}
    pages = {page.path: page.markdown for page in finished.pages}
    assert finished.diagnostics == ()

    def offered(page: str, folder: str) -> dict[str, int]:
        found = re.findall(r'srcset="([^"]*)"', pages[page])
        entries = [entry.split() for one in found for entry in one.split(", ")]
        return {folder + address.replace("%20", " "): int(wide[:-1]) for address, wide in entries}

    at_plan = offered("plans/stool/index.md", "plans/stool/")
    up = offered("plans/stool/width-30in/index.md", "plans/stool/width-30in/")
    card = offered("plans/index.md", "plans/")

    assert sorted(set(at_plan.values())) == [480, 700, 960, 1600]
    assert {path.replace("width-30in/../", "") for path in up} == set(at_plan)
    assert set(card) < set(at_plan)
    for path, width in at_plan.items():
        image = opened(files[path])
        assert image.width == width
        assert image.format == ("WEBP" if path.endswith(".webp") else "JPEG")

    head, step = re.findall(r"<picture>.*?</picture>", pages["plans/stool/index.md"])
    assert 'width="1600" height="1200"' in head
    assert 'width="700" height="900"' in step
    assert ('loading="lazy"' in head, 'loading="lazy"' in step) == (False, True)
    assert 'src="my%20stool.jpg" alt="A stool on a quay"' in head


@pytest.mark.parametrize("kind", ["JPEG", "WEBP", "PNG"])
def test_no_place_and_no_camera_is_published(kind):
    """Neither EXIF nor a word of it is in any file that is made."""
    for content in sized("a." + kind.lower(), picture(1200, 800, kind, exif=camera_data())).values():
        assert not opened(content).getexif()
        assert b"Camera of nobody" not in content
        assert "exif" not in opened(content).info


def test_a_photo_stands_upright():
    """A picture that the camera took on its side is turned, and its width and height with it."""
    content = picture(1000, 600, exif=camera_data(orientation=6))  # the top of the scene is at the right

    assert (photo_size(content).width, photo_size(content).height) == (600, 1000)
    for made_file in sized("a.jpg", content).values():
        image = opened(made_file)
        red = image.convert("RGB").getpixel((image.width * 3 // 4, image.height // 4))
        assert image.height > image.width
        assert red[0] > 200 > red[2]


def test_forty_million_pixels_become_small():
    """A photo of 8,000 by 5,000 pixels is published at 1,600, and all its files stay small."""
    files = sized("large.jpg", picture(8000, 5000, quality=40))

    assert {opened(content).width for content in files.values()} == {480, 960, 1600}
    assert opened(files["large.jpg"]).size == (1600, 1000)


def test_colours_stay_and_glass_is_white():
    """A colour profile is applied and left out; what is transparent lies on white."""
    profile = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    plain = opened(sized("a.jpg", picture(600, 400, quality=95, icc_profile=profile))["a.jpg"])
    assert "icc_profile" not in plain.info
    assert plain.getpixel((500, 300))[2] > 240

    out = io.BytesIO()
    Image.new("RGBA", (50, 50), (0, 0, 0, 0)).save(out, "PNG")
    assert opened(sized("a.png", out.getvalue())["a.png"]).getpixel((25, 25)) == (255, 255, 255)


@pytest.mark.parametrize(
    "content",
    [b"", b"no picture", picture(600, 400)[:3000], b"<svg xmlns='http://www.w3.org/2000/svg'/>"],
)
def test_what_is_no_picture_is_told_of_at_its_place(tmp_path, content):
    """A text that is called like a picture, or a picture cut short, is a fault where the plan names it."""
    finished = made(tmp_path, SHOWN, **{"my stool.jpg": content})

    assert [(one.code, one.spot.line) for one in finished.faults] == [("bad-picture", 6)]
    assert "my stool.jpg" in finished.faults[0].message


def test_too_large_is_said(tmp_path):
    """More pixels than can be made small are refused by the head of the file, before they are unpacked."""
    out = io.BytesIO()
    Image.new("1", (20_000, 5_000)).save(out, "PNG")
    finished = made(tmp_path, SHOWN, **{"my stool.jpg": out.getvalue()})

    assert [one.code for one in finished.faults] == ["bad-picture"]
    assert "100 million pixels" in finished.faults[0].message


def test_the_same_photo_gives_the_same_bytes():
    """Two runs write the same files."""
    content = picture(1000, 700, exif=camera_data())

    assert sized("a.jpg", content) == sized("a.jpg", content)


CAPTIONED = SHOWN.replace("alt: A stool on a quay}", "alt: A stool on a quay, caption: Built <here>}")


def pages_of(folder, plan: str) -> dict[str, str]:
    """Return the pages of one plan with its photo, by their place."""
    finished = made(folder, plan, **{"my stool.jpg": picture(800, 600)})
    assert finished.diagnostics == ()
    return {page.path.removeprefix("plans/"): page.markdown for page in finished.pages}


def test_a_caption_stands_below_the_head_picture_alone(tmp_path):
    """It is escaped; a card has no room for it."""
    pages = pages_of(tmp_path, CAPTIONED)

    assert "<figcaption>Built &lt;here&gt;</figcaption>" in pages["stool/index.md"]
    assert "<figcaption>" not in pages["index.md"]


def test_the_head_picture_is_fetched_first(tmp_path):
    """What a reader came for comes first; a card's picture presses nobody."""
    pages = pages_of(tmp_path, CAPTIONED)

    head = re.search(r"<picture>.*?</picture>", pages["stool/index.md"])[0]
    assert 'fetchpriority="high"' in head
    assert "loading=" not in head
    assert "fetchpriority" not in pages["index.md"]


def test_a_photo_says_that_it_shows_the_usual_size_where_nothing_can_be_drawn(tmp_path):
    """A plan whose parts have no place keeps its photo at every size."""
    pages = pages_of(tmp_path, CAPTIONED)

    words = "<figcaption>Built &lt;here&gt; The picture shows the usual size.</figcaption>"
    assert words in pages["stool/width-30in/index.md"]
    assert "usual size." not in pages["stool/index.md"]


BOARD = """\
---
title: Shelf board
summary: A board {width} wide.
photo: {file: my stool.jpg, alt: A board}
sizes: {width: {usual: 24 in, from: 18 in, to: 40 in, offer: [30 in]}}
options:
  end: {question: "Square ends?", choices: {square: as sawn, eased: by hand}, usual: square}
offer:
  - {end: eased}
parts:
  board: {count: 1, from: 1x6, length: width, place: {bottom: 0 in}}
---
## Saw it
uses: board

Saw the board.
"""


def test_the_piece_is_drawn_where_its_size_is_not_that_of_the_photo(tmp_path):
    """The usual size shows the photo; another size, or another choice, shows itself."""
    pages = pages_of(tmp_path, BOARD)

    def head(page: str) -> str:
        return re.search(r'data-fragment="picture">.*?</figure>', pages[page], re.DOTALL)[0]

    assert "my%20stool" in head("stool/index.md")
    for other in ("stool/width-30in/index.md", "stool/end-eased/index.md"):
        assert "my%20stool" not in head(other)
        assert "corner.svg" in head(other)
