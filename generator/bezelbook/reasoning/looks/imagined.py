"""All that could be looked at for the open pairs of a place, with what may come of it imagined once."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.cells import Setting
from bezelbook.reasoning.looks.bench_looks import Likely, likely_sizes, mount_ways, unit_ways
from bezelbook.reasoning.looks.look import Promise, Todo
from bezelbook.reasoning.looks.met import Read, Room
from bezelbook.reasoning.looks.offer_looks import offer_promises, offers
from bezelbook.reasoning.looks.opening_looks import Accounts, argument_ways, asking_ways, reading_ways
from bezelbook.reasoning.looks.pair import Pair, is_firm
from bezelbook.reasoning.looks.readings import Unread, unread
from bezelbook.reasoning.looks.way import Bundles, Way, Ways
from bezelbook.reasoning.looks.weighing import Weighed
from bezelbook.reasoning.question import Asked
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.verdict import too_close


@dataclass(frozen=True)
class Imagined:
    """A place with the looks at it."""

    place: Place

    @cached_property
    def _readings(self) -> dict[Build, tuple[Way, ...]]:
        return {}

    @cached_property
    def _blank(self) -> dict[Build, tuple[Unread, ...]]:
        return {}

    @cached_property
    def _alike(self) -> dict[str, Likely]:
        return {}

    @cached_property
    def _mounts(self) -> dict[tuple[str, ...], tuple[Way, ...]]:
        return {}

    @cached_property
    def _read(self) -> dict[tuple[Ways, int], Read]:
        return {}

    @cached_property
    def _rooms(self) -> dict[Setting, tuple[Room, ...]]:
        return {}

    @cached_property
    def _notes(self) -> tuple[tuple[Todo, tuple[Accounts, ...]], ...]:
        return (*asking_ways(self.place), *argument_ways(self.place))

    def promises(self, pair: Pair, question: Asked) -> Iterator[tuple[Todo, Pair, Promise]]:
        """Every look, here or on the bench, that has a part in settling an open pair, and what it promises.

        `question` is the pair as it is put now, which may know more of the unit than the place's own book.
        """
        ways = self._to_read(pair, question)
        if ways:
            bundles = Bundles(question.needs, self._weighed(question), ways, self._read_by)
            yield from ((todo, pair, promise) for todo, promise in bundles.promises())

    def known(self, pair: Pair, question: Asked) -> object:
        """All that those promises depend on: as long as this is the same, so are they."""
        likely = self._sizes_alike(self.place.frame.book.head_units[pair.unit])
        met = [[(one.room.known, one.tried) for one in accounts] for accounts in self._weighed(question)]
        return self._unread(pair.build), likely, question.needs, met

    def _weighed(self, question: Asked) -> list[list[Weighed]]:
        return [[Weighed(question.needs, room) for room in self._rooms_in(one)] for one in question.settings]

    def asking(self, pair: Pair, question: Asked) -> Iterator[tuple[Todo, Pair, Promise]]:
        """The same for asking the author of a note what it left blank, and for offering up what is argued over."""
        for todo, outcomes in self._notes:
            settled = [is_firm(question, accounts) for accounts in outcomes if accounts]
            if any(settled):
                share = Fraction(sum(settled), len(settled))
                yield todo, pair, Promise(share, share)

    def offering(
        self, questions: Mapping[Pair, Asked], asked_for: Callable[[Pair], bool]
    ) -> Iterator[tuple[Todo, Pair, Promise]]:
        """The same for offering a unit up, which takes longer than reading.

        It is worth that only where somebody asked for the unit, or where the answer is too close or nothing is left to
        read; it may settle any of these open pairs.
        """
        of = {pair: tuple(offers(self.place, pair, one, self._weighed(one))) for pair, one in questions.items()}
        for pair, question in questions.items():
            if asked_for(pair) or not self._to_read(pair, question) or too_close(self.place, question):
                yield from offer_promises(of, pair)

    def _to_read(self, pair: Pair, question: Asked) -> tuple[Way, ...]:
        unit = self.place.frame.book.head_units[pair.unit]
        return (
            *self._ways(question, pair.build),
            *unit_ways(self.place.frame.book, unit, question.needs, self._sizes_alike(unit)),
        )

    def _unread(self, build: Build) -> tuple[Unread, ...]:
        if build not in self._blank:
            self._blank[build] = unread(self.place, build)
        return self._blank[build]

    def _sizes_alike(self, unit: HeadUnit) -> Likely:
        if unit.id not in self._alike:
            self._alike[unit.id] = likely_sizes(self.place.frame.book, unit)
        return self._alike[unit.id]

    def _ways(self, question: Asked, build: Build) -> tuple[Way, ...]:
        if build not in self._readings:
            self._readings[build] = reading_ways(self.place, build, self._unread(build))
        mounts = tuple(key for stack in question.stacks for key in (*stack.key, "|"))
        if mounts not in self._mounts:
            self._mounts[mounts] = mount_ways(self.place.frame.book, question.stacks)
        return (*self._readings[build], *self._mounts[mounts])

    def _rooms_in(self, setting: Setting) -> tuple[Room, ...]:
        if setting not in self._rooms:
            self._rooms[setting] = tuple(Room(rooms, setting) for rooms in self.place.accounts)
        return self._rooms[setting]

    def _read_by(self, ways: Ways, number: int) -> Read:
        if (ways, number) not in self._read:
            told = (way.tells(number) for way in ways if way.tells)
            self._read[ways, number] = Read({spot: span for of in told for spot, span in of.items()})
        return self._read[ways, number]
