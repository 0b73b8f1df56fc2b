"""Writing a scene as SVG: small, self-contained, the same bytes every time."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import chain
from zlib import crc32

from scantling.drawing.escape import escape
from scantling.drawing.look import LETTERS, LOOKS, OPEN, PATTERNS
from scantling.drawing.number import pairs, short
from scantling.drawing.shape import (
    Circle,
    Group,
    Line,
    Path,
    Polygon,
    Polyline,
    Rectangle,
    Scene,
    Shape,
    Strokes,
    Text,
)

_Strokes = tuple[tuple[float, float, float, float], ...]
_FILLED = {"paper", "wood", "side", "top", "picked", "bare", "solid", "mark", "ink", "soft", "red"}


def to_svg(scene: Scene) -> str:
    """Return the scene as one SVG element, with its own style.

    It has a `viewBox` and no size, so that it fills what it is put into. Names of patterns are made
    from the content, so that several drawings can stand on one page.
    """
    writer = _Writer()
    body = "".join(writer.shapes(scene.shapes))
    key = f"s{crc32((scene.title + body).encode()):08x}"
    body = body.replace("url(#@", f"url(#{key}-")
    told = f'<desc id="{key}-d">{escape(scene.told)}</desc>' if scene.told else ""
    labelled = f"{key}-t {key}-d" if scene.told else f"{key}-t"
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" class="sc" role="img" aria-labelledby="{labelled}" '
        f'viewBox="0 0 {short(scene.width)} {short(scene.height)}" font-family="{LETTERS}">'
        f'<title id="{key}-t">{escape(scene.title)}</title>{told}'
        f"<style>{writer.style()}</style>{writer.definitions(key)}{body}</svg>\n"
    )


def _strokes(lines: _Strokes) -> str:
    return "".join(f"M{short(x1)} {short(y1)}L{short(x2)} {short(y2)}" for x1, y1, x2, y2 in lines)


def _grain(lines: _Strokes) -> str:
    """Return pencil lines to one decimal: half of what a drawing holds, and nobody measures them."""
    return "M%.1f %.1fL%.1f %.1f" * len(lines) % tuple(chain.from_iterable(lines))


class _Writer:
    """Writes shapes and remembers which looks and patterns they took."""

    def __init__(self) -> None:
        self._looks: dict[str, None] = {}
        self._patterns: dict[str, None] = {}

    def style(self) -> str:
        """Return the rules for the looks that were used, in the order of the list of looks."""
        return "".join(f".sc-{name}{{{rule}}}" for name, rule in LOOKS.items() if name in self._looks)

    def definitions(self, key: str) -> str:
        """Return the patterns that were used."""
        made = "".join(
            f'<pattern id="{key}-{name}" {inside}</pattern>'
            for name, inside in PATTERNS.items()
            if name in self._patterns
        )
        return f"<defs>{made}</defs>" if made else ""

    def shapes(self, shapes: Iterable[Shape]) -> Iterable[str]:
        """Yield each shape as SVG."""
        return (self._shape(shape) for shape in shapes)

    def _shape(self, shape: Shape) -> str:
        match shape:
            case Line(x1, y1, x2, y2, look):
                ends = f'x1="{short(x1)}" y1="{short(y1)}" x2="{short(x2)}" y2="{short(y2)}"'
                return f"<line {ends}{self._look(look, area=False)}/>"
            case Polyline(points, look):
                return f'<polyline points="{pairs(points)}"{self._look(look)}/>'
            case Polygon(points, look, fill):
                return f'<polygon points="{pairs(points)}"{self._look(look, fill)}/>'
            case Rectangle():
                return self._rectangle(shape)
            case Circle(x, y, radius, look):
                place = f'cx="{short(x)}" cy="{short(y)}" r="{short(radius)}"'
                return f"<circle {place}{self._look(look)}/>"
            case Strokes(lines, look):
                runs = _grain(lines) if look == "grain" else _strokes(lines)
                return f'<path d="{runs}"{self._look(look, area=False)}/>' if runs else ""
            case Path():
                return self._path(shape)
            case Text():
                return self._text(shape)
            case Group():
                return self._group(shape)

    def _look(self, look: str, fill: str = "", *, area: bool = True) -> str:
        names = look.split()
        for name in names:
            if name not in LOOKS:
                raise KeyError(f"no look is called {name!r}")
            self._looks[name] = None
        classes = f' class="{" ".join(f"sc-{name}" for name in names)}"' if names else ""
        if fill:
            if fill not in PATTERNS:
                raise KeyError(f"no pattern is called {fill!r}")
            self._patterns[fill] = None
            return f'{classes} fill="url(#@{fill})"'
        if area and not _FILLED.intersection(names) and OPEN.intersection(names):
            return f'{classes} fill="none"'
        return classes

    def _rectangle(self, shape: Rectangle) -> str:
        place = f'x="{short(shape.x)}" y="{short(shape.y)}"'
        size = f'width="{short(shape.width)}" height="{short(shape.height)}"'
        corner = f' rx="{short(shape.round)}"' if shape.round else ""
        return f"<rect {place} {size}{corner}{self._look(shape.look, shape.fill)}/>"

    def _path(self, shape: Path) -> str:
        runs = [f"M{short(shape.start[0])} {short(shape.start[1])}"]
        for move in shape.moves:
            letter = "LQC"[len(move.by)]
            runs.append(letter + " ".join(f"{short(x)} {short(y)}" for x, y in (*move.by, move.to)))
        runs.append("Z" if shape.closed else "")
        return f'<path d="{"".join(runs)}"{self._look(shape.look, shape.fill)}/>'

    def _text(self, shape: Text) -> str:
        place = f'x="{short(shape.x)}" y="{short(shape.y)}" font-size="{short(shape.size)}"'
        anchor = f' text-anchor="{shape.anchor}"' if shape.anchor != "start" else ""
        turn = (
            f' transform="rotate({short(shape.turn)} {short(shape.x)} {short(shape.y)})"'
            if shape.turn
            else ""
        )
        return f"<text {place}{anchor}{turn}{self._look(shape.look, area=False)}>{escape(shape.words)}</text>"

    def _group(self, shape: Group) -> str:
        move = f' transform="translate({short(shape.x)} {short(shape.y)})"' if shape.x or shape.y else ""
        part = f' data-part="{escape(shape.part)}"' if shape.part else ""
        title = f"<title>{escape(shape.title)}</title>" if shape.title else ""
        return f"<g{move}{part}>{title}{''.join(self.shapes(shape.shapes))}</g>"
