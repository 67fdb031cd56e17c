"""The verdicts in their order: goes in, does not, argued over, goes in if, too close, nobody has tried."""

from typing import Any

import pytest

from bezelbook.kinds.record import Record
from bezelbook.reasoning.verdict import judge, viable
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
    shop,
    split,
    tried,
    unit,
    vehicle,
)

DEEP = measured("deep", reading("depth", "150 ± 3 mm"))
NO = {"verdict": "does not", "sure": "dry-fitted", "reason": "depth"}


def verdict(*records: Record, **question: Any) -> str:
    """The verdict on the box, or on whatever is asked."""
    of = book(*records)
    return judge(place(of), resolved(of, **(question or {"unit": "box"}))).verdict


def bare(*records: Record, depth: str, **question: Any) -> str:
    """The verdict on a body of this depth, its plugs off."""
    return verdict(*records, sizes={"depth": length(depth)}, plugs="off", **question)


def test_what_fits_in_every_room_goes_in() -> None:
    assert verdict(unit(), tried()) == "goes in"
    assert bare(DEEP, depth="147 mm") == "goes in"


def test_what_fits_in_no_room_does_not() -> None:
    assert verdict(unit(), tried(**NO)) == "does not"
    assert bare(DEEP, depth="153 mm") == "does not"


def test_notes_that_cannot_all_be_true_are_argued_over_where_it_matters() -> None:
    assert verdict(unit(), tried("yes"), tried("no", **NO)) == "argued over"


def test_an_argument_that_changes_nothing_is_not_shown_as_one() -> None:
    two = [measured("a", reading("depth", "150 ± 3 mm")), measured("b", reading("depth", "170 ± 3 mm"))]
    assert bare(*two, depth="140 mm") == "goes in"
    assert bare(*two, depth="180 mm") == "does not"
    assert bare(*two, depth="160 mm") == "argued over"


def test_an_argument_is_never_won_by_counting() -> None:
    yeses = [tried(f"yes-{number}", job=f"job-{number}") for number in range(4)]
    assert verdict(unit(), *yeses, tried("no", **NO)) == "argued over"


def test_an_argument_comes_before_a_condition() -> None:
    car = vehicle(splits={"build": split("early", "late")})
    early = [tried("yes", splits={"build": "early"}), tried("no", splits={"build": "early"}, **NO)]
    late = tried("late", splits={"build": "late"})
    assert verdict(car, unit(), *early, late, unit="box", splits={"build": "late"}) == "goes in"
    assert verdict(car, unit(), *early, late) == "argued over"


def test_a_single_blank_that_would_make_it_a_yes_is_a_condition() -> None:
    car = vehicle(splits={"build": split("early", "late")})
    found = judge(place(of := book(car, unit(), tried(splits={"build": "late"}))), resolved(of, unit="box"))
    assert (found.verdict, [one.split for one in found.conditions]) == ("goes in if", [("build", "late")])


def test_a_condition_comes_before_too_close() -> None:
    car = vehicle(splits={"build": split("early", "late")})
    late = tried(what="shelf", sizes={"depth": "160 ± 1 mm"}, plugs="off", splits={"build": "late"})
    early = measured("deep", reading("depth", "150 ± 3 mm"), splits={"build": "early"})
    assert bare(car, early, late, depth="150 mm") == "goes in if"
    assert bare(car, early, depth="150 mm", splits={"build": "early"}) == "too close"


@pytest.mark.parametrize(
    ("depth", "said"),
    [
        ("146 ± 1 mm", "goes in"),
        ("146.1 ± 1 mm", "too close"),
        ("153.9 ± 1 mm", "too close"),
        ("154 ± 1 mm", "does not"),
        ("147 mm", "goes in"),
        ("152.9 mm", "too close"),
    ],
)
def test_a_margin_strictly_within_the_tolerances_is_too_close(depth: str, said: str) -> None:
    assert bare(DEEP, depth=depth) == said


def test_a_margin_under_the_house_clearance_is_too_close() -> None:
    house = shop(clearances={"width": "1 mm", "height": "0.5 mm", "depth": "3 mm"})
    assert [bare(house, DEEP, depth=depth) for depth in ("144 mm", "146 mm", "152.9 mm", "153 mm")] == [
        "goes in",
        "too close",
        "too close",
        "does not",
    ]


@pytest.mark.parametrize(("width", "said"), [("149 mm", "goes in"), ("150 mm", "too close"), ("150.1 mm", "does not")])
def test_a_frame_known_exactly_that_misses_only_what_the_house_likes_is_too_close(width: str, said: str) -> None:
    house = shop(clearances={"width": "1 mm"}, tools={"bench_caliper": "0 mm"})
    kit = mount(presents={"width": "150 mm caliper"})
    assert verdict(house, kit, sizes={"width": length(width)}, mounts=("kit",)) == said


def test_by_how_much_it_went_in_may_make_another_too_close() -> None:
    eight = measured("m", *(reading("depth", "300 ± 3 mm", ninth) for ninth in ("upper", "centre", "lower")))
    rest = [
        reading("depth", "300 ± 3 mm", ninth)
        for ninth in ("upper-left", "upper-right", "right", "lower-left", "lower-right")
    ]
    spare = tried(what="shelf", sizes={"depth": "110 ± 1 mm"}, plugs="off", where=["left"], to_spare="5 ± 1 mm")
    assert bare(eight, measured("n", *rest), spare, depth="115 mm") == "too close"


def test_what_cannot_be_taken_any_way_is_not_too_close() -> None:
    kit = mount(presents={"width": "170 ± 1 mm"})
    sizes = {"width": length("180 mm"), "depth": length("150 mm")}
    assert verdict(kit, DEEP, sizes=sizes, plugs="off", mounts=("kit",)) == "does not"


def test_where_one_build_rules_it_out_the_other_may_still_be_too_close() -> None:
    car = vehicle(splits={"build": split("early", "late")})
    early = measured("early", reading("depth", "100 ± 3 mm"), splits={"build": "early"})
    late = measured("late", reading("depth", "150 ± 3 mm"), splits={"build": "late"})
    assert bare(car, early, late, depth="150 mm") == "too close"


def test_between_a_yes_and_a_no_it_goes_in_if_it_is_deep_enough() -> None:
    fitted = tried(what="a", sizes={"depth": "140 ± 1 mm"}, plugs="off")
    refused = tried("no", what="b", sizes={"depth": "160 ± 1 mm"}, plugs="off", **NO)
    assert bare(fitted, refused, depth="150 mm") == "goes in if"


def test_what_is_measured_and_exactly_enough_is_not_too_close() -> None:
    tall = {"width": length("178 mm"), "depth": length("147 mm")}
    assert verdict(DEEP, sizes=tall) == "nobody has tried"
    assert verdict(DEEP, sizes=tall | {"depth": length("147.1 mm")}) == "too close"


def test_where_one_build_rules_it_out_and_nobody_measured_the_other_it_is_not_too_close() -> None:
    car = vehicle(splits={"build": split("early", "late")})
    early = measured("early", reading("depth", "100 ± 3 mm"), splits={"build": "early"})
    assert bare(car, early, depth="150 mm") == "nobody has tried"


def test_a_reading_that_only_says_how_deep_it_is_at_most_makes_nothing_too_close() -> None:
    assert bare(measured("deep", reading("depth", "150 ± 3 mm"), cut="one rib"), depth="140 mm") == "nobody has tried"


def test_between_a_reading_and_a_no_nobody_measured_so_that_it_is_not_too_close() -> None:
    refused = tried("no", what="b", sizes={"depth": "160 ± 1 mm"}, plugs="off", cut="one rib", where=["left"], **NO)
    assert bare(DEEP, refused, depth="155 mm", cut="one rib") == "nobody has tried"


def test_a_thing_of_unknown_size_is_not_too_close() -> None:
    assert verdict(unit(body_depth=None), DEEP) == "nobody has tried"


def test_where_nothing_is_known_nobody_has_tried() -> None:
    assert verdict(unit()) == "nobody has tried"


MADE = {"made_for": [{"vehicle": CAR, "place": HOLE}]}


def test_a_mount_that_cannot_take_a_thing_is_no_way_to_fit_it() -> None:
    narrow, wide = (
        mount(name, presents={"width": f"{size} ± 1 mm"}, **MADE) for name, size in (("narrow", 170), ("wide", 190))
    )
    of = book(unit(), narrow, wide)
    assert [one.key for one in viable(place(of), resolved(of, unit="box")).stacks] == [("wide",)]


def test_where_no_mount_can_take_it_all_of_them_are_a_no() -> None:
    narrow, slim = (mount(name, presents={"width": "170 ± 1 mm"}, **MADE) for name in ("narrow", "slim"))
    of = book(unit(), narrow, slim)
    asked = viable(place(of), resolved(of, unit="box"))
    assert len(asked.stacks) == 2
    assert judge(place(of), asked).verdict == "does not"
