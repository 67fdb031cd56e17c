"""A made-up shop that looks: what it could read, what it reads off the made-up world, and what is open then.

Each look is read off the made-up car, unit or kit itself, wrong by less than its tool allows, or a unit is offered up;
that is written down as a note or in a record, and then what it bears on is asked again. Whom to ask, and what to offer
up again where notes argue, is left out: nobody is there to be asked.
"""

from collections.abc import Iterator, Sequence
from copy import copy, deepcopy
from typing import Any

from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.answer import place_of
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.looks.bench_looks import mount_ways, unit_ways
from bezelbook.reasoning.looks.imagined import Imagined
from bezelbook.reasoning.looks.look import Look, Promise, Todo, looks_of
from bezelbook.reasoning.looks.opening_looks import CALIPER
from bezelbook.reasoning.looks.pair import Pair, is_firm, open_pairs, put, still_open, times_asked
from bezelbook.reasoning.looks.ranking import best_first, openings
from bezelbook.reasoning.looks.readings import Unread, unread
from bezelbook.reasoning.mounting import stack_of
from bezelbook.reasoning.needs import needs_of_unit
from bezelbook.reasoning.question import Asked
from bezelbook.reasoning.room import Place
from tests.bench.looking.do import DEEP, FRONT, MOUNT, PLUGGED, SIZES, WHOLE, Do, Where
from tests.bench.looking.linked import linked
from tests.bench.looking.metal import Metal, note_of
from tests.simulator.box_world import World

Promised = tuple[Todo, Pair, Promise]


class Shop:
    """A shop with a book, the world it was drawn from, and a clock of the minutes spent looking.

    What it knows of a place is worked out anew when something was read there, or of a unit or a kit that was tried
    there; of any other unit that was measured, the questions are put anew. That is all that a look bears on. What was
    settled may be open again, as when a closer size in a record makes way for a coarser one. What others of its class
    have a unit likely measure, of which nothing is known, is as it was when the place was last worked out.
    """

    def __init__(self, world: World, base: KnowledgeBase, seed: str) -> None:
        self.book, self.seed, self.metal = base, seed, Metal(world, seed)
        self.minutes = 0
        self.says: dict[str, dict[str, Any]] = {thing.name: dict(thing.says or {}) for thing in self.metal.parts()}
        self.imagined = {where: Imagined(place) for where, place in openings(base).items()}
        self.open: dict[Pair, Asked] = {}
        for imagined in self.imagined.values():
            self.open |= open_pairs(imagined.place)
        self.weights = {pair: 1 + times_asked(base, pair) for pair in self.open}
        self._promises: dict[Pair, tuple[object, list[Promised]]] = {}
        self._same: set[Pair] = set()
        self._mountings = {where: _mountings(imagined.place) for where, imagined in self.imagined.items()}
        self._offering: dict[Where, list[Promised]] = {}
        self._offers: dict[Pair, list[Do]] = {}
        self._unread: dict[tuple[Where, Build], tuple[Unread, ...]] = {}

    def again(self) -> "Shop":
        """The same shop, before anybody looked any further."""
        one = copy(self)
        one.says = deepcopy(self.says)
        one.imagined, one.open, one._same = dict(self.imagined), dict(self.open), set(self._same)
        one._mountings = dict(self._mountings)
        one._promises, one._offering, one._offers = dict(self._promises), dict(self._offering), dict(self._offers)
        return one

    @property
    def left(self) -> int:
        """How much is open, each answer 1 + as often as it was asked."""
        return sum(self.weights[pair] for pair in self.open)

    @property
    def half(self) -> bool:
        """Whether half of what was open at first is settled."""
        return 2 * self.left <= sum(self.weights.values())

    def could(self) -> list[Do]:
        """Everything that nobody has read closely yet, and every unit that is open where it could be offered up."""
        found: list[Do] = []
        for where, imagined in self.imagined.items():
            for build in imagined.place.frame.builds:
                sizes = {one.size for one in self.unread(where, build)}
                found += [Do(where, build, "", way) for way in (FRONT, DEEP) if sizes & set(way)]
        for unit in self.book.head_units.values():
            tools = [way.todo.tool for way in unit_ways(self.book, unit, needs_of_unit(self.book, unit), {})]
            found += [Do(None, (), unit.id, SIZES if tool == CALIPER else PLUGGED) for tool in tools]
        mounts = [mount for mount in self.book.mounts if mount_ways(self.book, [stack_of(self.book, (mount,))])]
        found += [Do(None, (), mount, MOUNT) for mount in mounts]
        return [*found, *(do for pair in self.open for do in self.offers(pair))]

    def offers(self, pair: Pair) -> list[Do]:
        """Offering up the unit of an open pair with each mounting with which it is open."""
        if pair not in self._offers:
            question, accounts = self.open[pair], self.imagined[pair.vehicle, pair.place].place.accounts
            stacks = [one for one in question.stacks if not is_firm(question.narrowed(stacks=(one,)), accounts)]
            where = (pair.vehicle, pair.place)
            self._offers[pair] = [Do(where, pair.build, pair.unit, WHOLE, one.key) for one in stacks]
        return self._offers[pair]

    def unread(self, where: Where, build: Build) -> tuple[Unread, ...]:
        """What nobody read in a build of an opening: no less for what was offered up there."""
        if (where, build) not in self._unread:
            self._unread[where, build] = unread(self.imagined[where].place, build)
        return self._unread[where, build]

    def do(self, *looks: Do) -> None:
        """Take looks: read each off the world, write it down, and ask again what they bear on."""
        self.minutes += sum(one.minutes for one in looks)
        written = [note_of(number, said) for number, said in enumerate(self._seen(looks), len(self.book.notes))]
        parts = {one.part: self.metal.measured(one, self.says[one.part]) for one in looks if not one.where}
        kept = (one for one in records(self.book) if one.id not in parts)
        self.book = knowledge_base([*kept, *written, *parts.values()])
        changed = {one.where for one in looks if one.where}
        changed |= {where for where in self.imagined if not parts.keys().isdisjoint(self._used(where))}
        for where in changed:
            self.imagined[where] = Imagined(place_of(self.book, *where))
        read = {where for where in changed if any(not one.is_offer for one in looks if one.where in (where, None))}
        self._unread = {at: sizes for at, sizes in self._unread.items() if at[0] not in read}
        for pair in self.weights:
            if pair.unit in parts or (
                (pair.vehicle, pair.place) in changed and self._bears_on(pair, looks, set(parts))
            ):
                self._ask_again(pair)
        self._same -= {pair for pair in self._same if (pair.vehicle, pair.place) in read}
        self._mountings |= {where: _mountings(self.imagined[where].place) for where in changed}

    def _seen(self, looks: Sequence[Do]) -> Iterator[dict[str, Any]]:
        """What the notes say of these looks that were taken at a car."""
        for one in looks:
            if one.where:
                knows_exit = "plug_exit" in self.says.get(one.part, {})
                offered = one.is_offer and self.metal.offered(one, knows_exit=knows_exit)
                yield offered or self.metal.read(one, self.unread(one.where, one.build))

    def _bears_on(self, pair: Pair, looks: Sequence[Do], parts: set[str]) -> bool:
        """Whether looks at a place, and at these parts, may say anything of a pair there.

        What is offered up with mounts that were not used there yet is one more way to fit anything, in every build.
        """
        where = (pair.vehicle, pair.place)
        builds = {one.build for one in looks if one.where == where}
        offered = {one.mounts for one in looks if one.is_offer and one.where == where}
        if not builds or not offered <= self._mountings[where] or not parts.isdisjoint(self._used(where)):
            return True
        if pair not in self.open:
            return False
        tied, things = linked(self.imagined[where].place, builds)
        used = {pair.unit, *(key for stack in self.open[pair].stacks for key in stack.key)}
        return pair.build in tied or not things.isdisjoint(used)

    def _used(self, where: Where) -> Iterator[str]:
        """The units that were tried at a place, and the mounts that were used there or made for it."""
        for note in self.book.notes_at(*where):
            if isinstance(note, Tried):
                yield note.what
            if isinstance(note, Tried | Measured) and isinstance(note.mounts, tuple):
                yield from note.mounts
        yield from (kit.name for kit in self.metal.world.kits if any((use[0], use[1]) == where for use in kit.made_for))

    def _ask_again(self, pair: Pair) -> None:
        place = self.imagined[pair.vehicle, pair.place].place
        needs = needs_of_unit(self.book, self.book.head_units[pair.unit])
        self._same.discard(pair)
        self._offering.pop((pair.vehicle, pair.place), None)
        self._offers.pop(pair, None)
        question = still_open(place, put(place, pair).narrowed(needs=needs))
        if question is None:
            self.open.pop(pair, None)
        else:
            self.open[pair] = question

    def looks(self) -> list[Look]:
        """The looks of the tool, best first."""
        found = [promise for pair, question in self.open.items() for promise in self._promised(pair, question)]
        found += [promise for where in self.imagined for promise in self._offered(where)]
        return sorted(looks_of(found, self.weights.__getitem__), key=best_first)

    def _promised(self, pair: Pair, question: Asked) -> Sequence[Promised]:
        """What looks promise for a pair, worked out anew when anything that it depends on has changed."""
        imagined = self.imagined[pair.vehicle, pair.place]
        if pair not in self._same:
            known = imagined.known(pair, question)
            if pair not in self._promises or self._promises[pair][0] != known:
                self._promises[pair] = known, list(imagined.promises(pair, question))
            self._same.add(pair)
        return self._promises[pair][1]

    def _offered(self, where: Where) -> Sequence[Promised]:
        """What offering up promises at a place, worked out anew when anything was asked again there."""
        if where not in self._offering:
            here = {pair: question for pair, question in self.open.items() if (pair.vehicle, pair.place) == where}
            found = self.imagined[where].offering(here, lambda pair: self.weights[pair] > 1)
            self._offering[where] = list(found)
        return self._offering[where]


def _mountings(place: Place) -> set[tuple[str, ...]]:
    """The mounts with which something was tried at a place."""
    return {one.stack.key for one in place.evidence.standing if one.stack is not None and one.says != "reading"}


def records(book: KnowledgeBase) -> Iterator[Record]:
    """Every record of a book."""
    return (record for records in book.records.values() for record in records.values())
