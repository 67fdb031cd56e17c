"""What notes about a place for a speaker mean, as bounds on its room, the rings, the foams and the speakers."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import product

from tests.simulator.box_world import UNCUT, Axis, Car, Platform, World
from tests.simulator.doors.measuring import DEPTHS, SPACING
from tests.simulator.doors.world import WAYS, Door, Ring
from tests.simulator.notes import Content, Note
from tests.simulator.possible.cars import builds, chosen
from tests.simulator.possible.door_parts import DoorParts, dict_of, has_tabs
from tests.simulator.possible.linear import Clause, Option, Sum, constant, more_than, number
from tests.simulator.possible.openings import in_order
from tests.simulator.possible.sizes import gap, in_the_car, within

BLAMED = {
    "depth": ("fixed", "glass"),
    "glass": ("glass",),
    "grille": ("front",),
    "width": WAYS,
    "height": WAYS,
}
SIZE = {text: size for size, text in DEPTHS.items()}


@dataclass(frozen=True)
class DoorNotes:
    """A place for a speaker, the axes that count there, and the notes of the whole book."""

    world: World
    platform: Platform
    door: Door
    axes: tuple[Axis, ...]
    book: Sequence[Note]

    def clauses(self, notes: Sequence[tuple[str, Content]]) -> Iterator[Clause]:
        """Everything that must hold for these notes to be true as they are written."""
        found = [clause for name, content in notes for clause in self._note(name, content)]
        yield from found
        names = {name for clause in found for option in clause for bound in option for name in bound.terms}
        tuples = {name for name in names if isinstance(name, tuple)}
        yield from DoorParts(self.world, self.book).clauses(tuples)
        yield from self._rooms([name for name in tuples if name[0] == "room"])

    def _note(self, name: str, content: Content) -> Iterator[Clause]:
        rings = self._rings(content)
        if content["form"] == "measured":
            yield from self._measured(name, content, rings)
        elif rings is not None and content.get("reason") in (None, *BLAMED):
            yield tuple(self._tried(name, content, rings))

    def _rings(self, content: Content) -> tuple[Ring, ...] | None:
        said = content.get("mounts")
        if said == "none" or (said is None and content["form"] == "measured"):
            return ()
        named = {ring.name: ring for ring in self.world.rings}
        words = said if isinstance(said, list) else ["?"]
        return tuple(named[word] for word in words) if all(word in named for word in words) else None

    def _measured(self, name: str, content: Content, rings: Sequence[Ring] | None) -> Iterator[Clause]:
        cars = builds(self.platform, self.axes, content)
        readings = content["readings"]
        for reading in readings if isinstance(readings, list) else []:
            rooms = [list(self._read(content, reading, rings, car)) for car in cars]
            if reading.get("tool") != "eye" and all(rooms):
                ends = in_the_car(self.world.shop, reading)
                yield tuple(
                    (*chosen(("car", name), car, cars), *(bound for room in found for bound in within(room, ends)))
                    for car, found in zip(cars, rooms, strict=True)
                )

    def _read(
        self, content: Content, reading: Mapping[str, object], rings: Sequence[Ring] | None, car: Car
    ) -> Iterator[Sum]:
        """What a reading is of, where it can be compared; nobody knows what it is through rings that are None."""
        of, cut, datum = str(reading["of"]), str(content.get("cut", UNCUT)), reading.get("datum")
        if of in SIZE:
            room = number(("room", car, cut, None, SIZE[of]))
            if datum == self.door.face:
                yield room
            elif datum == "bracket seat" and rings is not None:
                held = sum((number(("held", ring.name)) for ring in rings), Sum({}))
                yield room + held.times(-1 if of == "front clearance" else 1)
        elif of == "bolt circle":
            yield number(("circle",))
        elif of == "hole spacing" and "bolt_holes" in content:
            yield number(("circle",)).times(float(SPACING[int(str(dict_of(content, "bolt_holes")["count"]))]))
        elif of.startswith("cut-out") and rings is not None:
            yield from self._hole_read(content, of, rings, (car, cut))

    def _hole_read(self, content: Content, of: str, rings: Sequence[Ring], state: tuple[Car, str]) -> Iterator[Sum]:
        """The one hole that there is to read: both ways of a round one, of an oval one the way that is named."""
        ways = WAYS if of == "cut-out" else (of.removeprefix("cut-out "),)
        tabs = str(content.get("tabs", ""))
        if (of == "cut-out" and content.get("shape") == "oval") or (not tabs and any(map(has_tabs, rings))):
            return
        for way in ways:
            holes = self._holes(rings, *state, way, tabs)
            yield from holes if len(holes) == 1 else ()

    def _tried(self, name: str, content: Content, rings: tuple[Ring, ...]) -> Iterator[Option]:
        """The ways in which it may have been so."""
        fitted = content["verdict"] != "does not"
        said = content.get("to_spare" if fitted else "short_by")
        cars = builds(self.platform, self.axes, content)
        cut = str(content.get("cut", f"something in {name}" if fitted else UNCUT))
        cuts = [cut] if fitted or said is None or "cut" in content else [UNCUT, f"something in {name}"]
        tabs = [str(content["tabs"])] if "tabs" in content else ["in", "out"]
        run = self._run(content, fitted=fitted, by_how_much=said is not None)
        for car, at, tab, down in product(cars, cuts, tabs, run):
            met = list(self._met(name, content, rings, (car, at, tab), run=down))
            spots = [spare for size, spare in met if size in BLAMED.get(str(content.get("reason")), ())]
            about = spots if said is not None and content.get("reason") in ("depth", "glass", "grille") else []
            ends = gap(self.world.shop, said) if about else (0.0, 0.0)
            ways: list[Option] = [within(spot.times(1 if fitted else -1), ends) for spot in about]
            for by in ways or [()]:
                if fitted:
                    yield (*by, *(spare for _, spare in met))
                else:
                    playing = constant(DoorParts(self.world, self.book).excursion(content))
                    yield from (
                        (*by, more_than(playing if size == "front" else Sum({}), spare))
                        for size, spare in met
                        if content.get("reason") is None or size in BLAMED[str(content["reason"])]
                    )

    def _run(self, content: Content, *, fitted: bool, by_how_much: bool) -> list[bool]:
        if not self.door.glass:
            return [False]
        if "glass" in content:
            return [content["glass"] == "down" and not (fitted and content["sure"] == "measured")]
        return [True, False] if by_how_much else [not fitted]

    def _met(
        self, name: str, content: Content, rings: Sequence[Ring], state: tuple[Car, str, str], *, run: bool
    ) -> Iterator[tuple[str, Sum]]:
        car, cut, tabs = state
        whose = self._whose(name, content)
        held = sum((number(("held", ring.name)) for ring in rings), Sum({})) + self._gasket(name, content)
        for way, size in zip(WAYS, ("basket", "basket short"), strict=True):
            for hole in self._holes(rings, car, cut, way, tabs):
                yield way, hole - number(("part", whose, size))
        depth = number(("part", whose, "depth"))
        for size, there in (("fixed", "fixed"), *((("glass", "worst"),) if run else ())):
            yield size, number(("room", car, cut, None, there)) + held - depth
        yield "front", number(("room", car, cut, None, "front")) - held - number(("part", whose, "front"))

    def _holes(self, rings: Sequence[Ring], car: Car, cut: str, way: str, tabs: str) -> list[Sum]:
        """Every hole that a basket goes through."""
        found = [number(("room", car, cut, None, way))]
        for ring in rings:
            measured = any(key in (ring.says or {}) for key in ("inner", "tabs_in"))
            own = [number(("hole", ring.name, tabs if has_tabs(ring) else "in"))] if measured or not ring.ring else []
            found = [*found, *own] if ring.ring else own
        return found

    def _gasket(self, name: str, content: Content) -> Sum:
        said = content.get("gasket")
        if said == "none":
            return Sum({})
        known_one = any(foam.name == said for foam in self.world.foams)
        return number(("foam", said if known_one or said is None else "strange", None if known_one else name))

    def _whose(self, name: str, content: Content) -> str:
        speaker = next(one for one in self.world.speakers if one.name == content["what"])
        return speaker.name if speaker.says is not None else f"{speaker.name} in {name}"

    def _rooms(self, rooms: Sequence[tuple[object, ...]]) -> Iterator[Clause]:
        """A cut takes nothing away, the long way is no shorter, the glass is nowhere nearer than at its worst."""
        yield from in_order(rooms)
        for _, car, cut, _, size in rooms:
            for mean, roomy in (("short way", "long way"), ("worst", "down")):
                there = ("room", car, cut, None, roomy)
                if size == mean and there in rooms:
                    more = number(there) - number(("room", car, cut, None, mean))
                    yield ((more,) if size == "short way" or self._travel_read() else (more, more.times(-1)),)

    def _travel_read(self) -> bool:
        """Whether anybody read how near the glass comes at its worst; else where it is fully down counts for that."""
        told = (note.content for note in self.book if note.content.get("vehicle") == self.platform.name)
        here = (content for content in told if content["form"] == "measured" and self._is_here(content))
        readings = (content["readings"] for content in here)
        return any(one["of"] == DEPTHS["worst"] for found in readings if isinstance(found, list) for one in found)

    def _is_here(self, content: Content) -> bool:
        """Whether a note is about this side, or about the other one and says that this one was measured the same."""
        same = content.get("other_side") == "measured the same"
        return content["place"] == self.door.place or (same and content["place"] == self.door.other)
