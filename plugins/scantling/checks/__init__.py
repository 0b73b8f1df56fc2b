"""Can a stranger build this, at every size? One file a check."""

from scantling.checks.accepts import UNKNOWN, UNUSED
from scantling.checks.allow_variation import ALLOW_VARIATION
from scantling.checks.caution import Caution
from scantling.checks.cautions_called import CAUTIONS, cautions_for
from scantling.checks.check import Check, Finding, Subject, Told, at_size
from scantling.checks.fastener_early import FASTENER_EARLY
from scantling.checks.fastener_edge import FASTENER_EDGE
from scantling.checks.fastener_length import FASTENER_LENGTH, bite
from scantling.checks.finish_order import FINISH_ORDER
from scantling.checks.glue_at_hand import GLUE_AT_HAND
from scantling.checks.grain_along import GRAIN_ALONG
from scantling.checks.groove_fits import GROOVE_FITS
from scantling.checks.hardware_used import HARDWARE_USED
from scantling.checks.made_first import MADE_FIRST
from scantling.checks.missing import (
    ALT_MISSING,
    PICTURE_MISSING,
    SKILL_MISSING,
    STEPS_MISSING,
    SUMMARY_MISSING,
    TAGS_MISSING,
    TOOLS_MISSING,
)
from scantling.checks.named_at_hand import NAMED_AT_HAND
from scantling.checks.number_in_prose import NUMBER_IN_PROSE
from scantling.checks.parts_used import PARTS_USED
from scantling.checks.placed_fit import PLACED_FIT
from scantling.checks.pocket_covered import POCKET_COVERED
from scantling.checks.shelf_sag import SHELF_SAG
from scantling.checks.shelf_spacing import SHELF_SPACING
from scantling.checks.shut_out import SHUT_OUT
from scantling.checks.sizes import sweep_choices, usual_choice
from scantling.checks.statics import Standing, movement, shelf_sag
from scantling.checks.sweep import examine, examine_offered, sweep
from scantling.checks.tip_over import TIP_OVER
from scantling.checks.tools_listed import TOOLS_LISTED
from scantling.checks.tools_needed import TOOLS_NEEDED
from scantling.checks.use_heights import USE_HEIGHTS
from scantling.checks.wood_movement import WOOD_MOVEMENT

CHECKS: tuple[Check, ...] = (
    PARTS_USED,
    HARDWARE_USED,
    TOOLS_LISTED,
    TOOLS_NEEDED,
    NAMED_AT_HAND,
    GLUE_AT_HAND,
    MADE_FIRST,
    FASTENER_EARLY,
    SHUT_OUT,
    POCKET_COVERED,
    FINISH_ORDER,
    *PLACED_FIT,
    FASTENER_LENGTH,
    FASTENER_EDGE,
    SHELF_SAG,
    SHELF_SPACING,
    USE_HEIGHTS,
    TIP_OVER,
    WOOD_MOVEMENT,
    GRAIN_ALONG,
    GROOVE_FITS,
    ALLOW_VARIATION,
    *CAUTIONS,
    NUMBER_IN_PROSE,
    SUMMARY_MISSING,
    TAGS_MISSING,
    SKILL_MISSING,
    TOOLS_MISSING,
    STEPS_MISSING,
    PICTURE_MISSING,
    ALT_MISSING,
)
"""Every check, in the order in which they are asked and told."""

__all__ = [
    "CHECKS",
    "UNKNOWN",
    "UNUSED",
    "Caution",
    "Check",
    "Finding",
    "Standing",
    "Subject",
    "Told",
    "at_size",
    "bite",
    "cautions_for",
    "examine",
    "examine_offered",
    "movement",
    "shelf_sag",
    "sweep",
    "sweep_choices",
    "usual_choice",
]
