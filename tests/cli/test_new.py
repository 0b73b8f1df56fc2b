"""`scantling new`."""

from __future__ import annotations

import pytest


def test_a_new_catalog_is_whole(run, tmp_path):
    """Settings, a home page, a shop file and a plan, and how to go on."""
    status, out, _ = run("new", "--catalog", "shed")
    made = sorted(path.relative_to(tmp_path).as_posix() for path in tmp_path.rglob("*") if path.is_file())

    assert status == 0
    assert "scantling check" in out
    assert made == [
        "shed/.github/workflows/publish.yml",
        "shed/.gitignore",
        "shed/docs/blog/index.md",
        "shed/docs/blog/posts/first-post.md",
        "shed/docs/index.md",
        "shed/mkdocs.yml",
        "shed/plans/first-crate/plan.md",
        "shed/plans/shop.yml",
        "shed/requirements.txt",
    ]


def test_nothing_that_is_there_is_changed(run, tmp_path):
    """A second catalog in the same folder, or a plan of the same name, is refused and nothing is written."""
    run("new", "--catalog", "shed")
    (tmp_path / "shed" / "plans" / "shop.yml").write_text("mine", "utf-8")
    (tmp_path / "shed" / "mkdocs.yml").unlink()
    status, _, err = run("new", "--catalog", "shed")

    assert status == 2
    assert "is there already" in err
    assert (tmp_path / "shed" / "plans" / "shop.yml").read_text("utf-8") == "mine"
    assert not (tmp_path / "shed" / "mkdocs.yml").exists()


@pytest.mark.parametrize("name", ["Harbour bench", "Böx of 'tea' # 1", 'a "b" {c}: d', "- x", "yes", "木 1"])
def test_a_new_plan_builds_at_once_whatever_it_is_called(run, catalog, name):
    """Its title is the name as it was typed, and it has no fault."""
    status, out, _ = run("new", "--", name) if name.startswith("-") else run("new", name)
    slug = out.split("/")[1]

    assert status == 0
    assert run("check", "--sweep") == (0, "", "2 plans and the shop file: nothing is wrong\n")
    assert run("show", slug)[1].splitlines()[0] == name
    assert run("new", "--", name)[0] == 2


@pytest.mark.parametrize("name", ["", "../up", "a/b", "a\\b", "...", "a\nb", "x" * 81])
def test_a_name_that_is_no_name_is_refused(run, catalog, name):
    """A plan stays within the catalog."""
    before = sorted(catalog.rglob("*"))

    assert run("new", name)[0] == 2
    assert sorted(catalog.rglob("*")) == before


def test_a_new_plan_is_cut_from_what_the_shop_sells(run, catalog):
    """Without a 1x4 the thinnest board is taken; without any board there is no plan."""
    shop = catalog / "plans" / "shop.yml"
    sold = "pickets:\n  slat: {thick: 20 mm, width: 90 mm, lengths: {2 m: 3.00}}\n"
    shop.write_text(f"kerf: 3 mm\n{sold}hardware:\n  glue: {{price: 2.00}}\n", "utf-8")

    assert run("new", "Box")[0] == 0
    text = (catalog / "plans" / "box" / "plan.md").read_text("utf-8")
    assert "from: slat" in text
    assert "needs: glue\n" in text
    assert run("check", "box")[0] == 0
    for lacking, told in ((f"kerf: 3 mm\n{sold}", "sells no glue"), ("kerf: 3 mm\n", "sells no board")):
        shop.write_text(lacking, "utf-8")
        status, _, err = run("new", "Chest")
        assert status == 2
        assert told in err
    shop.write_text("kerf: thin\n", "utf-8")
    assert run("new", "Chest")[0] == 1
