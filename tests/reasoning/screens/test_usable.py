from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from bezelbook.reasoning.screens.heights import Window
from bezelbook.reasoning.screens.usable import Usable
from tests.reasoning import making
from tests.reasoning.screens.dashes import control, floater, mm, over, ruled

ORDER = ("usable", "usable if set", "too close", "covers")


def found(*controls: dict[str, Any], **screen: str | None) -> Usable:
    """Half of the screen is 69.5 to 70.5 mm high and half of the opening 50 to 51; the body sits within 1.5 mm."""
    lying = over(floater(**screen), ruled(*controls)).lying
    assert lying is not None
    return lying.usable


def near(mm_off: float, **content: str | None) -> dict[str, Any]:
    return control(near=f"{mm_off} ± 1 mm", far=f"{mm_off + 20} ± 1 mm", **content)


def test_without_a_control_nobody_looked() -> None:
    assert found().verdict == "not looked"


def test_far_enough_away_it_is_usable_however_it_is_set() -> None:
    """At the highest the screen ends 92 mm over the middle; the control begins its distance and 49 mm up, or more."""
    assert found(near(43)).verdict == "usable"
    assert found(near(42.9)).verdict == "usable if set"


def test_a_height_that_leaves_it_free_is_named() -> None:
    """Free when the middle is no higher than 50 + 24 - 70.5 mm; set as high as it goes the middle is 20 mm up."""
    set_low = found(near(25))
    assert set_low.verdict == "usable if set"
    assert set_low.free == (Window(-mm("21.5"), mm("3.5")),)
    assert set_low.best <= mm("3.5")


def test_what_is_behind_it_at_every_height_is_covered() -> None:
    """At the lowest the screen still ends 58 mm over the middle: 69.5 - 11.5; the control begins 53 mm up or less."""
    assert found(near(1), height_down="10 mm").verdict == "covers"
    beside = {"beyond": "left", "near": "1 ± 1 mm", "far": "9 ± 1 mm", "starts": "40 ± 1 mm", "ends": "60 ± 1 mm"}
    assert found(control(**beside)).verdict == "covers"


def test_where_the_tolerances_decide_it_is_too_close() -> None:
    assert found(near(0.5)).verdict == "too close"


def test_one_way_out_for_one_control_may_be_none_for_another() -> None:
    above, below = near(5), near(5, beyond="bottom")
    assert found(above).verdict == found(below).verdict == "usable if set"
    both = found(above, below)
    assert both.verdict == "covers"
    assert both.free == ()
    assert abs(both.best) < mm(1)


def test_a_lean_may_be_what_leaves_it_free() -> None:
    above, below = near(18), near(18, beyond="bottom")
    assert found(above, below).verdict == "too close"
    leaning = found(above, below, tilt_most="30 deg")
    assert (leaning.verdict, leaning.lean) == ("usable if set", 30_000)


def test_a_screen_that_never_stands_upright_is_only_as_high_as_its_least_lean_leaves_it() -> None:
    """At 60 degrees half of it is at most 35.25 mm, so that it ends 56.75 mm up; the control begins 49 mm and more."""
    leaning = {"tilt_least": "60 deg", "tilt_most": "60 deg"}
    assert found(near(7.8), **leaning).verdict == "usable"
    assert found(near(7.7), **leaning).verdict == "usable if set"
    assert found(near(7.8)).lean == 0
    assert found(near(7.8), **leaning).lean == 60_000


def test_the_best_height_over_a_control_below_is_the_nearest_that_leaves_a_finger_its_room() -> None:
    """Mirrored: at least 6.5 mm up, and nearer to the middle than any higher one."""
    assert found(near(25, beyond="bottom")).best == mm("6.5")


def test_of_heights_that_leave_as_much_the_nearest_to_the_middle_of_the_seat_is_the_best() -> None:
    """A body held to the upper third, 13 to 31 mm up by its play: nothing is in the way there, and it stays."""
    upper = ["upper-left", "upper", "upper-right"]
    kit = making.mount(presents={"height": "53 ± 1 mm caliper", "ninths": upper})
    unit = making.changed(floater(), body_height="50 ± 1 mm caliper")
    lying = over(unit, ruled(near(100)), kit, mounts=("kit",)).lying
    assert lying is not None
    assert lying.seat.height.middle > 0
    assert lying.usable.best == lying.seat.height.middle


def test_where_nobody_looked_how_it_is_set_nothing_is_always_so() -> None:
    blank = {"height_up": None, "height_down": None}
    assert found(near(200), **blank).verdict == "usable if set"
    assert found(near(1), **blank).verdict == "too close"
    assert found(near(1), tilt_most=None, height_down="10 mm").verdict == "too close"
    assert found(near(43), tilt_most=None).verdict == "usable"


def test_the_best_height_is_the_nearest_that_leaves_a_finger_its_room() -> None:
    """A finger wants 10 mm, so that the middle is at most 50 + 24 - 70.5 - 10 mm up."""
    assert found(near(25)).best == -mm("6.5")
    assert found(near(25)).crowded == ()
    assert found(near(80)).best == 0


def test_what_cannot_be_helped_does_not_keep_the_rest_from_being_helped() -> None:
    """One at the side is in the way at every height; the other is free with a finger's room where it is alone."""
    beside = control("start button", beyond="left", near="5 ± 1 mm", far="30 ± 1 mm", starts=None, ends=None)
    assert found(near(25), beside).best == found(near(25)).best == -mm("6.5")


def test_between_two_that_are_in_the_way_the_best_is_half_way() -> None:
    """At worst the one above begins 55 - 1 mm up and the one below 52 - 1 mm down: half way is 1.5 mm up."""
    both = found(near(5), near(2, beyond="bottom"))
    assert both.best == mm("1.5")
    assert [over.by(both.best).high for over in both.overs] == [
        mm("70.5") + mm("1.5") - mm(54),
        mm("70.5") - mm("1.5") - mm(51),
    ]


def test_at_the_best_height_a_crowded_control_is_named() -> None:
    tight = found(near(5), height_down="20 mm")
    assert tight.best == -mm(20)
    assert [one.control.what for one in tight.crowded] == ["hazard switch"]
    assert tight.worst.control.what == "hazard switch"


def test_a_body_that_may_sit_anywhere_must_be_brought_there_from_everywhere() -> None:
    """In 150 ± 1 mm a body of 99 has 26 mm of play; free is the middle up to 74.5 + (off - 1) - 70.5 mm, and 5 lower
    than its body it can be set, so that 17 + 1 mm off the edge it can be brought there from the highest seat."""

    def verdict(off: float) -> str:
        return over(floater(height_down="5 mm", height_up="5 mm"), ruled(near(off), height="150 ± 1 mm")).verdict

    assert verdict(18) == "usable if set"
    assert verdict(17.9) == "too close"


heights = st.integers(0, 60)


@given(heights, heights, st.integers(0, 20), st.sampled_from(["top", "bottom", "left", "right"]))
def test_moving_a_control_away_never_makes_a_setting_worse(one: int, far: int, by: int, edge: str) -> None:
    other = near(far, beyond="bottom")
    close, away = (
        found(near(off, beyond=edge, starts="40 ± 1 mm", ends="60 ± 1 mm"), other) for off in (one, one + by)
    )
    assert ORDER.index(away.verdict) <= ORDER.index(close.verdict)
    assert away.worst.by(away.best).high <= close.worst.by(close.best).high or away.worst.by(away.best).high <= -mm(10)


@given(heights, heights)
def test_one_more_control_never_makes_a_setting_better(one: int, other: int) -> None:
    alone, both = found(near(one)), found(near(one), near(other, beyond="bottom"))
    assert ORDER.index(alone.verdict) <= ORDER.index(both.verdict)
    inside = [any(wide.low <= free.low and free.high <= wide.high for wide in alone.free) for free in both.free]
    assert all(inside)


@given(heights, st.integers(0, 20), st.integers(0, 20))
def test_more_ways_to_set_it_never_make_it_less_usable(off: int, few: int, more: int) -> None:
    small, large = (found(near(off), height_down=f"{down} mm", height_up="0 mm") for down in (few, few + more))
    if small.verdict in ("usable", "usable if set"):
        assert large.verdict in ("usable", "usable if set")
    if large.verdict == "covers":
        assert small.verdict == "covers"
