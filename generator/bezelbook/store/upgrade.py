"""How a book of an older format becomes one of the newest: all of its files, or none."""

import re
from dataclasses import dataclass
from pathlib import Path

from bezelbook.kinds import KINDS
from bezelbook.store.book import SHOP, load_book
from bezelbook.store.complaints import Complaint, shown_path
from bezelbook.store.format import newer, steps_from
from bezelbook.store.place import Fault
from bezelbook.store.walk import Found, walk
from bezelbook.store.writing import draft_of, replace, take_the_place
from bezelbook.store.yaml_text import read_yaml, whole_text
from bezelbook.values.complaint import Wrong

# A whole number as a file may have it, plain or by its hexadecimal or octal digits.
_NUMBER = re.compile("^[+]?(?:0x[0-9a-fA-F]+|0o[0-7]+|[0-9]+)")


@dataclass(frozen=True, slots=True)
class Upgraded:
    """From which format to which, and how many files were written; with a complaint, none was."""

    was: int
    now: int
    written: int
    complaints: tuple[Complaint, ...] = ()


def upgrade(folder: Path) -> Upgraded:
    """Take a book through every step to the newest format; what comes of it must load without a complaint.

    A book of the newest format is left as it is. Whatever goes wrong, so is any other. Raises Wrong when the command
    runs inside the folder, which is replaced as a whole.
    """
    folder = folder.resolve()
    was = _format_of(folder)
    if isinstance(was, Fault):
        return Upgraded(0, 0, 0, (_complaint(folder / SHOP, was),))
    now = was + len(steps_from(was))
    if now == was:
        return Upgraded(was, now, 0)
    if Path.cwd().is_relative_to(folder):
        raise Wrong("the book's folder is replaced as a whole, and this runs inside it", "Run it one folder up")
    with draft_of(folder) as draft:
        written, complaints = _rewritten(draft, was, now)
        complaints = tuple(_of(folder, draft, one) for one in complaints)
        if complaints:
            return Upgraded(was, was, 0, complaints)
        take_the_place(draft, folder)
    return Upgraded(was, now, written)


def _format_of(folder: Path) -> int | Fault:
    try:
        parsed = read_yaml((folder / SHOP).read_bytes())
    except OSError as error:
        return Fault(1, 1, f"this file cannot be opened: {error.strerror}", "A book says its format there")
    number = parsed.value.get("format") if isinstance(parsed.value, dict) else None
    if type(number) is not int or number < 1:
        return next(iter(parsed.faults), Fault(1, 1, "this does not say the book's format", "Add a line: format: 1"))
    return newer(number) or number


def _rewritten(draft: Path, was: int, now: int) -> tuple[int, tuple[Complaint, ...]]:
    """Rewrite the draft; how many files that changed, and what is wrong with it then."""
    files, _ = walk(draft, KINDS)
    written = 0
    for file in files:
        try:
            written += _rewrite(file, was, now)
        except Wrong as wrong:
            return 0, (_complaint(file.path, Fault(1, 1, wrong.what, wrong.mend)),)
    return written, load_book(draft).complaints


def _rewrite(file: Found, was: int, now: int) -> bool:
    """Take a file through the steps and say whether that changed it; line endings alone are no change."""
    try:
        text = new = whole_text(file.path.read_bytes())
    except UnicodeDecodeError as error:
        raise Wrong("this is not UTF-8 text", "Save the file as UTF-8") from error
    for step in steps_from(was):
        new = step(file.kind.folder, new)
    if file.kind.single:
        new = _numbered(new, now)
    if new != text:
        replace(file.path, new)
    return new != text


def _numbered(text: str, number: int) -> str:
    """The shop's text with another number behind `format`, and nothing else changed."""
    place = read_yaml(text.encode()).places.get(("format",))
    if place is None:
        raise Wrong("this does not say the book's format any more", "Report it: a step of bezelbook lost it")
    lines = text.split("\n")
    before, behind = lines[place.line - 1][: place.column - 1], lines[place.line - 1][place.column - 1 :]
    lines[place.line - 1] = before + _NUMBER.sub(str(number), behind)
    return "\n".join(lines)


def _complaint(path: Path, fault: Fault) -> Complaint:
    return Complaint(shown_path(path), fault.line, fault.column, fault.what, fault.mend)


def _of(folder: Path, draft: Path, complaint: Complaint) -> Complaint:
    """What is wrong with a file of the draft, said of the file that it is a draft of."""
    path = shown_path(folder) + complaint.path.removeprefix(shown_path(draft))
    return Complaint(path, complaint.line, complaint.column, complaint.what, complaint.mend)
