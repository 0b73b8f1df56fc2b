"""Whose plan it is, what others may do with it, and of which day it is."""

from __future__ import annotations

from scantling.plan import Plan
from scantling.words import say


def credit(plan: Plan) -> str:
    """Return it in a line: "Plan by the workshop, CC BY 4.0, revised 2026-11-09"; "" where none is said."""
    words = (
        say("Plan by {author}", author=plan.author) if plan.author else "",
        plan.licence,
        say("revised {day}", day=plan.revised) if plan.revised else "",
    )
    return ", ".join(word for word in words if word)
