"""What a plan may say."""

from __future__ import annotations

from typing import Any

from scantling.fault import Place
from scantling.form import (
    FORMULA,
    Choice,
    Date,
    Field,
    Form,
    Formulas,
    ListOf,
    Named,
    Record,
    Text,
    Words,
)
from scantling.plan.entry import ACCEPTS, PROSE, Entry, entry
from scantling.plan.model import Erratum, Photo
from scantling.plan.part_forms import HARDWARE, JOIN, PART, STEP
from scantling.plan.prose import EMPTY

SKILLS = ("first project", "some practice", "experienced")
"""How much practice a plan takes, least first."""
ROOMS = (
    "entry",
    "living room",
    "kitchen",
    "bedroom",
    "bathroom",
    "office",
    "workshop",
    "garden",
    "child's room",
)
"""Where a piece may stand."""

SIZE: Form[Entry] = Form(
    "a size",
    entry,
    (
        Field("usual", FORMULA, "the value that the plan is shown at", required=True, example="48 in"),
        Field("from", FORMULA, "the least that the plan works at", example="30 in"),
        Field("to", FORMULA, "the most that the plan works at", example="72 in"),
        Field("by", FORMULA, "the step of the slider", example="1/2 in"),
        Field(
            "offer",
            ListOf(FORMULA),
            "further values that get a page of their own",
            default=(),
            example="[36 in, 60 in]",
        ),
        Field("meaning", Text(), "what is measured, from where to where", default=""),
    ),
    "A dimension that the reader may choose. A bare value is a size that cannot be changed.",
    short="usual",
)
"""A dimension that the reader may choose."""
OPTION: Form[Entry] = Form(
    "an option",
    entry,
    (
        Field(
            "question",
            Text(),
            "what the reader is asked",
            required=True,
            example="Where does the trim come from?",
        ),
        Field(
            "choices", Named(Text(), "choices by name"), "what each choice means, by its name", required=True
        ),
        Field("usual", Text(), "the choice that the plan is shown with", required=True),
    ),
    "A choice that the reader makes.",
)
"""A choice that the reader makes."""


def _photo(*, found_at: Place, file: str, alt: str, caption: str) -> Photo:
    return Photo(file, alt, found_at, caption)


PHOTO: Form[Photo] = Form(
    "a photo",
    _photo,
    (
        Field("file", Text(), "the file beside the plan", required=True, example="bench.jpg"),
        Field("alt", Text(), "what it shows, for who cannot see it", required=True),
        Field("caption", Text(), "a line below it: who took it, or how it was made", default=""),
    ),
)
"""A picture of the finished piece."""


def _erratum(*, found_at: Place, day: str, text: Any, parts: tuple[str, ...]) -> Erratum:
    return Erratum(day, text, parts, found_at)


ERRATUM: Form[Erratum] = Form(
    "a dated note",
    _erratum,
    (
        Field("day", Date(), "when it was written", required=True),
        Field("text", PROSE, "what is to be known", required=True),
        Field("parts", Words(), "the parts that it touches", default=(), example="side rail, leg"),
    ),
)
"""A dated note."""
PLAN: Form[Entry] = Form(
    "a plan",
    entry,
    (
        Field(
            "title", Text(300), "what is built", required=True, default="", example="Bench for the sea wall"
        ),
        Field("summary", PROSE, "one sentence for the catalog", default=EMPTY),
        Field("tags", Words(), "words to find it by", default=()),
        Field("room", Choice(ROOMS), "where it stands", default=""),
        Field("skill", Choice(SKILLS), "how much practice it takes", default=""),
        Field("build time", Text(100), "how long it takes, in words", default="", example="a weekend"),
        Field("author", Text(200), "who designed it", default=""),
        Field("licence", Text(200), "what others may do with the plan", default=""),
        Field("revised", Date(), "the day of this revision", default=""),
        Field(
            "formerly",
            Words(),
            "folders in which the plan stood before; their addresses lead to this one",
            default=(),
            example="[hall-bench]",
        ),
        Field("tools", Words(), "tools that the whole plan takes", default=()),
        Field("caution", ListOf(PROSE), "what can hurt, for the whole plan", default=()),
        Field("photo", Record(PHOTO), "a picture of the finished piece"),
        Field(
            "sizes", Named(Record(SIZE), "sizes by name"), "dimensions that the reader may choose", default={}
        ),
        Field(
            "offer",
            ListOf(Named(Text(), "sizes and options by name")),
            "whole choices that get a page of their own",
            default=(),
        ),
        Field(
            "overall",
            Named(Text(), "width, depth and height"),
            "which name is the whole piece's width, depth and height, where it is not the size of that name",
            default={},
        ),
        Field(
            "lengths",
            Formulas("formulas by name"),
            "lengths and numbers worth a name, written once",
            default={},
        ),
        Field(
            "options", Named(Record(OPTION), "options by name"), "choices that the reader makes", default={}
        ),
        Field("parts", Named(Record(PART), "parts by name"), "the pieces", required=True, default={}),
        Field("joins", ListOf(Record(JOIN)), "which part meets which, and what holds them", default=()),
        Field(
            "hardware",
            Named(Record(HARDWARE), "hardware by name"),
            "what is bought that is not wood",
            default={},
        ),
        Field("errata", ListOf(Record(ERRATUM)), "what was wrong and is mended, with days", default=()),
        Field(
            "notes", ListOf(Record(ERRATUM)), "build notes: what the author would do differently", default=()
        ),
        Field("intro", PROSE, "words before the first step (in the body of the file)", default=EMPTY),
        Field("steps", ListOf(Record(STEP)), "the steps (in the body of the file)", default=()),
        ACCEPTS,
    ),
)
"""A whole plan."""
