"""What the wiring of a place has to say of an offer, worked out once for each build that a question leaves open."""

from collections.abc import Mapping

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.next_best.keeping import keeping
from bezelbook.reasoning.next_best.plug_in import PlugIn, plug_in
from bezelbook.reasoning.offer import Offer

Key = tuple[str, str, tuple[tuple[str, str], ...]]


class Leads:
    """The adapters of a book and its ways into the sound of a radio that stays; it depends on the book alone."""

    def __init__(self, book: KnowledgeBase) -> None:
        self._book = book
        self._plug_in: dict[Key, PlugIn] = {}
        self._keeping: dict[Key, Offer | None] = {}

    def plug_in(self, vehicle: str, place: str, splits: Mapping[str, str]) -> PlugIn:
        """Which plug-in adapter a radio wants there."""
        key = (vehicle, place, tuple(sorted(splits.items())))
        if key not in self._plug_in:
            self._plug_in[key] = plug_in(self._book, vehicle, place, splits)
        return self._plug_in[key]

    def keeping(self, vehicle: str, place: str, splits: Mapping[str, str]) -> Offer | None:
        """Keeping the radio that is in it, where the book has a way into its sound."""
        key = (vehicle, place, tuple(sorted(splits.items())))
        if key not in self._keeping:
            self._keeping[key] = keeping(self._book, vehicle, place, splits)
        return self._keeping[key]
