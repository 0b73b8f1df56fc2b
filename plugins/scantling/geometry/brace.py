"""A brace: a strip fitted corner to corner in an opening, by exact numbers.

With `W` the opening's run, `H` its rise, `w` the strip's width and `D` the diagonal, the strip's slope
`t` follows from asking that both long points lie in opposite corners:

- seated on the rails (ends cut level): `W sin t - H cos t = w`;
- seated on the posts (ends cut upright): `H cos t - W sin t = w`;
- pointed into the corners (two cuts each end): `tan t = H / W`.

Each needs one square root: for the seated ones it is `s = root(D² - w²)`, which is also the length
along the strip from long point to long point.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from scantling.fault import Fault, Faulty
from scantling.measure import Angle, Length, arc_tangent, root
from scantling.words import mark, say

SEATS = ("rails", "posts", "corners")
"""What the ends of a brace rest on."""

Spot = tuple[Fraction, Fraction]


@dataclass(frozen=True, slots=True)
class Brace:
    """A strip in its opening, rising to the right from the lower left corner at (0, 0)."""

    seat: str
    run: Length
    rise: Length
    width: Length
    length: Length
    """Along the strip, from long point to long point: what is cut from stock."""
    cosine: Fraction
    """Of the slope."""
    sine: Fraction
    """Of the slope."""

    @property
    def slope(self) -> Angle:
        """The strip's angle from level."""
        return arc_tangent(self.sine, self.cosine)

    @property
    def mitre(self) -> Angle:
        """The saw's angle away from a square cut; of the steeper cut of a pointed end."""
        slope, other = self.slope, Angle(90) - self.slope
        if self.seat == "rails":
            return other
        return slope if self.seat == "posts" else max(slope, other)

    @property
    def foot(self) -> Length:
        """How much of the rail or post a seated end covers; of the rail for a pointed one."""
        if self.seat == "rails":
            return self.width / self.sine
        return self.width / self.cosine if self.seat == "posts" else self.width / (2 * self.sine)

    @property
    def edges(self) -> tuple[tuple[Spot, Fraction], tuple[Spot, Fraction]]:
        """The strip's long edges as half planes `a x + b y <= c`, in inches: ((a, b), c) of each."""
        a, b, width = -self.sine, self.cosine, self.width.inches
        if self.seat == "rails":
            least, most = -width, Fraction(0)
        elif self.seat == "posts":
            least, most = Fraction(0), width
        else:
            least, most = -width / 2, width / 2
        return ((a, b), most), ((-a, -b), -least)


def fit_brace(run: Length, rise: Length, width: Length, seat: str) -> Brace:
    """Return the brace of a width in an opening.

    Raises:
        Faulty: where the opening is too small to hold it.
    """
    _check(run, rise, width, seat)
    across, up, strip = run.inches, rise.inches, width.inches
    square = across * across + up * up
    if seat == "corners":
        length = root(square)
        cosine, sine = across / length, up / length
    else:
        length = root(square - strip * strip)
        lean = strip if seat == "rails" else -strip
        cosine = (across * length - lean * up) / square
        sine = (up * length + lean * across) / square
    return Brace(seat, run, rise, width, Length(length), cosine, sine)


def _check(run: Length, rise: Length, width: Length, seat: str) -> None:
    nothing = Length(0)
    if run <= nothing or rise <= nothing:
        help_line = "see which sides the opening has, and in which order"
        raise Faulty([Fault("no-opening", say("the opening for the brace has no room"), help=help_line)])
    side, room = (mark("rails"), run) if seat == "rails" else (mark("posts"), rise)
    if (seat == "corners" and width >= min(run, rise)) or (seat != "corners" and width >= room):
        message = say("the brace is too wide to be seated on the {side} of its opening", side=say(side))
        if seat == "corners":
            message = say("the brace is too wide for its opening")
        raise Faulty([Fault("brace-too-wide", message, help="make it narrower, or the opening larger")])
