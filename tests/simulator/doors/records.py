"""What the shop wrote of its speakers, rings and foams when they lay on the bench."""

from random import Random

from tests.simulator.box_world import Shop
from tests.simulator.doors.world import Ring, Speaker
from tests.simulator.draw_parts import in_a_note, size_words
from tests.simulator.saying import in_mm, measured_on_the_bench, read_off

FIELD = {
    "basket": "basket",
    "basket short": "basket_short",
    "depth": "mounting_depth",
    "front": "front_height",
    "flange": "flange",
    "flange short": "flange_short",
    "excursion": "excursion",
}
# A hole that somebody asks for instead of the basket.
HOLE = {"basket": "cut_out", "basket short": "cut_out_short"}


def is_oval(speaker: Speaker) -> bool:
    """Whether its two ways differ."""
    return speaker.sizes["basket"] != speaker.sizes["basket short"]


def speaker_record(dice: Random, shop: Shop, speaker: Speaker, nominal: str) -> dict[str, object]:
    """What the file of a speaker says: most sizes by caliper, some as printed, some not at all."""
    house = shop.tools["bench_caliper"]
    printed, blank = dice.choice(((0.0, 0.02), (0.0, 0.02), (0.05, 0.1), (0.5, 0.2)))
    oval = is_oval(speaker)
    record: dict[str, object] = {"name": speaker.name.replace("-", " "), "speaker_kind": "coaxial", "nominal": nominal}
    record |= {"shape": "oval" if oval else "round"}
    by_hole = dice.random() < 0.15
    for size, true in speaker.sizes.items():
        wanted = oval or not size.endswith("short")
        if wanted and ((oval and size.startswith("basket")) or dice.random() >= blank):
            name = HOLE.get(size, FIELD[size]) if by_hole else FIELD[size]
            record[name] = size_words(dice, true, house, printed=printed)
    return record


def typed_sizes(dice: Random, shop: Shop, speaker: Speaker) -> dict[str, object]:
    """The sizes that somebody types into a note about a speaker without a record."""
    said: dict[str, object] = {}
    for size in ("basket", "basket short", "depth", "front"):
        if size == "basket short" and not is_oval(speaker):
            continue
        if size.startswith("basket") or dice.random() < 0.85:
            true = speaker.sizes[size]
            careful = in_a_note(size_words(dice, true, shop.tools["bench_caliper"], printed=0.05))
            said[FIELD[size]] = careful if dice.random() < 0.8 else read_off(dice, true, shop.tools["none"])
    return said


def ring_record(dice: Random, shop: Shop, ring: Ring) -> dict[str, object]:
    """What the file of a ring or a bracket says: always whether it has tabs, not always how wide its hole is."""
    house = shop.tools["bench_caliper"]
    kind = "spacer" if ring.ring else "bracket"
    record: dict[str, object] = {"name": ring.name.replace("-", " "), "mount_kind": kind}
    if ring.ring:
        record["thickness"] = measured_on_the_bench(dice, ring.held, house)
    elif dice.random() < 0.85:
        record["proud"] = "flush" if not ring.held else measured_on_the_bench(dice, ring.held, house, signed=True)
    if not ring.holes or not (ring.ring or ring.tabs or dice.random() < 0.9):
        return record
    ends = {"tabs_in": ring.holes["in"], "tabs_out": ring.holes["out"]} if ring.tabs else {"inner": ring.holes["in"]}
    return record | {name: size_words(dice, hole[0], house, printed=0.05) for name, hole in ends.items()}


def foam_record(dice: Random, name: str, free: int, squeeze: int) -> dict[str, object]:
    """What the file of a foam says: how thick it is, and mostly how far it is squeezed."""
    record: dict[str, object] = {"form": "foam", "name": name.replace("-", " "), "foam_kind": "closed-cell tape"}
    record |= {"free_thickness": in_mm(free)}
    return record | ({"squeeze": f"{squeeze} %"} if dice.random() < 0.8 else {})
