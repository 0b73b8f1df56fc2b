"""Break a demonstration plan in one place, and say what a check should find there.

Each function takes a plan's text and yields broken texts, each with the code, line and column of what is
wrong with it. The places are looked up in the text alone, without the code that is tested.
"""

from tests.checks.breaking.broken import Broken, Sizes, Way
from tests.checks.breaking.build import (
    anchor_forgotten,
    boards_all_alike,
    fastener_too_long,
    fastener_too_short,
    grain_across,
    groove_forgotten,
    groove_through,
    groove_too_deep,
    holes_at_the_edge,
    holes_beyond_the_edge,
    nominal_groove,
    shelf_overloaded,
    shelves_far_apart,
    wrong_height,
)
from tests.checks.breaking.cautions import (
    children_unsaid,
    dust_unsaid,
    nailer_unsaid,
    rags_unsaid,
    router_unsaid,
    saw_unsaid,
)
from tests.checks.breaking.order import cut_after_use, finished_too_early, panel_forgotten, screws_too_early
from tests.checks.breaking.told import (
    accept_unknown,
    accept_unused,
    count_typed,
    key_missing,
    number_that_stays,
    number_typed,
    picture_untold,
    steps_missing,
)
from tests.checks.breaking.used import (
    clamps_forgotten,
    drill_forgotten,
    glue_forgotten,
    hardware_never_used,
    need_counted_wrong,
    need_misspelled,
    part_never_used,
    part_used_too_often,
    saw_forgotten,
    tool_not_listed,
)

__all__ = ["WAYS", "Broken", "Sizes"]

WAYS: tuple[Way, ...] = (
    part_never_used,
    part_used_too_often,
    need_counted_wrong,
    need_misspelled,
    hardware_never_used,
    tool_not_listed,
    clamps_forgotten,
    drill_forgotten,
    glue_forgotten,
    cut_after_use,
    screws_too_early,
    finished_too_early,
    panel_forgotten,
    fastener_too_long,
    fastener_too_short,
    holes_at_the_edge,
    holes_beyond_the_edge,
    saw_forgotten,
    boards_all_alike,
    shelves_far_apart,
    shelf_overloaded,
    wrong_height,
    anchor_forgotten,
    grain_across,
    nominal_groove,
    groove_too_deep,
    groove_through,
    groove_forgotten,
    router_unsaid,
    nailer_unsaid,
    saw_unsaid,
    rags_unsaid,
    dust_unsaid,
    children_unsaid,
    number_typed,
    number_that_stays,
    count_typed,
    key_missing,
    steps_missing,
    picture_untold,
    accept_unknown,
    accept_unused,
)
"""Every way to break a plan."""
