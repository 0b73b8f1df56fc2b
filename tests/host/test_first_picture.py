"""The first drawing of a page stands in it; everything else stays where it is."""

from __future__ import annotations

from urllib.parse import unquote

import pytest
from mkdocs.structure.files import File, Files

from scantling.host.first_picture import LARGEST, with_first_picture

DRAWING = """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">
<style>.a{fill:#a63a22}</style><text>50 % of 3' & "more"</text></svg>"""


@pytest.fixture
def files(tmp_path):
    """Return a page in a folder with a drawing, a photo and a drawing that is too large."""
    folder = tmp_path / "plans" / "bench"
    folder.mkdir(parents=True)
    (folder / "index.md").write_text("# Bench")
    (folder / "front.svg").write_text(DRAWING)
    (folder / "photo.jpg").write_bytes(b"")
    (folder / "large.svg").write_text(f"<svg>{'x' * LARGEST}</svg>")
    names = [path.relative_to(tmp_path).as_posix() for path in sorted(folder.iterdir())]
    return Files(
        [File(name, str(tmp_path), str(tmp_path / "site"), use_directory_urls=True) for name in names]
    )


def shown(files: Files, html: str) -> str:
    """Return a page as it is written."""
    return with_first_picture(html, files.get_file_from_path("plans/bench/index.md"), files)


def test_the_first_drawing_stands_in_the_page(files):
    """All of it, in its own quotes, at once; the second one is asked for by its address."""
    html = shown(
        files, '<article><img src="front.svg" alt="A" decoding="async"><img src="front.svg"></article>'
    )

    start, rest = html.split('src="data:image/svg+xml,')
    address, _, rest = rest.partition('"')
    assert unquote(address) == " ".join(DRAWING.split())
    assert (start, rest) == ("<article><img ", ' alt="A"><img src="front.svg"></article>')
    assert not set(address) & set("<>&#{}`")


@pytest.mark.parametrize(
    "html",
    [
        '<header><img src="front.svg"></header>',
        '<article><img src="photo.jpg"><img src="front.svg"></article>',
        '<article><img src="large.svg"></article>',
        '<article><img src="../elsewhere.svg"></article>',
        '<article><img src="https://example.org/front.svg"></article>',
        "<article></article>",
    ],
)
def test_everything_else_stays(files, html):
    """A picture of the head, a photo, a large drawing, one that is not there, a stranger's."""
    assert shown(files, html) == html
