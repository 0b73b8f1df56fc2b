"""The cache finds what it kept, whole, or nothing at all."""

from __future__ import annotations

import multiprocessing
import os
import signal
import time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from scantling.build import Cache, digest


def entries(folder):
    """Return the files of the cache, without those still being written."""
    return [
        path for path in folder.rglob("*") if path.is_file() and not path.name.startswith(".being-written-")
    ]


def test_what_is_kept_is_found(tmp_path):
    """An entry comes back as it was put, in another run too."""
    Cache(tmp_path).put("things", digest("a"), b"content")

    assert Cache(tmp_path).get("things", digest("a")) == b"content"
    assert Cache(tmp_path).get("things", digest("b")) is None
    assert Cache(tmp_path).get("others", digest("a")) is None


def test_without_a_folder_nothing_is_kept():
    """No cache is a cache that remembers nothing."""
    cache = Cache(None)
    cache.put("things", digest("a"), b"content")

    assert cache.get("things", digest("a")) is None


@pytest.mark.parametrize("how", ["cut short", "a bit turned", "emptied", "something else"])
def test_a_damaged_entry_is_told_and_made_again(tmp_path, how):
    """An entry that is not whole counts as none, is named, and is gone afterwards."""
    Cache(tmp_path).put("things", digest("a"), b"content" * 100)
    (path,) = entries(tmp_path)
    raw = path.read_bytes()
    turned = raw[:-3] + bytes([raw[-3] ^ 1]) + raw[-2:]
    path.write_bytes(
        {"cut short": raw[:-5], "a bit turned": turned, "emptied": b"", "something else": b"x" * 99}[how]
    )

    cache = Cache(tmp_path)

    assert cache.get("things", digest("a")) is None
    assert cache.damaged == [f"things/{digest('a')}"]
    assert entries(tmp_path) == []


def _write_for_ever(folder: str) -> None:
    cache = Cache(__import__("pathlib").Path(folder))
    number = 0
    while True:
        cache.put("things", digest("a"), os.urandom(200_000))
        number += 1


def test_a_writer_that_is_killed_leaves_no_broken_entry(tmp_path):
    """Whenever a writer is killed, a reader finds a whole entry or none."""
    context = multiprocessing.get_context("spawn")
    for pause in (0.01, 0.05, 0.1):
        writer = context.Process(target=_write_for_ever, args=(str(tmp_path),))
        writer.start()
        while not entries(tmp_path):
            time.sleep(0.01)
        time.sleep(pause)
        os.kill(writer.pid, signal.SIGKILL)
        writer.join()
        cache = Cache(tmp_path)

        assert cache.get("things", digest("a")) is not None
        assert cache.damaged == []


def test_two_writers_and_a_reader_do_not_disturb_each_other(tmp_path):
    """While two processes write the same entry, every read finds one of the two, whole."""
    context = multiprocessing.get_context("spawn")
    writers = [context.Process(target=_write_for_ever, args=(str(tmp_path),)) for _ in range(2)]
    for writer in writers:
        writer.start()
    while not entries(tmp_path):
        time.sleep(0.01)
    cache = Cache(tmp_path)
    read = [cache.get("things", digest("a")) for _ in range(100)]
    for writer in writers:
        writer.kill()
        writer.join()

    assert all(content is not None and len(content) == 200_000 for content in read)


def test_what_nobody_used_for_a_month_is_dropped(tmp_path):
    """Old entries and leftovers of killed writers go; what was used lately stays."""
    cache = Cache(tmp_path)
    cache.put("things", digest("a"), b"used")
    cache.put("things", digest("b"), b"old")
    now = time.time()
    for path in entries(tmp_path):
        os.utime(path, (now - 40 * 86_400, now - 40 * 86_400))
    cache.get("things", digest("a"))

    assert cache.tidy(now) == 1
    assert Cache(tmp_path).get("things", digest("a")) == b"used"


def test_tidying_is_done_once_a_day(tmp_path):
    """A build within a day of the last one looks at no entry; one on the next day drops what is old."""
    cache = Cache(tmp_path)
    cache.put("things", digest("a"), b"old")
    now = time.time()

    assert cache.tidy_daily(now) == 0
    for path in tmp_path.glob("things/*/*"):
        os.utime(path, (now - 40 * 86_400, now - 40 * 86_400))
    assert cache.tidy_daily(now + 3600) == 0
    assert cache.tidy_daily(now + 90_000) == 1
    assert Cache(None).tidy_daily(now) == 0


@pytest.mark.parametrize("plain", [False, True])
def test_an_entry_that_is_whole_is_looked_at_once(tmp_path, plain):
    """It is read to see that it is whole, and again only where it was changed since."""
    cache = Cache(tmp_path)

    assert cache.put("things", digest("a"), b"content", plain=plain)
    assert [cache.is_whole("things", digest("a")) for _ in range(3)] == [True] * 3
    assert cache.found == 1
    (path,) = entries(tmp_path)
    path.write_bytes(path.read_bytes()[:-1])
    assert not cache.is_whole("things", digest("a"))
    assert cache.damaged == [f"things/{digest('a')}"]


def test_a_folder_that_cannot_be_written_is_no_harm(tmp_path):
    """Where nothing can be kept, nothing is kept, and nobody is bothered."""
    (tmp_path / "file").write_text("in the way")
    cache = Cache(tmp_path / "file")
    cache.put("things", digest("a"), b"content")

    assert cache.get("things", digest("a")) is None


@given(st.lists(st.binary(max_size=6), max_size=4), st.lists(st.binary(max_size=6), max_size=4))
def test_a_name_tells_its_parts_apart(one, other):
    """Different lists of parts have different names, however their bytes run together."""
    assert (digest(*one) == digest(*other)) == (one == other)
