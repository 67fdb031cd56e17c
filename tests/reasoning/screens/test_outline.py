from bezelbook.reasoning.screens.between import FAR, Between
from bezelbook.reasoning.screens.outline import Outline, outline_of
from tests.reasoning import making
from tests.reasoning.screens.dashes import floater, mm


def outline(**screen: str | None) -> Outline:
    unit = floater(**screen)
    found = outline_of(making.book(unit), unit)
    assert found is not None
    return found


def test_sizes_come_with_their_tolerance() -> None:
    found = outline(width="252 mm caliper")
    assert found.width == Between(mm(252) - 200_000, mm(252) + 200_000)
    assert found.half_width.high == (mm(252) + 200_000) / 2
    assert found.height == Between(mm(139), mm(141))
    assert outline(width="252 ± 1 mm").width == Between(mm(251), mm(253))


def test_a_screen_that_was_never_measured_has_no_outline() -> None:
    for width in ("240 mm printed", "240 mm", "240 ± 1 mm printed"):
        unit = floater(width=width)
        assert outline_of(making.book(unit), unit) is None
    box = making.unit()
    assert outline_of(making.book(box), box) is None


def test_a_leaning_screen_is_lower_and_no_narrower() -> None:
    found = outline(tilt_most="60 deg")
    assert (found.flattest, found.steepest) == (0, 60_000)
    assert abs(found.half_height(60_000).high - mm(141) / 4) < 10
    assert found.half_height(0) == Between(mm(139) / 2, mm(141) / 2)


def test_of_two_leans_to_one_side_the_smaller_is_the_flattest() -> None:
    found = outline(tilt_least="15 deg", tilt_most="5 deg")
    assert (found.flattest, found.steepest) == (5_000, 15_000)


def test_a_lean_that_nobody_looked_at_may_be_any() -> None:
    found = outline(tilt_most=None)
    assert (found.flattest, found.steepest) == (None, None)
    assert found.half_height(None) == Between(mm(0), mm(141) / 2)
    assert found.dip == mm(141) / 2
    assert found.blanks == ("how far its screen leans",)


def test_an_edge_dips_by_the_sine_of_its_lean() -> None:
    assert abs(outline(tilt_most="30 deg").dip - mm(141) / 4) < 10
    assert outline().dip == 0


def test_a_height_that_nobody_looked_at_is_not_taken_for_none() -> None:
    found = outline(height_down=None, height_up=None)
    assert found.down == found.up == 0
    assert (found.down_most, found.up_most) == (FAR, FAR)
    assert found.blanks == ("how far up and down its screen can be set",)
    assert outline().down == outline().down_most == mm(20)


def test_an_offset_is_only_known_where_it_was_measured() -> None:
    assert outline().nearest == Between(mm(9), mm(11))
    assert outline(offset_least="flush").nearest == Between(mm(0), mm(0))
    assert not outline(offset_most="40 mm printed").furthest.bounded
    assert not outline(offset_most=None).furthest.bounded


def test_a_body_that_was_not_measured_may_be_any() -> None:
    unit = making.changed(floater(), body_height=None, body_width="178 mm printed")
    found = outline_of(making.book(unit), unit)
    assert found is not None
    assert found.body_height == found.body_width == Between(mm(0), FAR)


def test_a_size_without_a_tolerance_has_the_houses_for_a_caliper() -> None:
    """Here 0.2 mm."""
    sizes = ("width", "height", "offset_least", "offset_most")
    unit = floater(**dict.fromkeys(sizes, "40 mm caliper"))
    unit = making.changed(unit, body_width="40 mm caliper", body_height="40 mm caliper")
    found = outline_of(making.book(unit), unit)
    assert found is not None
    house = Between(mm(40) - 200_000, mm(40) + 200_000)
    assert (found.width, found.height, found.nearest, found.furthest) == (house,) * 4
    assert (found.body_width, found.body_height) == (house, house)


def test_leans_on_both_sides_of_upright_have_upright_between_them() -> None:
    for least, most in (("-15 deg", "5 deg"), ("5 deg", "-15 deg"), ("-15 deg", "0 deg")):
        found = outline(tilt_least=least, tilt_most=most)
        assert (found.flattest, found.steepest) == (0, 15_000)
    back = outline(tilt_least="-15 deg", tilt_most="-5 deg")
    assert (back.flattest, back.steepest) == (5_000, 15_000)


def test_nothing_is_less_than_nothing() -> None:
    assert outline(width="0.5 ± 1 mm caliper").width == Between(mm(0), mm("1.5"))
