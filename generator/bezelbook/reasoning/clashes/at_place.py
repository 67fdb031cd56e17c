"""The clashes of a place, whatever goes in there."""

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.clashes.clash import Clash
from bezelbook.reasoning.clashes.openings import opening_clashes
from bezelbook.reasoning.clashes.speakers import speaker_clashes
from bezelbook.reasoning.speakers.cells import EITHER_PLACES, SPEAKER_PLACES


def clashes_at(book: KnowledgeBase, vehicle: str, place: str) -> tuple[Clash, ...]:
    """Every clash among the strong notes of a place, as an opening, as a place for a speaker, or as both."""
    of = book.vehicles[vehicle].places.get(place)
    kind = None if of is None else of.kind
    found: tuple[Clash, ...] = ()
    if kind not in SPEAKER_PLACES:
        found += opening_clashes(book, vehicle, place)
    if kind in SPEAKER_PLACES | EITHER_PLACES:
        found += speaker_clashes(book, vehicle, place)
    return found
