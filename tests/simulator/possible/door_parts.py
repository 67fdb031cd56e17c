"""The sizes of rings, foams and speakers, as their records and the notes that typed them have them."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from tests.simulator.box_world import MM, World
from tests.simulator.doors.records import FIELD, HOLE
from tests.simulator.doors.world import Ring
from tests.simulator.notes import Content, Note
from tests.simulator.possible.linear import Clause, Sum, constant, number
from tests.simulator.possible.sizes import Interval, known, on_the_bench, read, within


@dataclass(frozen=True)
class DoorParts:
    """The parts of a world, and the notes of its book."""

    world: World
    book: Sequence[Note]

    def clauses(self, names: set[tuple[object, ...]]) -> Iterator[Clause]:
        """Rings, foams and speakers, as their records have them."""
        shop = self.world.shop
        for ring in self.world.rings:
            says = ring.says or {}
            held = (
                (0.0, 0.0)
                if says.get("proud") == "flush"
                else on_the_bench(shop, says.get("proud", says.get("thickness")))
            )
            yield (within(number(("held", ring.name)), held) if held else (),)
            ends = {"in": "tabs_in", "out": "tabs_out"} if has_tabs(ring) else {"in": "inner"}
            for tabs, field in ends.items():
                yield from known(("hole", ring.name, tabs), on_the_bench(shop, says.get(field)))
            if has_tabs(ring):
                yield ((number(("hole", ring.name, "out")) - number(("hole", ring.name, "in")),),)
        for name in names:
            if name[0] == "foam":
                yield (tuple(self._foam(name)),)
        for whose in sorted({str(name[1]) for name in names if name[0] == "part"}):
            yield from self._speaker(whose)

    def _foam(self, name: tuple[object, ...]) -> Iterator[Sum]:
        held = number(name)
        yield held
        free = {foam.name: read(str(foam.says["free_thickness"]))[0] for foam in self.world.foams if foam.says}
        said = next((foam.says for foam in self.world.foams if foam.name == name[1]), None)
        if said and "squeeze" in said:
            squeezed = free[str(name[1])] * (100 - float(str(said["squeeze"]).split()[0])) / 100
            yield from within(held, (squeezed, squeezed))
        elif name[1] != "strange":
            yield constant(free.get(str(name[1]), max(free.values(), default=0.0))) - held

    def _speaker(self, whose: str) -> Iterator[Clause]:
        sizes = {size: self._size(whose, size) for size in ("basket", "basket short", "depth", "front")}
        for size, ends in sizes.items():
            if size != "basket short" or ends:
                yield from known(("part", whose, size), ends)
        if sizes["basket short"] is None:
            same = number(("part", whose, "basket short")) - number(("part", whose, "basket"))
            yield ((same, same.times(-1)),)

    def _size(self, whose: str, size: str) -> Interval:
        named, _, note = whose.partition(" in note-")
        speaker = next(one for one in self.world.speakers if one.name == named)
        shop = self.world.shop
        if speaker.says is None:
            content = next(one.content for one in self.book if one.name == f"note-{note}")
            return on_the_bench(shop, dict_of(content, "sizes").get(FIELD[size]), shop.tools["none"] / MM)
        own = on_the_bench(shop, speaker.says.get(FIELD[size]))
        return own or on_the_bench(shop, speaker.says.get(HOLE.get(size, "")))

    def excursion(self, content: Content) -> float:
        """How much further a cone comes when it plays; a no may have been said of that."""
        speaker = next(one for one in self.world.speakers if one.name == content["what"])
        text = (speaker.says or {}).get("excursion")
        ends = on_the_bench(self.world.shop, text)
        return ends[1] if ends else read(str(text))[0] if text else 0.0


def has_tabs(ring: Ring) -> bool:
    """Whether its record knows of tabs."""
    return "tabs_in" in (ring.says or {})


def dict_of(content: Content, key: str) -> dict[str, object]:
    """A part of a note that has keys of its own."""
    found = content.get(key, {})
    return dict(found) if isinstance(found, dict) else {}
