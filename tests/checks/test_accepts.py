"""Silencing a check at one place, with a reason."""

from __future__ import annotations

from scantling.checks import CHECKS, UNKNOWN, UNUSED, examine, sweep
from scantling.fault import Severity
from tests.checks.bench_plan import codes, fitter_of, found, frame
from tests.checks.test_strength import shelf


def test_a_part_silences_a_check():
    """What is found in a part is silenced there, and nowhere else."""
    data = shelf("48 in")
    data["parts"]["upper shelf"] = {**data["parts"]["shelf"]}
    data["steps"][0]["uses"] += ", upper shelf"
    data["parts"]["shelf"]["accept"] = {"shelf-sag": "it holds hats"}
    (fault,) = [one for one in found(data, sweeping=True) if one.code in {"shelf-sag", UNUSED}]

    assert fault.place.path == ("parts", "upper shelf", "length")


def test_the_whole_plan_silences_a_check():
    """An accept at the top holds for every part."""
    data = shelf("48 in", accept={"shelf-sag": "hats everywhere"})

    assert not {"shelf-sag", UNUSED} & set(codes(data, sweeping=True))


def test_a_step_silences_a_check():
    """What is found in a step is silenced at the step."""
    data = frame()
    data["steps"][1]["tools"] = "pocket-hole jig"
    assert "tools-needed" in codes(data)
    data["steps"][1]["accept"] = {"tools-needed": "a brace and bit do it"}

    assert "tools-needed" not in codes(data)


def test_a_join_is_silenced_at_either_part():
    """What is found in a join may be accepted at one of the two parts."""
    data = frame()
    data["joins"][1]["fastener"] = "pocket screw 2 1/2 in"
    data["steps"][2]["needs"] = "3 pocket screw 2 1/2 in"
    assert "fastener-length" in codes(data)
    data["parts"]["panel"]["accept"] = {"fastener-length": "the ends are filed off"}

    assert "fastener-length" not in codes(data)


def test_an_accept_that_silences_nothing_is_a_hint():
    """A sweep tells it; one size alone cannot know."""
    fitter = fitter_of(frame(accept={"shelf-sag": "there is no shelf"}))
    (fault,) = sweep(fitter, CHECKS)

    assert (fault.code, fault.severity, fault.place.path) == (UNUSED, Severity.HINT, ("accept", "shelf-sag"))
    assert fault.place.on_key
    assert examine(fitter, CHECKS) == []


def test_an_accept_that_names_no_check_is_a_warning():
    """A slip of the pen is told with the name that was meant."""
    (fault,) = found(frame(accept={"shelf-sagg": "hats"}))

    assert (fault.code, fault.severity) == (UNKNOWN, Severity.WARNING)
    assert fault.help == "did you mean 'shelf-sag'?"


def test_cautions_are_silenced_like_checks():
    """Nobody is told of dust where the author accepts that nothing is said of it."""
    data = frame()
    data["parts"]["panel"]["from"] = "3/4 mdf"
    data["parts"]["panel"]["width"] = "3 1/2 in"
    assert "caution-fibreboard-dust" in codes(data)
    data["parts"]["panel"]["accept"] = {"caution-fibreboard-dust": "the yard cuts it"}

    assert "caution-fibreboard-dust" not in codes(data)
