"""What was made lies on disk: it is not read to be found again, and another price draws nothing."""

from __future__ import annotations

from importlib import import_module
from pathlib import Path

import pytest

from scantling.build import How, build_catalog
from scantling.pages import Choices, drawings, raw, whole
from tests.support.catalogs import BENCH, SHOP, write_catalog
from tests.support.pictures import picture


@pytest.fixture
def plans(tmp_path) -> Path:
    """Return a catalog of one plan that buys boards and screws."""
    write_catalog(tmp_path, stool=BENCH)
    return tmp_path / "plans"


def build(plans: Path, cache: str = "cache"):
    """Build without PDFs, in this process."""
    return build_catalog(
        plans, How(Choices(), with_paper=False, workers=1, cache=plans.parent / cache if cache else None)
    )


def published(built) -> dict[str, bytes]:
    """Return all that is published, by its path."""
    pages = {page.path: whole(page).encode() for page in built.finished.pages}
    return pages | {file.path: raw(file.source) for file in built.finished.files}


def count_calls(monkeypatch, module, name: str) -> list[object]:
    """Return a list that grows with each call of a function."""
    calls: list[object] = []
    real = getattr(module, name)

    def counted(*given, **named):
        calls.append(given)
        return real(*given, **named)

    monkeypatch.setattr(module, name, counted)
    return calls


def test_another_price_draws_nothing_again(plans, monkeypatch):
    """A dearer board, cut as before, changes words and the chart; every other drawing is found."""
    build(plans)
    drawn = count_calls(monkeypatch, drawings, "as_drawing")
    (plans / "shop.yml").write_text(SHOP.replace("8 ft: 4.28", "8 ft: 4.29"))
    again = build(plans)

    assert again.made == ("stool",)
    assert drawn == []
    assert published(again) == published(build(plans, cache=""))


def test_another_price_makes_no_photo_small_again(plans, monkeypatch):
    """A photo is found as it was made small; another photo of the same name is made small."""
    text = BENCH.replace("title:", "photo: {file: stool.jpg, alt: A stool}\ntitle:", 1)
    (plans / "stool/plan.md").write_text(text)
    (plans / "stool/stool.jpg").write_bytes(picture(800, 600))
    build(plans)
    made = count_calls(monkeypatch, import_module("scantling.build.kept_photos"), "sized")
    (plans / "shop.yml").write_text(SHOP.replace("8 ft: 4.28", "8 ft: 4.29"))
    again = build(plans)

    assert again.made == ("stool",)
    assert made == []
    assert any(path.endswith("photos/480/stool.jpg.webp") for path in published(again))
    assert published(again) == published(build(plans, cache=""))
    made.clear()
    (plans / "stool/stool.jpg").write_bytes(picture(640, 480))
    assert published(build(plans)) == published(build(plans, cache=""))
    assert made


def test_another_price_of_screws_asks_the_solver_nothing(plans, monkeypatch):
    """What boards cost along the range is remembered, and the price of a box of screws is added anew."""
    build(plans)
    solved = count_calls(monkeypatch, import_module("scantling.cutting.solve"), "solve_family")
    (plans / "shop.yml").write_text(SHOP.replace("price: 6.10", "price: 7.10"))
    again = build(plans)

    assert again.made == ("stool",)
    # the calculators' examples are worked out each time; their stock is none of the shop's
    assert [family for family, _ in solved if any("2x4" in sort.item.id for sort in family.sorts)] == []
    assert [family for family, _ in solved if any("1x6" in sort.item.id for sort in family.sorts)] == []
    assert published(again) == published(build(plans, cache=""))


def test_another_kerf_draws_everything_again(plans, monkeypatch):
    """What is no price may be seen in a drawing."""
    build(plans)
    drawn = count_calls(monkeypatch, drawings, "as_drawing")
    (plans / "shop.yml").write_text(SHOP.replace("kerf: 1/8 in", "kerf: 3/32 in"))
    build(plans)

    assert len(drawn) > 10


def test_what_is_large_lies_on_disk(plans):
    """A built catalog holds no drawing, no file and no table of a plan, made just now or found."""
    for _ in range(2):
        built = build(plans)
        files = [file for file in built.finished.files if file.path.startswith("plans/stool/")]
        pages = [page for page in built.finished.pages if page.path.startswith("plans/stool/")]

        assert len(files) > 20
        assert [file.path for file in files if isinstance(file.source, str | bytes)] == []
        assert [page.path for page in pages if isinstance(page.pieces, tuple)] == []
        assert max(len(page.markdown) for page in pages) < 2000 < min(len(whole(page)) for page in pages)


def test_pieces_are_found_where_the_cache_was_moved_to(plans):
    """A cache that another build left elsewhere, as on a build server, is as good as one's own."""
    first = published(build(plans))
    (plans.parent / "cache").rename(plans.parent / "moved")
    again = build(plans, cache="moved")

    assert again.made == ()
    assert published(again) == first


def test_a_stack_of_pieces_that_is_damaged_is_made_again_and_told(plans):
    """A turned bit in one drawing makes its plan anew, with the same bytes."""
    built = build(plans)
    first = published(built)
    stack = next(file.source.path for file in built.finished.files if file.path == "plans/stool/card.svg")
    content = stack.read_bytes()
    stack.write_bytes(content[:-9] + bytes([content[-9] ^ 1]) + content[-8:])
    again = build(plans)

    assert again.made == ("stool",)
    assert again.damaged == (f"stacks/{stack.parent.name}{stack.name}",)
    assert published(again) == first
    assert build(plans).made == ()


def test_a_stack_that_is_gone_is_made_again(plans):
    """A result whose pieces were dropped counts as none."""
    first = published(build(plans))
    for path in (plans.parent / "cache" / "stacks").rglob("*"):
        if path.is_file():
            path.unlink()
    again = build(plans)

    assert again.made == ("stool",)
    assert published(again) == first


def test_boards_that_are_cut_otherwise_draw_their_cuts_alone(plans, monkeypatch):
    """A price that makes another board the cheaper one draws cut diagrams, and no view and no step."""
    build(plans)
    drawn = count_calls(monkeypatch, drawings, "as_drawing")
    (plans / "shop.yml").write_text(SHOP.replace("8 ft: 4.28", "8 ft: 9.28"))
    again = build(plans)

    assert {name.split()[0] for name, *_ in drawn} == {"cut"}
    assert published(again) == published(build(plans, cache=""))
