from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.order.asking import asked_of
from bezelbook.reasoning.unknowns import Missing
from tests.reasoning import making
from tests.reasoning.order.trim import book, car, first, orders, over, seen

CAR = car("strip", "bezel", "glovebox")


def asked(*notes: Record, vehicle: Record = CAR) -> list[Missing]:
    base = book(vehicle, *notes)
    [found] = orders(base)
    return list(asked_of(base, base.vehicles[making.CAR], found))


def whats(*notes: Record, **more: Any) -> list[str]:
    return [one.what for one in asked(*notes, **more)]


def test_a_path_that_nobody_wrote_is_a_gap_of_three_minutes() -> None:
    [gap] = asked()
    assert gap.what == "nobody wrote what comes off first"
    assert "3 min" in gap.look


def test_an_order_of_which_all_is_known_asks_nothing() -> None:
    strip = {
        "piece": "strip",
        "fasteners": [{"kind": "clip", "count": 6}],
        "lead_edge": "left",
        "pull": ["up"],
        "hooks": "Front edge.",
    }
    assert asked(seen("a", pieces=[strip, first("bezel", "strip")])) == []


def test_a_piece_in_one_of_two_lists_is_asked_about() -> None:
    assert whats(seen("a", pieces=["glovebox", "bezel"]), seen("b", pieces=["bezel"])) == [
        "one of two jobs took the glovebox off: needed or habit?"
    ]


def test_a_needed_piece_that_one_list_leaves_out_is_asked_about_too() -> None:
    assert whats(seen("a", pieces=["strip", first("bezel", "strip")]), seen("b", pieces=["bezel"])) == [
        "one of two jobs listed the strip, and something asks for it: did the others leave it on, or not write it down?"
    ]


def test_the_lowest_layer_may_or_may_not_come_off() -> None:
    assert whats(seen("a", lies_over=[over("strip", "bezel")])) == ["nobody wrote whether the bezel itself comes off"]


def test_a_must_without_a_reason_is_asked_about() -> None:
    assert whats(seen("a", pieces=["strip", first("bezel", "strip", why=None)])) == [
        "nobody wrote why the strip is off before the bezel: overlap, reach, cable, screw or habit?"
    ]


def test_an_argument_names_both_pieces_and_one_look_that_settles_it() -> None:
    one = seen("one", lies_over=[over("strip", "bezel", how="traps")])
    two = seen("two", pieces=["strip", first("bezel", "strip"), first("strip", "bezel", why="reach")])
    [argued, *_] = asked(one, two)
    assert argued.what == (
        "argued over: bezel comes off first (reach) before strip (two, no date) "
        "and strip traps bezel (one, no date and two, no date)"
    )
    assert "1 min" in argued.look
    assert argued.changes == "which of bezel and strip comes off first"


def test_where_two_do_not_say_the_same_of_a_piece_somebody_should_look() -> None:
    said = [
        {"fasteners": [{"kind": "clip", "count": 6}], "lead_edge": "left", "pull": ["up"], "hooks": "Front edge."},
        {"fasteners": [{"kind": "clip", "count": 11}], "lead_edge": "right", "pull": ["toward you", "up"]},
    ]
    notes = [seen(f"n{number}", pieces=[{"piece": "bezel", **one}]) for number, one in enumerate(said)]
    found = asked(*notes)
    assert [one.what for one in found] == [
        "6 or 11 × clip on the bezel",
        "start at the left or right of the bezel?",
        "up or toward you, then up: which way does the bezel come?",
        "hooks on the bezel, in one of two jobs: Front edge.",
    ]
    assert found[0].changes == "how many to have ready: 11 until then"


def test_what_a_note_leaves_blank_of_its_build_is_asked_of_its_author() -> None:
    split: dict[str, Any] = {"values": {"early": {}, "late": {}}}
    found = asked(seen("a", author="rk", pieces=["bezel"]), vehicle=car("bezel", splits={"build": split}))
    assert [(one.what, one.look) for one in found] == [
        ("the note of rk, no date, does not say which build the car was", "ask rk")
    ]
    [nobody] = asked(seen("a", author=None, pieces=["bezel"]), vehicle=car("bezel", splits={"build": split}))
    assert (nobody.what, nobody.look) == (
        "the note of not signed, no date, does not say which build the car was",
        "ask its author",
    )


def test_more_than_six_jobs_are_counted_in_figures() -> None:
    notes = [seen(f"n{number}", pieces=["bezel"]) for number in range(6)]
    assert whats(*notes, seen("odd", pieces=["glovebox", "bezel"])) == [
        "one of 7 jobs took the glovebox off: needed or habit?"
    ]
