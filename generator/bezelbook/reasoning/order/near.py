"""At which pieces of a vehicle a restraint is near: nothing is told, proposed or asked of how those come off."""

from bezelbook.kinds.note.record import Seen
from bezelbook.knowledge_base import KnowledgeBase

RESTRAINT = "restraint near"


def restraint_near(book: KnowledgeBase, vehicle: str) -> frozenset[str]:
    """The pieces of a vehicle, by its own list or by any note of it; one word is enough."""
    record = book.vehicles.get(vehicle)
    listed = {piece for piece, trim in record.trim.items() if trim.safety == RESTRAINT} if record else set()
    seen = (note for note in book.notes_of(vehicle) if isinstance(note, Seen))
    return frozenset(listed | {off.piece for note in seen for off in note.pieces if off.safety == RESTRAINT})
