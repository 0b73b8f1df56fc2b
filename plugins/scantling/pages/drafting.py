"""Who draws a plan: everything that is drawn of it, for its pages and as files beside them, and its chart."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from scantling.drawing import to_glb
from scantling.measure import Display
from scantling.pages.content import Content
from scantling.pages.drawings import Drawing, Drawings, card_drawing
from scantling.pages.drawings_bundle import DRAWINGS_FILE, drawings_bundle
from scantling.pages.model_file import MODEL_FILE
from scantling.plan import Choice, Fitter, Size
from scantling.report import CostChart, Report, cost_by_size


class Drafting:
    """Draws everything anew; who remembers drawings does it by being one of these."""

    def drawings(self, report: Report, display: Display, size: str) -> Drawings:
        """Return the drawings of a plan at one size.

        Args:
            size: as it stands in the address of its page; "" for the usual one.
        """
        del size
        return Drawings(report, display)

    def card(self, report: Report, display: Display) -> Drawing | None:
        """Return the drawing for the plan's card, at its usual size."""
        return card_drawing(report, display)

    def chart(self, fitter: Fitter, size: Size, choice: Choice) -> CostChart:
        """Return what each inch costs: the cost along one size, everything else as in `choice`."""
        return cost_by_size(fitter, size, choice)

    def bundle(self, drawings: Iterable[Drawing]) -> Content:
        """Return all drawings of one size as one file."""
        return drawings_bundle(drawings)

    def model(self, report: Report, display: Display, drawings: Drawings) -> Content | None:
        """Return the 3-D model at the size of the drawings, if there is one."""
        del report, display
        return None if drawings.model is None else to_glb(drawings.model)

    def files(self, report: Report, display: Display, drawings: Drawings) -> Iterator[tuple[str, Content]]:
        """Yield each file that is drawn at one size, with its name."""
        for drawing in drawings:
            yield drawing.file, drawing.source
        yield DRAWINGS_FILE, self.bundle(drawings)
        model = self.model(report, display, drawings)
        if model is not None:
            yield MODEL_FILE, model
