"""The server and the browser that other tests stand on."""

from __future__ import annotations

from urllib.error import HTTPError
from urllib.request import urlopen

import pytest


@pytest.fixture
def folder(tmp_path):
    """Return a tiny site: a page, a script, a file of compiled code."""
    (tmp_path / "index.html").write_text(
        "<!doctype html><html lang=en><link rel=icon href=data:,><title>Bench</title>"
        "<script type=module src=move.js></script><p id=p>still</p>"
    )
    (tmp_path / "move.js").write_text("document.getElementById('p').textContent = 'moved'")
    (tmp_path / "core.wasm").write_bytes(b"\0asm\1\0\0\0")
    return tmp_path


def test_a_folder_is_served_below_a_path_and_nowhere_else(serve_folder, folder):
    """With `under`, the folder answers there and the rest of the host is empty."""
    served = serve_folder(folder, under="/shop/plans/")

    assert served.url.endswith("/shop/plans/")
    with urlopen(served.url + "core.wasm") as answer:
        assert answer.headers["Content-Type"] == "application/wasm"
        assert answer.read() == b"\0asm\1\0\0\0"
    with pytest.raises(HTTPError) as refused:
        urlopen(served.url.removesuffix("shop/plans/") + "core.wasm")
    with refused.value:
        assert refused.value.code == 404
    assert served.asked == ["/shop/plans/core.wasm", "/core.wasm"]


def test_wasm_can_be_served_with_the_wrong_type(serve_folder, folder):
    """A careless host is imitated on demand."""
    with urlopen(serve_folder(folder, wrong_wasm_type=True).url + "core.wasm") as answer:
        assert answer.headers["Content-Type"] == "application/octet-stream"


@pytest.mark.browser
def test_the_browser_opens_a_page_and_runs_its_script(serve_folder, folder, page):
    """A script of type module runs, so that scripts get the type they need."""
    page.goto(serve_folder(folder, under="deep").url)

    assert page.title() == "Bench"
    assert page.text_content("#p") == "moved"


def test_work_for_all_processes_is_done_once(once):
    """A second caller gets the folder that the first one filled."""
    calls = []

    def make(folder):
        calls.append(folder)
        (folder / "made").touch()

    first = once("example", make)

    assert once("example", make) == first
    assert (first / "made").exists()
    assert len(calls) <= 1
