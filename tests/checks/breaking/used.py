"""Parts, hardware and tools that are used too often, too seldom or not at all."""

from __future__ import annotations

import re
from collections.abc import Iterator

from tests.checks.breaking.broken import Broken, Sizes, broken, is_optional, without
from tests.checks.text import Text


def part_never_used(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A part is cut, and no step uses it."""
    for name in plan.parts:
        steps = [step for step in plan.steps if any(used == name for _, _, used in step.listed("uses"))]
        if len(steps) == 1:
            text = without(plan, steps[0], "uses", name)
            at = plan.parts[name][0]
            yield broken(f"'{name}' unused", text, "parts-used", at, sweeping=is_optional(plan, name))


def part_used_too_often(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """A step uses more of a part than are cut."""
    for step in plan.steps:
        for at, count, name in step.listed("uses"):
            if count.isdigit():
                text = plan.with_(at, at + len(count), str(int(count) + 1))
                at = plan.parts[name][0]
                yield broken(f"one more '{name}'", text, "parts-used", at, sweeping=is_optional(plan, name))


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


def saw_forgotten(plan: Text, size_of: Sizes) -> Iterator[Broken]:
    """Boards are ripped to a width that no yard sells, and nothing rips."""
    for name in plan.parts:
        stock, width = plan.part_value(name, "from"), plan.part_value(name, "width")
        if stock and width and re.fullmatch(r"[12]x\d+(?: cedar)?", stock[1]) and not is_optional(plan, name):
            text = re.sub(r"(?:table|circular|track|band|hand|rip) saw|plane\b", "mitre saw", plan.text)
            at = Text(text).part_value(name, "width")[0]
            yield broken(f"nothing rips '{name}'", text, "tools-needed", at)
            return
