"""Prose at one size: the numbers in it."""

from __future__ import annotations

from scantling.fault import Place
from scantling.formula import read_formula
from scantling.measure import Display, Length
from scantling.pages.markdown_words import bare, rendered
from scantling.pages.words import CLOSE, OPEN, line_of, markdown_of, prose_of
from scantling.plan import FittedProse, Prose, Quote, Quoted, read_prose

MM = Display("mm")


def at_size(text: str, **values: object) -> tuple[FittedProse, dict[str, str]]:
    """Return prose with its quotes reckoned, and its rendering."""
    prose = read_prose(text, Place(), [])
    scope = {name: Length(value) if isinstance(value, int) else value for name, value in values.items()}
    pieces = [
        piece if isinstance(piece, str) else Quoted(piece.formula.evaluate(scope), piece)
        for piece in prose.pieces
    ]
    return FittedProse(tuple(pieces)), rendered([markdown_of(prose)])


def test_a_quoted_number_is_found_by_its_place():
    """Each quote becomes an element that says which quote of the prose it is."""
    fitted, words = at_size("Cut **{rail}** and {leg}.", rail=36, leg=17)

    assert prose_of(fitted, words, Display()) == (
        '<p>Cut <strong><span class="quoted" data-quote="0">36 in</span></strong> and '
        '<span class="quoted" data-quote="1">17 in</span>.</p>'
    )


def test_one_rendering_serves_every_size_and_unit():
    """The rendered Markdown does not depend on the numbers, so a browser fills in new ones."""
    short, words = at_size("Cut {rail}.", rail=36)
    long, same = at_size("Cut {rail}.", rail=48)

    assert words == same
    assert "1219 mm" in prose_of(long, words, MM)
    assert "914 mm" in prose_of(short, words, MM)


def test_a_single_paragraph_stands_within_a_line():
    """Titles and summaries lose the paragraph around them; more than one paragraph keeps them."""
    one, words = at_size("Cut {rail}", rail=36)
    two, more = at_size("Cut.\n\nThen glue.")

    assert line_of(one, words, Display()).startswith("Cut <span")
    assert line_of(two, more, Display()) == "<p>Cut.</p>\n<p>Then glue.</p>"


def test_a_quoted_word_is_escaped():
    """A value that holds words, as an option does, is made safe."""
    quote = Quote(read_formula("shelf"), Place())
    prose = Prose(("It is ", quote))
    fitted = FittedProse(("It is ", Quoted("<b>open", quote)))

    assert "&lt;b&gt;open" in prose_of(fitted, rendered([markdown_of(prose)]), Display())


def test_marks_cannot_be_forged():
    """Characters that stand for a quote are dropped from an author's words."""
    fitted = FittedProse((f"a {OPEN}0{CLOSE} b",))

    assert prose_of(fitted, rendered([markdown_of(fitted)]), Display()) == "<p>a 0 b</p>"


def test_a_quote_in_an_address_makes_no_link():
    """A number never stands inside a tag."""
    fitted, words = at_size("[see](https://example.org/{rail})", rail=36)

    assert prose_of(fitted, words, Display()) == "<p><span>see</span></p>"


def test_bare_text_has_no_markup():
    """Where only text may stand, tags go and signs stay what they are."""
    fitted, words = at_size("*Cut* {rail} & <mind>", rail=36)

    assert bare(fitted, words, Display()) == "Cut 36 in & <mind>"
