"""The sizes of kits and units, as their records, bench notes and the notes that typed them have them.

What stands out behind a body and its plug are one number each here, so that a plug and a stud with a ± are a little
less tied to each other than they are on the bench.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from tests.simulator.box_world import FRONT, MM, Kit, World
from tests.simulator.draw_parts import FIELD
from tests.simulator.notes import Note
from tests.simulator.possible.linear import Clause, number
from tests.simulator.possible.sizes import Interval, in_the_car, known, on_the_bench, within


@dataclass(frozen=True)
class OpeningParts:
    """The parts of a world, and the notes of its book."""

    world: World
    book: Sequence[Note]

    def clauses(self, names: set[tuple[object, ...]]) -> Iterator[Clause]:
        """The sizes of kits and units, as their records have them."""
        shop = self.world.shop
        for kit in self.world.kits:
            if ("offset", kit.name) in names:
                ends = kit_offset(self.world, kit)
                yield (within(number(("offset", kit.name)), ends) if ends else (),)
            for size in FRONT:
                if ("hole", kit.name, size) in names:
                    yield from known(("hole", kit.name, size), on_the_bench(shop, says_hole(kit, size)))
        for whose in sorted({str(name[1]) for name in names if name[0] == "part"}):
            yield from self._unit(whose)

    def _unit(self, whose: str) -> Iterator[Clause]:
        sizes = {size: self._size(whose, size) for size in (*FRONT, "depth", "plug")}
        rear = self._size(whose, "rear") or (0.0, 0.0)
        for size in FRONT:
            yield from known(("part", whose, size), sizes[size])
        depth, plug = number(("part", whose, "depth")), number(("part", whose, "plug"))
        body = sizes["depth"]
        yield from known(("part", whose, "depth"), (body[0] + rear[0], body[1] + rear[1]) if body else None)
        yield ((plug - depth,),)
        if bend := sizes["plug"]:
            least, most = max(bend[0], rear[0]) - rear[1], max(bend[1], rear[1]) - rear[0]
            yield (within(plug - depth, (least, most)) if least < most else (plug - depth,),)

    def _size(self, whose: str, size: str) -> Interval:
        """As its record has it, else as bench notes about it allow; of a thing without a record, as the note has it."""
        named, _, note = whose.partition(" in note-")
        unit = next(unit for unit in self.world.units if unit.name == named)
        shop = self.world.shop
        if unit.says is None:
            content = next(one.content for one in self.book if one.name == f"note-{note}")
            sizes = content.get("sizes", {})
            key = FIELD[size].removeprefix("body_")
            return on_the_bench(shop, sizes.get(key) if isinstance(sizes, dict) else None, shop.tools["none"] / MM)
        found = on_the_bench(shop, unit.says.get(FIELD[size]))
        read = [] if found else list(self._bench(unit.name, FIELD[size]))
        return (min(low for low, _ in read), max(high for _, high in read)) if read else found

    def _bench(self, unit: str, field: str) -> Iterator[tuple[float, float]]:
        for note in self.book:
            readings = note.content.get("readings") if note.content.get("part") == unit else None
            for reading in readings if isinstance(readings, list) else []:
                if reading["of"] == field:
                    yield in_the_car(self.world.shop, reading)


def says_hole(kit: Kit, size: str) -> object:
    """A size of the hole of a kit, as its record has it."""
    presents = kit.says.get("presents", {})
    return presents.get(size.replace(" ", "_")) if isinstance(presents, dict) else None


def kit_offset(world: World, kit: Kit) -> Interval:
    """How far a kit holds things out, as its record has it; None when that may be anything."""
    if kit.says.get("proud") == "flush":
        return 0.0, 0.0
    return on_the_bench(world.shop, kit.says.get("proud", kit.says.get("thickness")))
