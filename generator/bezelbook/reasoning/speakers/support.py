"""Which notes carry a firm answer about a speaker, how sure that makes it, and how many independent jobs there are."""

from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.evidence import witnesses
from bezelbook.reasoning.maximal import contradiction
from bezelbook.reasoning.outlook import Outlook
from bezelbook.reasoning.speakers.evidence import SpeakerStanding
from bezelbook.reasoning.speakers.outlook import outlook
from bezelbook.reasoning.speakers.question import SpeakerAsked
from bezelbook.reasoning.speakers.rooms import SpeakerPlace, SpeakerRooms
from bezelbook.values.words import STRONG, Sureness

Carried = tuple[tuple[SpeakerStanding, ...], Sureness, int]
NOBODY: Carried = ((), "worked out", 0)


def support(place: SpeakerPlace, question: SpeakerAsked, view: Outlook) -> Carried:
    """The notes that carry an answer, how sure it is, and the jobs behind it.

    They are all those that show it by themselves, else a smallest set of notes that together do. It is as sure as the
    strongest fitting that shows it by itself; where readings or several notes together show it, it is worked out.
    """
    rooms = place.accounts[0]
    if _shows(rooms, (), question, view):
        return NOBODY
    alone = tuple(one for one in rooms.notes if _shows(rooms, (one,), question, view))
    carrying = alone or contradiction(rooms.notes, lambda notes: not _shows(rooms, notes, question, view))
    fittings = {one.note.sure for one in alone if isinstance(one.note, Tried)}
    sure: Sureness = next((word for word in STRONG if word in fittings), "worked out")
    tried = tuple(one for one in carrying if isinstance(one.note, Tried)) if fittings else carrying
    return carrying, sure, witnesses(one.note for one in tried)


def _shows(rooms: SpeakerRooms, notes: tuple[SpeakerStanding, ...], question: SpeakerAsked, view: Outlook) -> bool:
    return outlook(rooms.agreeing(notes), question.needs, question.settings) == view
