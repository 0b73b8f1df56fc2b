"""All data of a plan at one size as a file."""

from __future__ import annotations

from json import JSONEncoder

from scantling.measure import Display
from scantling.report import Report, plan_data

DATA_FILE = "plan.json"
"""Its name beside the page."""
_written = JSONEncoder(ensure_ascii=False).encode


def data_file(report: Report, display: Display) -> str:
    """Return the data as JSON, each entry and each thing of a list on a line of its own.

    Lines within those would be for nobody to read, and four times as slow to write.
    """
    entries = (f" {_written(name)}: {_entry(value)}" for name, value in plan_data(report, display).items())
    return "{\n" + ",\n".join(entries) + "\n}\n"


def _entry(value: object) -> str:
    if not isinstance(value, list) or not value:
        return _written(value)
    return "[\n  " + ",\n  ".join(map(_written, value)) + "\n ]"
