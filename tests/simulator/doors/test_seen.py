"""What the shop saw go in, by hand: a speaker 12 high whose cone comes 4 further out, where 14 or 20 are in front."""

import pytest

from tests.simulator.box_world import MM, UNCUT, Axis, Platform, Shop, World
from tests.simulator.doors.questions import DoorAsk
from tests.simulator.doors.seen import least_front
from tests.simulator.doors.truth import outcomes, told_excursion
from tests.simulator.doors.world import Car, Door, Foam, Ring, Sizes, Speaker
from tests.simulator.notes import Content, Note

HOLE = {"long way": 140 * MM, "short way": 140 * MM, "fixed": 80 * MM}
FLANGE = {"flange": 150 * MM, "flange short": 150 * MM}
SIZES = {"basket": 130 * MM, "basket short": 130 * MM, "depth": 60 * MM, "front": 12 * MM, "excursion": 4 * MM}
SPEAKER = Speaker("six", SIZES | FLANGE, {"excursion": "4 mm caliper"})
RING, FOAM = Ring("ring", 2 * MM, {}), Foam("foam", MM)
EARLY: Car = (("build", "early"),)
LATE: Car = (("build", "late"),)


def room(front: int) -> Sizes:
    return HOLE | {"front": front * MM}


ROOMS: dict[tuple[Car, str], Sizes] = {(EARLY, UNCUT): room(14), (LATE, UNCUT): room(20), (EARLY, "the rib"): room(14)}
SHELF = Door("shelf", "parcel shelf", "centre", None, "inside face of panel", (4, 0), ("the rib",), ROOMS)
BUILD = Axis("build", ("early", "late"), {"early": (1,), "late": (2,)})
CAR = Platform("car", 2, (BUILD,), (), {EARLY: (1,), LATE: (2,)}, (), (SHELF,))
WORLD = World(Shop({}, {}), (CAR,), (), (), (RING,), (FOAM,), (SPEAKER,))
FITTED: Content = {"form": "tried", "vehicle": "car", "place": "shelf", "what": "six", "sure": "fitted"}
FITTED |= {"verdict": "goes in", "mounts": "none", "splits": dict(EARLY), "cut": UNCUT, "gasket": "none"}


def seen(**changed: object) -> int | None:
    true = FITTED | changed
    return least_front(WORLD, [Note("note", true, in_full=true)], CAR, "shelf", "six")


@pytest.mark.parametrize(
    ("changed", "front"),
    [
        ({}, 14),
        ({"mounts": ["ring"]}, 12),
        ({"mounts": ["ring"], "gasket": "foam"}, 11),
        ({"gasket": "a bead of putty"}, 14),
        ({"splits": dict(LATE)}, 20),
        ({"cut": "the rib"}, 14),
        ({"mounts": ["something home made"]}, None),
        ({"sure": "told"}, None),
        ({"verdict": "does not"}, None),
        ({"what": "seven"}, None),
        ({"place": "door"}, None),
    ],
)
def test_the_room_in_which_it_was_seen_to_go_in(changed: Content, front: int | None) -> None:
    assert seen(**changed) == (None if front is None else front * MM)


def test_of_several_the_one_with_least_room_counts() -> None:
    notes = [
        Note(mounts[0], true, in_full=true) for mounts in (["ring"], "none") for true in [FITTED | {"mounts": mounts}]
    ]
    assert least_front(WORLD, notes, CAR, "shelf", "six") == 12 * MM


@pytest.mark.parametrize(
    ("least", "found"), [(None, {"goes in", "does not"}), (14, {"goes in"}), (15, {"goes in", "does not"})]
)
def test_where_it_was_seen_nobody_asks_about_its_cone(least: int | None, found: set[str]) -> None:
    ask = DoorAsk(CAR, "shelf", (EARLY,), {}, None, (), speaker=SPEAKER)
    assert outcomes(ask, [()], least and least * MM) == found


@pytest.mark.parametrize(
    ("said", "counts"),
    [("4.1 mm caliper", 4), ("3 mm ± 1 mm", 4), ("3 mm printed", 3), ("3 mm", 3), ("5 mm printed", 4), (None, 0)],
)
def test_how_far_its_cone_comes_out_counts_as_far_as_anybody_knows(said: str | None, counts: int) -> None:
    speaker = Speaker("six", SIZES, {} if said is None else {"excursion": said})
    assert told_excursion(speaker) == counts * MM
