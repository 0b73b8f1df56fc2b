"""A whole catalog: the shop file and every plan beside it."""

from __future__ import annotations

import os
from collections.abc import Iterable
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

from scantling.fault import Fault, Faulty
from scantling.plan import Survey, survey_plan
from scantling.shop import Shop, read_shop
from scantling.source.diagnostic import Diagnostic, from_fault, from_found, sort_diagnostics
from scantling.source.document import LARGEST_FILE, Document, Found, make_document, read_document
from scantling.source.loaded import SourcePlan, SourceShop
from scantling.source.plan_file import PlainData, read_plan_file, read_shop_file
from scantling.source.together import check_together, claim_of

PLAN_FILE = "plan.md"
"""What a plan's file is called; its folder has the plan's name."""
SHOP_FILE = "shop.yml"
"""What a catalog's shop file is called."""
_NOTHING_READ = Survey(None, None, ())


@dataclass(frozen=True, slots=True)
class Catalog:
    """Everything in a folder of plans."""

    folder: Path
    shop: Shop | None
    source_shop: SourceShop
    plans: tuple[SourcePlan, ...]
    """By slug."""
    diagnostics: tuple[Diagnostic, ...]
    """Of the shop file and of all plans, in order."""

    def plan(self, slug: str) -> SourcePlan | None:
        """Return the plan of that name, or None."""
        return next((plan for plan in self.plans if plan.slug == slug), None)


def shown_path(path: Path, root: Path | None) -> str:
    """Return a path as it is shown: from `root` on, with forward slashes."""
    if root is not None:
        with suppress(ValueError):
            path = path.resolve().relative_to(root.resolve())
    return path.as_posix()


def _read(path: Path, shown: str) -> tuple[Document, list[Found]]:
    found: list[Found] = []
    try:
        if path.stat().st_size > LARGEST_FILE:
            return _too_large(path, shown)
        data = path.read_bytes()
    except OSError as error:
        found.append(
            Found("unreadable-file", _reason(error), 0, 0, "see whether the file is there and may be read")
        )
        return make_document(shown, ""), found
    return read_document(shown, data, found), found


def _too_large(path: Path, shown: str) -> tuple[Document, list[Found]]:
    with path.open("rb") as file:
        found: list[Found] = []
        return read_document(shown, file.read(LARGEST_FILE + 1), found, size=path.stat().st_size), found


def _reason(error: OSError) -> str:
    if isinstance(error, FileNotFoundError):
        return "there is no such file"
    if isinstance(error, IsADirectoryError):
        return "this is a folder, not a file"
    return "this file cannot be read" + (f" ({os.strerror(error.errno)})" if error.errno else "")


def _failed(plain: PlainData, faults: Iterable[Fault]) -> list[Diagnostic]:
    found = [from_found(one, plain.document) for one in plain.found]
    return found + [from_fault(fault, plain.document, plain.spans) for fault in faults]


def load_shop(path: Path, *, root: Path | None = None) -> SourceShop:
    """Return the shop file at `path`, with what is wrong in it."""
    document, found = _read(path, shown_path(path, root))
    plain = (
        read_shop_file(document, found)
        if not _is_unreadable(found)
        else PlainData(document, None, found=found)
    )
    shop = None
    faults: tuple[Fault, ...] = ()
    if plain.data is not None:
        try:
            shop = read_shop(plain.data)
        except Faulty as faulty:
            faults = faulty.faults
    diagnostics = sort_diagnostics(_failed(plain, faults))
    if any(one.is_fault for one in diagnostics):
        shop = None
    return SourceShop(path, document, plain.data, shop, plain.spans, diagnostics)


def _is_unreadable(found: list[Found]) -> bool:
    return any(one.code == "unreadable-file" for one in found)


def load_plan(path: Path, shop: Shop | None, *, slug: str = "", root: Path | None = None) -> SourcePlan:
    """Return the plan file at `path`, with everything that is wrong in it at every offered size.

    Args:
        shop: without one, only what does not depend on it is looked at.
        slug: the plan's name; the name of its folder if left out.
        root: the folder from which paths are shown.
    """
    slug = slug or (path.parent.name if path.name == PLAN_FILE else path.stem)
    document, found = _read(path, shown_path(path, root))
    plain = (
        read_plan_file(document, found)
        if not _is_unreadable(found)
        else PlainData(document, None, found=found)
    )
    survey = survey_plan(plain.data, slug, shop) if plain.data is not None else _NOTHING_READ
    diagnostics = sort_diagnostics(_failed(plain, survey.faults))
    if any(one.is_fault for one in diagnostics):
        survey = _NOTHING_READ
    return SourcePlan(slug, path, document, plain.data, survey.plan, plain.spans, survey.fitter, diagnostics)


def read_catalog(folder: Path, *, root: Path | None = None) -> Catalog:
    """Return everything in a folder of plans: `shop.yml`, and `NAME/plan.md` for each plan.

    Args:
        root: the folder from which paths are shown; the folder above `folder` if left out.
    """
    root = root if root is not None else folder.resolve().parent
    source_shop = load_shop(folder / SHOP_FILE, root=root)
    paths = sorted(folder.glob(f"*/{PLAN_FILE}"), key=lambda path: path.parent.name)
    plans = tuple(
        load_plan(path, source_shop.shop, root=root) for path in paths if not path.parent.name.startswith(".")
    )
    diagnostics = [*source_shop.diagnostics, *(one for plan in plans for one in plan.diagnostics)]
    diagnostics += check_together(map(claim_of, plans))
    return Catalog(folder, source_shop.shop, source_shop, plans, sort_diagnostics(diagnostics))
