"""Building a catalog: what was made before is found again, the rest is made side by side."""

from scantling.build.cache import Cache, code_digest, digest
from scantling.build.remembered import DiskMemory

__all__ = ["Cache", "DiskMemory", "code_digest", "digest"]
