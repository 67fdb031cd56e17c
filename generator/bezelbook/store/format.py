"""Which shape of book this bezelbook reads, and how an older book becomes one of that shape."""

from collections.abc import Callable, Iterable, Mapping

from bezelbook import __version__
from bezelbook.kinds.record import Record
from bezelbook.kinds.shop.record import Shop
from bezelbook.store.place import Fault

FORMAT = 1

Step = Callable[[str, str], str]
"""What becomes of a file: the folder of its kind and its text give its text in the next format; Wrong when it cannot.

It reads nothing else. The number in shop.yaml is not its affair, nor are line endings.
"""

# From each older format to the next one: `2: three_from_two` when FORMAT is 3. A step once published is never changed.
STEPS: Mapping[int, Step] = {}


def steps_from(number: int) -> tuple[Step, ...]:
    """The steps that lead from a format to the newest, in their order; none from the newest itself."""
    return tuple(STEPS[older] for older in range(number, FORMAT))


def newer_format(records: Iterable[Record]) -> Fault | None:
    """What is wrong with a book of a newer format than this; None when it can be read. Its shop says which it is.

    Half of a newer book would be answered wrongly, so none of it is read.
    """
    return next((fault for one in records if isinstance(one, Shop) and (fault := newer(one.format))), None)


def newer(number: int) -> Fault | None:
    """What is wrong with a format, when it is newer than what this bezelbook reads."""
    if number <= FORMAT:
        return None
    what = f"this book is of format {number}, and bezelbook {__version__} reads format {FORMAT}"
    return Fault(1, 1, what, f"Install a bezelbook that reads format {number}")
