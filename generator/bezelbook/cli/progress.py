"""A word on the side for whoever waits longer than a second."""

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from threading import Timer

PATIENCE = 1.0


@contextmanager
def told_when_slow(doing: str, patience: float | None = None) -> Iterator[None]:
    """Print what is being done, once, when it takes longer than so many seconds, or than the usual patience."""
    timer = Timer(PATIENCE if patience is None else patience, lambda: print(f"{doing} …", file=sys.stderr, flush=True))
    timer.daemon = True
    timer.start()
    try:
        yield
    finally:
        timer.cancel()
