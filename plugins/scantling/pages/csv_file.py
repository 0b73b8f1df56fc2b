"""`cut-list.csv`: the cut list for a spreadsheet."""

from __future__ import annotations

import csv
import io

from scantling.measure import Display
from scantling.report import Report, exact_inches, origin_words, part_notes, write_thick

_COLUMNS = (
    "mark",
    "part",
    "count",
    "length",
    "width",
    "thick",
    "length_in",
    "width_in",
    "thick_in",
    "from",
    "notes",
)
_SIGNS = ("=", "+", "-", "@", "\t", "\r")
"""What a spreadsheet takes for the beginning of a formula."""


def cut_list_csv(report: Report, display: Display) -> str:
    """Return the cut list: sizes as shown, then in exact inches, then where each part comes from."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(_COLUMNS)
    for part in report.fitted.parts:
        sizes = (part.length, part.width, part.thick)
        shown = (display.length(part.length), display.length(part.width), write_thick(part.thick, display))
        origins = "; ".join(
            origin_words(origin, display) for origin in report.origins if origin.part.id == part.id
        )
        row = [part.letter, part.id, str(part.count)]
        row += [*shown, *(exact_inches(size) for size in sizes)]
        writer.writerow([inert(cell) for cell in (*row, origins, "; ".join(part_notes(part, display)))])
    return out.getvalue()


def inert(cell: str) -> str:
    """Return a cell that no spreadsheet reckons: with an apostrophe before what looks like a formula."""
    return f"'{cell}" if cell.lstrip(" ").startswith(_SIGNS) else cell
