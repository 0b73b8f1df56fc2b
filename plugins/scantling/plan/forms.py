"""What a plan may say."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from scantling.fault import Place
from scantling.form import (
    CONDITION,
    COUNT,
    FORMULA,
    LENGTH_FORMULA,
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
from scantling.plan.kinds import EdgesKind, EndsKind, FromKind, GlueUpKind, ProseKind, UsesKind
from scantling.plan.model import Erratum, Photo, Work
from scantling.plan.placement import PLACE
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
WORKS = (
    "groove",
    "dado",
    "rabbet",
    "notch",
    "half-lap",
    "pocket holes",
    "holes",
    "shelf pin holes",
    "taper",
    "curve",
    "roundover",
    "chamfer",
)
JOINS = (
    "pocket screws",
    "screws",
    "brads and glue",
    "nails",
    "glue",
    "dado",
    "groove",
    "rabbet",
    "half-lap",
    "bolts",
    "dowels",
)


@dataclass(frozen=True, slots=True)
class Entry:
    """A record of a plan as it was read, before names are resolved."""

    fields: Mapping[str, Any]
    place: Place

    def __getitem__(self, key: str) -> Any:
        """Return what the author wrote for `key`, or the form's default."""
        return self.fields[key]


def entry(*, found_at: Place, **fields: Any) -> Entry:
    """Return an entry of the fields that a form has read."""
    return Entry(fields, found_at)


_PROSE = ProseKind()
_ACCEPTS = Field(
    "accept",
    Named(Text(), "checks by name, each with the reason"),
    "checks that are silenced here, each with the reason",
    default={},
)
_ONLY_IF = Field("only if", CONDITION, "it is there only where this holds", example="width > 60 in")
_NOTE = Field("note", _PROSE, "a note for the builder", default=EMPTY)

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


def _work(*, found_at: Place, **fields: Any) -> Work:
    return Work(place=found_at, **fields)


WORK: Form[Work] = Form(
    "the work",
    _work,
    (
        Field("kind", Choice(WORKS), "what is done", required=True, example="groove"),
        Field("where", Text(), "which face, edge or end", default="", example="inside face, back edge"),
        Field("width", LENGTH_FORMULA, "how wide"),
        Field("depth", LENGTH_FORMULA, "how deep"),
        Field("length", LENGTH_FORMULA, "how long, if it does not run through"),
        Field("from end", LENGTH_FORMULA, "how far the first is from the left end"),
        Field("count", COUNT, "how many"),
        Field("apart", LENGTH_FORMULA, "distance between two of them, centre to centre"),
        _NOTE,
    ),
    "Work done on a part once it is cut to size.",
    short="kind",
)
"""Work done on a part once it is cut to size."""
PART: Form[Entry] = Form(
    "a part",
    entry,
    (
        Field("count", COUNT, "how many", example="4"),
        Field("from", FromKind(), "the stock that it is cut from", example="2x4"),
        Field(
            "from offcut of",
            Text(),
            "the part whose offcut it is cut from, while that lasts",
            default="",
            example="leg",
        ),
        Field(
            "length",
            LENGTH_FORMULA,
            "finished length, along the grain unless `grain` says otherwise",
            required=True,
            example="30 in",
        ),
        Field(
            "width",
            LENGTH_FORMULA,
            "finished width; less than the stock's means a rip; left out: as wide as the stock",
        ),
        Field(
            "thick",
            LENGTH_FORMULA,
            "finished thickness; left out: as thick as the stock, or as its layers together",
        ),
        Field("glued up", GlueUpKind(), "glued up from several pieces", example="2 layers"),
        Field(
            "longer",
            LENGTH_FORMULA,
            "how much longer the blank is cut, to be trimmed later",
            example="1/2 in",
        ),
        Field(
            "wider", LENGTH_FORMULA, "how much wider the blank is cut, to be trimmed later", example="1/4 in"
        ),
        Field(
            "cut to fit",
            LENGTH_FORMULA,
            "the part is marked at assembly; how much is bought over",
            example="1 in",
        ),
        Field(
            "least width",
            LENGTH_FORMULA,
            "the narrowest that will still do, where the kerf eats into the last strip",
        ),
        Field(
            "grain",
            Choice(("length", "width", "any")),
            "which side runs along the grain; left out: length",
            default="",
        ),
        Field("band", EdgesKind(), "edges that are banded", default=()),
        Field("band with", Text(), "the banding, an article of the shop file", default=""),
        Field("ends", EndsKind(), "end cuts that are not square", example="mitre 45 deg"),
        Field("work", ListOf(Record(WORK)), "grooves, holes and other work", default=()),
        Field("place", ListOf(Record(PLACE)), "where each one sits and how it is turned", default=()),
        _ONLY_IF,
        _NOTE,
        _ACCEPTS,
    ),
    "A kind of piece. Its name is yours; formulas use `name.length`, `.width`, `.thick` and `.count`.",
)
"""A kind of piece."""
JOIN: Form[Entry] = Form(
    "a join",
    entry,
    (
        Field("join", Text(), "the two parts that meet", required=True, example="rail to leg"),
        Field("with", Choice(JOINS), "what holds them", required=True, example="pocket screws"),
        Field(
            "fastener",
            Text(),
            "the article of the shop file; left out: chosen by the thicknesses",
            default="",
        ),
        Field("each", COUNT, "fasteners in one joint", example="2"),
        Field("joints", COUNT, "how many such joints there are", example="4"),
        Field("glue", Choice(("yes", "no")), "whether glue goes in as well", default="no"),
        Field("depth", LENGTH_FORMULA, "how deep the first part is let into the second"),
        _ONLY_IF,
    ),
    "Two kinds of part that meet.",
)
"""Two kinds of part that meet."""
HARDWARE: Form[Entry] = Form(
    "a piece of hardware",
    entry,
    (
        Field("count", COUNT, "how many"),
        Field(
            "area",
            FORMULA,
            "area to cover, all coats together; `surface` is the area of all parts",
            example="2 * surface",
        ),
        Field("long", LENGTH_FORMULA, "length to cover, for what comes on a roll"),
        Field("ware", Text(), "the article of the shop file, if it has another name there", default=""),
        _ONLY_IF,
        _NOTE,
    ),
    "Something bought that is not wood, by its name in the shop file.",
    short="count",
)
"""Something bought that is not wood."""


def _step_fields() -> tuple[Field, ...]:
    return (
        Field("title", _PROSE, "what is done", required=True, default=EMPTY),
        Field("text", _PROSE, "how it is done", default=EMPTY),
        Field(
            "uses",
            UsesKind("parts with commas between, each with a count or all of them: `4 leg, side strip`"),
            "parts that this step uses up",
            default=(),
        ),
        Field(
            "needs",
            UsesKind("hardware with commas between: `16 pocket screw, wood glue`"),
            "hardware and supplies that it uses up",
            default=(),
        ),
        Field("tools", Words(), "tools at hand", default=()),
        Field("caution", ListOf(_PROSE), "what can hurt here", default=()),
        Field("picture", Text(), "a photo beside the plan", default=""),
        Field("picture alt", Text(), "what the photo shows, for who cannot see it", default=""),
        _ONLY_IF,
        _ACCEPTS,
    )


STEP: Form[Entry] = Form(
    "a step",
    entry,
    _step_fields(),
    "A `##` heading; `key: value` lines may stand right under it, then the words.",
)
"""One step of the building."""


def _photo(*, found_at: Place, file: str, alt: str) -> Photo:
    return Photo(file, alt, found_at)


PHOTO: Form[Photo] = Form(
    "a photo",
    _photo,
    (
        Field("file", Text(), "the file beside the plan", required=True, example="bench.jpg"),
        Field("alt", Text(), "what it shows, for who cannot see it", required=True),
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
        Field("text", _PROSE, "what is to be known", required=True),
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
        Field("summary", _PROSE, "one sentence for the catalog", default=EMPTY),
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
        Field("caution", ListOf(_PROSE), "what can hurt, for the whole plan", default=()),
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
        Field("intro", _PROSE, "words before the first step (in the body of the file)", default=EMPTY),
        Field("steps", ListOf(Record(STEP)), "the steps (in the body of the file)", default=()),
        _ACCEPTS,
    ),
)
"""A whole plan."""
