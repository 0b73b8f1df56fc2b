"""The frame in which a post shows a plan, and the script that makes it as high as the page in it."""

from __future__ import annotations

from pathlib import Path

from scantling.pages.html import escape, tag

_SCRIPT = Path(__file__).parent / "embedded" / "post.js"
_SANDBOX = "allow-scripts allow-popups allow-popups-to-escape-sandbox"
_HEIGHT = 600
"""Pixels of a frame before it is told how high the page is, and where it never is."""


def frame(source: str, title: str, **more: object) -> str:
    """Return the frame, in which the page may run scripts and open windows, and nothing else.

    Args:
        source: the address of the page.
        more: further attributes.
    """
    return tag(
        "iframe",
        src=source,
        title=title,
        height=_HEIGHT,
        style="width:100%;border:0",
        loading="lazy",
        sandbox=_SANDBOX,
        **more,
    )


def frame_script(source: str) -> str:
    """Return the script for frames with that source."""
    script = _SCRIPT.read_text("utf-8").replace("@@SOURCE@@", escape(source))
    return f"<script>\n{script}</script>"
