"""A catalog as `scantling new --catalog` makes it, and running commands in it."""

from __future__ import annotations

import pytest

from scantling.cli import main


@pytest.fixture
def run(capsys, monkeypatch, tmp_path):
    """Return a function that runs a command in an empty folder and returns status, output and complaints."""
    monkeypatch.chdir(tmp_path)

    def run(*words: str) -> tuple[int, str, str]:
        status = main(words)
        told = capsys.readouterr()
        return status, told.out, told.err

    return run


@pytest.fixture
def catalog(run, monkeypatch, tmp_path):
    """Return a fresh catalog's folder, in which commands now run."""
    assert run("new", "--catalog", "shed")[0] == 0
    monkeypatch.chdir(tmp_path / "shed")
    return tmp_path / "shed"
