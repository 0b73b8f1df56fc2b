"""Finding the catalog, and the plans that a command names."""

from __future__ import annotations

from argparse import ArgumentParser
from pathlib import Path

from scantling.cli.command import misused
from scantling.fault import did_you_mean
from scantling.source import PLAN_FILE, SHOP_FILE, SourcePlan, SourceShop, load_plan, load_shop


def add_catalog_argument(parser: ArgumentParser) -> None:
    """Let a command be told where the plans are."""
    parser.add_argument(
        "--plans",
        metavar="DIR",
        type=Path,
        help=f"the folder with {SHOP_FILE} and a folder for each plan (usually ./plans)",
    )


def find_catalog(given: Path | None) -> Path:
    """Return the folder of plans: as given, or `plans` here, or here."""
    if given is not None:
        if not given.is_dir():
            raise misused(f"there is no folder {given}")
        return given
    for folder in (Path("plans"), Path()):
        if (folder / SHOP_FILE).is_file():
            return folder
    raise misused(
        f"there is no plans/{SHOP_FILE} here",
        "go to the catalog, or begin one: scantling new --catalog NAME",
    )


def plan_names(folder: Path) -> list[str]:
    """Return the names of all plans in a catalog, in order."""
    found = (path.parent.name for path in folder.glob(f"*/{PLAN_FILE}"))
    return sorted(name for name in found if not name.startswith("."))


def find_plan(name: str, folder: Path) -> Path:
    """Return the file of a plan that is named by its folder's name, its folder or its file."""
    names = plan_names(folder)
    if name in names:
        return folder / name / PLAN_FILE
    path = Path(name)
    if path.is_file():
        return path
    if (path / PLAN_FILE).is_file():
        return path / PLAN_FILE
    raise misused(f"there is no plan '{name}' in {folder}", did_you_mean(name, names, kind="plans"))


def shop_of(folder: Path) -> SourceShop:
    """Return the shop file of a catalog, its path shown from here."""
    return load_shop(folder / SHOP_FILE, root=Path())


def plan_of(path: Path, shop: SourceShop) -> SourcePlan:
    """Return a plan, its path shown from here."""
    return load_plan(path, shop.shop, root=Path())
