"""Which shape of book this bezelbook reads."""

from collections.abc import Iterable

from bezelbook import __version__
from bezelbook.kinds.record import Record
from bezelbook.kinds.shop.record import Shop
from bezelbook.store.place import Fault

FORMAT = 1


def newer_format(records: Iterable[Record]) -> Fault | None:
    """What is wrong with a book of a newer format than this; None when it can be read. Its shop says which it is.

    Half of a newer book would be answered wrongly, so none of it is read.
    """
    for record in records:
        if isinstance(record, Shop) and record.format > FORMAT:
            what = f"this book is of format {record.format}, and bezelbook {__version__} reads format {FORMAT}"
            return Fault(1, 1, what, f"Install a bezelbook that reads format {record.format}")
    return None
