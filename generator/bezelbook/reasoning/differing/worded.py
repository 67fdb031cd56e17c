"""The sentence that tells a team on what two notes may differ."""

from collections.abc import Callable, Mapping

from bezelbook.kinds.note.record import AnyNote
from bezelbook.values.listed import listed

BLANK: Mapping[str, str] = {
    "mount": "which was used",
    "tabs": "whether they were in or out",
    "glass": "whether it was up or down",
    "loom": "where it went",
    "cut": "whether anything was cut",
    "plugs": "whether they were on",
    "datum": "from which face",
    "tool": "what it was read with",
    "view": "from which side the cavities were counted",
}
NAMES: Mapping[str, str] = {"cut": "a cut"}


def worded(axis: str, notes: tuple[AnyNote, AnyNote], said: Callable[[AnyNote], str | None], more: str = "") -> str:
    """What the two say differently, or which of them leaves it blank; `more` follows after a semicolon."""
    name = NAMES.get(axis, f"the {axis}")
    blank = [note.id for note in notes if said(note) is None]
    does = "does" if len(blank) == 1 else "do"
    if blank:
        told = f"{listed(blank)} {does} not say {BLANK.get(axis, 'which the car was')}"
    else:
        told = f"{said(notes[0])} in {notes[0].id}, {said(notes[1])} in {notes[1].id}"
    return f"{name}: {told}; {more}" if more else f"{name}: {told}"
