from typing import Any

import pytest

from bezelbook.reasoning.screens.screen_at import Lying, ScreenAt
from bezelbook.reasoning.screens.screen_words import control_words, crowd_words, height_words, verdict_words
from tests.reasoning import making
from tests.reasoning.screens.dashes import control, floater, mm, over, ruled


def near(mm_off: float, **content: str | None) -> dict[str, Any]:
    return control(near=f"{mm_off} ± 1 mm", far=f"{mm_off + 20} ± 1 mm", **content)


def at(*controls: dict[str, Any], **screen: str | None) -> ScreenAt:
    return over(floater(**screen), ruled(*controls))


def lying(found: ScreenAt) -> Lying:
    assert found.lying is not None
    return found.lying


def words_of(found: ScreenAt, number: int = 0) -> str:
    of = lying(found)
    return control_words(of.usable.overs[number], of, "mm")


def test_each_verdict_has_its_sentence() -> None:
    blank = over(floater(width="240 mm printed"), ruled(control()))
    assert verdict_words(blank, "mm") == verdict_words(at(), "mm") == "controls near it: not looked"
    assert verdict_words(at(near(43)), "mm") == "leaves the hazard switch free, however it is set"
    assert verdict_words(at(near(43), near(60, what="vent")), "mm").startswith("leaves the hazard switch and vent free")
    assert verdict_words(at(near(25)), "mm") == (
        "usable if the middle of the screen is set no higher than 3.5 mm (0.14 in) above the middle of the opening"
    )
    assert verdict_words(at(near(1), height_down="10 mm"), "mm") == (
        "covers the hazard switch by 8.5 mm (0.33 in) ± 2 mm at best, however it is set"
    )
    assert verdict_words(at(near(0.5)), "in") == (
        "too close at the hazard switch: offer it up first (at best over it by 0.04 in (1 mm) at most)"
    )


def test_both_units_are_said_with_the_shops_first() -> None:
    assert "0.14 in (3.5 mm)" in verdict_words(at(near(25)), "in")


def test_a_lean_that_it_takes_is_said() -> None:
    found = at(near(18), near(18, beyond="bottom"), tilt_most="30 deg")
    assert verdict_words(found, "mm").endswith(", leaning 30°")
    assert "leaning" not in verdict_words(at(near(25), tilt_most="30 deg"), "mm")


def test_a_window_says_the_ends_that_are_not_the_ends_of_its_reach() -> None:
    low = at(near(25, beyond="bottom"))
    assert "no lower than 3.5 mm (0.14 in) below the middle" in verdict_words(low, "mm")
    both = at(near(25), near(25, beyond="bottom"))
    assert "from 3.5 mm (0.14 in) below to 3.5 mm (0.14 in) above the middle of the opening" in verdict_words(
        both, "mm"
    )
    blank = at(near(200), height_up=None, height_down=None)
    assert "from 1.5 mm (0.06 in) below to 1.5 mm (0.06 in) above" in verdict_words(blank, "mm")


def test_a_window_narrower_than_what_is_shown_keeps_its_ends() -> None:
    """Half of the screen and 19.98 less 0.01 mm on both sides leave 0.02 mm in the middle."""
    tight = {"far": "60 ± 1 mm", "near": "21.51 ± 1 mm"}
    found = at(control(**tight), control(**tight, beyond="bottom"))
    assert found.verdict == "usable if set"
    assert "from level with to level with the middle of the opening" in verdict_words(found, "mm")


def test_where_the_seat_decides_it_says_so() -> None:
    found = over(floater(height_down="5 mm", height_up="5 mm"), ruled(near(10), height="150 ± 1 mm"))
    assert found.verdict == "too close"
    assert verdict_words(found, "in") == (
        "too close: where its body sits decides whether the middle of the screen comes from 1.22 in (31 mm) below to "
        "0.51 in (13 mm) above the middle of the opening, as it must"
    )


def test_a_seat_that_just_clears_it_is_a_way_out() -> None:
    """Set 5 mm down from the middle of its play the screen ends 74.5 mm up, where the control may begin."""
    found = over(
        floater(height="158 ± 1 mm caliper", height_down="5 mm", height_up="5 mm"),
        ruled(near(1), height="150 ± 1 mm"),
    )
    assert verdict_words(found, "mm") == (
        "too close: where its body sits decides whether the middle of the screen comes no higher than 5 mm (0.20 in) "
        "below the middle of the opening, as it must"
    )
    assert words_of(found) == "free by 0 mm (0 in) at worst: crowded, a finger wants 10 mm"


def test_of_two_ways_to_set_it_either_is_named() -> None:
    """A knob at the side, 8 to 12 mm up and down: a screen of 20 mm goes above or below it."""
    knob = control(beyond="left", near="1 ± 1 mm", far="9 ± 1 mm", starts="40 ± 1 mm", ends="60 ± 1 mm")
    found = at(knob, height="20 ± 1 mm caliper", height_down="40 mm", height_up="40 mm")
    assert verdict_words(found, "mm") == (
        "usable if the middle of the screen is set no higher than 21.5 mm (0.85 in) below the middle of the opening or "
        "no lower than 22.5 mm (0.89 in) above the middle of the opening"
    )


def test_a_body_without_play_has_no_window_past_the_ends_of_its_reach() -> None:
    """Nothing is left of 97 to 99 mm beside a body of 99, so that the window and the reach end at one height."""
    above, below = "no higher than 2 mm (0.08 in) above", "no lower than 2 mm (0.08 in) below"
    for beyond, said in (("top", above), ("bottom", below)):
        found = over(floater(), ruled(near(25, beyond=beyond), height="98 ± 1 mm"))
        assert f"is set {said} the middle of the opening" in verdict_words(found, "mm")


@pytest.mark.parametrize(
    ("above", "below", "said"),
    [
        (25.07, 25.07, "from 3.5 mm (0.14 in) below to 3.5 mm (0.14 in) above"),
        (21.58, 21.48, "from level with to 0.1 mm (0.00 in) above"),
        (21.65, 21.45, "from 0.1 mm (0.00 in) above to 0.1 mm (0.00 in) above"),
    ],
)
def test_the_ends_of_a_window_are_shown_inward_where_a_tenth_lies_between_them(
    above: float, below: float, said: str
) -> None:
    """It reaches 21.5 mm less up and down than the controls begin."""
    tall = {"far": "60 ± 1 mm"}
    found = at(
        control(near=f"{above} ± 1 mm", **tall),
        control(near=f"{below} ± 1 mm", **tall, beyond="bottom"),
    )
    assert f"is set {said} the middle of the opening" in verdict_words(found, "mm")


def test_what_was_not_outlined_may_be_covered() -> None:
    found = at(near(1, starts=None, ends=None), height_down="10 mm")
    assert verdict_words(found, "mm") == (
        "may cover the hazard switch, by 10.5 mm (0.41 in) at most: where it starts and ends was not looked at"
    )


def test_nobody_knows_how_much_where_nothing_bounds_it() -> None:
    note = making.measured("blank", making.reading("width", "180 ± 1 mm"), controls=[control(beyond="bottom")])
    found = over(floater(), note)
    assert found.verdict == "not looked"
    assert words_of(found) == "may be covered, by 21.5 mm (0.85 in) at most, not touched"
    blank = making.measured(
        "blank",
        making.reading("nose width", "180 ± 1 mm"),
        controls=[control(beyond="left", starts=None, ends=None, far=None)],
    )
    assert words_of(over(floater(), blank)) == "may be covered, by nobody knows how much, not touched"


def test_a_control_is_told_as_it_lies_at_the_best_setting() -> None:
    """Set 20 mm down, the screen ends at most 50.5 mm over the middle; a control 5 ± 1 mm off is at least 54 mm up."""
    assert words_of(at(near(43))) == words_of(at(near(25))) == "free"
    assert words_of(at(near(7.5), height_down="10 mm")) == "may be covered, by 2 mm (0.08 in) ± 2 mm, not touched"
    assert words_of(at(near(1), height_down="0 mm")) == "covered, by 18.5 mm (0.73 in) ± 2 mm, not touched"
    assert words_of(at(near(1), height_down="10 mm")) == ("covered, by 8.5 mm (0.33 in) ± 2 mm, not touched")
    assert words_of(at(near(5))) == "free by 3.5 mm (0.14 in) at worst: crowded, a finger wants 10 mm"
    assert words_of(at(near(0.5, stands_out="20 ± 1 mm"), height_down="10 mm")).endswith(
        ", not touched from 21 mm (0.83 in) off the dash on"
    )
    assert words_of(at(near(1, stands_out="50 ± 1 mm"), height_down="10 mm")).endswith(", and touched at every offset")
    assert words_of(at(near(1, stands_out=None), height_down="10 mm")).endswith("± 2 mm")
    assert words_of(at(near(1, stands_out="40 ± 5 mm"), height_down="10 mm")).endswith("± 2 mm")
    assert words_of(at(near(0.5))) == "may be covered, by 1 mm (0.04 in) at most, not touched"


def test_what_is_known_to_a_finger_each_way_is_told_with_its_tolerance() -> None:
    """Halves of the screen and of the opening are known to 1 mm each, and the near side to twice its own."""
    at_most, known = (
        words_of(at(control(near=f"9 ± {by} mm", far="50 ± 1 mm"), height_down="0 mm")) for by in ("9.4", "9")
    )
    assert known == "covered, by 10.5 mm (0.41 in) ± 10 mm, not touched"
    assert at_most == "covered, by 20.9 mm (0.82 in) at most, not touched"


def test_a_control_of_perhaps_another_build_is_told_with_that_doubt() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    note = ruled(near(1))
    found = over(floater(height_down="10 mm"), car, note, ruled(named="late", splits={"build": "late"}), build=1)
    assert found.verdict == "too close"
    assert "covered, if this build has it, by" in words_of(found)


def test_what_is_crowded_is_said_in_one_line() -> None:
    found = at(near(5), near(6, what="vent"))
    assert crowd_words(found, "mm") == (
        "crowds the hazard switch and vent: 3.5 mm (0.14 in) left at worst, and a finger wants 10 mm"
    )
    assert (
        crowd_words(at(near(25)), "mm")
        == crowd_words(at(near(1), height_down="5 mm"), "mm")
        == crowd_words(at(), "mm")
        == ""
    )


def test_what_is_crowded_is_said_only_where_the_screen_is_usable() -> None:
    still = at(near(23), height_down="0 mm", height_up="0 mm")
    assert still.verdict == "usable"
    assert crowd_words(still, "mm") == (
        "crowds the hazard switch: 1.5 mm (0.06 in) left at worst, and a finger wants 10 mm"
    )
    touching = over(floater(), ruled(near(3), height="98 ± 1 mm"))
    assert crowd_words(touching, "mm").startswith("crowds the hazard switch: 0 mm (0 in) left at worst")
    covering = at(near(1), near(36, beyond="bottom", what="vent"), height_down="10 mm")
    assert covering.verdict == "covers"
    assert words_of(covering, 1) == "free by 4.5 mm (0.18 in) at worst: crowded, a finger wants 10 mm"
    assert crowd_words(covering, "mm") == ""


def test_a_height_is_told_against_the_middle_of_the_opening() -> None:
    assert height_words(mm(0), "mm") == "level with the middle of the opening"
    # Shown to a tenth of a millimetre, half to even: 0.05 is none, 0.06 is one.
    assert height_words(mm("0.05"), "mm") == "level with the middle of the opening"
    assert height_words(mm("0.06"), "mm").startswith("0.1 mm ")
    assert height_words(mm(5), "mm") == "5 mm (0.20 in) above the middle of the opening"
    assert height_words(-mm(5), "in") == "0.20 in (5 mm) below the middle of the opening"


def test_words_of_one_control_in_the_shops_own_unit() -> None:
    crowded, covered = at(near(5)), at(near(0.5, stands_out="20 ± 1 mm"), height_down="10 mm")
    for found, said in (
        (crowded, "free by 0.14 in (3.5 mm) at worst: crowded, a finger wants 10 mm"),
        (covered, "covered, by 0.35 in (9 mm) ± 2 mm, not touched from 0.83 in (21 mm) off the dash on"),
    ):
        of = lying(found)
        assert control_words(of.usable.overs[0], of, "in") == said
