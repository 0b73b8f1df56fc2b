"""The feed of a site as Atom (RFC 4287): its newest plans and posts, for readers who follow many sites.

The same site gives the same bytes: an entry's days are those that its author wrote, the feed's is the
newest of them, and no clock is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from xml.etree import ElementTree as ET

FEED = "feed.xml"
"""Where it lies, from the root of the site."""
MOST = 40
"""So many entries are told of, the newest."""
_ATOM = "http://www.w3.org/2005/Atom"


@dataclass(frozen=True, slots=True)
class Entry:
    """One plan or post."""

    path: str
    """Its page, from the root of the site."""
    title: str
    updated: str
    """A day, or a moment as RFC 3339 has it."""
    published: str = ""
    """Likewise; "" where that is not known."""
    summary: str = ""
    content: str = ""
    """HTML whose addresses are whole."""
    words: tuple[str, ...] = ()
    """Tags and categories."""
    author: str = ""
    first_path: str = ""
    """Where its page first was, by which feed readers know it again; "" for `path`."""


@dataclass(frozen=True, slots=True)
class Site:
    """Whose feed it is."""

    url: str
    title: str
    subtitle: str = ""
    author: str = ""
    rights: str = ""
    language: str = ""


def atom(entries: Sequence[Entry], site: Site) -> bytes:
    """Return the feed, its newest entries first.

    Args:
        entries: one at least; a feed without any has no day.
    """
    newest = sorted(entries, key=lambda entry: (entry.title, entry.path))
    newest.sort(key=lambda entry: _moment(entry.updated), reverse=True)
    root = ET.Element("feed", {"xmlns": _ATOM})
    if site.language:
        root.set("xml:lang", site.language)
    home = site.url.rstrip("/") + "/"
    _add(root, "title", site.title)
    if site.subtitle:
        _add(root, "subtitle", site.subtitle)
    _add(root, "id", home)
    _add(root, "updated", _moment(newest[0].updated))
    _add(root, "link", rel="self", type="application/atom+xml", href=home + FEED)
    _add(root, "link", rel="alternate", type="text/html", href=home)
    _add(ET.SubElement(root, "author"), "name", site.author or site.title)
    if site.rights:
        _add(root, "rights", site.rights)
    for entry in newest[:MOST]:
        _entry(root, entry, home)
    ET.indent(root)
    written: bytes = ET.tostring(root, encoding="utf-8", xml_declaration=True)
    return written + b"\n"


def _entry(root: ET.Element, entry: Entry, home: str) -> None:
    made = ET.SubElement(root, "entry")
    _add(made, "title", entry.title)
    _add(made, "id", home + (entry.first_path or entry.path))
    _add(made, "updated", _moment(entry.updated))
    if entry.published:
        _add(made, "published", _moment(entry.published))
    _add(made, "link", rel="alternate", type="text/html", href=home + entry.path)
    if entry.author:
        _add(ET.SubElement(made, "author"), "name", entry.author)
    for word in entry.words:
        _add(made, "category", term=word)
    if entry.summary:
        _add(made, "summary", entry.summary)
    if entry.content:
        _add(made, "content", entry.content, type="html")


def _add(parent: ET.Element, name: str, words: str = "", **attributes: str) -> None:
    element = ET.SubElement(parent, name, attributes)
    element.text = "".join(sign for sign in words if _is_xml(sign)) or None


def _is_xml(sign: str) -> bool:
    """Return whether XML 1.0 has a sign at all; control characters it has not."""
    return sign in "\t\n\r" or " " <= sign <= "\ud7ff" or "\ue000" <= sign <= "\ufffd" or sign > "\uffff"


def _moment(day: str) -> str:
    return day if "T" in day else f"{day}T00:00:00Z"
