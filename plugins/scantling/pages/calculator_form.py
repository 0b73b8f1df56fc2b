"""The fields of a calculator's page, as a build writes them: hidden until the script that they need runs."""

from __future__ import annotations

import json

from scantling.calculators import MEANT, Ask, Calculator, run_example
from scantling.measure import Display, other_display
from scantling.pages.html import escape, tag
from scantling.pages.live.choice import display_data
from scantling.words import ENGLISH, mark, say, spoken

WITHOUT_SCRIPT = mark("With your own numbers this is worked out in your browser, which needs JavaScript.")
FROM_FILE = mark(
    "This page was opened as a file, and browsers do not let a file reckon. The worked example below is "
    "all here; for your own numbers open the site from a web server, or type this in a terminal:"
)

WORDY = 34
"""Letters that stand beside a field on a phone without becoming a column of single words."""

LONG = {"lengths", "rectangles", "prices", "sum"}
"""Kinds of answer that want a whole line."""

PRICED = {"money", "prices"}
"""Kinds of answer in which a sum of money stands."""


def calculator_form(
    calculator: Calculator, *, folder: str, engine: str, display: Display, currency: str
) -> str:
    """Return the fields, filled with the numbers that the page starts with.

    Args:
        currency: in which prices are typed.
        folder: where the plans stand on the site, which is where the shop's data lie.
        engine: the folder of the engine's files among the site's assets.
    """
    start, other = (_start(calculator, one, currency) for one in (display, other_display(display)))
    rows = "".join(_row(ask, start[ask.name], currency) for ask in calculator.asks)
    if calculator.has_lengths:
        rows += _units(display)
    buttons = (
        tag("button", say("Back to the example"), type="button", data_live_reset=True),
        tag("button", say("Copy a link to this answer"), type="button", data_live_copy=True),
    )
    status = (
        tag("p", "", class_="sc-live__fault", hidden=True, data_fault="")
        + tag("progress", "", max="4", value="0", aria_label=say("Getting ready"), hidden=True)
        + tag("p", "", role="status", aria_live="polite", class_="sc-live__say", data_live_say=True)
    )
    inner = (
        tag("h2", say("Your numbers"), id="your-numbers")
        + tag("div", rows, class_="sc-live__choices")
        + tag("p", "".join(buttons), class_="sc-live__buttons")
        + status
    )
    section = tag(
        "section",
        inner,
        class_="sc-live",
        inert=True,
        aria_labelledby="your-numbers",
        data_live="calculator",
        data_calculator=calculator.slug,
        data_engine=engine,
        data_shop=f"../../{folder}/live-shop.json",
        data_start=_json(start),
        data_other_start=_json(other),
        data_display=_json(display_data(display)),
        data_search_exclude="true",
    )
    without = tag("noscript", tag("p", say(WITHOUT_SCRIPT), class_="sc-live__without"))
    from_file = tag(
        "p",
        f"{say(FROM_FILE)} {terminal_command(calculator)}",
        class_="sc-live__without",
        hidden=True,
        data_live_file=True,
    )
    return section + tag("div", without + from_file, data_search_exclude="true")


def _start(calculator: Calculator, display: Display, currency: str) -> dict[str, str]:
    """Return what stands in the fields of the worked example."""
    return dict(run_example(calculator.slug, display, currency).texts)


def terminal_command(calculator: Calculator) -> str:
    """Return how the calculator is asked in a terminal, in the language that is spoken, as HTML.

    No line ends inside a word of it: hyphens are no place to break there.
    """
    words = ["scantling calc", calculator.slug]
    if spoken() is not ENGLISH:
        words.append(f"--language {spoken().code}")
    return tag("code", " ".join(tag("span", escape(word)) for word in words), class_="sc-term")


def _json(data: object) -> str:
    return json.dumps(data, ensure_ascii=False, separators=(",", ":"))


def _row(ask: Ask, text: str, currency: str) -> str:
    field = f"calc-{ask.name}"
    hint = say(ask.help) if ask.help else say("may be left open") if ask.optional else ""
    if ask.kind in LONG:
        hint = "; ".join(part for part in (hint, say(MEANT[ask.kind])) if part)
    if ask.kind in PRICED:
        hint = "; ".join(part for part in (say("in {currency}", currency=currency), hint) if part)
    label = tag("label", escape(say(ask.label)) + (tag("small", escape(hint)) if hint else ""), for_=field)
    shared = {
        "id": field,
        "data_control": f"input {ask.name}",
        "data_name": ask.name,
        "aria_describedby": f"{field}-fault",
    }
    if ask.choices:
        options = "".join(
            tag("option", escape(ask.shown(one)), value=one, selected=one == text) for one in ask.choices
        )
        control = tag("select", options, **shared)
    else:
        control = tag(
            "input",
            type="text",
            value=text,
            autocomplete="off",
            spellcheck="false",
            enterkeyhint="done",
            **shared,
        )
    fault = tag(
        "p", "", id=f"{field}-fault", class_="sc-live__fault", hidden=True, data_fault=f"input {ask.name}"
    )
    wordy = len(hint) > WORDY or len(say(ask.label)) > WORDY
    wide = " sc-live__row--list" if ask.kind in LONG else " sc-live__row--told" if wordy else ""
    return tag("div", label + control + fault, class_=f"sc-live__row{wide}")


def _units(display: Display) -> str:
    label = tag("label", say("Show lengths in"), for_="calc-units")
    options = "".join(
        tag("option", words, value=system, selected=system == display.system)
        for system, words in (("in", say("inches")), ("mm", say("millimetres")))
    )
    control = tag("select", options, id="calc-units", data_name="units")
    return tag("div", label + control, class_="sc-live__row")
