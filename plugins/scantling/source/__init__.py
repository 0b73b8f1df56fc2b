"""Reading what an author wrote: Markdown and YAML files, and what is wrong in them, with line and column."""

from scantling.source.catalog import (
    PLAN_FILE,
    SHOP_FILE,
    Catalog,
    load_plan,
    load_shop,
    read_catalog,
)
from scantling.source.diagnostic import (
    Diagnostic,
    DiagnosticNote,
    Spot,
    count_severities,
    exit_status,
    from_fault,
    sort_diagnostics,
    spot_at,
)
from scantling.source.document import LARGEST_FILE, Document, make_document
from scantling.source.loaded import SourcePlan, SourceShop
from scantling.source.machine import render_github, render_html, to_data
from scantling.source.price_csv import ListedPrices, read_price_csv, unknown_told
from scantling.source.price_file import PRICE_FILE, price_text, read_price_file, write_price_file
from scantling.source.reprice import with_prices
from scantling.source.terminal import columns_of, render_concise, render_full, summarize, visible
from scantling.source.together import Claim, check_together, claim_of

__all__ = [
    "LARGEST_FILE",
    "PLAN_FILE",
    "PRICE_FILE",
    "SHOP_FILE",
    "Catalog",
    "Claim",
    "Diagnostic",
    "DiagnosticNote",
    "Document",
    "ListedPrices",
    "SourcePlan",
    "SourceShop",
    "Spot",
    "check_together",
    "claim_of",
    "columns_of",
    "count_severities",
    "exit_status",
    "from_fault",
    "load_plan",
    "load_shop",
    "make_document",
    "price_text",
    "read_catalog",
    "read_price_csv",
    "read_price_file",
    "render_concise",
    "render_full",
    "render_github",
    "render_html",
    "sort_diagnostics",
    "spot_at",
    "summarize",
    "to_data",
    "unknown_told",
    "visible",
    "with_prices",
    "write_price_file",
]
