"""`scantling pages`: the finished pages as a folder, for any site generator."""

from __future__ import annotations

import sys
from argparse import ArgumentParser, Namespace
from pathlib import Path

from scantling.cli.catalogs import add_catalog_argument, find_catalog
from scantling.cli.command import FINE, Command, misused, say, tell
from scantling.measure import Display
from scantling.source import exit_status, render_full, summarize
from scantling.words import LANGUAGES


def _add_arguments(parser: ArgumentParser) -> None:
    parser.add_argument(
        "folder", metavar="DIR", type=Path, help="where the pages are written; made if it is not there"
    )
    add_catalog_argument(parser)
    parser.add_argument("--title", default="Plans", help="the name of the site (usually %(default)s)")
    parser.add_argument("--site-url", default="", help="where the site will be, for links on printed plans")
    parser.add_argument("--no-paper", dest="paper", action="store_false", help="make no PDFs")
    parser.add_argument(
        "--no-live", dest="live", action="store_false", help="leave out sizes of a reader's own choice"
    )
    parser.add_argument(
        "--workers", type=int, default=0, help="processes that work side by side (0: one a core)"
    )
    parser.add_argument(
        "--cluster", default="", metavar="tcp://HOST:PORT", help="a dask scheduler that does the work"
    )
    parser.add_argument(
        "--cache", type=Path, metavar="DIR", help="where results are remembered for the next time"
    )
    parser.add_argument(
        "--language", choices=LANGUAGES, default="en", help="of the site's own words (usually %(default)s)"
    )
    parser.add_argument("--units", choices=("in", "mm"), default="in", help="inches (usual) or millimetres")


def _run(given: Namespace) -> int:
    from scantling.build import How, build_catalog  # noqa: PLC0415 - only this command needs it
    from scantling.pages import Choices, ready_engine, ready_viewer, write_folder  # noqa: PLC0415 - likewise

    if given.folder.exists() and not given.folder.is_dir():
        raise misused(f"{given.folder} is a file", "name a folder")
    engine = ready_engine(tell) if given.live else ""
    choices = Choices(
        display=Display(given.units),
        papers=given.paper,
        site_url=given.site_url,
        site_name=given.title,
        link_cards=bool(given.site_url),
        language=given.language,
        engine=engine,
        viewer=ready_viewer(tell) if engine else "",
    )
    how = How(choices, given.paper, given.workers, given.cluster, given.cache)
    finished = build_catalog(find_catalog(given.plans), how).finished
    status = exit_status(finished.diagnostics)
    if finished.diagnostics:
        tell(render_full(finished.diagnostics, colour=sys.stderr.isatty()))
    if status != FINE:
        tell(f"nothing was written: {summarize(finished.diagnostics)}")
        return status
    write_folder(finished, given.folder, site_name=given.title, language=given.language)
    say(f"{len(finished.pages)} pages are in {given.folder}")
    return status


PAGES = Command(
    "pages",
    "write the finished pages as a folder of Markdown and side files, for any site generator",
    "scantling pages out/",
    _add_arguments,
    _run,
)
