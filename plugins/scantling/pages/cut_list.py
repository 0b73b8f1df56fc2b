"""The cut list: every part with its finished size, and where it comes from."""

from __future__ import annotations

from scantling.pages.facts import measure, thickness
from scantling.pages.held import held
from scantling.pages.html import escape, sentence, tag
from scantling.pages.look import Look
from scantling.plan import FittedPart
from scantling.report import Report, origins_words, part_notes
from scantling.words import counted, mark, say

_COLUMNS = (mark("Part"), mark("Count"), mark("Length"), mark("Width"), mark("Thick"), mark("Comes from"))


def cut_list(report: Report, look: Look) -> str:
    """Return the cut list as a table."""
    head = tag("tr", "".join(tag("th", say(name), scope="col") for name in _COLUMNS))
    rows = "".join(_row(part, report, look) for part in report.fitted.parts)
    return tag("table", tag("thead", head) + tag("tbody", rows), class_="sc-table sc-cuts")


def _row(part: FittedPart, report: Report, look: Look) -> str:
    mark = tag("b", escape(part.letter), class_="sc-mark")
    notes = " ".join(escape(sentence(note)) for note in part_notes(part, look.display))
    name = mark + " " + escape(part.id) + (tag("small", held(notes)) if notes else "")
    origins = [
        held(escape(words))
        for words in origins_words(
            [origin for origin in report.origins if origin.part.id == part.id], look.display
        )
    ]
    cells = [
        tag("th", name, scope="row"),
        tag(
            "td",
            str(part.count),
            class_="sc-count",
            data_pieces=counted("piece,", "pieces,", int(part.count)),
        ),
        tag("td", measure(part.length, look), class_="sc-size"),
        tag("td", measure(part.width, look), class_="sc-size"),
        tag("td", thickness(part.thick, look), class_="sc-size"),
        tag("td", "<br>".join(tag("span", origin) for origin in origins), class_="sc-from"),
    ]
    return tag("tr", "".join(cells), data_part=part.id)
