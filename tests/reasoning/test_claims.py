"""What one note says of the room: every reading of it that is true, and nothing that it did not say."""

from collections.abc import Mapping
from typing import Any

import pytest

from bezelbook.kinds.note.record import AnyNote
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.bounds import Case, Constraint, Either, OneOf, Rise, Search, Under, exactly, numbers_of
from bezelbook.reasoning.cells import Cell, Demand, HoleCell, PartSize, RoomCell, structure
from bezelbook.reasoning.claims import NO_EXITS, claim, fit, misfit, one_of, reading_span
from bezelbook.reasoning.needs import Need, needs_of_sizes, needs_of_unit
from bezelbook.values.quantity import read_quantity
from bezelbook.values.span import Span
from bezelbook.values.words import NINTHS, Ninth
from tests.reasoning.making import book, frame, measured, mount, reading, shop, split, standing, tried, unit, vehicle

BUILDS = vehicle(splits={"build": split("early", "late")})
TRUSTED = shop(tools={"bench_caliper": "0 mm"})
SIZES = {"body_width": "178 mm caliper", "body_depth": "110 mm caliper", "plug_and_bend": "30 mm caliper"}


def room(size: str = "left", **state: Any) -> RoomCell:
    return RoomCell((), "nothing", None if size in ("width", "height") else "aside", size)._replace(**state)


class Said:
    """What a note says, to be tried against rooms of a certain size."""

    def __init__(
        self, note: AnyNote, *records: Record, split: bool = True, exits: Mapping[str, Ninth] = NO_EXITS
    ) -> None:
        self.book: KnowledgeBase = book(TRUSTED, unit(**SIZES), *records, note)
        self.bounds = list(claim(frame(self.book), standing(self.book, note.id), frozenset(), exits, split=split))

    def allows(self, **sizes: float) -> bool:
        """Whether rooms of these sizes in mm agree with it, named by their cell in `CELLS`."""
        bounds = [bound for name, size in sizes.items() for bound in fixed(CELLS[name], size)]
        cells = {CELLS[name] for name in sizes} | {one for one in numbers_of(self.bounds) if isinstance(one, Cell)}
        stacks = standing(self.book, next(iter(self.book.notes))).stack
        return Search().consistent([*self.bounds, *bounds, *structure(cells, (stacks,) if stacks else (), ())])


def fixed(cell: Cell, size: float) -> list[Constraint]:
    at = exactly(round(size * 1_000_000))
    return [Rise(cell, None, at), Either((Under(cell, None, at + 1),))]


CELLS: dict[str, Cell] = {ninth: room(ninth) for ninth in NINTHS}
CELLS |= {
    "left": room("left"),
    "right": room("right"),
    "width": room("width"),
    "height": room("height"),
    "behind": room("left", loom="behind"),
    "cut": room("left", cut="one rib"),
    "early": room("left", build=(("build", "early"),)),
    "late": room("left", build=(("build", "late"),)),
    "hole": HoleCell("kit", "width"),
}


def test_a_yes_says_that_every_spot_was_large_enough() -> None:
    said = Said(tried())
    assert said.allows(left=110, right=140, width=178)
    assert not said.allows(left=109)
    assert not said.allows(right=139)
    assert not said.allows(width=177)


def test_a_yes_about_a_thing_with_a_plus_minus_says_that_there_was_more_than_its_least() -> None:
    said = Said(tried(what="rough"), unit("rough", body_depth="110 ± 1 mm caliper"))
    assert not said.allows(left=109)
    assert said.allows(left=109.0001)


def test_a_yes_through_a_kit_says_so_much_less_of_the_bare_opening_as_the_kit_stands_out() -> None:
    said = Said(tried(mounts=["kit"]), mount(proud="6 mm caliper"))
    assert (said.allows(left=104, right=134), said.allows(left=103.9), said.allows(right=133.9)) == (True, False, False)


def test_a_no_says_that_some_spot_was_too_small() -> None:
    said = Said(tried(verdict="does not", reason="depth"))
    large = dict.fromkeys(("upper-left", "upper", "upper-right", "centre", "lower-left", "lower", "lower-right"), 110.0)
    assert said.allows(left=109, right=140, **large)
    assert said.allows(left=110, right=139, **large)
    assert not said.allows(left=110, right=140, **large)


@pytest.mark.parametrize(
    ("reason", "where", "small", "enough"),
    [
        ("width", [], {"width": 177}, {"width": 178}),
        ("depth", ["left"], {"left": 109}, {"left": 110}),
        ("depth", ["right"], {"right": 139}, {"right": 140}),
        ("plug", [], {"right": 139}, {"right": 140}),
        ("plug", ["right"], {"right": 139}, {"right": 140}),
    ],
)
def test_a_no_with_a_reason_and_a_place_says_that_one(
    reason: str, where: list[str], small: dict[str, float], enough: dict[str, float]
) -> None:
    said = Said(tried(verdict="does not", reason=reason, where=where))
    assert said.allows(**small)
    assert not said.allows(**enough)


@pytest.mark.parametrize(
    "content",
    [
        {"reason": "nose"},
        {"reason": "plug", "plugs": "off"},
        {"reason": "plug", "where": ["left"]},
        {"reason": "depth", "where": ["left"], "mounts": ["kit"]},
        {"reason": None, "what": "something"},
        {"reason": "depth", "what": "something"},
        {"mounts": None},
    ],
)
def test_a_no_that_can_be_compared_with_nothing_says_nothing(content: dict[str, Any]) -> None:
    kit = mount(presents={"ninths": ["centre"]})
    assert Said(tried(verdict="does not", **content), kit).bounds == []


def test_a_yes_with_the_mounts_left_blank_says_nothing_of_the_bare_opening() -> None:
    assert Said(tried(mounts=None)).bounds == []


def test_a_yes_about_a_thing_of_no_known_size_bounds_no_room() -> None:
    said = Said(tried(what="something"))
    assert said.allows(left=0, right=0, width=0)


def test_a_yes_in_an_unknown_build_is_true_of_one_of_them() -> None:
    said = Said(tried(), BUILDS)
    assert said.allows(early=110, late=0)
    assert said.allows(early=0, late=110)
    assert not said.allows(early=109, late=109)


def test_a_no_in_an_unknown_build_is_true_of_one_of_them() -> None:
    said = Said(tried(verdict="does not", reason="depth", where=["left"]), BUILDS)
    assert said.allows(early=110, late=109)
    assert not said.allows(early=110, late=110)


def test_a_plug_that_may_leave_anywhere_fitted_somewhere() -> None:
    said = Said(tried(what="open"), unit("open", **SIZES, plug_exit=None))
    others = dict.fromkeys(
        ("upper-left", "upper", "upper-right", "centre", "lower-left", "lower", "lower-right"), 120.0
    )
    assert said.allows(left=120, right=140, **others)
    assert said.allows(left=140, right=120, **others)
    assert not said.allows(left=120, right=120, **others)


def test_where_no_exit_is_tried_out_a_plug_that_may_leave_anywhere_is_left_out_of_what_went_in() -> None:
    open_ = unit("open", **SIZES, plug_exit=None)
    said = Said(tried(what="open"), open_, split=False)
    assert said.allows(**dict.fromkeys(NINTHS, 110.0))
    assert not said.allows(left=109)
    left = Said(tried(what="open"), open_, split=False, exits={"head_unit:open": "left"})
    assert (left.allows(left=140, right=110), left.allows(left=139)) == (True, False)
    half = mount(presents={"ninths": ["left", "right"]})
    spare = Said(tried(what="open", mounts=["kit"], where=["left"], to_spare="5 ± 1 mm"), open_, half, split=False)
    assert spare.allows(left=300, right=300)


@pytest.mark.parametrize(("sure", "behind_the_body"), [("dry-fitted", True), ("fitted", False)])
def test_what_was_left_over_is_behind_the_plug_where_it_was_on_for_certain(sure: str, *, behind_the_body: bool) -> None:
    said = Said(tried(where=["right"], to_spare="5 ± 1 mm", sure=sure, plugs=None))
    assert said.allows(right=145)
    assert said.allows(right=115) == behind_the_body


def test_to_spare_at_one_ninth_is_a_reading_of_the_room_there() -> None:
    said = Said(tried(where=["left"], to_spare="5 ± 1 mm"))
    assert not said.allows(left=113.9)
    assert said.allows(left=115)
    assert not said.allows(left=116.1)


def test_to_spare_where_the_plug_leaves_is_behind_the_plug() -> None:
    said = Said(tried(where=["right"], to_spare="5 ± 1 mm"))
    assert (said.allows(right=145), said.allows(right=115), said.allows(right=147)) == (True, False, False)


def test_short_by_is_a_reading_too() -> None:
    said = Said(tried(verdict="does not", reason="depth", where=["left"], short_by="5 ± 1 mm", cut="nothing"))
    assert (said.allows(left=105), said.allows(left=103.9), said.allows(left=106.1)) == (True, False, False)
    plug = Said(tried(verdict="does not", reason="plug", where=["right"], short_by="5 ± 1 mm", cut="nothing"))
    assert (plug.allows(right=135), plug.allows(right=133.9), plug.allows(right=136.1)) == (True, False, False)


def test_short_by_at_the_plug_counts_from_the_deepest_thing_there() -> None:
    said = Said(tried(verdict="does not", reason="depth", where=["right"], short_by="5 ± 1 mm", cut="nothing"))
    assert (said.allows(right=135), said.allows(right=105)) == (True, False)
    anywhere = tried(what="open", verdict="does not", reason="depth", where=["left"], short_by="5 ± 1 mm")
    said = Said(anywhere, unit("open", **SIZES, plug_exit=None))
    assert [said.allows(left=mm) for mm in (105, 120, 135)] == [True, False, True]


def test_by_how_much_in_height_is_of_the_height() -> None:
    short = {"verdict": "does not", "reason": "height", "short_by": "5 ± 1 mm"}
    said = Said(tried(**short))
    assert [said.allows(height=mm) for mm in (92.9, 95, 97.1)] == [False, True, False]
    untried = Said(tried(what="open", **short), unit("open", **SIZES, plug_exit=None), split=False)
    assert [untried.allows(height=mm) for mm in (50, 95, 101)] == [True, True, False]


def test_by_how_much_in_width_is_of_the_width() -> None:
    said = Said(tried(verdict="does not", reason="width", short_by="5 ± 1 mm"))
    assert (said.allows(width=173), said.allows(width=171.9), said.allows(width=174.1)) == (True, False, False)


def test_by_how_much_without_a_plus_minus_has_that_of_the_house() -> None:
    said = Said(tried(where=["left"], to_spare="10 mm"))
    assert (said.allows(left=115.1), said.allows(left=124.9), said.allows(left=125.1)) == (True, True, False)


@pytest.mark.parametrize(
    "content",
    [
        {"where": [], "to_spare": "5 ± 1 mm"},
        {"where": ["left", "upper"], "to_spare": "5 ± 1 mm"},
        {"where": ["left"], "to_spare": "5 ± 1 mm", "what": "something"},
        {"where": ["left"], "short_by": "5 ± 1 mm", "verdict": "does not", "reason": "nose"},
        {"where": ["left"], "short_by": "5 ± 1 mm", "verdict": "does not", "reason": None},
        {"where": ["left"], "to_spare": "5 ± 1 mm", "reason": "plug"},
    ],
)
def test_by_how_much_without_one_known_spot_is_no_reading(content: dict[str, Any]) -> None:
    said = Said(tried(**content), vehicle(places={"dash-centre": {"kind": "opening behind a bezel", "side": "centre"}}))
    assert said.allows(left=300, upper=300, right=300, width=300)


def test_by_how_much_holds_only_in_the_very_state_it_was_seen_in() -> None:
    blank = Said(tried(where=["left"], to_spare="5 ± 1 mm", cut=None, loom=None))
    assert blank.allows(left=300, behind=115)
    assert blank.allows(left=115, behind=20)
    assert not blank.allows(left=300, behind=300)
    assert blank.allows(cut=300, left=100)
    unsaid = Said(tried(where=["left"], to_spare="5 ± 1 mm", loom=None))
    assert unsaid.allows(left=115)
    assert not unsaid.allows(left=112)  # with the loom behind or aside, there was as much as that aside
    short = Said(tried(verdict="does not", reason="depth", where=["left"], short_by="5 ± 1 mm", cut=None))
    assert short.allows(left=20)
    assert not short.allows(left=107)


def test_a_reading_bounds_the_room_on_both_sides() -> None:
    said = Said(measured("m", reading("depth", "150 ± 3 mm", "left"), reading("width", "182 ± 1 mm")))
    assert said.allows(left=150, width=182)
    for wrong in ({"left": 147}, {"left": 153}, {"width": 181}, {"width": 183}):
        assert not said.allows(**wrong)


def test_a_reading_of_several_ninths_is_of_each() -> None:
    said = Said(measured("m", reading("depth", "150 ± 3 mm", "left", "right")))
    assert not said.allows(left=150, right=140)
    assert not Said(measured("m", reading("depth", "150 ± 3 mm"))).allows(centre=140)


def test_a_depth_without_its_ninth_is_of_one_of_them() -> None:
    said = Said(measured("m", reading("depth", "150 ± 3 mm", zones=None)))
    assert said.allows(**dict.fromkeys(NINTHS, 300.0) | {"left": 150})
    assert not said.allows(**dict.fromkeys(NINTHS, 300.0))
    two = [reading("depth", f"{size} ± 3 mm", zones=None) for size in (150, 250)]
    both = Said(measured("m", *two))
    assert both.allows(**dict.fromkeys(NINTHS, 300.0) | {"left": 150, "upper": 250})
    assert not both.allows(**dict.fromkeys(NINTHS, 300.0))


def test_too_many_depths_without_a_ninth_leave_what_was_said_outright() -> None:
    three = [reading("depth", f"{size} ± 3 mm", zones=None) for size in (150, 160, 170)]
    said = Said(measured("m", *three, reading("depth", "150 ± 3 mm", "left")))
    assert said.allows(**dict.fromkeys((ninth for ninth in NINTHS if ninth != "left"), 300.0))
    assert not said.allows(left=300)


def test_a_reading_that_cannot_be_compared_says_nothing() -> None:
    for strange in (
        reading("depth", "150 ± 3 mm", datum="finished bezel face"),
        reading("width", "182 mm", tool="eye"),
        reading("bolt circle", "110 mm"),
        reading("depth", "150 ± 3 mm", "left", datum="kit seat"),
    ):
        said = Said(measured("m", strange, reading("height", "100 ± 1 mm")))
        assert said.allows(left=300, width=300)


def test_a_reading_through_a_mount_is_of_what_the_mount_presents() -> None:
    kit = mount(proud="6 mm caliper", presents={"width": "182 ± 5 mm"})
    through = Said(
        measured(
            "m",
            reading("depth", "156 ± 3 mm", "left", datum="kit seat"),
            reading("width", "180 ± 1 mm"),
            mounts=["kit"],
        ),
        kit,
    )
    assert (through.allows(left=150), through.allows(left=146), through.allows(left=154)) == (True, False, False)
    assert (through.allows(hole=180), through.allows(hole=182)) == (True, False)
    assert through.allows(width=20)


def test_a_depth_from_the_sub_dash_face_is_bare_whatever_is_mounted() -> None:
    said = Said(measured("m", reading("depth", "150 ± 3 mm", "left"), mounts=["kit"]), mount(proud="6 ± 1 mm"))
    assert (said.allows(left=150), said.allows(left=145)) == (True, False)


@pytest.mark.parametrize(
    ("tool", "give"), [("caliper", 0.5), ("depth gauge", 1), ("tape", 3), ("wire", 5), ("template", 1), (None, 5)]
)
def test_a_reading_without_a_plus_minus_has_that_of_its_tool(tool: str | None, give: float) -> None:
    note = measured("m", reading("width", "182 mm", tool=tool))
    tools = book(shop(tools={})).shop.tools
    assert reading_span(tools, note.readings[0]) == Span(int((182 - give) * 1_000_000), int((182 + give) * 1_000_000))


def test_a_reading_with_a_plus_minus_keeps_its_own() -> None:
    note = measured("m", reading("width", "182 ± 2 mm", tool="caliper"))
    assert reading_span(book().shop.tools, note.readings[0]) == Span(180_000_000, 184_000_000)


@pytest.mark.parametrize(("mounts", "proud"), [("none", 0), (["kit"], exactly(6_000_000))])
@pytest.mark.parametrize(("verdict", "fits"), [("goes in", True), ("does not", False)])
def test_a_thing_whose_size_varies_is_one_number_in_all_its_notes(
    verdict: str, mounts: Any, proud: int, *, fits: bool
) -> None:
    note = tried(verdict=verdict, reason="depth", where=["left"], mounts=mounts)
    of = book(TRUSTED, unit(), mount(proud="6 mm caliper"), note)
    bounds = [*claim(frame(of), standing(of, "a-note"), frozenset({"head_unit:box"}), split=False)]
    cell, size = room("left"), PartSize("head_unit:box", "depth")
    larger, smaller = Rise(cell, size, -proud), Either((Under(cell, size, -proud),))
    assert Search().consistent([*bounds, larger]) == fits
    assert Search().consistent([*bounds, smaller]) != fits
    assert Search().consistent([*bounds, Either((Under(cell, size, 1 - proud),))])


def test_a_size_that_is_another_things_own_is_that_things_number() -> None:
    """A width typed beside a box replaces its own, and the box's height stays the box's."""
    of = book(TRUSTED, unit())
    typed = needs_of_sizes({"width": read_quantity("170 mm", "length")}, None, needs_of_unit(of, of.head_units["box"]))
    front: tuple[Need, ...] = ("width", "height")
    wanted = [Demand(need, room(need), 0, None) for need in front]
    height, varying = PartSize("head_unit:box", "height"), frozenset({"head_unit:box"})
    assert fit(wanted, typed, varying) == (
        Rise(room("width"), None, exactly(170_000_000)),
        Rise(room("height"), height, 0),
    )
    (short,) = misfit(wanted, typed, varying)
    assert short.options == (
        Under(room("width"), None, exactly(170_000_000)),
        Under(room("height"), height, 0),
    )


A, B, C = Rise("a", None, 1), Rise("b", None, 1), Rise("c", None, 1)
UNDER = Either((Under("a", None, 5),))


def test_what_all_cases_have_in_common_holds_outright() -> None:
    assert one_of([Case((A, B), (UNDER,)), Case((A, C), (UNDER,))]) == (A, UNDER, OneOf((Case((B,)), Case((C,)))))
    assert one_of([Case((A,)), Case((A,))]) == (A,)


def test_a_case_that_asks_for_nothing_more_leaves_no_choice() -> None:
    assert one_of([Case((A, B)), Case((A,))]) == (A,)


def test_of_no_cases_none_holds() -> None:
    assert not Search().consistent(one_of([]))
