"""Building a catalog: what was made before is found again, the rest is made side by side."""

from scantling.build.cache import Cache, code_digest, digest
from scantling.build.catalog import Built, How, build_catalog
from scantling.build.remembered import DiskMemory
from scantling.build.workers import do_all

__all__ = ["Built", "Cache", "DiskMemory", "How", "build_catalog", "code_digest", "digest", "do_all"]
