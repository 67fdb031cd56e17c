from typing import Any

from bezelbook.reasoning.order.removal import removal_of
from tests.reasoning import making
from tests.reasoning.order.test_fixings import CLAW
from tests.reasoning.order.trim import book, car, first, order, orders, over, pieces, seen

BUILD: dict[str, Any] = {"values": {"early": {}, "late": {}}}
HAND: dict[str, Any] = {"values": {"lefty": {}, "righty": {}}}


def test_what_lies_over_comes_off_first() -> None:
    found = order(car("strip", "bezel"), seen("a", pieces=["bezel"], lies_over=[over("strip", "bezel")]))
    assert pieces(found) == ["strip", "bezel"]
    assert found.over == (("strip", "bezel"),)
    assert found.written
    assert found.lists == 1
    assert found.argued == ()


def test_where_nobody_wrote_anything_there_is_no_order() -> None:
    found = order(car("strip"))
    assert not found.written
    assert (found.steps, found.lists, found.notes) == ((), 0, ())
    assert order(car("strip"), seen("a", pieces=["strip"])).lists == 1


def test_builds_of_which_the_notes_say_the_same_share_an_order() -> None:
    [found] = orders(book(car("strip", splits={"build": BUILD}), seen("a", pieces=["strip"])))
    assert found.builds == ((("build", "early"),), (("build", "late"),))
    assert found.open_notes == ("a",)


def test_an_order_holds_for_the_builds_of_its_notes_only() -> None:
    late = seen("late", pieces=["bezel"], splits={"build": "late"})
    early, other = orders(
        book(car("strip", "bezel", splits={"build": BUILD}), seen("any", pieces=["strip", "bezel"]), late)
    )
    assert (early.builds, pieces(early)) == (((("build", "early"),),), ["strip", "bezel"])
    assert (other.builds, pieces(other)) == (((("build", "late"),),), ["strip", "bezel"])
    assert [step.stands for step in other.steps] == ["asked", "needed"]
    assert other.open_notes == ("any",)


def test_builds_that_are_no_neighbours_share_an_order_too() -> None:
    note = seen("a", pieces=["strip"], splits={"build": "late"})
    found = orders(book(car("strip", splits={"hand": HAND, "build": BUILD}), note))
    assert [one.written for one in found] == [False, True]
    assert [len(one.builds) for one in found] == [2, 2]


def test_an_axis_that_does_not_bear_on_trim_divides_nothing() -> None:
    split = {**BUILD, "bears_on": {"subjects": ["room"]}}
    [found] = orders(book(car("strip", splits={"build": split}), seen("a", pieces=["strip"])))
    assert found.builds == ((),)
    assert found.open_notes == ()


def test_opposite_edges_are_argued_over_with_their_notes_and_both_pieces() -> None:
    one = seen("one", lies_over=[over("strip", "panel")])
    two = seen("two", lies_over=[over("panel", "strip")])
    found = order(car("strip", "panel"), one, two)
    [circle] = found.argued
    assert set(circle.pieces) == {"strip", "panel"}
    assert [(before.first, before.then, before.notes) for before in circle.befores] == [
        ("panel", "strip", ("two",)),
        ("strip", "panel", ("one",)),
    ]
    assert sorted(pieces(found)) == ["panel", "strip"]
    assert found.over == ()


def test_one_side_is_done_before_the_other() -> None:
    found = order(car("a-left", "b-right", "c-left"), seen("a", pieces=["a-left", "b-right", "c-left"]))
    assert pieces(found) == ["a-left", "c-left", "b-right"]


def test_around_an_argument_the_order_still_holds() -> None:
    notes = [
        seen("a", pieces=[first("strip", "lid"), first("radio", "panel")]),
        seen("b", lies_over=[over("strip", "panel"), over("panel", "strip")]),
    ]
    found = pieces(order(car("lid", "strip", "panel", "radio"), *notes))
    assert found[0] == "lid"
    assert found[-1] == "radio"


def test_what_was_seen_on_the_way_but_on_no_named_piece_is_kept() -> None:
    note = seen("a", fasteners=[{"kind": "clip", "count": 6}], hidden="One behind the blank.")
    elsewhere = seen("b", place="shelf", fasteners=["screw"], hidden="Another.")
    silent = seen("c", fasteners=[{"kind": "clip", "count": 6}])
    found = order(car(), note, elsewhere, silent)
    assert not found.written
    assert [(one.name, one.most) for one in found.loose] == [("clip", 6)]
    assert [one.what for one in found.hidden] == ["One behind the blank."]
    assert found.notes == ("a", "c")


def test_the_notes_of_an_order_are_those_it_rests_on() -> None:
    notes = [
        seen("a", pieces=["bezel"]),
        seen("edge", place="shelf", lies_over=[over("strip", "bezel")]),
        seen("off", place="shelf", pieces=["strip"]),
        seen("far", place="shelf", pieces=["lid"]),
    ]
    assert order(car("strip", "bezel", "lid"), *notes).notes == ("a", "edge", "off")


def test_pieces_that_share_a_screw_say_so() -> None:
    note = seen("a", pieces=["strip", "bezel"], shares_screw=["strip", "bezel", "vent"])
    [strip, bezel] = order(car("strip", "bezel", "vent"), note).steps
    assert strip.shares == ("bezel", "vent")
    assert bezel.shares == ("strip", "vent")


def test_the_class_of_the_place_goes_with_the_order() -> None:
    hole = {"kind": "plain opening", "side": "centre", "safety": "restraint near"}
    assert order(car("strip", places={making.HOLE: hole})).safety == "restraint near"
    [stray] = orders(book(car("strip"), seen("a", place="nowhere", pieces=["strip"])), "nowhere")
    assert stray.safety is None
    assert pieces(stray) == ["strip"]


def test_one_piece_has_an_order_of_its_own_for_a_build() -> None:
    held = {**first("bezel", "strip"), "fasteners": [{"kind": "bezel claw", "count": 4}]}
    notes = [
        seen("a", pieces=[held, first("radio", "bezel")], splits={"build": "late"}),
        seen("b", lies_over=[over("lid", "strip")], splits={"build": "early"}),
    ]
    base = book(car("strip", "bezel", "radio", "lid", splits={"build": BUILD}), CLAW, *notes)
    vehicle = base.vehicles[making.CAR]
    late = removal_of(base, vehicle, "bezel", (("build", "late"),))
    assert (pieces(late), late.builds) == (["strip", "bezel"], ((("build", "late"),),))
    assert [one.name for one in late.steps[-1].held] == ["Metal claw"]
    assert pieces(removal_of(base, vehicle, "bezel")) == ["lid", "strip", "bezel"]
    assert not removal_of(base, vehicle, "unheard-of").written
