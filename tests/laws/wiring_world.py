"""A small car's wiring and a few pieces to join to it, as plain facts, and worlds of them made up from a seed."""

from dataclasses import dataclass, field
from random import Random

CONNECTORS = ("flat-seven", "square-seven", "round-seven")
# One cavity each, in this order, in every connector.
CIRCUITS = ("constant", "ground", "accessory", "reverse", "park brake", "left front +", "left rear +", "bus")
OF_RADIO = ("left front +", "left rear +")
NEVER_MADE_UP = ("reverse", "park brake")
# The most that an output gives, in milliamp; None where nobody noted it.
LIMITS = (500, 1000, 2000, None)
# All plugs have one shell; only where the key sits tells them apart.
KEYS = {"flat-seven": "left of the middle", "square-seven": "right of the middle", "round-seven": "in the middle"}
# What a job may not do without where the radio stays.
WHOLE = ("constant", "ground", "left front +", "left rear +")
CAR, UNIT = "vehicle side", "unit side"


@dataclass(frozen=True)
class CarPlug:
    """A plug of the car: what was found in it; when every cavity was read, what was not found is not there."""

    connector: str
    has: tuple[str, ...]
    all_read: bool


@dataclass(frozen=True)
class Adapter:
    """An adapter: its ends are (connector, side), or nothing for bare leads; `ways` has a word a circuit."""

    name: str
    ends: dict[str, tuple[str, str] | None]
    ways: dict[str, str]
    made_for: str  # this car, another, or nothing
    on_shelf: bool = False
    cavities: dict[str, int] = field(default_factory=dict)  # at end a, which cavity it takes a circuit from
    needs_module: str = ""
    loops: tuple[str, ...] = ()  # circuits that it cuts and has a loop-back for


@dataclass(frozen=True)
class Module:
    """A module."""

    name: str
    wants: tuple[str, ...]
    gives: tuple[str, ...]
    made_for: str
    needs_adapter: str = ""
    most: dict[str, int | None] = field(default_factory=dict)


@dataclass(frozen=True)
class World:
    """A car, what there is to buy, and what is wanted: (circuit, kind, must)."""

    plugs: tuple[CarPlug, ...]
    adapters: tuple[Adapter, ...]
    modules: tuple[Module, ...]
    unit: tuple[str, str] | None
    radio: tuple[str, str] | None
    needs: tuple[tuple[str, str, bool], ...]


def world_of(seed: int) -> World:
    """The world that belongs to a seed, always the same one."""
    dice = Random(seed)  # noqa: S311 - made-up worlds need no cryptography
    plugs = tuple(_plug(dice, name) for name in dice.sample(CONNECTORS, dice.choice((1, 1, 2))))
    keep = dice.random() < 0.35
    plugs = plugs[:1] if keep else plugs
    unit = (dice.choice(CONNECTORS), UNIT) if not keep and dice.random() < 0.5 else None
    # Mostly leads that somebody would take to this car, and some that nobody would.
    near = (*CONNECTORS, *[plug.connector for plug in plugs] * 5, *((unit[0],) if unit else ()))
    adapters = tuple(_adapter(dice, f"lead-{number}", near, keep=keep) for number in range(dice.randint(1, 4)))
    modules = tuple(_module(dice, f"box-{number}", adapters) for number in range(dice.choice((0, 0, 1, 2))))
    boxes = [module.name for module in modules]
    needy = dice.randrange(len(adapters)) if boxes and dice.random() < 0.3 else -1
    adapters = tuple(
        one if number != needy else Adapter(**{**vars(one), "needs_module": dice.choice(boxes)})
        for number, one in enumerate(adapters)
    )
    radio = (plugs[0].connector, UNIT) if keep else None
    return World(plugs, adapters, modules, unit, radio, _needs(dice, keep=keep))


def _plug(dice: Random, name: str) -> CarPlug:
    return CarPlug(name, tuple(one for one in CIRCUITS if dice.random() < 0.75), dice.random() < 0.4)


def _adapter(dice: Random, name: str, near: tuple[str, ...], *, keep: bool) -> Adapter:
    connector = dice.choice(near)
    ends: dict[str, tuple[str, str] | None] = {"a": (connector, UNIT)}
    sort = dice.choice(
        ("to leads", "between", "t", "t", "join") if keep else ("to leads", "to leads", "between", "t", "join")
    )
    if sort == "to leads":
        ends["b"] = None
    elif sort == "between":
        ends["b"] = (dice.choice(near), dice.choice((CAR, CAR, UNIT)))
    elif sort == "t":
        ends |= {"b": (connector, CAR), "c": None}
    else:
        ends |= {"b": (dice.choice(near), UNIT), "c": None}
    words = ["passes"] * 8 + ["not there", "unknown", "makes", "tapped", "tapped"]
    words += ["broken out"] * 4 if sort == "t" else []
    ways = {circuit: dice.choice(words) for circuit in CIRCUITS if dice.random() < 0.9}
    made_for = dice.choice(("this car", "this car", "this car", "this car", "another car", ""))
    cavities = {one: CIRCUITS.index(one) + 1 for one in ways if dice.random() < 0.15}
    if cavities and dice.random() < 0.2:
        cavities[next(iter(cavities))] = dice.randint(1, len(CIRCUITS))
    loops = tuple(one for one, word in ways.items() if word == "broken out" and dice.random() < 0.5)
    return Adapter(name, ends, ways, made_for, dice.random() < 0.4, cavities, loops=loops)


def _module(dice: Random, name: str, adapters: tuple[Adapter, ...]) -> Module:
    wants = ("constant", "ground", *(("bus",) if dice.random() < 0.6 else ()))
    gives = tuple(one for one in ("accessory", "reverse", "park brake") if dice.random() < 0.6)
    needs = dice.choice(adapters).name if dice.random() < 0.4 else ""
    made_for = dice.choice(("this car", "this car", "another car", ""))
    return Module(name, wants, gives, made_for, needs, {one: dice.choice(LIMITS) for one in gives})


def _needs(dice: Random, *, keep: bool) -> tuple[tuple[str, str, bool], ...]:
    if not keep:
        wanted = [("constant", "feed", True), ("ground", "feed", True), ("accessory", "feed", True)]
        others = [one for one in ("left front +", "left rear +", "reverse", "park brake") if dice.random() < 0.7]
        return (*wanted, *((one, "feed", one == "left front +") for one in others))
    sound = (
        [("left front +", "from radio", True), ("left front +", "to car", True)]
        if dice.random() < 0.6
        else [("left front +", "tap", True)]
    )
    through = [one for one in CIRCUITS if one != "left front +" or sound[0][1] == "tap"]
    return (*sound, ("accessory", "feed", True), *((one, "through", one in WHOLE) for one in through))
