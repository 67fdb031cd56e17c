"""What a folder of records says: every record that can be read, and a complaint for everything that cannot."""

import gc
import hashlib
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from bezelbook.kinds import KINDS, Kind
from bezelbook.kinds.record import Record
from bezelbook.store.complaints import Complaint, shown_path
from bezelbook.store.format import newer_format
from bezelbook.store.place import Fault
from bezelbook.store.record_text import read_record
from bezelbook.store.walk import walk
from bezelbook.store.yaml_text import LARGEST

SHOP = "shop.yaml"


@dataclass(frozen=True, slots=True)
class Loaded:
    """What was found in a book.

    `records` are those without any fault, in the order of their `paths`; `complaints` come by path, line and column;
    `read` are the paths of all records' files, as complaints show them; `digests` has the SHA-256 of each by path.
    """

    records: tuple[Record, ...]
    paths: tuple[str, ...]
    complaints: tuple[Complaint, ...]
    read: tuple[str, ...]
    digests: Mapping[str, str]


def load_book(folder: Path, kinds: Mapping[str, Kind] = KINDS) -> Loaded:
    """Read every record below the folder; a file with a fault is left out, and all faults of all files are told."""
    files, complaints = walk(folder, kinds)
    records: dict[str, Record] = {}
    told = list(complaints)
    digests: dict[str, str] = {}
    with _collecting_later():
        for file in files:
            path = shown_path(file.path)
            data, faults = _bytes(file.path)
            record = None
            if not faults:
                digests[path] = hashlib.sha256(data).hexdigest()
                record, faults = read_record(data, file.kind, file.name)
            if record is not None:
                records[path] = record
            told.extend(Complaint(path, fault.line, fault.column, fault.what, fault.mend) for fault in faults)
    newer = newer_format(list(records.values()))
    if newer:
        told = [Complaint(shown_path(folder / SHOP), newer.line, newer.column, newer.what, newer.mend)]
        records = {}
    return Loaded(tuple(records.values()), tuple(records), tuple(sorted(told)), tuple(digests), digests)


@contextmanager
def _collecting_later() -> Iterator[None]:
    """Hold garbage collection off: nothing made while loading is garbage, and looking costs more than reading."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


def _bytes(path: Path) -> tuple[bytes, tuple[Fault, ...]]:
    """Read no more of a file than tells that it is too large."""
    try:
        with path.open("rb") as stream:
            return stream.read(LARGEST + 1), ()
    except OSError as error:
        what = f"this file cannot be opened: {error.strerror}"
        return b"", (Fault(1, 1, what, "See who may read it"),)
