from fractions import Fraction
from typing import Any

import pytest

from bezelbook.kinds.record import Record
from bezelbook.reasoning.looks.bench_looks import is_coarse, mount_ways, unit_ways
from bezelbook.reasoning.looks.look import CHASSIS, PLUG, Look, Todo
from bezelbook.reasoning.looks.ranking import looks as every_look
from bezelbook.reasoning.looks.readings import TRIED, numbered
from bezelbook.reasoning.mounting import stack_of
from bezelbook.reasoning.needs import Needs, needs_of_unit
from bezelbook.values.span import Span
from tests.reasoning import making

MM = 1_000_000
DEEP = making.reading("depth", "205 ± 1 mm")
FRAME = (making.roomy(), making.measured("wire", DEEP))
HERE = [{"vehicle": making.CAR, "place": making.HOLE}]


def box(named: str = "box", **content: Any) -> Record:
    """A box of which all is known as closely as a caliper tells."""
    sizes = {"body_width": "178", "body_height": "100", "nose_width": "170", "nose_height": "95", "body_depth": "110"}
    known = {size: f"{length} ± 0.2 mm caliper" for size, length in sizes.items()}
    return making.unit(named, **{**known, "plug_and_bend": "32 ± 1 mm caliper", **content})


def looks(*records: Record) -> dict[str, Look]:
    base = making.book(*records)
    found = every_look(base, {(making.CAR, making.HOLE): making.place(base)})
    return {look.todo.what: look for look in found}


BOOK = making.book(box())


def needs_of(**content: Any) -> Needs:
    unit = box(**content)
    base = making.book(unit)
    return needs_of_unit(base, base.head_units["box"])


def words(**content: Any) -> list[str]:
    return [way.todo.what for way in unit_ways(BOOK, BOOK.head_units["box"], needs_of(**content), {})]


def read(needs: Needs, number: int) -> Needs:
    """All that the bench would say in the outcome of a number."""
    for way in unit_ways(BOOK, BOOK.head_units["box"], needs, {}):
        assert way.needs is not None
        needs = way.needs(needs, number)
    return needs


def middles(spans: list[Span]) -> list[float]:
    return sorted(((span.low or 0) + (span.high or 0)) / 2 / MM for span in spans)


def test_a_printed_depth_is_worth_a_caliper() -> None:
    found = looks(box(body_depth="110 mm printed"), *FRAME)
    look = found["depth of box"]
    assert (look.todo.tool, look.todo.minutes, look.todo.vehicle, look.todo.about) == ("caliper", 2, None, "box")
    assert set(look.settles.values()) == {Fraction(1)}


def test_a_plug_that_nobody_ruled_is_worth_plugging_in() -> None:
    found = looks(box(plug_and_bend=None, body_depth="165 ± 0.2 mm caliper"), *FRAME)
    look = found["plug and bend of box"]
    assert (look.todo.minutes, look.todo.bay_hours) == (3, PLUG)
    # 15 to 65 mm in sevenths: 18.6, 25.7 and so on to 61.4, each ± 1. Behind 165 ± 0.2 the first three go into 205 ± 1,
    # and the last three do not; 40 is too near to say.
    assert set(look.settles.values()) == {Fraction(6, 7)}


def test_a_unit_of_which_all_is_known_needs_no_bench() -> None:
    assert looks(box(), *FRAME) == {}
    assert words() == []


def test_what_is_blank_printed_or_coarse_is_named_and_what_is_known_is_not() -> None:
    assert words(body_depth=None) == ["depth of box"]
    assert words(body_width="178 ± 1 mm caliper", body_depth="110 mm printed") == ["width and depth of box"]
    assert words(rear_protrusion="10 mm printed") == ["depth and what stands out behind of box"]


def test_what_was_read_closely_is_not_read_again_for_what_it_comes_to_with_something_coarse() -> None:
    """By hand: 32 ± 1 ruled over 12 ± 2 is 20 ± 3, and 110 ± 0.4 with 12 ± 0.4 behind it 122 ± 0.8."""
    assert words(rear_protrusion="12 ± 2 mm caliper") == ["depth and what stands out behind of box"]
    assert words(rear_protrusion="12 ± 0.4 mm caliper", body_depth="110 ± 0.4 mm caliper") == []
    assert words(rear_protrusion="12 ± 0.4 mm caliper", plug_and_bend="32 ± 3 mm caliper") == ["plug and bend of box"]


@pytest.mark.parametrize(
    ("trusted", "told"), [("0.5 mm", ["depth of box"]), ("1 mm", []), ("0.9 mm", ["depth of box"])]
)
def test_a_caliper_tells_nothing_closer_than_the_bench_trusts_it(trusted: str, told: list[str]) -> None:
    rough = making.shop(tools={"bench_caliper": trusted})
    of = making.book(rough, box(body_depth="110 ± 1 mm"), making.mount(presents={"width": "180 ± 1 mm"}))
    unit = of.head_units["box"]
    assert [way.todo.what for way in unit_ways(of, unit, needs_of_unit(of, unit), {})] == told
    assert len(mount_ways(of, [stack_of(of, ("kit",))])) == len(told)
    assert words(plug_exit=None) == ["plug and bend of box"]
    assert words(plug_and_bend="32 ± 3 mm") == ["plug and bend of box"]


def test_coarse_is_what_may_be_anything_in_a_wider_span() -> None:
    assert not is_coarse(Span(3, 8), 5)
    assert is_coarse(Span(3, 9), 5)
    assert is_coarse(Span(3, None), 5)
    assert is_coarse(Span(None, 3), 5)


def test_a_look_at_one_unit_settles_that_unit_alone() -> None:
    found = looks(box(body_depth="110 mm printed"), box("other", body_depth="110 mm"), *FRAME)
    assert {pair.unit for pair in found["depth of box"].settles} == {"box"}


def test_a_caliper_reads_about_what_is_printed_within_what_is_known_or_anything_usual() -> None:
    outcomes = range(TRIED)
    printed = [read(needs_of(body_width="178 mm printed"), number).spans["width"] for number in outcomes]
    off = [found - 178 for found in middles(printed)]
    assert off == pytest.approx([step * 2 / 7 for step in range(-3, 4)], abs=0.001)
    assert {(span.high or 0) - (span.low or 0) for span in printed} == {400_000}
    coarse = middles([read(needs_of(body_width="178 ± 3.5 mm"), number).spans["width"] for number in outcomes])
    assert coarse == [175, 176, 177, 178, 179, 180, 181]
    # A depth is usually 20 to 220 mm.
    blank = middles([read(needs_of(body_depth=None), number).spans["depth"] for number in outcomes])
    assert (round(blank[0], 2), round(blank[-1], 2)) == (34.29, 205.71)


def test_plugging_it_in_shows_where_the_plug_leaves_and_keeps_what_is_known() -> None:
    found = [read(needs_of(plug_exit=None), number) for number in range(TRIED)]
    assert {one.exit for one in found} == {"centre", "left", "right", "upper", "lower"}
    assert {one.plug_over_body for one in found} == {needs_of().plug_over_body}
    ruled = [read(needs_of(plug_and_bend=None), number) for number in range(TRIED)]
    assert {one.exit for one in ruled} == {"right"}
    # A plug asks for 15 to 65 mm: the middles of seven parts of that, each ± 1.
    middle = middles([one.plug_over_body for one in ruled])
    assert middle == pytest.approx([15 + 50 * part / 14 for part in range(1, 14, 2)], abs=0.000001)
    assert ruled[0].spans["plug"] == ruled[0].spans["depth"].plus(ruled[0].plug_over_body)


def test_a_kit_whose_hole_or_offset_is_not_known_closely_is_worth_a_caliper() -> None:
    kit = making.mount(made_for=HERE, presents={"width": "180 mm printed", "height": "100 ± 2 mm"}, proud="+5 ± 3 mm")
    base = making.book(kit)
    [way] = mount_ways(base, [making.stack(base, "kit")])
    what = "width of the hole, height of the hole and offset of kit"
    assert way.todo == Todo(None, None, (), what, "caliper", 2, CHASSIS, "kit")
    assert way.tells is not None
    told = [way.tells(number) for number in range(TRIED)]
    assert {frozenset(one) for one in told} == {frozenset({("kit", "width"), ("kit", "height"), ("kit", "offset")})}
    heights = middles([one["kit", "height"] for one in told])
    assert (round(heights[0], 3), round(heights[-1], 3)) == (98.286, 101.714)
    offsets = middles([one["kit", "offset"] for one in told])
    assert (round(offsets[0], 3), round(offsets[-1], 3)) == (2.429, 7.571)


def test_a_hole_that_is_only_printed_is_likely_a_little_larger_than_boxes_of_the_book() -> None:
    base = making.book(box(), making.mount(made_for=HERE, presents={"width": "180 mm printed"}))
    [way] = mount_ways(base, [making.stack(base, "kit")])
    assert way.tells is not None
    told = [way.tells(number)["kit", "width"] for number in range(TRIED)]
    assert set(middles(told)) == {176, 179, 182, 185, 188}


def test_an_offset_that_nobody_measured_may_be_anything_usual() -> None:
    kit = making.record("mounts", "kit", {"name": "kit", "mount_kind": "kit"})
    base = making.book(kit)
    [way] = mount_ways(base, [making.stack(base, "kit")])
    assert way.tells is not None
    offsets = middles([way.tells(number)["kit", "offset"] for number in range(TRIED)])
    assert (round(offsets[0], 2), round(offsets[-1], 2)) == (-7.86, 17.86)


def test_of_two_kits_together_the_offset_of_neither_can_be_told() -> None:
    base = making.book(making.mount("a", proud="+5 ± 3 mm"), making.mount("b"))
    assert mount_ways(base, [making.stack(base, "a", "b")]) == ()


def test_a_kit_that_is_known_and_something_home_made_are_no_looks() -> None:
    base = making.book(making.mount())
    assert mount_ways(base, [making.stack(base, "kit"), making.stack(base, "some wood")]) == ()
    assert mount_ways(base, []) == ()


def test_measuring_the_kit_settles_what_hangs_on_its_hole() -> None:
    kit = making.mount(made_for=HERE, presents={"width": "179 ± 2 mm"})
    found = looks(kit, box(), *FRAME)
    # 177 to 181 in sevenths, each ± 0.2, for a body of 178 ± 0.2: 177.3 is too small, 177.9 too near, the rest enough.
    assert set(found["width of the hole of kit"].settles.values()) == {Fraction(6, 7)}


def test_what_is_done_on_the_bench_is_at_no_car_and_names_its_unit() -> None:
    ways = unit_ways(BOOK, BOOK.head_units["box"], needs_of(body_depth=None, plug_and_bend=None), {})
    assert [way.todo for way in ways] == [
        Todo(None, None, (), "depth of box", "caliper", 2, CHASSIS, "box"),
        Todo(None, None, (), "plug and bend of box", "plug it in and rule it", 3, PLUG, "box"),
    ]


def test_a_size_that_was_read_is_no_longer_only_printed() -> None:
    printed = needs_of(body_depth="110 mm printed")
    assert set(printed.printed) == {"depth"}
    assert read(printed, 0).printed == {}


def test_unit_mount_and_opening_are_never_at_their_least_in_the_same_outcome() -> None:
    kit = making.mount(made_for=HERE, presents={"width": "180 ± 2 mm"})
    base = making.book(kit)
    [way] = mount_ways(base, [making.stack(base, "kit")])
    assert way.tells is not None
    holes = [way.tells(number)["kit", "width"].low or 0 for number in range(TRIED)]
    units = [read(needs_of(body_width="178 ± 3.5 mm"), number).spans["width"].low or 0 for number in range(TRIED)]
    opening = [numbered("width", number) for number in range(TRIED)]
    assert len({of.index(min(of)) for of in (holes, units, opening)}) == 3
