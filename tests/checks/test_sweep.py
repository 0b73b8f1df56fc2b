"""A sweep tries every size that a plan advertises, and tells a fault once, at the smallest change."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.checks import CHECKS, sweep, sweep_choices
from scantling.checks.sizes import MOST_STEPS, steps_of, van_der_corput
from scantling.fault import Place
from scantling.measure import Length
from scantling.plan import Size
from tests.checks.bench_plan import fitter_of, found, frame
from tests.checks.test_strength import shelf


def test_the_smallest_failing_change_is_told():
    """A shelf as long as the piece is wide sags from 36 1/2 in on."""
    (fault,) = [one for one in found(shelf("width"), sweeping=True) if one.code == "shelf-sag"]

    assert fault.message.startswith("at width 36 1/2 in and above: 'shelf' spans 36 1/2 in")


def test_what_fails_below_is_told_from_above():
    """A part that is gone at small sizes is told at the largest that fails."""
    data = frame(lengths={"spare": "width - 30 in", **frame()["lengths"]})
    data["parts"]["slip"] = {"from": "1x4", "length": "spare"}
    data["steps"][2]["uses"] = "panel, slip"
    (fault,) = [one for one in found(data, sweeping=True) if one.code == "not-positive"]

    assert fault.message == "at width 30 in and below: the length of 'slip' comes to 0 in at this size"


def test_what_fails_at_the_usual_size_says_no_size():
    """A fault that is there as usual is told without a size."""
    (fault,) = [one for one in found(shelf("48 in"), sweeping=True) if one.code == "shelf-sag"]

    assert fault.message.startswith("'shelf' spans")


def test_two_changes_are_told_together():
    """What only a wide and low piece shows names both."""
    data = frame()
    data["parts"]["rail"]["length"] = (
        "if width > 40 in and height < 21 in then 0 in else width - 2 * post.width"
    )
    faults = [one for one in found(data, sweeping=True) if one.code == "not-positive"]

    assert faults[0].message.startswith("at width ")
    assert " and height " in faults[0].message


def test_an_option_is_told_by_its_word():
    """What only a choice shows names the choice."""
    option = {"question": "Which?", "choices": {"plain": "plain", "fancy": "fancy"}, "usual": "plain"}
    data = frame(options={"look": option})
    data["parts"]["knob"] = {"from": "1x4", "length": "2 in", "only if": "look is fancy"}
    (fault,) = [one for one in found(data, sweeping=True) if one.code == "parts-used"]

    assert fault.message == "at look 'fancy': no step uses 'knob' (1 is cut)"


def test_a_sweep_tries_ends_steps_and_options():
    """Both ends of every size, every step of each alone, and no choice twice."""
    plan = fitter_of(frame()).plan
    choices = list(sweep_choices(plan))
    keys = [(*choice.sizes.values(), *choice.options.values()) for choice in choices]
    widths = {choice.sizes["width"] for choice in choices if choice.sizes["height"] == Length(24)}

    assert len(set(keys)) == len(keys)
    assert set(steps_of(plan.sizes["width"])) <= widths
    for width in (24, 48):
        for height in (20, 26):
            assert any(
                c.sizes["width"] == Length(width) and c.sizes["height"] == Length(height) for c in choices
            )


def test_the_same_plan_gives_the_same_findings():
    """Two sweeps answer alike, to the word."""
    fitter = fitter_of(shelf("width"))

    assert sweep(fitter, CHECKS) == sweep(fitter, CHECKS)


@given(st.integers(1, 5000), st.integers(1, 64))
def test_steps_run_from_least_to_most(span, part):
    """However fine the range, at most some sixty values are tried, in order, both ends with them."""
    step = Length(Fraction(1, part))
    size = Size("width", Length(1), Length(1), Length(1) + step * span, step, (), "", Place())
    values = steps_of(size)

    assert values[0] == size.least
    assert values[-1] == size.most
    assert values == sorted(values)
    assert len(values) <= MOST_STEPS + 2


@pytest.mark.parametrize("base", [2, 3, 5])
def test_the_spread_is_even(base):
    """Of the first base^3 - 1 numbers, each stretch of base^-3 but the first holds exactly one."""
    count = base**3
    places = sorted(int(van_der_corput(index, base) * count) for index in range(1, count))

    assert places == list(range(1, count))
