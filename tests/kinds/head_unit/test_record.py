from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.head_unit.record import HeadUnit

LEAST = {"id": "short-double", "name": "Short double", "size_class": "double"}


def unit(**fields: Any) -> HeadUnit:
    return HeadUnit.model_validate({**LEAST, **fields})


def test_a_name_and_a_size_class_are_enough() -> None:
    assert unit().body_depth is None
    assert unit().needs == ()


def test_a_size_keeps_how_it_was_read_and_how_well() -> None:
    size = unit(body_depth="96 mm ± 0.5 mm caliper").body_depth
    assert size is not None
    assert (size.base, size.give, size.by) == (96_000_000, 500_000, "caliper")
    assert size.typed == "96 mm ± 0.5 mm caliper"


def test_a_printed_size_says_so() -> None:
    size = unit(body_depth="118 mm printed").body_depth
    assert size is not None
    assert (size.by, size.give) == ("printed", None)


@pytest.mark.parametrize("bare", [165, 6.5])
def test_a_bare_number_is_refused_with_both_readings(bare: float) -> None:
    with pytest.raises(ValidationError, match=rf"{bare} mm or {bare} in"):
        unit(body_depth=bare)


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("size_class", "2-DIN"),
        ("plug_exit", "top"),
        ("needs", ["handbrake"]),
        ("pre_outs", -1),
        ("pre_outs", 2.5),
        ("mass", "1.1 mm"),
        ("fuse", "10 W"),
        ("least_load", "-4 ohm"),
        ("body_depth", "flush"),
        ("side_screw", {"thread": "M5"}),
        ("plug_face", "rear"),
        ("other_plugs", [{"exit": "left"}]),
        ("other_plugs", [{"what": "phono", "exit": "side"}]),
        ("goes_with", ["The box"]),
    ],
)
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        unit(**{field: wrong})


@pytest.mark.parametrize("thread", ["M5", "M2.5", "10-32"])
def test_a_side_screw_has_a_thread_and_a_length_it_must_not_pass(thread: str) -> None:
    screw = unit(side_screw={"thread": thread, "longest": "6 mm"}).side_screw
    assert screw is not None
    assert (screw.thread, screw.longest.base) == (thread, 6_000_000)


def test_a_screen_can_sit_flush_and_tilt_both_ways() -> None:
    screen = unit(
        screen={
            "width": "252 mm caliper",
            "height": "148 mm caliper",
            "offset_least": "flush",
            "tilt_least": "-5 deg",
            "tilt_most": "15 deg",
        }
    ).screen
    assert screen is not None
    assert screen.offset_least is not None
    assert screen.tilt_least is not None
    assert (screen.offset_least.base, screen.tilt_least.base) == (0, -5_000)


def test_plugs_beside_the_main_one_take_room_of_their_own() -> None:
    phono = unit(other_plugs=[{"what": "phono", "exit": "left", "plug_and_bend": "42 mm caliper"}]).other_plugs[0]
    assert phono.plug_and_bend is not None
    assert (phono.exit, phono.plug_and_bend.base) == ("left", 42_000_000)


def test_a_radio_in_two_pieces_names_its_other_piece() -> None:
    assert unit(goes_with=["short-double-box"]).goes_with == ("short-double-box",)
