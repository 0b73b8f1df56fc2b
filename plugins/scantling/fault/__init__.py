"""What is wrong with something an author or a reader wrote, as data.

The engine never prints and never raises a bare error for bad input: it collects `Fault` values
and, where it cannot go on, raises one `Faulty` that carries them all. Whoever shows them
(terminal, page, JSON, browser) decides how they look.
"""

from scantling.fault.fault import Fault, Faulty, Note, Place, Severity
from scantling.fault.nearest import did_you_mean, nearest

__all__ = ["Fault", "Faulty", "Note", "Place", "Severity", "did_you_mean", "nearest"]
