"""Elevations: the piece straight from the front, the side and above, with dimension lines."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from scantling.drawing.body import Body
from scantling.drawing.dimension_line import across, upright
from scantling.drawing.lettering import text_width
from scantling.drawing.model import Model, Span
from scantling.drawing.shape import Scene, Shape, Text
from scantling.drawing.stage import Room, Stage, draw, set_stage
from scantling.geometry import FRONT, SIDE, TOP, View
from scantling.measure import Length
from scantling.words import mark, say

_LETTER, _SMALL, _TOP = 11.0, 9.5, 20.0
_MARGINS = 46.0, 58.0, 70.0
"""What is left free at the right: the least of these where all words find room."""
_CHAIN = 14.0
"""How far right of the piece its upright measures stand."""
_LONG = 9 / 20
"""A part bounds an opening if it is at least so much of the whole piece long."""
_NEAR = 1 / 3
"""And if it reaches into this share of the depth that is nearest to the eye."""


@dataclass(frozen=True, slots=True)
class Face:
    """One of the three sides from which a piece is drawn."""

    name: str
    view: View
    level: int
    """The axis that runs to the right on the page."""
    rise: int
    """The axis that runs up the page."""
    near: int
    """The axis that runs to the eye."""
    near_high: bool
    """True if the eye is at its upper end."""


FACES = {
    "front": Face("front", FRONT, 0, 2, 1, near_high=False),
    "side": Face("right side", SIDE, 1, 2, 0, near_high=True),
    "top": Face("above", TOP, 0, 1, 2, near_high=True),
}
"""The elevations by name."""


def elevation(model: Model, name: str, *, width: float = 440.0) -> Scene:
    """Return one elevation, `name` being front, side or top; all three have one scale."""
    face = FACES[name]
    seen = model.straight[face.view]
    margin = next((m for m in _MARGINS if _words_fit(model, width, m)), _MARGINS[-1])
    scale = _scale(model, width, margin)
    level = scale * _long(model, face.level)
    left = 36 + (width - 36 - margin - level) / 2
    stage, wide, high = set_stage(seen, Room(left, _TOP, level, scale * _long(model, face.rise)))
    shapes = draw(seen, stage, model.titles)
    bottom = _TOP + high
    frame = _Frame(model, face, stage, left, left + wide, _TOP, bottom)
    chain = frame.level_chain(bottom + 16)
    shapes += chain
    low = bottom + (36 if chain else 18)
    shapes += frame.overall(low)
    shapes += frame.upright_chain(left + wide + _CHAIN)
    title = say(_TITLES[face.name], plan=model.fitted.plan.title)
    return Scene(width, low + 14, tuple(shapes), title, frame.told())


def _scale(model: Model, width: float, margin: float) -> float:
    """Return at how many units an inch all three elevations fit."""
    wide, deep, high = (max(_long(model, axis), 1e-9) for axis in range(3))
    return min((width - 36 - margin) / max(wide, deep), width * 0.95 / max(high, deep))


def _words_fit(model: Model, width: float, margin: float) -> bool:
    """Return whether words that stand beside an upright line end on the page, in all three elevations."""
    scale = _scale(model, width, margin)
    for face in FACES.values():
        facing = _Facing(model, face)
        room = (width - 36 + margin - scale * _long(model, face.level)) / 2
        for low, high in facing.openings(face.rise, face.level):
            words, long = facing.words((low, high)), scale * _number(high - low)
            beside = _LETTER <= long < text_width(words, _LETTER) + 6
            if beside and _CHAIN + 5 + text_width(words, _SMALL) > room:
                return False
    return True


def _long(model: Model, axis: int) -> float:
    low, high = model.spans[axis]
    return _number(high - low)


_TITLES = {
    "front": mark("{plan}, from the front"),
    "right side": mark("{plan}, from the right side"),
    "above": mark("{plan}, from above"),
}
_TOLD = {
    "front": mark("The piece seen from the front: {width} wide and {height} high on the page."),
    "right side": mark("The piece seen from the right side: {width} wide and {height} high on the page."),
    "above": mark("The piece seen from above: {width} wide and {height} high on the page."),
}


@dataclass(frozen=True, slots=True)
class _Facing:
    """What one side of the piece has to be measured."""

    model: Model
    face: Face

    def words(self, span: Span) -> str:
        """Return how long something is."""
        return self.model.display.length(span[1] - span[0])

    def whole(self, axis: int) -> Span:
        """Return from where to where the piece reaches."""
        return self.model.spans[axis]

    def openings(self, axis: int, along: int) -> list[Span]:
        """Return the gaps along one axis between the near parts that are long along the other."""
        whole = self.whole(axis)
        return [gap for gap in _gaps(self.bounding(axis, along)) if gap != whole]

    def bounding(self, axis: int, along: int) -> list[Span]:
        """Return where the near parts that are long along one axis lie along the other: those in sight."""
        low, high = self.whole(along)
        in_sight = self.model.in_sight[self.face.view]
        return [
            (body.placed.low[axis], body.placed.high[axis])
            for number, body in enumerate(self.model.bodies)
            if _is_flat(body, axis)
            and (body.high[along] - body.low[along]) >= _LONG * _number(high - low)
            and self._is_near(body)
            and number in in_sight
        ]

    def alone(self, axis: int, along: int) -> list[Span]:
        """Return where the one part lies that is there by itself, if it is not the whole."""
        spans = set(self.bounding(axis, along))
        return list(spans) if len(spans) == 1 and self.whole(axis) not in spans else []

    def _is_near(self, body: Body) -> bool:
        axis = self.face.near
        low, high = (_number(value) for value in self.whole(axis))
        reach = (high - low) * _NEAR
        return body.high[axis] > high - reach if self.face.near_high else body.low[axis] < low + reach


@dataclass(frozen=True, slots=True)
class _Frame(_Facing):
    """One side of the piece at its place on the page."""

    stage: Stage
    left: float
    right: float
    top: float
    bottom: float

    def told(self) -> str:
        """Return what the elevation shows, in words."""
        width, height = (self.words(self.whole(axis)) for axis in (self.face.level, self.face.rise))
        return say(_TOLD[self.face.name], width=width, height=height)

    def overall(self, y: float) -> list[Shape]:
        """Return the lines of the overall measures."""
        level, rise = self.whole(self.face.level), self.whole(self.face.rise)
        return [
            across(self.left, self.right, y, self.words(level), to=self.bottom),
            *self._height(self.words(rise)),
        ]

    def _height(self, words: str) -> list[Shape]:
        """Return the line of the overall height; where the words do not fit, they stand above it."""
        x, fits = self.left - 18, text_width(words, _LETTER) + 6 <= self.bottom - self.top
        line = upright(self.top, self.bottom, x, words if fits else "", to=self.left)
        return [line] if fits else [line, Text(4, self.top - 6, words, _LETTER)]

    def level_chain(self, y: float) -> list[Shape]:
        """Return the lines of the openings between parts that stand, as far as their words fit."""
        shapes: list[Shape] = []
        axes = self.face.level, self.face.rise
        for low, high in self.openings(*axes) or self.alone(*axes):
            x1, x2 = self._across(low), self._across(high)
            words = self.words((low, high))
            if text_width(words, _LETTER) + 6 <= x2 - x1:
                shapes.append(across(x1, x2, y, words, to=self.bottom))
        return [*shapes, *self._reveal(y)]

    def _reveal(self, y: float) -> list[Shape]:
        """Return the line from the last part that stands to the end of the whole, its words beside it."""
        spans, whole = self.bounding(self.face.level, self.face.rise), self.whole(self.face.level)
        if not spans or whole[1] <= max(high for _, high in spans):
            return []
        end = max(high for _, high in spans)
        words = self.words((end, whole[1]))
        fits = text_width(words, _LETTER) + 8 <= _MARGINS[0]
        return [across(self._across(end), self.right, y, words, to=self.bottom)] if fits else []

    def _from_floor(self, x: float) -> list[Shape]:
        """Return the line from the floor to the lowest part that lies."""
        spans, whole = self.bounding(self.face.rise, self.face.level), self.whole(self.face.rise)
        low = min((low for low, _ in spans), default=whole[0])
        words = self.words((whole[0], low))
        y1, y2 = self._up(low), self._up(whole[0])
        fits = text_width(words, _LETTER) + 6 <= y2 - y1 or text_width(words, _LETTER) + 26 <= _MARGINS[0]
        return [upright(y1, y2, x, words, to=self.right)] if low > whole[0] and fits else []

    def upright_chain(self, x: float) -> list[Shape]:
        """Return the lines of the openings between parts that lie, as far as their words fit."""
        shapes: list[Shape] = []
        for low, high in self.openings(self.face.rise, self.face.level):
            y1, y2 = self._up(high), self._up(low)
            words = self.words((low, high))
            if text_width(words, _LETTER) + 6 <= y2 - y1:
                shapes.append(upright(y1, y2, x, words, to=self.right))
            elif y2 - y1 >= _LETTER:
                shapes.append(upright(y1, y2, x, words, to=self.right, size=_SMALL))
        return [*shapes, *self._from_floor(x)] if shapes else []

    def _across(self, value: Length) -> float:
        return self.left + _number(value - self.whole(self.face.level)[0]) * self.stage.scale

    def _up(self, value: Length) -> float:
        return self.bottom - _number(value - self.whole(self.face.rise)[0]) * self.stage.scale


def _is_flat(body: Body, axis: int) -> bool:
    """Return whether a part ends square on an axis: nothing that is cut off it reaches along that."""
    cuts = (*body.placed.cuts, *(cut for chunk in body.placed.chunks for cut in chunk))
    return all(not cut.normal[axis] for cut in cuts)


def _number(length: Length) -> float:
    return length.top / length.bottom


def _gaps(spans: Sequence[Span]) -> list[Span]:
    """Return what lies between spans that may overlap, in order."""
    gaps: list[Span] = []
    end: Length | None = None
    for low, high in sorted(spans):
        if end is not None and low > end:
            gaps.append((end, low))
        end = high if end is None or high > end else end
    return gaps
