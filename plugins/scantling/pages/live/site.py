"""What a site needs so that its plan pages answer a reader: scripts, the engine, data, the shopping trip."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path

from scantling.drawing import is_drawable
from scantling.pages.choices import Choices
from scantling.pages.finished import Finished, Page, SideFile
from scantling.pages.html import tag
from scantling.pages.live.choice import display_data
from scantling.pages.live.controls import from_file, my_shop, plan_controls
from scantling.pages.live.runtime import Runtime, find_runtime
from scantling.pages.live.script_words import in_language
from scantling.pages.live.turn import turn_block
from scantling.pages.live.viewer import find_viewer
from scantling.pages.words import Words
from scantling.plan import Choice
from scantling.report import Report
from scantling.shop import Shop
from scantling.source import SourceShop
from scantling.words import mark, say

WEB = Path(__file__).parent / "web"
ASSETS = "assets/scantling/live"
LIVE_STYLES = (f"{ASSETS}/live.css",)
"""Style sheets of the live parts, from the root of the site."""
LIVE_SCRIPTS = (f"{ASSETS}/live.js",)
"""Scripts of the live parts, from the root of the site; they load the rest when it is wanted."""
TRIP = "trip/index.md"
"""The page of the shopping trip, below the site's source."""
WORKER = "scantling-sw.js"
"""At the root of the site, since it may look after no more than the folder that it is in."""


def live_site(shop: SourceShop, plans: Mapping[str, str], choices: Choices) -> Finished:
    """Return the page of the shopping trip and all files that the live parts of a site share.

    Args:
        plans: title of each plan, by slug; "" for one that cannot be built.
    """
    runtime = find_runtime(choices.engine) if choices.engine else None
    if runtime is None or shop.shop is None:
        return Finished((), ())
    shop_file = SideFile(f"{choices.folder}/live-shop.json", _json(shop.data))
    meta = {**_META, "title": say(_TITLE), "description": say(_DESCRIPTION)}
    page = Page(TRIP, _trip(shop.shop, plans, choices), meta, in_nav=True)
    viewer = find_viewer() if choices.viewer else None
    return Finished((page,), (shop_file, *_files(runtime), *(_own(viewer) if viewer else ())))


def live_block(reports: list[Report], choice: Choice, up: str, choices: Choices) -> str:
    """Return what a plan page has for readers who want a size of their own; see `plan_controls`."""
    if not choices.engine:
        return ""
    return plan_controls(reports, choice, up=up, display=choices.display, engine=choices.engine)


def live_turn(report: Report, choices: Choices) -> str:
    """Return what turns a piece around in the place of its picture; see `turn_block`."""
    if not choices.engine or not choices.viewer or not is_drawable(report.fitted):
        return ""
    return turn_block(choices.viewer)


def live_plan(slug: str, data: object, words: Words, folder: str) -> SideFile:
    """Return what the engine needs of a plan, for the reader's browser."""
    return SideFile(f"{folder}/live.json", _json({"slug": slug, "data": data, "words": dict(words)}))


def _json(data: object) -> str:
    return json.dumps(data, ensure_ascii=False, separators=(",", ":"))


def _files(runtime: Runtime) -> Iterator[SideFile]:
    for path in sorted(WEB.iterdir()):
        if path.name == WORKER:
            yield SideFile(WORKER, path.read_text("utf-8").replace("@@VERSION@@", runtime.digest))
        else:
            yield SideFile(f"{ASSETS}/{path.name}", in_language(path.read_text("utf-8")))
    yield from _own(runtime)


def _own(runtime: Runtime) -> Iterator[SideFile]:
    """Yield what was fetched, in a folder that is called after its content."""
    for path in runtime.files():
        yield SideFile(f"{ASSETS}/{runtime.digest}/{path.name}", path.read_bytes())


_TITLE = mark("Shopping trip")
_DESCRIPTION = mark("Several plans on one list: what to buy for all of them, and how to cut it.")
_META = {
    "template": "scantling-catalog.html",
    "hide": ["toc", "navigation"],
    "search": {"exclude": True},
}
_INTRO = mark(
    "Put plans on the list from their own pages, each at its size. They are bought and cut as one here: "
    "boxes of screws are shared, and what falls off one board serves another plan. "
    "The list stays on this device."
)


def _trip(shop: Shop, plans: Mapping[str, str], choices: Choices) -> str:
    own = f"../{choices.folder}/"
    known = {slug: {"title": title, "at": f"{own}{slug}/"} for slug, title in plans.items() if title}
    head = tag("h2", say("On the list"), id="on-the-list", tabindex="-1")
    empty = tag(
        "p", say("Nothing yet. {link}.", link=tag("a", say("Choose a plan"), href=own)), data_trip_empty=True
    )
    row = tag("template", tag("li", _row()), data_trip_row=True)
    items = tag("ul", "", class_="sc-trip", data_trip_items=True)
    clear = tag("button", say("Empty the list"), type="button", data_trip_clear=True)
    status = (
        tag("p", "", class_="sc-live__fault", hidden=True, data_fault="")
        + tag("progress", "", max="4", value="0", aria_label=say("Getting ready"), hidden=True)
        + tag("p", "", role="status", aria_live="polite", class_="sc-live__say", data_live_say=True)
    )
    panel = my_shop(shop.stocks.values(), shop.wares.values(), shop=shop, display=choices.display)
    section = tag(
        "section",
        "".join(
            (head, empty, items, row, tag("p", clear, class_="sc-live__buttons"), status, *_parts(), panel)
        ),
        class_="sc-live",
        inert=True,
        aria_labelledby="on-the-list",
        data_live="trip",
        data_plans=_json(known),
        data_engine=choices.engine,
        data_shop=f"{own}live-shop.json",
        data_display=_json(display_data(choices.display)),
        data_search_exclude="true",
    )
    without = tag(
        "p", say("The shopping trip needs JavaScript."), class_="sc-live__without sc-without-script"
    )
    return f"# {say(_TITLE)}\n\n{say(_INTRO)}\n\n{section}{without}{from_file()}\n"


def _row() -> str:
    seen = tag("button", say("I have seen it"), type="button", data_trip_seen=True)
    changed = tag("div", "", data_changed=True) + tag("p", seen, class_="sc-live__buttons")
    return (
        tag("input", type="number", min="1", max="20", step="1", value="1")
        + tag("span", "×", aria_hidden="true")
        + tag("span", tag("a", "", href="#") + " " + tag("small", "", data_trip_label=True))
        + tag("b", "", class_="sc-money", data_trip_cost=True)
        + tag("button", say("Remove"), type="button", data_trip_remove=True)
        + tag("p", "", class_="sc-live__fault", hidden=True, data_fault="item")
        + tag("div", changed, class_="sc-live__changed", hidden=True, data_trip_changed=True)
    )


_PARTS = (
    ("trip-sum", mark("What it costs")),
    ("trip-materials", mark("Materials list")),
    ("trip-diagrams", mark("Cut diagrams")),
)


def _parts() -> Iterable[str]:
    for name, title in _PARTS:
        inner = tag("h2", say(title)) + tag("div", "", data_fragment=name)
        yield tag("div", inner, class_="sc-trip__part", hidden=True, data_trip_part=True)
