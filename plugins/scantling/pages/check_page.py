"""What every plan is asked before it is published: for readers, so that they know what was looked at."""

from __future__ import annotations

from scantling.checks import CHECKS, Check
from scantling.pages.finished import Finished, Page
from scantling.pages.html import escape, tag
from scantling.pages.markdown_words import escape_markdown
from scantling.words import mark, say

PATH = "checks/index.md"
_INTRO = mark(
    "Each plan here is read by a program before it is published, at its usual size and at every size "
    "that it offers. "
    "These are the questions. An answer is guidance: nothing here proves that a piece is strong or "
    "safe, or that it "
    "conforms to a standard."
)


def check_page() -> Finished:
    """Return the page with every question, why it is asked, and where a limit comes from."""
    groups: dict[str, list[Check]] = {}
    for check in CHECKS:
        groups.setdefault(check.group, []).append(check)
    blocks = [f"# {say('What every plan is asked')}", say(_INTRO)]
    for group, checks in groups.items():
        blocks.append(f"## {escape_markdown(say(group))}")
        blocks += (_question(check) for check in checks)
    meta = {
        "title": say("What every plan is asked"),
        "description": say("The questions that each plan is asked, at every size."),
    }
    return Finished((Page(PATH, "\n\n".join(blocks) + "\n", meta, in_nav=True),), ())


def _question(check: Check) -> str:
    words = tag("b", escape(say(check.title))) + " " + escape(check.explained())
    if check.source:
        source = say("Source: {source}.", source=say(check.source).rstrip("."))
        words += " " + tag("small", escape(source))
    return tag("div", tag("p", words), id=check.name, class_="sc-question")


def link_to_check(name: str, up: str) -> str:
    """Return a link to the question that a check asks, from a page that lies `up` below the site's root."""
    title = next((check.title for check in CHECKS if check.name == name), name)
    return tag("a", escape(say(title)), href=f"{up}checks/#{name}")
