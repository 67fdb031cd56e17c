"""The numbers that a fit is about, what a thing asks of them, and what always holds between them."""

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.bounds import Constraint, Either, Rise, Search, Under, exactly
from bezelbook.reasoning.cells import (
    Cell,
    HoleCell,
    PartSize,
    PresentedCell,
    RoomCell,
    between,
    cells_met,
    demands,
    depth_cell,
    frame_of,
    hole_cell,
    structure,
    structure_met,
)
from bezelbook.reasoning.mounting import BARE, Stack
from bezelbook.reasoning.needs import needs_of_sizes, needs_of_unit
from bezelbook.values.span import UNKNOWN, Span
from bezelbook.values.words import NINTHS
from tests.reasoning.making import (
    CAR,
    HOLE,
    book,
    frame,
    length,
    measured,
    mount,
    reading,
    roomy,
    setting,
    split,
    stack,
    tried,
    unit,
    vehicle,
)

NOSED = unit(nose_width="180 ± 1 mm caliper", nose_height="102 ± 1 mm caliper")
PLUG_ONLY = {"subjects": ["plug"]}
BEZEL = vehicle(places={HOLE: {"kind": "opening behind a bezel", "side": "centre"}})


def asked(of: KnowledgeBase, *mounts: str, plugs_on: bool = True, **content: str | None) -> dict[str, list[str | None]]:
    """The ninths at which a box asks for each of its needs; None for its width, height and nose."""
    made = needs_of_unit(of, unit(**content) if content else NOSED)
    sure, plug = demands(frame(of), made, setting(of, *mounts, plugs_on=plugs_on))
    found: dict[str, list[str | None]] = {}
    for demand in sure + plug:
        found.setdefault(demand.need, []).append(demand.ninth)
    return found


def test_a_body_asks_for_width_height_and_depth_in_every_ninth_and_its_plug_where_it_leaves() -> None:
    assert asked(book()) == {"width": [None], "height": [None], "depth": list(NINTHS), "plug": ["right"]}


def test_of_a_width_all_of_the_hole_counts() -> None:
    of = book(BEZEL)
    sure, _ = demands(frame(of), needs_of_unit(of, NOSED), setting(of))
    assert [one.shift for one in sure if one.ninth is None] == [0, 0, 0, 0]


def test_with_the_plugs_off_nothing_is_asked_for_the_plug() -> None:
    assert "plug" not in asked(book(), plugs_on=False)


def test_a_plug_of_which_nobody_said_where_it_leaves_may_leave_anywhere() -> None:
    assert asked(book(), plug_exit=None)["plug"] == list(NINTHS)


def test_a_nose_counts_only_where_a_bezel_or_a_mount_frames_it() -> None:
    framing = book(mount(presents={"nose_width": "184 mm caliper"}))
    assert {"nose width", "nose height"} & set(asked(framing)) == set()
    assert {"nose width", "nose height"} & set(asked(framing, "kit")) == {"nose width"}
    assert {"nose width", "nose height"} <= set(asked(book(BEZEL)))


def test_a_nose_counts_wherever_a_note_tells_of_one() -> None:
    read = measured("tape", reading("nose width", "186 ± 0.5 mm"))
    high = measured("high", reading("nose height", "110 ± 0.5 mm"))
    stopped = tried("stopped", verdict="does not", reason="nose")
    other = tried("other", verdict="does not", reason="depth")
    assert [frame(book(note)).nose_framed for note in (read, high, stopped)] == [True, True, True]
    assert [frame(book(note)).nose_framed for note in (other, roomy())] == [False, False]


def test_a_hole_over_part_of_the_opening_asks_for_depth_behind_itself_only() -> None:
    of = book(mount(presents={"ninths": ["upper", "centre"]}))
    assert asked(of, "kit") == {"width": [None], "height": [None], "depth": ["upper", "centre"], "plug": ["right"]}
    assert asked(of, "kit", plug_exit=None)["plug"] == ["upper", "centre"]


def test_what_was_not_typed_is_not_asked() -> None:
    of = book()
    sure, plug = demands(frame(of), needs_of_sizes({"width": length("178 mm")}, None), setting(of))
    assert ([demand.need for demand in sure], plug) == (["width"], ())


def test_a_place_that_the_vehicle_does_not_list_frames_nothing() -> None:
    of = book()
    assert not frame_of(of, of.vehicles[CAR], "roof").nose_framed
    assert frame(book(BEZEL)).nose_framed


def test_the_builds_of_a_place_are_those_that_bear_on_its_room() -> None:
    splits = {"build": split("early", "late"), "audio": split("base", bears_on={"subjects": ["plug"]})}
    assert frame(book(vehicle(splits=splits))).builds == ((("build", "early"),), (("build", "late"),))


def test_a_width_is_met_by_the_last_hole_that_frames_it_else_by_the_bare_opening() -> None:
    of = book(mount(presents={"width": "182 ± 1 mm"}))
    assert hole_cell(setting(of, "kit"), "width") == HoleCell("kit", "width")
    assert hole_cell(setting(of, "kit"), "height") == RoomCell((), "nothing", None, "height")


def test_a_width_does_not_depend_on_the_loom_and_a_depth_does() -> None:
    of = book()
    behind, aside = (setting(of, loom=loom) for loom in ("behind", "aside"))
    assert hole_cell(behind, "width") == hole_cell(aside, "width")
    assert depth_cell(behind, "left") != depth_cell(aside, "left")


def test_an_exact_offset_shifts_the_depth_and_any_other_makes_a_room_of_its_own() -> None:
    of = book(mount("exact", proud="flush"), mount("rough", proud="6 ± 1 mm"))
    room = RoomCell((), "nothing", "aside", "left")
    assert depth_cell(setting(of), "left") == (room, 0)
    assert depth_cell(setting(of, "exact"), "left") == (room, 0)
    assert depth_cell(setting(of, "rough"), "left") == (PresentedCell(("rough",), room), 0)
    recessed = Stack(("in",), offset=Span(-3, -3))
    assert depth_cell(setting(of, stack=recessed), "left") == (room, -3)


HALF_A_METRE = exactly(500_000_000)
A, B = RoomCell((), "nothing", None, "a"), RoomCell((), "nothing", None, "b")


def allows(bounds: list[Constraint], *more: Constraint) -> bool:
    return Search().consistent([*bounds, *more])


def under(cell: Cell, by: int) -> Either:
    return Either((Under(cell, None, by),))


def test_a_cell_within_a_span_stays_strictly_inside_unless_it_is_one_value() -> None:
    rough = between(A, None, Span(3, 5))
    assert not allows(rough, under(A, exactly(3) + 1))
    assert allows(rough, under(A, exactly(3) + 2))
    assert not allows(rough, Rise(A, None, exactly(5)))
    assert allows(rough, Rise(A, None, exactly(5) - 1))
    exact = between(A, None, Span(3, 3))
    assert allows(exact, under(A, exactly(3) + 1), Rise(A, None, exactly(3)))
    assert not allows(exact, Rise(A, None, exactly(3) + 1))


def test_a_low_end_that_is_reached_is_inside() -> None:
    assert allows(between(A, None, Span(3, None, reached=True)), under(A, exactly(3) + 1))


def test_a_difference_within_a_span_is_bounded_on_both_sides() -> None:
    apart = between(A, B, Span(3, 5))
    fixed: list[Constraint] = [Rise(B, None, exactly(10)), under(B, exactly(10) + 1)]
    assert not allows(apart, *fixed, under(A, exactly(13) + 1))
    assert allows(apart, *fixed, Rise(A, None, exactly(14)), under(A, exactly(14) + 1))
    assert not allows(apart, *fixed, Rise(A, None, exactly(15)))


def test_what_is_unknown_bounds_nothing() -> None:
    assert between(A, B, UNKNOWN) == between(A, None, UNKNOWN) == []


def room(cut: str = "nothing", loom: str = "aside", size: str = "left", build: str = "late") -> RoomCell:
    return RoomCell((("build", build),), cut, "behind" if loom == "behind" else "aside", size)


def no_smaller(of: KnowledgeBase, roomy: Cell, mean: Cell, *stacks: Stack) -> bool:
    """Whether the structure alone makes one cell no smaller than another."""
    bounds = structure({roomy, mean}, stacks, ())
    return not allows(bounds, Rise(mean, None, HALF_A_METRE), under(roomy, HALF_A_METRE))


def test_cutting_and_moving_the_loom_aside_never_take_room_away() -> None:
    of = book()
    assert no_smaller(of, room("one rib"), room())
    assert no_smaller(of, room(loom="aside"), room(loom="behind"))
    assert no_smaller(of, room("one rib", "aside"), room("nothing", "behind"))
    assert not no_smaller(of, room(), room("one rib"))
    assert not no_smaller(of, room("one rib"), room("the bracket"))
    assert not no_smaller(of, room("one rib", "behind"), room("nothing", "aside"))


def test_what_was_cut_in_vain_gained_nothing() -> None:
    bounds = structure({room("one rib"), room()}, (), ())
    assert allows(bounds, Rise(room(), None, 5), under(room("one rib"), 5 + 1))
    assert not allows(bounds, Rise(room(), None, 5), under(room("one rib"), 5))


def test_other_builds_and_other_ninths_have_rooms_of_their_own() -> None:
    of = book()
    assert not no_smaller(of, room("one rib"), room(build="early"))
    assert not no_smaller(of, room("one rib"), room(size="right"))


def test_what_holds_of_the_rooms_holds_of_them_as_seen_through_one_stack() -> None:
    of = book(mount(proud="6 ± 1 mm"), mount("other", proud="6 ± 1 mm"))
    kit, other = stack(of, "kit"), stack(of, "other")
    cut, uncut = (PresentedCell(kit.key, room(what)) for what in ("one rib", "nothing"))
    assert no_smaller(of, cut, uncut, kit)
    assert not no_smaller(of, cut, PresentedCell(other.key, room()), kit, other)


def test_an_offset_with_a_plus_minus_keeps_the_presented_room_within_it() -> None:
    of = book(mount(proud="6 ± 1 mm"))
    kit = stack(of, "kit")
    seen = PresentedCell(kit.key, room())
    bounds = structure({seen}, (kit,), ())
    known: list[Constraint] = [Rise(room(), None, exactly(100_000_000)), under(room(), exactly(100_000_000) + 1)]
    assert not allows(bounds, *known, under(seen, exactly(105_000_000) + 1))
    assert not allows(bounds, *known, Rise(seen, None, exactly(107_000_000)))
    assert allows(bounds, *known, Rise(seen, None, exactly(106_900_000)))


def test_what_is_met_in_a_setting_is_tied_to_what_the_notes_speak_of_in_that_build() -> None:
    of = book(mount(proud="6 ± 1 mm", presents={"width": "182 ± 1 mm"}))
    kit, met = stack(of, "kit"), setting(of, "kit")._replace(build=room().build)
    notes = {room("one rib"), PresentedCell(kit.key, room("one rib")), room("one rib", build="early"), None}
    bounds = structure_met(met, notes, (kit,))
    known = [Rise(room(), None, HALF_A_METRE)]
    seen = PresentedCell(kit.key, room("one rib"))
    assert not allows(bounds, *known, under(room("one rib"), HALF_A_METRE))
    assert not allows(bounds, *known, under(seen, HALF_A_METRE + exactly(4_000_000)))
    assert allows(bounds, *known, under(room("one rib", build="early"), HALF_A_METRE))
    assert not allows(bounds, under(HoleCell("kit", "width"), exactly(181_000_000)))
    assert all(Rise(cell, None, 0) in bounds for cell in cells_met(met))


def test_a_hole_lies_within_what_was_measured_of_it() -> None:
    of = book(mount(presents={"width": "182 ± 1 mm"}))
    bounds = structure({HoleCell("kit", "width")}, (stack(of, "kit"),), ())
    assert not allows(bounds, Rise(HoleCell("kit", "width"), None, exactly(183_000_000)))
    assert allows(bounds, Rise(HoleCell("kit", "width"), None, exactly(182_900_000)))


def test_a_hole_stays_within_what_was_measured_beside_the_sizes_of_things() -> None:
    of = book(mount(presents={"width": "182 ± 1 mm"}), unit())
    hole, needs = HoleCell("kit", "width"), needs_of_unit(of, of.head_units["box"])
    bounds = structure({hole}, (stack(of, "kit"),), (needs, needs))
    assert not allows(bounds, Rise(hole, None, exactly(183_000_000)))


def test_a_plug_no_longer_than_what_stands_out_behind_ends_where_the_body_does() -> None:
    of = book(unit(rear_protrusion="6 ± 1 mm caliper", plug_and_bend="6 ± 1 mm caliper"))
    needs = needs_of_unit(of, of.head_units["box"])
    depth, plug = PartSize(needs.key, "depth"), PartSize(needs.key, "plug")
    bounds = structure(set(), (), (needs,))
    assert not allows(bounds, Either((Under(plug, depth, 0),)))
    assert allows(bounds, Either((Under(plug, depth, 1),)))


def test_a_place_has_the_builds_that_make_a_difference_to_its_room() -> None:
    here = {"places": [HOLE], "subjects": ["room"]}
    car = vehicle(splits={"build": split("early", "late", bears_on=here), "audio": split("a", "b", bears_on=PLUG_ONLY)})
    of = book(car)
    at = frame_of(of, car, HOLE)
    assert (at.place, at.builds) == (HOLE, ((("build", "early"),), (("build", "late"),)))
    assert frame_of(of, car, "roof").builds == ((),)


def test_a_thing_is_one_size_within_its_plus_minus_and_its_plug_is_no_less_than_its_body() -> None:
    of = book(unit(plug_and_bend=None))
    needs = needs_of_unit(of, of.head_units["box"])
    depth, plug = PartSize(needs.key, "depth"), PartSize(needs.key, "plug")
    bounds = structure(set(), (), (needs,))
    assert not allows(bounds, under(depth, exactly(109_000_000) + 1))
    assert not allows(bounds, Rise(depth, None, exactly(111_000_000)))
    assert not allows(bounds, Rise(depth, None, exactly(110_000_000)), under(plug, exactly(110_000_000)))
    assert allows(bounds, under(plug, exactly(110_000_000)))
    assert allows(bounds, Rise(plug, None, exactly(900_000_000)))
    width = PartSize(needs.key, "width")
    assert allows(bounds, Rise(width, None, exactly(178_900_000)))
    assert not allows(bounds, Rise(width, None, exactly(179_000_000)))
    assert BARE.key == ()
