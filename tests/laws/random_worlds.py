"""Small worlds made up from a seed."""

from collections.abc import Mapping
from dataclasses import replace
from random import Random

from bezelbook.values.words import Ninth
from tests.laws.domains import points
from tests.laws.small_world import RIB, Ask, Kit, Measure, Part, Reading, Reason, Size, Tried, Verdict, World

MOST_POINTS = 300_000
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
    wide = dice.random() < 0.3
    empty = World(ninths, wide, builds, cuts, looms, _kits(dice, wide=wide), _parts(dice, ninths), (), ())
    notes = tuple(
        _tried(dice, empty, f"n{number}") if dice.random() < 0.75 else _reading(dice, empty, f"n{number}")
        for number in range(dice.randint(1, 6))
    )
    tried = {note.part: note.kit for note in sorted(notes, key=lambda note: bool(note.kit)) if isinstance(note, Tried)}
    asks = tuple(_ask(dice, empty, tried) for _ in range(4))
    return World(ninths, empty.wide, builds, cuts, looms, empty.kits, empty.parts, notes, asks)


def _kits(dice: Random, *, wide: bool) -> tuple[Kit, ...]:
    """One kit or two; each has a hole of its own where the width of the opening is not in play."""
    plain = None if wide else Size(4)
    flush = Kit("flush-kit", width=dice.choice((plain, plain, Size(2), Size(2, 1))))
    other = Kit("other-kit", dice.choice((Size(1), Size(-1), Size(1, 1))), plain)
    return dice.choice(((flush,), (flush,), (flush, other)))


def _size(dice: Random, *, blank: float, rough: float) -> Size | None:
    if dice.random() < blank:
        return None
    return Size(dice.randint(1, 3), 1 if dice.random() < rough else 0)


def _parts(dice: Random, ninths: tuple[Ninth, ...]) -> tuple[Part, ...]:
    return tuple(_part(dice, f"part-{number}", ninths) for number in range(dice.randint(2, 4)))


def _part(dice: Random, name: str, ninths: tuple[Ninth, ...]) -> Part:
    width = _size(dice, blank=0.05, rough=0.15) if dice.random() < 0.5 else Size(1)
    depth = _size(dice, blank=0.05, rough=0.3)
    bend = dice.choice((Size(1), Size(1), Size(2), Size(1, 1), None))
    return Part(name, width, depth, bend, dice.choice((*ninths, *ninths, None)))


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
    reason: Reason | None = dice.choice((None, "depth", "depth", "plug" if plugged else "depth", "width"))
    where = _where(dice, world, part, reason)
    note = Tried(name, part.name, verdict, fitted, kit, build, cut, loom, plugs, reason, where)
    return note if dice.random() < 0.8 else _with_gap(dice, world, note, plugged=plugged)


def _where(dice: Random, world: World, part: Part, reason: Reason | None) -> tuple[Ninth, ...]:
    if reason == "width" or dice.random() < 0.5:
        return ()
    if reason == "plug":
        return (part.exit,) if part.exit else ()
    return tuple(dice.sample(world.ninths, dice.randint(1, len(world.ninths))))


def _with_gap(dice: Random, world: World, note: Tried, *, plugged: bool) -> Tried:
    """The same note with a number for the room left over or missing, where that number has one meaning."""
    part = world.part(note.part)
    known = part.depth and not part.depth.give and part.bend and not part.bend.give
    if not known or part.exit is None or note.reason == "width" or (note.reason == "plug" and not plugged):
        return note
    if note.verdict == "does not" and note.reason is None:
        return note
    ninth = part.exit if note.reason == "plug" else dice.choice(world.ninths)
    gap = Size(dice.randint(1, 2), dice.choice((0, 0, 1)))
    return replace(note, where=(ninth,), gap=gap)


def _reading(dice: Random, world: World, name: str) -> Reading:
    build, cut, loom = _state(dice, world)
    kit = dice.choice((None, None, None, dice.choice(world.kits).name))
    of: Measure = "width" if (world.wide or kit) and dice.random() < 0.4 else "depth"
    zones = tuple(dice.sample(world.ninths, dice.randint(1, len(world.ninths))))
    reads = Size(dice.randint(1, 4), dice.choice((0, 1, 1)))
    return Reading(name, of, reads, () if of == "width" else zones, build, cut, loom, kit)


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
    return replace(ask, depth=Size(dice.randint(1, 4))) if plain_plug and not typed and dice.random() < 0.2 else ask
