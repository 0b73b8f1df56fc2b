"""Small catalogs that tests write into a folder: one that is in order, one whose every word is hostile."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

SHOP = """\
name: Test yard
currency: $
prices of: 2026-11-02
kerf: 1/8 in
lumber:
  2x4: {wood: spruce-pine-fir, lengths: {8 ft: 4.28, 10 ft: 5.68}}
  1x6: {wood: eastern white pine, lengths: {6 ft: 7.86, 8 ft: 10.38}}
sheets:
  3/4 plywood:
    thick: 23/32 in
    wood: hardwood plywood
    sizes: {2 ft x 4 ft: 28.40, 4 ft x 8 ft: 62.00}
hardware:
  wood screw 2 in: {kind: wood screw, price: 6.10, sold: box of 50, count: 50, long: 2 in}
finish:
  oil: {price: 18.40, sold: quart can, covers: 125 sq ft, caution: Rags can catch fire.}
"""

BENCH = """\
---
title: Quay stool
summary: A stool {width} wide for a wet morning.
tags: [stool, quick, outdoors]
room: entry
skill: first project
build time: an afternoon
author: Test yard
licence: CC BY 4.0
revised: 2026-11-09
tools: [saw, drill]
caution: ["Wear glasses; a {width} board is heavy."]
sizes:
  width: {usual: 24 in, from: 18 in, to: 40 in, offer: [30 in]}
  height: {usual: 17 1/2 in, from: 15 in, to: 19 in}
  depth: {usual: 11 in}
options:
  shelf: {question: "A shelf below?", choices: {open: no shelf, slatted: two slats}, usual: open}
offer:
  - {width: 36 in, shelf: slatted}
parts:
  leg: {count: 4, from: 2x4, length: height - seat.thick}
  seat: {count: 2, from: 1x6, length: width}
  slat: {count: 2, from: 1x6, width: 2 1/2 in, length: width - 4 in, only if: shelf is slatted}
joins:
  - {join: seat to leg, with: screws, fastener: wood screw 2 in, each: 2, joints: 8}
hardware:
  oil: {area: 2 * surface, note: two thin coats}
errata:
  - {day: 2026-10-01, text: "The legs were drawn {seat.thick} too long."}
---
A stool of *two boards*, {height} high.

## Cut the legs
uses: leg
tools: saw
caution: Keep both hands behind the blade.

Cut four legs to **{leg.length}**. See [the notes](#notes-and-corrections).

- first two,
- then two.

## Screw on the seat
uses: seat
needs: 16 wood screw 2 in
tools: drill

Screw the {seat.count} boards on, {width} long.

## Add the slats
uses: slat
only if: shelf is slatted

Put {slat.count} slats {slat.length} long between the legs.
"""

EVIL = "<script>window.hacked=1</script><img src=x onerror=window.hacked=1>\"'&{{7*7}} `"
"""What every text field of the hostile plan says, besides a word of its own."""


def write_catalog(folder: Path, **plans: str) -> Path:
    """Write `plans/` with a shop file and the named plans below `folder`, and return it."""
    home = folder / "plans"
    home.mkdir(parents=True, exist_ok=True)
    (home / "shop.yml").write_text(SHOP, "utf-8")
    for slug, text in (plans or {"stool": BENCH}).items():
        plan = home / slug.replace("_", "-") / "plan.md"
        plan.parent.mkdir(exist_ok=True)
        plan.write_text(text, "utf-8")
    return home


LEAN = "paper: false, live: false"
"""Options of the plugin with which a site is built quickly: no PDFs, no engine for the browser."""


def write_site(folder: Path, *, settings: str = "", options: str = LEAN, **plans: str) -> Path:
    """Write a whole small site below `folder` and return it."""
    write_catalog(folder, **plans)
    (folder / "docs").mkdir()
    (folder / "docs" / "index.md").write_text("# Home\n\n[Plans](plans/index.md)\n", "utf-8")
    written = "site_name: Test yard\nsite_url: https://yard.example.org/\ntheme: {name: material}\n"
    written += f"plugins: [search, {{scantling: {{{options}}}}}]\n{settings}"
    (folder / "mkdocs.yml").write_text(written, "utf-8")
    return folder


def build_small_site(folder: Path) -> None:
    """Write a site with a good and a hostile plan below `folder`, and build it strictly."""
    site = write_site(folder, stool=BENCH, evil=hostile_plan())
    told = {**os.environ, "NO_MKDOCS_2_WARNING": "1"}
    command = [sys.executable, "-m", "mkdocs", "build", "--strict"]
    done = subprocess.run(command, cwd=site, env=told, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr


def hostile_plan() -> str:
    """Return a plan in which every field that holds words tries to break out of them."""
    quoted = '"' + EVIL.replace("\\", "\\\\").replace('"', '\\"') + '"'

    def say(word: str) -> str:
        return f'"{word} ' + quoted[1:]

    head = f"""\
---
title: {say("Evil stool")}
summary: {say("Summary")}
tags: [{say("tag")}]
skill: first project
build time: {say("time")}
author: {say("author")}
licence: {say("licence")}
tools: [{say("tool")}]
caution: [{say("caution")}]
sizes:
  width: {{usual: 24 in, from: 18 in, to: 40 in, offer: [30 in], meaning: {say("meaning")}}}
  height: 17 in
  depth: 11 in
options:
  shelf:
    question: {say("question")}
    choices: {{open: {say("choice")}, closed: {say("choice")}}}
    usual: open
parts:
  leg:
    count: 4
    from: 2x4
    length: height
    note: {say("note")}
    work: [{{kind: holes, where: {say("where")}, count: 2, note: {say("worknote")}}}]
  seat: {{count: 2, from: 1x6, length: width}}
hardware:
  oil: {{area: 2 * surface, note: {say("oilnote")}}}
errata:
  - {{day: 2026-10-01, text: {say("erratum")}}}
notes:
  - {{day: 2026-10-02, text: {say("buildnote")}}}
---
"""
    prose = EVIL.replace("{{7*7}}", "{{{{7*7}}}}").replace("`", "")
    return (
        head
        + f"""\
Intro {prose}

[click](javascript:window.hacked=1) [data](data:text/html,<script>window.hacked=1</script>)
[<img src=x onerror=window.hacked=1>](https://example.org/)
![alt {prose}](https://example.org/x.png) <https://example.org/ok> <javascript:window.hacked=1>
[ref]: javascript:window.hacked=1
[ref]

<div onclick="window.hacked=1">block</div>

&lt;script&gt;window.hacked=1&lt;/script&gt;

```
<script>window.hacked=1</script>
```

## Step {prose}
uses: seat
tools: {EVIL.replace("`", "")}
caution: {say("stepcaution")}

Text {prose} {{width}} [x]({{width}}) [y](javascript:{{width}})
"""
    )
