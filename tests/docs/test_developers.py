"""The developers' guide knows what there is."""

from __future__ import annotations

import re
import tomllib

from tests.docs.examples import ROOT

GUIDE = (ROOT / "DEVELOPERS.md").read_text("utf-8")


def test_every_room_is_on_the_map():
    """Each room of the package has its row."""
    rooms = {path.parent.name for path in (ROOT / "plugins" / "scantling").glob("*/__init__.py")}

    assert {room for room in rooms if f"\n| `{room}` |" not in GUIDE} == set()


def test_every_dependency_has_its_reason():
    """Each package that is installed is told of; packages of types alone need no reason."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))
    asked = [
        *project["project"]["dependencies"],
        *(one for group in project["project"]["optional-dependencies"].values() for one in group),
        *(one for group in project["dependency-groups"].values() for one in group),
    ]
    names = {re.match(r"[\w.-]+", one)[0].casefold() for one in asked}
    reasons = GUIDE[GUIDE.index("## Why each dependency") :]
    told = set(re.findall(r"[\w.-]+", " ".join(re.findall(r"^\| ([^|]+) \|", reasons, re.MULTILINE))))

    assert {name for name in names if not name.startswith("types-")} <= told


def test_every_make_target_is_told():
    """What a developer can make is in the guide, but for the parts of the set-up."""
    targets = set(re.findall(r"^([a-z-]+):[^\n]*## ", (ROOT / "Makefile").read_text("utf-8"), re.MULTILINE))

    assert {name for name in targets if f"make {name}" not in GUIDE} <= {"help", "clean"}
