"""What the standing notes of a place say, alone and together, worked out once however often it is asked."""

from collections.abc import Callable, Hashable, Mapping
from typing import Any, TypeVar

from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.bounds import Constraint
from bezelbook.reasoning.cells import Frame
from bezelbook.reasoning.claims import claim
from bezelbook.reasoning.evidence import Standing
from bezelbook.reasoning.needs import Needs, needs_of_note
from bezelbook.values.words import Ninth

Found = TypeVar("Found")
Reading = tuple[Standing, bool, Ninth | None, bool]


class Told:
    """The needs and the bounds of notes, and what follows from them.

    All of it depends on the book alone, so that keeping it changes nothing but the time it takes.
    """

    def __init__(self, frame: Frame) -> None:
        self._frame = frame
        self._needs: dict[Standing, Needs | None] = {}
        self._claims: dict[Reading, tuple[Constraint, ...]] = {}
        self._found: dict[Hashable, Any] = {}

    def needs(self, one: Standing) -> Needs | None:
        """What the thing that a note tried asks for; None for a reading."""
        if one not in self._needs:
            note = one.note
            self._needs[one] = needs_of_note(self._frame.book, note) if isinstance(note, Tried) else None
        return self._needs[one]

    def claim(
        self, one: Standing, varying: frozenset[str], exits: Mapping[str, Ninth], *, split: bool
    ) -> tuple[Constraint, ...]:
        """The bounds that a note sets, as `claim` has them; of the parts that vary only its own matters."""
        needs = self.needs(one)
        key = needs.key if needs else ""
        reading = (one, key in varying, exits.get(key), split)
        if reading not in self._claims:
            self._claims[reading] = claim(self._frame, one, varying, exits, split=split)
        return self._claims[reading]

    def without_gap(self, one: Standing) -> Standing:
        """A note as if it did not say by how much, the same one each time."""
        return self.once(("without its gap", one), lambda: one.without_gap)

    def once(self, question: Hashable, find: Callable[[], Found]) -> Found:
        """What was found when this very question was first asked; it must hold all that the finding depends on."""
        if question not in self._found:
            self._found[question] = find()
        found: Found = self._found[question]
        return found
