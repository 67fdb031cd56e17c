"""A made-up shop that looks: what it could read, what it reads off the made-up world, and what is open then.

Each look is read off the made-up car, unit or kit itself, wrong by less than its tool allows, and written down as a
note or in a record; then what it bears on is asked again. Whom to ask and what to offer up again is left out: nobody is
there to be asked.
"""

from collections.abc import Iterator, Mapping, Sequence
from copy import copy, deepcopy
from dataclasses import dataclass
from random import Random
from typing import Any

from bezelbook.kinds import KINDS
from bezelbook.kinds.note.record import Measured, Tried
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.answer import place_of
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.looks.bench_looks import (
    BODY,
    BODY_MINUTES,
    MOUNT_MINUTES,
    PLUG_MINUTES,
    READ,
    RULED,
    mount_ways,
    unit_ways,
)
from bezelbook.reasoning.looks.imagined import Imagined
from bezelbook.reasoning.looks.look import Look, Promise, Todo, looks_of
from bezelbook.reasoning.looks.opening_looks import CALIPER, EACH_MINUTES, GAUGE
from bezelbook.reasoning.looks.pair import Pair, open_pairs, put, still_open, times_asked
from bezelbook.reasoning.looks.ranking import best_first, openings
from bezelbook.reasoning.looks.readings import Unread, unread
from bezelbook.reasoning.mounting import stack_of
from bezelbook.reasoning.needs import needs_of_unit
from bezelbook.reasoning.question import Asked
from tests.bench.looking.linked import linked_builds
from tests.simulator.box_world import MM, UNCUT, Kit, Unit, World
from tests.simulator.draw_parts import FIELD
from tests.simulator.saying import in_mm, read_off_signed

Where = tuple[str, str]
Promised = tuple[Todo, Pair, Promise]
FRONT: tuple[str, ...] = tuple(size for size in BODY if size != "depth")
DEEP, SIZES, PLUGGED, MOUNT = ("depth",), (*BODY, "rear"), ("plug", "exit"), ("hole", "offset")
GIVE = {"front": MM // 2, "depth": MM, "plug": RULED}
MINUTES = {FRONT: EACH_MINUTES, DEEP: EACH_MINUTES, SIZES: BODY_MINUTES, PLUGGED: PLUG_MINUTES, MOUNT: MOUNT_MINUTES}


@dataclass(frozen=True, order=True)
class Do:
    """Something that one can do: read the front or the depth of a build of an opening, or measure a unit or a kit."""

    where: Where | None
    build: Build
    part: str
    sizes: tuple[str, ...]

    @property
    def minutes(self) -> int:
        """As long as the tool itself reckons with."""
        return MINUTES[self.sizes]


class Shop:
    """A shop with a book, the world it was drawn from, and a clock of the minutes spent looking.

    What it knows of a place is worked out anew when something was read there, or of a unit or a kit that was tried
    there; of any other unit that was measured, the questions are put anew. That is all that a look bears on.
    """

    def __init__(self, world: World, base: KnowledgeBase, seed: str) -> None:
        self.world, self.book, self.seed = world, base, seed
        self.minutes = 0
        self.says: dict[str, dict[str, Any]] = {thing.name: dict(thing.says or {}) for thing in _parts(world)}
        self.imagined = {where: Imagined(place) for where, place in openings(base).items()}
        self.open: dict[Pair, Asked] = {}
        for imagined in self.imagined.values():
            self.open |= open_pairs(imagined.place)
        self.weights = {pair: 1 + times_asked(base, pair) for pair in self.open}
        self._promises: dict[Pair, tuple[object, list[Promised]]] = {}
        self._same: set[Pair] = set()
        self._unread: dict[tuple[Where, Build], tuple[Unread, ...]] = {}

    def again(self) -> "Shop":
        """The same shop, before anybody looked any further."""
        one = copy(self)
        one.says = deepcopy(self.says)
        one.imagined, one.open, one._same = dict(self.imagined), dict(self.open), set(self._same)
        one._promises = dict(self._promises)
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
        """Everything that nobody has read closely yet."""
        found: list[Do] = []
        for where, imagined in self.imagined.items():
            for build in imagined.place.frame.builds:
                sizes = {one.size for one in self.unread(where, build)}
                found += [Do(where, build, "", way) for way in (FRONT, DEEP) if sizes & set(way)]
        for unit in self.book.head_units.values():
            tools = [way.todo.tool for way in unit_ways(unit, needs_of_unit(self.book, unit))]
            found += [Do(None, (), unit.id, SIZES if tool == CALIPER else PLUGGED) for tool in tools]
        mounts = [mount for mount in self.book.mounts if mount_ways(self.book, [stack_of(self.book, (mount,))])]
        return [*found, *(Do(None, (), mount, MOUNT) for mount in mounts)]

    def unread(self, where: Where, build: Build) -> tuple[Unread, ...]:
        """What nobody read in a build of an opening."""
        if (where, build) not in self._unread:
            self._unread[where, build] = unread(self.imagined[where].place, build)
        return self._unread[where, build]

    def do(self, *looks: Do) -> None:
        """Take looks: read each off the world, write it down, and ask again what they bear on."""
        self.minutes += sum(one.minutes for one in looks)
        notes = [self._reading(one) for one in looks if one.where]
        written = [_note(number, said) for number, said in enumerate(notes, len(self.book.notes))]
        parts = {one.part: self._measured(one) for one in looks if one.part}
        kept = (one for one in records(self.book) if one.id not in parts)
        self.book = knowledge_base([*kept, *written, *parts.values()])
        changed = {one.where for one in looks if one.where}
        changed |= {where for where in self.imagined if not parts.keys().isdisjoint(self._used(where))}
        for where in changed:
            self.imagined[where] = Imagined(place_of(self.book, *where))
        self._unread = {at: sizes for at, sizes in self._unread.items() if at[0] not in changed}
        read = {(one.where, one.build) for one in looks}
        for pair in list(self.open):
            where = (pair.vehicle, pair.place)
            builds = {build for at, build in read if at == where}
            alone = builds and parts.keys().isdisjoint(self._used(where))
            linked = not alone or pair.build in linked_builds(self.imagined[where].place, builds)
            if pair.unit in parts or (where in changed and linked):
                self._ask_again(pair)

    def _used(self, where: Where) -> Iterator[str]:
        """The units that were tried at a place, and the mounts that were used there or made for it."""
        for note in self.book.notes_at(*where):
            if isinstance(note, Tried):
                yield note.what
            if isinstance(note, Tried | Measured) and isinstance(note.mounts, tuple):
                yield from note.mounts
        yield from (kit.name for kit in self.world.kits if any((use[0], use[1]) == where for use in kit.made_for))

    def _ask_again(self, pair: Pair) -> None:
        place = self.imagined[pair.vehicle, pair.place].place
        needs = needs_of_unit(self.book, self.book.head_units[pair.unit])
        self._same.discard(pair)
        question = still_open(place, put(place, pair).narrowed(needs=needs))
        if question is None:
            del self.open[pair]
        else:
            self.open[pair] = question

    def looks(self) -> list[Look]:
        """The looks of the tool, best first."""
        found = (promise for pair, question in self.open.items() for promise in self._promised(pair, question))
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

    def _reading(self, one: Do) -> dict[str, Any]:
        where = one.where or ("", "")
        platform = self.world.platform(where[0])
        car = next(car for car in platform.cars if set(one.build) <= set(car))
        room = platform.room(car, where[1], UNCUT, "aside")
        readings = []
        for size in self.unread(where, one.build):
            if size.size in one.sizes and size.ninth:
                reads = self._with_give(one, size.ninth, room.depths[size.ninth], GIVE["depth"])
                at = {"zones": [size.ninth], "datum": "sub-dash face", "tool": GAUGE}
                readings.append({"of": "depth", "reads": reads, **at})
            elif size.size in one.sizes:
                reads = self._with_give(one, size.size, room.sizes[size.size], GIVE["front"])
                readings.append({"of": size.size, "reads": reads, "tool": CALIPER})
        return {
            "form": "measured",
            "vehicle": where[0],
            "place": where[1],
            "splits": dict(one.build),
            "readings": readings,
        }

    def _measured(self, one: Do) -> Record:
        """The record of a part with what was read of it on the bench."""
        thing = next(thing for thing in _parts(self.world) if thing.name == one.part)
        says = self.says[one.part]
        if isinstance(thing, Kit):
            holes = {size.replace(" ", "_"): self._by_caliper(one, size, hole) for size, hole in thing.holes.items()}
            says.pop("thickness", None)
            sign = "-" if thing.offset < 0 else "+"
            says["presents"] = {**says.get("presents", {}), **holes}
            says["proud"] = sign + self._by_caliper(one, "offset", thing.offset)
            return _part("mounts", one.part, says)
        says |= {
            FIELD[size]: self._by_caliper(one, size, thing.sizes[size]) for size in one.sizes if size in thing.sizes
        }
        says |= {"plug_exit": thing.exit} if "exit" in one.sizes else {}
        return _part("head_units", one.part, says)

    def _by_caliper(self, one: Do, size: str, true: int) -> str:
        return f"{self._with_give(one, size, true, GIVE.get(size, READ) if one.sizes == PLUGGED else READ)} caliper"

    def _with_give(self, one: Do, spot: str, true: int, give: int) -> str:
        """What the tool says of one length: the same whenever it is read, whatever else is read in one go."""
        dice = Random(f"{self.seed} {one.where} {one.build} {one.part} {spot}")
        return f"{read_off_signed(dice, true, give)} ± {in_mm(give)}"


def _parts(world: World) -> Iterator[Unit | Kit]:
    yield from (unit for unit in world.units if unit.says)
    yield from world.kits


def _note(number: int, said: Mapping[str, Any]) -> Record:
    signed = {**said, "id": f"look-{number}", "author": "look", "date": "2030-01-01"}
    made: Record = KINDS["notes"].reader.validate_python(signed)
    return made


def _part(kind: str, named: str, says: Mapping[str, Any]) -> Record:
    made: Record = KINDS[kind].reader.validate_python({**says, "id": named})
    return made


def records(book: KnowledgeBase) -> Iterator[Record]:
    """Every record of a book."""
    return (record for records in book.records.values() for record in records.values())
