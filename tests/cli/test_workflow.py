"""The workflow of a new catalog is valid for its host, and its commands in order make what it hands over."""

from __future__ import annotations

import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest
import yaml

import scantling

WORKFLOW = Path(".github/workflows/publish.yml")


def _told_by_the_schema(path: Path) -> subprocess.CompletedProcess[str]:
    """Ask the published schema of workflows, which the package carries with it."""
    ask = [sys.executable, "-m", "check_jsonschema", "--builtin-schema", "vendor.github-workflows", str(path)]
    return subprocess.run(ask, capture_output=True, text=True, check=False)


def test_the_workflow_is_valid(catalog):
    """The host's published schema accepts it as it is written."""
    told = _told_by_the_schema(catalog / WORKFLOW)

    assert told.returncode == 0, told.stdout + told.stderr


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("runs-on: ubuntu-latest", "run-on: ubuntu-latest"),
        ("contents: read", "contents: some"),
        ("    steps:", "    step:"),
    ],
)
def test_the_schema_finds_a_slip(catalog, old, new):
    """A word mistyped in it is told, so that being accepted means something."""
    path = catalog / WORKFLOW
    path.write_text(path.read_text("utf-8").replace(old, new), "utf-8")

    assert _told_by_the_schema(path).returncode == 1


def _stand_in_wheel(folder: Path) -> None:
    """Write a wheel of our name and version, where an author would put the real one."""
    (line,) = [
        line for line in (folder / "requirements.txt").read_text("utf-8").splitlines() if line[0] == "."
    ]
    wheel = folder / line
    wheel.parent.mkdir()
    name, version = wheel.name.split("-")[:2]
    about = f"{name}-{version}.dist-info"
    with zipfile.ZipFile(wheel, "w") as packed:
        packed.writestr(f"{about}/METADATA", f"Metadata-Version: 2.1\nName: {name}\nVersion: {version}\n")
        packed.writestr(f"{about}/WHEEL", "Wheel-Version: 1.0\nRoot-Is-Purelib: true\nTag: py3-none-any\n")
        packed.writestr(f"{about}/RECORD", "")


def test_its_commands_in_order_publish_the_site(catalog):
    """Each command ends well in a fresh catalog, and the folder that is handed over holds the site.

    Nothing is installed or fetched: pip only says whether what is pinned can be had together.
    """
    _stand_in_wheel(catalog)
    steps = yaml.safe_load((catalog / WORKFLOW).read_text("utf-8"))["jobs"]["site"]["steps"]
    commands = [step["run"] for step in steps if "run" in step]
    (handed,) = [step["with"]["path"] for step in steps if "upload-pages-artifact" in step.get("uses", "")]
    ours = Path(scantling.__file__).parent.parent
    around = os.environ | {
        "PATH": f"{Path(sys.executable).parent}{os.pathsep}{os.environ['PATH']}",
        "PYTHONPATH": f"{ours}{os.pathsep}{os.environ.get('PYTHONPATH', '')}",
        "PIP_DRY_RUN": "1",
        "PIP_NO_INDEX": "1",
    }

    assert [command.split()[0] for command in commands] == ["pip", "scantling", "mkdocs"]
    for command in commands:
        done = subprocess.run(
            ["bash", "-e", "-c", command],
            cwd=catalog,
            env=around,
            capture_output=True,
            text=True,
            check=False,
        )
        assert done.returncode == 0, (command, done.stdout, done.stderr)
    site = catalog / handed
    for made in (
        "index.html",
        "plans/index.html",
        "plans/first-crate/plan.json",
        "plans/first-crate/plan-a4.pdf",
        "sitemap.xml",
    ):
        assert (site / made).is_file(), made
