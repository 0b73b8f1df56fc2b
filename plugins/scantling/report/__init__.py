"""Materials list, cut list, board feet, cost, weight, and where each piece comes from."""

from scantling.report.cost_by_size import (
    CostChart,
    CostPoint,
    Need,
    SweetSpot,
    cost_by_size,
    cost_of_needs,
    main_size,
    needs_by_size,
)
from scantling.report.data import plan_data
from scantling.report.materials import SHELVES, MaterialsList, StockLine, WareLine, list_materials
from scantling.report.needs import StockNeed, lacking, stock_needs
from scantling.report.price_change import PlanChange, PriceChange, PriceReport, compare, price_words
from scantling.report.price_record import (
    PlanCost,
    Price,
    PriceRecord,
    plan_cost,
    price_record,
    prices_of,
    record_prices,
)
from scantling.report.report import Report, make_report, report_on
from scantling.report.store_cuts import StoreCut, store_cuts, store_words
from scantling.report.totals import Totals, total, yield_of
from scantling.report.trace import Origin, trace
from scantling.report.weights import Density, part_weight, stock_density
from scantling.report.words import (
    end_words,
    exact_inches,
    origin_words,
    origins_words,
    part_notes,
    percent,
    plain_text,
    write_measure,
    write_thick,
    write_value,
)

__all__ = [
    "SHELVES",
    "CostChart",
    "CostPoint",
    "Density",
    "MaterialsList",
    "Need",
    "Origin",
    "PlanChange",
    "PlanCost",
    "Price",
    "PriceChange",
    "PriceRecord",
    "PriceReport",
    "Report",
    "StockLine",
    "StockNeed",
    "StoreCut",
    "SweetSpot",
    "Totals",
    "WareLine",
    "compare",
    "cost_by_size",
    "cost_of_needs",
    "end_words",
    "exact_inches",
    "lacking",
    "list_materials",
    "main_size",
    "make_report",
    "needs_by_size",
    "origin_words",
    "origins_words",
    "part_notes",
    "part_weight",
    "percent",
    "plain_text",
    "plan_cost",
    "plan_data",
    "price_record",
    "price_words",
    "prices_of",
    "record_prices",
    "report_on",
    "stock_density",
    "stock_needs",
    "store_cuts",
    "store_words",
    "total",
    "trace",
    "write_measure",
    "write_thick",
    "write_value",
    "yield_of",
]
