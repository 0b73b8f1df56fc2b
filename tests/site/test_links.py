"""No link on the demo site leads nowhere."""

from __future__ import annotations

from html.parser import HTMLParser
from urllib.parse import unquote, urljoin, urlsplit

import pytest

OWN = "https://plans.example.org/"
"""The address that the demo site gives itself in absolute links."""


class Page(HTMLParser):
    """What a page links to, and what can be linked to on it."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.links: list[str] = []
        self.places: set[str] = set()
        self.feed(text)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Collect from one element."""
        told = dict(attrs)
        self.places |= {told[name] or "" for name in ("id", "name") if name in told}
        self.links += [told[name] or "" for name in ("href", "src", "poster") if name in told]
        for name in ("srcset", "imagesrcset"):
            self.links += [
                choice.split()[0] for choice in (told.get(name) or "").split(",") if choice.strip()
            ]


@pytest.mark.timeout(120)
def test_every_link_leads_to_a_file_and_a_place_on_it(site):
    """Each address within the site is that of a file in it, and each place named after # is there."""
    pages = {
        "/" + path.relative_to(site).as_posix(): Page(path.read_text("utf-8"))
        for path in site.rglob("*.html")
    }
    lost = [
        f"{here}: {link}"
        for here, page in sorted(pages.items())
        for link in dict.fromkeys(page.links)
        if not found(site, pages, here, link)
    ]
    assert lost == []
    assert sum(len(page.links) for page in pages.values()) > 1000


def found(site, pages, here: str, link: str) -> bool:
    """Return whether a link leads somewhere; those to other sites are not asked."""
    whole = urljoin(OWN.rstrip("/") + here.removesuffix("index.html"), link)
    if not whole.startswith(OWN) or link.startswith("data:"):
        return True
    parts = urlsplit(whole)
    path = unquote(parts.path)
    path += "index.html" if path.endswith("/") else ""
    if not (site / path[1:]).is_file():
        return False
    place = unquote(parts.fragment)
    return not place or path not in pages or place in pages[path].places
