from bezelbook.kinds.note.record import Seen
from bezelbook.reasoning.order.targets import Targets, targets_at, targets_for
from tests.reasoning import making
from tests.reasoning.order.trim import first, over, seen


def stands(*notes: Seen) -> dict[str, str]:
    return dict(targets_at(notes, making.HOLE).stands)


def test_what_every_list_has_is_needed_and_what_only_some_have_is_asked() -> None:
    notes = [seen("a", pieces=["glovebox", "bezel"]), seen("b", pieces=["bezel"])]
    assert stands(*notes) == {"glovebox": "asked", "bezel": "needed"}
    found = targets_at(notes, making.HOLE)
    assert (found.listed("glovebox"), found.listed("bezel"), len(found.lists)) == (1, 2, 2)
    assert found.as_done == ("glovebox", "bezel")


def test_what_lies_over_a_needed_piece_is_needed_though_no_list_has_it() -> None:
    elsewhere = seen("x", place="shelf", lies_over=[over("strip", "bezel")])
    assert stands(seen("a", pieces=["bezel"]), elsewhere) == {"strip": "needed", "bezel": "needed"}


def test_what_lies_over_a_piece_that_is_asked_is_asked_too() -> None:
    notes = [seen("a", pieces=["bezel", first("glovebox", "lid")]), seen("b", pieces=["bezel"])]
    assert stands(*notes) == {"bezel": "needed", "glovebox": "asked", "lid": "asked"}


def test_two_notes_of_one_job_make_one_list() -> None:
    notes = [seen("a", job="x", pieces=["strip"]), seen("b", job="x", pieces=["bezel", "strip"])]
    found = targets_at(notes, making.HOLE)
    assert found.lists == (("strip", "bezel"),)
    assert set(found.stands.values()) == {"needed"}


def test_a_habit_is_left_out() -> None:
    note = seen("a", pieces=["glovebox", first("bezel", "glovebox", why="habit")])
    found = targets_at([note], making.HOLE)
    assert found.stands == {"bezel": "needed"}
    assert [(one.first, one.then) for one in found.habits] == [("glovebox", "bezel")]


def test_a_habit_before_a_habit_is_told_too() -> None:
    note = seen("a", pieces=["lid", first("glovebox", "lid", why="habit"), first("bezel", "glovebox", why="habit")])
    found = targets_at([note], making.HOLE)
    assert found.stands == {"bezel": "needed"}
    assert [one.first for one in found.habits] == ["glovebox", "lid"]


def test_a_habit_that_something_asks_for_is_a_must() -> None:
    habit = seen("a", pieces=["glovebox", first("bezel", "glovebox", why="habit")])
    must = seen("b", lies_over=[over("glovebox", "bezel")])
    found = targets_at([habit, must], making.HOLE)
    assert found.stands == {"bezel": "needed", "glovebox": "needed"}
    assert found.habits == ()


def test_what_one_came_for_is_never_a_mere_habit() -> None:
    note = seen("a", pieces=[first("glovebox", "radio", why="habit"), "radio"])
    assert stands(note) == {"glovebox": "needed", "radio": "needed"}


def test_where_nobody_listed_anything_the_layers_that_were_seen_serve() -> None:
    note = seen("a", lies_over=[over("strip", "bezel")], shares_screw=["lid", "vent"])
    assert stands(note) == {"strip": "needed", "bezel": "a layer", "lid": "a layer", "vent": "a layer"}
    assert stands(seen("b", hidden="One screw.")) == {}


def test_layers_that_were_seen_elsewhere_open_nothing_here() -> None:
    elsewhere = seen("a", place="shelf", lies_over=[over("strip", "bezel")])
    assert targets_at([elsewhere], making.HOLE) == Targets({}, (), ())


def test_for_one_piece_all_that_lies_over_it_comes_off() -> None:
    note = seen("a", pieces=[first("bezel", "strip"), first("radio", "bezel"), first("bezel", "lid", why="habit")])
    found = targets_for([note], "bezel")
    assert found.stands == {"strip": "needed", "bezel": "needed"}
    assert [one.first for one in found.habits] == ["lid"]
    assert targets_for([note], "unheard-of") == Targets({}, (), ())


def test_a_habit_before_what_stays_on_is_not_told() -> None:
    note = seen("a", pieces=[first("bezel", "strip"), first("vent", "lid", why="habit")])
    assert targets_for([note], "bezel").habits == ()
