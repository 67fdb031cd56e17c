"""What notes about a dash opening mean as they are written: bounds on the room, the kits and the units."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import product

from tests.simulator.box_world import FRONT, NINTHS, UNCUT, Axis, Car, Kit, Opening, Platform, World
from tests.simulator.meeting import behind
from tests.simulator.notes import Content, Note
from tests.simulator.possible.cars import builds, chosen
from tests.simulator.possible.linear import Clause, Option, Sum, more_than, number
from tests.simulator.possible.opening_parts import OpeningParts, says_hole
from tests.simulator.possible.sizes import gap, in_the_car, within

BLAMED = {
    "depth": ("depth", "plug"),
    "width": ("width",),
    "height": ("height",),
    "nose": ("nose width", "nose height"),
    "plug": ("plug",),
}
Left = tuple[str, str | None, Sum]


@dataclass(frozen=True)
class OpeningNotes:
    """An opening, the axes that count there, and the notes of the whole book."""

    world: World
    platform: Platform
    opening: Opening
    axes: tuple[Axis, ...]
    book: Sequence[Note]

    def clauses(self, notes: Sequence[tuple[str, Content]]) -> Iterator[Clause]:
        """Everything that must hold for these notes to be true as they are written."""
        found = [clause for name, content in notes for clause in self._note(name, content)]
        yield from found
        names = {name for clause in found for option in clause for bound in option for name in bound.terms}
        yield from OpeningParts(self.world, self.book).clauses({name for name in names if isinstance(name, tuple)})
        yield from in_order([name for name in names if isinstance(name, tuple) and name[0] == "room"])

    def _note(self, name: str, content: Content) -> Iterator[Clause]:
        kits = self._kits(content)
        if content["form"] == "measured":
            yield from self._measured(name, content, kits)
        elif kits is not None and content.get("reason") not in ("circuit", "load", "other"):
            yield tuple(self._tried(name, content, kits))

    def _kits(self, content: Content) -> tuple[Kit, ...] | None:
        """The kits of a note; None where they are not said, or something nobody knows is among them."""
        said = content.get("mounts")
        if said == "none" or (said is None and content["form"] == "measured"):
            return ()
        named = {kit.name: kit for kit in self.world.kits}
        words = said if isinstance(said, list) else ["?"]
        return tuple(named[word] for word in words) if all(word in named for word in words) else None

    def _measured(self, name: str, content: Content, kits: Sequence[Kit] | None) -> Iterator[Clause]:
        """Each reading, of the one build that the whole note is of; a depth without its ninth may be any of them."""
        cars = builds(self.platform, self.axes, content)
        readings = content["readings"]
        for reading in readings if isinstance(readings, list) else []:
            if self._counts(reading, kits):
                ends = in_the_car(self.world.shop, reading)
                yield tuple(
                    (*chosen(("car", name), car, cars), *(bound for room in rooms for bound in within(room, ends)))
                    for car in cars
                    for rooms in self._read(content, reading, kits or (), car)
                )

    def _read(self, content: Content, reading: Content, kits: Sequence[Kit], car: Car) -> Iterator[list[Sum]]:
        """The rooms that a reading may be of, each time all of them."""
        state = (str(content.get("cut", UNCUT)), str(content.get("loom", "aside")))
        if reading["of"] != "depth":
            yield [self._front(kits, car, state, str(reading["of"]))]
            return
        held = kits if reading.get("datum") == "kit seat" else ()
        zones = reading.get("zones")
        every = list(NINTHS) if zones == "all" else zones if isinstance(zones, list) else []
        for spots in [every] if every else [[ninth] for ninth in NINTHS]:
            yield [self._deep(held, car, state, ninth) for ninth in spots]

    def _counts(self, reading: Content, kits: Sequence[Kit] | None) -> bool:
        """Whether a reading can be compared: not by eye, not from elsewhere, not through what nobody could describe."""
        if reading.get("tool") == "eye":
            return False
        if reading["of"] != "depth" or reading.get("datum") == "kit seat":
            return kits is not None
        return reading.get("datum") == "sub-dash face"

    def _tried(self, name: str, content: Content, kits: tuple[Kit, ...]) -> Iterator[Option]:
        """The ways in which it may have been so; a blank is every way that it may have been."""
        fitted = content["verdict"] != "does not"
        said = content.get("to_spare" if fitted else "short_by")
        cars = builds(self.platform, self.axes, content)
        cut, loom, plugs = self._states(name, content, fitted=fitted, by_how_much=said is not None)
        exits = self._exits(content, kits)
        for car, state, on, exit_ in product(cars, product(cut, loom), plugs, exits):
            met = list(self._met(name, content, kits, (car, *state), exit_ if on else None))
            # What nobody knows of the plug is settled for all notes about one thing at once.
            settled = chosen(("exit", content["what"]), exit_, NINTHS) if len(exits) > 1 and on else ()
            spot = self._spot(content, met) if said is not None else None
            by = within(spot.times(1 if fitted else -1), gap(self.world.shop, said)) if spot else ()
            if fitted:
                yield (*settled, *by, *(spare for _, _, spare in met))
            else:
                yield from ((*settled, *by, more_than(Sum({}), spare)) for spare in blamed(content, met))
                if content.get("reason") == "nose" and any(map(nose_unmeasured, kits)):
                    yield (*settled, *by)

    def _states(
        self, name: str, content: Content, *, fitted: bool, by_how_much: bool
    ) -> tuple[list[str], list[str], list[bool]]:
        """Cuts, looms and plugs that it may have been; where only the one end matters, that end."""
        anything = [f"something in {name}"]
        cut = [str(content["cut"])] if "cut" in content else anything if fitted else [UNCUT, *anything * by_how_much]
        looms = ["aside", "behind"] if by_how_much else ["aside" if fitted else "behind"]
        loom = [str(content["loom"])] if "loom" in content else looms
        if content.get("plugs") or (fitted and content["sure"] == "fitted"):
            return cut, loom, [content.get("plugs") != "off"]
        return cut, loom, [True, False] if by_how_much else [not fitted]

    def _exits(self, content: Content, kits: Sequence[Kit]) -> list[str]:
        unit = next(unit for unit in self.world.units if unit.name == content["what"])
        sizes = unit.says if unit.says is not None else content.get("sizes", {})
        said = sizes.get("plug_exit") if isinstance(sizes, Mapping) else None
        return [str(said)] if said else list(behind(kits))

    def _met(
        self, name: str, content: Content, kits: Sequence[Kit], state: tuple[Car, str, str], exit_: str | None
    ) -> Iterator[Left]:
        """What is left over of each room; without an exit, the plugs are off."""
        car, *rest = state
        unit = next(unit for unit in self.world.units if unit.name == content["what"])
        whose = unit.name if unit.says is not None else f"{unit.name} in {name}"
        for size in FRONT:
            if "nose" not in size or self.opening.bezel or any(size in kit.holes for kit in kits):
                room = self._front(kits, car, (rest[0], rest[1]), size)
                yield size, None, room - number(("part", whose, size))
        for ninth in behind(kits):
            yield "depth", ninth, self._deep(kits, car, (rest[0], rest[1]), ninth) - number(("part", whose, "depth"))
        if exit_:
            yield "plug", exit_, self._deep(kits, car, (rest[0], rest[1]), exit_) - number(("part", whose, "plug"))

    def _spot(self, content: Content, met: Sequence[Left]) -> Sum | None:
        """What "by so much" is about: the side it names, else the deepest thing at the one ninth it names."""
        reason, where = content.get("reason"), content.get("where")
        if reason in ("width", "height"):
            return next(spare for size, _, spare in met if size == reason)
        if not isinstance(where, list) or len(where) != 1 or (content["verdict"] == "does not" and not reason):
            return None
        sizes = ("plug",) if reason == "plug" else ("depth", "plug")
        return next((spare for size, ninth, spare in reversed(met) if ninth == where[0] and size in sizes), None)

    def _front(self, kits: Sequence[Kit], car: Car, state: tuple[str, str], size: str) -> Sum:
        framed = [kit for kit in kits if says_hole(kit, size)]
        return number(("hole", framed[-1].name, size) if framed else ("room", car, state[0], None, size))

    def _deep(self, kits: Sequence[Kit], car: Car, state: tuple[str, str], ninth: str) -> Sum:
        room = number(("room", car, *state, ninth))
        return sum((number(("offset", kit.name)) for kit in kits), room)


def nose_unmeasured(kit: Kit) -> bool:
    """Whether a kit may frame a nose by a size that its record leaves blank, so that nobody can say it did not."""
    return not all(says_hole(kit, size) for size in FRONT if "nose" in size)


def blamed(content: Content, met: Sequence[Left]) -> Iterator[Sum]:
    """The meetings of which a note says that one was short."""
    reason, where = content.get("reason"), content.get("where")
    for size, ninth, spare in met:
        named = reason is None or size in BLAMED[str(reason)]
        if named and (reason is None or not where or ninth is None or (isinstance(where, list) and ninth in where)):
            yield spare


def in_order(rooms: Sequence[tuple[object, ...]]) -> Iterator[Clause]:
    """A cut takes no room away, and a loom that is aside takes none either."""
    for _, car, cut, loom, size in rooms:
        for _, other_car, other_cut, other_loom, other_size in rooms:
            mean, roomy = ("room", car, cut, loom, size), ("room", other_car, other_cut, other_loom, other_size)
            alike = (car, size) == (other_car, other_size) and mean != roomy
            if alike and cut in (UNCUT, other_cut) and loom in ("behind", other_loom):
                yield ((number(roomy) - number(mean),),)
