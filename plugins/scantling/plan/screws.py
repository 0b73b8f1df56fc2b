"""Which fastener a join takes, from the thicknesses that it joins."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from scantling.measure import Length
from scantling.shop import Ware


def _inches(text: str) -> Length:
    return Length.of_inches(sum((Fraction(word) for word in text.split()), Fraction(0)))


POCKET_SCREWS = tuple(
    (_inches(thick), _inches(long))
    for thick, long in (
        ("1/2", "1"),
        ("5/8", "1"),
        ("3/4", "1 1/4"),
        ("7/8", "1 1/2"),
        ("1", "1 1/2"),
        ("1 1/4", "2"),
        ("1 1/2", "2 1/2"),
    )
)
"""Length of a pocket screw by the thickness that it is drilled in. Common practice, from memory."""
FASTENER_KINDS = {
    "pocket screws": "pocket screw",
    "screws": "wood screw",
    "brads and glue": "brad",
    "nails": "nail",
    "bolts": "bolt",
    "dowels": "dowel",
}
"""What holds a join, and the kind of ware that it takes."""
NAIL_RULE = 3
"""A nail is at least three times as long as the piece that it holds is thick (US Navy training manual)."""


def wanted_length(how: str, held: Length, holding: Length) -> tuple[Length, Length] | None:
    """Return (least, greatest) length of a fastener through `held` into `holding`; None if any will do.

    A screw bites at least as deep as the piece it holds is thick, and stays 1/8 in short of the
    far face (common practice, no source). A brad only holds while the glue sets, so that it need
    bite just 1/2 in. For a pocket screw `held` is the piece with the pocket hole.
    """
    spare = Length.of_inches(Fraction(1, 8))
    if how == "pocket screws":
        usual = next((long for thick, long in POCKET_SCREWS if held <= thick), POCKET_SCREWS[-1][1])
        return usual, usual
    if how == "screws":
        return held + min(held, holding / 2), held + holding - spare
    if how == "nails":
        return min(NAIL_RULE * held, held + holding - spare), held + holding - spare
    if how == "brads and glue":
        return held + min(Length.of_inches(Fraction(1, 2)), holding / 2), held + holding - spare
    return None


def choose_fastener(how: str, held: Length, holding: Length, wares: Iterable[Ware]) -> Ware | None:
    """Return the shortest ware of the right kind whose length suits, with a price if may be, or None."""
    wanted = wanted_length(how, held, holding)
    kind = FASTENER_KINDS.get(how)
    suiting = [
        ware
        for ware in wares
        if ware.kind == kind
        and (wanted is None or (ware.long is not None and wanted[0] <= ware.long <= wanted[1]))
    ]
    return min(suiting, key=lambda ware: (ware.price is None, ware.long or held, ware.key), default=None)
