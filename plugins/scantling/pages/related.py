"""Plans like a plan, for the foot of its page: by the tags, the room and the materials that they share."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from scantling.measure import Money, write_money
from scantling.pages.finding import Finding
from scantling.pages.finished import Finished, Page
from scantling.pages.held import held
from scantling.pages.html import escape, tag
from scantling.words import mark, say

MOST = 4
TITLE = mark("Plans like this one")
_TAG, _ROOM, _MATERIAL = 3, 2, 1
"""How much a shared tag, the same room and a shared kind of material weigh."""


def related(findings: Sequence[Finding]) -> dict[str, tuple[Finding, ...]]:
    """Return for each plan, by its slug, the plans that share most with it; equals by their titles."""
    by_word: dict[tuple[str, str], list[Finding]] = {}
    for found in findings:
        for word in _words(found):
            by_word.setdefault(word, []).append(found)
    return {found.slug: tuple(_nearest(found, by_word)) for found in findings}


def _words(found: Finding) -> Iterator[tuple[str, str]]:
    """Yield what brings plans together; material alone does not, since nearly all are made of lumber."""
    yield from (("tag", word.casefold()) for word in dict.fromkeys(found.tags))
    if found.room:
        yield "room", found.room.casefold()


def _nearest(found: Finding, by_word: Mapping[tuple[str, str], Sequence[Finding]]) -> list[Finding]:
    shared: dict[str, int] = {}
    others: dict[str, Finding] = {}
    for word in _words(found):
        for other in by_word[word]:
            if other.slug != found.slug:
                others[other.slug] = other
                shared[other.slug] = shared.get(other.slug, 0) + (_TAG if word[0] == "tag" else _ROOM)
    for slug, other in others.items():
        shared[slug] += _MATERIAL * sum(name in found.materials for name in other.materials)
    order = sorted(others, key=lambda slug: (-shared[slug], others[slug].title, slug))
    return [others[slug] for slug in order[:MOST]]


def with_related(finished: Finished, like: Sequence[Finding], currency: str) -> Finished:
    """Return a plan's pages with links to plans like it at the foot of each."""
    if not like:
        return finished
    return replace(finished, pages=tuple(_with_foot(page, like, currency) for page in finished.pages))


def _with_foot(page: Page, like: Sequence[Finding], currency: str) -> Page:
    up = "../../" if page.meta.get("canonical") else "../"
    links = "".join(tag("li", _link(found, up, currency)) for found in like)
    block = tag("section", tag("ul", links, class_="sc-related"), data_search_exclude="true")
    return replace(page, markdown=f"{page.markdown}\n## {say(TITLE)}\n\n{block}\n")


def _link(found: Finding, up: str, currency: str) -> str:
    facts = (write_money(Money(found.cents), currency), say(found.room), say(found.skill), found.time)
    small = tag("small", held(escape(" · ".join(fact for fact in facts if fact))))
    return tag("a", escape(found.title), href=f"{up}{found.slug}/") + small
