"""Mounts as maps: which hole a stack presents, how far it holds the part out, and what it hides."""

import pytest

from bezelbook.reasoning.mounting import BARE, Stack, stack_of
from bezelbook.values.span import NOTHING, UNKNOWN, Span
from bezelbook.values.words import NINTHS
from tests.reasoning.making import book, mount, shop


def mm(low: float, high: float) -> Span:
    return Span(int(low * 1_000_000), int(high * 1_000_000))


def one(**content: object) -> Stack:
    """The map of one mount with this content."""
    return stack_of(book(mount(**content)), ("kit",))


def test_no_mount_changes_nothing() -> None:
    assert stack_of(book(), ()) == BARE
    assert (BARE.offset, BARE.holes, BARE.ninths, BARE.strange, BARE.words) == (NOTHING, {}, NINTHS, (), "no mount")


@pytest.mark.parametrize(
    ("proud", "offset"),
    [
        ("flush", NOTHING),
        ("+6 mm ± 0.5 mm caliper", mm(5.5, 6.5)),
        ("-3 mm ± 1 mm", mm(-4, -2)),
        ("6 mm caliper", mm(5.8, 6.2)),
        ("6 mm printed", UNKNOWN),
        ("6 ± 1 mm printed", UNKNOWN),
        ("6 mm", UNKNOWN),
    ],
)
def test_a_mount_holds_the_part_out_by_what_was_measured_and_not_by_what_is_printed(proud: str, offset: Span) -> None:
    assert one(proud=proud).offset == offset


def test_a_spacer_holds_the_part_out_by_its_thickness() -> None:
    assert one(proud=None, thickness="10 ± 1 mm").offset == mm(9, 11)
    assert one(proud=None, thickness="10 mm caliper").offset == mm(9.8, 10.2)
    assert one(proud="flush", thickness="10 ± 1 mm").offset == NOTHING


def test_a_mount_that_says_neither_holds_it_out_nobody_knows_how_far() -> None:
    assert one(proud=None).offset == UNKNOWN


def test_the_offsets_of_a_stack_add_up() -> None:
    of = book(mount("near", proud="6 ± 1 mm"), mount("far", proud="-2 ± 0.5 mm"), mount("odd", proud="6 mm printed"))
    assert stack_of(of, ("near", "far")).offset == mm(2.5, 5.5)
    assert stack_of(of, ("near", "odd")).offset == UNKNOWN


def test_the_last_mount_that_frames_a_size_presents_it() -> None:
    near = mount("near", presents={"width": "184 ± 1 mm", "height": "110 ± 1 mm", "nose_width": "186 ± 1 mm"})
    far = mount("far", presents={"width": "182 mm caliper"})
    stack = stack_of(book(near, far), ("near", "far"))
    assert stack.holes == {
        "width": ("far", mm(181.8, 182.2)),
        "height": ("near", mm(109, 111)),
        "nose width": ("near", mm(185, 187)),
    }


def test_the_house_says_how_far_a_caliper_on_the_bench_is_trusted() -> None:
    of = book(mount(proud="6 mm caliper"), shop(tools={"bench_caliper": "1 mm"}))
    assert stack_of(of, ("kit",)).offset == mm(5, 7)


def test_only_the_ninths_behind_the_last_hole_count() -> None:
    near = mount("near", presents={"ninths": ["upper", "centre"]})
    of = book(near, mount("far", presents={"ninths": ["centre"]}), mount("plain"))
    assert stack_of(of, ("near", "far")).ninths == ("centre",)
    assert stack_of(of, ("near", "plain")).ninths == ("upper", "centre")


def test_a_mount_without_a_record_is_one_and_the_same_unknown_thing_however_it_is_written() -> None:
    stack = stack_of(book(), ("Bottom-shelf  kit",))
    assert (stack.key, stack.offset, stack.strange) == (('"bottom shelf kit"',), UNKNOWN, ("Bottom-shelf  kit",))
    assert set(stack.holes.values()) == {('"bottom shelf kit"', UNKNOWN)}
    assert stack.key == stack_of(book(), ("bottom shelf kit",)).key
    assert stack_of(book(mount(name="the kit")), ("Bottom-shelf kit", "kit")).strange == ("Bottom-shelf kit",)
    assert stack_of(book(mount(name="the kit")), ("kit", "odd ring")).words == 'the kit and "odd ring"'


def test_a_mount_is_known_by_its_other_names() -> None:
    of = book(mount(name="the deep kit", also=["deep one"]))
    assert stack_of(of, ("Deep one",)) == stack_of(of, ("kit",))


def test_a_stack_is_said_nearest_the_car_first() -> None:
    of = book(mount("near", name="inner ring"), mount("far", name="bezel"))
    assert stack_of(of, ("near", "far")).words == "inner ring and bezel"
    assert stack_of(of, ("near", "far")).key != stack_of(of, ("far", "near")).key
