"""The solver's memory on disk."""

from __future__ import annotations

import pickle
from dataclasses import dataclass

from scantling.build.cache import Cache, code_digest, digest
from scantling.cutting import Answer

KIND = "cuts"


@dataclass(frozen=True, slots=True)
class DiskMemory:
    """Remembers the answers of the cutting solver in a cache."""

    cache: Cache

    def recall(self, question: str) -> Answer | None:
        """Return the answer to a question that was asked before, if it is remembered."""
        raw = self.cache.get(KIND, digest(code_digest(), question))
        answer = pickle.loads(raw) if raw is not None else None  # noqa: S301 - our own entry, its digest checked
        return answer if isinstance(answer, Answer) else None

    def keep(self, question: str, answer: Answer) -> None:
        """Remember an answer."""
        self.cache.put(KIND, digest(code_digest(), question), pickle.dumps(answer, protocol=5))
