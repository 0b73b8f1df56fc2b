"""What a fresh machine gets, and that it gets it only once."""

from __future__ import annotations

import hashlib
import re
import subprocess
import sys
import tomllib
from importlib.metadata import entry_points

import pytest

from tests.bench import __main__ as bench
from tools import bootstrap, chromium, longest, site

KEPT = {
    "verify_cuts.py": "ebe42a14faa6ac3531172a19a002a86a63ab50603da5e95d0e8c2e6be123a920",
    "make_problems.py": "0d04f83a3da7f0d144978b5e4b522b530e7669d395f560f21448141fbfe55a81",
}


@pytest.fixture
def project(root):
    """Return what pyproject.toml says."""
    return tomllib.loads((root / "pyproject.toml").read_text("utf-8"))


def test_a_change_of_lint_rules_needs_no_new_environment(project):
    """Only what changes the content of the environment changes its fingerprint."""
    before = bootstrap.fingerprint(project)

    assert bootstrap.fingerprint({**project, "tool": {}}) == before
    assert bootstrap.fingerprint({**project, "dependency-groups": {"dev": ["one-more"]}}) != before


def test_other_versions_need_a_new_environment(project, tmp_path, monkeypatch):
    """A change of the exact versions is noticed by content, not by the clock."""
    before = bootstrap.fingerprint(project)
    other = tmp_path / "constraints.txt"
    other.write_text(bootstrap.CONSTRAINTS.read_text("utf-8"))
    monkeypatch.setattr(bootstrap, "CONSTRAINTS", other)
    same = bootstrap.fingerprint(project)
    other.write_text("markdown==3.6\n")

    assert same == before
    assert bootstrap.fingerprint(project) != before


def test_an_environment_that_was_moved_does_not_work(tmp_path):
    """A Python whose home is elsewhere, or that is none, is replaced."""
    assert not bootstrap.works(tmp_path / "python")

    link = tmp_path / "bin" / "python"
    link.parent.mkdir()
    link.symlink_to(sys.executable)

    assert not bootstrap.works(link)


def test_every_dependency_has_its_exact_version(project):
    """What pyproject.toml names directly stands in the constraints, with a version and nothing else."""
    pinned = dict(line.split("==") for line in bootstrap.CONSTRAINTS.read_text("utf-8").splitlines())
    named = [*project["project"]["dependencies"], *project["dependency-groups"]["dev"]]
    names = {re.match(r"[\w.-]+", line)[0].lower().replace("_", "-") for line in named}

    assert names - {name.lower().replace("_", "-") for name in pinned} == set()


def test_the_host_finds_the_plugin_by_its_name():
    """The installed project offers the plugin and the command under the names that it promises."""
    (plugin,) = entry_points(group="mkdocs.plugins", name="scantling")
    (command,) = entry_points(group="console_scripts", name="scantling")

    assert plugin.value == "scantling.host:ScantlingPlugin"
    assert command.value == "scantling.cli:main"


@pytest.mark.parametrize("name", sorted(KEPT))
def test_the_judge_of_the_solver_is_unchanged(root, name):
    """The programs that check cutting plans and pose problems are byte for byte what they were."""
    assert hashlib.sha256((root / "tests" / "tools" / name).read_bytes()).hexdigest() == KEPT[name]


def test_a_named_browser_is_taken_and_a_wrong_one_refused(monkeypatch):
    """CHROMIUM decides, and a program that is not there is not silently replaced."""
    chromium.find.cache_clear()
    monkeypatch.setenv("CHROMIUM", sys.executable)
    taken = chromium.find()
    chromium.find.cache_clear()
    monkeypatch.setenv("CHROMIUM", "/no/such/browser")
    refused = chromium.find()
    chromium.find.cache_clear()

    assert taken == sys.executable
    assert refused is None


def test_a_stub_in_the_browsers_place_is_no_browser(tmp_path):
    """A program that only says how to install the real one does not count."""
    stub = tmp_path / "chromium"
    stub.write_text("#!/bin/sh\necho 'not installed' >&2\nexit 1\n")
    stub.chmod(0o755)

    assert not chromium.starts(str(stub))
    assert not chromium.starts(str(tmp_path / "none"))


@pytest.fixture
def small_site(tmp_path, monkeypatch):
    """Return a folder with the smallest site, and let the builder work there."""
    (tmp_path / "docs").mkdir()
    (tmp_path / "docs" / "index.md").write_text("# Good\n")
    (tmp_path / "mkdocs.yml").write_text(
        "site_name: Small\ntheme: {name: null, custom_dir: look}\nplugins: []\n"
    )
    (tmp_path / "look").mkdir()
    (tmp_path / "look" / "main.html").write_text("{{ page.content }}")
    (tmp_path / ".cache").mkdir()
    for name, path in {"ROOT": ".", "SITE": "site", "FRESH": ".cache/fresh", "OLD": ".cache/old"}.items():
        monkeypatch.setattr(site, name, tmp_path / path)
    return tmp_path


def test_a_failed_build_leaves_the_last_good_site(small_site, capsys):
    """A page with a broken link makes no site, and the one before stays as it was."""
    assert site.main(["site"]) == 0
    assert f"The site is in {small_site / 'site'}/" in capsys.readouterr().out

    (small_site / "docs" / "index.md").write_text("# Bad\n\n[nowhere](nowhere.md)\n")

    assert site.main(["site"]) == 1
    assert "site/ still holds the last good one" in capsys.readouterr().err
    assert "Good" in (small_site / "site" / "index.html").read_text()

    (small_site / "docs" / "index.md").write_text("# Mended\n")

    assert site.main(["site"]) == 0
    assert "Mended" in (small_site / "site" / "index.html").read_text()
    assert list((small_site / ".cache").iterdir()) == []


def test_the_longest_functions_are_counted_in_lines(tmp_path, monkeypatch):
    """A function's length runs from its `def` to its last line."""
    monkeypatch.setattr(longest, "PACKAGE", tmp_path / "p")
    (tmp_path / "p").mkdir()
    file = tmp_path / "p" / "a.py"
    file.write_text("def short(): ...\n\n\nclass A:\n    def long(self):\n        a = 1\n        return a\n")

    assert sorted(longest.functions(file)) == [(1, "p/a.py:1 short"), (3, "p/a.py:5 long")]


def test_a_benchmark_is_found_by_its_name(tmp_path, monkeypatch, capsys):
    """Names are listed, run in order with the other arguments, and an unknown one is told."""
    for name, status in (("one", 0), ("two", 3)):
        (tmp_path / f"bench_{name}.py").write_text(
            f'"""Measure {name}."""\ndef main(argv):\n    print("{name}", argv)\n    return {status}\n'
        )
    monkeypatch.setattr(bench, "HERE", tmp_path)
    monkeypatch.setattr("tests.bench.__path__", [str(tmp_path)])

    assert bench.main([]) == 0
    assert "Measure two." in capsys.readouterr().out
    assert bench.main(["two", "--data", "there"]) == 3
    assert "two ['--data', 'there']" in capsys.readouterr().out
    assert bench.main(["--data", "there"]) == 3
    assert bench.main(["three"]) == 2
    assert "no benchmark called 'three'; there are: one, two" in capsys.readouterr().out


def test_set_up_that_is_done_is_quick(root, project):
    """Asking again for an environment that is there prints nothing and changes nothing."""
    if sys.prefix != str(bootstrap.VENV) or not bootstrap.is_stamped("dev", bootstrap.fingerprint(project)):
        pytest.skip("the tests run in another environment than the one that `make test` makes")
    stamp = bootstrap.stamp("dev")
    before = stamp.stat().st_mtime_ns
    done = subprocess.run(
        [sys.executable, "-m", "tools.bootstrap", "run"],
        cwd=root,
        capture_output=True,
        text=True,
        check=False,
    )

    assert (done.returncode, done.stdout, done.stderr) == (0, "", "")
    assert stamp.stat().st_mtime_ns == before
