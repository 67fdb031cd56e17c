"""A clash as everything that weighs it sees it: the two notes, the place's other notes, and how far apart they are."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import product

from bezelbook.kinds.note.record import AnyNote, Bench
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import known_splits
from bezelbook.reasoning.differing.clash import Clash, clash_of, net_clash_of
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.otherwise import Otherwise
from bezelbook.reasoning.differing.siding import Sided, oddness, sided, weight
from bezelbook.reasoning.differing.usual import chance, shares, unlike_its_author
from bezelbook.reasoning.differing.weights import weighs
from bezelbook.reasoning.differing.worded import worded
from bezelbook.values.words import Axis

Said = Callable[[AnyNote], str | None]
# Whether the first note being of the one value and the second of the other makes both true, from 0 to 1.
Explains = Callable[[str, str], Fraction]
EVEN = Fraction(1, 2)


def nothing_more(_note: AnyNote) -> bool:
    """A note that says nothing else from which what it leaves blank could be told."""
    return False


@dataclass(frozen=True, slots=True)
class Asked:
    """One thing in which two notes may differ.

    `said` is what a note is read as saying, `written` what it does say: they part where a blank stands for the usual
    way. `weighed` says that what is read was already taken at its most generous, and did not make them true;
    `given_away` that something else in a note shows that its blank stands for something unusual, `hardly` for the
    usual. `put` is a note with another value in it; `beside` is the vehicle as it would be if what it says of this were
    not so; `unnamed` is the value that stands for all that no note names.
    """

    axis: Axis
    said: Said
    values: tuple[str, ...]
    written: Said
    put: Callable[[AnyNote, str], AnyNote]
    split: str | None = None
    weighed: bool = False
    given_away: Callable[[AnyNote], bool] = nothing_more
    hardly: Callable[[AnyNote], bool] = nothing_more
    beside: Vehicle | None = None
    unnamed: str | None = None

    def usual(self, notes: Sequence[AnyNote]) -> Mapping[str, Fraction]:
        """How often each value is said in these notes."""
        said = self.written if self.weighed and self.split is None else self.said
        return shares(notes, said, self.values, self.unnamed)

    def doubt(self, note: AnyNote, usual: Mapping[str, Fraction]) -> Fraction:
        """How far what a note is read as saying may be otherwise; a blank the more, the more is usual besides."""
        if not self.weighed:
            return Fraction(0)
        if self.written(note) is not None or (self.split and self.said(note) is not None):
            return weighs("said wrongly")  # a model year says it too
        if self.given_away(note):
            return weighs("given away")
        besides = sum((share for value, share in usual.items() if value != self.said(note)), Fraction(0))
        return besides * weighs("usual and hardly otherwise" if self.hardly(note) else "usual and not said")


@dataclass(frozen=True, slots=True)
class Case:
    """Two notes of one place that cannot both be true as they stand.

    `wanted` is how much room is wanting, in nanometres, once what known mounts give is taken off. `weighed` says that
    no way of reading a blank makes them true.
    """

    book: KnowledgeBase
    vehicle: Vehicle | None
    place: str
    notes: tuple[AnyNote, AnyNote]
    around: tuple[AnyNote, ...]
    others: tuple[Sided, ...]
    clash: Clash
    wanted: int
    weighed: bool = False
    otherwise: Otherwise | None = None

    @property
    def roomier(self) -> AnyNote | None:
        """The note that wants more room than the other leaves it."""
        return None if self.clash.roomier is None else self.notes[self.clash.roomier]

    @property
    def alike(self) -> tuple[Sided, ...]:
        """The other notes that are of no other build, as far as is known, than the two."""
        return tuple(one for one in self.others if self.vehicle is None or self._alike(self.vehicle, one.note))

    def _alike(self, vehicle: Vehicle, note: AnyNote) -> bool:
        ours = _splits(vehicle, note)
        theirs = [_splits(vehicle, one) for one in self.notes]
        return all(other.get(name, value) == value for name, value in ours.items() for other in theirs)

    def unequal(self, asked: Asked, explains: Explains) -> Explanation | None:
        """How likely it is that the two are of different values that make both true; None when they cannot be."""
        written = [asked.written(note) for note in self.notes]
        if asked.weighed and None not in written and written[0] == written[1]:
            return None
        total, best = self._weighed(asked, explains)
        if not total:
            return None
        blank = [note for note in self.notes if unlike_its_author(self.around, note, asked.written)]
        because = tuple(f"{note.author} always says otherwise" for note in blank)
        sides = weight(self.others, asked.said, *best)
        if sides != EVEN:
            because += (f"the other notes here are {'for' if sides > EVEN else 'against'} it",)
        likely = min(Fraction(1), total * weighs("unlike its author")) if blank else total
        name = asked.split.replace("-", " ") if asked.split else asked.axis
        return Explanation(asked.axis, worded(name, self.notes, asked.written), likely, because, asked.split)

    def _weighed(self, asked: Asked, explains: Explains) -> tuple[Fraction, tuple[str, str]]:
        """The whole weight over every pair of values, and the pair that gives the most of it."""
        read = [asked.said(note) for note in self.notes]
        ours, theirs = (self._chance(asked, note) for note in self.notes)
        total, most, best = Fraction(0), Fraction(0), ("", "")
        for one, other in product(ours, theirs):
            part = ours[one] * theirs[other] * self._odd(asked, read, (one, other))
            part *= explains(one, other) if part else 0
            part *= self._settled(asked, read, (one, other)) if part else 0
            part *= self._borne_out(asked, (one, other)) if part else 0
            total += part
            if part > most:
                most, best = part, (one, other)
        return total, best

    def _chance(self, asked: Asked, note: AnyNote) -> Mapping[str, Fraction]:
        """How likely each value is for a note; who measures has what others have who measure, whatever is fitted."""
        alike = [one for one in self.around if asked.unnamed is None or isinstance(one, type(note))]
        usual = asked.usual(alike)
        return chance(asked.said(note), usual, asked.doubt(note, usual))

    def _settled(self, asked: Asked, read: Sequence[str | None], values: tuple[str, str]) -> Fraction:
        """How well it settles the clash among all notes of the place, where the clash is over room."""
        if self.otherwise is None:
            return Fraction(1)
        if not asked.weighed:
            return self.otherwise.settles(vehicle=asked.beside) if asked.beside else Fraction(1)
        changed = [at for at in (0, 1) if read[at] not in (None, values[at])]
        if len(changed) != 1:
            return Fraction(0)  # that both are otherwise is seldomer than anything else
        (at,) = changed
        return self.otherwise.settles({self.notes[at].id: asked.put(self.notes[at], values[at])})

    def _borne_out(self, asked: Asked, values: tuple[str, str]) -> Fraction:
        """How far the place's other notes bear it out; what mounts give was taken off before they were compared."""
        if asked.weighed and self.otherwise:
            return Fraction(1)  # all of them were asked
        others = self.alike if asked.weighed and asked.split is None else self.others
        return weight(others, asked.said, *values) * (2 if self.weighed else 1)

    def odd(self, at: int) -> Fraction:
        """How far the other notes speak against one of the two and for the other, 1 as a rule."""
        return oddness(self.alike, at)

    def _odd(self, asked: Asked, read: Sequence[str | None], values: tuple[str, str]) -> Fraction:
        """How far the other notes make it likely that just this note is not as it is read; 0 where both are."""
        if not asked.weighed:
            return Fraction(1)
        astray = [at for at in (0, 1) if read[at] not in (None, values[at])]
        return max((self.odd(at) for at in astray), default=Fraction(0))


def _splits(vehicle: Vehicle, note: AnyNote) -> Mapping[str, str]:
    return {} if isinstance(note, Bench) else known_splits(vehicle, note.splits, note.year)


def case_of(
    book: KnowledgeBase,
    vehicle: Vehicle | None,
    place: str,
    notes: tuple[AnyNote, AnyNote],
    *,
    weighed: bool = False,
    core: Otherwise | None = None,
) -> Case:
    """The case of two notes at one place of a book, or of as much of a book as a rule may see."""
    around = () if vehicle is None else book.notes_at(vehicle.id, place)
    others = sided(book, around, *notes)
    clash = net_clash_of(book, *notes, compared=True) if weighed else clash_of(book, *notes)
    wanted = clash.by if weighed else net_clash_of(book, *notes).by
    return Case(book, vehicle, place, notes, around, others, clash, wanted, weighed, core)
