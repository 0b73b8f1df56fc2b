"""The live preview: it follows the plans, and a fault is a page, not the end."""

from __future__ import annotations

import os
import socket
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path
from urllib.error import URLError
from urllib.request import urlopen

import pytest

from tests.support.catalogs import BENCH, write_site

FAULTY = BENCH.replace("length: width}", "length: widht}")
PATIENCE = 40.0
"""Seconds; a build takes one or two, on a busy machine more."""


def free_port() -> int:
    """Return a port that nobody listens on."""
    with socket.socket() as listening:
        listening.bind(("127.0.0.1", 0))
        return listening.getsockname()[1]


class Preview:
    """`mkdocs serve` in a site's folder."""

    def __init__(self, site: Path, *arguments: str) -> None:
        port = free_port()
        self.url = f"http://127.0.0.1:{port}/"
        self.log = site / "serve.log"
        command = [sys.executable, "-m", "mkdocs", "serve", "-a", f"127.0.0.1:{port}", *arguments]
        with self.log.open("w") as log:
            told = {**os.environ, "NO_MKDOCS_2_WARNING": "1"}
            self.process = subprocess.Popen(command, cwd=site, env=told, stdout=log, stderr=log)

    def read(self, path: str) -> str:
        try:
            with urlopen(self.url + path, timeout=10) as answer:
                return answer.read().decode()
        except (URLError, ConnectionError, TimeoutError) as error:
            return f"no answer: {error}"

    def wait_for(self, words: str, path: str) -> str:
        """Return the page once it holds the words."""
        deadline = time.monotonic() + PATIENCE
        page = ""
        while time.monotonic() < deadline:
            assert self.process.poll() is None, f"the preview has ended:\n{self.log.read_text()}"
            page = self.read(path)
            if words in page:
                return page
            time.sleep(0.2)
        pytest.fail(f"{words!r} did not appear on {path}; last seen:\n{page[:2000]}\n{self.log.read_text()}")

    def stop(self) -> None:
        self.process.terminate()
        self.process.wait(20)


@pytest.fixture
def preview(tmp_path) -> Iterator:
    """Return a function that starts a preview of a site with the given stool."""
    running: list[Preview] = []

    def start(stool: str, *arguments: str) -> Preview:
        running.append(Preview(write_site(tmp_path, stool=stool), *arguments))
        return running[-1]

    yield start
    for one in running:
        one.stop()


def test_a_changed_plan_is_seen(preview, tmp_path):
    """An edit of a plan, of a price, and a new plan appear by themselves."""
    served = preview(BENCH)
    served.wait_for("Quay stool", "plans/stool/")

    plan = tmp_path / "plans" / "stool" / "plan.md"
    plan.write_text(BENCH.replace("Quay stool", "Mole stool"), "utf-8")
    served.wait_for("Mole stool", "plans/stool/")

    shop = tmp_path / "plans" / "shop.yml"
    shop.write_text(shop.read_text().replace("price: 18.40", "price: 17.31"), "utf-8")
    served.wait_for("$17.31", "plans/stool/")

    (tmp_path / "plans" / "late").mkdir()
    (tmp_path / "plans" / "late" / "plan.md").write_text(BENCH.replace("Quay stool", "Late stool"), "utf-8")
    served.wait_for("Late stool", "plans/")


def test_a_fault_is_a_page_and_mends(preview, tmp_path):
    """A plan that breaks while it is served, even strictly, shows its fault; mended, the catalog is back."""
    served = preview(BENCH, "--strict")
    served.wait_for("Quay stool", "plans/")

    plan = tmp_path / "plans" / "stool" / "plan.md"
    plan.write_text(FAULTY, "utf-8")
    page = served.wait_for("One fault to mend", "plans/")

    assert "plans/stool/plan.md:23:" in page
    assert "did you mean &#x27;width&#x27;?" in page

    plan.write_text(BENCH, "utf-8")
    served.wait_for("Quay stool", "plans/")


def test_a_preview_may_begin_with_faults(preview, tmp_path):
    """A first build of a faulty plan serves the faults; what is in order elsewhere is served beside them."""
    (tmp_path / "plans" / "good").mkdir(parents=True)
    good = BENCH.replace("Quay stool", "Pier stool")
    (tmp_path / "plans" / "good" / "plan.md").write_text(good, "utf-8")
    served = preview(FAULTY)
    served.wait_for("One fault to mend", "plans/")

    assert "Pier stool" in served.read("plans/good/")

    (tmp_path / "plans" / "stool" / "plan.md").write_text(BENCH, "utf-8")
    served.wait_for("Quay stool", "plans/stool/")


def test_a_file_that_no_one_can_read_does_not_end_a_preview(preview, tmp_path):
    """Bytes that are no text, written while the site is served, are a fault on the page."""
    served = preview(BENCH)
    served.wait_for("Quay stool", "plans/")
    (tmp_path / "plans" / "stool" / "plan.md").write_bytes(b"---\ntitle: \xff\xfe\n---\n")

    assert "UTF-8" in served.wait_for("to mend", "plans/")


def test_a_quick_preview_shows_what_changed(preview, tmp_path):
    """With `--dirty` an edited plan is shown, others are served as they were, what is gone is gone."""
    served = preview(BENCH, "--dirty")
    served.wait_for("Quay stool", "plans/stool/")
    other = tmp_path / "plans" / "other"
    other.mkdir()
    (other / "plan.md").write_text(BENCH.replace("Quay stool", "Other stool"))
    served.wait_for("Other stool", "plans/other/")
    (other / "plan.md").write_text(BENCH.replace("Quay stool", "Third stool"))
    served.wait_for("Third stool", "plans/other/")

    assert "Quay stool" in served.read("plans/stool/")
    assert "Third stool" in served.read("plans/")
    (other / "plan.md").unlink()
    served.wait_for("no answer: HTTP Error 404", "plans/other/")
    assert "Third stool" not in served.read("plans/")
