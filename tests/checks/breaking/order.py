"""Steps in the wrong order: cut, screwed, closed or painted too early or too late."""

from __future__ import annotations

import re
from collections.abc import Iterator

from tests.checks.breaking.broken import Broken, Sizes, broken, is_optional, without
from tests.checks.text import Text


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
                yield broken(f"'{name}' cut last", moved, "made-first", at, sweeping=is_optional(plan, name))


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
            shorter = Text(without(plan, step, "needs", name))
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
        optional = any(is_optional(plan, name) for name in pair)
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
        shorter = Text(without(plan, step, "uses", name)).text.rstrip("\n")
        text = f"{shorter}\n\n## Push it in\nuses: {name}\n\nPush it in.\n"
        yield broken(f"'{name}' last", text, "shut-out", text.rindex(f"uses: {name}") + 6)
