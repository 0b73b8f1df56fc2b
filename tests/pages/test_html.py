"""Making words safe, and writing elements."""

from __future__ import annotations

from html.parser import HTMLParser

from hypothesis import given
from hypothesis import strategies as st

from scantling.pages.html import escape, items, slug, tag


class Reader(HTMLParser):
    """Reads back what was written."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.tags: list[tuple[str, dict]] = []
        self.words = ""

    def handle_starttag(self, tag, attrs):
        self.tags.append((tag, dict(attrs)))

    def handle_data(self, data):
        self.words += data


def read(html: str) -> Reader:
    """Read HTML back."""
    reader = Reader()
    reader.feed(html)
    reader.close()
    return reader


WORDS = st.text(st.characters(blacklist_categories=("Cs", "Cc"), blacklist_characters="\ufffe\uffff"))


@given(WORDS)
def test_words_come_back_as_they_were(words):
    """Whatever words say, a page shows just them, in text and in an attribute, and no element of theirs."""
    reader = read(tag("p", escape(words), title=words))

    assert reader.tags == [("p", {"title": words})]
    assert reader.words == words


@given(st.text())
def test_no_template_language_finds_work(words):
    """Escaped words hold no brace, backtick, angle bracket or quote, whatever characters come in."""
    assert not set(escape(words)) & set("{}`<>\"'\n\r")


def test_attributes_that_say_nothing_are_left_out():
    """None and False leave an attribute out, True writes it alone, and trailing underscores go."""
    written = tag("input", checked=True, disabled=False, value=None, class_="a", data_check="b")

    assert written == '<input checked class="a" data-check="b">'


def test_lines_of_a_sample_stay_apart():
    """An attribute of two lines, such as the sample in an empty field, has them still when it is read."""
    assert tag("textarea", "", placeholder="one\ntwo") == '<textarea placeholder="one&#10;two"></textarea>'


def test_an_empty_list_is_nothing():
    """A list without items leaves no empty element on the page."""
    assert items([]) == ""
    assert items(["a", "b"]) == "<ul><li>a</li><li>b</li></ul>"


def test_an_address_has_no_odd_letters():
    """Spaces, slashes and letters of other scripts become single hyphens."""
    assert slug("3/4 Plywood – Ørsted  no. 1") == "3-4-plywood-rsted-no-1"
