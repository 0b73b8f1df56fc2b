"""Any width, in the reader's browser: choosing sizes, options and a shop of one's own."""

from __future__ import annotations

import gzip
import json
import re

import pytest

from tests.serving import Serving
from tests.support.live_page import READY, choose, cost, fragment, say, size, told, wait, watch

pytestmark = [pytest.mark.browser, pytest.mark.timeout(300)]

PHONE = {"width": 390, "height": 844}
DESKTOP = {"width": 1280, "height": 900}
BENCH = "plans/entry-bench/"


@pytest.fixture(scope="module")
def home(site, serve_folder) -> Serving:
    """Return the site as a host serves it that many sites share: below a path, with no special headers."""
    return serve_folder(site, under="shop/by-the-harbour")


@pytest.fixture
def fresh(browser):
    """Return a function that opens a page in a context of its own; no page may log an error."""
    opened = []

    def open_page(viewport=DESKTOP, **how):
        context = browser.new_context(viewport=viewport, **how)
        context.set_default_timeout(30_000)
        page = context.new_page()
        opened.append((context, watch(page)))
        return page

    yield open_page
    for context, _ in opened:
        context.close()

    assert [trouble for _, trouble in opened if trouble] == []


@pytest.mark.parametrize("viewport", [PHONE, DESKTOP], ids=["phone", "desktop"])
def test_a_typed_width_changes_the_whole_page(fresh, home, viewport):
    """Title, facts, lists, pictures, prose, address and announcement follow; nothing loads before."""
    page = fresh(viewport)
    asked_before = len(home.asked)
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:visible")
    before = {name: fragment(page, name) for name in ("facts", "materials", "cut-list", "steps")}
    picture = page.get_attribute('[data-fragment="picture"] img', "src")
    assert not any("pyodide" in path or "live.json" in path for path in home.asked[asked_before:])

    choose(page, "width", "40 1/2")
    wait(page, "width 40 1/2 in")

    assert page.url.endswith("?width=40-1/2in")
    assert page.inner_text("h1").endswith("width 40 1/2 in")
    after = {name: fragment(page, name) for name in before}
    assert all(after[name] != before[name] for name in ("facts", "materials", "cut-list"))
    assert "40 1/2 in wide" in after["facts"]
    assert page.get_attribute('[data-fragment="picture"] img', "src") != picture
    assert page.locator(".sc-changed").count() > 10
    assert "as drawn $" in say(page)
    assert page.evaluate("document.documentElement.scrollWidth") <= viewport["width"]

    page.locator("[data-live-reset]").click()
    wait(page, "as drawn")
    assert {name: fragment(page, name) for name in before} == before
    assert page.url.endswith(BENCH)
    assert page.locator(".sc-changed").count() == 0


def test_what_each_inch_costs_follows_a_change(fresh, home):
    """Some time after a change the chart of costs is made again at the reader's choice."""
    page = fresh()
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:visible")
    choose(page, "width", "52")
    wait(page, "width 52 in")

    page.wait_for_selector('[data-fragment="cost"] img[src^="data:image/svg"]', state="attached")
    assert "moves in steps" in fragment(page, "cost")


def test_a_link_shows_the_same_and_the_back_button_leads_back(fresh, home):
    """Who opens a shared address sees that size and option; reloading keeps them; back undoes a change."""
    page = fresh()
    page.goto(home.url + BENCH + "?width=36in&depth=14in&shelf=open")
    wait(page, "width 36 in, depth 14 in, shelf open")
    assert size(page, "width").input_value() == "36 in"
    assert page.locator('input[type="radio"][value="open"]').is_checked()

    page.reload()
    wait(page, "width 36 in, depth 14 in, shelf open")
    choose(page, "width", "50")
    wait(page, "width 50 in")
    page.go_back()
    wait(page, "width 36 in")
    assert size(page, "width").input_value() == "36 in"


def test_what_is_changed_while_the_engine_is_busy_is_not_lost(fresh, home):
    """Who changes three things before the first answer comes gets all three."""
    page = fresh()
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:visible")
    choose(page, "width", "40")
    choose(page, "depth", "14")
    page.locator('input[type="radio"][value="open"]').check()
    wait(page, "width 40 in, depth 14 in, shelf open")

    assert page.url.endswith("?width=40in&depth=14in&shelf=open")
    assert [size(page, name).input_value() for name in ("width", "depth")] == ["40 in", "14 in"]


def test_the_keyboard_does_everything(fresh, home):
    """Slider, field, options, panel and buttons are reached by Tab and worked by keys."""
    page = fresh()
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:visible")
    slider = page.locator('[data-slider="width"]')
    slider.focus()
    page.keyboard.press("ArrowRight")
    wait(page, "width 48 1/2 in")
    assert slider.get_attribute("aria-valuetext") == "48 1/2 in"
    assert page.evaluate("document.activeElement.dataset.slider") == "width"

    page.keyboard.press("Tab")
    names = []
    for _ in range(12):
        names.append(
            page.evaluate("(e => e.dataset.control || e.innerText || e.type)(document.activeElement)")
        )
        page.keyboard.press("Tab")
    assert names[0] == "size depth"
    assert {"option shelf", "option trim", "Back to the size as drawn", "Copy a link to this size"} <= set(
        names
    )
    assert any(name.startswith("My shop") for name in names)

    page.locator('input[name="live-option-0"][value="slatted"]').focus()
    page.keyboard.press("ArrowDown")
    wait(page, "shelf open")


def test_what_does_not_work_is_explained_and_the_last_plan_stays(fresh, home):
    """A fault stands beside its control, is announced, and changes neither page nor address."""
    page = fresh()
    page.goto(home.url + BENCH)
    choose(page, "width", "40")
    wait(page, "width 40 in")
    kept = fragment(page, "cut-list")

    choose(page, "width", "4 ft 7 elbows")
    wait(page, "Not shown")
    [fault] = told(page)
    assert "elbows" in fault
    assert size(page, "width").get_attribute("aria-invalid") == "true"
    assert page.locator('[data-fault="size width"]').is_visible()
    assert (fragment(page, "cut-list"), page.url[-11:]) == (kept, "?width=40in")

    choose(page, "width", "900")
    wait(page, "Not shown")
    assert "from 30 in to 66 in" in told(page)[0]
    choose(page, "width", "41")
    wait(page, "width 41 in")
    assert told(page) == []


BAD = (
    "?width=1e99in",
    "?width=%3Cscript%3Ealert(1)%3C/script%3E",
    "?widht=40in",
    "?shelf=gold",
    "?%F0=%",
    "?=",
)


def test_a_bad_address_is_explained_and_ignored(fresh, home):
    """Whatever an address says, the author's plan is shown, with a word about what was left out."""
    page = fresh()
    page.on("dialog", lambda dialog: pytest.fail(dialog.message))
    page.goto(home.url + BENCH + "?width=-1&depth=14in")
    wait(page, "Shown for depth 14 in")
    assert "from 30 in to 66 in" in told(page)[0]
    for query in BAD:
        # what the browser does when a reader goes back to such an address
        page.evaluate("query => history.pushState(null, '', location.pathname + query)", query)
        page.evaluate("dispatchEvent(new PopStateEvent('popstate'))")
        wait(page, "Shown for the size as drawn")
        assert len(told(page)) == 1, query
        assert page.inner_text("h1") == "Ferry Steps entry bench"
        choose(page, "depth", "14")
        wait(page, "depth 14 in")
        assert told(page) == []


def test_my_shop_is_used_remembered_and_forgotten(fresh, home):
    """Prices, kerf, units and owned boards change the plan, survive a reload, and go with one tap."""
    page = fresh()
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:visible")
    usual = cost(page)
    page.locator(".sc-mine summary").click()
    page.locator('[data-mine-price="wood glue"]').fill("9.99")
    page.locator('[data-mine-price="wood glue"]').press("Tab")
    wait(page, "as drawn $")
    assert cost(page) > usual
    assert "$9.99" in fragment(page, "materials")

    page.locator("[data-mine-add]").click()
    page.locator('[data-owned="count"]').fill("9")
    page.locator('[data-owned="size"]').fill("8 ft")
    page.locator('[data-owned="size"]').press("Tab")
    free = page.locator('[data-fragment="materials"] td', has_text=re.compile("^yours$"))
    free.first.wait_for(timeout=READY)
    assert cost(page) < usual

    page.locator('[data-mine="units"]').select_option("mm")
    page.wait_for_function("document.querySelector('[data-fragment=facts]').innerText.includes('mm wide')")
    page.locator('[data-mine="kerf"]').fill("lots")
    page.locator('[data-mine="kerf"]').press("Tab")
    page.wait_for_selector('[data-fault="mine kerf"]:visible')

    page.reload()
    wait(page, "Shown for")
    assert free.count() == 1
    assert "mm" in fragment(page, "cut-list")

    page.locator(".sc-mine summary").click()
    page.locator("[data-mine-reset]").click()
    page.wait_for_function("document.querySelector('[data-fragment=facts]').innerText.includes('in wide')")
    wait(page, "Shown for")
    assert cost(page) == usual
    assert page.evaluate("Object.keys(localStorage).filter(key => key.includes('my shop'))") == []


@pytest.mark.parametrize(
    "kept",
    ["{", '{"version":99,"data":{}}', '"x"', '{"version":1,"data":{"prices":7,"owned":[1],"kerf":{}}}'],
)
def test_damaged_settings_are_left_out_with_a_word(fresh, home, kept):
    """Settings of another version, or damaged ones, break nothing."""
    page = fresh()
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:visible")
    page.evaluate("kept => localStorage.setItem('scantling /shop/by-the-harbour/ my shop', kept)", kept)
    page.reload()
    page.wait_for_selector("[data-live=plan]:visible")
    if '"version":1' in kept:
        wait(page, "Shown for the size as drawn")
    else:
        assert "of another version or damaged" in told(page)[0]


def test_files_beside_the_page_are_those_of_the_size_shown(fresh, home):
    """Who resized a plan downloads that plan."""
    page = fresh()
    page.goto(home.url + BENCH + "?width=40in")
    wait(page, "width 40 in")
    with page.expect_download() as waiting:
        page.locator('a[href="plan.json"]').first.click()
    data = json.loads(waiting.value.path().read_text("utf-8"))
    assert data["sizes"]["width"]["text"] == "40 in"


def test_print_gives_the_resized_plan(fresh, home):
    """Paper shows the plan at its size, and none of the controls."""
    page = fresh()
    page.goto(home.url + BENCH + "?width=40in")
    wait(page, "width 40 in")
    page.emulate_media(media="print")

    assert page.locator("[data-live=plan]").is_hidden()
    assert page.inner_text("h1").endswith("width 40 in")
    assert "40 in wide" in fragment(page, "print")


def test_ticks_in_the_materials_list_survive_a_change_and_a_reload(fresh, home):
    """What is in the cart stays ticked when the plan is worked out anew."""
    page = fresh()
    page.goto(home.url + BENCH)
    box = page.locator('[data-fragment="materials"] input[type="checkbox"]').first
    name = box.get_attribute("data-check")
    box.check()
    choose(page, "height", "18 1/4")
    wait(page, "height 18 1/4 in")
    ticked = page.locator(f'input[data-check="{name}"]')
    assert ticked.is_checked()
    page.reload()
    wait(page, "height 18 1/4 in")
    assert ticked.is_checked()


def test_everything_comes_from_the_site_itself(fresh, home):
    """No request leaves the site, before or after the engine loads, and the page weighs little before."""
    page = fresh(service_workers="block")
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(home.url + BENCH)
    page.wait_for_load_state("networkidle")
    first = list(asked)
    choose(page, "width", "40")
    wait(page, "width 40 in")

    assert [url for url in asked if not url.startswith(("data:", "blob:", home.url))] == []
    bodies = [page.request.get(url).body() for url in first if url.startswith(home.url)]
    assert sum(len(gzip.compress(body)) for body in bodies) <= 300_000


def test_the_page_stays_alive_while_the_engine_loads(fresh, home):
    """Progress is shown, and the page goes on drawing frames."""
    page = fresh()
    page.goto(home.url + BENCH)
    page.evaluate("""() => {
      window.said = [];
      window.frames_drawn = 0;
      const words = document.querySelector("[data-live-say]");
      new MutationObserver(() => said.push(words.textContent)).observe(words, { childList: true });
      const look = () => {
        frames_drawn += document.querySelector(".sc-live progress").hidden ? 0 : 1;
        requestAnimationFrame(look);
      };
      look();
    }""")
    choose(page, "width", "40")
    wait(page, "width 40 in")

    said = page.evaluate("said")
    assert [words.split()[0] for words in said[:3]] == ["Fetching", "Starting", "Reading"]
    assert page.evaluate("frames_drawn") >= 5
    assert page.locator(".sc-live progress").is_hidden()


def test_without_script_the_offered_sizes_work(browser, home):
    """The controls stay away, the page says why, and the links to offered sizes lead there."""
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(home.url + BENCH)

    assert page.locator("[data-live=plan]").is_hidden()
    assert page.get_by_text("needs JavaScript").is_visible()
    page.locator(".sc-sizes a").first.click()
    assert "width-36in" in page.url
    assert "36 in wide" in fragment(page, "facts")
    context.close()


def test_opened_as_a_file_the_page_says_so(browser, site):
    """From file:// a worker is refused: the page says so, and the offered sizes work."""
    page = browser.new_page()
    page.goto((site / "plans" / "entry-bench" / "index.html").as_uri())

    assert page.get_by_text("opened as a file").is_visible()
    assert page.locator("[data-live=plan]").is_hidden()
    page.locator(".sc-sizes a").first.click()
    page.wait_for_url("**/width-36in/index.html")
    assert "36 in wide" in fragment(page, "facts")
    page.close()


@pytest.mark.parametrize(
    "broken", ["worker.js", "pyodide.mjs", "pyodide.asm.wasm", "stdlib.zip", "engine.zip", "live.json"]
)
def test_where_the_engine_cannot_load_the_page_says_so(browser, home, broken):
    """Whatever file is missing, there is a message and the plan stays; the next change tries again."""
    context = browser.new_context(service_workers="block")
    page = context.new_page()
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:visible")
    context.route(f"**/{broken}", lambda route: route.fulfill(status=404, body=""))
    choose(page, "width", "40")
    page.wait_for_selector('[data-fault=""]:visible', timeout=READY)

    assert "cannot be worked out here" in told(page)[0]
    assert "sizes offered above still work" in told(page)[0]
    assert "48 in wide" in fragment(page, "facts")
    if broken == "engine.zip":
        context.unroute_all()
        choose(page, "width", "41")
        wait(page, "width 41 in")
    context.close()


def test_nothing_hangs_silently(browser, home):
    """Where a file never comes, the page gives up with a message after a minute."""
    context = browser.new_context(service_workers="block")
    page = context.new_page()
    page.clock.install()
    page.goto(home.url + BENCH)
    page.wait_for_selector("[data-live=plan]:visible")
    context.route("**/engine.zip", lambda _: None)
    choose(page, "width", "40")
    page.wait_for_selector("progress:visible", timeout=READY)
    page.clock.fast_forward(130_000)
    page.wait_for_selector('[data-fault=""]:visible', timeout=READY)

    assert "took too long" in told(page)[0]
    context.close()


def test_wasm_of_the_wrong_type_still_runs(fresh, site, serve_folder):
    """A host that does not know .wasm makes no difference."""
    home = serve_folder(site, wrong_wasm_type=True)
    page = fresh()
    page.goto(home.url + BENCH + "?width=40in")
    wait(page, "width 40 in")

    assert "40 in wide" in fragment(page, "facts")


def test_an_offered_page_starts_from_its_size(fresh, home):
    """On the page of an offered size the controls stand there, and a change is told from there."""
    page = fresh()
    page.goto(home.url + BENCH + "width-36in/")
    page.wait_for_selector("[data-live=plan]:visible")
    assert size(page, "width").input_value() == "36 in"
    choose(page, "depth", "14")
    wait(page, "width 36 in, depth 14 in")

    assert page.url.endswith("width-36in/?depth=14in")
    assert re.search(r"width 36 in, depth 14 in$", page.inner_text("h1"))
