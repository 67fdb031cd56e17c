"""Shops that look: how many minutes until half of what was open is settled, by which look is taken first.

Each look is read off the made-up car or unit itself, wrong by less than its tool allows, and written down as a note;
then everything is asked again. Whom to ask and what to offer up again is left out: nobody is there to be asked.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from random import Random
from typing import Any

from bezelbook.kinds import KINDS
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.answer import place_of
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.looks.bench_looks import BODY, BODY_MINUTES, PLUG_MINUTES, bench_looks
from bezelbook.reasoning.looks.look import Look
from bezelbook.reasoning.looks.opening_looks import EACH_MINUTES, opening_looks
from bezelbook.reasoning.looks.pair import Pair, is_firm, open_pairs, put, times_asked
from bezelbook.reasoning.looks.ranking import best_first, openings
from bezelbook.reasoning.looks.readings import Unread, unread
from bezelbook.reasoning.needs import needs_of_unit
from bezelbook.reasoning.room import Place
from tests.simulator.box_world import MM, UNCUT, World
from tests.simulator.counter import make
from tests.simulator.draw_parts import FIELD
from tests.simulator.regimes import HONEST
from tests.simulator.saying import in_mm, read_between

Where = tuple[str, str]
NOTES = (6, 10, 15)
GIVE = {"width": MM // 2, "height": MM // 2, "depth": MM}
BENCH_GIVE = MM // 5
TOOLS = {"width": "caliper", "height": "caliper", "depth": "depth gauge"}


@dataclass(frozen=True, order=True)
class Do:
    """Something that one can do: read the front or the depth of a build of an opening or both, or measure a unit."""

    where: Where | None
    build: Build
    unit: str
    sizes: tuple[str, ...]

    @property
    def minutes(self) -> int:
        """As long as the tool itself reckons with."""
        if self.where:
            return EACH_MINUTES * (2 if self.sizes == BOTH else 1)
        return PLUG_MINUTES if self.sizes == ("plug",) else BODY_MINUTES


FRONT, DEEP, BOTH = ("width", "height"), ("depth",), ("width", "height", "depth")


class Shop:
    """A shop with a book, the world it was drawn from, and a clock of the minutes spent looking."""

    def __init__(self, world: World, base: KnowledgeBase, seed: str) -> None:
        self.world, self.book, self.seed = world, base, seed
        self.minutes = 0
        self.places: dict[Where, Place] = dict(openings(base))
        found = (pair for place in self.places.values() for pair in open_pairs(place))
        self.open: dict[Pair, int] = {pair: 1 + times_asked(base, pair) for pair in found}
        self.all = sum(self.open.values())
        self._looks: dict[Where, list[Look]] = {}

    @property
    def half(self) -> bool:
        """Whether half of what was open at first is settled, each answer 1 + as often as it was asked."""
        return 2 * sum(self.open.values()) <= self.all

    def could(self) -> list[Do]:
        """Everything that has not been read yet."""
        found: list[Do] = []
        for where, place in self.places.items():
            for build in place.frame.builds:
                sizes = {one.size for one in unread(place, build)}
                ways = (BOTH,) if "depth" in sizes and len(sizes) > 1 else ()
                found += [Do(where, build, "", way) for way in (FRONT, DEEP, *ways) if sizes & set(way)]
        for unit in self.book.head_units.values():
            needs = needs_of_unit(self.book, unit)
            if any(not needs.spans[need].known for need in BODY):
                found.append(Do(None, (), unit.id, tuple(BODY)))
            if needs.plug_over_body.high is None:
                found.append(Do(None, (), unit.id, ("plug",)))
        return found

    def do(self, one: Do) -> None:
        """Take a look: read it off the world, write it down, and ask again what it bears on."""
        self.minutes += one.minutes
        note = self._reading(one) if one.where else self._bench(one)
        self.book = knowledge_base([*_records(self.book), note])
        touched = [one.where] if one.where else list(self.places)
        for where in touched:
            self.places[where] = place_of(self.book, *where)
            self._looks.pop(where, None)
        for pair in list(self.open):
            place = self.places[pair.vehicle, pair.place]
            about = (pair.vehicle, pair.place) in touched and (not one.unit or pair.unit == one.unit)
            if about and is_firm(put(place, pair), place.accounts):
                del self.open[pair]

    def looks(self) -> list[Look]:
        """The looks of the tool, best first."""
        for where, place in self.places.items():
            if where not in self._looks:
                self._looks[where] = list(opening_looks(place, open_pairs(place)))
        found = [look for looks in self._looks.values() for look in looks]
        return sorted([*found, *bench_looks(self.book, self.places, list(self.open))], key=best_first)

    def _reading(self, one: Do) -> Record:
        where = one.where or ("", "")
        place = self.places[where]
        platform = self.world.platform(where[0])
        car = next(car for car in platform.cars if set(one.build) <= set(car))
        room = platform.room(car, where[1], UNCUT, "aside")
        dice = Random(f"{self.seed} {one}")
        readings = [
            _read(dice, size, room.depths[size.ninth] if size.ninth else room.sizes[size.size])
            for size in unread(place, one.build)
            if size.size in one.sizes
        ]
        said = {"form": "measured", "vehicle": where[0], "place": where[1], "splits": dict(one.build)}
        return _note(self.book, {**said, "readings": readings, "author": "look", "date": "2030-01-01"})

    def _bench(self, one: Do) -> Record:
        unit = next(unit for unit in self.world.units if unit.name == one.unit)
        dice = Random(f"{self.seed} {one}")
        readings = [{"of": FIELD[size], "reads": _with_give(dice, unit.sizes[size], BENCH_GIVE)} for size in one.sizes]
        return _note(self.book, {"form": "bench", "part": one.unit, "readings": readings, "author": "look"})


def _read(dice: Random, size: Unread, true: int) -> dict[str, Any]:
    where = {"zones": [size.ninth], "datum": "sub-dash face"} if size.ninth else {}
    return {"of": size.size, "reads": _with_give(dice, true, GIVE[size.size]), "tool": TOOLS[size.size], **where}


def _with_give(dice: Random, true: int, give: int) -> str:
    return f"{read_between(dice, true - give + 1, true + give - 1)} ± {in_mm(give)}"


def _note(book: KnowledgeBase, said: Mapping[str, Any]) -> Record:
    made: Record = KINDS["notes"].reader.validate_python({**said, "id": f"look-{len(book.notes)}"})
    return made


def _records(book: KnowledgeBase) -> Iterator[Record]:
    return (record for records in book.records.values() for record in records.values())


def asked(dice: Random, book: KnowledgeBase) -> Iterator[Record]:
    """What people asked of this book: some units at some openings often, most never."""
    for number, (vehicle, place) in enumerate(openings(book)):
        for unit in book.head_units:
            if dice.random() < 0.3:
                times = dice.choice((1, 1, 1, 2, 2, 3, 5, 8, 13))
                said = {"words": "will it go in", "vehicle": vehicle, "place": place, "what": unit, "times": times}
                made: Record = KINDS["questions"].reader.validate_python({**said, "id": f"asked-{number}-{unit}"})
                yield made


def shop(seed: str) -> Shop:
    """The shop of a seed, always the same."""
    dice = Random(seed)
    made = make(seed, HONEST, dice.choice(NOTES))
    base = made.counter.base
    return Shop(made.world, knowledge_base([*_records(base), *asked(dice, base)]), seed)


Order = Callable[[Shop, Random], Do]


def ours(one: Shop, dice: Random) -> Do:
    """The look that the tool puts first; anything at all where it knows of none."""
    could = one.could()
    return next((do for look in one.looks() if (do := _as_do(one, look)) in could), dice.choice(could))


def at_random(one: Shop, dice: Random) -> Do:
    """Whatever is at hand."""
    return dice.choice(one.could())


def most_asked_first(one: Shop, _dice: Random) -> Do:
    """What bears on the open question that was asked most: all of its opening, then its unit."""
    could = one.could()
    ranked = sorted(one.open, key=lambda pair: (-one.open[pair], pair.vehicle, pair.place, pair.build, pair.unit))
    for pair in ranked:
        here = [do for do in could if do.where == (pair.vehicle, pair.place) and do.build == pair.build]
        bench = [do for do in could if do.unit == pair.unit]
        if here or bench:
            return max(here, key=lambda do: len(do.sizes)) if here else bench[0]
    return could[0]


ORDERS: Mapping[str, Order] = {"ours": ours, "random": at_random, "most asked first": most_asked_first}


def _as_do(one: Shop, look: Look) -> Do | None:
    """A look of the tool in terms of what can be done here; None for asking somebody and for offering up again."""
    todo = look.todo
    if todo.vehicle and todo.place:
        sizes = {"caliper": FRONT, "depth gauge": DEEP, "caliper and depth gauge": BOTH}.get(todo.tool)
        return Do((todo.vehicle, todo.place), todo.builds[0], "", sizes) if sizes else None
    unit = next(unit.id for unit in one.book.head_units.values() if todo.what.endswith(f" of {unit.name}"))
    return Do(None, (), unit, tuple(BODY) if todo.tool == "caliper" else ("plug",))


def minutes_to_half(seed: str, order: Order) -> int | None:
    """The minutes of looking until half is settled; None where nothing is open, or half never is, however one looks."""
    one, dice = shop(seed), Random(f"{seed} order")
    while one.open and not one.half:
        if not one.could():
            return None
        one.do(order(one, dice))
    return one.minutes or None


def compared(seeds: Sequence[str]) -> Iterator[Mapping[str, int]]:
    """The minutes by order for each of these shops in which half can be settled at all."""
    for seed in seeds:
        found = {name: minutes_to_half(seed, order) for name, order in ORDERS.items()}
        if None not in found.values():
            yield {name: minutes for name, minutes in found.items() if minutes is not None}


def looked(seed: str, shops: int = 200) -> Iterator[str]:
    """Look in so many shops in each order, and say how many minutes it took on average."""
    found: list[Mapping[str, int]] = []
    number = 0
    while len(found) < shops:
        found += compared([f"{seed}-looks-{number}"])
        number += 1
    sums = {name: sum(one[name] for one in found) for name in ORDERS}
    said = ", ".join(f"{name} {total / len(found):.1f}" for name, total in sums.items())
    yield f"looking                 {len(found)} shops, minutes until half is settled: {said}"
    yield f"                        ours is {sums['ours'] / sums['random']:.2f} of random's"
