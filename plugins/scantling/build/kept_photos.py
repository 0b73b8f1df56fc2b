"""Photos that were made small before: neither another price nor another word of a plan touches them."""

from __future__ import annotations

import pickle
from dataclasses import dataclass

from scantling.build.cache import Cache, code_digest, digest
from scantling.pages import sized

KIND = "photos"


@dataclass(frozen=True, slots=True)
class KeptSizing:
    """Makes photos small that were not made so before."""

    cache: Cache

    def __call__(self, file: str, content: bytes) -> dict[str, bytes]:
        """Return the files that are made of a photo.

        Raises:
            NoPhotoError: where it is none.
        """
        name = digest(code_digest(), file, content)
        raw = self.cache.get(KIND, name)
        if raw is not None:
            found: dict[str, bytes] = pickle.loads(raw)  # noqa: S301 - our own entry, its digest checked
            return found
        made = sized(file, content)
        self.cache.put(KIND, name, pickle.dumps(made, protocol=5))
        return made
