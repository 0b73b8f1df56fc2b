"""A static web server for tests: what a plain host does with a folder, and what a careless one does."""

from __future__ import annotations

import threading
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from types import TracebackType
from typing import Self
from urllib.parse import urlsplit


class Serving:
    """A folder served on 127.0.0.1 at a free port for as long as the `with` block lasts.

    Args:
        folder: what is served.
        under: the path below which it appears ("shop/plans"), as on a host that many sites share.
        wrong_wasm_type: send `.wasm` files as if their type were unknown, as some hosts do.
    """

    def __init__(self, folder: Path, *, under: str = "", wrong_wasm_type: bool = False) -> None:
        handler = partial(
            _Handler, directory=str(folder), prefix=under.strip("/"), wrong_wasm_type=wrong_wasm_type
        )
        self._server = ThreadingHTTPServer(("127.0.0.1", 0), handler)
        self._server.daemon_threads = True
        self._thread = threading.Thread(target=self._server.serve_forever, args=(0.05,), daemon=True)
        prefix = under.strip("/")
        self.url = f"http://127.0.0.1:{self._server.server_address[1]}/" + (prefix + "/" if prefix else "")
        """Where the folder is, ending in a slash."""
        self.asked: list[str] = []
        """The path of every request so far."""
        self._server.asked = self.asked  # type: ignore[attr-defined]

    def __enter__(self) -> Self:
        self._thread.start()
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._server.shutdown()
        self._server.server_close()
        self._thread.join()


class _Handler(SimpleHTTPRequestHandler):
    protocol_version = "HTTP/1.1"
    # a browser keeps connections open; nobody waits for one that says nothing
    timeout = 30

    def __init__(self, *arguments, prefix: str, wrong_wasm_type: bool, **named) -> None:
        self.prefix = prefix
        self.wrong_wasm_type = wrong_wasm_type
        super().__init__(*arguments, **named)

    def send_head(self):
        """Serve what lies below the prefix, and nothing else."""
        self.server.asked.append(self.path)
        path = urlsplit(self.path).path.lstrip("/")
        if self.prefix and not (path + "/").startswith(self.prefix + "/"):
            self.send_error(404)
            return None
        return super().send_head()

    def translate_path(self, path: str) -> str:
        """Return the file for a request, without the prefix."""
        below = path.lstrip("/").removeprefix(self.prefix) if self.prefix else path
        return super().translate_path("/" + below.lstrip("/"))

    def guess_type(self, path) -> str:
        """Return the type to declare for a file."""
        if str(path).endswith(".wasm"):
            return "application/octet-stream" if self.wrong_wasm_type else "application/wasm"
        return super().guess_type(path)

    def end_headers(self) -> None:
        """Forbid caching: a test that changes a file wants to see it changed."""
        self.send_header("Cache-Control", "no-store")
        super().end_headers()

    def log_message(self, format, *arguments) -> None:  # noqa: A002 - the name is the base class's
        """Say nothing."""
