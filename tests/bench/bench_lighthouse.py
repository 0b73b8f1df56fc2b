"""What Lighthouse says of the demo site, as a phone on a slow line sees it: its four marks, page by page.

    python -m tests.bench lighthouse [--site FOLDER] [--times 3] [--write]

The site is served as hosts do: packed, and with leave to keep. Of several runs of a page the middle counts.
"""

from __future__ import annotations

import argparse
import gzip
import json
import os
import platform
import statistics
import subprocess
import sys
import tempfile
import threading
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

from tools.chromium import find
from tools.npm_tool import NpmTool

ROOT = Path(__file__).resolve().parent.parent.parent
PAGE = ROOT / "docs" / "reference" / "page-benchmarks.md"
LIGHTHOUSE = NpmTool("lighthouse", "12.8.2", "cli/index.js")
"""Newest that runs on Node.js 20."""
PAGES = {
    "home": "",
    "catalog": "plans/",
    "plan": "plans/entry-bench/",
    "calculator": "calculators/board-feet/",
    "post": "blog/three-plans-for-a-first-weekend/",
}
MARKS = ("performance", "accessibility", "best-practices", "seo")
PACKED = ("text/", "application/json", "image/svg", "application/javascript", "application/wasm")
HEAD = """# How light the pages are

Lighthouse {version}, mobile preset (a slow phone on a slow line, simulated), local Chromium, {machine}:
`{command}`. The middle of {times} runs; 100 is the best mark. *KB* is all that the page fetches, packed.
Load of the machine when the run began: {load:.1f}; other work on it lowers the mark for performance.

| page | performance | accessibility | best practices | seo | KB |
|---|---|---|---|---|---|
"""


def main(argv: list[str]) -> int:
    """Print, or write, the marks of some kinds of page."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench lighthouse")
    parser.add_argument("--site", type=Path, default=ROOT / "site", help="a built site (usually site/)")
    parser.add_argument("--times", type=int, default=3)
    parser.add_argument("--write", action="store_true", help=f"write {PAGE.relative_to(ROOT)}")
    parser.add_argument("--data", help="of no use here")
    given = parser.parse_args(argv)
    machine = f"{os.cpu_count()} cores, Python {platform.python_version()}"
    command = 'make bench ARGS="lighthouse --write"'
    text = HEAD.format(
        version=LIGHTHOUSE.version,
        machine=machine,
        command=command,
        times=given.times,
        load=os.getloadavg()[0],
    )
    with ThreadingHTTPServer(("127.0.0.1", 0), partial(_Packing, directory=str(given.site))) as server:
        threading.Thread(target=server.serve_forever, daemon=True).start()
        for name, path in PAGES.items():
            url = f"http://127.0.0.1:{server.server_address[1]}/{path}"
            runs = [ask(url) for _ in range(given.times)]
            cells = [str(round(statistics.median(column))) for column in zip(*runs, strict=True)]
            row = f"| {name} | {' | '.join(cells)} |\n"
            print(row, end="", file=sys.stderr, flush=True)
            text += row
        server.shutdown()
    print(text)
    if given.write:
        PAGE.write_text(text, "utf-8")
    return 0


def ask(url: str) -> list[float]:
    """Return the four marks of a page, of 100, and the KB that it fetches."""
    with tempfile.TemporaryDirectory(prefix="lighthouse-") as aside:
        flags = f"--headless=new --no-sandbox --disable-gpu --user-data-dir={aside}/profile"
        out = Path(aside) / "told.json"
        words = [url, "--quiet", "--output=json", f"--output-path={out}", f"--chrome-flags={flags}"]
        told = {**os.environ, "CHROME_PATH": find() or ""}
        subprocess.run([*LIGHTHOUSE.command(), *words], check=True, env=told, capture_output=True)
        data = json.loads(out.read_text("utf-8"))
    marks = [100 * data["categories"][name]["score"] for name in MARKS]
    return [*marks, data["audits"]["total-byte-weight"]["numericValue"] / 1024]


class _Packing(SimpleHTTPRequestHandler):
    protocol_version = "HTTP/1.1"

    def do_GET(self) -> None:
        path = Path(self.translate_path(self.path))
        path = path / "index.html" if path.is_dir() else path
        if not path.is_file():
            self.send_error(404)
            return
        content, kind = path.read_bytes(), self.guess_type(str(path))
        self.send_response(200)
        self.send_header("Content-Type", kind)
        self.send_header("Cache-Control", "max-age=600")
        if kind.startswith(PACKED) or path.suffix == ".js":
            content = gzip.compress(content, mtime=0)
            self.send_header("Content-Encoding", "gzip")
        self.send_header("Content-Length", str(len(content)))
        self.end_headers()
        self.wfile.write(content)

    def log_message(self, format: str, *words: object) -> None:  # noqa: A002 - the library's own name
        """Say nothing."""


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
