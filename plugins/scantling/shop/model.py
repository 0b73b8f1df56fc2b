"""What can be bought, as data."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from scantling.fault import Place
from scantling.measure import Area, Length, Money


@dataclass(frozen=True, slots=True)
class Sale:
    """One size in which a stock is sold, or one piece that the workshop owns already."""

    id: str
    """Unique in the shop: "2x4 8 ft", "3/4 plywood 4 ft x 8 ft"."""
    length: Length
    width: Length
    price: Money | None
    """None where the shop file gives none: a plan that needs it is told so."""
    place: Place
    owned: int | None = None
    """How many are there already (they cost nothing), or None for something to buy."""
    touched: str = ""
    """The day on which this price was last changed, when the shop file says so."""

    @property
    def label(self) -> str:
        """Return the size as the shop file writes it."""
        return self.id.split(" | ", 1)[-1]


@dataclass(frozen=True, slots=True)
class Stock:
    """One kind of board, sheet, picket or trim."""

    key: str
    """Its name in the shop file: "2x4", "3/4 plywood"."""
    kind: str
    """lumber, sheets, pickets, trim or hardwood: the shelf of the shop it stands on."""
    thick: Length
    width: Length | None
    """Actual width of a board; None for sheets, which are sold in several."""
    sales: tuple[Sale, ...]
    wood: str
    """Key into `woods`, for weight and movement; "" if not said."""
    place: Place
    nominal: tuple[Fraction, Fraction] | None = None
    """Nominal thickness and width in inches, for lumber sold by nominal size."""
    varies: Length = field(default_factory=lambda: Length.of_inches(Fraction(0)))
    """How much narrower than stated a piece may turn out (pickets, rough boards)."""
    has_grain: bool = True
    trim_ends: Length = field(default_factory=lambda: Length.of_inches(Fraction(0)))
    """Cut off each end before use: a split or painted end."""
    trim_edges: Length = field(default_factory=lambda: Length.of_inches(Fraction(0)))
    """Cut off each long edge before use: a sheet's bruised edge."""
    note: str = ""

    @property
    def is_sheet(self) -> bool:
        """True for stock that is bought by the sheet."""
        return self.width is None

    @property
    def widest(self) -> Length:
        """Return the greatest width of a piece."""
        return self.width if self.width is not None else max(sale.width for sale in self.sales)

    @property
    def longest(self) -> Length:
        """Return the greatest length of a piece."""
        return max(sale.length for sale in self.sales)


@dataclass(frozen=True, slots=True)
class Ware:
    """One article of hardware, finish or other supply."""

    key: str
    kind: str
    """What it is, for matching: "pocket screw", "edge banding", "drawer slide", "glue", "finish"."""
    shelf: str
    """hardware or finish: the shelf of the shop it stands on."""
    price: Money | None
    place: Place
    sold: str = "each"
    """How it is sold, in words: "box of 100", "quart can"."""
    count: Fraction = Fraction(1)
    """How many pieces are in what is sold."""
    long: Length | None = None
    """Length of a screw, a nail or a slide; length of tape on a roll of banding."""
    covers: Area | None = None
    """Area that one of what is sold covers once."""
    clearances: Mapping[str, Length] = field(default_factory=dict)
    """Room that its maker asks for, by name: "side clearance"."""
    note: str = ""
    caution: str = ""
    touched: str = ""


@dataclass(frozen=True, slots=True)
class Rules:
    """What the saw, the car and the hand allow."""

    least_rip_length: Length
    """A piece shorter than this is not ripped: rip it long, then crosscut."""
    least_strip_width: Length
    """A strip narrower than this is not ripped without a warning."""
    keep_length: Length
    """An offcut at least this long is worth keeping ..."""
    keep_width: Length
    """... if it is at least this wide."""
    longest_piece: Length | None = None
    """The longest piece that fits the car."""
    store_cuts: int | None = None
    """How many cuts the store makes on a board or sheet; None for as many as are wanted."""


@dataclass(frozen=True, slots=True)
class PriceList:
    """How a store's price list is read."""

    item: str
    """Heading of the column that names the article."""
    price: str
    """Heading of the column with its price."""
    articles: Mapping[str, str]
    """The id of a sale or the key of a ware here, by the store's name for it."""
    separator: str
    decimal: str
    encoding: str
    place: Place


@dataclass(frozen=True, slots=True)
class Shop:
    """A whole shop file."""

    kerf: Length
    currency: str
    prices_of: str
    """The day of the prices, 2026-11-02; "" if not said."""
    stocks: Mapping[str, Stock]
    wares: Mapping[str, Ware]
    rules: Rules
    name: str = ""
    price_lists: Mapping[str, PriceList] = field(default_factory=dict)
