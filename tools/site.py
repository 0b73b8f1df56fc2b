"""Build the site into `site/`, which keeps the last good build until the new one is whole."""

from __future__ import annotations

import shutil
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
SITE = ROOT / "site"
FRESH = ROOT / ".cache" / "site-fresh"
OLD = ROOT / ".cache" / "site-old"


def main(argv: list[str]) -> int:
    """Build strictly, put the result in place, and say where it is."""
    shutil.rmtree(FRESH, ignore_errors=True)
    command = [sys.executable, "-m", "mkdocs", "build", "--strict", "--site-dir", str(FRESH), *argv[1:]]
    if subprocess.run(command, cwd=ROOT, check=False).returncode:
        shutil.rmtree(FRESH, ignore_errors=True)
        kept = "; site/ still holds the last good one" if SITE.exists() else ""
        print(f"No new site was made{kept}.", file=sys.stderr)
        return 1
    put_in_place()
    serve = f"{python_in_words()} -m http.server --directory site 8000"
    print(f"The site is in {SITE}/ - to read it, type: {serve}  and open http://localhost:8000/")
    return 0


def python_in_words() -> str:
    """Return how a person at the root would call this Python."""
    here = Path(sys.executable)
    return str(here.relative_to(ROOT) if here.is_relative_to(ROOT) else here)


def put_in_place() -> None:
    """Swap the fresh site for the old one: two renames, so that no reader meets half a site."""
    shutil.rmtree(OLD, ignore_errors=True)
    if SITE.exists():
        SITE.rename(OLD)
    FRESH.rename(SITE)
    shutil.rmtree(OLD, ignore_errors=True)


if __name__ == "__main__":
    sys.exit(main(sys.argv))
