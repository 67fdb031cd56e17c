from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.publish.address import Links, removal_page
from bezelbook.publish.removal.part import Part, part_of
from bezelbook.publish.removal.trade_words import FirstUse
from tests.reasoning import making
from tests.reasoning.order import trim

CAR = trim.car("strip", "bezel", "lid-left")


def part(*notes: Record, car: Record = CAR) -> Part:
    base = trim.book(car, *notes)
    [order] = trim.orders(base)
    to = Links(removal_page(making.CAR), base)
    return part_of(base.vehicles[making.CAR], making.HOLE, order, ("lid left",), FirstUse(), to)


def bezel(named: str = "a", /, **content: Any) -> Record:
    return trim.seen(named, **({"pieces": ["strip", trim.first("bezel", "strip")]} | content))


def test_it_says_how_many_jobs_of_which_day_and_to_check_on_this_car() -> None:
    assert part(bezel()).basis == "From one job. Check on this car first."
    one = part(bezel(date="2026-01-02"))
    assert one.basis == "From one job, of 2026-01-02. Check on this car first."
    two = part(bezel(date="2026-01-02", job="x"), bezel("b", date="2026-02-03"), bezel("c", date="2026-01-02", job="x"))
    assert two.basis == "From two jobs, the newest of 2026-02-03. Check on this car first."


def test_every_class_that_is_near_stands_at_the_top_with_where_it_is() -> None:
    hole = {"kind": "plain opening", "side": "centre", "name": "the hole", "safety": "restraint near"}
    pieces = {"strip": {"safety": "restraint near"}, "bezel": {"safety": "stored energy"}, "lid": {"safety": "none"}}
    car = making.vehicle(places={making.HOLE: hole}, trim=pieces)
    found = part(trim.seen("a", pieces=["strip", "bezel", "lid", "unknown"]), car=car)
    near = [(one.safety, one.where) for one in found.cautions]
    assert near == [("restraint near", "the hole and strip"), ("stored energy", "bezel")]
    assert found.no_class == "unknown"


def test_no_class_at_all_is_no_caution_but_a_hole_in_the_book() -> None:
    found = part(bezel())
    assert found.cautions == ()
    assert found.no_class == "strip and bezel"


def test_the_stack_is_drawn_from_two_cards_on() -> None:
    assert 'data-piece="bezel"' in part(bezel()).drawing
    assert part(trim.seen("a", pieces=["strip"])).drawing == ""
    assert part().drawing == ""


def test_what_is_argued_over_is_drawn_and_written_as_not_sure() -> None:
    found = part(bezel(), trim.seen("b", lies_over=[trim.over("bezel", "strip")]))
    assert str(found.drawing).count('class="card unsure"') == 2
    assert all(any("Argued over" in mark for mark in step.marks) for step in found.steps)
    assert found.asked[0].what.startswith("argued over")


def test_putting_it_back_goes_from_the_last_step_up() -> None:
    off = [{"piece": "strip", "refit": "Clips first."}, {**trim.first("bezel", "strip"), "refit": "Plug first."}]
    assert part(trim.seen("a", pieces=off)).refit == (("bezel", "Plug first."), ("strip", "Clips first."))


def test_times_add_up_over_the_steps_that_were_clocked() -> None:
    off = [{"piece": "strip", "took": "4 min"}, {**trim.first("bezel", "strip"), "took": "5 min"}, "lid-left"]
    found = part(trim.seen("a", pieces=off)).time
    assert found == "Clocked: about 9 min for 2 of its 3 steps; thin, from fewer than three jobs."
    three = [trim.seen(f"n{number}", pieces=[{"piece": "strip", "took": "3 min"}]) for number in range(3)]
    assert part(*three).time == "Clocked: about 3 min."
    assert part(bezel()).time == ""


def test_a_habit_stands_apart_from_the_steps() -> None:
    found = part(trim.seen("a", pieces=["lid-left", trim.first("bezel", "lid-left", why="habit")]))
    assert [step.name for step in found.steps] == ["bezel"]
    assert found.habits == ("lid left before bezel",)


def test_what_hangs_on_no_named_piece_is_kept() -> None:
    found = part(trim.seen("a", fasteners=[{"kind": "clip", "count": 6}], hidden="Under the mat."))
    assert (found.written, found.loose, found.hidden) == (False, ("6 × clip",), ("Under the mat.",))


def test_whose_word_it_is_leads_to_the_notes_and_what_differed_is_quoted() -> None:
    differed = making.record(
        "notes",
        "after",
        {"form": "after", "vehicle": making.CAR, "place": making.HOLE, "author": "jo", "differed": "It comes upward."},
    )
    found = part(bezel(date="2026-01-02", words="Easy."), bezel("b"), differed, making.tried())
    assert [(one.words, one.by) for one in found.notes] == [
        ("Easy.", "a, 2026-01-02"),
        ("It comes upward.", "jo, no date"),
        ("", "b, no date"),
    ]
    assert found.notes[0].at == "../small-van-1.html#note-a"


def test_a_place_of_which_nothing_is_written_has_its_class_asked_too() -> None:
    assert part().no_class == "dash centre"
    hole = {"kind": "plain opening", "side": "centre", "safety": "none"}
    assert part(car=making.vehicle(places={making.HOLE: hole})).no_class == ""


def test_words_that_may_tell_of_a_piece_with_a_restraint_near_are_left_with_their_note() -> None:
    stop = {"piece": "strip", "safety": "restraint near"}
    near = trim.seen("a", pieces=[stop], words="Pull hard.")
    both = trim.seen("b", pieces=[stop, "bezel"], words="Pull the Strips hard.")
    other = trim.seen("c", pieces=[stop, "bezel"], words="Easy, mind the lip.")
    layers = trim.seen("d", lies_over=[trim.over("strip", "bezel")], words="One over the other.")
    silent = trim.seen("e", pieces=["bezel"])
    assert [(one.by, one.words) for one in part(near, both, other, layers, silent).notes] == [
        ("a, no date", ""),
        ("b, no date", ""),
        ("c, no date", "Easy, mind the lip."),
        ("d, no date", "One over the other."),
        ("e, no date", ""),
    ]
    assert part(near).stopped
    assert not part(both).stopped


def test_what_stays_on_is_said() -> None:
    assert part(bezel()).stays == "lid left"
