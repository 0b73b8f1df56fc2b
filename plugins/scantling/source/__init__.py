"""Reading what an author wrote: Markdown and YAML files, and what is wrong in them, with line and column."""

from scantling.source.catalog import (
    PLAN_FILE,
    SHOP_FILE,
    Catalog,
    SourcePlan,
    SourceShop,
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
)
from scantling.source.document import Document, make_document
from scantling.source.machine import render_github, render_html, to_data
from scantling.source.terminal import render_concise, render_full, summarize, visible

__all__ = [
    "PLAN_FILE",
    "SHOP_FILE",
    "Catalog",
    "Diagnostic",
    "DiagnosticNote",
    "Document",
    "SourcePlan",
    "SourceShop",
    "Spot",
    "count_severities",
    "exit_status",
    "from_fault",
    "load_plan",
    "load_shop",
    "make_document",
    "read_catalog",
    "render_concise",
    "render_full",
    "render_github",
    "render_html",
    "sort_diagnostics",
    "summarize",
    "to_data",
    "visible",
]
