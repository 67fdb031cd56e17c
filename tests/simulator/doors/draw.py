"""Doors and shelves made up from dice, and the speakers, rings, brackets and foams of a shop."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from random import Random

from tests.simulator.box_world import MM, UNCUT, Axis, Car, Platform, Shop, World
from tests.simulator.doors.records import foam_record, ring_record, speaker_record
from tests.simulator.doors.world import Door, Foam, Ring, Sizes, Speaker
from tests.simulator.draw_platforms import DrawAxes, added, built_in, draw_axes, every_value
from tests.simulator.draw_world import draw_shop

TENTH = MM // 10
CUTS = ("the lip of the hole",)
LOOSE = ("old door speaker", "a customer's own coaxial")
SPEAKERS = 8
Range = tuple[int, int]


@dataclass(frozen=True)
class Nominal:
    """What hides behind the size that people call a speaker, and the holes for it: ranges in tenths of a millimetre.

    A flange covers every hole for its size, and speakers of one round size only are offered up in one world.
    """

    words: str
    basket: Range
    short: Range | None
    flange: Range
    depth: Range
    front: Range
    hole: Range


ROUND = (
    Nominal("6 1/2 in", (1260, 1450), None, (1700, 1800), (450, 750), (40, 200), (1250, 1500)),
    Nominal("5 1/4 in", (1120, 1220), None, (1450, 1550), (450, 600), (20, 150), (1110, 1260)),
)
OVAL = Nominal("6 x 9 in", (2150, 2290), (1460, 1570), (2600, 2700), (650, 950), (40, 200), (2150, 2320))


def draw_door_world(dice: Random, axes_of: DrawAxes = draw_axes) -> World:
    """One to three platforms with two doors each and sometimes a shelf, and what the shop has for them."""
    shop, nominal = draw_shop(dice), dice.choice(ROUND)
    platforms = tuple(
        door_platform(dice, f"car-{number}", nominal, axes_of) for number in range(1, dice.randint(1, 3) + 1)
    )
    rings = tuple(draw_ring(dice, shop, number, nominal) for number in range(1, 6))
    foams = tuple(draw_foam(dice, number) for number in range(1, dice.choice((1, 2, 3))))
    recorded = [draw_speaker(dice, shop, f"speaker-{number}", nominal) for number in range(1, SPEAKERS + 1)]
    loose = [draw_speaker(dice, None, name, nominal) for name in LOOSE]
    return World(shop, platforms, (), (), rings=rings, foams=foams, speakers=(*recorded, *loose))


def door_platform(dice: Random, name: str, nominal: Nominal, axes_of: DrawAxes) -> Platform:
    """A platform whose two front doors are alike or nearly so."""
    years = dice.randint(2, 6)
    places = ("front-door-left", "front-door-right") + (("rear-shelf",) if dice.random() < 0.4 else ())
    axes = tuple(axes_of(dice, years, places))
    whole: list[Car] = [tuple(zip([axis.name for axis in axes], row, strict=True)) for row in every_value(axes)]
    cars = {car: built for car in whole if (built := built_in(axes, car, years))}
    return Platform(name, years, axes, (), cars, (), tuple(draw_doors(dice, axes, places, nominal)))


def draw_doors(dice: Random, axes: Sequence[Axis], places: Sequence[str], nominal: Nominal) -> Iterator[Door]:
    """The left door, the right one with the same room or a little more or less of it, and a shelf."""
    cuts = CUTS[: dice.choice((0, 0, 1))]
    bolts = (dice.choice((3, 4)), dice.randint(1500, 1600) * TENTH)
    left = draw_place(dice, axes, places[0], cuts, draw_room(dice, nominal))
    yield Door(places[0], "door lower", "left", places[1], "door metal", bolts, cuts, left)
    as_left = [axis.bears(places[0]) for axis in axes] == [axis.bears(places[1]) for axis in axes]
    first = next(iter(left.values()))
    right = left if as_left and dice.random() < 0.5 else draw_place(dice, axes, places[1], cuts, nearly(dice, first))
    yield Door(places[1], "door lower", "right", places[0], "door metal", bolts, cuts, right)
    if len(places) > 2:
        shelf = draw_place(dice, axes, places[2], (), draw_shelf(dice))
        yield Door(places[2], "parcel shelf", "centre", None, "inside face of panel", bolts, (), shelf)


def draw_place(
    dice: Random, axes: Sequence[Axis], place: str, cuts: Sequence[str], first: Sizes
) -> dict[tuple[Car, str], Sizes]:
    """The room of every build and state; a cut takes nothing away."""
    bearing = [axis for axis in axes if axis.bears(place)]
    rooms: dict[tuple[Car, str], Sizes] = {}
    for row in every_value(bearing):
        build: Car = tuple(zip([axis.name for axis in bearing], row, strict=True))
        room = first if not rooms or dice.random() < 0.2 else nearly(dice, first)
        rooms[build, UNCUT] = room
        for cut in cuts:
            wider = dict.fromkeys(("long way", "short way"), dice.randint(5, 60) * TENTH)
            rooms[build, cut] = added(
                room, wider | dict.fromkeys(("fixed", "down", "worst"), dice.randint(0, 40) * TENTH)
            )
    return rooms


def draw_room(dice: Random, nominal: Nominal) -> Sizes:
    """A round hole in a door; the glass is often what stops a speaker, and sometimes it bows on its way."""
    hole = dice.randint(*nominal.hole) * TENTH
    fixed = dice.randint(480, 900) * TENTH
    down = fixed - dice.choice((0, dice.randint(0, 150), dice.randint(0, 250))) * TENTH
    worst = down - dice.choice((0, 0, dice.randint(5, 60))) * TENTH
    behind = {"fixed": fixed, "down": down, "worst": worst}
    return {"long way": hole, "short way": hole, **behind, "front": dice.randint(80, 400) * TENTH}


def draw_shelf(dice: Random) -> Sizes:
    """An oval hole with nothing that moves behind it."""
    ways = {"long way": dice.randint(*OVAL.hole) * TENTH, "short way": dice.randint(1460, 1580) * TENTH}
    return {**ways, "fixed": dice.randint(650, 1100) * TENTH, "front": dice.randint(80, 400) * TENTH}


def nearly(dice: Random, room: Sizes) -> Sizes:
    """The same with a little more or less of something; the glass never leaves more room than what is fixed."""
    moved = {size: dice.choice((0, 0, dice.randint(-80, 80))) * TENTH for size in ("fixed", "down", "worst", "front")}
    wider = dice.choice((0, 0, dice.randint(-60, 60))) * TENTH
    found = added(room, moved | {"long way": wider, "short way": wider})
    if "worst" in room:
        found["down"] = min(found["down"], found["fixed"])
        found["worst"] = min(found["worst"], found["down"])
    return found


def draw_ring(dice: Random, shop: Shop, number: int, nominal: Nominal) -> Ring:
    """A ring without a hole of its own or with one, or a bracket with tabs or without."""
    held = dice.choice((6000, 10_000, 12_000, 12_700, 18_000)) * 1000 + dice.randint(-3, 3) * TENTH
    hole = dice.randint(*nominal.hole) * TENTH
    if number <= 3:
        ring = Ring(f"ring-{number}", held, {"in": (hole, hole), "out": (hole, hole)} if dice.random() < 0.4 else {})
    else:
        tabs = dice.random() < 0.6
        out = hole + (dice.randint(20, 120) * TENTH if tabs else 0)
        held = dice.choice((0, held, -dice.randint(1, 60) * TENTH))
        ring = Ring(f"bracket-{number}", held, {"in": (hole, hole), "out": (out, out)}, tabs, ring=False)
    return Ring(ring.name, ring.held, ring.holes, ring.tabs, ring.ring, ring_record(dice, shop, ring))


def draw_foam(dice: Random, number: int) -> Foam:
    """A closed-cell tape; of some the shop does not know how far they are squeezed."""
    free = dice.choice((1600, 3000, 6000)) * 1000
    squeeze = dice.choice((30, 40, 50))
    return Foam(f"foam-{number}", free * (100 - squeeze) // 100, foam_record(dice, f"foam-{number}", free, squeeze))


def draw_speaker(dice: Random, shop: Shop | None, name: str, usual: Nominal) -> Speaker:
    """A speaker of the usual size or now and then an oval one; without a shop, one that has no record."""
    nominal = OVAL if dice.random() < 0.2 else usual
    basket = dice.randint(*nominal.basket) * TENTH
    short = dice.randint(*nominal.short) * TENTH if nominal.short else basket
    flange = dice.randint(*nominal.flange) * TENTH
    sizes = {"basket": basket, "basket short": short, "flange": flange, "flange short": flange - basket + short}
    sizes |= {"depth": dice.randint(*nominal.depth) * TENTH, "front": dice.randint(*nominal.front) * TENTH}
    if shop and dice.random() < 0.3:
        sizes["excursion"] = dice.randint(5, 60) * TENTH
    speaker = Speaker(name, sizes)
    return Speaker(name, sizes, speaker_record(dice, shop, speaker, nominal.words) if shop else None)
