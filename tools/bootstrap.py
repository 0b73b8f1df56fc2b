"""Make `.venv/` at the root hold what the project needs, from nothing but a Python.

    python3 -m tools.bootstrap run     what building a site needs
    python3 -m tools.bootstrap dev     that, and what the tests need
    python3 -m tools.bootstrap lock    write down the exact versions that are installed now

Runs on the standard library alone, does nothing when nothing changed, and may be called by several
processes at once.
"""

from __future__ import annotations

import hashlib
import json
import shutil
import subprocess
import sys
import tomllib
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
VENV = ROOT / ".venv"
PYTHON = VENV / "bin" / "python"
CONSTRAINTS = ROOT / "tools" / "constraints.txt"
OLDEST = (3, 11)
# The parts of pyproject.toml that change what is installed; the rest may be edited without a new set-up.
INSTALLED_FROM = ("build-system", "project", "dependency-groups")


class SetUpFailed(Exception):
    """The environment could not be made; the message says what a person can do."""


def main(argv: list[str]) -> int:
    """Bring `.venv/` up to date for the need named on the command line."""
    need = argv[1] if len(argv) > 1 else "run"
    try:
        if need == "lock":
            write_constraints()
        else:
            prepare(dev=need == "dev")
    except SetUpFailed as failed:
        print(f"set-up: {failed}", file=sys.stderr)
        return 1
    return 0


def prepare(*, dev: bool) -> None:
    """Create and fill `.venv/` unless its stamp says that it holds what is asked for."""
    project = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))
    with one_at_a_time():
        if not works(PYTHON):
            create()
        wanted = fingerprint(project)
        if is_stamped("dev", wanted) or (not dev and is_stamped("run", wanted)):
            return
        install(project["dependency-groups"]["dev"] if dev else [])
        stamp("dev" if dev else "run").write_text(wanted, "utf-8")


def stamp(need: str) -> Path:
    """Return the file that says for what, and from what, the environment was filled."""
    return VENV / f".set-up-{need}"


def is_stamped(need: str, wanted: str) -> bool:
    """Return whether the environment was filled for this need from the same description."""
    return stamp(need).is_file() and stamp(need).read_text("utf-8") == wanted


def fingerprint(project: dict[str, object]) -> str:
    """Return a digest of everything that the content of the environment follows from."""
    told = json.dumps({key: project.get(key) for key in INSTALLED_FROM}, sort_keys=True)
    # an environment holds absolute paths: a moved checkout needs a new one
    parts = [told, CONSTRAINTS.read_text("utf-8"), str(ROOT)]
    return hashlib.sha256("\0".join(parts).encode()).hexdigest()


def works(python: Path) -> bool:
    """Return whether the environment's Python starts, is new enough, and lives in this checkout."""
    if not python.exists():
        return False
    ask = f"import sys, pip; sys.exit(sys.version_info < {OLDEST} or sys.prefix != {str(VENV)!r})"
    return subprocess.run([python, "-c", ask], capture_output=True, check=False).returncode == 0


def create() -> None:
    """Make an empty environment, replacing one that does not work."""
    print(f"set-up: making {VENV.relative_to(ROOT)}/ with Python {sys.version.split()[0]}", flush=True)
    made = subprocess.run(
        [sys.executable, "-m", "venv", "--clear", VENV], capture_output=True, text=True, check=False
    )
    if made.returncode:
        shutil.rmtree(VENV, ignore_errors=True)
        said = (made.stdout + made.stderr).strip()
        raise SetUpFailed(
            f"this Python cannot make an environment (on Debian: apt-get install python3-venv)\n{said}"
        )


def install(dev: list[str]) -> None:
    """Install the project in place, with the versions that were tested if they can be had."""
    print("set-up: installing what pyproject.toml names (once, some minutes at most)", flush=True)
    pip = [PYTHON, "-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--no-input"]
    what = ["--editable", str(ROOT), *dev]
    if subprocess.run([*pip, "--constraint", CONSTRAINTS, *what], check=False).returncode == 0:
        return
    print("set-up: the tested versions cannot be had here; trying the newest that fit", flush=True)
    if subprocess.run([*pip, *what], check=False).returncode:
        raise SetUpFailed("pip could not install the packages (the first set-up needs a package index)")


def write_constraints() -> None:
    """Write the versions now installed to tools/constraints.txt, to be committed."""
    freeze = [PYTHON, "-m", "pip", "freeze", "--exclude-editable", "--disable-pip-version-check"]
    lines = subprocess.run(freeze, capture_output=True, text=True, check=True).stdout.splitlines()
    kept = sorted((line for line in lines if "==" in line and " @ " not in line), key=str.casefold)
    CONSTRAINTS.write_text("\n".join(kept) + "\n", "utf-8")
    print(f"set-up: {len(kept)} versions written to {CONSTRAINTS.relative_to(ROOT)}")


@contextmanager
def one_at_a_time() -> Iterator[None]:
    """Let a second set-up of the same checkout wait for the first."""
    try:
        import fcntl  # noqa: PLC0415 - not there on every platform
    except ImportError:
        yield
        return
    (ROOT / ".cache").mkdir(exist_ok=True)
    with (ROOT / ".cache" / "set-up.lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        yield


if __name__ == "__main__":
    sys.exit(main(sys.argv))
