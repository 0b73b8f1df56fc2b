"""Templates of the theme that need not be compiled again for every build."""

from __future__ import annotations

from jinja2 import BytecodeCache, Environment
from jinja2.bccache import Bucket

from scantling.build import Cache, digest

KIND = "templates"


class TemplateCache(BytecodeCache):
    """Keeps compiled templates among what builds remember, by their text and the library's version."""

    def __init__(self, cache: Cache) -> None:
        """Keep the cache."""
        self._cache = cache

    def load_bytecode(self, bucket: Bucket) -> None:
        """Fill in a compiled template, if there is one that is whole; the library looks whether it fits."""
        found = self._cache.get(KIND, _name(bucket))
        if found is not None:
            bucket.bytecode_from_string(found)

    def dump_bytecode(self, bucket: Bucket) -> None:
        """Keep a compiled template."""
        self._cache.put(KIND, _name(bucket), bucket.bytecode_to_string())


def remember_templates(env: Environment, cache: Cache | None) -> None:
    """Let the host's templates be remembered, unless the author's settings remember them already."""
    if cache is not None and cache.folder is not None and env.bytecode_cache is None:
        env.bytecode_cache = TemplateCache(cache)


def _name(bucket: Bucket) -> str:
    return digest(bucket.key, bucket.checksum)
