"""The one place where words become safe to stand in a page."""

from __future__ import annotations

import re
from collections.abc import Iterable

from scantling.drawing import escape as escape_xml

_LINE, _LINE_HELD = "\n", "&#10;"
_HELD = re.compile("[{}`]")
_BRACES = {ord("{"): "&#123;", ord("}"): "&#125;", ord("`"): "&#96;"}


def escape(words: object) -> str:
    """Return words as they may stand between tags or inside a quoted attribute.

    Braces and backticks are escaped as well, so that no template language or Markdown extension of the
    host finds work in an author's words.
    """
    safe = escape_xml(str(words))
    return safe.translate(_BRACES) if _HELD.search(safe) else safe


def tag(name: str, content: str = "", /, **attributes: object) -> str:
    """Return an element around content that is HTML already.

    An attribute that is None or False is left out, one that is True stands alone; `class_` is written
    `class`, other underscores become hyphens.
    """
    if not attributes:
        return f"<{name}>" if name in _VOID else f"<{name}>{content}</{name}>"
    written = "".join(
        attribute(key.rstrip("_").replace("_", "-"), value) for key, value in attributes.items()
    )
    return f"<{name}{written}>" if name in _VOID else f"<{name}{written}>{content}</{name}>"


_VOID = ("br", "hr", "img", "input", "link", "meta", "source")


def attribute(name: str, value: object) -> str:
    """Return an attribute with the space before it, or nothing where the value is None or False."""
    if value is None or value is False:
        return ""
    if value is True:
        return f" {name}"
    # a line's end in it would not outlive the host's Markdown
    return f' {name}="{_LINE_HELD.join(map(escape, str(value).split(_LINE)))}"'


def items(contents: Iterable[str], **attributes: object) -> str:
    """Return a list of contents that are HTML already, or nothing where there are none."""
    inner = "".join(f"<li>{content}</li>" for content in contents)
    return tag("ul", inner, **attributes) if inner else ""


def sentence(words: str) -> str:
    """Return words as a sentence: with a capital and a full stop."""
    whole = words[:1].upper() + words[1:]
    return whole if whole.endswith((".", "!", "?")) else f"{whole}."


def slug(words: str) -> str:
    """Return words as they may stand in an address: lower-case letters, digits and single hyphens."""
    kept = "".join(letter if letter.isascii() and letter.isalnum() else "-" for letter in words.lower())
    return "-".join(part for part in kept.split("-") if part)
