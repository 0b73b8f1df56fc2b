"""What a plan page has for readers who want to turn the piece around: a button, and the stage that it opens.

All of it is hidden until the script runs that it needs; the picture above it stays where that cannot.
"""

from __future__ import annotations

from scantling.pages.html import tag
from scantling.words import mark, say

_HELP = mark(
    "Drag or use the arrow keys to turn it, pinch or use + and − to come closer. "
    "Tap a part, or press Enter, to see what it is."
)
_NO_SCRIPT = mark("The script that turns the piece around could not be loaded. The picture is still here.")
_BUTTONS = (
    ("back", mark("Previous part")),
    ("on", mark("Next part")),
    ("closer", mark("Closer")),
    ("farther", mark("Farther")),
    ("close", mark("Back to the picture")),
)


def turn_block(viewer: str) -> str:
    """Return the button and the stage.

    Args:
        viewer: the folder of the viewer's files among the site's assets.
    """
    start = tag("button", say("Turn it around"), type="button", data_turn="open")
    stage = tag(
        "canvas",
        "",
        tabindex="0",
        role="application",
        aria_label=say("The piece, to turn around"),
        aria_describedby="turn-help",
    )
    buttons = "".join(tag("button", say(words), type="button", data_turn=name) for name, words in _BUTTONS)
    inner = (
        stage
        + tag("p", "", class_="sc-turn__part", role="status", data_turn_part=True)
        + tag("p", buttons, class_="sc-turn__buttons")
        + tag("p", say(_HELP), id="turn-help", class_="sc-turn__help")
    )
    return tag(
        "div",
        tag("p", start, class_="sc-turn__open")
        + tag("p", "", class_="sc-turn__say", role="status", data_turn_say=True)
        + tag("div", inner, class_="sc-turn__stage", hidden=True, data_turn_stage=True),
        class_="sc-turn",
        hidden=True,
        data_viewer=viewer,
        data_failed=say(_NO_SCRIPT),
    )
