"""How a decision gets into the book: its file, and with it a new split of a vehicle; all of it, or nothing."""

import re
from collections.abc import Container, Mapping
from itertools import chain, count
from pathlib import Path
from typing import Any

from bezelbook.kinds import KINDS
from bezelbook.store.book import load_book
from bezelbook.store.record_text import read_record
from bezelbook.store.writing import draft_of, replace, take_the_place, write_new
from bezelbook.store.yaml_out import to_yaml
from bezelbook.store.yaml_text import read_yaml, whole_text
from bezelbook.values.complaint import Wrong
from bezelbook.values.ident import LONGEST

Plain = Mapping[str, Any]
NewSplit = tuple[str, str, Plain]
"""The vehicle that gets it, its name, and what the vehicle's file says of it."""


def write_decision(folder: Path, name: str, decision: Plain, split: NewSplit | None = None) -> Path:
    """Write a decision of this name into a book, and a new split of a vehicle with it.

    Raises Wrong, with nothing written, when what would be written could not be read again, when the file is there
    already, or when a split is to be written from inside the book's folder, which is then replaced as a whole.
    """
    text = to_yaml(decision)
    record, faults = read_record(text.encode(), KINDS["decisions"], name)
    if record is None:
        raise Wrong(faults[0].what, faults[0].mend)
    path = folder / "decisions" / f"{name}.yaml"
    if path.exists():
        raise Wrong(f"there is a decision called {name} already", "Give this one another name with --name")
    if split is None:
        write_new(path, text)
        return path
    _write_with_split(folder.resolve(), Path("decisions") / path.name, text, split)
    return path


def _write_with_split(folder: Path, decision: Path, text: str, split: NewSplit) -> None:
    vehicle, axis, said = split
    if Path.cwd().is_relative_to(folder):
        raise Wrong("the book's folder is replaced as a whole, and this runs inside it", "Run it one folder up")
    before = len(load_book(folder).complaints)
    with draft_of(folder) as draft:
        file = draft / "vehicles" / f"{vehicle}.yaml"
        if not file.is_file():
            raise Wrong(f"there is no vehicle {vehicle} in the book", "Name it by its file name")
        replace(file, with_split(whole_text(file.read_bytes()), axis, said))
        write_new(draft / decision, text)
        complaints = load_book(draft).complaints
        if len(complaints) > before:
            raise Wrong(complaints[0].what, complaints[0].mend)
        take_the_place(draft, folder)


def decision_name(question: str, taken: Container[str]) -> str:
    """A file name for a decision about this question that no other decision has."""
    words = re.sub(r"[^a-z0-9]+", "-", question.lower()).strip("-")[: LONGEST - 4].strip("-")
    names = chain((words,), (f"{words}-{number}" for number in count(2)))
    return next(name for name in names if name not in taken)


def with_split(text: str, axis: str, split: Plain) -> str:
    """The text of a vehicle's file with one more split, everything else as it was typed.

    Raises Wrong when the vehicle has a split of that name. Splits written in braces are written out, line by line.
    """
    whole: Any = read_yaml(text.encode()).value
    there: dict[str, Any] = (whole.get("splits") if isinstance(whole, dict) else None) or {}
    if axis in there:
        raise Wrong(f"the vehicle has a split called {axis} already", "Read the notes as one of its values")
    lines = text.removesuffix("\n").split("\n")
    start = next((at for at, line in enumerate(lines) if re.match(r"splits\s*:", line)), len(lines))
    end = next((at for at in range(start + 1, len(lines)) if re.match(r"[^\s#]", lines[at])), len(lines))
    while end > start + 1 and not lines[end - 1].strip():
        end -= 1
    if re.fullmatch(r"splits\s*:\s*(#.*)?", "".join(lines[start : start + 1])) and there:
        first = next(line for line in lines[start + 1 : end] if re.match(r"\s+[^\s#]", line))
        indent = first[: len(first) - len(first.lstrip())]
        new = [f"{indent}{line}" for line in to_yaml({axis: split}).splitlines()]
        lines[end:end] = new
    else:
        lines[start:end] = to_yaml({"splits": {**there, axis: split}}).splitlines()
    return "\n".join(lines) + "\n"
