"""Giving a site the notebook look through what the theme supports: folders, style, scripts, settings."""

from __future__ import annotations

from collections.abc import Iterable

from mkdocs.config.config_options import ExtraScriptValue
from mkdocs.config.defaults import MkDocsConfig

from scantling.pages import FEATURES, LIVE_SCRIPTS, LIVE_STYLES, PALETTE, SCRIPTS, STYLES, THEME


def wear_look(config: MkDocsConfig) -> None:
    """Put our templates behind the author's own, and fill in what the author left at the theme's default."""
    theme = config.theme
    folder = str(THEME)
    if folder not in theme.dirs:
        theme.dirs.insert(1 if theme.custom_dir else 0, folder)
    config.extra_css = [style for style in STYLES if style not in config.extra_css] + list(config.extra_css)
    _add_scripts(config, SCRIPTS)
    if "palette" not in theme or not theme["palette"]:
        theme["palette"] = [dict(option) for option in PALETTE]
    if isinstance(theme["font"], dict) and theme["font"].get("text") == "Roboto":
        # the theme would ask a font service on the network
        theme["font"] = False
    theme["features"] = list(dict.fromkeys([*theme["features"], *FEATURES]))


def wake_pages(config: MkDocsConfig) -> None:
    """Add the script and style with which plan pages answer a reader, whatever the look."""
    config.extra_css = [*config.extra_css, *(style for style in LIVE_STYLES if style not in config.extra_css)]
    _add_scripts(config, LIVE_SCRIPTS)


def _add_scripts(config: MkDocsConfig, scripts: Iterable[str]) -> None:
    for script in scripts:
        if script not in [str(other) for other in config.extra_javascript]:
            value = ExtraScriptValue(script)
            value.defer = True
            config.extra_javascript.append(value)
