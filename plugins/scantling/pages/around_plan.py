"""What stands around the pages of a plan: photos, former addresses, the card that a link to it shows."""

from __future__ import annotations

from dataclasses import replace

from scantling.pages.all_sizes import PlanPages
from scantling.pages.choices import Choices
from scantling.pages.finished import Finished
from scantling.pages.photo_files import Sizing, photos
from scantling.pages.photo_sizing import sized
from scantling.pages.plan_card import plan_card
from scantling.pages.redirects import redirects
from scantling.source import SourcePlan


def around(source: SourcePlan, pages: PlanPages, choices: Choices, sizing: Sizing = sized) -> Finished:
    """Return what stands around the pages of a plan that was read without faults.

    Args:
        pages: with the reports at each size.
        sizing: makes photos small, or finds them where they were made so before.
    """
    assert source.plan is not None
    made = photos(source, choices, sizing)
    sizes = [at.offered.slug for at in pages.sizes]
    moved = redirects(source.slug, pages.title, source.plan.formerly, sizes, choices)
    card = plan_card(source, pages, made, choices)
    return replace(made, files=(*made.files, *moved, *card))
