"""What every room that agrees with the notes about one side has in common, found by trying out every room.

Nothing here is shared with the reasoning. A room is a hole with two ways, a depth to what is fixed, one to the glass
at its worst and one to it fully down, and a height in front; each is tried out at every third of a unit, so that of a
room and a size which both lie between two whole numbers either may be the larger. Here everything is counted in thirds.
No bound is solved for.
"""

from collections.abc import Callable, Iterator
from functools import cached_property, reduce
from itertools import combinations, product
from operator import and_, or_

from tests.laws.small_world import Size
from tests.laws.speaker_space import Space
from tests.laws.speaker_world import Ask, Reading, Speaker, SpeakerWorld, Tried

UNIT = 3
STEPS = range(8 * UNIT + 1)
Part = dict[str, int]
Atom = Callable[[tuple[int, ...]], bool]
DIMENSIONS = ("hole", "fixed", "glass", "front")
MEASURES = {"fixed": "fixed", "down": "glass", "worst": "glass", "front": "front"}


class SpeakerOracle:
    """Answers for one side of a small world, by trying everything."""

    def __init__(self, world: SpeakerWorld, side: str) -> None:
        self.world = world
        self.notes = tuple(note for note in world.notes if note.side == side)
        self.asks = tuple(ask for ask in world.asks if ask.side == side)
        readings = [note for note in self.notes if isinstance(note, Reading)]
        told = any(note.of == "fixed" for note in readings) or any(
            isinstance(note, Tried) and not note.goes_in and note.reason in (None, "depth") and note.glass == "up"
            for note in self.notes
        )
        self.rears = ("fixed", "glass") if told else ("glass",)
        self.travel_read = any(note.of == "worst" for note in readings)

    def verdict(self, ask: Ask) -> str:
        """Goes in, does not, argued over, or open."""
        views = {self._view(notes, ask) for notes in self.largest_sets}
        return views.pop() if len(views) == 1 else "argued over"

    @cached_property
    def largest_sets(self) -> tuple[tuple[int, ...], ...]:
        """The sets of notes that some room agrees with and that no other note can be added to."""
        found: list[tuple[int, ...]] = []
        for count in range(len(self.notes), -1, -1):
            for notes in combinations(range(len(self.notes)), count):
                if not any(set(notes) <= set(larger) for larger in found) and any(self._rooms(notes)):
                    found.append(notes)
        return tuple(found)

    def _view(self, notes: tuple[int, ...], ask: Ask) -> str:
        fits = [fits[self.asks.index(ask)] for _, fits, _ in self._worlds]
        rooms = list(zip(self._rooms(notes), fits, strict=True))
        some, not_all = any(room & fit for room, fit in rooms), any(room & ~fit for room, fit in rooms)
        return "open" if some and not_all else "goes in" if some else "does not"

    def _rooms(self, notes: tuple[int, ...]) -> list[int]:
        """For each way the sizes of the speakers may truly be, the rooms in which all of these notes are true."""
        return [reduce(and_, (told[note] for note in notes), every) for told, _, every in self._worlds]

    @cached_property
    def _worlds(self) -> list[tuple[list[int], list[int], int]]:
        """For every true size of the speakers: where each note is true, where each question fits, and every room."""
        meant = {note.speaker for note in (*self.notes, *self.asks) if not isinstance(note, Reading)}
        speakers = [speaker for speaker in self.world.speakers if speaker.name in meant]
        ways = product(*(list(_true_sizes(speaker)) for speaker in speakers))
        return [self._world({one.name: size for one, size in zip(speakers, sizes, strict=True)}) for sizes in ways]

    def _world(self, parts: dict[str, Part]) -> tuple[list[int], list[int], int]:
        claims = [list(self._claim(note, parts)) for note in self.notes]
        wants = [self._demands(ask.speaker, ask.ring, "down", parts) for ask in self.asks]
        tests: list[list[Atom]] = [[] for _ in DIMENSIONS]

        def numbered(atoms: list[tuple[str, Atom]]) -> list[tuple[int, int]]:
            for where, test in atoms:
                tests[DIMENSIONS.index(where)].append(test)
            ends = [len(own) for own in tests]
            numbers = []
            for where, _ in reversed(atoms):
                ends[DIMENSIONS.index(where)] -= 1
                numbers.append((DIMENSIONS.index(where), ends[DIMENSIONS.index(where)]))
            return numbers

        told_by = [[numbered(way) for way in claim] for claim in claims]
        fits_by = [numbered(want) for want in wants]
        space = Space(tests, [list(self._sizes(dimension)) for dimension in DIMENSIONS])

        def all_of(way: list[tuple[int, int]]) -> int:
            return reduce(and_, (space.true(*one) for one in way), space.all)

        told = [reduce(or_, map(all_of, claim), 0) for claim in told_by]
        return told, [all_of(want) for want in fits_by], space.all

    def _sizes(self, dimension: str) -> Iterator[tuple[int, ...]]:
        """Everything that one dimension of a room may be; of two sizes one is never less than the other."""
        if dimension == "hole":
            yield from ((long, short) for long in STEPS for short in STEPS if short <= long)
        elif dimension == "glass" and self.travel_read:
            yield from ((worst, down) for worst in STEPS for down in STEPS if worst <= down)
        else:
            yield from ((step,) for step in STEPS)

    def _claim(self, note: Tried | Reading, parts: dict[str, Part]) -> Iterator[list[tuple[str, Atom]]]:
        """The ways in which a note may be true, each a list of what holds together."""
        if isinstance(note, Reading):
            yield list(self._read(note))
            return
        if note.ring is None:
            yield []
            return
        if note.goes_in:
            glass = "down" if note.glass == "down" else "up"
            wanted = self._demands(note.speaker, note.ring, glass, parts)
            yield [*wanted, *self._gap(note, note.ring, glass, parts)]
            return
        glass = "up" if note.glass == "up" else "down"
        blamed = [one for one in self._demands(note.speaker, note.ring, glass, parts) if _named(note, one[0])]
        if not blamed:
            yield []
        for where, test in blamed:
            yield [(where, _not(test)), *self._gap(note, note.ring, glass, parts)]

    def _demands(self, speaker: str, ring: str, glass: str, parts: dict[str, Part]) -> list[tuple[str, Atom]]:
        """What a speaker needs, each with where it is met; a need that nobody knows may be any, or none."""
        part, on = parts[speaker], self.world.ring(ring)
        thick, inner = on.thickness.middle * UNIT, None if on.inner is None else on.inner * UNIT
        wide, narrow = part["basket"], part["short"]
        wanted: list[tuple[str, Atom]] = [
            ("hole", lambda hole: hole[0] >= wide and hole[1] >= narrow and (inner is None or inner >= wide))
        ]
        rears = [rear for rear in self.rears if rear == "fixed" or glass == "down"] or ["fixed"]
        wanted += [(rear, lambda room: room[0] + thick >= part["depth"]) for rear in rears]
        return [*wanted, ("front", lambda room: room[0] - thick >= part["front"])]

    def _gap(self, note: Tried, ring: str, glass: str, parts: dict[str, Part]) -> Iterator[tuple[str, Atom]]:
        """By how much the one room that the reason names was larger than what was asked of it."""
        if note.gap is None:
            return
        where, need, held = ("glass", "depth", 1) if note.reason == "glass" else ("front", "front", -1)
        if where == "glass" and glass == "up":
            return
        low, high = _ends(note.gap)
        low, high = (low, high) if note.goes_in else (-high, -low)
        shift = held * self.world.ring(ring).thickness.middle * UNIT - parts[note.speaker][need]
        yield where, lambda room: _within(room[0] + shift, low, high)

    def _read(self, note: Reading) -> Iterator[tuple[str, Atom]]:
        low, high = _ends(note.reads)
        if note.of in ("cut-out", "long", "short"):
            ways = {"cut-out": (0, 1), "long": (0,), "short": (1,)}[note.of]
            yield "hole", lambda hole: all(_within(hole[way], low, high) for way in ways)
        elif note.of == "down" and self.travel_read:
            yield "glass", lambda room: _within(room[1], low, high)
        else:
            yield MEASURES[note.of], lambda room: _within(room[0], low, high)


def _true_sizes(speaker: Speaker) -> Iterator[Part]:
    """Every size that a speaker may truly have; one that was never measured may be anything."""
    depths = STEPS if speaker.depth is None else list(_inside(speaker.depth))
    for basket, depth, front in product(_inside(speaker.basket), depths, _inside(speaker.front)):
        short = basket if speaker.short is None else speaker.short.middle * UNIT
        yield {"basket": basket, "short": short, "depth": depth, "front": front}


def _inside(size: Size) -> Iterator[int]:
    low, high = _ends(size)
    yield from (step for step in range(low, high + 1) if _within(step, low, high))


def _ends(size: Size) -> tuple[int, int]:
    return (size.middle - size.give) * UNIT, (size.middle + size.give) * UNIT


def _within(value: int, low: int, high: int) -> bool:
    return value == low if low == high else low < value < high


def _named(note: Tried, where: str) -> bool:
    """Whether a note says, or leaves open, that this is what stopped it."""
    places = {"depth": ("fixed", "glass"), "glass": ("glass",), "grille": ("front",), "width": ("hole",)}
    return note.reason is None or where in places[note.reason]


def _not(test: Atom) -> Atom:
    return lambda room: not test(room)
