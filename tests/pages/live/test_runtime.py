"""What runs in the reader's browser: where it comes from, that it is checked, that it is always the same."""

from __future__ import annotations

import hashlib
import json
import re
import subprocess
import zipfile
from pathlib import Path

import pytest

from scantling.pages.live import runtime
from scantling.pages.live.runtime import Node, NoRuntime, find_runtime, get_runtime, ready_engine


@pytest.fixture(scope="module")
def made():
    """Return the runtime for the engine as it is now."""
    return get_runtime()


def test_it_is_found_again_without_being_made(made):
    """A second build finds what the first one made."""
    assert find_runtime() == made
    assert find_runtime(made.digest) == made
    assert ready_engine(pytest.fail) == made.digest


def test_it_holds_what_a_browser_loads_and_its_licences(made):
    """Core, library, engine, and the notice that goes with them."""
    assert [path.name for path in made.files()] == [
        "NOTICE.txt",
        "engine.zip",
        "lock.json",
        "pyodide.asm.mjs",
        "pyodide.asm.wasm",
        "pyodide.mjs",
        "stdlib.zip",
    ]
    notice = (made.folder / "NOTICE.txt").read_text("utf-8")
    assert {"Mozilla Public License", "PYTHON SOFTWARE FOUNDATION LICENSE", "MIT License"} <= {
        words
        for words in ("Mozilla Public License", "PYTHON SOFTWARE FOUNDATION LICENSE", "MIT License")
        if words in notice
    }


def test_the_engine_goes_without_what_only_a_build_needs(made):
    """No host, no paper, no Markdown, and no source: compiled code alone."""
    with zipfile.ZipFile(made.folder / "engine.zip") as archive:
        names = archive.namelist()
    rooms = {name.split("/")[1] for name in names if name.startswith("scantling/") and name.count("/") > 1}

    assert rooms.isdisjoint({"host", "paper", "cli", "source", "build", "quantities"})
    assert {"measure", "plan", "cutting", "report", "drawing", "checks", "pages"} <= rooms
    assert all(name.endswith(".pyc") or name == "ready.bin" for name in names)
    assert "scantling/pages/markdown_words.pyc" not in names


def test_whatever_a_browser_is_given_has_a_say_in_its_name(made):
    """A change of any file of the engine makes another engine, so that no site shows an old one."""
    with zipfile.ZipFile(made.folder / "engine.zip") as archive:
        given = {name.removesuffix("c") for name in archive.namelist() if name.endswith(".pyc")}

    assert given <= {path.relative_to(runtime.PLUGINS).as_posix() for path in runtime.sources()}
    assert "scantling/words/say.py" in given


def test_packing_twice_gives_the_same_bytes(made, tmp_path):
    """On any day, the same engine makes the same archives."""
    core = next(made.folder.parent.glob("pyodide-*"))
    Node.find().run([runtime.HERE / "pack.mjs", core, runtime.PLUGINS, tmp_path])

    for name in ("engine.zip", "stdlib.zip"):
        again, first = ((folder / name).read_bytes() for folder in (tmp_path, made.folder))
        assert hashlib.sha256(again).hexdigest() == hashlib.sha256(first).hexdigest(), name


def test_a_package_that_is_not_the_tested_one_is_refused(tmp_path):
    """The checksum is looked at before anything is unpacked."""

    class Forger(Node):
        def pack(self, package, folder):
            (folder / "pyodide.tgz").write_bytes(b"something else")

    with pytest.raises(NoRuntime, match="not the one that was tested"):
        runtime._core(Forger("node", ("npm",)), tmp_path)
    assert not list(tmp_path.glob("pyodide-*"))


def test_without_node_the_site_is_built_without_and_says_so(monkeypatch, tmp_path):
    """The author reads what is missing and how to get it."""
    monkeypatch.setenv("SCANTLING_CACHE", str(tmp_path))
    monkeypatch.setenv("PATH", str(tmp_path))
    monkeypatch.setattr(runtime.importlib.util, "find_spec", lambda _: None)
    told: list[str] = []

    assert ready_engine(told.append) == ""
    assert "no Node.js" in told[-1]
    assert "pip install 'scantling[live]'" in told[-1]


def test_a_program_that_fails_is_told_by_its_reason(tmp_path):
    """Not by the last line that it happens to print."""
    script = tmp_path / "fall.mjs"
    script.write_text("throw new Error('no room left')")

    with pytest.raises(NoRuntime, match="no room left"):
        Node.find().run([script])


def test_the_wheel_serves_where_the_machine_has_no_node(monkeypatch, tmp_path):
    """Its program and its package client are found inside the wheel."""
    for path in ("bin/node", "lib/node_modules/npm/bin/npm-cli.js"):
        (tmp_path / path).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / path).touch()
    monkeypatch.setattr(runtime.shutil, "which", lambda _: None)

    class Spec:
        submodule_search_locations = (str(tmp_path),)

    monkeypatch.setattr(runtime.importlib.util, "find_spec", lambda _: Spec)
    node = Node.find()

    assert node.node == str(tmp_path / "bin/node")
    assert node.npm == (node.node, str(tmp_path / "lib/node_modules/npm/bin/npm-cli.js"))


def test_scripts_are_small_and_reckon_nothing():
    """The scripts of the page hold no arithmetic on lengths or money: the engine does it all."""
    web = Path(runtime.HERE / "web")
    for name in ("plan.js", "trip.js", "mine.js", "faults.js", "store.js", "live.js"):
        text = (web / name).read_text("utf-8")
        assert len(text) < 12_000, name
        text = text.replace("import * as", "import")
        code = re.sub(
            r"`[^`]*`|\"[^\"]*\"|'[^']*'|//[^\n]*|/\*.*?\*/|/(?![/*])[^/\n]+/[a-z]*",
            "",
            text,
            flags=re.DOTALL,
        )
        assert not re.search(r"Math\.|parseFloat|parseInt|[\w)\]] [*/%-] [\w(]", code), name


def test_every_script_is_one_that_an_engine_of_scripts_can_read(tmp_path):
    """Each file parses."""
    web = Path(runtime.HERE / "web")
    node = Node.find().node
    for path in sorted(web.glob("*.js")):
        copy = tmp_path / f"{path.stem}.mjs"
        copy.write_bytes(path.read_bytes())
        done = subprocess.run([node, "--check", copy], capture_output=True, text=True, check=False)
        assert done.returncode == 0, done.stderr


def test_the_lock_names_the_pinned_version(made):
    """The stand-in for the list of packages is of the version that is served."""
    assert json.loads((made.folder / "lock.json").read_text())["info"]["version"] == runtime.PYODIDE
