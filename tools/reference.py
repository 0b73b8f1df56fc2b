"""Write what docs/reference/ says of the format and the formulas, from the code that reads them.

    python -m tools.reference            write the made parts of the pages, and the JSON Schemas
    python -m tools.reference --check    only say what is out of date

A page is written by hand; what lies between `<!-- made: form part -->` and `<!-- end -->` is made.
"""

from __future__ import annotations

import json
import re
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

from scantling import plan, shop
from scantling.form import Form, describe, schema
from scantling.formula import FUNCTIONS
from tools.reference_checks import checks_part
from tools.reference_commands import commands_part
from tools.reference_faults import faults_part

DOCS = Path(__file__).resolve().parent.parent / "docs"
IN_BODY = {"intro", "steps"}
"""Fields of a plan that are not written in its front matter."""
PLAN_FORMS: dict[str, Form[Any]] = {
    "plan": plan.PLAN,
    "size": plan.SIZE,
    "option": plan.OPTION,
    "part": plan.PART,
    "work": plan.WORK,
    "place": plan.PLACE,
    "repeat": plan.REPEAT,
    "join": plan.JOIN,
    "hardware": plan.HARDWARE,
    "step": plan.STEP,
    "photo": plan.PHOTO,
    "dated note": plan.ERRATUM,
}
SHOP_FORMS: dict[str, Form[Any]] = {
    "shop": shop.SHOP,
    "rules": shop.RULES,
    "lumber": shop.LUMBER,
    "sheet": shop.SHEET,
    "sized": shop.SIZED,
    "hardwood": shop.HARDWOOD,
    "ware": shop.WARE,
    "price list": shop.PRICE_LIST,
}
FORMS = {**PLAN_FORMS, **SHOP_FORMS}
_MADE = re.compile(r"(<!-- made: (?P<what>[a-z ]+) -->\n).*?(<!-- end -->)", re.DOTALL)


def main(argv: list[str]) -> int:
    """Write or check everything that is made; return 1 if a check finds something out of date."""
    stale = [path for path, text in made_files() if not path.exists() or path.read_text("utf-8") != text]
    if "--check" in argv:
        for path in stale:
            print(f"{path}: out of date; run make docs")
        return 1 if stale else 0
    for path, text in made_files():
        path.write_text(text, "utf-8", newline="\n")
    print(f"{DOCS}/reference: {len(stale)} pages changed")
    return 0


def made_files() -> Iterator[tuple[Path, str]]:
    """Yield each file with a made part, and its text as it should be."""
    for path in sorted(DOCS.rglob("*.md")):
        text = path.read_text("utf-8")
        if _MADE.search(text):
            yield path, _MADE.sub(_remade, text)
    for name, form in (("plan", plan.PLAN), ("shop", shop.SHOP)):
        yield DOCS / "reference" / f"{name}.schema.json", schema_file(form)


def _remade(found: re.Match[str]) -> str:
    return f"{found[1]}\n{made(found['what'])}\n{found[3]}"


def made(what: str) -> str:
    """Return the Markdown for what a page asks for by name.

    Raises:
        ValueError: where a page asks for what nothing makes.
    """
    kind, _, name = what.partition(" ")
    if kind == "form" and name in FORMS:
        return form_table(FORMS[name])
    if what in _TABLES:
        return _TABLES[what]()
    message = f"a page of docs/ asks for '{what}', which nothing makes"
    raise ValueError(message)


def table(heads: tuple[str, ...], rows: Iterator[tuple[str, ...]]) -> str:
    """Return a Markdown table."""
    lines = ["| " + " | ".join(heads) + " |", "|" + "---|" * len(heads)]
    lines += ["| " + " | ".join(cell(text) for text in row) + " |" for row in rows]
    return "\n".join(lines) + "\n"


def cell(text: str) -> str:
    """Return text that stands safely in a cell of a table."""
    return text.replace("|", "\\|").replace("\n", " ").replace("<", "&lt;")


def form_table(form: Form[Any]) -> str:
    """Return the meaning of a form and a table of its fields."""
    rows = (
        (
            f"`{key.removesuffix(' (needed)')}`" + (" **needed**" if key.endswith("(needed)") else ""),
            meaning,
            kind,
            f"`{example}`" if example else "",
        )
        for key, kind, meaning, example in describe(form)
    )
    words = f"{form.meaning}\n\n" if form.meaning else ""
    short = f"\nWritten without a key, a bare value is its `{form.short}`.\n" if form.short else ""
    return words + table(("Key", "What it says", "Written as", "Example"), rows) + short


def functions_table() -> str:
    """Return a table of the functions of the formula language."""
    rows = ((f"`{function.pattern}`", function.about) for function in FUNCTIONS.values())
    return table(("Function", "Gives"), rows)


def woods_table() -> str:
    """Return a table of the woods whose weight and stiffness are known."""
    rows = (
        (f"`{wood.name}`", f"{float(wood.density):.0f} lb/cu ft", wood.source) for wood in shop.WOODS.values()
    )
    return table(("`wood:`", "Weighs", "From"), rows)


def pocket_table() -> str:
    """Return a table of the pocket screws that joins are given."""
    rows = ((f"{_inches(thick)} in", f"{_inches(long)} in") for thick, long in plan.POCKET_SCREWS)
    return table(("Thickness with the pocket hole, up to", "Screw"), rows)


def _inches(length: Any) -> str:
    whole, rest = divmod(length.inches, 1)
    return " ".join(text for text in (str(whole) if whole else "", str(rest) if rest else "") if text)


def schema_file(form: Form[Any]) -> str:
    """Return the JSON Schema of a plan's front matter or of a shop file."""
    made_schema = schema(form)
    for field in IN_BODY:
        made_schema["properties"].pop(field, None)
    head = {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": f"{form.name}, for scantling",
        "description": "Made from the code that reads it, by make docs.",
    }
    return json.dumps({**head, **made_schema}, indent=1, ensure_ascii=False) + "\n"


_TABLES: dict[str, Callable[[], str]] = {
    "functions": functions_table,
    "woods": woods_table,
    "pocket screws": pocket_table,
    "checks": checks_part,
    "commands": commands_part,
    "faults": faults_part,
}

if __name__ == "__main__":
    sys.exit(main(sys.argv))
