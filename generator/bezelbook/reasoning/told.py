"""What each standing note of a place says, worked out once however often it is weighed against others."""

from collections.abc import Mapping

from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.bounds import Constraint
from bezelbook.reasoning.cells import Frame
from bezelbook.reasoning.claims import claim
from bezelbook.reasoning.evidence import Standing
from bezelbook.reasoning.needs import Needs, needs_of_note
from bezelbook.values.words import Ninth

Reading = tuple[Standing, bool, Ninth | None, bool]


class Told:
    """The needs and the bounds of notes; both depend on the book alone, so that keeping them changes nothing."""

    def __init__(self, frame: Frame) -> None:
        self._frame = frame
        self._needs: dict[Standing, Needs | None] = {}
        self._claims: dict[Reading, tuple[Constraint, ...]] = {}

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
