"""Which notes can all be true: those of honest shops always, and the trade's own clashes never."""

from random import Random

import pytest

from tests.simulator.box_world import MM, NINTHS, UNCUT, Kit, Opening, Platform, Room, Shop, Unit, World
from tests.simulator.changes import changing_doors
from tests.simulator.counter import Draw
from tests.simulator.doors.draw import draw_door_world
from tests.simulator.draw_world import draw_world
from tests.simulator.notes import Content, Note
from tests.simulator.possible.place import Written
from tests.simulator.regimes import HONEST
from tests.simulator.shop_years import notes_of

TRUE = (None, "told twice")


@pytest.mark.parametrize("draw", [draw_world, draw_door_world])
def test_the_strong_notes_of_an_honest_shop_can_all_be_true(draw: Draw) -> None:
    for number in range(5):
        dice = Random(f"possible {number}")
        world = draw(dice)
        written = Written(world, notes_of(dice, world, HONEST, 40))
        for platform in world.platforms:
            for place in (*(one.place for one in platform.openings), *(one.place for one in platform.doors)):
                where = (platform.name, place)
                strong = [note for note in written.strong_at(where) if note.false in TRUE]
                assert written.possible(where, [(note.name, note.content) for note in strong]) is not False


def test_of_a_change_that_the_book_was_not_told_of_some_notes_clash_and_none_do_once_it_is_told() -> None:
    clashes = 0
    for number in range(6):
        dice = Random(f"change {number}")
        world = changing_doors(dice)
        written = Written(world, notes_of(dice, world, HONEST, 60))
        for platform in world.platforms:
            for door in platform.doors:
                where = (platform.name, door.place)
                strong = [note for note in written.strong_at(where) if note.false in TRUE]
                clashes += written.possible(where, [(note.name, note.content) for note in strong]) is False
                full = [(note.name, note.in_full) for note in strong]
                assert written.possible(where, full, platform.axes) is not False
    assert clashes >= 3


# One opening, a body of 170 and one of 185 (common practice, no source).
ROOM = Room({"width": 200 * MM, "height": 120 * MM}, dict.fromkeys(NINTHS, 180 * MM))
RECORD = {"name": "x", "body_width": "178 mm caliper", "body_height": "100 mm caliper", "plug_exit": "right"}
UNITS = tuple(
    Unit(f"unit-{deep}", {}, "right", RECORD | {"body_depth": f"{deep} mm caliper", "plug_and_bend": "5 mm caliper"})
    for deep in (170, 185)
)
PROUD = Kit("proud", 22 * MM, {}, NINTHS, (), {"name": "proud", "proud": "+22 mm caliper"})
OPENING = Opening("dash", bezel=False, cuts=(), rooms={((), UNCUT, "aside"): ROOM}, thing_hit={})
CAR = Platform("sedan", 1, (), (), {(): (1,)}, (OPENING,))
SEDAN = Written(World(Shop({"bench_caliper": MM // 5, "none": 5 * MM}, {}), (CAR,), (PROUD,), UNITS), ())
STATE: Content = {"form": "tried", "vehicle": "sedan", "place": "dash", "cut": "nothing", "plugs": "off"}
NO: Content = STATE | {"what": "unit-170", "verdict": "does not", "reason": "depth", "sure": "dry-fitted"}
YES: Content = STATE | {"what": "unit-185", "verdict": "goes in", "sure": "dry-fitted", "loom": "aside"}


@pytest.mark.parametrize(
    ("no", "yes", "expected"),
    [
        ({"mounts": "none", "loom": "aside"}, {"mounts": "none"}, False),
        ({"mounts": "none", "loom": "aside"}, {"mounts": ["proud"]}, True),
        ({"mounts": "none", "loom": "aside"}, {}, True),
        ({"mounts": "none", "loom": "behind"}, {"mounts": "none"}, True),
        ({"mounts": "none"}, {"mounts": "none"}, True),
        ({"mounts": "none", "loom": "aside", "reason": "width"}, {"mounts": "none"}, True),
        ({"mounts": ["proud"], "loom": "aside"}, {"mounts": "none"}, False),
    ],
)
def test_something_deeper_goes_in_where_something_shallower_did_not(
    no: Content, yes: Content, *, expected: bool
) -> None:
    assert SEDAN.possible(("sedan", "dash"), [("no", NO | no), ("yes", YES | yes)]) is expected


@pytest.mark.parametrize(
    ("frames", "expected"),
    [
        ({}, True),
        ({"nose_width": "175 mm caliper"}, True),
        ({"nose_width": "175 mm caliper", "nose_height": "101 mm caliper"}, False),
    ],
)
def test_a_nose_may_have_met_what_nobody_wrote_of_a_kit(frames: Content, *, expected: bool) -> None:
    """A nose of 170 by 96 in a plain opening: a kit that leaves a size of its frame blank may be too tight there."""
    holes = {name.replace("_", " "): MM for name in frames}
    kit = Kit("kit", 0, holes, NINTHS, (), {"name": "kit", "proud": "flush", "presents": frames})
    says = RECORD | {"body_depth": "110 mm caliper", "nose_width": "170 mm caliper", "nose_height": "96 mm caliper"}
    world = World(SEDAN.world.shop, (CAR,), (kit,), (Unit("unit", {}, "right", says),))
    stopped = NO | {"what": "unit", "mounts": ["kit"], "reason": "nose"}
    assert Written(world, ()).possible(("sedan", "dash"), [("no", stopped)]) is expected


def test_readings_apart_by_more_than_their_give_clash() -> None:
    def depth(reads: str, **more: object) -> Content:
        reading = {"of": "depth", "reads": reads, "zones": ["left"], "datum": "sub-dash face"} | more
        return {"form": "measured", "vehicle": "sedan", "place": "dash", "readings": [reading]}

    def both(one: Content, other: Content) -> bool | None:
        return SEDAN.possible(("sedan", "dash"), [("one", one), ("other", other)])

    assert both(depth("205 mm ± 3 mm"), depth("210 mm ± 3 mm")) is True
    assert both(depth("205 mm ± 3 mm"), depth("211 mm ± 3 mm")) is False
    assert both(depth("205 mm ± 3 mm"), depth("223 mm ± 3 mm", datum="finished bezel face")) is True
    assert both(depth("205 mm ± 3 mm"), depth("223 mm ± 3 mm", zones=["right"])) is True


def test_what_another_note_took_the_place_of_is_left_out() -> None:
    notes = [Note("old", NO), Note("new", NO | {"replaces": "old"}), Note("told", NO | {"sure": "told"})]
    written = Written(SEDAN.world, notes)
    assert [note.name for note in written.strong_at(("sedan", "dash"))] == ["new"]
