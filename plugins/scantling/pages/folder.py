"""The finished pages as a folder that any site generator builds."""

from __future__ import annotations

import shutil
from pathlib import Path
from typing import Any

import yaml

from scantling.pages.content import raw
from scantling.pages.finished import Finished
from scantling.pages.front_matter import with_front_matter
from scantling.pages.live.site import LIVE_SCRIPTS, LIVE_STYLES
from scantling.pages.theme import FEATURES, SCRIPTS, STYLES, TEMPLATES, THEME, palette, template_words
from scantling.words import language_of, speaking


def write_folder(finished: Finished, folder: Path, *, site_name: str = "Plans", language: str = "en") -> None:
    """Write pages, side files, style and a small `mkdocs.yml` below `folder`.

    What an earlier run wrote there is replaced; other files are left alone.
    """
    with speaking(language_of(language)):
        _write_all(finished, folder, site_name, language)


def _write_all(finished: Finished, folder: Path, site_name: str, language: str) -> None:
    docs = folder / "docs"
    for page in finished.pages:
        _write(docs / page.path, with_front_matter(page))
    for side in finished.files:
        _write(docs / side.path, raw(side.source))
    for templates in (TEMPLATES, THEME):
        shutil.copytree(templates, folder / "overrides", dirs_exist_ok=True)
    if not (docs / "index.md").exists():
        _write(docs / "index.md", _home(finished, site_name))
    _write(folder / "mkdocs.yml", _settings(finished, site_name, language))


def _write(path: Path, content: str | bytes) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(content.encode("utf-8") if isinstance(content, str) else content)


def _home(finished: Finished, site_name: str) -> str:
    links = [f"- [{page.meta['title']}]({page.path})" for page in finished.pages if page.in_nav]
    return "\n".join([f"# {site_name}", "", *links, ""])


def _settings(finished: Finished, site_name: str, language: str) -> str:
    hidden = sorted({page.path.partition("/")[0] for page in finished.pages if not page.in_nav})
    live = any(file.path in LIVE_SCRIPTS for file in finished.files)
    settings: dict[str, Any] = {
        "site_name": site_name,
        "theme": {
            "name": "material",
            "custom_dir": "overrides",
            "font": False,
            "palette": palette(),
            "features": list(FEATURES),
        },
        "extra_css": [*STYLES, *(LIVE_STYLES if live else ())],
        "extra_javascript": [*SCRIPTS, *(LIVE_SCRIPTS if live else ())],
        "plugins": ["search"],
        "not_in_nav": "".join(f"/{folder}/*/\n" for folder in hidden),
        "markdown_extensions": [{"toc": {"permalink": False}}],
    }
    if language != "en":
        settings["theme"]["language"] = language
        settings["extra"] = {"scantling_words": template_words()}
    return yaml.safe_dump(settings, allow_unicode=True, sort_keys=False)
