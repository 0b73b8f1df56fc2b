"""Dangers of which nothing is said."""

from __future__ import annotations

import re
from collections.abc import Iterator

from tests.checks.breaking.broken import Broken, Sizes, Way, broken
from tests.checks.text import Text


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
