"""Doing many jobs side by side: over the cores of this machine, or over a cluster."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from typing import TypeVar

from tqdm import tqdm

A = TypeVar("A")
B = TypeVar("B")

FEW = 4
"""So few jobs are done here and now: starting other processes would take longer."""


@contextmanager
def _where(cluster: str) -> Iterator[None]:
    """Let jobs run on a cluster while in the context, if one is named."""
    if not cluster:
        yield
        return
    from dask.distributed import Client  # noqa: PLC0415 - an extra that few authors need
    from joblib import parallel_config  # type: ignore[import-untyped]  # noqa: PLC0415 - as below

    client = Client(cluster, set_as_default=True)  # type: ignore[no-untyped-call]
    with client, parallel_config(backend="dask"):
        yield


def do_all(
    work: Callable[[A], B], jobs: Sequence[A], *, workers: int = 0, cluster: str = "", what: str = "plans"
) -> Iterator[B]:
    """Yield what `work` makes of each job, in the order of the jobs, however they were spread.

    Args:
        workers: processes on this machine; 0 for one a core, 1 for none besides this one.
        cluster: address of a dask scheduler, `tcp://host:port`; "" for this machine.
        what: what is counted on the progress bar, which shows on a terminal alone.
    """
    if not cluster and (workers == 1 or len(jobs) <= FEW):
        yield from (work(job) for job in tqdm(jobs, desc=what, disable=None, leave=False))
        return
    # slow to load, and a build that finds nearly all as it was needs none of it
    from joblib import Parallel, delayed  # noqa: PLC0415

    with _where(cluster):
        made = Parallel(n_jobs=workers or -1, return_as="generator")(delayed(work)(job) for job in jobs)
        yield from tqdm(made, total=len(jobs), desc=what, disable=None, leave=False)
