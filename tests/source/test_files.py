"""Files that cannot be read, are too large, or hold what no text should hold."""

from __future__ import annotations

import time

import pytest

from scantling.source import LARGEST_FILE, load_plan, load_shop, read_catalog

BOX = """\
---
title: Box
parts:
  side: {from: 2x4, length: 20 in}
---
"""


def told(source):
    """Return code, line and column of everything that is wrong."""
    return [(one.code, one.spot.line, one.spot.column) for one in source.diagnostics]


@pytest.mark.parametrize(
    ("data", "line", "column"),
    [
        (b"\xff\xfe\x00", 1, 1),
        (b"---\ntitle: B\xf6x\n---\n", 2, 9),
        ("---\r\ntitle: 木é".encode() + b"\xc3(", 2, 10),
    ],
)
def test_what_is_no_utf_8_is_told_at_its_first_wrong_byte(read, data, line, column):
    """The byte that cannot be read has a line and a column, and nothing else is made of the file."""
    assert told(read(data)) == [("not-utf-8", line, column)]


def test_an_empty_file_says_how_to_begin(read):
    """A plan file without anything in it is told how plans begin."""
    source = read(b"")

    assert told(source) == [("no-front-matter", 1, 1)]
    assert "begin the file with a line ---" in source.diagnostics[0].help


def test_a_file_of_ten_megabytes_is_refused_at_once(read):
    """A huge file is not even read to its end."""
    data = BOX.encode() + b"words " * 2_000_000
    began = time.process_time()
    source = read(data)

    assert told(source) == [("file-too-large", 1, 1)]
    assert "12.0 MB" in source.diagnostics[0].message
    assert source.data is None
    assert time.process_time() - began < 1


def test_a_file_just_small_enough_is_read(read):
    """The limit itself is allowed."""
    source = read(BOX + "x" * (LARGEST_FILE - len(BOX)))

    assert "file-too-large" not in [one.code for one in source.diagnostics]


def test_too_many_values_are_refused(read):
    """Tens of thousands of values are no plan."""
    source = read(f"---\ntags: [{'a,' * 25_000}]\n---\n")

    assert [one.code for one in source.diagnostics] == ["too-many-values"]


@pytest.mark.parametrize("opening", ["[", "{a: ", "- "])
def test_ten_thousand_levels_are_refused_at_once(read, opening):
    """Depth is counted while reading, so that no depth can exhaust the reader."""
    began = time.process_time()
    source = read(
        f"---\ntags: {opening * 10_000}\n---\n" if opening != "- " else f"---\n{opening * 10_000}\n---\n"
    )

    assert len(source.diagnostics) == 1
    assert time.process_time() - began < 2


def test_control_characters_are_each_told_and_the_rest_is_read(read):
    """Escape sequences and such are faults at their places; other faults are found in the same run."""
    source = read(BOX.replace("Box", "B\x1b[1mox\x00").replace("20 in", "20") + "\x07\x7f\x85\ud7ff")

    assert told(source) == [
        ("stray-character", 2, 9),
        ("stray-character", 2, 15),
        ("missing-unit", 4, 29),
        ("stray-character", 6, 1),
        ("stray-character", 6, 2),
    ]


def test_a_file_that_is_not_there_is_a_fault(tmp_path):
    """A missing file, and a folder in its place, are faults like any other."""
    (tmp_path / "plan.md").mkdir()

    assert told(load_plan(tmp_path / "none" / "plan.md", None)) == [("unreadable-file", 1, 1)]
    assert told(load_plan(tmp_path / "plan.md", None)) == [("unreadable-file", 1, 1)]
    assert told(load_shop(tmp_path / "shop.yml")) == [("unreadable-file", 1, 1)]


def test_a_faulty_shop_does_not_hide_the_faults_of_a_plan(tmp_path):
    """Without a shop, all that does not depend on it is still looked at."""
    (tmp_path / "plans" / "box").mkdir(parents=True)
    (tmp_path / "plans" / "shop.yml").write_text("kerf: thin\n", "utf-8")
    (tmp_path / "plans" / "box" / "plan.md").write_text(BOX.replace("title", "tilte"), "utf-8")
    catalog = read_catalog(tmp_path / "plans")

    assert [(one.spot.path, one.code) for one in catalog.diagnostics] == [
        ("plans/box/plan.md", "unknown-key"),
        ("plans/shop.yml", "not-a-length"),
    ]


def test_a_catalog_reads_its_plans_in_the_order_of_their_names(tmp_path):
    """One folder is one plan; hidden folders and those without a plan are passed over."""
    (tmp_path / "shop.yml").write_text("kerf: 1/8 in\nlumber:\n  2x4: {lengths: {8 ft: 4.28}}\n", "utf-8")
    for name in ("table", "bench", ".draft", "pictures"):
        (tmp_path / name).mkdir()
        if name != "pictures":
            (tmp_path / name / "plan.md").write_text(BOX.replace("Box", name), "utf-8")
    catalog = read_catalog(tmp_path)

    assert catalog.diagnostics == ()
    assert [plan.slug for plan in catalog.plans] == ["bench", "table"]
    assert catalog.plan("bench") is catalog.plans[0]
    assert catalog.plan("chair") is None
    assert catalog.plans[0].fitter.fit().parts[0].id == "side"


def test_two_plans_cannot_share_a_title_nor_have_a_folder_that_is_no_address(tmp_path):
    """Readers find plans by their titles, and addresses are made of the folders' names."""
    (tmp_path / "shop.yml").write_text("kerf: 1/8 in\nlumber:\n  2x4: {lengths: {8 ft: 4.28}}\n", "utf-8")
    for name, title in (("bench", "Box"), ("My Bench", "Other"), ("table", "box ")):
        (tmp_path / name).mkdir()
        (tmp_path / name / "plan.md").write_text(BOX.replace("Box", f"'{title}'"), "utf-8")
    catalog = read_catalog(tmp_path, root=tmp_path)

    assert [(one.spot.path, one.spot.line, one.code, one.help) for one in catalog.diagnostics] == [
        ("My Bench/plan.md", 2, "unusable-folder", "rename the folder: my-bench"),
        ("table/plan.md", 2, "named-twice", "give one of them another title"),
    ]
    assert catalog.diagnostics[1].notes[0].spot.path == "bench/plan.md"
