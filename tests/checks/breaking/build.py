"""Fasteners, grooves, shelves and grain that do not hold what is asked of them."""

from __future__ import annotations

import re
from collections.abc import Iterator

from tests.checks.breaking.broken import Broken, Sizes, broken, is_optional
from tests.checks.text import Text

FACE_TO_FACE = {
    "back picket to back apron",
    "back picket to head rail",
    "upper trim to side rail",
    "lower trim to lower side rail",
    "picket to rail",
    "door core to picket",
}
"""Joins whose screws go through one board flat into another, so that a long one comes out."""


def fastener_too_long(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A screw comes out on the other side."""
    for line, values in plan.joins:
        if values["join"][1].strip() not in FACE_TO_FACE:
            continue
        if "fastener" in values:
            at, words = values["fastener"]
            text = plan.with_(at, at + len(words), "wood screw 3 in")
        else:
            at = plan.text.index("}\n", line)
            text = plan.with_(at, at, ", fastener: wood screw 3 in")
            at += len(", fastener: ")
        yield broken(f"3 in for {values['join'][1]}", text, "fastener-length", at)


def fastener_too_short(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A screw is no longer than the piece that it holds is thick."""
    for _, values in plan.joins:
        if values["with"][1].strip() == "screws" and re.search(
            r"1 5/8|2|3", values.get("fastener", (0, ""))[1]
        ):
            at, words = values["fastener"]
            text = plan.with_(at, at + len(words), "wood screw 5/8 in")
            yield broken(f"5/8 in for {values['join'][1]}", text, "fastener-length", at)


def holes_at_the_edge(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Pocket holes begin at the very edge."""
    for found in re.finditer(r"\{kind: pocket holes,.*?from end: ([^,}]+)", plan.text):
        text = plan.with_(*found.span(1), "1/8 in")
        yield broken("holes at the edge", text, "fastener-edge", found.start(1))


def holes_beyond_the_edge(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """The last pocket hole lies outside the part."""
    for found in re.finditer(r"\{kind: pocket holes,.*?from end: ([^,}]+), apart: ([^,}]+)", plan.text):
        text = plan.with_(*found.span(2), "30 in")
        yield broken("holes beyond the edge", text, "fastener-edge", found.start(1))


def boards_all_alike(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Nothing is said of pickets that are not all of one width."""
    said = r"\b(?:var(?:y|ies)|equally wide|sort|uneven|share out|narrower|true width|widest|not all alike)\b"
    for name in plan.parts:
        stock = plan.part_value(name, "from")
        full = stock and stock[1] == "cedar picket" and not plan.part_value(name, "width")
        if full and not re.search(rf"(?m)^  [\w ]*\bgap\b[\w ]*:.*\b{name}\.width", plan.text):
            text = re.sub(said, "nice", plan.text)
            at = Text(text).parts[name][0]
            yield broken(f"'{name}' all alike", text, "allow-variation", at, sweeping=is_optional(plan, name))


def shelves_far_apart(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Books would stand under shelves that are far above them."""
    found = re.search(r"(?m)^  clear height: (.*)$", plan.text)
    if found:
        text = plan.with_(*found.span(1), "31 in")
        yield broken("31 in between shelves", text, "shelf-spacing", found.start(1))


def shelf_overloaded(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """The shelves carry far more than they can."""
    shelves = [name for name in plan.parts if re.fullmatch(r"shelf(?: slat| picket)?", name)]
    start, _ = plan.section("lengths")
    for name in shelves:
        text = plan.with_(start, start, "  shelf load: 20000\n")
        at = Text(text).part_value(name, "length")
        yield broken(f"'{name}' overloaded", text, "shelf-sag", at[0])


def wrong_height(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Nobody sits or works at that height."""
    found = re.search(r"(?m)^  (height): \{usual: ([^,]+), from: ([^,]+), to: ([^,]+)", plan.text)
    if found and re.search(r"(?m)^(?:tags: .*\b(?:seating|stool|side table|workbench)\b)", plan.text):
        text = plan.with_(*found.span(4), "62 in")
        yield broken("62 in high", text, "use-height", found.start(1), sweeping=True)


_TIP = re.compile(r"tip|toppl|anchor|\bstud\b", re.IGNORECASE)


def _holds_things(plan: Text) -> bool:
    return any(re.search(r"\b(?:shelf|door|drawer)\b", name) for name in plan.parts)


def anchor_forgotten(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Nothing fastens a tall piece, and no caution speaks of it."""
    lines = [
        line
        for line in plan.text.split("\n")
        if not (_TIP.search(line) and re.match(r"caution:|needs: .*anchor|  wall anchor|  - (?!\{)", line))
    ]
    text = "\n".join(lines)
    height = re.search(r"(?m)^  (height): \{", text)
    tall, deep = size_of("height"), size_of("depth")
    if (
        len(lines) < plan.text.count("\n") + 1
        and height
        and tall
        and deep
        and tall > 2 * deep
        and _holds_things(plan)
    ):
        yield broken("no anchor", text, "tip-over", height.start(1))


def grain_across(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Length and width of a part changed places."""
    for name in plan.parts:
        length, width = plan.part_value(name, "length"), plan.part_value(name, "width")
        along, across = size_of(f"{name}.length"), size_of(f"{name}.width")
        if (
            along is None
            or across is None
            or along < 2 * across
            or is_optional(plan, name)
            or plan.part_value(name, "grain")
        ):
            continue
        if length and width and length[0] > width[0]:
            text = plan.with_(length[0], length[0] + len(length[1]), width[1])
            text = Text(text).with_(width[0], width[0] + len(width[1]), length[1])
            at = Text(text).part_value(name, "length")
            yield broken(f"'{name}' turned", text, "grain-along", at[0])
        elif length and width:
            text = plan.with_(width[0], width[0] + len(width[1]), length[1])
            text = Text(text).with_(length[0], length[0] + len(length[1]), width[1])
            yield broken(f"'{name}' turned", text, "grain-along", length[0])


def nominal_groove(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A dado is as wide as the plywood is called, or too narrow for it."""
    for found in re.finditer(r"\{kind: (?:dado|groove),.*?width: ([\w ]+\.thick)", plan.text):
        for width in ("3/4 in", "3/16 in"):
            text = plan.with_(*found.span(1), width)
            yield broken(f"{width} for {found[1]}", text, "groove-fits", found.start(1))


def _grooves_in_faces(plan: Text) -> Iterator[tuple[str, re.Match[str]]]:
    """Yield each groove or dado in a face, with its part's name; its first group is the depth."""
    pattern = r"\{kind: (?:dado|groove), where: \"?[^\"}]*face[^\"}]*\"?,.*?depth: ([^,}]+)"
    for name, (start, end) in plan.parts.items():
        yield from ((name, found) for found in re.compile(pattern).finditer(plan.text, start, end))


def groove_too_deep(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A dado leaves almost nothing of its board."""
    for name, found in _grooves_in_faces(plan):
        text = plan.with_(*found.span(1), f"{name}.thick - 1/16 in")
        yield broken("too deep", text, "groove-fits", found.start(1))


def groove_through(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A dado goes through its board."""
    for name, found in _grooves_in_faces(plan):
        text = plan.with_(*found.span(1), f"{name}.thick")
        yield broken("through", text, "breaks-through", found.start(1))


def groove_forgotten(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A part goes into a groove that its neighbour has not."""
    for _, values in plan.joins:
        how = values["with"][1].strip()
        if how not in {"groove", "dado"}:
            continue
        first, second = values["join"][1].strip().split(" to ")
        start, end = plan.parts[second]
        block = re.sub(rf"(?m)^      - \{{kind: {how},.*\}}\n", "", plan.text[start:end])
        block = re.sub(r"(?m)^    work:\n(?!      -)", "", block)
        text = plan.with_(start, end, block)
        at = next(
            other["join"][0]
            for _, other in Text(text).joins
            if other["join"][1].strip() == f"{first} to {second}"
        )
        yield broken(f"no {how} for '{first}'", text, "groove-fits", at)
