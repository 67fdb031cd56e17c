"""The made-up world as somebody meets it who looks: what his tools read, and whether a unit goes in."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from random import Random
from typing import Any

from bezelbook.kinds import KINDS
from bezelbook.kinds.record import Record
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.looks.bench_looks import READ, RULED
from bezelbook.reasoning.looks.opening_looks import CALIPER, GAUGE
from bezelbook.reasoning.looks.readings import Unread
from tests.bench.looking.do import PLUGGED, Do
from tests.simulator.box_world import MM, UNCUT, Kit, Room, Unit, World
from tests.simulator.draw_parts import FIELD
from tests.simulator.meeting import Meeting, meetings
from tests.simulator.saying import in_mm, read_off_signed

GIVE = {"front": MM // 2, "depth": MM, "plug": RULED}


@dataclass(frozen=True)
class Metal:
    """A world and a seed: each reading is wrong by less than its tool allows, and the same whenever it is taken."""

    world: World
    seed: str

    def parts(self) -> Iterator[Unit | Kit]:
        """Everything of which somebody made a record."""
        yield from (unit for unit in self.world.units if unit.says)
        yield from self.world.kits

    def _part(self, name: str) -> Unit | Kit:
        return next(part for part in self.parts() if part.name == name)

    def _room(self, where: tuple[str, str], build: Build) -> Room:
        platform = self.world.platform(where[0])
        car = next(car for car in platform.cars if set(build) <= set(car))
        return platform.room(car, where[1], UNCUT, "aside")

    def read(self, one: Do, blank: Sequence[Unread]) -> dict[str, Any]:
        """The note of somebody who read what was `blank` of the front or the depth of an opening."""
        where = one.where or ("", "")
        room = self._room(where, one.build)
        readings = []
        for size in blank:
            if size.size in one.sizes and size.ninth:
                reads = self._with_give(one, size.ninth, room.depths[size.ninth], GIVE["depth"])
                at = {"zones": [size.ninth], "datum": "sub-dash face", "tool": GAUGE}
                readings.append({"of": "depth", "reads": reads, **at})
            elif size.size in one.sizes:
                reads = self._with_give(one, size.size, room.sizes[size.size], GIVE["front"])
                readings.append({"of": size.size, "reads": reads, "tool": CALIPER})
        return {"form": "measured", **_at(where, one.build), "readings": readings}

    def offered(self, one: Do, *, knows_exit: bool) -> dict[str, Any]:
        """The note of somebody who offered a unit up: whether it went in is what the metal said, and what stopped it.

        As long as nobody `knows_exit` of its plug, body and plug are not told apart, and depth is never blamed.
        """
        where, unit = one.where or ("", ""), self._part(one.part)
        kits = [kit for name in one.mounts for kit in self.world.kits if kit.name == name]
        assert isinstance(unit, Unit)
        met = meetings(self._room(where, one.build), kits, unit.sizes, unit.exit, plugs_on=True)
        short = [one for one in met if one.spare < 0]
        state = {"mounts": list(one.mounts) or "none", "cut": UNCUT, "loom": "aside", "plugs": "on"}
        said = {"form": "tried", "what": one.part, "sure": "dry-fitted", **_at(where, one.build), **state}
        if not short:
            return {**said, "verdict": "goes in"}
        blamed = [one for one in short if knows_exit or not one.ninth]
        return {**said, "verdict": "does not", **(_blame(blamed) if blamed else {})}

    def measured(self, one: Do, says: dict[str, Any]) -> Record:
        """The record of a part with what was read of it on the bench, which `says` is made to say."""
        thing = self._part(one.part)
        if isinstance(thing, Kit):
            holes = {size.replace(" ", "_"): self._by_caliper(one, size, hole) for size, hole in thing.holes.items()}
            says.pop("thickness", None)
            sign = "-" if thing.offset < 0 else "+"
            says["presents"] = {**says.get("presents", {}), **holes}
            says["proud"] = sign + self._by_caliper(one, "offset", thing.offset)
            return _record("mounts", one.part, says)
        says |= {
            FIELD[size]: self._by_caliper(one, size, thing.sizes[size]) for size in one.sizes if size in thing.sizes
        }
        says |= {"plug_exit": thing.exit} if "exit" in one.sizes else {}
        return _record("head_units", one.part, says)

    def _by_caliper(self, one: Do, size: str, true: int) -> str:
        return f"{self._with_give(one, size, true, GIVE.get(size, READ) if one.sizes == PLUGGED else READ)} caliper"

    def _with_give(self, one: Do, spot: str, true: int, give: int) -> str:
        """What the tool says of one length, whatever else is read in one go."""
        dice = Random(f"{self.seed} {one.where} {one.build} {one.part} {spot}")
        return f"{read_off_signed(dice, true, give)} ± {in_mm(give)}"


def _at(where: tuple[str, str], build: Build) -> dict[str, Any]:
    return {"vehicle": where[0], "place": where[1], "splits": dict(build)}


def _blame(short: Sequence[Meeting]) -> dict[str, Any]:
    worst = min(short, key=lambda one: one.spare)
    return {
        "reason": "nose" if worst.size.startswith("nose") else worst.size,
        "where": [worst.ninth] if worst.ninth else [],
    }


def note_of(number: int, said: Mapping[str, Any]) -> Record:
    """A note of this content, after so many others."""
    return _record("notes", f"look-{number}", {**said, "author": "look", "date": "2030-01-01"})


def _record(kind: str, named: str, says: Mapping[str, Any]) -> Record:
    made: Record = KINDS[kind].reader.validate_python({**says, "id": named})
    return made
