"""`scantling cut`."""

from __future__ import annotations

import io
import json
import sys

import pytest

from tests.tools import verify_cuts

PROBLEM = {
    "unit": "1/64 in",
    "kerf": 8,
    "stages": 2,
    "stock": [{"id": "2x4 8 ft", "family": "2x4", "length": 6144, "width": 224, "price": 428}],
    "parts": [{"id": "leg", "from": "2x4", "count": 4, "length": 1920, "width": 224, "grain": "length"}],
}


def test_a_problem_from_a_file(run, tmp_path):
    """The answer is JSON of the cutting seam, and right by a checker that shares no code with the solver."""
    (tmp_path / "problem.json").write_text(json.dumps(PROBLEM), "utf-8")
    status, out, err = run("cut", "problem.json")
    answer = json.loads(out)

    assert (status, err) == (0, "")
    assert answer["cost"] == 856
    assert {"cost", "bound", "proved", "boards"} <= set(answer)
    cost, bound, _ = verify_cuts.verify(PROBLEM, answer)

    assert cost == bound == 856


def test_a_problem_from_standard_input(run, monkeypatch):
    """`-` reads standard input."""
    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(json.dumps(PROBLEM).encode())))

    assert json.loads(run("cut", "-")[1])["cost"] == 856


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("", "this is no JSON"),
        ("{", "line 1, column 2"),
        ("[]", "a cutting problem is a set of named values"),
        ("[" * 100_000, "too deep"),
        ("1" * 10_000, "this is no JSON"),
        ('{"kerf": 1}', "the problem has no list of stock"),
        (json.dumps({**PROBLEM, "kerf": "thin"}), "kerf: the kerf of the problem is not a whole number"),
        (
            json.dumps(PROBLEM).replace('"2x4", "count"', '"2x5", "count"'),
            "parts[0].from: part 'leg' is cut from '2x5'",
        ),
        (json.dumps(PROBLEM).replace("1920", "9999"), "leg"),
    ],
)
def test_a_faulty_problem_is_told_with_its_place(run, tmp_path, text, told):
    """Every fault has the path to it, and the status is 1."""
    (tmp_path / "problem.json").write_text(text, "utf-8")
    status, out, err = run("cut", "problem.json")

    assert (status, out) == (1, "")
    assert told in err
    assert err.startswith("problem.json: ")
    assert "Traceback" not in err


def test_a_problem_that_is_no_text(run, tmp_path):
    """Bytes that are no UTF-8 are told."""
    (tmp_path / "problem.json").write_bytes(b"\xff\xfe{\x80")

    assert run("cut", "problem.json")[0] == 1


def test_a_file_that_is_not_there_is_misuse(run):
    """The file's name is in the complaint."""
    status, _, err = run("cut", "none.json")

    assert status == 2
    assert "none.json cannot be read" in err
    assert run("cut", "none.json", "--steps", "0")[0] == 2
