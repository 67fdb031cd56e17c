"""A clash as everything that weighs it sees it: the two notes, the place's other notes, and how far apart they are."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.note.record import AnyNote
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.differing.clash import Clash, clash_of, net_clash_of
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.siding import Sided, sided, weight
from bezelbook.reasoning.differing.usual import chance, shares, unlike_its_author
from bezelbook.reasoning.differing.worded import worded
from bezelbook.values.words import Axis

Said = Callable[[AnyNote], str | None]
# Whether the first note being of the one value and the second of the other makes both true, from 0 to 1.
Explains = Callable[[str, str], Fraction]
HABIT = Fraction(5, 4)


@dataclass(frozen=True, slots=True)
class Case:
    """Two notes of one place that cannot both be true as they stand.

    `wanted` is how much room is wanting, in nanometres, once what known mounts give is taken off.
    """

    book: KnowledgeBase
    vehicle: Vehicle | None
    place: str
    notes: tuple[AnyNote, AnyNote]
    around: tuple[AnyNote, ...]
    others: tuple[Sided, ...]
    clash: Clash
    wanted: int

    @property
    def roomier(self) -> AnyNote | None:
        """The note that wants more room than the other leaves it."""
        return None if self.clash.roomier is None else self.notes[self.clash.roomier]

    def unequal(
        self, axis: Axis, said: Said, values: Sequence[str], explains: Explains, name: str = ""
    ) -> Explanation | None:
        """How likely it is that the two are of different values that make both true; None when they cannot be."""
        usual = shares(self.around, said, values)
        ours, theirs = (chance(note, said, usual) for note in self.notes)
        total, best = _weighed(ours, theirs, explains, lambda one, other: weight(self.others, said, one, other))
        if not total:
            return None
        blank = [note for note in self.notes if unlike_its_author(self.around, note, said)]
        because = tuple(f"{note.author} always says otherwise" for note in blank)
        sides = weight(self.others, said, *best)
        if sides != Fraction(1, 2):
            because += (f"the other notes here are {'for' if sides > Fraction(1, 2) else 'against'} it",)
        likely = min(Fraction(1), total * HABIT) if blank else total
        return Explanation(axis, worded(name or axis, self.notes, said), likely, because)


def case_of(book: KnowledgeBase, vehicle: Vehicle | None, place: str, first: AnyNote, second: AnyNote) -> Case:
    """The case of two notes at one place of a book, or of as much of a book as a rule may see."""
    around = () if vehicle is None else book.notes_at(vehicle.id, place)
    others = sided(book, around, first, second)
    clash, wanted = clash_of(book, first, second), net_clash_of(book, first, second).by
    return Case(book, vehicle, place, (first, second), around, others, clash, wanted)


def _weighed(
    ours: Mapping[str, Fraction],
    theirs: Mapping[str, Fraction],
    explains: Explains,
    borne_out: Explains,
) -> tuple[Fraction, tuple[str, str]]:
    """The whole weight over every pair of values, and the pair that gives the most of it."""
    total, most, best = Fraction(0), Fraction(0), ("", "")
    for one, likely in ours.items():
        for other, as_likely in theirs.items():
            part = likely * as_likely
            part *= explains(one, other) if part else 0
            part *= borne_out(one, other) if part else 0
            total += part
            if part > most:
                most, best = part, (one, other)
    return total, best
