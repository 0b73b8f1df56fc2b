"""Find a Chromium for the browser tests, and get one from the system's package manager if there is none.

    python3 -m tools.chromium      prints where it is, after installing it if need be

The environment variable CHROMIUM names another one.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from functools import cache
from pathlib import Path

NAMES = ("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome")
ELSEWHERE = (
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
)
HOW = "install Chromium (Debian: apt-get install chromium), or set CHROMIUM to the path of one"


@cache
def find() -> str | None:
    """Return the path of a Chromium that starts, or None."""
    named = os.environ.get("CHROMIUM")
    if named:
        return shutil.which(named)
    candidates = (*(shutil.which(name) for name in NAMES), *ELSEWHERE)
    return next((path for path in candidates if path and starts(path)), None)


def starts(path: str) -> bool:
    """Return whether the program answers at all: some systems put a stub in the browser's place."""
    if not Path(path).is_file():
        return False
    try:
        done = subprocess.run([path, "--version"], capture_output=True, timeout=60, check=False)
    except (OSError, subprocess.TimeoutExpired):
        return False
    return done.returncode == 0


def install() -> bool:
    """Install Chromium with apt-get where that can be done without asking anybody; say whether it was."""
    if not shutil.which("apt-get"):
        return False
    rights = [] if os.geteuid() == 0 else ["sudo", "--non-interactive"]
    if rights and not shutil.which("sudo"):
        return False
    print("chromium: none on this machine, installing the package `chromium` with apt-get", flush=True)
    apt = [*rights, "env", "DEBIAN_FRONTEND=noninteractive", "apt-get"]
    # a failed update is no reason to stop: the lists already there may do
    quietly([*apt, "update"])
    done = quietly([*apt, "install", "-y", "--no-install-recommends", "chromium"])
    find.cache_clear()
    return done


def quietly(command: list[str]) -> bool:
    """Run a command that asks nothing and tells only its errors; return whether it did its work."""
    with subprocess.Popen(command, stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL) as running:
        return running.wait() == 0


def main() -> int:
    """Print the path of a Chromium, getting one first if need be."""
    if os.environ.get("CHROMIUM") and find() is None:
        print(f"chromium: CHROMIUM={os.environ['CHROMIUM']} is no program", file=sys.stderr)
        return 1
    if find() is None:
        install()
    if find() is None:
        print(f"chromium: the tests need a browser; {HOW}", file=sys.stderr)
        return 1
    print(f"chromium: {find()}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
