"""The piece turned around in the page: fetched on demand, by hand and by key, at the size that is shown."""

from __future__ import annotations

import io
import json
from itertools import pairwise
from pathlib import Path

import pytest
import trimesh

from scantling.measure import Display, read_length
from scantling.plan import Choice
from scantling.report import plan_data, report_on
from scantling.source import load_plan, load_shop
from tests.support.live_page import BENCH, DESKTOP, PHONE, READY, choose, fresh_pages, wait
from tests.support.whole_page import violations
from tools import chromium

pytestmark = [pytest.mark.browser, pytest.mark.timeout(600)]

PLANS = Path(__file__).resolve().parents[2] / "plans"


@pytest.fixture
def fresh(browser):
    """Return a function that opens a page in a context of its own, without what is kept for another visit."""
    with fresh_pages(browser, service_workers="block") as open_page:
        yield open_page


def turn(page) -> None:
    """Press the button, and wait until the piece is there."""
    page.locator('[data-turn="open"]').click()
    page.wait_for_selector(".sc-turning canvas:visible")
    page.wait_for_function("document.querySelector('[data-turn-say]').textContent === ''", timeout=READY)


def told(page) -> str:
    """Return what is said of the part that was picked."""
    return page.inner_text("[data-turn-part]").strip()


def kinds(page, count: int) -> set[str]:
    """Return what is said of each kind of part, reached by key."""
    found = set()
    for _ in range(count):
        page.keyboard.press("Enter")
        found.add(told(page))
    return found


def listed(data) -> set[str]:
    """Return what should be said of the parts of a plan.json."""
    return {
        f"{row['letter']} {row['part']}, "
        + " × ".join(row[side]["text"] for side in ("length", "width", "thick"))
        for row in data["cut_list"]
    }


def at_width(text: str):
    """Return the bench's plan.json at a width, as the engine has it here."""
    fitter = load_plan(PLANS / "entry-bench" / "plan.md", load_shop(PLANS / "shop.yml").shop).fitter
    return plan_data(report_on(fitter, Choice({"width": read_length(text)}, {})), Display())


@pytest.mark.parametrize("viewport", [PHONE, DESKTOP], ids=["phone", "desktop"])
def test_parts_picked_by_key_are_those_of_the_cut_list(fresh, home, site, viewport):
    """Letter, name and size of every part are those of plan.json, and nothing is fetched before."""
    page = fresh(viewport)
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(home.url + BENCH)
    page.wait_for_selector('[data-turn="open"]:visible')
    page.wait_for_load_state("networkidle")
    assert not [url for url in asked if "three" in url or "viewer.js" in url or url.endswith(".glb")]

    turn(page)
    assert page.evaluate("document.activeElement.tagName") == "CANVAS"
    assert page.locator('[data-fragment="picture"]').is_hidden()
    assert told(page) == ""
    wanted = listed(json.loads((site / BENCH / "plan.json").read_text("utf-8")))

    assert kinds(page, len(wanted)) == wanted
    assert [url for url in asked if not url.startswith(("data:", "blob:", home.url))] == []
    assert len([url for url in asked if url.endswith("plan.glb")]) == 1
    assert page.evaluate("document.documentElement.scrollWidth") <= viewport["width"]

    page.keyboard.press("Escape")
    assert told(page) == ""
    page.keyboard.press("Escape")
    assert page.locator('[data-fragment="picture"]').is_visible()
    assert page.locator("canvas").is_hidden()
    assert page.evaluate("document.activeElement.dataset.turn") == "open"


def test_a_finger_picks_and_the_buttons_do_the_rest(fresh, home, site):
    """A tap on the piece tells the part, one beside it nothing; turning and coming closer change the view."""
    page = fresh(PHONE, has_touch=True)
    page.goto(home.url + BENCH)
    turn(page)
    canvas = page.locator("canvas")
    box = canvas.bounding_box()
    wanted = listed(json.loads((site / BENCH / "plan.json").read_text("utf-8")))
    page.touchscreen.tap(box["x"] + box["width"] / 2, box["y"] + 0.4 * box["height"])  # on the seat
    assert told(page) in wanted
    page.touchscreen.tap(box["x"] + 4, box["y"] + 4)
    assert told(page) == ""

    seen = [canvas.screenshot()]
    for name in ("closer", "farther", "on", "back"):
        page.locator(f'[data-turn="{name}"]').click()
        page.wait_for_timeout(300)
        seen.append(canvas.screenshot())
    canvas.focus()
    page.keyboard.press("ArrowRight")
    page.wait_for_timeout(300)
    seen.append(canvas.screenshot())
    assert all(one != other for one, other in pairwise(seen))
    assert told(page) in wanted


def test_it_follows_another_size(fresh, home):
    """With the piece open, another width is shown, and the picked part tells its new size."""
    page = fresh()
    page.goto(home.url + BENCH)
    turn(page)
    page.keyboard.press("Enter")
    page.keyboard.press("Enter")
    before = told(page)
    assert before in listed(at_width("48 in"))

    choose(page, "width", "40")
    wait(page, "width 40 in")
    page.wait_for_function(
        "before => document.querySelector('[data-turn-part]').innerText.trim() !== before", arg=before
    )
    wanted = listed(at_width("40 in"))
    assert told(page) in wanted
    page.locator("canvas").focus()
    assert kinds(page, len(wanted)) == wanted

    with page.expect_download() as waiting:
        page.locator('a[href="plan.glb"]').click()
    model = trimesh.load(io.BytesIO(Path(waiting.value.path()).read_bytes()), file_type="glb")
    assert model.extents[0] == pytest.approx(40 * 0.0254, abs=1e-6)

    page.locator("canvas").focus()
    for key in ("Escape", "Enter", "Enter"):
        page.keyboard.press(key)
    assert told(page) != before
    page.locator("[data-live-reset]").click()
    page.wait_for_function(
        "before => document.querySelector('[data-turn-part]').innerText.trim() === before", arg=before
    )


def test_opened_at_a_size_of_ones_own_it_is_that_size(fresh, home):
    """Who came by a link to a size turns the piece around at that size."""
    page = fresh()
    page.goto(home.url + BENCH + "?width=40in")
    wait(page, "width 40 in")
    turn(page)
    wanted = listed(at_width("40 in"))

    assert kinds(page, len(wanted)) == wanted


def test_who_wants_less_motion_gets_none_of_its_own(fresh, home):
    """After a drag the piece stands still at once."""
    page = fresh(reduced_motion="reduce")
    page.goto(home.url + BENCH)
    turn(page)
    canvas = page.locator("canvas")
    box = canvas.bounding_box()
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    start = canvas.screenshot()
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x + 60, y + 20, steps=3)
    page.mouse.up()
    page.evaluate("() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)))")
    first = canvas.screenshot()
    page.wait_for_timeout(600)

    assert first != start
    assert canvas.screenshot() == first


def test_without_webgl_the_picture_stays_with_a_word(browser, home):
    """Where a browser cannot draw in three dimensions, nothing is fetched, and the page says why."""
    plain = browser.browser_type.launch(
        executable_path=chromium.find(), args=["--no-sandbox", "--disable-3d-apis"]
    )
    page = plain.new_page(viewport=PHONE)
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(home.url + BENCH)
    page.locator('[data-turn="open"]').click()

    assert "does not draw in three dimensions" in page.inner_text("[data-turn-say]")
    assert page.locator('[data-fragment="picture"] img').is_visible()
    assert page.locator("canvas").is_hidden()
    assert not [url for url in asked if "three" in url or url.endswith(".glb")]
    plain.close()


@pytest.mark.parametrize("broken", ["three.module.min.js", "viewer.js", "plan.glb"])
def test_where_it_cannot_load_the_picture_stays_with_a_word(browser, home, broken):
    """Whatever file is missing, there is a message and the picture; the next try may do better."""
    context = browser.new_context(service_workers="block")
    page = context.new_page()
    context.route(f"**/{broken}", lambda route: route.fulfill(status=404, body=""))
    page.goto(home.url + BENCH)
    page.locator('[data-turn="open"]').click()
    page.wait_for_function(
        "document.querySelector('[data-turn-say]').textContent.includes('cannot be turned around')"
    )

    assert page.locator('[data-fragment="picture"] img').is_visible()
    assert page.locator("canvas").is_hidden()
    assert page.locator('[data-turn="open"]').is_enabled()
    context.close()


def test_where_not_even_the_button_can_wake_there_is_a_word(browser, home):
    """Without the script of the button, the page says so, and the picture stays."""
    context = browser.new_context(service_workers="block")
    page = context.new_page()
    context.route("**/turn.js", lambda route: route.fulfill(status=404, body=""))
    page.goto(home.url + BENCH)
    page.get_by_text("The picture is still here.").wait_for()

    assert page.locator('[data-fragment="picture"] img').is_visible()
    assert page.locator('[data-turn="open"]').is_hidden()
    context.close()


def test_on_paper_the_picture_is_printed(fresh, home):
    """A page printed with the piece open shows the picture, and nothing to press."""
    page = fresh()
    page.goto(home.url + BENCH)
    turn(page)
    page.emulate_media(media="print")

    assert page.locator('[data-fragment="picture"] img').is_visible()
    assert page.locator("canvas").is_hidden()


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_while_it_is_open(fresh, home, scheme):
    """No violation of axe-core's rules with the piece open and a part picked."""
    page = fresh(PHONE, color_scheme=scheme)
    page.goto(home.url + BENCH)
    turn(page)
    page.keyboard.press("Enter")
    found = violations(page)

    assert found == []
