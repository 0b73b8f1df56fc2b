"""The drawings of a plan page: which there are, their files, and words for who cannot see them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from scantling.drawing import (
    FACES,
    BoardPicture,
    Model,
    Scene,
    corner_view,
    cut_diagram,
    details,
    elevation,
    exploded_view,
    head_picture,
    make_model,
    plain_outline,
    step_pictures,
    to_svg,
    told,
)
from scantling.measure import Display
from scantling.pages.board_pictures import alike, board_picture
from scantling.pages.html import slug
from scantling.report import Report
from scantling.words import mark, say

if TYPE_CHECKING:
    from scantling.pages.content import Kept

WIDTH = 440.0
"""How wide drawings are in their own units where nothing else is asked for."""
FEW_PARTS = 7
"""So many kinds of parts are still named under a narrow picture."""
BESIDE_KEY = 370.0
"""How wide the piece taken apart is drawn where its key stands beside it."""
SQUARISH = 0.7
"""A board is narrowed from this width on, as a part of its length."""
SIMPLE_KINDS, SIMPLE_CUTS, SIMPLE_SHARE = 3, 8, 0.08
"""And with so few kinds of pieces and cuts, none of its pieces shorter than this part of its length."""


@dataclass(frozen=True, slots=True)
class Drawing:
    """One drawing as a file."""

    file: str
    """Its name beside the page."""
    source: str | Kept
    """The SVG, or where it lies."""
    alt: str
    width: int
    height: int
    caption: str = ""

    @property
    def svg(self) -> str:
        """Return the SVG itself."""
        return self.source if isinstance(self.source, str) else self.source.read().decode()


class Drawings:
    """Every drawing of a plan at one size, each made when it is first asked for."""

    def __init__(
        self,
        report: Report,
        display: Display,
        *,
        width: float = WIDTH,
        step_width: float = WIDTH,
        keyed: bool = True,
        face: float = 1.0,
    ) -> None:
        """Keep what they are drawn from.

        Args:
            width: of details and views, in their own units; less makes larger letters.
            step_width: of the pictures of the steps, likewise.
            keyed: whether pictures of steps and of the piece taken apart explain their letters themselves.
            face: how wide letters run on boards and details, as a share of the widest face in common use.
        """
        self._report = report
        self._display = display
        self._width = width
        self._step_width = step_width
        self._keyed = keyed
        self._face = face

    @cached_property
    def model(self) -> Model | None:
        """What all of them but cut diagrams and details are drawn from; None where parts have no place."""
        return make_model(self._report.fitted, self._display)

    @cached_property
    def head(self) -> Drawing | None:
        """The piece from the corner with its sizes, else its outline; None where its sizes are not known."""
        if self.model is None:
            scene = plain_outline(self._report.fitted, self._display)
        else:
            scene = corner_view(self.model)
        return as_drawing("corner", scene, "") if scene is not None else None

    @cached_property
    def views(self) -> tuple[Drawing, ...]:
        """The piece straight from its sides and taken apart; none where its parts have no place."""
        if self.model is None:
            return ()
        width = self._width
        faces = [
            as_drawing(name, elevation(self.model, name, width=width), say(_SEEN[name])) for name in FACES
        ]
        # the key of many parts would fill a narrow column
        few = len(self._report.fitted.parts) <= FEW_PARTS
        most = WIDTH if self._keyed else BESIDE_KEY
        apart = exploded_view(self.model, width=width if few else most, keyed=self._keyed)
        return (*faces, as_drawing("apart", apart, say("Taken apart")))

    @cached_property
    def cuts(self) -> tuple[Drawing, ...]:
        """The cut diagram of every board and sheet, those cut alike together."""
        return cut_drawings(self._report, self._display, narrow=self._width, face=self._face)

    @cached_property
    def details(self) -> tuple[Drawing, ...]:
        """The joinery laid out on each part that has some."""
        pictures = details(self._report.fitted, self._display, width=self._width, face=self._face)
        return _named(as_drawing(f"detail {one.part}", one.scene, "") for one in pictures)

    @cached_property
    def steps(self) -> Mapping[int, Drawing]:
        """The piece as it stands after each step that adds to it, by the step's number."""
        if self.model is None:
            return {}
        drawn = step_pictures(self.model, width=self._step_width, keyed=self._keyed)
        scenes = zip(self._report.fitted.steps, drawn, strict=True)
        return {
            step.number: as_drawing(f"step {step.number}", scene, "")
            for step, scene in scenes
            if scene is not None
        }

    def __iter__(self) -> Iterator[Drawing]:
        """Yield them all."""
        if self.head is not None:
            yield self.head
        yield from (*self.views, *self.cuts, *self.details, *self.steps.values())


_SEEN = {"front": mark("From the front"), "side": mark("From the right side"), "top": mark("From above")}


def as_drawing(name: str, scene: Scene, caption: str) -> Drawing:
    """Return a scene as a file named after `name`."""
    size = round(scene.width), round(scene.height)
    return Drawing(f"{slug(name)}.svg", to_svg(scene), scene.told or scene.title, *size, caption)


def cut_drawings(
    report: Report, display: Display, *, narrow: float = WIDTH, face: float = 1.0
) -> tuple[Drawing, ...]:
    """Return the cut diagram of every board and sheet, those cut alike together.

    Args:
        narrow: how wide one is drawn that would come out about as high as wide, or that has little to show.
        face: how wide letters run, as a share of the widest face in common use.
    """
    made = []
    for boards in alike(report.cutting.boards):
        picture = board_picture(boards, report, display)
        scene = cut_diagram(picture, face=face)
        if narrow < scene.width and (_is_squarish(picture) or _is_simple(picture)):
            scene = cut_diagram(picture, width=narrow, face=face)
        drawing = as_drawing(f"cut {boards[0].stock.key} {boards[0].number}", scene, "")
        made.append(replace(drawing, alt=told(picture)))
    return _named(made)


def _is_squarish(picture: BoardPicture) -> bool:
    return picture.width > SQUARISH * picture.length


def _is_simple(picture: BoardPicture) -> bool:
    """Return whether a board has so few kinds of pieces, none short, that half the width shows them."""
    kinds = {piece.letter for piece in picture.pieces}
    shortest = min((piece.length for piece in picture.pieces), default=picture.length)
    return (
        len(kinds) <= SIMPLE_KINDS
        and len(picture.cuts) <= SIMPLE_CUTS
        and shortest >= picture.length * SIMPLE_SHARE
    )


def card_drawing(report: Report, display: Display) -> Drawing | None:
    """Return the picture for the catalog's card, without sizes."""
    scene = head_picture(report.fitted, display)
    return as_drawing("card", scene, "") if scene is not None else None


def _named(drawings: Iterable[Drawing]) -> tuple[Drawing, ...]:
    """Return drawings with no name given twice, however stocks and parts are called."""
    made: dict[str, Drawing] = {}
    for drawing in drawings:
        while drawing.file in made:
            drawing = replace(drawing, file=f"also-{drawing.file}")
        made[drawing.file] = drawing
    return tuple(made.values())
