"""The single things, any one of which would make it a yes; each is put to the book again."""

from typing import Any

import pytest

from bezelbook.kinds.record import Record
from bezelbook.reasoning.conditions import Condition, always, conditions
from bezelbook.values.words import NINTHS
from tests.reasoning.making import (
    CAR,
    HOLE,
    book,
    length,
    measured,
    mount,
    place,
    reading,
    resolved,
    roomy,
    shop,
    split,
    tried,
    unit,
    vehicle,
)

BUILDS = vehicle(splits={"build": {"values": {"early": {"tell": "Round vents."}, "late": {}}}})
DEEP = measured("deep", reading("depth", "205 ± 3 mm"))


def found(*records: Record, **question: Any) -> list[Condition]:
    """The conditions for the box, or for whatever is asked; each that can be put as a question must be a yes."""
    of = book(*records)
    here = place(of)
    made = list(conditions(here, resolved(of, **(question or {"unit": "box"}))))
    assert all(one.narrowed is None or always(here, one.narrowed) for one in made)
    return made


def words(*records: Record, **question: Any) -> list[str]:
    return [one.words for one in found(*records, **question)]


def test_a_build_that_would_make_it_a_yes_is_named_with_its_tell() -> None:
    (early,) = found(BUILDS, unit(), tried(splits={"build": "early"}))
    assert (early.words, early.look, early.split) == (
        "the build is early",
        "how to tell: Round vents.",
        ("build", "early"),
    )
    (late,) = found(BUILDS, unit(), tried(splits={"build": "late"}))
    assert (late.words, late.look) == ("the build is late", "how to tell: nobody has written how to tell")


def test_only_the_split_that_matters_is_named() -> None:
    car = vehicle(splits={"build": split("early", "late"), "hand": split("left", "right")})
    fitted = [tried(hand, splits={"build": "late", "hand": hand}) for hand in ("left", "right")]
    assert words(car, unit(), *fitted) == ["the build is late"]


def test_a_value_of_no_car_that_is_left_is_not_named() -> None:
    car = vehicle(splits={"build": split("early", "late", "last")}, never_built=[{"build": "early"}])
    assert words(car, unit(), tried(splits={"build": "late"})) == ["the build is late"]


def test_a_split_that_bears_on_this_place_alone_may_be_the_condition() -> None:
    car = vehicle(splits={"build": split("early", "late", bears_on={"places": [HOLE]})})
    assert words(car, unit(), tried(splits={"build": "late"})) == ["the build is late"]


def test_with_one_mount_asked_about_no_mount_is_a_condition() -> None:
    assert words(unit(), mount(), DEEP, unit="box", mounts=("kit",)) == [
        "the opening is clear for it: height at least 101 mm (3.98 in), width at least 179 mm (7.05 in)"
    ]


PROUD = mount("proud", name="the proud kit", proud="40 mm caliper", made_for=[{"vehicle": CAR, "place": HOLE}])
FLUSH = mount("flush", name="the flush kit", made_for=[{"vehicle": CAR, "place": HOLE}])


def test_of_two_mounts_the_one_that_makes_it_a_yes_is_named() -> None:
    sizes = {"depth": length("180 mm"), "plug": length("32 mm")}
    (only,) = found(PROUD, FLUSH, DEEP, sizes=sizes, exit="right")
    assert (only.words, only.look) == ("it is fitted with the proud kit", "choose the mount")
    assert only.narrowed is not None
    assert [stack.key for stack in only.narrowed.stacks] == [("proud",)]


def test_printed_sizes_are_a_condition_only_if_their_figures_would_go_in() -> None:
    printed = {"body_width": "178 mm printed", "body_depth": "110 mm printed"}
    (only,) = found(unit(**printed), DEEP, roomy())
    assert only.words == "its printed sizes are true (width 178 mm (7.01 in), depth 110 mm (4.33 in))"
    assert only.look == "put a caliper on it, 2 min on the bench"
    assert only.narrowed is not None
    assert {need: span.high for need, span in only.narrowed.needs.spans.items() if need in ("width", "depth")} == {
        "width": 178_000_000,
        "depth": 110_000_000,
    }
    assert found(unit(body_depth="190 mm printed"), DEEP, roomy()) == []


def test_an_unknown_plug_may_need_no_more_than_is_left_behind_the_body() -> None:
    (only,) = found(DEEP, sizes={"depth": length("150 mm")}, exit="right")
    assert (only.words, only.look) == (
        "its plug and bend need no more than 52 mm (2.05 in)",
        "plug it in on the bench and rule it, 3 min",
    )
    assert only.narrowed is not None
    assert only.narrowed.needs.spans["plug"].high == 150_000_000
    house = shop(clearances={"depth": "3 mm"})
    (only,) = found(house, DEEP, sizes={"depth": length("150 mm")}, exit="right")
    assert only.words == "its plug and bend need no more than 49 mm (1.93 in)"


def test_what_is_left_depends_on_where_the_plug_leaves() -> None:
    shallow = [reading("depth", "160 ± 3 mm", ninth) for ninth in ("lower-left", "lower")]
    rest = [reading("depth", "205 ± 3 mm", ninth) for ninth in NINTHS if ninth not in ("lower-left", "lower")]
    (only,) = found(measured("m", *shallow, *rest), sizes={"depth": length("150 mm")})
    assert only.words == (
        "its plug and bend need no more than 7 mm (0.28 in)"
        " (up to 52 mm (2.05 in) if it does not leave at the lower-left and lower)"
    )


def test_the_least_that_any_way_of_fitting_leaves_is_what_a_plug_may_need() -> None:
    made = words(PROUD, FLUSH, DEEP, sizes={"depth": length("150 mm")}, exit="right")
    assert made == ["its plug and bend need no more than 52 mm (2.05 in)"]


def test_a_plug_is_asked_about_even_of_a_thing_that_was_tried_in_another_state() -> None:
    (only,) = found(unit(plug_and_bend=None), DEEP, roomy(), tried(cut="one rib", plugs="off"))
    assert only.words == "its plug and bend need no more than 91 mm (3.58 in)"


def test_an_unknown_plug_is_no_condition_where_the_body_itself_is_in_doubt() -> None:
    assert found(DEEP, sizes={"depth": length("205 mm")}, exit="right") == []
    assert found(unit(plug_and_bend=None, body_depth=None), DEEP, roomy()) == []


def test_all_ninths_that_nobody_measured_count_as_one_thing() -> None:
    sizes = {"depth": length("110 mm"), "plug": length("32 mm")}
    (only,) = found(sizes=sizes, exit="right")
    assert (only.words, only.look) == (
        "it is at least 142 mm (5.59 in) deep",
        "depth gauge from the sub-dash face, 2 min with the hole open",
    )
    some = measured("m", reading("depth", "205 ± 3 mm", "right", "centre", "upper"))
    assert words(some, sizes=sizes, exit="right") == [
        "it is at least 110 mm (4.33 in) deep everywhere but at the upper, centre and right"
    ]
    most = measured("m", reading("depth", "205 ± 3 mm", *(ninth for ninth in NINTHS if ninth not in ("left", "lower"))))
    assert words(most, sizes=sizes, exit="right") == ["it is at least 110 mm (4.33 in) deep at the left and lower"]


@pytest.mark.parametrize("proud", ["6 ± 1 mm", "-20 ± 1 mm", "-20 mm caliper"])
def test_a_depth_seen_through_a_mount_is_asked_for_from_the_mount(proud: str) -> None:
    sizes = {"depth": length("110 mm"), "plug": length("32 mm")}
    exact = shop(tools={"bench_caliper": "0 mm"})
    (only,) = found(exact, mount(proud=proud), sizes=sizes, exit="right", mounts=("kit",))
    assert (only.words, only.look) == (
        "it is at least 142 mm (5.59 in) deep",
        "depth gauge from the kit seat, 2 min with the hole open",
    )


def test_where_a_mount_is_a_choice_the_depth_counts_from_either_face() -> None:
    seen = tried(what="shelf", sizes={"width": "100 mm"})
    sizes = {"depth": length("110 mm"), "plug": length("32 mm")}
    (only,) = found(seen, mount(made_for=[{"vehicle": CAR, "place": HOLE}]), sizes=sizes, exit="right")
    assert (only.words, only.look) == (
        "it is at least 142 mm (5.59 in) deep",
        "depth gauge from the kit seat or the sub-dash face, 2 min with the hole open",
    )


def test_the_width_and_height_of_the_hole_count_as_one_thing() -> None:
    (only,) = found(unit(), DEEP)
    assert (only.words, only.look) == (
        "the opening is clear for it: height at least 101 mm (3.98 in), width at least 179 mm (7.05 in)",
        "caliper at three points, 2 min with the hole open",
    )


def test_what_is_unknown_twice_over_is_no_single_condition() -> None:
    assert found(unit()) == []


def test_a_house_clearance_is_part_of_what_must_be_there() -> None:
    house = shop(clearances={"width": "1 mm", "height": "0.5 mm", "depth": "3 mm"})
    sizes = {"depth": length("110 mm"), "plug": length("32 mm")}
    assert words(house, sizes=sizes, exit="right") == ["it is at least 145 mm (5.71 in) deep"]
    ruled = words(house, DEEP, sizes={"depth": length("200 mm")}, plugs="off", cut="one rib")
    assert ruled == ["it is at least 203 mm (7.99 in) deep"]


def test_where_it_is_exactly_deep_enough_nobody_has_to_look() -> None:
    shelf = tried(what="shelf", sizes={"depth": "111 ± 1 mm"}, plugs="off")
    sizes = {"depth": length("110 mm"), "plug": length("32 mm")}
    assert words(shelf, sizes=sizes, exit="right") == ["it is at least 142 mm (5.59 in) deep at the right"]


@pytest.mark.parametrize(
    ("blank", "made"),
    [
        ({"mounts": None}, "with no mount"),
        ({"cut": None}, "with nothing cut"),
        ({"splits": {}}, "in a car of this build (late)"),
    ],
)
def test_a_yes_that_leaves_one_thing_unsaid_is_a_condition(blank: dict[str, Any], made: str) -> None:
    note = tried("n", **{"splits": {"build": "late"}, "author": "rk"} | blank)
    (only,) = found(BUILDS, unit(), note, unit="box", splits={"build": "late"}, mounts=())
    assert (only.words, only.look) == (f"the note n was made {made}", "ask its author (rk)")


def test_a_yes_that_leaves_one_thing_unsaid_is_a_condition_beside_what_others_tell() -> None:
    front = {"width": "200 ± 1 mm", "height": "120 ± 1 mm"}
    wide = tried("wide", what="frame", sizes=front, cut=None)
    assert words(DEEP, unit(), wide) == [
        "the opening is clear for it: height at least 101 mm (3.98 in), width at least 179 mm (7.05 in)",
        "the note wide was made with nothing cut",
    ]


def test_a_build_on_two_axes_is_said_with_both() -> None:
    car = vehicle(splits={"build": split("early", "late"), "hand": split("left", "right")})
    note = tried("n", splits={"hand": "left"})
    made = words(car, unit(), note, unit="box", splits={"build": "late", "hand": "left"}, mounts=())
    assert made == ["the note n was made in a car of this build (late left)"]


def test_a_yes_that_leaves_two_things_unsaid_is_none() -> None:
    assert found(unit(), tried(mounts=None, cut=None), unit="box", mounts=()) == []


def test_a_yes_that_would_not_cover_it_is_none_however_it_was_made() -> None:
    assert found(unit(), tried(what="small", sizes={"depth": "50 ± 1 mm"}, cut=None)) == []


def test_a_reading_that_leaves_its_build_unsaid_is_no_yes_that_does() -> None:
    sizes = {"depth": length("110 mm"), "plug": length("32 mm")}
    assert words(BUILDS, DEEP, sizes=sizes, exit="right", splits={"build": "late"}) == [
        "it is at least 142 mm (5.59 in) deep"
    ]


def test_an_unsigned_note_is_said_to_be_unsigned() -> None:
    (only,) = found(unit(), tried(cut=None))
    assert only.look == "ask its author (not signed)"


def test_what_went_in_after_a_cut_goes_in_if_that_may_be_cut() -> None:
    (only,) = found(unit(), tried(cut="one rib"))
    assert (only.words, only.look) == (
        "this may be cut: one rib",
        "agree it in writing with the customer first",
    )
    assert only.narrowed is not None
    assert only.narrowed.cut == "one rib"
    assert words(unit(), tried(verdict="goes in if", cut="one rib", condition="a rib is cut")) == [only.words]


def test_a_cut_that_would_not_do_is_no_condition() -> None:
    assert found(unit(), tried(what="small", sizes={"depth": "50 ± 1 mm"}, cut="one rib")) == []


def test_where_accounts_differ_a_condition_holds_in_every_one() -> None:
    car = [tried("yes", cut="one rib"), tried("no", cut="one rib", verdict="does not")]
    assert found(unit(), *car) == []
