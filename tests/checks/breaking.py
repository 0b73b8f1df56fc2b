"""Break a demonstration plan in one place, and say what a check should find there.

Each function takes a plan's text and yields broken texts, each with the code, line and column of what is
wrong with it. The places are looked up in the text alone, without the code that is tested.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from tests.checks.text import Step, Text


@dataclass(frozen=True)
class Broken:
    """A plan with one thing wrong."""

    how: str
    text: str
    code: str
    line: int
    column: int
    sweeping: bool = False
    """True where it shows only at another size, or over all of them."""


def broken(how: str, text: str, code: str, offset: int, *, sweeping: bool = False) -> Broken:
    """Return a broken plan, its place given as an offset into the broken text."""
    return Broken(how, text, code, *Text(text).at(offset), sweeping)


@dataclass(frozen=True)
class Sizes:
    """What the names of the whole plan come to at its usual size, in inches."""

    inches: Mapping[str, Fraction]

    def __call__(self, name: str) -> Fraction | None:
        return self.inches.get(name)

    def is_alone(self, size: Fraction) -> bool:
        """Return whether just one name has that size."""
        return list(self.inches.values()).count(size) == 1


Way = Callable[[Text, Sizes], Iterator[Broken]]


def _without(plan: Text, step: Step, key: str, name: str) -> str:
    """Return the text without one item of a step's `uses:` or `needs:`; the line goes with its last item."""
    items = step.listed(key)
    at, text = step.value(key)
    kept = [f"{count} {other}".strip() for _, count, other in items if other != name]
    if kept:
        return plan.with_(at, at + len(text), ", ".join(kept))
    return plan.with_(at - len(key) - 2, at + len(text) + 1, "")


def _is_optional(plan: Text, name: str) -> bool:
    """Return whether a part is there only at some sizes."""
    return plan.part_value(name, "only if") is not None


def part_never_used(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A part is cut, and no step uses it."""
    for name in plan.parts:
        steps = [step for step in plan.steps if any(used == name for _, _, used in step.listed("uses"))]
        if len(steps) == 1:
            text = _without(plan, steps[0], "uses", name)
            at = plan.parts[name][0]
            yield broken(f"'{name}' unused", text, "parts-used", at, sweeping=_is_optional(plan, name))


def part_used_too_often(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A step uses more of a part than are cut."""
    for step in plan.steps:
        for at, count, name in step.listed("uses"):
            if count.isdigit():
                text = plan.with_(at, at + len(count), str(int(count) + 1))
                at = plan.parts[name][0]
                yield broken(f"one more '{name}'", text, "parts-used", at, sweeping=_is_optional(plan, name))


def need_counted_wrong(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """The last step that takes some screws takes two too many."""
    last: dict[str, tuple[int, str]] = {}
    for step in plan.steps:
        for at, count, name in step.listed("needs"):
            last[name] = at, count
    for name, (at, count) in last.items():
        if count.isdigit():
            text = plan.with_(at, at + len(count), str(int(count) + 2))
            yield broken(f"two more '{name}'", text, "hardware-used", at)


def need_misspelled(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A step needs something that is not on the materials list."""
    for step in plan.steps:
        for at, count, name in step.listed("needs"):
            begin = at + (len(count) + 1 if count else 0)
            text = plan.with_(begin, begin + len(name), name + "x")
            yield broken(f"'{name}x' needed", text, "hardware-used", begin, sweeping=step.is_optional)


def hardware_never_used(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Something is bought that no step uses."""
    start, _ = plan.section("hardware")
    for extra in ("knob", "foot glide"):
        if extra not in plan.text:
            text = plan.with_(start, start, f"  {extra}: 4\n")
            yield broken(f"'{extra}' bought", text, "hardware-used", start + 2)


def tool_not_listed(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A step takes a tool that the plan's list has not."""
    for step in plan.steps:
        value = step.value("tools")
        if value is not None:
            at, words = value
            text = plan.with_(at + len(words), at + len(words), ", spokeshave")
            yield broken("a spokeshave", text, "tools-listed", at)


def clamps_forgotten(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A step glues without clamps, screws or brads."""
    for step in plan.steps:
        glue = [(at, name) for at, _, name in step.listed("needs") if name.endswith("glue")]
        tools = step.value("tools")
        only_glue = glue and not any(
            re.search(r"screw|brad|nail", name) for _, _, name in step.listed("needs")
        )
        if only_glue and tools and "clamps" in tools[1] and tools[0] > glue[0][0]:
            at, words = tools
            kept = ", ".join(tool for tool in words.split(", ") if tool != "clamps") or "square"
            text = plan.with_(at, at + len(words), kept)
            yield broken("no clamps", text, "tools-needed", glue[0][0], sweeping=step.is_optional)


def drill_forgotten(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A step drives screws without a drill."""
    for step in plan.steps:
        screws = [
            at + (len(count) + 1 if count else 0)
            for at, count, name in step.listed("needs")
            if "screw" in name
        ]
        tools = step.value("tools")
        if screws and tools and "drill" in tools[1] and tools[0] > screws[0]:
            at, words = tools
            kept = ", ".join(tool for tool in words.split(", ") if "drill" not in tool) or "square"
            text = plan.with_(at, at + len(words), kept)
            yield broken("no drill", text, "tools-needed", screws[0], sweeping=step.is_optional)


def glue_forgotten(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """No step has glue at hand, though a join takes it."""
    text = re.sub(r"(?m)^(needs: .*?)(?:, )?\b(?:wood|waterproof) glue\b(?:, )?", r"\1", plan.text)
    text = re.sub(r"(?m)^needs: *\n", "", text)
    shorter = Text(text)
    for _, values in shorter.joins:
        uses = {name for step in shorter.steps for _, _, name in step.listed("uses")}
        pair = values["join"][1].split(" to ")
        if values.get("glue", (0, ""))[1].strip() == "yes" and set(pair) <= uses and "hardware" in text:
            yield broken(f"no glue for {pair}", text, "glue-at-hand", values["join"][0])
            return


def cut_after_use(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """The step that cuts a part comes after the one that uses it."""
    steps = plan.steps
    for index, step in enumerate(steps):
        later = [other for other in steps[index + 1 :] if other.listed("uses")]
        cut = [
            found[1]
            for found in re.finditer(r"\bCut (?:the )?\{([\w ]+)\.count\}", step.text)
            if not step.listed("uses")
        ]
        for name in cut:
            users = [other for other in later if any(used == name for _, _, used in other.listed("uses"))]
            elsewhere = [other for other in steps if other is not step and f"{{{name}." in other.text]
            if users and not elsewhere:
                body = step.text.rstrip("\n") + "\n"
                moved = plan.text[: step.start] + plan.text[step.end :].rstrip("\n") + "\n\n" + body
                again = next(
                    (at, count)
                    for other in Text(moved).steps
                    for at, count, used in other.listed("uses")
                    if used == name
                )
                at = again[0] + (len(again[1]) + 1 if again[1] else 0)
                yield broken(f"'{name}' cut last", moved, "made-first", at, sweeping=_is_optional(plan, name))


def screws_too_early(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """The first step drives screws that hold parts of a later one."""
    steps = plan.steps
    seen: set[str] = set()
    for step in steps[1:]:
        for _, count, name in step.listed("needs"):
            if (
                name in seen
                or step.is_optional
                or "screw" not in name
                or not count
                or steps[0].value("needs")
            ):
                continue
            seen.add(name)
            shorter = Text(_without(plan, step, "needs", name))
            line_end = shorter.text.index("\n", shorter.steps[0].start) + 1
            text = shorter.with_(line_end, line_end, f"needs: {count} {name}\n")
            yield broken(f"'{name}' first", text, "fastener-early", line_end + len(f"needs: {count} "))


def finished_too_early(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """The finish goes on before anything is glued."""
    steps = plan.steps
    finish = [
        s for s in steps if any(re.search(r"varnish|\boil\b|paint", name) for _, _, name in s.listed("needs"))
    ]
    if not finish:
        return
    moved = plan.text[: finish[0].start] + plan.text[finish[0].end :].rstrip("\n") + "\n"
    at = Text(moved).steps[1].start
    text = moved[:at] + finish[0].text.rstrip("\n") + "\n\n" + moved[at:]
    order = [{name for _, _, name in step.listed("uses")} for step in Text(text).steps]
    for _, values in Text(text).joins:
        pair = set(values["join"][1].strip().split(" to "))
        optional = any(_is_optional(plan, name) for name in pair)
        met = pair <= set().union(*order[2:]) and not pair & set().union(*order[:2])
        if "yes" in values.get("glue", (0, ""))[1] and met and not optional:
            at = values["join"][0]
            yield broken("finished first", text, "finish-order", at, sweeping=finish[0].is_optional)
            return


def panel_forgotten(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A panel that stands in grooves on all sides comes after they are closed."""
    for name in plan.parts:
        holders = [values for _, values in plan.joins if values["join"][1].startswith(f"{name} to ")]
        if sum("groove" in values["with"][1] for values in holders) < 2:
            continue
        step = next(one for one in plan.steps if any(used == name for _, _, used in one.listed("uses")))
        shorter = Text(_without(plan, step, "uses", name)).text.rstrip("\n")
        text = f"{shorter}\n\n## Push it in\nuses: {name}\n\nPush it in.\n"
        yield broken(f"'{name}' last", text, "shut-out", text.rindex(f"uses: {name}") + 6)


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


def saw_forgotten(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Boards are ripped to a width that no yard sells, and nothing rips."""
    for name in plan.parts:
        stock, width = plan.part_value(name, "from"), plan.part_value(name, "width")
        if (
            stock
            and width
            and re.fullmatch(r"[12]x\d+(?: cedar)?", stock[1])
            and not _is_optional(plan, name)
        ):
            text = re.sub(r"(?:table|circular|track|band|hand|rip) saw|plane\b", "mitre saw", plan.text)
            at = Text(text).part_value(name, "width")[0]
            yield broken(f"nothing rips '{name}'", text, "tools-needed", at)
            return


def boards_all_alike(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Nothing is said of pickets that are not all of one width."""
    said = r"\b(?:var(?:y|ies)|equally wide|sort|uneven|share out|narrower|true width|widest|not all alike)\b"
    for name in plan.parts:
        stock = plan.part_value(name, "from")
        full = stock and stock[1] == "cedar picket" and not plan.part_value(name, "width")
        if full and not re.search(rf"(?m)^  [\w ]*\bgap\b[\w ]*:.*\b{name}\.width", plan.text):
            text = re.sub(said, "nice", plan.text)
            at = Text(text).parts[name][0]
            yield broken(
                f"'{name}' all alike", text, "allow-variation", at, sweeping=_is_optional(plan, name)
            )


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
            or _is_optional(plan, name)
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


def _no_caution(plan: Text, words: str) -> str:
    """Return the text without any caution that holds one of the words."""
    speaks = re.compile(words, re.IGNORECASE)
    kept = [
        line
        for line in plan.text.split("\n")
        if not (speaks.search(line) and re.match(r"caution:|  - (?!\{)", line))
    ]
    text = "\n".join(kept)
    return re.sub(r"(?m)^caution:\n(?=\S|\n)", "", text)


def _tool_caution(tool: str, words: str, code: str) -> Way:
    def way(plan: Text, size_of: Sizes) -> Iterator[Broken]:
        text = _no_caution(plan, words)
        for step in Text(text).steps:
            tools = step.value("tools")
            if tools and tool in tools[1] and not step.is_optional:
                yield broken(f"nothing on the {tool}", text, code, step.title_at)
                return

    return way


router_unsaid = _tool_caution("router", r"router|\bbit\b", "caution-router")
nailer_unsaid = _tool_caution("nailer", r"nailer", "caution-nailer")
saw_unsaid = _tool_caution(
    "table saw", r"riving knife|push (?:block|stick)|guard|manual of each machine", "caution-table-saw"
)


def rags_unsaid(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Oil is wiped on, and nobody is told what rags do."""
    text = _no_caution(plan, r"\brags?\b")
    for step in Text(text).steps:
        if any(re.search(r"\boil\b|wiping varnish", name) for _, _, name in step.listed("needs")):
            yield broken("nothing on rags", text, "caution-oily-rags", step.title_at)
            return


def dust_unsaid(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Cedar is sawn, and nobody is told of its dust."""
    if re.search(r"(?m)^    from: .*cedar", plan.text):
        text = _no_caution(plan, r"\bdust\b")
        yield broken("nothing on dust", text, "caution-irritant-dust", Text(text).top("title"))


def children_unsaid(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """It is for children, and nobody is told of small parts and openings."""
    if re.search(r"(?m)^room: child's room", plan.text):
        text = _no_caution(plan, r"child")
        yield broken("nothing on children", text, "caution-children", Text(text).top("title"))


def number_typed(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A number is typed that the plan does not know."""
    for step in plan.steps:
        body = step.start + step.text.find("\n\n") + 2
        for found in re.finditer(r"\{[\w ]+\.(?:length|width|thick)\}", plan.text[body : step.end]):
            at = body + found.start()
            text = plan.with_(at, body + found.end(), "41 7/64 in")
            yield broken(f"41 7/64 in for {found[0]}", text, "number-in-prose", at)


def number_that_stays(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A number is typed that is right at the usual size and wrong at another."""
    for step in plan.steps:
        body = step.start + step.text.find("\n\n") + 2
        for found in re.finditer(r"\{([\w ]+\.length)\}", plan.text[body : step.end]):
            size = size_of(found[1])
            if (
                size is not None
                and size_of.is_alone(size)
                and size.denominator in {2, 4, 8, 16}
                and size > 12
            ):
                at = body + found.start()
                words = f"{size // 1} {size % 1} in"
                text = plan.with_(at, body + found.end(), words)
                yield broken(f"{words} for {found[0]}", text, "number-in-prose", at, sweeping=True)


def count_typed(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """The words count seventeen of a part."""
    steps = [step for step in plan.steps if "\n\n" in step.text]
    for name in list(plan.parts)[:2]:
        body = steps[0].start + steps[0].text.find("\n\n") + 2
        text = plan.with_(body, body, f"Take 17 {name}s. ")
        yield broken(f"17 of '{name}'", text, "number-in-prose", body + 5, sweeping=_is_optional(plan, name))


def key_missing(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Summary, tags, skill or tools are left out."""
    for key in ("summary", "tags", "skill", "tools"):
        text = re.sub(rf"(?m)^{key}:[^\n]*\n(?:  [^\n]*\n)*", "", plan.text, count=1)
        yield broken(f"no {key}", text, f"{key}-missing", Text(text).top("title"))


def steps_missing(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """There are no steps at all."""
    text = plan.text[: plan.steps[0].start]
    yield broken("no steps", text, "steps-missing", Text(text).top("title"))


def picture_untold(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A step shows a photo and does not tell what is on it."""
    step = plan.steps[0]
    at = plan.text.index("\n", step.start) + 1
    text = plan.with_(at, at, "picture: legs.jpg\n")
    yield broken("no alt text", text, "alt-missing", at + len("picture: "))


def accept_unknown(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A check is silenced that does not exist."""
    text = plan.with_(4, 4, "accept: {shelf-sagg: books only}\n")
    yield broken("accepts nothing known", text, "accept-unknown", text.index("shelf-sagg"))


def accept_unused(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A check is silenced that finds nothing anyway."""
    text = plan.with_(4, 4, "accept: {wood-movement: it is plywood}\n")
    yield broken(
        "accepts what is not there", text, "accept-unused", text.index("wood-movement"), sweeping=True
    )


WAYS: tuple[Way, ...] = (
    part_never_used,
    part_used_too_often,
    need_counted_wrong,
    need_misspelled,
    hardware_never_used,
    tool_not_listed,
    clamps_forgotten,
    drill_forgotten,
    glue_forgotten,
    cut_after_use,
    screws_too_early,
    finished_too_early,
    panel_forgotten,
    fastener_too_long,
    fastener_too_short,
    holes_at_the_edge,
    holes_beyond_the_edge,
    saw_forgotten,
    boards_all_alike,
    shelves_far_apart,
    shelf_overloaded,
    wrong_height,
    anchor_forgotten,
    grain_across,
    nominal_groove,
    groove_too_deep,
    groove_through,
    groove_forgotten,
    router_unsaid,
    nailer_unsaid,
    saw_unsaid,
    rags_unsaid,
    dust_unsaid,
    children_unsaid,
    number_typed,
    number_that_stays,
    count_typed,
    key_missing,
    steps_missing,
    picture_untold,
    accept_unknown,
    accept_unused,
)
"""Every way to break a plan."""
