"""What a new plan and a new catalog begin with."""

from __future__ import annotations

import json

_PLAN = """\
---
title: TITLE
summary: An open crate, {width} wide, made of boards and glue.
tags: [storage]
skill: first project
build time: an afternoon
tools: [saw, square, clamps]

# What a reader may choose: the usual value, its range, and the sizes that get a page of their own.
sizes:
  width: {usual: 18 in, from: 12 in, to: 30 in, by: 1/2 in, offer: [24 in]}
  depth: {usual: 12 in, from: 8 in, to: 18 in}

# A number that is needed more than once gets a name.
lengths:
  gap: 1/4 in
  inside: depth - 2 * side.thick
  height: side.width + slat.thick

# Each part: how many, of what, how long, and where each one sits, for the pictures.
parts:
  side: {count: 2, from: STOCK, length: width, place: {faces: front, bottom: slat.top, mirror: back}}
  end:
    count: 2
    from: STOCK
    length: inside
    place: {runs: back, faces: side, front: side.back, bottom: slat.top, mirror: across}
  slat:
    count: floor(depth / (slat.width + gap))
    from: STOCK
    length: width
    place: {bottom: 0 in, repeat: {way: back, from: 0 in, to: depth}}

joins:
  - {join: side to end, with: glue, joints: 4}

hardware:
  GLUE: 1
---
A crate for whatever lies about. Write here what it is for, and what to know before the wood is bought.

## Cut the boards
tools: saw, square
caution: Keep your hands clear of the blade, and follow the saw's own manual.

Cut two sides and {slat.count} slats {width} long, and two ends {end.length} long.

## Glue up the frame
uses: side, end
needs: GLUE
tools: clamps

The ends stand between the sides. Glue, clamp, and check that both diagonals are the same.

## Put the bottom on
uses: slat

Glue the {slat.count} slats across the bottom, evenly spaced.
"""

SHOP = """\
# What can be bought, and for how much. Change a price here, and every plan follows.
name: My workshop
currency: $
kerf: 1/8 in

lumber:
  1x4: {lengths: {6 ft: 4.20, 8 ft: 5.60}, wood: eastern white pine}
  1x6: {lengths: {6 ft: 6.90, 8 ft: 9.20}, wood: eastern white pine}
  2x4: {lengths: {8 ft: 4.30, 10 ft: 5.70}, wood: spruce-pine-fir}

sheets:
  3/4 plywood: {thick: 23/32 in, sizes: {4 ft x 8 ft: 58.00}, wood: softwood plywood}

hardware:
  wood glue: {price: 6.50, sold: bottle}
"""


def plan_text(title: str, stock: str, glue: str) -> str:
    """Return a small plan that builds at once.

    Args:
        stock: a board of the shop file.
        glue: a glue of the shop file.
    """
    plain = title.replace(" ", "").isalnum()
    written = title if plain else json.dumps(title, ensure_ascii=False)
    return _PLAN.replace("TITLE", written).replace("STOCK", stock).replace("GLUE", glue)
