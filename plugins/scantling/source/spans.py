"""Where in the author's file each value of its plain data stands."""

from __future__ import annotations

from dataclasses import dataclass, field

from scantling.fault import Place

Path = tuple[str | int, ...]


@dataclass(frozen=True, slots=True)
class Span:
    """Where one value stands, as offsets into its document."""

    start: int
    end: int
    key: tuple[int, int] | None = None
    """Where its key stands; None for an item of a list."""
    is_scalar: bool = True
    letters: tuple[int, ...] | None = None
    """Offset of each of the text's characters, and of its end, where these do not just follow `start`;
    empty if that cannot be told."""

    def characters(self, start: int, end: int) -> tuple[int, int]:
        """Return where some characters of the value's text stand."""
        if self.letters is None:
            return self.start + start, self.start + end
        if not self.letters:
            return self.start, self.end
        last = len(self.letters) - 1
        start, end = min(start, last), min(end, last)
        if end > start:
            return self.letters[start], self.letters[end - 1] + 1
        return self.letters[start], self.letters[start]


@dataclass(slots=True)
class Spans:
    """Where each value of one document stands."""

    by_path: dict[Path, Span] = field(default_factory=dict)
    whole: Span = field(default_factory=lambda: Span(0, 0, is_scalar=False))
    """Shown for the document as a whole: its first line."""

    def resolve(self, place: Place) -> tuple[int, int]:
        """Return where a place stands; of a place that is not written, what is written nearest above it."""
        path: Path = place.path
        span = self.by_path.get(path)
        exact = span is not None
        while span is None and path:
            path = path[:-1]
            span = self.by_path.get(path)
        if span is None:
            return self.whole.start, self.whole.end
        if exact and place.on_key and span.key:
            return span.key
        if exact and span.is_scalar:
            if place.start is None or place.on_key:
                return span.start, span.end
            return span.characters(place.start, place.start if place.end is None else place.end)
        return span.key or (span.start, span.end)
