"""Kits and units made up from dice, each with the record that the shop wrote of it on the bench."""

from collections.abc import Sequence
from random import Random

from tests.simulator.box_world import FRONT, MM, NINTHS, Kit, Platform, Shop, Unit
from tests.simulator.saying import measured_on_the_bench, read_off, rounded_badly

TENTH = MM // 10
# The ninths behind the hole of a kit for something low; a plug leaves at one of them.
MIDDLE_ROW = NINTHS[3:6]
FIELD = {
    "width": "body_width",
    "height": "body_height",
    "depth": "body_depth",
    "nose width": "nose_width",
    "nose height": "nose_height",
    "rear": "rear_protrusion",
    "plug": "plug_and_bend",
}


def kits_of(dice: Random, shop: Shop, platforms: Sequence[Platform]) -> list[Kit]:
    """One to three kits for each opening, and one that was made for none in particular."""
    kits = [
        draw_kit(dice, shop, f"kit-{number}-{platform.name}-{opening.place}", platform, opening.place)
        for platform in platforms
        for opening in platform.openings
        for number in range(dice.choice((1, 2, 2, 3)))
    ]
    return [*kits, draw_kit(dice, shop, "any-kit")]


def draw_kit(dice: Random, shop: Shop, name: str, platform: Platform | None = None, place: str = "") -> Kit:
    """A kit that is flush, proud or recessed, with a hole of its own or none, over all nine ninths or some."""
    offset = dice.choice((0, 0, 0, dice.randint(10, 200), -dice.randint(10, 120))) * TENTH
    holes = {size: dice.randint(*limits) * TENTH for size, limits in HOLES.items() if dice.random() < CHANCE[size]}
    ninths = dice.choice((NINTHS, NINTHS, NINTHS, MIDDLE_ROW, NINTHS[:6], NINTHS[3:]))
    uses = []
    if platform and dice.random() < 0.8:
        axis = platform.axes[0]
        only = ((axis.name, dice.choice(axis.values)),) if dice.random() < 0.3 else ()
        uses = [(platform.name, place, only)]
    kit = Kit(name, offset, holes, ninths, tuple(uses))
    return Kit(name, offset, holes, ninths, tuple(uses), kit_record(dice, shop, kit))


HOLES = {"width": (1780, 1850), "height": (1000, 1110), "nose width": (1690, 1800), "nose height": (950, 1040)}
CHANCE = {"width": 0.7, "height": 0.7, "nose width": 0.25, "nose height": 0.25}


def kit_record(dice: Random, shop: Shop, kit: Kit) -> dict[str, object]:
    """What the file of a kit says."""
    house = shop.tools["bench_caliper"]
    presents: dict[str, object] = {
        size.replace(" ", "_"): size_words(dice, hole, house, printed=0.1) for size, hole in kit.holes.items()
    }
    if kit.ninths != NINTHS:
        presents["ninths"] = list(kit.ninths)
    said = measured_on_the_bench(dice, kit.offset, house, signed=True)
    if not kit.offset:
        offset = {"proud": "flush"}
    elif kit.offset > 0 and dice.random() < 0.2:
        offset = {"thickness": said.removeprefix("+")}
    else:
        offset = dice.choice(({"proud": said}, {"proud": said}, {"proud": said}, {}))
    made_for = [
        {"vehicle": vehicle, "place": place} | ({"splits": dict(only)} if only else {})
        for vehicle, place, only in kit.made_for
    ]
    record: dict[str, object] = {"name": kit.name.replace("-", " "), "mount_kind": "kit", **offset}
    return record | ({"presents": presents} if presents else {}) | ({"made_for": made_for} if made_for else {})


def draw_unit(dice: Random, shop: Shop, name: str, *, recorded: bool) -> Unit:
    """A unit that is short or deep; one without a record lives in the notes that mention it."""
    sizes = {
        "width": dice.choice((1780, 1780, 1785, 1800, 1820)) * TENTH + dice.randint(-10, 10) * TENTH,
        "height": dice.choice((500, 1000, 1000, 1020, 1060)) * TENTH + dice.randint(-5, 5) * TENTH,
        "depth": dice.randint(900, 2000) * TENTH,
        "nose width": dice.randint(1680, 1760) * TENTH,
        "nose height": dice.randint(940, 1000) * TENTH,
        "plug": dice.randint(50, 500) * TENTH,
    }
    if recorded and dice.random() < 0.25:
        sizes["rear"] = dice.randint(20, 250) * TENTH
    exit_ = dice.choice((*MIDDLE_ROW, *MIDDLE_ROW, *NINTHS))
    unit = Unit(name, sizes, exit_)
    return Unit(name, sizes, exit_, unit_record(dice, shop, unit) if recorded else None)


def unit_record(dice: Random, shop: Shop, unit: Unit) -> dict[str, object]:
    """What the file of a unit says: most sizes by caliper, some as printed, some not at all."""
    house = shop.tools["bench_caliper"]
    printed, blank = dice.choice(((0.0, 0.02), (0.0, 0.02), (0.05, 0.1), (0.6, 0.2)))
    record: dict[str, object] = {"name": unit.name.replace("-", " "), "size_class": "double"}
    for size, true in unit.sizes.items():
        if size == "rear" or dice.random() >= blank:
            record[FIELD[size]] = size_words(dice, true, house, printed=printed)
    if unit.exit not in MIDDLE_ROW or dice.random() < 0.85:
        record["plug_exit"] = unit.exit
    return record


def size_words(dice: Random, true: int, house: int, *, printed: float) -> str:
    """A size as its record has it: measured on the bench, or as printed, which is no size at all."""
    if dice.random() < printed:
        return f"{rounded_badly(dice, true)}{dice.choice((' printed', ' printed', ''))}"
    return measured_on_the_bench(dice, true, house)


def in_a_note(size: str) -> str:
    """The same typed into a note, where what does not say how it is known was measured: what is printed says so."""
    return size if any(word in size for word in ("caliper", "±", "printed")) else f"{size} printed"


def typed_sizes(dice: Random, shop: Shop, unit: Unit) -> dict[str, object]:
    """The sizes that somebody types into a note about a thing without a record; none of its rear, for it has none.

    A size that says neither ± nor caliper was measured with some tool, and its error is smaller than the house has it.
    """
    said: dict[str, object] = {}
    for size in ("depth", *FRONT, "plug"):
        if size == "depth" or dice.random() < 0.8:
            name = "plug_and_bend" if size == "plug" else size.replace(" ", "_")
            true = unit.sizes[size]
            careful = in_a_note(size_words(dice, true, shop.tools["bench_caliper"], printed=0.05))
            said[name] = careful if dice.random() < 0.8 else read_off(dice, true, shop.tools["none"])
    return said | ({"plug_exit": unit.exit} if unit.exit not in MIDDLE_ROW or dice.random() < 0.7 else {})
