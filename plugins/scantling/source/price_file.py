"""The record of prices beside the plans: read and written whole."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from scantling.report import PriceRecord

PRICE_FILE = "prices.json"
"""Its name in the folder of plans; one line a price and a plan, so that two branches merge."""


def read_price_file(folder: Path) -> PriceRecord | None:
    """Return the record of the last build, or None where there is none that can be read."""
    try:
        return PriceRecord.from_data(json.loads((folder / PRICE_FILE).read_text("utf-8")))
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        return None


def write_price_file(folder: Path, record: PriceRecord) -> bool:
    """Write the record, unless the file says the same already; return whether it was written."""
    text = price_text(record)
    path = folder / PRICE_FILE
    if path.is_file() and path.read_text("utf-8") == text:
        return False
    aside = path.with_name(f".{PRICE_FILE}.being-written")
    aside.write_text(text, "utf-8")
    aside.replace(path)
    return True


def price_text(record: PriceRecord) -> str:
    """Return a record as JSON with one line a fact."""
    data = record.to_data()
    return _sections(data, "") + "\n"


def _sections(data: dict[str, Any], margin: str) -> str:
    rows = [f'{margin} "{key}": {_section(key, value, margin)}' for key, value in data.items()]
    return "{\n" + ",\n".join(rows) + f"\n{margin}}}"


def _section(key: str, value: Any, margin: str) -> str:
    if not isinstance(value, dict) or not value:
        return json.dumps(value, ensure_ascii=False)
    if key == "before":
        return _sections(value, f"{margin} ")
    rows = [
        f"{margin}  {json.dumps(name, ensure_ascii=False)}: {json.dumps(one, ensure_ascii=False)}"
        for name, one in value.items()
    ]
    return "{\n" + ",\n".join(rows) + f"\n{margin} }}"
