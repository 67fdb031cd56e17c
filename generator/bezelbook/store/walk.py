"""Which files of a folder are records of the book, and what there is that does not belong in it."""

import os
import re
from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from bezelbook.kinds import Kind
from bezelbook.store.complaints import Complaint, shown_path
from bezelbook.store.near_miss import nearest
from bezelbook.values.ident import id_complaint

_ENDING = ".yaml"
_YEAR = re.compile("20[0-9]{2}")

Entry = os.DirEntry[str]


@dataclass(frozen=True, slots=True)
class Found:
    """A file that should hold one record: `name` is its id."""

    path: Path
    kind: Kind
    name: str


def walk(folder: Path, kinds: Mapping[str, Kind]) -> tuple[tuple[Found, ...], tuple[Complaint, ...]]:
    """Give the records' files in the order of their paths, and a complaint for each thing that is no record.

    Whatever starts with a dot is passed over in silence.
    """
    walker = _Walker(kinds)
    walker.book(folder)
    named = walker.well_named()
    return tuple(named), tuple(walker.complaints)


class _Walker:
    def __init__(self, kinds: Mapping[str, Kind]) -> None:
        self.found: list[Found] = []
        self.complaints: list[Complaint] = []
        self._kinds = kinds

    def book(self, folder: Path) -> None:
        if not folder.is_dir():
            self._complain(folder, "there is no book here", "Start one with bezelbook start, or name it with --book")
            return
        for entry in self._entries(folder):
            kind = self._kinds.get(entry.name.removesuffix(_ENDING))
            if entry.is_dir():
                self._folder(entry)
            elif kind and kind.single:
                self._record(entry, kind)
            else:
                self._complain(
                    entry, "this belongs to no kind of record", "Move it into one of the book's folders, or out"
                )

    def _folder(self, entry: Entry) -> None:
        kind = self._kinds.get(entry.name)
        if kind and kind.single:
            self._complain(entry, f"{kind.name} is one file", f"Write {kind.folder}{_ENDING} in its place")
            return
        if not kind:
            folders = [name for name, other in self._kinds.items() if not other.single]
            close = nearest(entry.name, folders)
            mend = f'Did you mean "{close}"?' if close else f"The book's folders are {', '.join(folders)}"
            self._complain(entry, f'the book has no folder "{entry.name}"', mend)
            return
        for below in self._entries(entry):
            if kind.by_year:
                self._year(below, kind)
            else:
                self._record(below, kind)

    def _year(self, entry: Entry, kind: Kind) -> None:
        if not entry.is_dir() or not _YEAR.fullmatch(entry.name):
            self._complain(entry, f"{kind.folder} are filed by year", f"Move it to {kind.folder}/2026, or another year")
            return
        for below in self._entries(entry):
            self._record(below, kind)

    def _record(self, entry: Entry, kind: Kind) -> None:
        stem, _, ending = entry.name.rpartition(".")
        if entry.is_dir():
            self._complain(entry, "a folder has no place here", "Move what is in it one folder up")
        elif f".{ending}" == _ENDING and entry.is_file():
            self.found.append(Found(Path(entry.path), kind, stem))
        elif ending.lower() in {"yaml", "yml"}:
            self._complain(entry, f"a record's name ends in {_ENDING}", f"Rename it to {stem}{_ENDING}")
        else:
            self._complain(entry, "this is not a record", f"Move it out; a record's name ends in {_ENDING}")

    def _entries(self, folder: Path | Entry) -> list[Entry]:
        """List what a folder holds, by name, without what is hidden and what only points elsewhere."""
        try:
            with os.scandir(folder) as listed:
                entries = sorted(listed, key=lambda entry: entry.name)
        except OSError as error:
            self._complain(folder, f"this folder cannot be opened: {error.strerror}", "See who may read it")
            return []
        seen = [entry for entry in entries if not entry.name.startswith(".")]
        for entry in seen:
            if entry.is_symlink():
                self._complain(entry, "this only points to another file", "Put the file itself here")
        return [entry for entry in seen if not entry.is_symlink()]

    def well_named(self) -> list[Found]:
        """Keep the files whose name may be an id and is no other's, and complain of the rest."""
        same: dict[tuple[str, str], list[Found]] = defaultdict(list)
        for found in self.found:
            same[found.kind.folder, found.name.casefold()].append(found)
        return [found for found in self.found if self._keeps(found, same[found.kind.folder, found.name.casefold()])]

    def _keeps(self, found: Found, same: list[Found]) -> bool:
        """Let the first well-named of several files have the name."""
        first = next((other for other in same if not id_complaint(other.name)), same[0])
        wrong = id_complaint(found.name)
        if found is not first:
            alike = "has the same name" if found.name == first.name else "differs only in capitals"
            self._complain(found.path, f"{shown_path(first.path)} {alike}", "Rename one of the two")
        elif wrong:
            self._complain(found.path, f"the file's name: {wrong.what}", wrong.mend)
        return found is first and not wrong

    def _complain(self, at: Path | Entry, what: str, mend: str) -> None:
        self.complaints.append(Complaint(shown_path(Path(at)), 1, 1, what, mend))
