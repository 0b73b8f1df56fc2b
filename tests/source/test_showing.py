"""Diagnostics as they are shown: with caret, in a line, for programs, for pages."""

from __future__ import annotations

import json
import unicodedata

import pytest

from scantling.fault import Severity
from scantling.source import (
    Diagnostic,
    DiagnosticNote,
    Spot,
    count_severities,
    exit_status,
    render_concise,
    render_full,
    render_github,
    render_html,
    sort_diagnostics,
    summarize,
    to_data,
)


def spot(
    line: int = 3, column: int = 8, end: int = 11, excerpt: str = "  leg: oak and ash", path: str = "plan.md"
):
    """Return a spot on one line."""
    return Spot(path, line, column, line, end, excerpt)


def diagnostic(where: Spot | None = None, **changed):
    """Return a fault with a note and a mend."""
    usual = {
        "code": "unknown-stock",
        "severity": Severity.FAULT,
        "message": "the shop file has no stock 'oak'",
        "spot": where or spot(),
        "help": "did you mean 'ash'?",
        "notes": (DiagnosticNote("the shop sells this", spot(9, 1, 4, "ash: 4.28", "shop.yml")),),
    }
    return Diagnostic(**{**usual, **changed})


def test_full():
    """The line of the file, a caret under the place, the note with its own line, the mend."""
    assert render_full([diagnostic()]) == (
        "plan.md:3:8: fault: the shop file has no stock 'oak' [unknown-stock]\n"
        "  3 |   leg: oak and ash\n"
        "    |        ^^^\n"
        "  note: the shop sells this (shop.yml:9:1)\n"
        "  9 | ash: 4.28\n"
        "    | ^^^\n"
        "  help: did you mean 'ash'?\n"
    )


def test_concise():
    """One line: file, line, column, code, message."""
    assert render_concise([diagnostic()]) == "plan.md:3:8: unknown-stock the shop file has no stock 'oak'\n"


@pytest.mark.parametrize(
    ("excerpt", "column", "end"),
    [
        ("木の箱 {oak}", 6, 9),
        ("🚪🚪 {oak}", 5, 8),
        ("a\tb\t{oak}", 6, 9),
        ("\t\toak", 3, 6),
        ("e\u0301e\u0301 oak", 6, 9),
        ("👩\u200d🔧 oak", 5, 8),
        ("plain oak", 7, 10),
    ],
)
def test_the_caret_stands_under_the_letters(excerpt, column, end):
    """Wide letters, combining ones and tabs shift nothing."""
    _, shown, caret, *_ = render_full([diagnostic(spot(1, column, end, excerpt), notes=())]).splitlines()
    before = caret.index("^")
    wide = 0
    for at, letter in enumerate(shown):
        if shown.startswith("oak", at):
            break
        is_narrow = unicodedata.combining(letter) or unicodedata.category(letter) == "Cf"
        wide += 0 if is_narrow else 2 if unicodedata.east_asian_width(letter) in "WF" else 1

    assert caret.count("^") == 3
    assert before == wide


def test_a_long_line_is_shown_around_the_fault():
    """A line of thousands of characters does not fill the terminal."""
    excerpt = "x" * 3000 + "oak" + "y" * 3000
    _, shown, caret, *_ = render_full([diagnostic(spot(1, 3001, 3004, excerpt), notes=())]).splitlines()

    assert len(shown) < 180
    assert shown[caret.index("^") :].startswith("oak")
    assert caret.count("^") == 3


def test_a_place_over_several_lines_is_marked_to_the_end_of_its_first():
    """Only the first line is shown."""
    where = Spot("plan.md", 1, 3, 2, 4, "a bcd")

    assert render_full([diagnostic(where, notes=(), help="")]).splitlines()[2] == "    |   ^^^"


def test_nothing_from_a_plan_reaches_the_terminal_as_a_command():
    """Escape sequences in file names, messages, excerpts and mends are shown as stand-ins."""
    evil = "\x1b[31m\x07\u202e"
    one = diagnostic(spot(excerpt=f"  leg: {evil}", path=f"{evil}.md"), message=evil, help=evil)
    shown = render_full([one]) + render_concise([one])

    assert "\x1b" not in shown
    assert "\x07" not in shown
    assert "\u202e" not in shown


def test_colour_changes_no_letter():
    """Colour only adds escape sequences of our own."""
    plain, coloured = render_full([diagnostic()]), render_full([diagnostic()], colour=True)

    assert coloured != plain
    for code in ("0", "1", "31", "32", "33", "36"):
        coloured = coloured.replace(f"\x1b[{code}m", "")
    assert coloured == plain


def test_data():
    """Everything is in the JSON, under names that say what it is."""
    assert json.loads(json.dumps(to_data(diagnostic()))) == {
        "code": "unknown-stock",
        "severity": "fault",
        "message": "the shop file has no stock 'oak'",
        "file": "plan.md",
        "line": 3,
        "column": 8,
        "end_line": 3,
        "end_column": 11,
        "excerpt": "  leg: oak and ash",
        "help": "did you mean 'ash'?",
        "notes": [
            {
                "message": "the shop sells this",
                "file": "shop.yml",
                "line": 9,
                "column": 1,
                "end_line": 9,
                "end_column": 4,
                "excerpt": "ash: 4.28",
            }
        ],
    }


def test_annotations_escape_what_their_syntax_uses():
    """Commas, colons, percent signs and line breaks cannot end an annotation early."""
    one = diagnostic(spot(path="a,b:c%.md"), message="50% of 1,2::x\ny", help="", severity=Severity.WARNING)

    assert render_github([one]) == (
        "::warning file=a%2Cb%3Ac%25.md,line=3,col=8,title=unknown-stock,endColumn=11::50%25 of 1,2::x%0Ay\n"
    )


def test_html_escapes_everything():
    """No text of a plan is ever a tag."""
    evil = "<script>alert('1')</script>&"
    one = diagnostic(spot(1, 9, 14, evil, evil), message=evil, help=evil, notes=(DiagnosticNote(evil, None),))
    shown = render_html([one])

    assert "<script" not in shown
    assert "<mark>alert</mark>(&#x27;1&#x27;)&lt;/script&gt;&amp;" in shown
    assert shown.count("&lt;script&gt;") == 5


def test_order_is_by_place():
    """File, line, column, then severity; the same thing is told once."""
    first, second, third = diagnostic(spot(2)), diagnostic(spot(3, 1)), diagnostic(spot(3, 8))
    other = diagnostic(spot(1, path="a.md"))

    assert sort_diagnostics([third, second, first, other, third]) == (other, first, second, third)


def test_status_comes_from_the_list_alone():
    """A fault fails, a warning only where asked for, a hint never."""
    fault, warning, hint = (diagnostic(severity=severity) for severity in Severity)

    assert exit_status([fault]) == 1
    assert exit_status([warning, hint]) == 0
    assert exit_status([warning], strict=True) == 1
    assert exit_status([hint], strict=True) == 0
    assert exit_status([]) == 0
    assert count_severities([fault, hint, hint]) == {Severity.FAULT: 1, Severity.WARNING: 0, Severity.HINT: 2}
    assert summarize([fault, fault, warning]) == "2 faults, 1 warning"
    assert summarize([]) == ""
