"""The work that can hurt somebody, and what is said of it: one topic after another.

Every text is short and defers: to the tool's manual, to local codes, to who knows. None claims that a
plan conforms to a standard.
"""

from __future__ import annotations

import re

from scantling.checks.caution import Call, Called, Topic, Work
from scantling.checks.saying import length
from scantling.checks.tip_over import SAID, needs_anchor
from scantling.measure import Length
from scantling.plan import FittedPart, glued_section
from scantling.shop import Stock

_PANELS = {"dado", "groove", "rabbet"}
_IRRITANT = (
    "cedar",
    "ipe",
    "teak",
    "iroko",
    "mahogany",
    "rosewood",
    "padauk",
    "wenge",
    "cocobolo",
    "yew",
    "redwood",
)
_OILS = re.compile(r"\b(?:oil|linseed|tung|danish|teak|wiping varnish|stain)\b")
_FOOD = re.compile(
    r"\b(?:cutting board|chopping board|bread|serving|tray|salad|cheese|butcher|food|herbs?|vegetables?)\b"
)
_CHILD = re.compile(r"\b(?:child|children|kid|kids|toy|toys|toddler|nursery|playhouse|crib|cot)\b")
_LOFT = re.compile(r"\b(?:bunk|loft bed|cabin bed)\b")
_RECLAIMED = re.compile(r"\b(?:reclaimed|salvaged|pallets?|used|old|second.hand|barn)\b")
_TREATED = re.compile(r"\b(?:treated|acq|cca|copper)\b")
_FIBREBOARD = re.compile(r"\b(?:mdf|fibreboard|fiberboard|particleboard|chipboard)\b")


def _stocks(work: Work) -> list[tuple[FittedPart, Stock]]:
    return [
        (part, work.shop.stocks[name])
        for part in work.fitted.parts
        for name in part.part.source.stocks
        if name in work.shop.stocks
    ]


def _is_ripped(part: FittedPart, stock: Stock) -> bool:
    return not stock.is_sheet and part.blank.across < stock.widest


def _short_rip(work: Work) -> Called:
    """A piece that is ripped when it is short already: cut to length for a glue-up, then trimmed."""
    least = max(work.shop.rules.least_rip_length, Length(24))
    for part, stock in _stocks(work):
        if part.part.glue_up is None:
            continue
        wide, thick = glued_section(part)
        is_ripped = _is_ripped(part, stock) or part.width < wide or part.thick < thick
        if is_ripped and part.blank.along < least:
            return Call(
                f"the blanks of '{part.id}' are ripped when they are {length(part.blank.along)} long",
                work.step_of(part.id),
                part.id,
            )
    return None


def _narrow_strip(work: Work) -> Called:
    least = max(work.shop.rules.least_strip_width, Length(1))
    for part in work.fitted.parts:
        stocks = [work.shop.stocks[name] for name in part.part.source.stocks if name in work.shop.stocks]
        is_ripped = bool(part.part.source.offcut_of) or any(_is_ripped(part, stock) for stock in stocks)
        narrow = min(part.width, part.thick) if part.part.source.offcut_of else part.width
        if is_ripped and narrow < least:
            return Call(f"'{part.id}' is a strip of {length(narrow)}", work.step_of(part.id), part.id)
    return None


def _table_saw(work: Work) -> Called:
    step = work.step_with("table saw")
    return Call("a step rips on the table saw", step) if step is not None else None


def _dado(work: Work) -> Called:
    for part in work.fitted.parts:
        for one in part.work:
            if one.work.kind in _PANELS and not work.step_with("router"):
                return Call(f"'{part.id}' has a {one.work.kind}", work.step_of(part.id), part.id)
    return None


def _router(work: Work) -> Called:
    step = work.step_with("router")
    return Call("a step takes a router", step) if step is not None else None


def _nailer(work: Work) -> Called:
    step = work.step_with("nailer")
    return Call("a step takes a nailer", step) if step is not None else None


def _irritant(work: Work) -> Called:
    for part, stock in _stocks(work):
        if any(name in f"{stock.wood} {stock.key}".casefold() for name in _IRRITANT):
            return Call(f"'{part.id}' is of {stock.wood or stock.key}", None, part.id)
    return None


def _fibreboard(work: Work) -> Called:
    for part, stock in _stocks(work):
        if _FIBREBOARD.search(f"{stock.wood} {stock.key}".casefold()):
            return Call(f"'{part.id}' is of {stock.key}", None, part.id)
    return None


def _treated(work: Work) -> Called:
    for part, stock in _stocks(work):
        if _TREATED.search(f"{stock.key} {stock.note}".casefold()):
            return Call(f"'{part.id}' is of {stock.key}", None, part.id)
    return None


def _reclaimed(work: Work) -> Called:
    for part, stock in _stocks(work):
        if _RECLAIMED.search(f"{stock.key} {stock.note}".casefold()):
            return Call(f"'{part.id}' is of {stock.key}", None, part.id)
    return None


def _oily_rags(work: Work) -> Called:
    for item in work.fitted.hardware:
        ware = work.shop.wares[item.ware]
        if ware.kind == "finish" and "water" not in ware.key and _OILS.search(ware.key.casefold()):
            return Call(f"'{ware.key}' is wiped on with rags", work.step_with(ware.key.casefold()))
    return None


def _food(work: Work) -> Called:
    found = _FOOD.search(work.words)
    return Call(f"readers find it under '{found[0]}'") if found else None


def _child(work: Work) -> Called:
    found = _CHILD.search(work.words)
    return Call(f"readers find it under '{found[0]}'") if found else None


def _loft(work: Work) -> Called:
    found = _LOFT.search(work.words)
    return Call(f"readers find it under '{found[0]}'") if found else None


def _anchor(work: Work) -> Called:
    if not needs_anchor(work.fitted):
        return None
    overall = work.fitted.overall()
    return Call(f"it is {length(overall['height'])} high and {length(overall['depth'])} deep")


TOPICS: tuple[Topic, ...] = (
    Topic(
        "caution-short-rips",
        "Is a word said about ripping short pieces?",
        "Short pieces are hard to hold at a table saw. Do not rip a piece shorter than the saw's manual "
        "allows; use a "
        "push block and the riving knife, and keep both hands out of the line of the blade.",
        "29 CFR 1910.213 and OSHA 3157 (guards, spreader, push stick); the saw's manual comes first",
        re.compile(r"short rip|short piece|shorter than|push (?:block|stick)"),
        _short_rip,
    ),
    Topic(
        "caution-narrow-strips",
        "Is a word said about narrow strips?",
        "Narrow strips bring the hand near the blade, and can be caught between blade and fence. Use a "
        "push stick, "
        "let the strip fall on the side away from the fence, and stand out of its line.",
        "OSHA 3157 (push stick, featherboard); the saw's manual comes first",
        re.compile(r"narrow|thin strip|\bstrips?\b|push (?:block|stick)"),
        _narrow_strip,
    ),
    Topic(
        "caution-table-saw",
        "Is a word said about ripping at the table saw?",
        "Rip with the guard and the riving knife in place, use a push stick for the last stretch, and do "
        "not stand "
        "behind the board.",
        "29 CFR 1910.213; the saw's manual comes first",
        re.compile(r"riving knife|push (?:block|stick)|guard|manual of each machine"),
        _table_saw,
    ),
    Topic(
        "caution-dadoes",
        "Is a word said about cutting dadoes and grooves?",
        "Cuts that do not go through the wood are made without the usual guard on many saws. Cut them "
        "with a router, "
        "or as the saw's manual says; many saws take no dado set at all.",
        "29 CFR 1910.213; the saw's manual comes first",
        re.compile(r"dado|groove|rabbet|router|does not go through"),
        _dado,
    ),
    Topic(
        "caution-router",
        "Is a word said about the router?",
        "Clamp the work, move the router against the turn of the bit, and unplug it before you change "
        "the bit.",
        "the router's manual; common practice",
        re.compile(r"router|\bbit\b"),
        _router,
    ),
    Topic(
        "caution-nailer",
        "Is a word said about the nailer?",
        "A nail can turn in the wood and come out at the side. Keep the other hand well away from its "
        "line, and "
        "disconnect the nailer before you clear a jam.",
        "the nailer's manual; common practice",
        re.compile(r"nailer"),
        _nailer,
    ),
    Topic(
        "caution-irritant-dust",
        "Is a word said about dust that irritates more than most?",
        "The dust of this wood irritates lungs, eyes and skin more than most. Saw outdoors or with a "
        "vacuum, and wear "
        "a mask.",
        "ACGIH limit for western red cedar, 0.5 mg/m3, half of other woods' (OSHA table of wood dust "
        "limits, archived)",
        re.compile(r"\bdust\b"),
        _irritant,
    ),
    Topic(
        "caution-fibreboard-dust",
        "Is a word said about the dust of fibreboard?",
        "The dust of fibreboard is fine and hangs in the air. Cut it outdoors or with a vacuum, and wear "
        "a mask; buy "
        "panels marked TSCA Title VI compliant.",
        "NIOSH limit for wood dust, 1 mg/m3; 40 CFR 770 (formaldehyde in panels)",
        re.compile(r"\bdust\b"),
        _fibreboard,
    ),
    Topic(
        "caution-treated-wood",
        "Is a word said about treated wood?",
        "Do not burn treated wood, wear a mask and gloves when you saw it, wash before you eat, and use "
        "hot-dip "
        "galvanised or stainless fasteners.",
        "EPA consumer information sheet on treated wood; FPL-GTR-190 chapter 8 (fasteners)",
        re.compile(r"treated"),
        _treated,
    ),
    Topic(
        "caution-lead-paint",
        "Is a word said about old paint on reclaimed wood?",
        "Paint on old wood may hold lead. Test it; do not sand it dry, scrape it or burn it off, and "
        "keep such wood "
        "away from children and food. Wood treated before 2004 may hold arsenic: leave it alone.",
        "16 CFR 1303 (lead in paint, products made until 1978); EPA on arsenic-treated wood, ended "
        "2003-12-31",
        re.compile(r"\blead\b|old paint|arsenic"),
        _reclaimed,
    ),
    Topic(
        "caution-oily-rags",
        "Is a word said about oily rags?",
        "Rags wet with oil can catch fire by themselves within hours. Spread them flat outdoors to dry, "
        "or put them "
        "in a lidded metal can full of water, as the can says.",
        "NFPA tip sheet on oily rags",
        re.compile(r"\brags?\b"),
        _oily_rags,
    ),
    Topic(
        "caution-food",
        "Is a word said about what touches food?",
        "Let nothing touch food but plain wood or a finish whose maker says that it may, once it has "
        "cured; never "
        "treated, painted or reclaimed wood.",
        "EPA consumer information sheet on treated wood; the finish's label",
        re.compile(r"\bfood\b|eat"),
        _food,
    ),
    Topic(
        "caution-children",
        "Is a word said about children?",
        "Leave no part that a child under three could swallow, and no opening between 3 1/2 and 9 in in "
        "which a head "
        "could be caught. No plan here has been tested to a toy or furniture standard.",
        "16 CFR 1501 (small parts); 3 1/2 to 9 in: CPSC playground handbook, from memory; 16 CFR 1250 (toys)",
        re.compile(r"child"),
        _child,
    ),
    Topic(
        "caution-bunk-bed",
        "Is a word said about beds above the floor?",
        "Beds whose base is more than 30 in above the floor come under rules for guard rails and "
        "openings. Read them "
        "before you build; this plan has not been tested to them.",
        "16 CFR 1213 and 1513",
        re.compile(r"guard ?rail|16 cfr"),
        _loft,
    ),
    Topic(
        "caution-tip-over",
        "Is a word said about tipping over?",
        "It can tip over. Fasten it to a wall stud or to masonry as soon as it stands, as the anchor's "
        "maker says; keep "
        "heavy things low and nothing tempting on top. An anchor is a second safety, not a promise.",
        "CPSC Anchor It; ASTM F2057-23 and F3096, to which no plan here claims to conform",
        SAID,
        _anchor,
    ),
)
"""Every topic, in the order in which a page tells them."""
