"""The author's photos: made small beside the plan's page, and missed where they are not there."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import suppress
from pathlib import Path

from scantling.fault import Fault, Place
from scantling.pages.choices import Choices
from scantling.pages.finished import Finished, SideFile
from scantling.pages.look import quote
from scantling.pages.photo import PhotoSize
from scantling.pages.photo_sizing import NoPhotoError, photo_size, sized
from scantling.plan import Plan
from scantling.source import Diagnostic, SourcePlan, from_fault

Sizing = Callable[[str, bytes], dict[str, bytes]]
"""Makes a photo small: from its name and content, the files that are published."""


def photos(source: SourcePlan, choices: Choices, sizing: Sizing = sized) -> Finished:
    """Return the photos that a plan shows, and a fault for each that is not there or is no picture."""
    assert source.plan is not None
    files: dict[str, SideFile] = {}
    faults: list[Diagnostic] = []
    told: set[str] = set()
    for name, place in _named(source.plan):
        try:
            content = _content(source, name)
            if name in told:
                continue
            told.add(name)
            for file, made in sizing(name, content).items():
                path = f"{choices.folder}/{source.slug}/{file}"
                files[path] = SideFile(path, made)
        except FileNotFoundError:
            fault = Fault("missing-file", f"there is no picture '{name}' beside the plan", place, _MISSING)
            faults.append(from_fault(fault, source.document, source.spans))
        except NoPhotoError as why:
            fault = Fault("bad-picture", f"the picture '{name}' {why}", place, _BAD)
            faults.append(from_fault(fault, source.document, source.spans))
    return Finished((), tuple(files.values()), tuple(faults))


_MISSING = "put the picture into the plan's folder, and write its name with letters, digits, - and ."
_BAD = "save it again as JPEG, PNG or WebP, at most 80 million pixels large"


def photo_sizes(source: SourcePlan) -> dict[str, PhotoSize]:
    """Return the widths that are made of each photo; one with a fault is left out, `photos` tells of it."""
    assert source.plan is not None
    found = {}
    for name, _ in _named(source.plan):
        with suppress(FileNotFoundError, NoPhotoError):
            found[name] = photo_size(_content(source, name))
    return found


def _content(source: SourcePlan, name: str) -> bytes:
    path = _beside(source.path.parent, name)
    if path is None:
        raise FileNotFoundError(name)
    return path.read_bytes()


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
