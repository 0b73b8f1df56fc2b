"""Links in the prose of plans, against the files of the site; the host looks at those of Markdown alone."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from mkdocs.structure.files import Files

from scantling.fault import Severity, did_you_mean
from scantling.pages import ProseLink
from scantling.source import Diagnostic


def broken_links(links: Iterable[ProseLink], files: Files) -> Iterator[Diagnostic]:
    """Yield a warning for each link to a page or file that is not there."""
    links = tuple(links)
    there = {path for file in files for path in (file.url, file.dest_uri)} if links else set()
    for link in links:
        if not {link.path, f"{link.path}index.html", f"{link.path}/index.html"} & there and link.path:
            pages = sorted(path for path in there if path.endswith("/"))
            help_line = did_you_mean(link.path, pages, kind="pages") or "mend the link, or leave it out"
            message = f"the link '{link.address}' leads to no page or file of this site"
            yield Diagnostic("broken-link", Severity.WARNING, message, link.spot, help_line)
