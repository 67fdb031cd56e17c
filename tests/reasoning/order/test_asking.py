from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.order.asking import asked_of
from bezelbook.reasoning.unknowns import Missing
from tests.reasoning import making
from tests.reasoning.order.trim import book, car, first, orders, over, seen

CAR = car("strip", "bezel", "glovebox")
EYES = "look at the next car, eyes only, 1 min"


def asked(*notes: Record, vehicle: Record = CAR) -> list[Missing]:
    base = book(vehicle, *notes)
    [found] = orders(base)
    return list(asked_of(base, base.vehicles[making.CAR], found))


def whats(*notes: Record, **more: Any) -> list[str]:
    return [one.what for one in asked(*notes, **more)]


def test_a_path_that_nobody_wrote_is_a_gap_of_three_minutes() -> None:
    assert asked() == [
        Missing(
            "nobody wrote what comes off first",
            "note it next time, piece by piece as it comes off, 3 min",
            "the order, the clips to have ready, the hours",
        )
    ]


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
    assert asked(seen("a", pieces=["glovebox", "bezel"]), seen("b", pieces=["bezel"])) == [
        Missing("one of two jobs took the glovebox off: needed or habit?", EYES, "one step more or less")
    ]


def test_a_needed_piece_that_one_list_leaves_out_is_asked_about_too() -> None:
    said = "did the others leave it on, or not write it down?"
    assert asked(seen("a", pieces=["strip", first("bezel", "strip")]), seen("b", pieces=["bezel"])) == [
        Missing(
            f"one of two jobs listed the strip, and something asks for it: {said}",
            EYES,
            "whether it has to come off at all",
        )
    ]


def test_what_lies_over_the_way_is_not_asked_about_though_no_list_has_it() -> None:
    elsewhere = seen("x", place="shelf", lies_over=[over("strip", "bezel")])
    assert asked(seen("a", pieces=["bezel"]), elsewhere) == []


def test_the_lowest_layer_may_or_may_not_come_off() -> None:
    assert asked(seen("a", lies_over=[over("strip", "bezel")])) == [
        Missing("nobody wrote whether the bezel itself comes off", EYES, "whether that step is one")
    ]


def test_a_must_without_a_reason_is_asked_about() -> None:
    assert asked(seen("a", pieces=["strip", first("bezel", "strip", why=None)])) == [
        Missing(
            "nobody wrote why the strip is off before the bezel: overlap, reach, cable, screw or habit?",
            "ask who wrote it, or look, 1 min",
            "whether the order is a must",
        )
    ]


def test_an_argument_names_both_pieces_and_one_look_that_settles_it() -> None:
    one = seen("one", lies_over=[over("strip", "bezel", how="traps")])
    two = seen("two", pieces=["strip", first("bezel", "strip"), first("strip", "bezel", why="reach")])
    [argued, *_] = asked(one, two)
    assert argued == Missing(
        "argued over: bezel comes off first (reach) before strip (two, no date) "
        "and strip traps bezel (one, no date and two, no date)",
        "look at the next car which edge lies on top, and take a picture, 1 min",
        "which of bezel and strip comes off first",
    )


def test_an_argument_says_of_each_edge_how_it_lies() -> None:
    round_ = [over("strip", "bezel"), over("bezel", "glovebox", how="overlaps the edge"), over("glovebox", "strip")]
    [argued, *_] = whats(seen("a", lies_over=round_))
    assert argued == (
        "argued over: bezel overlaps the edge of glovebox (a, no date), glovebox lies over strip (a, no date) "
        "and strip lies over bezel (a, no date)"
    )


def test_where_two_do_not_say_the_same_of_a_piece_somebody_should_look() -> None:
    said = [
        {"fasteners": [{"kind": "clip", "count": 6}], "lead_edge": "left", "pull": ["up"], "hooks": "Front edge."},
        {"fasteners": [{"kind": "clip", "count": 11}], "lead_edge": "right", "pull": ["toward you", "up"]},
    ]
    notes = [seen(f"n{number}", pieces=[{"piece": "bezel", **one}]) for number, one in enumerate(said)]
    snaps = "which hook snaps"
    assert asked(*notes) == [
        Missing(
            "6 or 11 × clip on the bezel",
            "count them off the back of it, 1 min",
            "how many to have ready: 11 until then",
        ),
        Missing("start at the left or right of the bezel?", EYES, snaps),
        Missing("up or toward you, then up: which way does the bezel come?", EYES, snaps),
        Missing(
            "hooks on the bezel, in one of two jobs: Front edge.",
            "feel along that edge before you pull, 1 min",
            snaps,
        ),
    ]


def test_what_a_note_leaves_blank_of_its_build_is_asked_of_its_author() -> None:
    split: dict[str, Any] = {"values": {"early": {}, "late": {}}}
    vehicle, carries = car("bezel", splits={"build": split}), "how far that note carries"
    assert asked(seen("a", author="rk", pieces=["bezel"]), vehicle=vehicle) == [
        Missing("the note of rk, no date, does not say which build the car was", "ask rk", carries)
    ]
    assert asked(seen("a", author=None, pieces=["bezel"]), vehicle=vehicle) == [
        Missing("the note of not signed, no date, does not say which build the car was", "ask its author", carries)
    ]


def test_more_than_six_jobs_are_counted_in_figures() -> None:
    notes = [seen(f"n{number}", pieces=["bezel"]) for number in range(6)]
    assert whats(*notes, seen("odd", pieces=["glovebox", "bezel"])) == [
        "one of 7 jobs took the glovebox off: needed or habit?"
    ]
