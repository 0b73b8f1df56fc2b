"""The materials list: what to put into the cart, with boxes to tick in the aisle."""

from __future__ import annotations

from scantling.measure import (
    Money,
    write_area,
    write_board_feet,
    write_linear,
    write_money,
    write_number,
)
from scantling.pages.facts import measure, thickness
from scantling.pages.held import NO_BREAK, held
from scantling.pages.html import escape, items, sentence, tag
from scantling.pages.look import Look
from scantling.report import Report, StockLine, WareLine, store_cuts, store_words
from scantling.words import counted, say


def materials(report: Report, look: Look) -> str:
    """Return the materials list as a table, a body for each shelf of the shop, and its sums."""
    bodies = "".join(_shelf(title, lines, report, look) for title, lines in report.materials.by_shelf())
    head = tag(
        "tr",
        tag("th", say("Item"), scope="col")
        + tag("th", say("Each"), scope="col", class_="sc-money")
        + tag("th", say("Cost"), scope="col", class_="sc-money"),
    )
    money = tag("td", escape(_money(report.totals.cost, report)), class_="sc-money")
    foot = tag("tr", tag("th", say("Together"), scope="row", colspan=2) + money)
    table = tag(
        "table",
        tag("thead", head) + bodies + tag("tfoot", foot),
        class_="sc-table sc-materials",
    )
    return table + _sums(report, look) + _at_the_store(report, look)


def _at_the_store(report: Report, look: Look) -> str:
    """Return the cuts to ask the store for, where something is too long for the car."""
    lines = store_words(store_cuts(report.cutting), look.display)
    if not lines:
        return ""
    return tag("p", say("To fit the car, ask the store to cut:")) + items(escape(line) for line in lines)


def _money(money: Money, report: Report) -> str:
    return write_money(money, report.shop.currency)


def _shelf(title: str, lines: tuple[StockLine | WareLine, ...], report: Report, look: Look) -> str:
    head = tag("tr", tag("th", escape(title), scope="rowgroup", colspan=3), class_="sc-shelf")
    return tag("tbody", head + "".join(_row(line, report, look) for line in lines))


def _row(line: StockLine | WareLine, report: Report, look: Look) -> str:
    name, note = _stock_words(line, look) if isinstance(line, StockLine) else _ware_words(line, look)
    key = f"{line.stock.key} {line.sale.label}" if isinstance(line, StockLine) else line.ware.key
    box = tag("input", type="checkbox", data_check=key)
    words = tag("span", f"{tag('b', str(line.quantity))}{NO_BREAK}×{NO_BREAK}{held(name)}")
    small = tag("small", held(note)) if note else ""
    free = isinstance(line, StockLine) and line.is_owned
    cells = tag("th", tag("label", box + words) + small, scope="row")
    cells += tag("td", "" if free else escape(_money(line.unit_price, report)), class_="sc-money")
    cells += tag("td", say("yours") if free else escape(_money(line.cost, report)), class_="sc-money")
    return tag("tr", cells)


def _stock_words(line: StockLine, look: Look) -> tuple[str, str]:
    stock = line.stock
    thick, wide = thickness(stock.thick, look), measure(line.sale.width, look)
    note = (
        say("{size} thick", size=thick)
        if stock.is_sheet
        else say("{thick} × {wide} actual", thick=thick, wide=wide)
    )
    if stock.note:
        note += f"; {escape(stock.note)}"
    return f"{escape(stock.key)}, {escape(line.sale.label).replace(' ', '&nbsp;')}", note


def _ware_words(line: WareLine, look: Look) -> tuple[str, str]:
    ware = line.ware
    notes = []
    if line.needed and ware.count != 1:
        notes.append(say("{amount} needed", amount=write_number(line.needed)))
    if line.length is not None:
        notes.append(say("{amount} needed", amount=write_linear(line.length, system=look.display.system)))
    if line.area is not None:
        notes.append(say("for {area}", area=write_area(line.area, system=look.display.system)))
    notes += [note for note in (line.why, ware.note) if note]
    told = [escape(sentence(note)) for note in notes]
    if ware.caution:
        told.append(tag("span", tag("b", say("Caution: ")) + escape(ware.caution), class_="sc-warn"))
    sold = f", {escape(ware.sold)}" if ware.sold != "each" else ""
    return escape(ware.key) + sold, " ".join(told)


def _sums(report: Report, look: Look) -> str:
    totals = report.totals
    sums = []
    if totals.linear_feet.inches:
        sums.append(
            say("{length} of boards", length=write_linear(totals.linear_feet, system=look.display.system))
        )
    if totals.board_feet_nominal:
        sums.append(say("{amount} by nominal size", amount=write_board_feet(totals.board_feet_nominal)))
    if totals.board_feet:
        sums.append(say("{amount} by actual size", amount=write_board_feet(totals.board_feet)))
    if totals.sheets:
        area = write_area(totals.sheet_area, system=look.display.system)
        sums.append(f"{counted('{count} sheet', '{count} sheets', totals.sheets)}, {area}")
    day = (
        say(" Prices of {day}; yours will differ.", day=report.shop.prices_of)
        if report.shop.prices_of
        else ""
    )
    return tag("p", held(escape("; ".join(sums) + "." + day)), class_="sc-sums") if sums else ""
