"""The MkDocs plugin: thin, it hands finished pages over to the host."""

from scantling.host.config import ScantlingConfig
from scantling.host.plugin import ScantlingPlugin

__all__ = ["ScantlingConfig", "ScantlingPlugin"]
