"""A store's price list (CSV) as prices of our own articles, or everything that is wrong with it."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from scantling.fault import did_you_mean
from scantling.measure import Money, currency_beside, is_sign_of
from scantling.shop import PriceList
from scantling.source.diagnostic import Diagnostic, from_found
from scantling.source.document import LARGEST_FILE, Document, Found, make_document

MOST_TOLD = 40
"""Articles that are named one by one before the rest is only counted."""


@dataclass(frozen=True, slots=True)
class ListedPrices:
    """What a price list says."""

    prices: Mapping[str, Money]
    """By the id of a sale or the key of a ware."""
    unknown: tuple[str, ...]
    """Articles of the list that nothing here is named after."""
    missing: tuple[str, ...]
    """Articles that ought to be on the list and are not."""
    diagnostics: tuple[Diagnostic, ...]
    """With a fault among them no price is to be used."""


@dataclass(slots=True)
class _Reading:
    """What has been read so far."""

    how: PriceList
    currency: str
    document: Document
    prices: dict[str, Money] = field(default_factory=dict)
    first_line: dict[str, int] = field(default_factory=dict)
    unknown: list[str] = field(default_factory=list)
    found: list[Found] = field(default_factory=list)

    def fault(self, line: int, cell: str, message: str, help_line: str) -> None:
        """Remember a fault in a cell of a line."""
        start = self.document.starts[min(line, len(self.document.starts)) - 1]
        at = self.document.line(line).find(cell) if cell else 0
        begin = start + max(at, 0)
        self.found.append(Found("price-list", message, begin, begin + max(len(cell), 1), help_line))


def read_price_csv(name: str, data: bytes, how: PriceList, currency: str) -> ListedPrices:
    """Return the prices in a CSV file.

    Args:
        name: the file's name, for messages.
        how: which columns and articles are which.
        currency: the shop's sign; a price with another one is a fault.
    """
    document, found = _decoded(name, data, how)
    reading = _Reading(how, currency, document, found=found)
    if not found:
        _read_rows(reading)
    if not reading.found and not reading.prices:
        first = next(iter(how.articles), "")
        help_line = f"the shop file reads articles such as '{first}'; is this the right list?"
        reading.fault(1, "", "no article of this list is one that the shop file reads", help_line)
    missing = tuple(theirs for theirs, ours in how.articles.items() if ours not in reading.prices)
    if reading.found:
        missing = ()
    diagnostics = tuple(from_found(one, document) for one in reading.found)
    return ListedPrices(reading.prices, tuple(reading.unknown), missing, diagnostics)


def _decoded(name: str, data: bytes, how: PriceList) -> tuple[Document, list[Found]]:
    if len(data) > 10 * LARGEST_FILE:
        return make_document(name, ""), [
            Found("file-too-large", "this list is larger than 10 MB", 0, 0, "split it")
        ]
    try:
        return make_document(name, data.decode(how.encoding)), []
    except UnicodeDecodeError as error:
        readable = make_document(name, data[: error.start].decode(how.encoding))
        other = "cp1252" if how.encoding.lower().replace("-", "") == "utf8" else "utf-8"
        message = f"byte {data[error.start]:02x} (hexadecimal) is no letter in {how.encoding}"
        help_line = f"if the store's program writes {other}, say 'encoding: {other}' in the shop file"
        at = len(readable.text)
        return readable, [Found("not-readable", message, at, at + 1, help_line)]


def _read_rows(reading: _Reading) -> None:
    rows = csv.reader(io.StringIO(reading.document.text), delimiter=reading.how.separator, strict=True)
    try:
        heads = [head.strip() for head in next(rows, [])]
        columns = list(_columns(heads, reading))
        if len(columns) == 2:
            for row in rows:
                if any(cell.strip() for cell in row):
                    _read_row(row, rows.line_num, columns, reading)
    except csv.Error as error:
        reading.fault(
            rows.line_num, "", f"this is no CSV: {error}", "open it in a spreadsheet and save it again"
        )


def _columns(heads: list[str], reading: _Reading) -> Iterator[int]:
    for wanted in (reading.how.item, reading.how.price):
        if wanted in heads:
            yield heads.index(wanted)
            continue
        help_line = did_you_mean(wanted, [head for head in heads if head], kind="columns")
        if len(heads) == 1:
            help_line = f"there is but one column; is '{reading.how.separator}' what stands between them?"
        reading.fault(1, "", f"there is no column '{wanted}'", help_line)


def _read_row(row: list[str], line: int, columns: list[int], reading: _Reading) -> None:
    if len(row) <= max(columns):
        reading.fault(line, "", "this line has too few columns", "see whether a separator is missing")
        return
    article, price = (row[column].strip() for column in columns)
    ours = reading.how.articles.get(article)
    if ours is None:
        reading.unknown.append(article)
        return
    money = _money(price, line, reading)
    if money is None:
        return
    if ours in reading.prices and reading.prices[ours] != money:
        message = f"'{article}' has another price in line {reading.first_line[ours]}"
        reading.fault(line, row[columns[1]], message, "delete the one that does not hold")
        return
    reading.prices[ours] = money
    reading.first_line.setdefault(ours, line)


def _money(text: str, line: int, reading: _Reading) -> Money | None:
    """Return a price, whatever stands between thousands, or None after noting a fault."""
    sign = currency_beside(text)
    if sign and not is_sign_of(sign, reading.currency):
        reading.fault(
            line,
            text,
            f"this price is in {sign}, the shop file's in {reading.currency}",
            "change one of them",
        )
        return None
    plain = text.replace(sign, "") if sign else text
    plain = re.sub(r"[\s\u00a0\u202f']", "", plain)
    if plain.startswith("-"):
        reading.fault(line, text, "a price below nothing", "mend it in the list")
        return None
    decimal = re.escape(reading.how.decimal)
    thousands = re.escape("," if reading.how.decimal == "." else ".")
    found = re.fullmatch(rf"(\d{{1,3}}(?:{thousands}\d{{3}})+|\d+)(?:{decimal}(\d{{1,2}}))?", plain)
    if found is None:
        reading.fault(line, text, f"'{text}' is no price", _how_to_write(plain, reading))
        return None
    whole = int(re.sub(r"\D", "", found[1]))
    return Money(whole * 100 + int((found[2] or "0").ljust(2, "0")))


def _how_to_write(plain: str, reading: _Reading) -> str:
    other = "," if reading.how.decimal == "." else "."
    if re.fullmatch(rf"\d+{re.escape(other)}\d{{2}}", plain):
        return f"if the list writes cents after '{other}', say \"decimal: '{other}'\" in the shop file"
    return f"write it like 4{reading.how.decimal}28"


def unknown_told(listed: ListedPrices, name: str) -> list[str]:
    """Return in words which articles are on one side only."""
    lines = []
    for words, articles in (("not in the shop file", listed.unknown), ("not on the list", listed.missing)):
        if articles:
            shown = ", ".join(f"'{article}'" for article in articles[:MOST_TOLD])
            rest = len(articles) - MOST_TOLD
            lines.append(f"{name}: {words}: {shown}" + (f" and {rest} more" if rest > 0 else ""))
    return lines
