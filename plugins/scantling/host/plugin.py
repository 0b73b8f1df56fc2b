"""The plugin itself: one method an event of the host, in the order in which they are called."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path
from typing import Any, Literal

from jinja2 import Environment
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError
from mkdocs.livereload import LiveReloadServer
from mkdocs.plugins import BasePlugin, event_priority, get_plugin_logger
from mkdocs.structure.files import File, Files
from mkdocs.structure.nav import Navigation
from mkdocs.structure.pages import Page as MkPage
from mkdocs.utils.templates import TemplateContext

from scantling.build import Built, Cache, How, build_catalog
from scantling.fault import Severity
from scantling.host.config import ScantlingConfig
from scantling.host.first_picture import with_first_picture
from scantling.host.kept_file import KeptFile, PageFile, Published
from scantling.host.links import broken_links
from scantling.host.look import add_templates, language_for, leave_out_trip, speak, wake_pages, wear_look
from scantling.host.pieces import give_meta, put_back_rest, put_back_words, take_out
from scantling.host.publishing import Publishing
from scantling.host.slips import mend
from scantling.host.templates import remember_templates
from scantling.measure import Display
from scantling.pages import Choices, Finished, fault_page, ready_engine, ready_viewer
from scantling.source import Diagnostic, render_full, write_price_file
from scantling.words import language_of, speaking

log = get_plugin_logger("scantling")


class ScantlingPlugin(BasePlugin[ScantlingConfig]):  # type: ignore[no-untyped-call]
    """Makes the pages of every plan when a site is built or served."""

    def __init__(self) -> None:
        self.is_serving = False
        self.finished: Finished | None = None
        self.built: Built | None = None
        self.engine = ""
        self.language = "en"
        self.viewer = ""
        self.published = Published()
        self.cache: Cache | None = None
        self.files: Files | None = None
        self.publishing = Publishing(log.warning)

    def on_startup(self, *, command: Literal["build", "gh-deploy", "serve"], dirty: bool) -> None:
        """Remember whether a person is watching, who wants to see faults and not lose the preview."""
        del dirty
        self.is_serving = command == "serve"

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Put our templates, style and scripts at the theme's side, in the site's language."""
        self.language = language_for(config, self.config.language) if self.config.enabled else "en"
        with speaking(language_of(self.language)):
            self._dress(config)
        if self.config.enabled:
            wants_cards = self.config.link_cards and not self.is_serving
            self.publishing.prepare(config, feed=self.config.feed, cards=wants_cards)
        return config

    def _dress(self, config: MkDocsConfig) -> None:
        if self.config.enabled:
            add_templates(config)
        if self.config.enabled and self.config.style:
            wear_look(config)
            speak(config)
        self.engine = ready_engine(log.info) if self.config.enabled and self.config.live else ""
        self.viewer = ready_viewer(log.info) if self.engine else ""
        if self.engine:
            wake_pages(config, self.config.units)
        elif self.config.enabled:
            leave_out_trip(config)

    def on_pre_build(self, *, config: MkDocsConfig) -> None:
        """Make the pages, before the host empties the folder of the last good site."""
        self.finished = None
        if not self.config.enabled:
            return
        how = self._how(config)
        if self.cache is None or self.cache.folder != how.cache:
            self.cache = Cache(how.cache)
        self.built = build_catalog(self._folder(config), how, cache=self.cache)
        finished = self.built.finished
        for entry in self.built.damaged:
            log.info("a remembered result was damaged and was made again: %s", entry)
        if finished.faults and not self.is_serving:
            raise PluginError(_told(finished.faults))
        self._warn(finished.diagnostics)
        self.finished = finished
        self.publishing.begin(finished)

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """Hand the pages and side files over."""
        if self.finished is None:
            return files
        if self.finished.faults:
            page = fault_page(self.finished.faults, self.config.plans)
            pages = [page, *(other for other in self.finished.pages if other.path != page.path)]
        else:
            pages = list(self.finished.pages)
        for page in pages:
            _put(files, self._noted(PageFile.of_page(config, page)))
        for side in self.finished.files:
            _put(files, self._noted(KeptFile.beside(config, side)))
        for file in self.publishing.files(config):
            _put(files, file)
        return files

    def on_env(self, env: Environment, *, config: MkDocsConfig, files: Files) -> Environment:
        """Tell of links in plans that lead nowhere, now that all files of the site are known.

        From here on the theme's templates are compiled once and remembered.
        """
        del config
        self.files = files if self.config.enabled else None
        remember_templates(env, self.cache)
        if self.finished is not None:
            self._warn(broken_links(self.finished.links, files))
        return env

    @event_priority(100)
    def on_page_markdown(self, markdown: str, *, page: MkPage, config: MkDocsConfig, files: Files) -> str:
        """Give a page of ours its front matter before other plugins look at it."""
        del config, files
        give_meta(page)
        self.publishing.open(page)
        return markdown

    @event_priority(100)
    def on_page_content(self, html: str, *, page: MkPage, config: MkDocsConfig, files: Files) -> str:
        """Put the pieces with words to be found into a page of ours."""
        del config, files
        self.publishing.read(page, html)
        return put_back_words(html, page)

    @event_priority(-100)
    def on_page_context(
        self, context: TemplateContext, *, page: MkPage, config: MkDocsConfig, nav: Navigation
    ) -> TemplateContext:
        """Put the other pieces into a page of ours, when the search has seen it."""
        del nav
        put_back_rest(page)
        self.publishing.dress(page, context, config)
        return context

    @event_priority(-100)
    def on_post_page(self, output: str, *, page: MkPage, config: MkDocsConfig) -> str:
        """Let go of what was put into a page of ours, and mend what the theme's templates got wrong."""
        del config
        take_out(page)
        output = mend(output)
        return output if self.files is None else with_first_picture(output, page.file, self.files)

    def on_post_template(self, output: str, *, template_name: str, config: MkDocsConfig) -> str:
        """Mend the same in a page that no file stands behind, such as that for a wrong address."""
        del template_name, config
        return mend(output)

    def on_serve(self, server: LiveReloadServer, *, config: MkDocsConfig, builder: Any) -> LiveReloadServer:
        """Rebuild when a plan changes."""
        del builder
        self.is_serving = True
        folder = self._folder(config)
        if self.config.enabled and folder.is_dir():
            server.watch(str(folder))
        return server

    def _folder(self, config: MkDocsConfig) -> Path:
        return self._root(config) / self.config.plans

    def _root(self, config: MkDocsConfig) -> Path:
        return Path(config.config_file_path).parent if config.config_file_path else Path.cwd()

    def on_post_build(self, *, config: MkDocsConfig) -> None:
        """Keep the prices of the site that was just built, for the report after the next change."""
        self.published.settle()
        self.publishing.finish(config, self.cache)
        built = self.built
        if built is not None and built.prices is not None and self.config.keep_prices and not self.is_serving:
            write_price_file(self._folder(config), built.prices)

    def _how(self, config: MkDocsConfig) -> How:
        cache = self._root(config) / self.config.cache if self.config.cache else None
        return How(
            choices=self._choices(config),
            with_paper=self.config.paper and not self.is_serving,
            workers=self.config.workers,
            cluster=self.config.cluster,
            cache=cache,
        )

    def _choices(self, config: MkDocsConfig) -> Choices:
        usual = Choices()
        return Choices(
            engine=self.engine,
            viewer=self.viewer,
            papers=self.config.paper and not self.is_serving,
            site_url=config.site_url or "",
            site_name=config.site_name,
            link_cards=self.publishing.has_cards,
            language=self.language,
            folder=Path(self.config.plans).name,
            title=self.config.title,
            intro=self.config.intro or usual.intro,
            display=Display(self.config.units, self.config.fraction),
        )

    def _noted(self, file: KeptFile) -> KeptFile:
        """Return the file; in a preview it knows whether it has to be made again."""
        return self.published.note(file) if self.is_serving else file

    def _warn(self, diagnostics: Iterable[Diagnostic]) -> None:
        """Tell of what is doubtful; a strict build counts it, but a strict preview would stand still."""
        for one in diagnostics:
            if one.severity is Severity.WARNING:
                (log.info if self.is_serving else log.warning)(render_full((one,)))
            elif one.is_fault:
                log.info(render_full((one,)))


def _told(faults: tuple[Diagnostic, ...]) -> str:
    return f"the plans have faults, and no site was made\n\n{render_full(faults)}"


def _put(files: Files, file: File) -> None:
    """Add a file in the place of one of the same name, which the author's own folder may hold."""
    if file.src_uri not in files.src_uris:
        files.append(file)
