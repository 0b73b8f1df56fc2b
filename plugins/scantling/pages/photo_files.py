"""The author's photos: copied beside the plan's page, and missed where they are not there."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from scantling.fault import Fault, Place
from scantling.pages.choices import Choices
from scantling.pages.finished import Finished, SideFile
from scantling.pages.look import quote
from scantling.plan import Plan
from scantling.source import Diagnostic, SourcePlan, from_fault


def photos(source: SourcePlan, choices: Choices) -> Finished:
    """Return the photos that a plan shows, and a fault for each that lies not beside the plan's file."""
    assert source.plan is not None
    home = source.path.parent
    files: dict[str, SideFile] = {}
    faults: list[Diagnostic] = []
    for name, place in _named(source.plan):
        path = _beside(home, name)
        if path is None:
            help_line = (
                "put the picture into the plan's folder, and write its name with letters, digits, - and ."
            )
            fault = Fault("missing-file", f"there is no picture '{name}' beside the plan", place, help_line)
            faults.append(from_fault(fault, source.document, source.spans))
        else:
            files[name] = SideFile(f"{choices.folder}/{source.slug}/{name}", path.read_bytes())
    return Finished((), tuple(files.values()), tuple(faults))


def _named(plan: Plan) -> Iterator[tuple[str, Place]]:
    if plan.photo is not None:
        yield plan.photo.file, plan.photo.place.at("file")
    yield from ((step.picture, step.place.at("picture")) for step in plan.steps if step.picture)


def _beside(home: Path, name: str) -> Path | None:
    """Return the file of that name in the plan's folder or below it, or None."""
    path = home / name
    if quote(name) != name.replace(" ", "%20") or not path.is_file():
        return None
    return path if path.resolve().is_relative_to(home.resolve()) else None
