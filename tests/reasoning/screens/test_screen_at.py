from bezelbook.reasoning.screens.screen_at import ScreenAt, overhung
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


def test_mounts_decide_where_the_body_sits() -> None:
    unit = making.changed(floater(), body_height="50 ± 1 mm caliper")
    upper = {"height": "53 ± 1 mm caliper", "ninths": ["upper-left", "upper", "upper-right"]}
    found = over(unit, ruled(control()), making.mount(presents=upper), mounts=("kit",))
    assert found.lying is not None
    assert found.lying.seat.height.low > 0
