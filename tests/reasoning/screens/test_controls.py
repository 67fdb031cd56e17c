from bezelbook.reasoning.screens.between import Between, exactly
from bezelbook.reasoning.screens.controls import Hole, Near, controls_at, hole_of, near
from tests.reasoning import making
from tests.reasoning.screens.dashes import control, mm, ruled

HOLE = Hole(exactly(mm(180)), exactly(mm(100)))


def placed(hole: Hole = HOLE, /, **content: str | None) -> Near:
    note = ruled(control(**{"near": "10 mm", "far": "30 mm", "starts": "20 mm", "ends": "60 mm", **content}))
    return near(note.controls[0], note.id, hole, 0, sure=True)


def sides(of: Near) -> tuple[float, ...]:
    """Left, right, bottom and top in millimetres."""
    assert all(side.low == side.high for side in (of.left, of.right, of.bottom, of.top))
    return tuple(float(side.low / 1_000_000) for side in (of.left, of.right, of.bottom, of.top))


def test_a_control_lies_beyond_its_edge_counted_from_the_middle() -> None:
    """Worked by hand: the opening reaches 90 mm to the left and right, and 50 mm up and down."""
    assert sides(placed()) == (-70, -30, 60, 80)
    assert sides(placed(beyond="bottom")) == (-70, -30, -80, -60)
    assert sides(placed(beyond="left")) == (-120, -100, -10, 30)
    assert sides(placed(beyond="right")) == (100, 120, -10, 30)


def test_a_start_before_the_edge_is_on_the_other_side_of_the_corner() -> None:
    assert sides(placed(starts="-15 mm"))[0] == -105


def test_every_tolerance_moves_a_side() -> None:
    hole = Hole(Between(mm(178), mm(182)), Between(mm(99), mm(101)))
    found = placed(hole, near="10 ± 1 mm", starts="20 ± 2 mm")
    assert found.bottom.low == mm(99) / 2 + mm(9)
    assert found.bottom.high == mm(101) / 2 + mm(11)
    assert (found.left.low, found.left.high) == (mm(18) - mm(91), mm(22) - mm(89))


def test_a_length_without_a_tolerance_has_the_houses() -> None:
    bare = {"near": "10 mm", "far": "30 mm", "starts": "60 mm", "ends": "90 mm", "stands_out": "7 mm"}
    note = ruled(control(**bare))
    [found] = controls_at(making.place(making.book(note)), (), HOLE)
    assert found.note == note.id
    assert (found.bottom, found.top) == (Between(mm(50 + 5), mm(50 + 15)), Between(mm(50 + 25), mm(50 + 35)))
    assert (found.left, found.right) == (Between(mm(55 - 90), mm(65 - 90)), Between(mm(85 - 90), mm(95 - 90)))
    assert found.stands_out == Between(mm(2), mm(12))


def test_a_side_that_nobody_measured_may_be_anywhere() -> None:
    found = placed(far=None, starts=None, ends=None)
    assert found.bottom.bounded
    assert not (found.top.bounded)
    assert not (found.left.bounded)
    assert not (found.right.bounded)
    assert not (found.outlined)
    assert found.top.low == found.bottom.low
    assert placed().outlined


def test_a_far_side_before_the_near_one_was_never_read() -> None:
    assert not placed(far="9.9 mm").top.bounded
    assert placed(far="10 mm").top.bounded


def test_an_end_before_its_start_was_never_read() -> None:
    found = placed(starts="60 mm", ends="20 mm")
    assert not (found.left.bounded)
    assert not (found.right.bounded)


def test_how_far_it_stands_out_is_read_where_somebody_did() -> None:
    assert placed(stands_out="5 ± 1 mm").stands_out == Between(mm(4), mm(6))
    assert not placed(stands_out=None).stands_out.bounded


def test_the_opening_is_as_large_as_its_readings_say() -> None:
    book = making.book(ruled())
    found = hole_of(making.place(book), ())
    assert found.width == Between(mm(179), mm(181))
    assert found.height == Between(mm(100), mm(102))


def test_an_opening_that_nobody_measured_has_no_upper_bound() -> None:
    found = hole_of(making.place(making.book()), ())
    assert not (found.width.bounded)
    assert not (found.height.bounded)


def test_readings_that_cannot_all_be_true_leave_both_open() -> None:
    other = making.measured("other", making.reading("width", "190 ± 1 mm"))
    found = hole_of(making.place(making.book(ruled(), other)), ())
    assert found.width == Between(mm(179), mm(191))


def test_a_note_of_an_unnamed_build_is_not_sure_of_any() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    notes = ruled(control("a"), splits={"build": "late"}), ruled(control("b"), named="other")
    place = making.place(making.book(car, *notes))
    late, early = (("build", "late"),), (("build", "early"),)
    assert {one.what: one.sure for one in controls_at(place, late, HOLE)} == {"a": True, "b": False}
    assert {one.what: one.sure for one in controls_at(place, early, HOLE)} == {"b": False}


def test_sides_that_their_tolerances_bring_level_are_believed_and_no_others() -> None:
    def left(ends: str) -> Between:
        [one] = controls_at(making.place(making.book(ruled(control(starts="60 ± 1 mm", ends=ends)))), (), HOLE)
        return one.left

    assert left("58 ± 1 mm").bounded
    assert not left("57.9 ± 1 mm").bounded


def test_only_strong_notes_outline_a_control() -> None:
    by_eye = making.measured("eye", making.reading("width", "180 mm", tool="eye"), controls=[control()])
    assert controls_at(making.place(making.book(by_eye)), (), HOLE) == ()
    assert controls_at(making.place(making.book(making.tried(), making.unit())), (), HOLE) == ()
