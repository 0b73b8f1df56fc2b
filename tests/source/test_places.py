"""Every value of a plan knows where its characters stand in the file."""

from __future__ import annotations

import pytest

from scantling.fault import Place

BOX = """\
---
title: Box
parts:
  side: {from: 2x4, length: 20 in}
---
"""


def spot(source, *path, **where):
    """Return line and column of the first and one past the last character of a place."""
    start, end = source.spans.resolve(Place(path, **where))
    return source.document.position(start), source.document.position(end)


def text_at(source, *path, **where):
    """Return the letters of the file at a place."""
    start, end = source.spans.resolve(Place(path, **where))
    return source.document.text[start:end]


def test_a_plain_scalar_is_marked_to_the_letter(read):
    """Characters of a value in braces are found again in the file."""
    source = read(BOX)

    assert text_at(source, "parts", "side", "length", start=0, end=2) == "20"
    assert spot(source, "parts", "side", "length", start=3, end=5) == ((4, 32), (4, 34))


def test_a_key_is_marked_by_itself(read):
    """A place on a key is the key's own letters."""
    source = read(BOX)

    assert text_at(source, "parts", "side", on_key=True) == "side"


def test_a_record_is_marked_by_its_key(read):
    """What a whole record lacks is shown at its name, not all over it."""
    assert text_at(read(BOX), "parts", "side") == "side"


def test_what_is_not_written_is_marked_at_what_is_above(read):
    """A place that the author left out resolves to the nearest thing that is there."""
    source = read(BOX)

    assert text_at(source, "parts", "side", "width") == "side"
    assert spot(source, "sizes") == ((1, 1), (1, 4))


@pytest.mark.parametrize(
    ("written", "value"),
    [
        ("'it''s {side.length} long'", "it's {side.length} long"),
        ('"a \\"b\\" \\u00e9 {side.length}"', 'a "b" é {side.length}'),
        ('"\\U0001f6aa\\t{side.length} x"', "🚪\t{side.length} x"),
        ("🚪🚪 {side.length} x", "🚪🚪 {side.length} x"),
        ("two\n  lines, {side.length}", "two lines, {side.length}"),
        ('"two\n  lines,\\\n  {side.length}"', "two lines,{side.length}"),
        (">\n  folded\n  {side.length} x", "folded {side.length} x\n"),
        ("|\n  as it\n  is {side.length}", "as it\nis {side.length}\n"),
        ("|-\n    deep\n      {side.length}\n    in", "deep\n  {side.length}\nin"),
    ],
)
def test_letters_are_found_in_every_way_to_write_a_scalar(read, written, value):
    """Quoted, folded and escaped values map each of their characters back to the file."""
    source = read(BOX.replace("parts:", f"summary: {written}\nparts:"))
    at = value.index("side.length")

    assert source.diagnostics == ()
    assert source.data["summary"] == value
    assert text_at(source, "summary", start=at, end=at + len("side.length")) == "side.length"


def test_every_letter_of_a_steps_words_is_found(read):
    """The words of a step lie in the file just as they are, so that each character has its place."""
    body = "Intro.\n\n## One {side.count}\nuses: 1 side\n\nText\nwith {side.length}.\n\n### More\n\nEnd.\n"
    source = read(BOX + body)
    words = source.data["steps"][0]["text"]

    assert words == "Text\nwith {side.length}.\n\n### More\n\nEnd."
    assert [text_at(source, "steps", 0, "text", start=i, end=i + 1) for i in range(len(words))] == list(words)
    assert text_at(source, "steps", 0, "title", start=5, end=15) == "side.count"
    assert text_at(source, "steps", 0, "uses", start=2, end=6) == "side"


@pytest.mark.parametrize("end", ["\r\n", "\r"])
def test_line_ends_of_other_systems_change_nothing(read, end):
    """A file with CRLF, or with CR alone, has the same lines and columns."""
    text = BOX.replace("length: 20 in", "length: 20 im") + "## Cut\n\nTo {nothing}.\n"
    plain, other = read(text), read(text.replace("\n", end))

    assert [one.spot for one in other.diagnostics] == [one.spot for one in plain.diagnostics]
    assert other.data == plain.data


def test_a_byte_order_mark_takes_no_column(read):
    """A file that begins with a byte order mark reads as if it had none."""
    source = read(b"\xef\xbb\xbf" + BOX.replace("title", "tilte").encode())

    assert [(one.spot.line, one.spot.column) for one in source.diagnostics] == [(2, 1)]


def test_a_tab_is_one_column(read):
    """Columns count characters: a tab is one, and so is a letter beyond the first plane."""
    source = read(BOX.replace("title: Box", "title: Box\nsummary: '🚪\t{nothing}'"))

    assert [(one.spot.line, one.spot.column) for one in source.diagnostics] == [(3, 14)]
