"""Doing on a live page what a reader does, and waiting as a reader waits."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from typing import Any

from tests.support.whole_page import lay_out

READY = 90_000
"""Milliseconds that the engine may take on a busy machine."""
PHONE = {"width": 390, "height": 844}
DESKTOP = {"width": 1280, "height": 900}
BENCH = "plans/entry-bench/"


def say(page) -> str:
    """Return what the page says of itself."""
    return page.inner_text("[data-live-say]")


def wait(page, words: str) -> None:
    """Wait until the page says something that holds some words, and has put everything in its place."""
    done = """words => {
      const said = document.querySelector("[data-live-say]");
      return !said.closest("[data-live]").hasAttribute("aria-busy") && said.textContent.includes(words);
    }"""
    page.wait_for_function(done, arg=words, timeout=READY)


def size(page, name: str):
    """Return the field of a named size, once the page listens to it."""
    return page.locator(f'[data-live]:not([inert]) input[type="text"][data-name="{name}"]')


def choose(page, name: str, text: str) -> None:
    """Type a size and leave the field."""
    size(page, name).fill(text)
    size(page, name).press("Tab")


def fragment(page, name: str) -> str:
    """Return the words of a piece of the page, with plain spaces."""
    lay_out(page)
    words = page.locator(f'[data-fragment="{name}"]').inner_text()
    return re.sub(r"\s+", " ", words.replace("\N{NO-BREAK SPACE}", " "))


def told(page) -> list[str]:
    """Return every fault and warning that is seen."""
    return [
        one.inner_text() for one in page.locator("[data-fault]:visible, [data-owned-fault]:visible").all()
    ]


def cost(page) -> int:
    """Return the cost in the title block, in cents."""
    words = page.locator(".sc-fact--cost dd").inner_text()
    return int(re.sub(r"\D", "", words.split("\n")[0]))


def watch(page) -> list[str]:
    """Return a list that fills with what goes wrong behind the page."""
    trouble: list[Any] = []
    page.on("console", lambda message: message.type == "error" and trouble.append(message.text))
    page.on("pageerror", lambda error: trouble.append(str(error)))
    return trouble


@contextmanager
def fresh_pages(browser, **usual: Any) -> Iterator[Callable[..., Any]]:
    """Give a function that opens a page in a context of its own; in the end no page may have logged an error.

    Args:
        usual: how every context is opened.
    """
    opened = []

    def open_page(viewport: Mapping[str, int] = DESKTOP, **how: Any) -> Any:
        context = browser.new_context(viewport=viewport, **usual, **how)
        context.set_default_timeout(READY)
        page = context.new_page()
        opened.append((context, watch(page)))
        return page

    try:
        yield open_page
    finally:
        for context, _ in opened:
            context.close()
    assert [trouble for _, trouble in opened if trouble] == []
