"""Write docs/reference/checked-against.md: `python -m tests.outside`."""

from __future__ import annotations

from scantling.quantities import QUANTITIES
from tests.outside import page, sources

page.PAGE.parent.mkdir(parents=True, exist_ok=True)
checks = sources.all_checks()
page.PAGE.write_text(page.write(QUANTITIES, checks), "utf-8")
print(f"{page.PAGE}: {len({check.quantity for check in checks})} numbers, {len(checks)} checks")
for quantity in sources.unchecked(QUANTITIES, checks):
    print(f"not checked yet: {quantity}")
