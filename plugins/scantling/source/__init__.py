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

__all__ = [
    "PLAN_FILE",
    "SHOP_FILE",
    "Catalog",
    "Diagnostic",
    "DiagnosticNote",
    "SourcePlan",
    "SourceShop",
    "Spot",
    "count_severities",
    "exit_status",
    "from_fault",
    "load_plan",
    "load_shop",
    "read_catalog",
    "sort_diagnostics",
]
