"""`scantling pages`: the finished pages as a folder, for any site generator."""

from __future__ import annotations

import sys
from argparse import ArgumentParser, Namespace
from pathlib import Path

from scantling.cli.catalogs import add_catalog_argument, find_catalog
from scantling.cli.command import FINE, Command, misused, say, tell
from scantling.measure import Display
from scantling.source import exit_status, read_catalog, render_full, summarize


def _add_arguments(parser: ArgumentParser) -> None:
    parser.add_argument(
        "folder", metavar="DIR", type=Path, help="where the pages are written; made if it is not there"
    )
    add_catalog_argument(parser)
    parser.add_argument("--title", default="Plans", help="the name of the site (usually %(default)s)")
    parser.add_argument("--units", choices=("in", "mm"), default="in", help="inches (usual) or millimetres")


def _run(given: Namespace) -> int:
    from scantling.pages import Choices, make_pages, write_folder  # noqa: PLC0415 - only this command needs it

    if given.folder.exists() and not given.folder.is_dir():
        raise misused(f"{given.folder} is a file", "name a folder")
    catalog = read_catalog(find_catalog(given.plans), root=Path())
    finished = make_pages(catalog, Choices(display=Display(given.units)))
    status = exit_status(finished.diagnostics)
    if finished.diagnostics:
        tell(render_full(finished.diagnostics, colour=sys.stderr.isatty()))
    if status != FINE:
        tell(f"nothing was written: {summarize(finished.diagnostics)}")
        return status
    write_folder(finished, given.folder, site_name=given.title)
    say(f"{len(finished.pages)} pages are in {given.folder}")
    return status


PAGES = Command(
    "pages",
    "write the finished pages as a folder of Markdown and side files, for any site generator",
    "scantling pages out/",
    _add_arguments,
    _run,
)
