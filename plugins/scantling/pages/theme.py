"""The notebook look: where its files are, and how a site of mkdocs-material is told to wear it."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from scantling.words import mark, say

THEME = Path(__file__).parent / "notebook"
"""A folder of templates, style and scripts, for `theme.dirs` or `custom_dir`."""

TEMPLATES = Path(__file__).parent / "templates"
"""A folder of the templates without which pages cannot be set, whatever they look like; it comes behind."""

STYLES = ("assets/scantling/notebook.css",)
"""Style sheets, from the root of the site."""

SCRIPTS = ("assets/scantling/notebook.js", "assets/scantling/finding.js")
"""Scripts, from the root of the site."""

PALETTE: tuple[dict[str, Any], ...] = (
    {
        "media": "(prefers-color-scheme: light)",
        "scheme": "notebook",
        "primary": "custom",
        "accent": "custom",
        "toggle": {"icon": "material/weather-night", "name": mark("Dark page")},
    },
    {
        "media": "(prefers-color-scheme: dark)",
        "scheme": "notebook-night",
        "primary": "custom",
        "accent": "custom",
        "toggle": {"icon": "material/weather-sunny", "name": mark("Light page")},
    },
)
"""Light and dark, as the reader's device is set, with a switch."""

FEATURES = ("navigation.tabs", "navigation.indexes", "navigation.top", "toc.follow", "search.highlight")
"""Features of the theme that the look counts on."""

TEMPLATE_WORDS = (
    mark("All plans"),
    mark("Where this page stands"),
    mark("Loading the page"),
    mark("Show lengths in"),
    mark("There is no page here"),
    mark("It may have moved, or its address is mistyped."),
)
"""What the templates say of themselves; they look for it under `extra.scantling_words`."""


def palette() -> list[dict[str, Any]]:
    """Return light and dark, with the words of their switch in the language that is spoken."""
    return [
        {**option, "toggle": {**option["toggle"], "name": say(option["toggle"]["name"])}}
        for option in PALETTE
    ]


def template_words() -> dict[str, str]:
    """Return what the templates say in the language that is spoken."""
    return {words: say(words) for words in TEMPLATE_WORDS}
