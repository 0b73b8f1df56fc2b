"""Live pages in a real browser: bytes, time to the first answer, later changes, memory.

    python -m tests.bench live [--site FOLDER] [--few]

Builds the demo site without PDFs (or takes a built one), serves it without caching, and writes what it
measured to docs/reference/live-benchmarks.md. With `--few` it looks at two plans and writes nothing.
"""

from __future__ import annotations

import gzip
import os
import platform
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from playwright.sync_api import Browser, Page, sync_playwright

from tests.conftest import BROWSER_ARGUMENTS
from tests.serving import Serving
from tests.support.live_page import wait
from tools import chromium

ROOT = Path(__file__).resolve().parents[2]
REPORT = ROOT / "docs" / "reference" / "live-benchmarks.md"
PLANS = sorted(path.parent.name for path in (ROOT / "plans").glob("*/plan.md"))
TIMES = 5
STEPS = 12

FIRST = """() => {
  const words = document.querySelector("[data-live-say]");
  window.took = null;
  const slider = document.querySelector("[data-slider]");
  window.begun = performance.now();
  new MutationObserver(() => {
    if (words.textContent.startsWith("Shown") && took === null) took = performance.now() - begun;
  }).observe(words, { childList: true });
  slider.value = Number(slider.value) + 1;
  slider.dispatchEvent(new Event("input", { bubbles: true }));
}"""
LATER = """async (steps) => {
  const root = document.querySelector("[data-live=plan]");
  const words = root.querySelector("[data-live-say]");
  const slider = root.querySelector("[data-slider]");
  const until = (node, what, done) => new Promise((settle) => {
    const observer = new MutationObserver(() => { if (done()) { observer.disconnect(); settle(); } });
    observer.observe(node, what);
  });
  const took = [];
  for (let step = 0; step < steps; step += 1) {
    const begun = performance.now();
    const said = until(words, { childList: true }, () => /^(Shown|Not)/.test(words.textContent));
    const whole = until(root, { attributes: true }, () => !root.hasAttribute("aria-busy"));
    slider.value = Math.floor((slider.max * (step + 0.5)) / steps);
    slider.dispatchEvent(new Event("input", { bubbles: true }));
    await said;
    const numbers = performance.now() - begun;
    await whole;
    took.push([numbers, performance.now() - begun]);
  }
  return took;
}"""


def main(argv: list[str]) -> int:
    """Measure and write the report."""
    site = Path(argv[argv.index("--site") + 1]) if "--site" in argv else None
    if "--few" in argv:
        del PLANS[2:]
    with tempfile.TemporaryDirectory() as folder:
        site = site or build(Path(folder) / "site")
        with Serving(site, under="shop") as home, sync_playwright() as play:
            browser = play.chromium.launch(executable_path=chromium.find(), args=BROWSER_ARGUMENTS)
            lines = [*head(browser), *transfer(browser, home), *first(browser, home), *later(browser, home)]
            lines += memory(browser, home)
            browser.close()
    if "--few" not in argv:
        REPORT.write_text("\n".join(lines) + "\n", "utf-8")
    print("\n".join(lines))
    return 0


def build(folder: Path) -> Path:
    """Return the demo site, built without PDFs."""
    config = folder.parent / "mkdocs.yml"
    told = f"INHERIT: {ROOT / 'mkdocs.yml'}\ndocs_dir: {ROOT / 'docs'}\n"
    ours = f"{{plans: {ROOT / 'plans'}, paper: false, keep_prices: false}}"
    told += f"plugins:\n  - search\n  - scantling: {ours}\n"
    config.write_text(told, "utf-8")
    command = [sys.executable, "-m", "mkdocs", "build", "-f", str(config), "-d", str(folder)]
    subprocess.run(command, cwd=ROOT, check=True, env={**os.environ, "NO_MKDOCS_2_WARNING": "1"})
    return folder


def head(browser: Browser) -> list[str]:
    """Return what the figures are of, and where they were measured."""
    return [
        "# Live pages, measured",
        "",
        "All figures come from one run of `make bench ARGS=live`; run it again on your machine.",
        "",
        f"- Machine: {processor()}, {os.cpu_count()} cores",
        f"- Load of the machine when the run began: {os.getloadavg()[0]:.1f}",
        f"- Browser: Chromium {browser.version}, headless",
        "- Server: a plain static one on the same machine, which forbids caching",
        f"- Python of the build: {platform.python_version()}",
        "",
    ]


def processor() -> str:
    """Return what kind of processor this is, as far as the system tells."""
    try:
        lines = Path("/proc/cpuinfo").read_text("utf-8").splitlines()
    except OSError:
        return platform.processor() or platform.machine()
    return next(
        (line.partition(": ")[2] for line in lines if line.startswith("model name")), platform.machine()
    )


def begin(browser: Browser, home: Serving, slug: str) -> Page:
    """Return a page of a plan in a fresh context, awake and at rest."""
    context = browser.new_context(viewport={"width": 1280, "height": 900}, service_workers="block")
    page = context.new_page()
    page.goto(f"{home.url}plans/{slug}/")
    page.wait_for_selector("[data-live=plan]:not([inert])")
    page.wait_for_load_state("networkidle")
    return page


def transfer(browser: Browser, home: Serving) -> list[str]:
    """Return how many bytes a plan page takes, before and with the engine."""
    rows = []
    for slug in PLANS:
        asked: list[str] = []
        context = browser.new_context(viewport={"width": 1280, "height": 900}, service_workers="block")
        page = context.new_page()
        page.on("request", lambda request, asked=asked: asked.append(request.url))
        page.goto(f"{home.url}plans/{slug}/")
        page.wait_for_selector("[data-live=plan]:not([inert])")
        page.wait_for_load_state("networkidle")
        before = [url for url in asked if url.startswith(home.url)]
        page.evaluate(FIRST)
        wait(page, "Shown")
        after = [url for url in asked if url.startswith(home.url)]
        rows.append((slug, *(weigh(page, set(urls)) for urls in (before, after))))
        context.close()
    return [
        "## Bytes",
        "",
        "Each file as gzip makes it (level 9), everything that the page asked for.",
        "",
        "| plan | before a change, KB | with the engine, MB |",
        "|---|---|---|",
        *(f"| {slug} | {before / 1000:.0f} | {after / 1e6:.2f} |" for slug, before, after in rows),
        "",
    ]


def weigh(page: Page, urls: set[str]) -> int:
    """Return how many bytes some files take when they are compressed."""
    return sum(len(gzip.compress(page.request.get(url).body(), 9)) for url in sorted(urls))


def first(browser: Browser, home: Serving) -> list[str]:
    """Return how long the first answer takes: in a fresh context, and on a second page of the same one."""
    cold, warm = [], []
    for _ in range(TIMES):
        page = begin(browser, home, "entry-bench")
        cold.append(took(page))
        page.goto(f"{home.url}plans/entry-bench/")
        page.wait_for_selector("[data-live=plan]:not([inert])")
        page.wait_for_load_state("networkidle")
        warm.append(took(page))
        page.context.close()
    return [
        "## First answer",
        "",
        f"From moving a slider of the entry bench to the new numbers on the page, {TIMES} times each, in",
        "seconds. The browser runs already.",
        "",
        "| | median | least | most |",
        "|---|---|---|---|",
        f"| fresh context | {in_words(cold)} |",
        f"| second visit in the same context | {in_words(warm)} |",
        "",
    ]


def in_words(seconds: list[float]) -> str:
    """Return median, least and most."""
    return " | ".join(f"{one:.2f}" for one in (statistics.median(seconds), min(seconds), max(seconds)))


def took(page: Page) -> float:
    """Return the seconds from the first change to its answer."""
    page.evaluate(FIRST)
    wait(page, "Shown")
    return page.evaluate("took") / 1000


def later(browser: Browser, home: Serving) -> list[str]:
    """Return how long later changes take, for each plan."""
    rows, numbers = [], []
    for slug in PLANS:
        page = begin(browser, home, slug)
        took(page)
        measured = page.evaluate(LATER, STEPS)
        rows.append((slug, *(statistics.median(column) for column in zip(*measured, strict=True))))
        numbers += [words for words, _ in measured]
        page.context.close()
    return [
        "## Later changes",
        "",
        f"{STEPS} moves of the first slider over its whole range, in milliseconds, median: until the new",
        "numbers stand, and until the last picture is drawn anew.",
        "",
        "| plan | numbers | and pictures |",
        "|---|---|---|",
        *(f"| {slug} | {words:.0f} | {whole:.0f} |" for slug, words, whole in rows),
        "",
        f"Median of all: {statistics.median(numbers):.0f} ms until the new numbers stand.",
        "",
    ]


def memory(browser: Browser, home: Serving) -> list[str]:
    """Return what the engine adds to the memory of the page's process."""
    page = begin(browser, home, "entry-bench")
    before = resident()
    took(page)
    time.sleep(1)
    after = resident()
    page.context.close()
    return [
        "## Memory",
        "",
        f"The browser's page processes together hold {(after - before) / 1e6:.0f} MB more with the engine",
        f"loaded ({before / 1e6:.0f} MB before, {after / 1e6:.0f} MB after).",
    ]


def resident() -> int:
    """Return the bytes that all renderer processes of this run's browser hold in memory."""
    total = 0
    for folder in Path("/proc").glob("[0-9]*"):
        try:
            if b"--type=renderer" in (folder / "cmdline").read_bytes() and is_ours(folder):
                total += int((folder / "statm").read_text().split()[1]) * os.sysconf("SC_PAGE_SIZE")
        except (OSError, IndexError):
            continue
    return total


def is_ours(folder: Path) -> bool:
    """Return whether a process descends from this one."""
    while folder.name not in {"0", "1"}:
        if folder.name == str(os.getpid()):
            return True
        folder = Path("/proc") / (folder / "stat").read_text().rsplit(")", 1)[1].split()[1]
    return False


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
