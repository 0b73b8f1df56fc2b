"""`scantling new`: a plan, or a whole catalog, that builds at once."""

from __future__ import annotations

import re
from argparse import ArgumentParser, Namespace
from datetime import UTC, date, datetime
from pathlib import Path

from scantling.cli.catalogs import add_catalog_argument, find_catalog, shop_of
from scantling.cli.command import FAULTY, FINE, Command, misused, say, tell
from scantling.cli.scaffold import BLOG, HOME, IGNORED, SETTINGS, WORKFLOW, first_post, requirements
from scantling.cli.templates import SHOP, plan_text
from scantling.plan import slug_of
from scantling.shop import Shop, Stock
from scantling.source import PLAN_FILE, SHOP_FILE, render_full

_NAME = re.compile(r"[^\x00-\x1f/\\]{1,80}")
FIRST_PLAN = "First crate"


def _add_arguments(parser: ArgumentParser) -> None:
    parser.add_argument("name", metavar="NAME", help="what is built; with --catalog the folder to make")
    add_catalog_argument(parser)
    parser.add_argument(
        "--catalog", action="store_true", help="settings, a shop file, a first plan and a first post"
    )


def _run(given: Namespace) -> int:
    return _new_catalog(Path(given.name)) if given.catalog else _new_plan(given.name, given.plans)


def _new_plan(name: str, plans: Path | None) -> int:
    if not _NAME.fullmatch(name) or not re.search(r"[A-Za-z0-9]", name):
        raise misused("a plan's name is made of words, without slashes", "scantling new 'Harbour bench'")
    folder = find_catalog(plans)
    shop = shop_of(folder)
    if shop.shop is None:
        tell(render_full(shop.diagnostics))
        return FAULTY
    stock, glue = _board(shop.shop), _glue(shop.shop)
    if not stock:
        raise misused(f"{folder / SHOP_FILE} sells no board", "add a 1x4 under 'lumber:'")
    if not glue:
        raise misused(f"{folder / SHOP_FILE} sells no glue", "add 'wood glue:' under 'hardware:'")
    path = folder / slug_of(name) / PLAN_FILE
    _write({path: plan_text(" ".join(name.split()), stock, glue)})
    say(f"{path.as_posix()} is there; see it with: scantling show {slug_of(name)}")
    return FINE


def _glue(shop: Shop) -> str:
    """Return the first glue with a price."""
    wares = shop.wares.values()
    glues = (one.key for one in wares if one.price is not None and "glue" in f"{one.kind} {one.key}".split())
    return next(glues, "")


def _board(shop: Shop) -> str:
    """Return the stock that a first plan is cut from: a narrow board with a price, the thinnest there is."""
    boards = [stock for stock in shop.stocks.values() if _will_do(stock)]
    boards.sort(key=lambda stock: (stock.kind != "lumber", stock.thick, stock.widest, stock.key))
    return next((stock.key for stock in boards if stock.key == "1x4"), boards[0].key if boards else "")


def _will_do(stock: Stock) -> bool:
    """Return whether a stock is a board with a price, and long enough for a small crate."""
    wide = stock.width
    return wide is not None and any(
        sale.price is not None and sale.length >= 6 * wide for sale in stock.sales
    )


def _new_catalog(folder: Path) -> int:
    plans = folder / "plans"
    slug = slug_of(FIRST_PLAN)
    _write(
        {
            folder / "mkdocs.yml": SETTINGS.replace("NAME", _quoted(folder.resolve().name)),
            folder / "docs" / "index.md": HOME.replace("NAME", folder.resolve().name),
            folder / "docs" / "blog" / "index.md": BLOG,
            folder / "docs" / "blog" / "posts" / "first-post.md": first_post(_today()),
            folder / ".github" / "workflows" / "publish.yml": WORKFLOW,
            folder / ".gitignore": IGNORED,
            folder / "requirements.txt": requirements(),
            plans / SHOP_FILE: SHOP,
            plans / slug / PLAN_FILE: plan_text(FIRST_PLAN, "1x4", "wood glue"),
        }
    )
    say(f"A catalog is in {folder.as_posix()}. Go there, then: scantling check, and mkdocs serve to see it.")
    return FINE


def _today() -> date:
    return datetime.now(UTC).astimezone().date()


def _quoted(words: str) -> str:
    return "'" + words.replace("'", "''") + "'"


def _write(files: dict[Path, str]) -> None:
    """Write new files; none at all where one of them is there already."""
    taken = [path for path in files if path.exists()]
    if taken:
        raise misused(f"{taken[0].as_posix()} is there already", "choose another name; nothing was changed")
    try:
        for path, text in files.items():
            path.parent.mkdir(parents=True, exist_ok=True)
            with path.open("x", encoding="utf-8", newline="\n") as file:
                file.write(text)
    except OSError as error:
        raise misused(f"{error.filename} cannot be written ({error.strerror})") from None


NEW = Command(
    "new",
    "begin a plan, or with --catalog a catalog, that builds at once",
    "scantling new 'Harbour bench'",
    _add_arguments,
    _run,
    "Nothing that is there already is changed.",
)
