"""What a change of prices did: to each price, to each plan, and what looks like a slip of the pen."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from scantling.measure import Money, write_money
from scantling.report.price_record import PlanCost, PriceRecord
from scantling.words import counted, mark, say

SLIP_LOW, SLIP_HIGH = Fraction(7), Fraction(14)
"""A price that went up or down about tenfold was probably mistyped, though it moved by a third besides."""
CENTS_LOW, CENTS_HIGH = Fraction(70), Fraction(140)
"""... and one that moved about a hundredfold has cents for dollars."""


@dataclass(frozen=True, slots=True)
class PriceChange:
    """One price that is new, gone or another."""

    name: str
    before: Money | None
    after: Money | None
    since: str
    """Since which day it had been `before`, "" if it is new."""

    @property
    def ratio(self) -> Fraction | None:
        """Return how many times the old price the new one is, or None where there are not two."""
        if self.before is None or self.after is None or self.before.cents == 0:
            return None
        return Fraction(self.after.cents, self.before.cents)

    @property
    def slip(self) -> str:
        """Say how the change looks like a slip, or ""."""
        ratio = self.ratio
        if ratio is None or ratio == 0:
            return "" if ratio is None else say("it costs nothing now")
        times = max(ratio, 1 / ratio)
        is_more = ratio > 1
        if SLIP_LOW <= times <= SLIP_HIGH:
            return say("about ten times more than before" if is_more else "about ten times less than before")
        if CENTS_LOW <= times <= CENTS_HIGH:
            return say(
                "about a hundred times more than before: cents for whole money?"
                if is_more
                else "about a hundred times less than before: cents for whole money?"
            )
        return ""


@dataclass(frozen=True, slots=True)
class PlanChange:
    """One plan that costs or buys something else than before."""

    slug: str
    before: PlanCost | None
    after: PlanCost | None

    @property
    def difference(self) -> Money:
        """Return by how much the cost went up; below nothing where it went down."""
        before = self.before.cost if self.before else Money(0)
        after = self.after.cost if self.after else Money(0)
        return after - before

    @property
    def share(self) -> Fraction:
        """Return the difference as a share of the cost before; 0 where there is none."""
        if self.before is None or self.before.cost.cents == 0:
            return Fraction(0)
        return Fraction(self.difference.cents, self.before.cost.cents)

    def buys_differently(self) -> Iterator[tuple[str, int, int]]:
        """Yield (what, how many before, how many now) for all that is bought in another number."""
        if self.before is None or self.after is None:
            return
        for name in sorted({*self.before.buys, *self.after.buys}):
            counts = self.before.buys.get(name, 0), self.after.buys.get(name, 0)
            if counts[0] != counts[1]:
                yield name, *counts


@dataclass(frozen=True, slots=True)
class PriceReport:
    """What changed between two records."""

    before: PriceRecord
    after: PriceRecord
    prices: tuple[PriceChange, ...]
    """Changed prices, the greatest change first."""
    plans: tuple[PlanChange, ...]
    """Changed plans, the biggest mover first."""
    no_longer_sold: Mapping[str, tuple[str, ...]]
    """What plans bought before and no shop sells now: the plans, by the thing's name."""

    @property
    def slips(self) -> tuple[PriceChange, ...]:
        """Return the changes that look mistyped."""
        return tuple(change for change in self.prices if change.slip)


def compare(before: PriceRecord, after: PriceRecord) -> PriceReport:
    """Return what changed from one record to the next."""
    names = sorted({*before.prices, *after.prices})
    prices = [change for name in names if (change := _price_change(name, before, after)) is not None]
    plans = [
        PlanChange(slug, before.plans.get(slug), after.plans.get(slug))
        for slug in sorted({*before.plans, *after.plans})
        if before.plans.get(slug) != after.plans.get(slug)
    ]
    return PriceReport(
        before,
        after,
        tuple(sorted(prices, key=_by_size_of_change)),
        tuple(sorted(plans, key=lambda plan: (-abs(plan.difference.cents), plan.slug))),
        _no_longer_sold(before, after),
    )


def _price_change(name: str, before: PriceRecord, after: PriceRecord) -> PriceChange | None:
    old, new = before.prices.get(name), after.prices.get(name)
    if old is not None and new is not None and old.money == new.money:
        return None
    return PriceChange(name, old.money if old else None, new.money if new else None, old.since if old else "")


def _by_size_of_change(change: PriceChange) -> tuple[Fraction, str]:
    ratio = change.ratio
    return (Fraction(0) if not ratio else -max(ratio, 1 / ratio)), change.name


def _no_longer_sold(before: PriceRecord, after: PriceRecord) -> dict[str, tuple[str, ...]]:
    gone = sorted(set(before.prices) - set(after.prices))
    buyers = {name: tuple(slug for slug, plan in before.plans.items() if name in plan.buys) for name in gone}
    return {name: slugs for name, slugs in buyers.items() if slugs}


def price_words(report: PriceReport, name_of: Callable[[str], str] = str) -> list[str]:
    """Return the report as lines of plain text.

    Args:
        name_of: gives what a plan is called by its folder, which is its name where nothing else is said.
    """
    currency = report.after.currency
    lines = [_heading(report)]
    lines += [
        say("  look again: {name}: {why}", name=_name(change.name), why=change.slip)
        for change in report.slips
    ]
    lines += [f"  {_price_line(change, currency)}" for change in report.prices]
    for name, slugs in report.no_longer_sold.items():
        lines.append(
            say(
                "  no longer sold: {name}, which {plans} bought",
                name=_name(name),
                plans=", ".join(map(name_of, slugs)),
            )
        )
    for plan in report.plans:
        lines += _plan_lines(plan, name_of(plan.slug), currency)
    if report.before.plans and report.after.plans:
        totals = write_money(report.before.total, currency), write_money(report.after.total, currency)
        lines.append(
            say("all plans together: {before} before, {after} now", before=totals[0], after=totals[1])
        )
    return lines


def _heading(report: PriceReport) -> str:
    since = report.before.day or say("the last record")
    if not report.prices and not report.plans:
        return say("No price has changed since {since}.", since=since)
    return counted(
        "{count} price changed since {since}:",
        "{count} prices changed since {since}:",
        len(report.prices),
        since=since,
    )


def _price_line(change: PriceChange, currency: str) -> str:
    if change.before is None:
        assert change.after is not None
        return say("{name}: new, {after}", name=_name(change.name), after=write_money(change.after, currency))
    if change.after is None:
        before = write_money(change.before, currency)
        return say("{name}: no longer on the list (was {before})", name=_name(change.name), before=before)
    since = say(" since {day}", day=change.since) if change.since else ""
    before, after = write_money(change.before, currency), write_money(change.after, currency)
    return say(
        "{name}: {before}{since}, now {after}",
        name=_name(change.name),
        before=before,
        since=since,
        after=after,
    )


def _plan_lines(plan: PlanChange, called: str, currency: str) -> Iterator[str]:
    if plan.before is None or plan.after is None:
        cost = plan.after or plan.before
        assert cost is not None
        told = mark("{name}: new, {after}") if plan.before is None else mark("{name}: gone, {after}")
        yield say(told, name=called, after=write_money(cost.cost, currency))
        return
    sign = "+" if plan.difference.cents >= 0 else "-"
    moved = f"{sign}{write_money(abs(plan.difference), currency)}"
    costs = write_money(plan.before.cost, currency), write_money(plan.after.cost, currency)
    yield say(
        "{name}: {before} before, {after} now ({moved})",
        name=called,
        before=costs[0],
        after=costs[1],
        moved=moved,
    )
    for name, before, after in plan.buys_differently():
        yield say(
            "    buys {after} × {name} where it was {before}", name=_name(name), before=before, after=after
        )


def _name(name: str) -> str:
    return name.replace(" | ", ", ")
