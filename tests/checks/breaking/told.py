"""Numbers, keys, steps and pictures that are told wrongly or not at all."""

from __future__ import annotations

import re
from collections.abc import Iterator

from tests.checks.breaking.broken import Broken, Sizes, broken, is_optional
from tests.checks.text import Text


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
        yield broken(f"17 of '{name}'", text, "number-in-prose", body + 5, sweeping=is_optional(plan, name))


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
