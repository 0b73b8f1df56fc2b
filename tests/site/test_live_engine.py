"""How the engine comes to a page, and what is said where it cannot."""

from __future__ import annotations

import gzip

import pytest

from tests.support.live_page import (
    BENCH,
    READY,
    choose,
    fragment,
    told,
    wait,
)

pytestmark = [pytest.mark.browser, pytest.mark.timeout(300)]


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

    page.get_by_text("opened as a file").wait_for()
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
    page.wait_for_selector("[data-live=plan]:not([inert])")
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
    page.wait_for_selector("[data-live=plan]:not([inert])")
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
