"""What a plan may say of its parts: the work on them, what joins them, the hardware, and the steps."""

from __future__ import annotations

from typing import Any

from scantling.fault import Place
from scantling.form import (
    COUNT,
    FORMULA,
    LENGTH_FORMULA,
    Choice,
    Field,
    Form,
    ListOf,
    Record,
    Text,
    Words,
)
from scantling.plan.entry import ACCEPTS, NOTE, ONLY_IF, PROSE, Entry, entry
from scantling.plan.kinds import EdgesKind, EndsKind, FromKind, GlueUpKind, UsesKind
from scantling.plan.model import Work
from scantling.plan.placement import PLACE
from scantling.plan.prose import EMPTY

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


def _work(*, found_at: Place, **fields: Any) -> Work:
    return Work(place=found_at, **fields)


WORK: Form[Work] = Form(
    "the work",
    _work,
    (
        Field("kind", Choice(WORKS), "what is done", required=True, example="groove"),
        Field(
            "where",
            Text(),
            "which face, edge or end; what is at the `top end` or the `lower end` is drawn at that one alone",
            default="",
            example="inside face, back edge",
        ),
        Field("width", LENGTH_FORMULA, "how wide"),
        Field("depth", LENGTH_FORMULA, "how deep"),
        Field("length", LENGTH_FORMULA, "how long, if it does not run through"),
        Field("from end", LENGTH_FORMULA, "how far the first is from the left end"),
        Field("count", COUNT, "how many"),
        Field("apart", LENGTH_FORMULA, "distance between two of them, centre to centre"),
        NOTE,
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
        ONLY_IF,
        NOTE,
        ACCEPTS,
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
        ONLY_IF,
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
        ONLY_IF,
        NOTE,
    ),
    "Something bought that is not wood, by its name in the shop file.",
    short="count",
)
"""Something bought that is not wood."""


def _step_fields() -> tuple[Field, ...]:
    return (
        Field("title", PROSE, "what is done", required=True, default=EMPTY),
        Field("text", PROSE, "how it is done", default=EMPTY),
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
        Field("caution", ListOf(PROSE), "what can hurt here", default=()),
        Field("picture", Text(), "a photo beside the plan", default=""),
        Field("picture alt", Text(), "what the photo shows, for who cannot see it", default=""),
        ONLY_IF,
        ACCEPTS,
    )


STEP: Form[Entry] = Form(
    "a step",
    entry,
    _step_fields(),
    "A `##` heading; `key: value` lines may stand right under it, then the words.",
)
"""One step of the building."""
