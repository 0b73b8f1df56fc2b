"""The strips that fall off when glued-up blanks are trimmed."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from scantling.measure import Length
from scantling.plan.fitted import FittedOffcut, FittedPart
from scantling.plan.values import NOTHING


def trimmings(parts: Iterable[FittedPart], kerf: Length) -> tuple[FittedOffcut, ...]:
    """Return the strips that trimming leaves, one kind a trimmed side, the kerf taken off."""
    return tuple(strip for part in parts for strip in _strips(part, kerf))


def _strips(part: FittedPart, kerf: Length) -> Iterator[FittedOffcut]:
    if part.part.glue_up is None:
        return
    wide, thick = glued_section(part)
    for strip, side in ((wide - part.width - kerf, thick), (thick - part.thick - kerf, part.width)):
        if strip > NOTHING:
            yield FittedOffcut(part.id, part.count, part.blank.along, max(strip, side), min(strip, side))


def glued_section(part: FittedPart) -> tuple[Length, Length]:
    """Return width and thickness of a glued-up blank before it is trimmed."""
    assert part.part.glue_up is not None
    if part.part.glue_up.how == "wide":
        return part.blank.pieces * part.blank.across, part.thick
    return part.blank.across, part.blank.pieces * part.layer_thick
