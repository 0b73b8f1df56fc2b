"""Giving a site the notebook look through what the theme supports: folders, style, scripts, settings."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from mkdocs.config.config_options import ExtraScriptValue
from mkdocs.config.defaults import MkDocsConfig

from scantling.pages import (
    FEATURES,
    LIVE_SCRIPTS,
    LIVE_STYLES,
    SCRIPTS,
    STYLES,
    TEMPLATES,
    THEME,
    TRIP,
    palette,
    template_words,
)
from scantling.words import LANGUAGES, say, spoken


def language_for(config: MkDocsConfig, wanted: str | None) -> str:
    """Return the language of the site's own words: the one wanted, else the theme's if it is there."""
    theme = str(config.theme["language"]) if "language" in config.theme else "en"
    return wanted or (theme if theme in LANGUAGES else "en")


def speak(config: MkDocsConfig) -> None:
    """Let theme and templates speak as the site does; a theme that was told a language keeps it."""
    if "language" in config.theme and config.theme["language"] == "en":
        config.theme["language"] = spoken().code
    if spoken().code != "en":
        config.extra["scantling_words"] = template_words()


def add_templates(config: MkDocsConfig) -> None:
    """Put the templates that our pages are set in behind the author's own."""
    _put_behind(config, TEMPLATES)


def _put_behind(config: MkDocsConfig, folder: Path) -> None:
    theme = config.theme
    if str(folder) not in theme.dirs:
        theme.dirs.insert(1 if theme.custom_dir else 0, str(folder))


def wear_look(config: MkDocsConfig) -> None:
    """Dress the pages, and fill in what the author left at the theme's default."""
    theme = config.theme
    _put_behind(config, THEME)
    config.extra_css = [style for style in STYLES if style not in config.extra_css] + list(config.extra_css)
    _add_scripts(config, SCRIPTS)
    if "palette" not in theme or not theme["palette"]:
        theme["palette"] = palette()
    if isinstance(theme["font"], dict) and theme["font"].get("text") == "Roboto":
        # the theme would ask a font service on the network
        theme["font"] = False
    theme["features"] = list(dict.fromkeys([*theme["features"], *FEATURES]))


def wake_pages(config: MkDocsConfig, units: str) -> None:
    """Add the script and style with which plan pages answer a reader, whatever the look, and the trip."""
    config.extra_css = [*config.extra_css, *(style for style in LIVE_STYLES if style not in config.extra_css)]
    _add_scripts(config, LIVE_SCRIPTS)
    # the switch at the head of each page starts with what the site is written in
    config.extra["scantling_units"] = units
    if config.nav is not None and TRIP not in str(config.nav):
        config.nav = [*config.nav, {say("Shopping trip"): TRIP}]


def leave_out_trip(config: MkDocsConfig) -> None:
    """Take the shopping trip out of the author's `nav` where the site is built without it."""
    if config.nav is not None:
        config.nav = [entry for entry in config.nav if entry != TRIP and TRIP not in _targets(entry)]


def _targets(entry: object) -> list[object]:
    return list(entry.values()) if isinstance(entry, dict) else []


def _add_scripts(config: MkDocsConfig, scripts: Iterable[str]) -> None:
    for script in scripts:
        if script not in [str(other) for other in config.extra_javascript]:
            value = ExtraScriptValue(script)
            value.defer = True
            config.extra_javascript.append(value)
