from bezelbook.reasoning.screens.between import exactly
from bezelbook.reasoning.screens.controls import Hole, near
from bezelbook.reasoning.screens.offset import Touching, touching
from bezelbook.reasoning.screens.outline import outline_of
from tests.reasoning import making
from tests.reasoning.screens.dashes import control, floater, mm, ruled


def touch(stands_out: str | None, **screen: str | None) -> Touching:
    """A screen that can stand 10 ± 1 to 40 ± 1 mm off the dash, over something that stands out."""
    unit = floater(**screen)
    outline = outline_of(making.book(unit), unit)
    assert outline is not None
    [said] = ruled(control(stands_out=stands_out)).controls
    return touching(outline, near(said, "a-note", Hole(exactly(mm(180)), exactly(mm(100))), 0, sure=True))


def test_what_is_flatter_than_the_nearest_offset_is_never_touched() -> None:
    assert touch("8 ± 1 mm") == Touching("clears", mm(9))
    assert touch("8.1 ± 1 mm").touch == "clears from"


def test_what_is_deeper_is_clear_from_some_offset_on() -> None:
    assert touch("38 ± 1 mm") == Touching("clears from", mm(39))
    assert touch("38.1 ± 1 mm").touch == "not looked"


def test_what_stands_out_further_than_any_offset_is_touched() -> None:
    assert touch("42 ± 1 mm").touch == "not looked"
    assert touch("43 ± 1 mm") == Touching("touches", mm(44))


def test_a_lean_brings_an_edge_nearer() -> None:
    """Leaning 30°, the edge of a screen of 141 mm comes 35.25 mm nearer."""
    found = touch("3 ± 1 mm", tilt_most="30 deg")
    assert found.touch == "not looked"
    assert found.clear_from is not None
    assert abs(found.clear_from - mm(4) - mm("35.25")) < 10
    assert touch("3 ± 1 mm", tilt_most="20 deg").touch == "clears from"


def test_a_lean_may_also_take_an_edge_out_of_reach() -> None:
    """Leaning 30°, some edge may be 35.25 mm nearer than 41; to be touched for certain takes more than 76.25 mm."""
    assert touch("60 ± 1 mm", tilt_most="30 deg").touch == "not looked"
    assert touch("78 ± 1 mm", tilt_most="30 deg").touch == "touches"


def test_without_its_number_nothing_is_said() -> None:
    assert touch(None) == Touching("not looked", None)
    assert touch("8 ± 1 mm", offset_least=None).touch == "clears from"
    assert touch("8 ± 1 mm", offset_least=None, offset_most=None).touch == "not looked"
