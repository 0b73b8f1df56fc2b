"""The controls of a plan page, as a build writes them: hidden until the script that they need runs."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator

from scantling.measure import Display, Money, hold, plain_money
from scantling.pages.html import escape, tag
from scantling.pages.live.choice import display_data, position_of, positions, show, whole_choice
from scantling.pages.live.my_shop import FRACTIONS
from scantling.pages.sections import SECTIONS
from scantling.plan import Choice, Option, Plan, Size
from scantling.report import Report
from scantling.shop import Sale, Shop, Stock, Ware
from scantling.words import mark, say

WITHOUT_SCRIPT = mark("Other sizes than those above are worked out in your browser, which needs JavaScript.")
FROM_FILE = mark(
    "This page was opened as a file, and browsers do not let a file work out other sizes. "
    "The sizes above are all here; for any other, open the site from a web server."
)


def plan_controls(
    reports: list[Report],
    choice: Choice,
    *,
    up: str,
    display: Display,
    engine: str,
) -> str:
    """Return the controls of a plan page.

    Args:
        reports: the plan at every offered size: what it may take from the shop.
        choice: where the page starts.
        up: the way from the page to the plan's own folder.
        engine: the folder of the engine's files among the site's assets.
    """
    plan, shop = reports[0].fitted.plan, reports[0].shop
    start = whole_choice(plan, choice)
    rows = [_size(number, size, start, display) for number, size in enumerate(plan.sizes.values())]
    rows += [_option(number, option, start) for number, option in enumerate(plan.options.values())]
    form = tag("div", "".join(rows), class_="sc-live__choices") + _buttons(up)
    settings = my_shop(*_of_plan(plan, shop, reports), shop=shop, display=display)
    inner = tag("h2", say("Make it fit"), id="make-it-fit") + form + _status() + settings
    section = tag(
        "section",
        inner,
        class_="sc-live",
        inert=True,
        aria_labelledby="make-it-fit",
        data_live="plan",
        data_slug=plan.slug,
        data_title=" ".join(plan.title.split()),
        data_up=up,
        data_revised=plan.last_change or None,
        data_engine=engine,
        data_start=_json(
            {**{name: show(value, Display()) for name, value in choice.sizes.items()}, **choice.options}
        ),
        data_display=_json(display_data(display)),
        data_sections=_json({name: say(title) for name, title in SECTIONS}),
        data_search_exclude="true",
    )
    without = tag("p", say(WITHOUT_SCRIPT), class_="sc-live__without sc-without-script") + from_file()
    return section + tag("div", without, data_search_exclude="true")


def from_file() -> str:
    """Return what a page says where it was opened as a file; hidden until the script knows."""
    return tag("p", say(FROM_FILE), class_="sc-live__without", hidden=True, data_live_file=True)


def _json(data: object) -> str:
    return json.dumps(data, ensure_ascii=False, separators=(",", ":"))


def _size(number: int, size: Size, start: Choice, display: Display) -> str:
    control, field = f"size {size.name}", f"live-size-{number}"
    places = positions(size)
    value = start.sizes[size.name]
    meaning = tag("small", escape(size.meaning)) if size.meaning else ""
    label = tag("label", escape(_capital(size.name)) + meaning, for_=field)
    if size.least == size.most:
        return tag("p", label + tag("b", escape(show(value, display))), class_="sc-live__row")
    text = tag(
        "input",
        type="text",
        id=field,
        value=show(value, display),
        autocomplete="off",
        spellcheck="false",
        enterkeyhint="done",
        aria_describedby=f"{field}-range {field}-fault",
        data_control=control,
        data_name=size.name,
    )
    slider = tag(
        "input",
        type="range",
        min="0",
        max=str(len(places) - 1),
        value=str(position_of(value, places)),
        aria_label=say("{size}, in steps", size=size.name),
        aria_valuetext=show(value, display),
        data_slider=size.name,
        data_values=_json([show(place, Display()) for place in places]),
    )
    ends = say("{least} to {most}", least=show(size.least, display), most=show(size.most, display))
    span = tag("small", escape(hold(ends)), id=f"{field}-range", data_range=size.name)
    return tag("div", label + text + slider + span + _fault(control, field), class_="sc-live__row")


def _option(number: int, option: Option, start: Choice) -> str:
    control, field = f"option {option.name}", f"live-option-{number}"
    choices = []
    for word, meaning in option.choices.items():
        box = tag(
            "input",
            type="radio",
            name=field,
            value=word,
            checked=word == start.options[option.name],
            data_control=control,
            data_name=option.name,
        )
        words = tag("b", escape(word)) + (f" {tag('small', escape(meaning))}" if meaning else "")
        choices.append(tag("label", box + tag("span", words)))
    legend = tag("legend", escape(option.question or _capital(option.name)))
    inner = legend + "".join(choices) + _fault(control, field)
    return tag("fieldset", inner, class_="sc-live__row", aria_describedby=f"{field}-fault")


def _fault(control: str, field: str) -> str:
    """Return the place where a control explains what is wrong."""
    return tag("p", "", id=f"{field}-fault", class_="sc-live__fault", hidden=True, data_fault=control)


def _capital(words: str) -> str:
    return words[:1].upper() + words[1:]


def _buttons(up: str) -> str:
    trip = tag("a", say("See the trip"), href=f"{up}../../trip/", data_live_trip=True, hidden=True)
    buttons = (
        tag("button", say("Back to the size as drawn"), type="button", data_live_reset=True),
        tag("button", say("Copy a link to this size"), type="button", data_live_copy=True),
        tag("button", say("Put it on the shopping trip"), type="button", data_live_add=True),
        trip,
    )
    return tag("p", "".join(buttons), class_="sc-live__buttons")


def _status() -> str:
    progress = tag("progress", "", max="4", value="0", aria_label=say("Getting ready"), hidden=True)
    words = tag("p", "", role="status", aria_live="polite", class_="sc-live__say", data_live_say=True)
    changed = tag("div", "", class_="sc-live__changed", hidden=True, data_live_changed=True)
    return changed + tag("p", "", class_="sc-live__fault", hidden=True, data_fault="") + progress + words


def _of_plan(plan: Plan, shop: Shop, reports: list[Report]) -> tuple[list[Stock], list[Ware]]:
    """Return what a plan takes from the shop at the sizes that it offers."""
    named = dict.fromkeys(key for part in plan.parts.values() for key in part.source.stocks)
    taken = dict.fromkeys(line.ware.key for report in reports for line in report.materials.wares)
    return [shop.stocks[key] for key in named if key in shop.stocks], [shop.wares[key] for key in taken]


def my_shop(stocks: Iterable[Stock], wares: Iterable[Ware], *, shop: Shop, display: Display) -> str:
    """Return the panel in which readers describe the shop that they go to."""
    stocks = list(stocks)
    usual = tag("div", "".join(_saw(shop, display)), class_="sc-mine__saw")
    sales = "".join(_stock(stock, shop) for stock in stocks)
    goods = "".join(_ware(ware, shop) for ware in wares)
    prices = tag("table", _head() + sales + tag("tbody", goods), class_="sc-table sc-mine__prices")
    inner = (
        tag("p", say("Kept on this device alone. What you leave empty is as the author has it."))
        + usual
        + tag("h3", say("What my store carries, at my prices"))
        + prices
        + tag("h3", say("What I have already"))
        + _owned(stocks)
        + tag(
            "p",
            tag("button", say("Forget my shop"), type="button", data_mine_reset=True),
            class_="sc-live__buttons",
        )
    )
    return tag(
        "details", tag("summary", say("My shop: units, saw, prices, what I have")) + inner, class_="sc-mine"
    )


def _saw(shop: Shop, display: Display) -> Iterator[str]:
    units = (("in", say("inches")), ("mm", say("millimetres")))
    fractions = [(str(finest), f"1/{finest} in") for finest in FRACTIONS]
    yield _select("units", say("Show lengths in"), units, display.system)
    yield _select("fraction", say("Finest fraction"), fractions, str(display.denominator))
    yield _text("kerf", say("Width of my saw cut (kerf)"), show(shop.kerf, display))
    longest = shop.rules.longest_piece
    yield _text(
        "longest piece",
        say("Longest piece that my car takes"),
        show(longest, display) if longest else say("any"),
    )


def _select(name: str, words: str, choices: Iterable[tuple[str, str]], usual: str) -> str:
    options = "".join(
        tag("option", escape(label), value=value, selected=value == usual) for value, label in choices
    )
    return tag("label", escape(words) + tag("select", options, data_mine=name), class_="sc-mine__one")


def _text(name: str, words: str, usual: str) -> str:
    field = f"mine-{name.replace(' ', '-')}"
    box = tag(
        "input",
        type="text",
        placeholder=usual,
        autocomplete="off",
        spellcheck="false",
        data_mine=name,
        data_control=f"mine {name}",
        aria_describedby=f"{field}-fault",
    )
    return tag(
        "div", tag("label", escape(words) + box) + _fault(f"mine {name}", field), class_="sc-mine__one"
    )


def _head() -> str:
    names = tag("th", say("Item"), scope="col") + tag("th", say("My price"), scope="col", class_="sc-money")
    return tag("thead", tag("tr", names))


def _stock(stock: Stock, shop: Shop) -> str:
    head = tag("tr", tag("th", escape(stock.key), scope="rowgroup", colspan=2), class_="sc-shelf")
    sales = (_sale(sale, shop) for sale in stock.sales if sale.owned is None)
    return tag("tbody", head + "".join(sales))


def _sale(sale: Sale, shop: Shop) -> str:
    box = tag("input", type="checkbox", checked=True, data_mine_carried=sale.id)
    name = tag("label", box + tag("span", escape(sale.label)))
    words = say("my price of {what}", what=sale.id.replace(" | ", ", "))
    return tag("tr", tag("th", name, scope="row") + _price(sale.id, words, sale.price, shop))


def _ware(ware: Ware, shop: Shop) -> str:
    sold = f", {escape(ware.sold)}" if ware.sold != "each" else ""
    cell = _price(ware.key, say("my price of {what}", what=ware.key), ware.price, shop)
    return tag("tr", tag("th", escape(ware.key) + sold, scope="row") + cell)


def _price(key: str, words: str, price: Money | None, shop: Shop) -> str:
    field = "mine-price-" + "".join(letter if letter.isalnum() else "-" for letter in key)
    usual = "" if price is None else plain_money(price)
    box = tag(
        "input",
        type="text",
        inputmode="decimal",
        placeholder=usual,
        autocomplete="off",
        aria_label=words,
        aria_describedby=f"{field}-fault",
        data_mine_price=key,
        data_control=f"mine prices {key}",
    )
    sign = tag("span", escape(shop.currency), aria_hidden="true")
    return tag("td", sign + box + _fault(f"mine prices {key}", field), class_="sc-money")


def _owned(stocks: list[Stock]) -> str:
    """Return the list of pieces that a reader has, with a row from which the script makes more."""
    names = "".join(tag("option", escape(stock.key), value=stock.key) for stock in stocks)
    row = (
        tag(
            "input",
            type="text",
            value="1",
            size="3",
            inputmode="numeric",
            aria_label=say("how many"),
            data_owned="count",
        )
        + tag("span", "×", aria_hidden="true")
        + tag("select", names, aria_label=say("of what"), data_owned="stock")
        + tag(
            "input",
            type="text",
            placeholder=say("5 ft, or 48 in x 24 in"),
            aria_label=say("what size"),
            data_owned="size",
        )
        + tag("button", say("Remove"), type="button", data_owned_remove=True)
        + tag("p", "", class_="sc-live__fault", hidden=True, data_owned_fault=True)
    )
    return (
        tag("ul", "", class_="sc-mine__owned", data_mine_owned=True)
        + tag("template", tag("li", row), data_mine_row=True)
        + tag(
            "p",
            tag("button", say("Add a piece"), type="button", data_mine_add=True),
            class_="sc-live__buttons",
        )
    )
