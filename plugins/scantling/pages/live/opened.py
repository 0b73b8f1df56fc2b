"""What a page has handed over, kept between questions: shop, plans, and what was made of them."""

from __future__ import annotations

import json
from collections.abc import Callable, Hashable
from dataclasses import dataclass
from typing import Any, TypeVar

from scantling.fault import Fault, Faulty
from scantling.measure import Display
from scantling.pages.live.my_shop import Settings, read_settings
from scantling.pages.words import Words
from scantling.plan import Fitter, Plan, read_plan
from scantling.shop import Shop, read_shop
from scantling.words import ENGLISH, Language, say, spoken_by

MOST_KEPT = 60
T = TypeVar("T")


@dataclass(frozen=True, slots=True)
class OpenPlan:
    """A plan with its prose rendered."""

    plan: Plan
    words: Words


@dataclass(frozen=True, slots=True)
class Reader:
    """A reader's settings, and the author's shop as they find it."""

    key: str
    """The settings as text."""
    display: Display
    shop: Shop
    warnings: tuple[Fault, ...]


class Opened:
    """Shop and plans of one site."""

    def __init__(self) -> None:
        self.display = Display()
        self._language = ENGLISH
        self._shop: Shop | None = None
        self._plans: dict[str, OpenPlan] = {}
        self._made: dict[Hashable, Any] = {}

    def language_of(self, question: object) -> Language:
        """Return the site's language: the one that a question comes with, else the one that came before."""
        shown = question.get("display") if isinstance(question, dict) else None
        if isinstance(shown, dict):
            self._language = spoken_by(str(shown.get("language", "en")))
        return self._language

    def take(self, question: dict[str, Any]) -> None:
        """Take in the shop, how the site shows lengths, and plans.

        Raises:
            Faulty: where one of them cannot be read.
        """
        if "shop" in question:
            self._shop = read_shop(question["shop"])
            self._plans.clear()
            self._made.clear()
        if "display" in question:
            self.display = read_settings(question["display"], Display()).display
        for slug, made in question.get("plans", {}).items():
            if slug not in self._plans:
                self._plans[slug] = OpenPlan(read_plan(made["data"], slug), made["words"])

    def plan(self, slug: str) -> OpenPlan:
        """Return a plan.

        Raises:
            Faulty: where none of that name was handed over.
        """
        if slug not in self._plans:
            raise Faulty([Fault("unknown-plan", say("there is no plan '{plan}' here", plan=slug[:40]))])
        return self._plans[slug]

    @property
    def shop(self) -> Shop:
        """Return the author's shop.

        Raises:
            Faulty: where none was handed over.
        """
        if self._shop is None:
            raise Faulty([Fault("no-shop", say("there is no shop file here"))])
        return self._shop

    def reader(self, mine: object) -> Reader:
        """Return a reader with their settings."""
        key = json.dumps(mine, sort_keys=True)
        return self.once(("reader", key), lambda: self._reader(mine, key))

    def _reader(self, mine: object, key: str) -> Reader:
        settings: Settings = read_settings(mine, self.display)
        shop, odd = settings.shop(self.shop)
        return Reader(key, settings.display, shop, (*settings.warnings, *odd))

    def fitter(self, opened: OpenPlan, reader: Reader) -> Fitter:
        """Return a plan made ready for a reader's shop.

        Raises:
            Faulty: where it cannot be.
        """
        key = ("fitter", opened.plan.slug, reader.key)
        return self.once(key, lambda: Fitter(opened.plan, reader.shop))

    def once(self, key: Hashable, make: Callable[[], T]) -> T:
        """Return what was made for `key` before, or make it; the oldest is forgotten."""
        if key not in self._made:
            if len(self._made) >= MOST_KEPT:
                self._made.pop(next(iter(self._made)))
            self._made[key] = make()
        made: T = self._made[key]
        return made
