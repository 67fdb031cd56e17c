"""Small worlds made up from a seed."""

from collections.abc import Mapping
from dataclasses import replace
from random import Random

from bezelbook.values.words import Ninth
from tests.laws.domains import points
from tests.laws.small_world import (
    FRONTS,
    RIB,
    Ask,
    Front,
    Kit,
    Measure,
    Part,
    Reading,
    Reason,
    Size,
    Tried,
    Verdict,
    World,
)

MOST_POINTS = 300_000
FRONTS_IN_PLAY: tuple[tuple[Front, ...], ...] = ((), (), (), (), ("width",), ("height",), ("width", "height"))
NINTHS_BEHIND: tuple[tuple[Ninth, ...], ...] = (("centre",), ("left", "right"))


def world_of(seed: int) -> World:
    """The world that belongs to a seed, always the same one."""
    dice = Random(seed)  # noqa: S311 - made-up worlds need no cryptography
    while True:
        world = _world(dice)
        if points(world) <= MOST_POINTS:
            return world


def _world(dice: Random) -> World:
    ninths: tuple[Ninth, ...] = dice.choice(NINTHS_BEHIND)
    builds, cuts, looms = dice.choice(
        (
            (("early",), ("nothing",), ("aside",)),
            (("early", "late"), ("nothing",), ("aside",)),
            (("early", "late"), ("nothing", RIB), ("aside",)),
            (("early",), ("nothing", RIB), ("aside",)),
            (("early",), ("nothing",), ("behind", "aside")),
            (("early",), ("nothing", RIB), ("behind", "aside")),
        )
    )
    front: tuple[Front, ...] = dice.choice(FRONTS_IN_PLAY)
    kits, parts = _kits(dice, front), _parts(dice, ninths, front, dice.choice((3, 3, 5)))
    empty = World(ninths, front, builds, cuts, looms, kits, parts, (), ())
    notes = tuple(
        _tried(dice, empty, f"n{number}") if dice.random() < 0.75 else _reading(dice, empty, f"n{number}")
        for number in range(dice.randint(1, 6))
    )
    tried = {note.part: note.kit for note in sorted(notes, key=lambda note: bool(note.kit)) if isinstance(note, Tried)}
    asks = tuple(_ask(dice, empty, tried) for _ in range(4))
    return World(ninths, front, builds, cuts, looms, empty.kits, empty.parts, notes, asks)


def _kits(dice: Random, front: tuple[Front, ...]) -> tuple[Kit, ...]:
    """One kit or two; each has a hole of its own where the width or height of the opening is not in play."""
    wide, high = (None if size in front else Size(6) for size in FRONTS)
    width = dice.choice((wide, wide, Size(2), Size(2, 1)))
    height = dice.choice((high, high, high, Size(2), Size(3, 1)))
    flush = Kit("flush-kit", width=width, height=height)
    other = Kit("other-kit", dice.choice((Size(1), Size(-1), Size(1, 1))), wide, high)
    return dice.choice(((flush,), (flush,), (flush, other)))


def _size(dice: Random, most: int, *, blank: float, rough: float) -> Size | None:
    if dice.random() < blank:
        return None
    give = 1 if dice.random() < rough else 0
    return Size(dice.randint(give, most), give)


def _parts(dice: Random, ninths: tuple[Ninth, ...], front: tuple[Front, ...], most: int) -> tuple[Part, ...]:
    return tuple(_part(dice, f"part-{number}", ninths, front, most) for number in range(dice.randint(2, 4)))


def _part(dice: Random, name: str, ninths: tuple[Ninth, ...], front: tuple[Front, ...], most: int) -> Part:
    width = _size(dice, most, blank=0.05, rough=0.15) if dice.random() < 0.5 else Size(1)
    tall = dice.random() < (0.5 if "height" in front else 0.15)
    height = _size(dice, most, blank=0.05, rough=0.15) if tall else Size(1)
    depth = _size(dice, most, blank=0.05, rough=0.3)
    bend = dice.choice((Size(1), Size(1), Size(2), Size(0), Size(1, 1), None))
    return Part(name, width, height, depth, bend, dice.choice((*ninths, *ninths, None)))


def _state(dice: Random, world: World) -> tuple[str | None, str | None, str | None]:
    build = dice.choice((*world.builds, *world.builds, None))
    cut = dice.choice((*world.cuts, *world.cuts, None))
    loom = dice.choice((*world.looms, *world.looms, None)) if len(world.looms) > 1 else "aside"
    return build, cut, loom


def _tried(dice: Random, world: World, name: str) -> Tried:
    build, cut, loom = _state(dice, world)
    part = dice.choice(world.parts)
    verdict: Verdict = dice.choice(("goes in", "does not"))
    plugs = dice.choice(("on", "off", "off", None))
    kit = dice.choice((*(kit.name for kit in world.kits), world.kits[0].name, None))
    fitted = dice.random() < 0.5
    plugged = plugs == "on" or (plugs is None and (fitted or verdict == "does not"))
    reason: Reason | None = dice.choice((None, "depth", "depth", "plug" if plugged else "depth", *FRONTS))
    where = _where(dice, world, part, reason)
    note = Tried(name, part.name, verdict, fitted, kit, build, cut, loom, plugs, reason, where)
    return note if dice.random() < 0.8 else _with_gap(dice, world, note, plugged=plugged)


def _where(dice: Random, world: World, part: Part, reason: Reason | None) -> tuple[Ninth, ...]:
    if reason in FRONTS or dice.random() < 0.5:
        return ()
    if reason == "plug":
        return (part.exit,) if part.exit else ()
    return tuple(dice.sample(world.ninths, dice.randint(1, len(world.ninths))))


def _with_gap(dice: Random, world: World, note: Tried, *, plugged: bool) -> Tried:
    """The same note with a number for the room left over or missing, where that number has one meaning."""
    part = world.part(note.part)
    if note.reason in FRONTS:
        size = part.sizes[note.reason]
        return note if size is None or size.give else replace(note, gap=_gap(dice))
    known = part.depth and not part.depth.give and part.bend and not part.bend.give
    if not known or part.exit is None or (note.reason == "plug" and not plugged):
        return note
    if note.verdict == "does not" and note.reason is None:
        return note
    ninth = part.exit if note.reason == "plug" else dice.choice(world.ninths)
    return replace(note, where=(ninth,), gap=_gap(dice))


def _gap(dice: Random) -> Size:
    return Size(dice.randint(1, 2), dice.choice((0, 0, 1)))


def _reading(dice: Random, world: World, name: str) -> Reading:
    build, cut, loom = _state(dice, world)
    kit = dice.choice((None, None, None, dice.choice(world.kits).name))
    seen: tuple[Front, ...] = FRONTS if kit else world.front
    of: Measure = dice.choice(seen) if seen and dice.random() < 0.4 else "depth"
    zones = tuple(dice.sample(world.ninths, dice.randint(1, len(world.ninths))))
    reads = Size(dice.randint(1, 5), dice.choice((0, 1, 1)))
    return Reading(name, of, reads, zones if of == "depth" else (), build, cut, loom, kit)


def _ask(dice: Random, world: World, tried: Mapping[str, str | None]) -> Ask:
    build = dice.choice((*world.builds, None))
    part = dice.choice(world.parts)
    kits = [*(kit.name for kit in world.kits), *((None,) if any(tried.values()) else ())]
    kit, cut, loom = dice.choice(kits), dice.choice(world.cuts), dice.choice(world.looms)
    measured = part.exit is not None and all(part.sizes.values())
    own_size = part.name in tried and any(size and size.give for size in part.sizes.values())
    typed = measured and not own_size and dice.random() < 0.5
    ask = Ask(part.name, kit, build, cut, loom, dice.choice(("on", "off")), typed)
    # Typed beside a record, its bend is added to another depth than its own.
    plain_plug = part.exit is not None and part.bend is not None and not part.bend.give
    return replace(ask, depth=Size(dice.randint(0, 5))) if plain_plug and not typed and dice.random() < 0.2 else ask
