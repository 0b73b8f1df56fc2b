"""A demonstration site in German: nothing of ours is left in English."""

from __future__ import annotations

import io
import re
import shutil
from html.parser import HTMLParser
from pathlib import Path

import pypdf
import pytest
import yaml

from scantling.build import How, build_catalog
from scantling.measure import Display
from scantling.pages import Choices, raw, whole
from scantling.plan import ROOMS, SKILLS
from tests.support.our_words import asked

PLANS = ("entry-bench", "book-bin")
"""Between them they have options, errata, templates, glue-ups, sheets, an anchor and cautions for a child."""
SAID = ("aria-label", "title", "alt", "placeholder", "aria-valuetext")
UNITS = r"\b(?:mm|m²|m|kg|lb|ml|deg|in|ft|bd|x|[a-z]|[1-9][a-z])\b|\d|\W|_"


@pytest.fixture(scope="module")
def plans(root, tmp_path_factory) -> Path:
    """Return a folder with some of the demonstration plans."""
    folder = tmp_path_factory.mktemp("german") / "plans"
    for name in PLANS:
        shutil.copytree(root / "plans" / name, folder / name)
    shutil.copy(root / "plans" / "shop.yml", folder / "shop.yml")
    return folder


@pytest.fixture(scope="module")
def sites(plans, tmp_path_factory):
    """Return the texts and files of the site, by path, in English and in German."""
    cache = tmp_path_factory.mktemp("cache")
    return {code: _site(plans, code, cache) for code in ("en", "de")}


def _site(plans: Path, code: str, cache: Path) -> dict[str, str | bytes]:
    choices = Choices(
        display=Display("mm"), language=code, papers=True, site_url="https://plans.example.org/"
    )
    finished = build_catalog(plans, How(choices, with_paper=code == "de", workers=1, cache=cache)).finished
    texts = {page.path: whole(page) for page in finished.pages}
    contents = {file.path: raw(file.content) for file in finished.files}
    return texts | {
        path: content.decode("utf-8") if path.endswith((".html", ".svg", ".xml")) else content
        for path, content in contents.items()
    }


class _Told(HTMLParser):
    """Gathers what a page tells: its texts, and the attributes that are read aloud."""

    def __init__(self) -> None:
        super().__init__()
        self.told: set[str] = set()
        self.typed = 0

    def handle_starttag(self, tag, attrs):
        self.typed += tag == "code"
        self.told |= {" ".join(value.split()) for name, value in attrs if name in SAID and value}

    def handle_endtag(self, tag):
        self.typed -= tag == "code"

    def handle_data(self, data):
        # a command is typed alike in any language
        if not self.typed:
            self.told.add(" ".join(data.split()))


def _told(content: str) -> set[str]:
    reader = _Told()
    # a name goes on where only the line's end is held
    content = re.sub(r'<span class="sc-whole">(.*?)</span>', r"\1", content)
    reader.feed(re.sub(r"<(style|script)\b.*?</\1>", "", content, flags=re.DOTALL))
    return reader.told - {""}


def _leaves(data: object):
    if isinstance(data, dict):
        for key, value in data.items():
            yield str(key)
            yield from _leaves(value)
    elif isinstance(data, list):
        for value in data:
            yield from _leaves(value)
    elif data is not None:
        yield str(data)


def _authors(plans: Path) -> list[str]:
    """Return every phrase that the author wrote, the longest first."""
    pieces = set(_leaves(yaml.safe_load((plans / "shop.yml").read_text("utf-8"))))
    for name in PLANS:
        front, _, body = (plans / name / "plan.md").read_text("utf-8")[4:].partition("\n---\n")
        pieces |= {*_leaves(yaml.safe_load(front)), *body.split("\n"), name.replace("-", " ")}
    split = {part for piece in pieces for part in re.split(r"[{}\[]|\*\*|\]\(|[:,.;] |\n| or ", piece)}
    flat = {" ".join(piece.split()).casefold().strip("# ") for piece in pieces | split}
    return sorted((piece for piece in flat if len(piece) > 2), key=len, reverse=True)


def test_nothing_of_ours_is_left_in_english(sites, plans):
    """What is told alike in both languages is made of the author's words, numbers and units."""
    authors = _authors(plans)
    own_words = set(re.findall(r"[a-z]+", " ".join(authors)))
    left = {}
    for path, german in sites["de"].items():
        english = sites["en"].get(path)
        if not path.endswith((".md", ".html", ".svg")):
            continue
        for text in _told(german) & _told(english):
            rest = text.casefold()
            for piece in authors:
                rest = rest.replace(piece, " ") if piece in rest else rest
            words = re.sub(UNITS, " ", rest).split()
            if any(word not in own_words for word in words) or (
                re.sub(UNITS, " ", text.casefold()).split() == words and any(len(word) > 3 for word in words)
            ):
                left[text] = path
    assert left.keys() <= _spelled_alike(), left


def _spelled_alike() -> set[str]:
    from scantling.words import language_of

    return {words for words, told in language_of("de").words.items() if words == told}


def test_german_pages_have_what_the_english_ones_have(sites):
    """The same pages at the same addresses, and drawings under the same names."""
    english = {path for path in sites["en"] if not path.endswith(".pdf")}

    assert {path for path in sites["de"] if not path.endswith(".pdf")} == english


def test_a_german_page_speaks_german(sites):
    """Headings, facts, tables and cautions of a plan page."""
    page = sites["de"]["plans/entry-bench/index.md"]

    for words in (
        "## Materialliste",
        "## Zuschnittliste",
        "## Zuschnittpläne",
        "Kosten",
        "Werkzeug",
        "Side rail an leg, lower side rail an leg",
        "Vorsicht",
    ):
        assert words in page
    assert "115,58\N{NO-BREAK SPACE}$" in page


def test_what_a_plan_chooses_from_a_list_is_told_in_german(sites):
    """Skill and room, on the plan's page, on its card, in the catalog's filters and among plans like it."""
    told = {path: _told(content) for path, content in sites["de"].items() if path.endswith((".md", ".html"))}
    phrases = {part for texts in told.values() for text in texts for part in text.split(" · ")}

    assert {"etwas Übung", "Flur", "Kinderzimmer"} <= phrases
    tags = {"entry", "bedroom"}  # the author's own, which stay
    assert phrases & ({*SKILLS, *ROOMS} - tags) == set()


def test_the_printed_plan_speaks_german(sites):
    """Its running foot, its headings and its language for readers who listen."""
    reader = pypdf.PdfReader(io.BytesIO(sites["de"]["plans/entry-bench/plan-a4.pdf"]))
    words = " ".join(" ".join(page.extract_text().split()) for page in reader.pages)

    assert "Seite 1 von " in words
    assert "Materialliste" in words
    assert reader.trailer["/Root"]["/Lang"] == "de"
    for english in ("Materials list", "Board by board", "Full-size templates", "page 1 of"):
        assert english not in words


def test_no_whole_sentence_of_ours_is_printed_in_english(sites):
    """No PDF holds an English wording of four words or more."""
    ours = {words for words, _ in asked() if words.count(" ") > 3 and "{" not in words}
    for path, content in sites["de"].items():
        if path.endswith("plan-a4.pdf"):
            reader = pypdf.PdfReader(io.BytesIO(content))
            printed = " ".join(" ".join(page.extract_text().split()) for page in reader.pages)
            assert [words for words in ours if words in printed] == []
