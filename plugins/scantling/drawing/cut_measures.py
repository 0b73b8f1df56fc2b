"""Letters and margins of a cut diagram, in page units."""

from __future__ import annotations

LEFT = 10.0
TITLE, LABEL, SMALL, KEY = 14.0, 11.5, 10.0, 11.0
CIRCLE = 17.0
"""Room between the middles of two numbers in circles."""
HEADING = 15.0
"""What a second line of the heading takes."""
