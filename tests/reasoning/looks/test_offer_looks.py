from collections.abc import Sequence
from fractions import Fraction
from itertools import product
from typing import Any

import pytest

from bezelbook.kinds.record import Record
from bezelbook.reasoning.looks.imagined import Imagined
from bezelbook.reasoning.looks.look import CHASSIS, Promise, Todo
from bezelbook.reasoning.looks.pair import Pair, open_pairs
from tests.reasoning import making

HALF, WHOLE = Fraction(1, 2), Fraction(1)
# So deep that a plug of 32 mm is near the edge behind a body of about 110.
NEAR = making.measured("wire", making.reading("depth", "142 ± 1 mm"))
FRAME = (making.roomy(), NEAR)
USES = [{"vehicle": making.CAR, "place": making.HOLE}]


def box(named: str = "box", depth: float = 110, **content: Any) -> Record:
    sizes = {"body_width": "178", "body_height": "100", "nose_width": "170", "nose_height": "95", "body_depth": depth}
    known = {size: f"{length} ± 0.2 mm caliper" for size, length in sizes.items()}
    return making.unit(named, **{**known, "plug_and_bend": "32 ± 1 mm caliper", **content})


def promised(*records: Record, asked: bool = False) -> dict[tuple[str, tuple[str, ...]], dict[str, Promise]]:
    """What each offer promises, by unit and mounts: for each unit."""
    place = making.place(making.book(*records))
    found: dict[tuple[str, tuple[str, ...]], dict[str, Promise]] = {}
    for todo, pair, promise in Imagined(place).offering(open_pairs(place), lambda _: asked):
        found.setdefault((todo.about or "", todo.mounts), {})[pair.unit] = promise
    return found


def todos(*records: Record) -> list[Todo]:
    place = making.place(making.book(*records))
    return [todo for todo, _, _ in Imagined(place).offering(open_pairs(place), lambda _: False)]


def test_what_is_too_close_is_offered_up_and_that_settles_it() -> None:
    [todo] = todos(box(), *FRAME)
    assert todo == Todo(
        making.CAR,
        making.HOLE,
        ((),),
        "offer up box with no mount, nothing cut, loom aside, plugs on",
        "the unit itself",
        5,
        CHASSIS,
        "box",
    )
    assert promised(box(), *FRAME) == {("box", ()): {"box": Promise(WHOLE, WHOLE)}}


def test_what_was_not_read_yet_is_offered_up_only_where_somebody_asked() -> None:
    assert promised(box()) == {}
    assert promised(box(), asked=True) == {("box", ()): {"box": Promise(WHOLE, WHOLE)}}


def test_what_is_firm_is_not_offered_up() -> None:
    deep = making.measured("wire", making.reading("depth", "205 ± 1 mm"))
    assert promised(box(), making.roomy(), deep, asked=True) == {}


def test_a_yes_settles_what_is_smaller_and_a_no_what_is_larger() -> None:
    short = {"plug_and_bend": "30 ± 0.1 mm caliper"}
    found = promised(box("short", 111.5, **short), box("deep", 112.5, **short), *FRAME)
    assert found["deep", ()]["short"] == Promise(HALF, HALF)
    assert found["short", ()]["deep"] == Promise(HALF, HALF)


def test_where_a_plug_leaves_elsewhere_or_anywhere_its_depth_shows_nothing_of_another() -> None:
    at_left = box("left", 111, plug_exit="left")
    assert promised(box(), at_left, *FRAME)["left", ()] == {"left": Promise(WHOLE, WHOLE)}
    anywhere = box("anywhere", 112, plug_exit=None)
    assert promised(box(), anywhere, *FRAME)["anywhere", ()] == {"anywhere": Promise(WHOLE, WHOLE)}


def test_a_unit_of_which_nothing_is_known_says_nothing_of_another() -> None:
    blank = box("blank", body_depth="110 mm printed")
    found = promised(box(), blank, *FRAME, asked=True)
    assert found["blank", ()] == {"blank": Promise(WHOLE, WHOLE)}


def test_a_yes_with_less_room_is_a_yes_with_more_and_a_no_the_other_way_round() -> None:
    flush, proud = making.mount("flush", made_for=USES), making.mount("proud", made_for=USES, proud="+1 mm caliper")
    found = promised(flush, proud, box(), *FRAME)
    # By a yes with the flush one both are settled, and by a no with the proud one.
    assert found == {
        ("box", ("flush",)): {"box": Promise(HALF, HALF)},
        ("box", ("proud",)): {"box": Promise(HALF, HALF)},
    }


def test_a_unit_that_is_open_with_several_mounts_takes_all_of_them() -> None:
    """Nobody knows by how much either holds it out, so what one shows says nothing of the other."""
    one, other = (making.record("mounts", name, {"name": name, "mount_kind": "kit", "made_for": USES}) for name in "ab")
    found = promised(one, other, box(), making.roomy(), asked=True)
    promise = found["box", ("a",)]["box"]
    assert (promise.alone, promise.share) == (Fraction(0), WHOLE)
    assert [todo.mounts for todo in promise.others] == [("b",)]


def test_a_mount_that_only_a_yes_would_settle_counts_among_those_that_it_takes_as_well() -> None:
    """By a yes with the flush one it goes in with the proud one too, by a no nobody knows; of the blank one never."""
    kits = [making.mount("flush", made_for=USES), making.mount("proud", made_for=USES, proud="+1 mm caliper")]
    blank = making.record("mounts", "blank", {"name": "blank", "mount_kind": "kit", "made_for": USES})
    promise = promised(*kits, blank, box(), *FRAME)["box", ("flush",)]["box"]
    assert (promise.alone, promise.share) == (Fraction(0), WHOLE)
    assert {todo.mounts for todo in promise.others} == {("proud",), ("blank",)}


def test_only_the_mounts_with_which_it_is_open_are_offered() -> None:
    flush, deep = making.mount("flush", made_for=USES), making.mount("deep", made_for=USES, proud="+20 mm caliper")
    assert set(promised(flush, deep, box(), *FRAME)) == {("box", ("flush",))}


def test_an_offer_says_nothing_of_another_build() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    place = making.place(making.book(car, box(), box("deep", 110.2), *FRAME))
    for todo, pair, _ in Imagined(place).offering(open_pairs(place), lambda _: False):
        assert todo.builds == (pair.build,)


@pytest.mark.parametrize("verdict", ["goes in", "does not"])
def test_what_an_offer_settles_the_book_answers_once_it_is_written_down(verdict: str) -> None:
    units = [box(f"u{tenth}", tenth / 10, plug_and_bend="30 ± 0.1 mm caliper") for tenth in range(1100, 1140, 5)]
    place = making.place(making.book(*units, *FRAME))
    opened = open_pairs(place)
    found = promised(*units, *FRAME)
    assert len(found) == len(opened) > 3
    settled = 0
    for unit, _ in found:
        offer = making.tried("offer", what=unit, verdict=verdict, sure="dry-fitted")
        left = {pair.unit for pair in open_pairs(making.place(making.book(*units, *FRAME, offer)))}
        firm = {pair.unit for pair in opened} - left
        smaller = {other for other in found[unit, ()] if other <= unit}
        said = smaller if verdict == "goes in" else {unit, *(found[unit, ()].keys() - smaller)}
        assert said <= firm
        settled += len(said)
    assert settled > len(opened)


def test_a_pair_is_offered_by_its_own_name() -> None:
    place = making.place(making.book(box(), *FRAME))
    assert {pair for _, pair, _ in Imagined(place).offering(open_pairs(place), lambda _: False)} == {
        Pair(making.CAR, making.HOLE, (), "box")
    }


def test_a_body_that_goes_in_with_a_plug_that_may_leave_anywhere_shows_nothing_of_a_plug() -> None:
    short: dict[str, Any] = {"plug_and_bend": "30 ± 0.1 mm caliper"}
    found = promised(box("short", 111.5, **short), box("anywhere", 112.5, **short, plug_exit=None), *FRAME, asked=True)
    assert found == {
        ("short", ()): {"short": Promise(WHOLE, WHOLE)},
        ("anywhere", ()): {"anywhere": Promise(WHOLE, WHOLE)},
    }


def test_with_mounts_that_hold_out_alike_one_offer_is_as_good_as_the_other() -> None:
    one, other = (making.mount(name, made_for=USES) for name in "ab")
    found = promised(one, other, box(), *FRAME)
    assert found == {("box", (name,)): {"box": Promise(WHOLE, WHOLE)} for name in "ab"}


def test_a_mount_that_holds_out_nobody_knows_how_far_shows_nothing_of_one_that_is_flush() -> None:
    flush = making.mount("flush", made_for=USES)
    blank = making.record("mounts", "blank", {"name": "blank", "mount_kind": "kit", "made_for": USES})
    found = promised(flush, blank, box(), *FRAME)
    assert {(mounts, promise.alone) for (_, mounts), of in found.items() for promise in of.values()} == {
        (("flush",), Fraction(0)),
        (("blank",), Fraction(0)),
    }


# By how many tenths of a millimetre each kit holds out, at least and at most.
KITS = {"flush": (0, 0), "proud": (8, 12), "near": (3, 7)}
# How deep each unit is with its plug and bend, in tenths of a millimetre, each ± 3; the first differs by just 6 from
# the second, so that all the room that one may ask for is enough for the other.
DEEP = {"u1109": 1409, "u1115": 1415, "u1122": 1422, "u1128": 1428}
ROOM = (1410, 1430)
Fit = tuple[str, str]


def asks(fit: Fit) -> tuple[int, int]:
    """The least and the most that a unit with a kit asks of the bare room, in tenths of a millimetre."""
    (out, at_most), deep = KITS[fit[1]], DEEP[fit[0]]
    return deep - 3 - at_most, deep + 3 - out


def shown(larger: Fit, smaller: Fit) -> bool:
    """Whether room for the one is certainly room for the other."""
    if larger[0] == smaller[0]:
        return larger == smaller or KITS[larger[1]][1] <= KITS[smaller[1]][0]
    if larger[1] == smaller[1]:  # however far this very kit holds out
        return DEEP[larger[0]] - 3 >= DEEP[smaller[0]] + 3
    return asks(larger)[0] >= asks(smaller)[1]


def reckoned(fits: Sequence[Fit], offered: Fit) -> dict[str, Fraction]:
    """By arithmetic alone: in which share of its outcomes, a yes and a no, an offer settles each unit."""
    found = {}
    for unit in DEEP:
        theirs = [fit for fit in fits if fit[0] == unit]
        yes, no = all(shown(offered, fit) for fit in theirs), all(shown(fit, offered) for fit in theirs)
        found[unit] = Fraction(yes + no, 2) if theirs else Fraction(0)
    return {unit: share for unit, share in found.items() if share}


@pytest.mark.parametrize("kits", [("flush",), ("proud",), ("flush", "proud"), ("flush", "near"), ("proud", "near")])
def test_what_an_offer_shows_of_other_units_and_other_kits_is_what_arithmetic_says(kits: tuple[str, ...]) -> None:
    shape: dict[str, Any] = {"plug_and_bend": "30 ± 0.1 mm caliper"}
    units = [box(name, (deep - 300) / 10, **shape) for name, deep in DEEP.items()]
    proud = {"flush": "flush", "proud": "+1 mm caliper", "near": "+0.5 mm caliper"}
    mounts = [making.mount(kit, made_for=USES, proud=proud[kit]) for kit in kits]
    found = promised(*mounts, *units, *FRAME, asked=True)
    fits = [fit for fit in product(DEEP, kits) if asks(fit)[1] > ROOM[0] and asks(fit)[0] < ROOM[1]]
    assert found.keys() == {(unit, (kit,)) for unit, kit in fits}
    for unit, kit in fits:
        alone = {other: promise.alone for other, promise in found[unit, (kit,)].items() if promise.alone}
        assert alone == reckoned(fits, (unit, kit))
