"""Which notes carry a firm answer, how sure that makes it, and how many independent jobs stand behind it."""

from dataclasses import dataclass

from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.evidence import Standing, witnesses
from bezelbook.reasoning.maximal import contradiction
from bezelbook.reasoning.outlook import Outlook, outlook
from bezelbook.reasoning.question import Asked
from bezelbook.reasoning.room import Place, Rooms
from bezelbook.values.words import STRONG, Sureness


@dataclass(frozen=True, slots=True)
class Support:
    """The notes that carry an answer; `sure` is that of the strongest fitting that shows it by itself.

    Where only readings or several notes together show it, it is worked out.
    """

    notes: tuple[Standing, ...]
    sure: Sureness
    witnesses: int


def support(place: Place, question: Asked, view: Outlook) -> Support:
    """Every note that shows the answer by itself; if none does, a smallest set of notes that together do."""
    rooms = place.accounts[0]
    alone = tuple(one for one in rooms.notes if _shows(rooms.alone[one], question, view))
    carrying = alone or contradiction(rooms.notes, lambda notes: not _shows(rooms.agreeing(notes), question, view))
    fittings = {one.note.sure for one in alone if isinstance(one.note, Tried)}
    sure: Sureness = next((word for word in STRONG if word in fittings), "worked out")
    tried = tuple(one for one in carrying if isinstance(one.note, Tried)) if fittings else carrying
    return Support(carrying, sure, witnesses(one.note for one in tried))


def _shows(rooms: Rooms, question: Asked, view: Outlook) -> bool:
    return outlook(rooms, question.needs, question.settings) == view
