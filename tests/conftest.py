"""Fixtures that tests of every room share: a browser, a served folder, work done once for all processes."""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path

import hypothesis
import pytest

from tests.serving import Serving
from tools import chromium

# The same examples on every run and machine, and no fault found in a slow hour;
# HYPOTHESIS_PROFILE=search looks further, with other examples each time.
hypothesis.settings.register_profile("steady", derandomize=True, deadline=None, database=None)
hypothesis.settings.register_profile("search", max_examples=2_000, deadline=None)
hypothesis.settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "steady"))

ROOT = Path(__file__).resolve().parent.parent
BROWSER_ARGUMENTS = [
    "--no-sandbox",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
    # drawing in three dimensions without a graphics card
    "--use-gl=angle",
    "--use-angle=swiftshader",
    "--enable-unsafe-swiftshader",
    "--ignore-gpu-blocklist",
]


@pytest.fixture(scope="session")
def root() -> Path:
    """Return the root of the repository."""
    return ROOT


@pytest.fixture(scope="session")
def browser():
    """Return a running headless Chromium; the test takes `browser.new_context()` or `browser.new_page()`.

    Use it only in tests marked `browser`.
    """
    from playwright.sync_api import sync_playwright

    path = chromium.find()
    if path is None:
        pytest.fail(f"no Chromium found: {chromium.HOW}")
    with sync_playwright() as play:
        running = play.chromium.launch(executable_path=path, args=BROWSER_ARGUMENTS)
        yield running
        running.close()


@pytest.fixture
def page(browser):
    """Return a fresh page in a context of its own; after the test it must have logged no error.

    A test that provokes one takes `browser` and makes its own page.
    """
    context = browser.new_context(viewport={"width": 1280, "height": 900})
    context.set_default_timeout(30_000)
    fresh = context.new_page()
    trouble: list[str] = []
    fresh.on("console", lambda message: message.type == "error" and trouble.append(message.text))
    fresh.on("pageerror", lambda error: trouble.append(str(error)))
    yield fresh
    context.close()

    assert trouble == []


@pytest.fixture(scope="session")
def serve_folder() -> Iterator[Callable[..., Serving]]:
    """Return a function that serves a folder on a free port of this machine until the tests end.

    `serve_folder(folder, under="shop/plans", wrong_wasm_type=True).url` is where it is, ending in a slash.
    """
    with ExitStack() as stack:
        yield lambda folder, **how: stack.enter_context(Serving(folder, **how))


@pytest.fixture(scope="session")
def once(tmp_path_factory, worker_id) -> Callable[[str, Callable[[Path], object]], Path]:
    """Return a function that fills a folder once for all test processes.

    `once("site", make)` calls `make(folder)` in the first process that asks; the others wait for it and get
    the same folder. They must not change what is in it. If `make` raises, the next that asks tries again.
    """
    shared = tmp_path_factory.getbasetemp()
    if worker_id != "master":
        shared = shared.parent

    def fill(name: str, make: Callable[[Path], object]) -> Path:
        import fcntl

        folder, done = shared / f"once-{name}", shared / f"once-{name}.done"
        with (shared / f"once-{name}.lock").open("w") as lock:
            fcntl.flock(lock, fcntl.LOCK_EX)
            if not done.exists():
                shutil.rmtree(folder, ignore_errors=True)
                folder.mkdir()
                make(folder)
                done.touch()
        return folder

    return fill


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Refuse a test that takes the browser without saying so in its marks."""
    for item in items:
        names = set(getattr(item, "fixturenames", ()))
        if names & {"browser", "page"} and not item.get_closest_marker("browser"):
            raise pytest.UsageError(f"{item.nodeid} takes the browser: mark it `browser`")
