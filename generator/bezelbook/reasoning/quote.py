"""A note as one line that its author would recognise."""

from bezelbook.kinds.note.record import AnyNote, Bench, Measured, RoomReading, Tried
from bezelbook.kinds.note.state import Sizes, State
from bezelbook.kinds.record import Named
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.quote_fields import Path, fields_said
from bezelbook.values.ninths import ninths_said
from bezelbook.values.quantity import Quantity


def quote(book: KnowledgeBase, note: AnyNote, at: Path = ()) -> str:
    """What a note says, in its own words and numbers as typed; blanks that matter are said to be blank.

    Of a note with fields of many sorts, only the one at `at` is quoted, where it leads to one.
    """
    if isinstance(note, Tried):
        return _tried(book, note)
    if isinstance(note, Measured):
        return "; ".join(reading_words(reading) for reading in note.readings) + _state(note) + _words(note)
    told = fields_said(note, at) or fields_said(note)
    return (told or note.form) + (_state(note) if told and not isinstance(note, Bench) else "") + _words(note)


def reading_words(reading: RoomReading) -> str:
    """One reading of a room: what, where, how much, from which face."""
    zones = "everywhere" if reading.zones == "all" else ninths_said(reading.zones)
    parts = [reading.of, zones, reading.reads.typed, f"from the {reading.datum}" if reading.datum else ""]
    parts += [f"to the {reading.hits}" if reading.hits else "", f"by {reading.tool}" if reading.tool else ""]
    return " ".join(part for part in parts if part)


def _tried(book: KnowledgeBase, note: Tried) -> str:
    part = book.head_unit_named(note.what) or book.named("speaker", note.what)
    what = part.name if isinstance(part, Named) else note.what
    if note.sizes is not None:
        what += f" ({_sizes(note.sizes)})"
    said = f"{what}: {note.verdict}"
    if note.condition:
        said += f" {note.condition}"
    if note.reason:
        said += f", because of {note.reason}"
    if note.where:
        said += f" at the {ninths_said(note.where)}"
    if note.hit:
        said += f", hits the {note.hit}"
    return said + _state(note) + _words(note)


def _words(note: AnyNote) -> str:
    return f" – {note.words}" if note.words else ""


def _sizes(sizes: Sizes) -> str:
    said = [(name.replace("_", " "), getattr(sizes, name)) for name in Sizes.model_fields]
    return ", ".join(f"{name} {size.typed}" for name, size in said if isinstance(size, Quantity))


def _state(note: State) -> str:
    parts = [value for _, value in sorted(note.splits.items())]
    if note.mounts == "none":
        parts.append("no mount")
    elif note.mounts:
        parts.append(" and ".join(note.mounts))
    elif isinstance(note, Tried):
        parts.append("mounts not said")
    if note.cut:
        parts.append(f"{note.cut} cut")
    parts += [
        f"{what} {said}" for what, said in (("loom", note.loom), ("tabs", note.tabs), ("glass", note.glass)) if said
    ]
    if isinstance(note, Tried) and note.gasket:
        parts.append(f"gasket {note.gasket}")
    return f" [{', '.join(parts)}]" if parts else ""
