from bezelbook.reasoning.mounting import stack_of
from bezelbook.reasoning.screens.between import Between, exactly
from bezelbook.reasoning.screens.controls import Hole
from bezelbook.reasoning.screens.outline import outline_of
from bezelbook.reasoning.screens.seat import Seat, seat_of
from tests.reasoning import making
from tests.reasoning.screens.dashes import floater, mm

DOUBLE = Hole(exactly(mm(182)), exactly(mm(111)))


def seat(hole: Hole = DOUBLE, body_height: str | None = "50 ± 1 mm caliper", **presents: object) -> Seat:
    unit = making.changed(floater(), body_height=body_height)
    book = making.book(unit, making.mount(presents=presents)) if presents else making.book(unit)
    outline = outline_of(book, unit)
    assert outline is not None
    return seat_of(outline, hole, stack_of(book, ("kit",) if presents else ()))


def test_a_body_is_somewhere_inside_its_opening() -> None:
    """A body of 49 mm at least in 111 has 31 mm of play to either side; one of 177 at least in 182 has 2.5."""
    assert seat() == Seat(Between(-mm("2.5"), mm("2.5")), Between(-mm(31), mm(31)))


def test_a_mount_that_says_what_lies_behind_its_hole_says_how_high_that_is() -> None:
    """The upper third of 111 mm begins 18.5 mm up; a hole of 53 ± 1 leaves a body of 49 mm 2.5 mm of play."""
    upper = ["upper-left", "upper", "upper-right"]
    assert seat(height="53 ± 1 mm caliper", ninths=upper).height == Between(mm("18.5") - mm("2.5"), mm(31))
    lower = ["lower-left", "lower", "lower-right"]
    assert seat(height="53 ± 1 mm caliper", ninths=lower).height == Between(-mm(31), -mm(16))


def test_an_opening_with_a_tolerance_has_its_thirds_where_they_may_be() -> None:
    """The middle third of 111 ± 3 mm reaches 19 mm up and down at most, and the hole leaves 2.5 mm of play."""
    hole = Hole(exactly(mm(182)), Between(mm(108), mm(114)))
    across = ["left", "centre", "right"]
    assert seat(hole, height="53 ± 1 mm caliper", ninths=across).height == Between(-mm("21.5"), mm("21.5"))


def test_a_mount_that_says_nothing_of_it_may_hold_it_anywhere() -> None:
    assert seat(height="53 ± 1 mm caliper").height == Between(-mm(31), mm(31))


def test_a_hole_that_nobody_measured_leaves_all_its_play() -> None:
    assert seat(height="53 mm printed", ninths=["upper"]).height == Between(-mm(31), mm(31))


def test_a_hole_at_one_side_holds_the_body_there() -> None:
    wide = Hole(exactly(mm(360)), exactly(mm(111)))
    right = ["upper-right", "right", "lower-right"]
    assert seat(wide, width="180 ± 1 mm caliper", ninths=right).aside == Between(mm(58), mm("91.5"))


def test_what_cannot_all_be_true_leaves_the_opening_alone() -> None:
    """A hole in the upper third holds no body that nearly fills the opening."""
    assert seat(body_height="110 ± 0.5 mm caliper", height="110 ± 0.1 mm caliper", ninths=["upper"]).height == Between(
        -mm("0.75"), mm("0.75")
    )


def test_a_single_place_is_a_place() -> None:
    """In 120 mm a body of 90 has 15 mm of play; a hole of 100 in the upper third has its body 20 - 5 mm up or more."""
    exact = Hole(exactly(mm(182)), exactly(mm(120)))
    found = seat(exact, body_height="91 ± 1 mm caliper", height="99 ± 1 mm caliper", ninths=["upper"])
    assert found.height == exactly(mm(15))


def test_a_body_larger_than_the_opening_is_in_its_middle() -> None:
    assert seat(body_height="150 ± 1 mm caliper").height == Between(mm(0), mm(0))
