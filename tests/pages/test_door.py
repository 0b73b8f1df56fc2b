"""The door of the room, which loads most of what it gives only when it is asked."""

from __future__ import annotations

from pathlib import Path
from types import ModuleType

from scantling import pages


def test_the_door_gives_everything_that_it_names():
    """Each public name is there, and is the thing itself and not a file of the same name."""
    for name in pages.__all__:
        assert not isinstance(getattr(pages, name), ModuleType), name


def test_no_file_is_called_like_a_name_of_the_door():
    """Loading such a file would put it in the name's place."""
    files = {path.stem for path in Path(pages.__file__).parent.glob("*.py")}

    assert files & set(pages.__all__) == set()
