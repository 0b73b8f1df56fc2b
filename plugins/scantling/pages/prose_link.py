"""Where the prose of a plan links to, so that a link that leads nowhere can be told of at its place."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from html import unescape
from urllib.parse import unquote, urljoin, urlsplit

from scantling.pages.choices import Choices
from scantling.pages.markdown_words import render_words
from scantling.source import SourcePlan, Spot, spot_at

_LINK = re.compile(r'<a href="([^"]*)"')
_ROOT = "https://site.invalid/"


@dataclass(frozen=True, slots=True)
class ProseLink:
    """A link to a page or file of the same site."""

    address: str
    """As it is written."""
    path: str
    """What it leads to, from the root of the site: `plans/bench/`."""
    spot: Spot


def prose_links(source: SourcePlan, choices: Choices) -> Iterator[ProseLink]:
    """Yield each link of a plan's prose that stays on the site; places within a page are not looked at."""
    if source.plan is None:
        return
    home = f"{_ROOT}{choices.folder}/{source.slug}/"
    html = "".join(render_words(source.plan).values())
    for written in dict.fromkeys(_LINK.findall(html)):
        address = unescape(written)
        if address.startswith(("#", "/")) or urlsplit(address).scheme:
            continue
        path = unquote(urlsplit(urljoin(home, address)).path).lstrip("/")
        yield ProseLink(address, path, _spot(source, address))


def _spot(source: SourcePlan, address: str) -> Spot:
    text = source.document.text
    found = text.find(f"]({address}")
    start = found + 2 if found >= 0 else max(text.find(address), 0)
    return spot_at(source.document, start, start + len(address))
