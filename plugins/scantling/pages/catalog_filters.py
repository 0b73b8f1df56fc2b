"""The form that narrows the catalog down: choices with their counts, made here; a script only compares."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Iterator, Sequence
from fractions import Fraction
from pathlib import Path
from typing import NamedTuple

from scantling.measure import Display, Length, Money, other_display, write_round_money
from scantling.pages.finding import THOUSAND, Finding, time_order
from scantling.pages.html import escape, tag
from scantling.pages.live.script_words import known_words
from scantling.plan import SKILLS
from scantling.words import counted, mark, say

_SCRIPT = Path(__file__).parent / "notebook/assets/scantling/finding.js"
FEWEST = 2
"""Plans from which on there is something to narrow down."""
_CHOSEN = {"room", "skill"}
"""Groups whose words the site knows: told in its language, and kept in the address as a plan writes them."""
_BUDGETS = (10, 25, 50, 75, 100, 150, 200, 250, 300, 400, 500, 750, 1000, 1500, 2000, 3000)
_INCHES = (8, 12, 16, 18, 20, 24, 30, 36, 42, 48, 60, 72, 84, 96)
_MILLIMETRES = (200, 300, 400, 450, 500, 600, 750, 900, 1050, 1200, 1500, 1800, 2100, 2400)
_ORDERS = (
    ("", mark("as listed")),
    ("title", mark("name")),
    ("cost", mark("cost, least first")),
    ("width", mark("width, narrowest first")),
    ("new", mark("newest revision")),
)


def filters(findings: Sequence[Finding], display: Display, currency: str) -> str:
    """Return the form, hidden until a script wakes it; nothing where there is nothing to narrow down."""
    if len(findings) < FEWEST:
        return ""
    form = "".join((*_groups(findings), *_limits(findings, display, currency), _select("order", _ORDERS)))
    clear = tag("button", say("Show every plan"), type="button", data_clear=True)
    told = tag("p", _plans(len(findings)), role="status", aria_live="polite", data_say=True)
    return tag(
        "form",
        tag("div", form, class_="sc-find__row") + tag("div", told + clear, class_="sc-find__row"),
        class_="sc-find",
        hidden=True,
        autocomplete="off",
        aria_label=say("Narrow the plans down"),
        data_find=True,
        data_words=known_words(_SCRIPT.read_text("utf-8")),
    )


def card_facts(found: Finding) -> dict[str, object]:
    """Return the attributes of a card by which the script compares it."""
    several = {
        "room": [found.room],
        "skill": [found.skill],
        "time": [found.time],
        "material": found.materials,
        "tag": found.tags,
    }
    facts: dict[str, object] = {
        f"data_{name}": _json([word for word in words if word]) for name, words in several.items()
    }
    return facts | {
        "data_tools": _json(found.tools),
        "data_title": found.title,
        "data_cost": found.cents,
        "data_width": found.width,
        "data_least_width": found.least_width,
        "data_sheets": found.sheets,
        "data_boards": found.boards,
        "data_new": found.revised,
    }


def _json(words: object) -> str:
    return json.dumps(words, ensure_ascii=False, separators=(",", ":"))


def _plans(count: int) -> str:
    return counted("{count} plan", "{count} plans", count)


def _groups(findings: Sequence[Finding]) -> Iterator[str]:
    yield _group("room", say("Room"), _counted((found.room,) for found in findings))
    yield _group("skill", say("Skill"), _counted(((found.skill,) for found in findings), _practice))
    yield _group("time", say("Build time"), _counted(((found.time,) for found in findings), time_order))
    yield _group("material", say("Made of"), _counted(found.materials for found in findings))
    tools = _counted(dict.fromkeys(name for tool in found.tools for name in tool) for found in findings)
    yield _group("have", say("Tools that I have"), tools, ticked=True)
    yield _group("tag", say("Tags"), _counted(found.tags for found in findings))


def _counted(words: Iterable[Iterable[str]], order: Callable[[str], object] = str.casefold) -> dict[str, int]:
    """Return each word with the number of plans that have it, in order."""
    counts: dict[str, int] = {}
    for one in words:
        for word in one:
            if word:
                counts[word] = counts.get(word, 0) + 1
    return {word: counts[word] for word in sorted(counts, key=lambda word: (order(word), word))}


def _practice(skill: str) -> str:
    """Return what puts the least practice first."""
    return str(SKILLS.index(skill)) if skill in SKILLS else skill


def _group(name: str, title: str, counts: dict[str, int], *, ticked: bool = False) -> str:
    """Return the choices of one kind, behind their title; nothing where there is no choice."""
    if not counts:
        return ""
    inner = "".join(_choice(name, word, count, ticked=ticked) for word, count in counts.items())
    if ticked:
        inner += tag("button", say("All"), type="button", data_all=name)
        inner += tag("button", say("None"), type="button", data_none=name)
    legend = tag("legend", escape(title))
    head = tag("summary", escape(title) + " " + tag("b", "", data_chosen=name))
    return tag("details", head + tag("fieldset", legend + inner), class_="sc-find__group")


def _choice(name: str, word: str, count: int, *, ticked: bool) -> str:
    box = tag("input", type="checkbox", name=name, value=word, checked=ticked)
    shown = say(word) if name in _CHOSEN else word
    return tag("label", box + tag("span", escape(shown)) + " " + tag("small", str(count)))


def _limits(findings: Sequence[Finding], display: Display, currency: str) -> Iterator[str]:
    costs = [found.cents for found in findings]
    budgets = [Limit(str(step), _round(step, currency), step * 100) for step in _BUDGETS]
    yield _limit("budget", say("Budget"), "cost", _telling(budgets, costs))
    widths = [found.least_width for found in findings if found.least_width is not None]
    yield _limit("width", say("Space this wide"), "least-width", _telling(_widths(display), widths))
    sheets = [found.sheets for found in findings]
    several = [
        Limit("0", say("none"), 0),
        *(Limit(str(most), say("{count} at most", count=most), most) for most in (1, 2, 3)),
    ]
    yield _limit("sheets", say("Sheets to buy"), "sheets", _telling(several, sheets))
    boards = [found.boards for found in findings]
    few = [
        Limit("0", say("none"), 0),
        *(Limit(str(most), say("{count} at most", count=most), most) for most in (3, 6, 12)),
    ]
    yield _limit("boards", say("Boards to buy"), "boards", _telling(few, boards))


def _round(sum_: int, currency: str) -> str:
    return write_round_money(Money(sum_ * 100), currency)


class Limit(NamedTuple):
    """The most that a reader wants of something."""

    key: str
    """What the address says."""
    words: str
    most: int
    """The number that is compared."""
    other: str | None = None
    """Likewise for who measures otherwise."""


def _widths(display: Display) -> list[Limit]:
    if display.system == "mm":
        lengths = [(f"{step}mm", Length.of_mm(step)) for step in _MILLIMETRES]
    else:
        lengths = [(f"{step}in", Length.of_inches(step)) for step in _INCHES]
    other = other_display(display)
    return [
        Limit(key, display.length(long), int(Fraction(long.inches) * THOUSAND), other.length(long))
        for key, long in lengths
    ]


def _telling(limits: Sequence[Limit], numbers: Sequence[int]) -> list[tuple[Limit, int]]:
    """Return the limits that let some plans through and not all, each with how many."""
    counts = [(limit, sum(number <= limit.most for number in numbers)) for limit in limits]
    return [(limit, count) for limit, count in counts if 0 < count < len(numbers)]


def _limit(name: str, title: str, fact: str, limits: Sequence[tuple[Limit, int]]) -> str:
    if not limits:
        return ""
    options = tag("option", say("any"), value="")
    options += "".join(
        tag(
            "option",
            escape(f"{one.words} ({count})"),
            value=one.key,
            data_words=one.words,
            data_most=one.most,
            data_other=one.other,
        )
        for one, count in limits
    )
    select = tag("select", options, name=name, data_limit=fact)
    return tag("label", tag("span", escape(title)) + select, class_="sc-find__limit")


def _select(name: str, choices: Sequence[tuple[str, str]]) -> str:
    options = "".join(tag("option", escape(say(words)), value=key) for key, words in choices)
    select = tag("select", options, name=name)
    return tag("label", tag("span", say("Order by")) + select, class_="sc-find__limit")
