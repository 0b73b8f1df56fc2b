"""A fitted plan as a sheet of text, from the same data that JSON shows."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from scantling.cli.tables import table
from scantling.source import visible

Data = Mapping[str, Any]


def sheet_of(data: Data) -> str:
    """Return materials list, cut list, cutting plan and sums of a fitted plan as text."""
    parts = [_head(data), _materials(data), _cut_list(data), _cutting(data), _sums(data)]
    return "\n\n".join(part for part in parts if part) + "\n"


def _head(data: Data) -> str:
    title = visible(data["title"])
    chosen = [f"{name} {value['text']}" for name, value in data["sizes"].items()]
    chosen += [f"{name}: {word}" for name, word in data["options"].items()]
    return "\n".join([title, "=" * max(1, len(title)), *([visible(", ".join(chosen))] if chosen else [])])


def _materials(data: Data) -> str:
    rows = [
        (str(line["quantity"]), line["item"], line["sold"], line["unit_price"]["text"], line["cost"]["text"])
        for line in data["materials"]
    ]
    dated = f" (prices of {data['prices_of']})" if data["prices_of"] else ""
    head = ("qty", "what", "sold as", "each", "cost")
    return f"MATERIALS{dated}\n" + table(head, rows, right=(0, 3, 4))


def _cut_list(data: Data) -> str:
    rows = [
        (
            part["letter"],
            part["part"],
            str(part["count"]),
            part["length"]["text"],
            part["width"]["text"],
            part["thick"]["text"],
            part["from"] or f"offcut of {part['from_offcut_of']}",
            "; ".join(part["notes"]),
        )
        for part in data["cut_list"]
    ]
    head = ("", "part", "count", "length", "width", "thick", "from", "notes")
    return "CUT LIST\n" + table(head, rows, right=(2, 3, 4, 5))


def _cutting(data: Data) -> str:
    boards = data["cutting"]["boards"]
    return "\n".join(["CUTTING PLAN", *(line for board in boards for line in _board(board))])


def _board(board: Data) -> Iterator[str]:
    size = f"{board['length']['text']} x {board['width']['text']}"
    yield visible(f"{board['board']}  {board['stock']}, {board['sold']} ({size})")
    rows = [
        (
            f"  {piece['letter']}{piece['number']}",
            piece["part"],
            piece["length"]["text"],
            piece["width"]["text"],
            piece["x"]["text"],
            piece["y"]["text"],
        )
        for piece in board["pieces"]
    ]
    yield table(("  ", "part", "length", "width", "along", "across"), rows, right=(2, 3, 4, 5))
    for offcut in board["offcuts"]:
        yield f"   kept: {offcut['length']['text']} x {offcut['width']['text']}"


def _is_nothing(total: str | int | None) -> bool:
    return total in {None, 0} or str(total).startswith("0.00 ")


def _sums(data: Data) -> str:
    totals = data["totals"]
    rows = [("cost", totals["cost"]["text"]), ("of which wood", totals["wood_cost"]["text"])]
    named = (
        ("board_feet_nominal", "board feet, nominal"),
        ("board_feet_actual", "board feet, actual"),
        ("linear_feet", "boards end to end"),
        ("sheets", "sheets"),
        ("yield", "yield"),
    )
    rows += [(label, str(totals[key])) for key, label in named if not _is_nothing(totals[key])]
    if totals["weight"]:
        rows.append(("weight", totals["weight"]["text"]))
    cutting = data["cutting"]
    least = "no cheaper way exists" if cutting["proved"] else f"at least {cutting['bound']['text']}"
    rows.append(("proved of the wood", least))
    return "SUMS\n" + "\n".join(f"{label:20}  {visible(text)}" for label, text in rows)
