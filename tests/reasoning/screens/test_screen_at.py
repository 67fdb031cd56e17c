import pytest

from bezelbook.kinds.record import Record
from bezelbook.reasoning.screens.screen_at import ScreenAt, overhung
from bezelbook.reasoning.unknowns import Missing
from tests.reasoning import making
from tests.reasoning.screens.dashes import control, floater, over, ruled


def missing(found: ScreenAt) -> list[str]:
    return [one.what for one in found.missing]


def round_about(**changes: str | None) -> list[dict[str, str]]:
    """A control beyond each edge, all far away."""
    off = {"near": "200 ± 1 mm", "far": "220 ± 1 mm"} | changes
    return [control(edge, beyond=edge, **off) for edge in ("top", "bottom", "left", "right")]


def test_everything_that_was_looked_at_leaves_nothing_to_look_at() -> None:
    found = over(floater(), ruled(*round_about()))
    assert found.verdict == "usable"
    assert found.missing == ()


def test_an_outline_that_was_never_measured_comes_first() -> None:
    found = over(floater(width="240 mm printed"), ruled(control()))
    assert (found.verdict, found.lying) == ("not looked", None)
    assert missing(found) == ["the outline of the screen of floater"]
    assert found.missing[0].look == "caliper, 2 min on the bench"


def test_an_edge_that_it_hangs_over_wants_a_look() -> None:
    assert missing(over(floater(), ruled())) == [
        "controls beyond the top, bottom, left, right of the opening: none measured"
    ]
    found = over(floater(width="170 ± 1 mm caliper"), ruled(control()))
    assert missing(found)[0] == "controls beyond the bottom of the opening: none measured"
    assert found.lying is not None
    assert overhung(found.lying) == ("top", "bottom")


def test_an_opening_that_nobody_measured_places_nothing() -> None:
    blank = making.measured("blank", making.reading("nose width", "180 ± 1 mm"), controls=[control()])
    found = over(floater(), blank)
    assert found.verdict == "not looked"
    assert "the height of the opening" in missing(found)
    assert "the width of the opening" not in missing(found)
    beside = making.measured("blank", making.reading("nose width", "180 ± 1 mm"), controls=[control(beyond="left")])
    assert "the width of the opening" in missing(over(floater(), beside))


def test_what_nobody_looked_at_of_the_screen_is_said_where_there_are_controls() -> None:
    assert "how far its screen leans" in missing(over(floater(tilt_most=None), ruled(control())))
    assert "how far its screen leans" not in missing(over(floater(tilt_most=None), ruled()))


def test_a_body_with_much_play_wants_a_look_at_its_kit() -> None:
    what = "how high in the opening the body sits"
    assert what in missing(over(floater(), ruled(control(), height="150 ± 1 mm")))
    assert what not in missing(over(floater(), ruled(control())))


def test_a_control_that_is_in_the_way_is_asked_for_its_blanks() -> None:
    found = over(floater(), ruled(control(near="1 ± 1 mm", ends=None, stands_out=None)))
    assert "where the hazard switch starts and ends" in missing(found)
    assert "how far the hazard switch stands out, against the offset of the screen" in missing(found)
    free = over(floater(), ruled(control(near="25 ± 1 mm", ends=None, stands_out=None)))
    assert free.verdict == "usable if set"
    assert not [what for what in missing(free) if "hazard switch" in what]


def test_a_control_that_the_best_setting_just_clears_is_not_asked_for_its_blanks() -> None:
    """Set 20 mm down the screen ends at most 50.5 mm over the middle of the opening, whose half is at least 50."""
    blanks = {"ends": None, "stands_out": None}
    just = over(floater(), ruled(control(near="1.5 ± 1 mm", **blanks)))
    assert not [what for what in missing(just) if "hazard switch" in what]
    not_quite = over(floater(), ruled(control(near="1.4999 ± 1 mm", **blanks)))
    assert "where the hazard switch starts and ends" in missing(not_quite)


def test_mounts_decide_where_the_body_sits() -> None:
    unit = making.changed(floater(), body_height="50 ± 1 mm caliper")
    upper = {"height": "53 ± 1 mm caliper", "ninths": ["upper-left", "upper", "upper-right"]}
    found = over(unit, ruled(control()), making.mount(presents=upper), mounts=("kit",))
    assert found.lying is not None
    assert found.lying.seat.height.low > 0


COVERS = "what the screen of floater covers"


def test_each_question_says_how_to_look_and_what_that_settles() -> None:
    blank = making.measured("blank", making.reading("nose width", "180 ± 1 mm"), controls=[control()])
    beside = making.measured("blank", making.reading("nose width", "180 ± 1 mm"), controls=[control(beyond="left")])
    lean = Missing("how far its screen leans", "caliper, 3 min on the bench", COVERS)
    assert over(floater(), ruled()).missing == (
        Missing(
            "controls beyond the top, bottom, left, right of the opening: none measured",
            "tape from the edge of the opening, 5 min",
            COVERS,
        ),
    )
    assert lean in over(floater(tilt_most=None), ruled(control())).missing
    assert (
        Missing("the height of the opening", "caliper at three points, 2 min", COVERS) in over(floater(), blank).missing
    )
    assert (
        Missing("the width of the opening", "caliper at three points, 2 min", COVERS) in over(floater(), beside).missing
    )
    assert (
        Missing("how high in the opening the body sits", "hold it in the kit and rule it, 2 min", COVERS)
        in over(floater(), ruled(control(), height="150 ± 1 mm")).missing
    )


def test_a_control_in_the_way_is_asked_for_after_one_that_is_free() -> None:
    near = control("vent", near="1 ± 1 mm", ends=None, stands_out=None)
    found = over(floater(), ruled(*round_about(), control(beyond="left", near="300 ± 1 mm", far=None), near))
    assert found.missing == (
        Missing("where the vent starts and ends", "tape from the edge of the opening, 3 min", COVERS),
        Missing(
            "how far the vent stands out, against the offset of the screen",
            "rule it, 2 min",
            "whether the screen touches it",
        ),
    )


def test_what_is_free_however_it_is_set_is_not_asked_for_its_blanks() -> None:
    found = over(floater(), ruled(*round_about(near="25 ± 1 mm", far=None, stands_out=None), control(near="44 ± 1 mm")))
    assert found.verdict != "usable"
    assert "how far the hazard switch stands out, against the offset of the screen" not in missing(found)


def test_it_says_of_which_build_it_speaks() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    note = ruled(control(), splits={"build": "late"})
    assert over(car, floater(), note, build=1).build == (("build", "late"),)
    unmeasured = over(car, floater(width="240 mm printed"), note, build=1)
    assert unmeasured.build == (("build", "late"),)
    assert unmeasured.missing[0].changes == "what it covers"


# By hand, of an opening of at least 179 x 100 mm and a body with 2 mm of play aside and 1.5 mm up and down: the screen
# reaches 2 mm and half of its width from the middle, and 1.5 mm, half of its height and what it can be set.
@pytest.mark.parametrize(
    ("width", "height", "set_by", "edges"),
    [
        ("174 ± 1 mm", "56 ± 1 mm", ("20 mm", "20 mm"), ()),
        ("174 ± 1 mm", "56.1 ± 1 mm", ("20 mm", "0 mm"), ("bottom",)),
        ("174 ± 1 mm", "56.1 ± 1 mm", ("0 mm", "20 mm"), ("top",)),
        ("174.1 ± 1 mm", "56 ± 1 mm", ("20 mm", "20 mm"), ("left", "right")),
    ],
)
def test_it_hangs_over_an_edge_from_where_it_reaches_past_it(
    width: str, height: str, set_by: tuple[str, str], edges: tuple[str, ...]
) -> None:
    sizes = {"width": f"{width} caliper", "height": f"{height} caliper"}
    assert hung(floater(**sizes, height_down=set_by[0], height_up=set_by[1]), ruled()) == edges


def test_a_screen_that_always_leans_is_never_as_high_as_upright() -> None:
    """By hand: at 60 degrees 113 mm are 56.5, whose half is 28.25 mm."""
    leaning = {"width": "174 ± 1 mm caliper", "height": "112 ± 1 mm caliper", "tilt_least": "60 deg"}
    assert hung(floater(**leaning, tilt_most="60 deg"), ruled()) == ()
    assert hung(floater(**{**leaning, "tilt_least": "0 deg"}, tilt_most="60 deg"), ruled()) == ("top", "bottom")


def test_a_body_to_the_left_hangs_over_to_the_left() -> None:
    unit = making.changed(floater(width="200 ± 1 mm caliper"), body_width="50 ± 1 mm caliper")
    left = {"width": "53 ± 1 mm caliper", "ninths": ["upper-left", "left", "lower-left"]}
    lower = {"height": "53 ± 1 mm caliper", "ninths": ["lower-left", "lower", "lower-right"]}
    assert hung(unit, ruled(), making.mount(presents=left), mounts=("kit",)) == ("top", "bottom", "left")
    flat = making.changed(
        floater(height="50 ± 1 mm caliper", width="150 ± 1 mm caliper", height_up="0 mm", height_down="0 mm"),
        body_height="50 ± 1 mm caliper",
    )
    assert hung(flat, ruled(), making.mount(presents=lower), mounts=("kit",)) == ("bottom",)


def hung(*records: Record, mounts: tuple[str, ...] = ()) -> tuple[str, ...]:
    """The edges that the screen hangs over."""
    found = over(*records, mounts=mounts)
    assert found.lying is not None
    return overhung(found.lying)
