"""A bench and a shop opened in a session, as a page does it."""

from __future__ import annotations

import json
from typing import Any

from scantling.pages import render_words
from scantling.pages.live.session import Session
from scantling.plan import read_plan
from tests.support.workshop import bench_data, shop_data


def opened(**plans: dict[str, Any]) -> Session:
    """Return a session that was handed the small shop and plans, a bench unless told otherwise."""
    session = Session()
    plans = plans or {"bench": bench_data()}
    handed = {
        slug: {"data": data, "words": dict(render_words(read_plan(data, slug)))}
        for slug, data in plans.items()
    }
    answer = ask(session, ask="open", shop=shop_data(), plans=handed, display={"units": "in", "fraction": 16})
    assert answer == {"ok": True}
    return session


def ask(session: Session, **question: Any) -> dict[str, Any]:
    """Return the answer to a question."""
    return json.loads(session.answer(json.dumps(question)))


def fit(session: Session, chosen: Any = None, **more: Any) -> dict[str, Any]:
    """Return the answer for the bench at a choice."""
    return ask(session, ask="fit", slug="bench", chosen=chosen or {}, **more)
