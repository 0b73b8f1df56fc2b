"""Can a stranger build this, at every size? One file a check."""

from scantling.checks.check import Check, Finding, Subject, accepted_at, at_size
from scantling.checks.parts_used import PARTS_USED
from scantling.checks.sizes import sweep_choices, usual_choice
from scantling.checks.sweep import examine, sweep

CHECKS: tuple[Check, ...] = (PARTS_USED,)
"""Every check, in the order in which they are asked and told."""

__all__ = [
    "CHECKS",
    "PARTS_USED",
    "Check",
    "Finding",
    "Subject",
    "accepted_at",
    "at_size",
    "examine",
    "sweep",
    "sweep_choices",
    "usual_choice",
]
