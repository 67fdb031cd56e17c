"""A browser that has only the published numbers of a place says what the reasoning says of a typed size."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from itertools import product
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.answer import Answer, answer, place_of
from bezelbook.reasoning.bounds import Either, Rise, Under, before_choices, exactly
from bezelbook.reasoning.cells import Demand, RoomCell
from bezelbook.reasoning.corners import _limit, _no, corners
from bezelbook.reasoning.needs import Need
from bezelbook.reasoning.question import Question, asked
from bezelbook.reasoning.room import Place
from bezelbook.store.book import load_book
from bezelbook.values.quantity import read_quantity
from bezelbook.values.shown import show_length
from bezelbook.values.words import NINTHS
from tests.laws.random_worlds import world_of
from tests.laws.records import PLACE, VEHICLE, Written
from tests.rules.case_books import book_of

MM = 1_000_000
Sizes = Mapping[str, int]
Setting = Mapping[str, Any]


# --- what a browser does with the numbers: look up, compare, take the least ---


@dataclass(frozen=True)
class Compared:
    """The published numbers against typed sizes in nanometres; what was not typed asks for nothing."""

    told: Mapping[str, Any]
    sizes: Sizes

    def need(self, cell: Mapping[str, Any]) -> int:
        return self.sizes.get(cell["need"], 0)

    def takes(self, setting: Setting) -> bool:
        return any(not any(self.breaks(no, setting) for no in leaf) for leaf in setting["leaves"])

    def breaks(self, no: Mapping[str, int], setting: Setting) -> bool:
        return all(self.need(setting["cells"][int(index)]) >= threshold for index, threshold in no.items())

    @cached_property
    def accounts(self) -> list[list[Setting]]:
        """The settings of each account, without the mounts that take a thing of these sizes nowhere, if others do."""
        every: list[list[Setting]] = [list(account["settings"]) for account in self.told["accounts"]]
        able = {setting["stack"] for account in every for setting in account if self.takes(setting)}
        return [[one for one in account if one["stack"] in able] for account in every] if able else every

    @cached_property
    def cells(self) -> list[Mapping[str, Any]]:
        return [cell for account in self.accounts for setting in account for cell in setting["cells"]]

    @cached_property
    def verdict(self) -> str:
        never = [not any(map(self.takes, account)) for account in self.accounts]
        if all(never):
            return "does not"
        if any(never):
            return "argued over"
        if all(self.need(cell) <= cell["sure"] for cell in self.cells):
            return "goes in if"
        near = (setting for account in self.accounts for setting in account if self.takes(setting))
        return (
            "too close"
            if any(self.close(cell) for setting in near for cell in setting["cells"])
            else "nobody has tried"
        )

    def close(self, cell: Mapping[str, Any]) -> bool:
        if not cell["measured"] or cell["need"] not in self.sizes:
            return False
        need, most = self.need(cell), cell["most"]
        return bool(need + cell["clearance"] > cell["least"] and (most is None or need <= most))

    @property
    def decides(self) -> tuple[str, str | None, int, int | None] | None:
        """The need, where, and the least and the most there is: furthest short for a no, otherwise the tightest."""
        typed = [cell for cell in self.cells if cell["need"] in self.sizes]
        if self.verdict == "does not":
            short = [cell for cell in typed if cell["most"] is not None and cell["most"] <= self.need(cell)]
            found = min(short, key=lambda cell: cell["most"] - self.need(cell), default=None)
        else:
            known = [cell for cell in typed if cell["least"] > 0]
            known = [cell for cell in known if self.verdict != "too close" or cell["most"] is not None]
            found = min(known, key=lambda cell: cell["least"] - self.need(cell), default=None)
        return None if found is None else (found["need"], found["ninth"], found["least"], found["most"])

    @property
    def condition(self) -> str | None:
        """What its plug and bend may need behind a body of this depth."""
        if self.verdict != "goes in if":
            return None
        left: dict[str, int] = {}
        for cell in (cell for cell in self.cells if cell["need"] == "depth"):
            behind = cell["least"] - self.need(cell) - cell["clearance"]
            left[cell["ninth"]] = min(behind, left.get(cell["ninth"], behind))
        least, most = min(left.values()), max(left.values())
        tight = [ninth for ninth in NINTHS if left.get(ninth) == least]
        where = tight[0] if len(tight) == 1 else f"{', '.join(tight[:-1])} and {tight[-1]}"
        more = f" (up to {show_length(most)} if it does not leave at the {where})" if most > least else ""
        return f"its plug and bend need no more than {show_length(least)}{more}"


def told_of(place: Place, question: Question) -> dict[str, Any]:
    """The numbers that are published for a way of asking."""
    open_ = Question(**{**vars(question), "sizes": {"depth": read_quantity("1 mm", "length")}})
    return corners(place, asked(place.frame, place.evidence, open_))


def typed(sizes: Sizes) -> dict[Need, Any]:
    """Sizes in nanometres as somebody types them, exactly."""
    needs: tuple[Need, ...] = ("width", "height", "depth")
    return {need: read_quantity(f"{sizes[need] / MM:.4f} mm", "length") for need in needs if need in sizes}


def agree(book: KnowledgeBase, place: Place, question: Question, told: Mapping[str, Any], sizes: Sizes) -> Answer:
    """The reasoning's answer, once the numbers have been found to say the same."""
    found = answer(book, Question(**{**vars(question), "sizes": typed(sizes)}), place)
    compared = Compared(told, sizes)
    spot = found.spot
    decides = None if spot is None else (spot.need, spot.ninth, spot.room.least, spot.room.most)
    assert (compared.verdict, compared.decides) == (found.verdict, decides), sizes
    assert compared.condition == (found.conditions[0].words if found.conditions else None)
    return found


def told_once(told: Mapping[str, Any]) -> None:
    """No leaf says the same no twice, and no setting the same leaf."""
    leaves = [setting["leaves"] for account in told["accounts"] for setting in account["settings"]]
    for many in (*leaves, *(leaf for found in leaves for leaf in found)):
        assert all(many.count(one) == 1 for one in many)


# --- small worlds, every size of them ---


# The later ones once told a browser too little, or a hair too much; 142 and 191 would, were a choice that the least
# solution keeps not gone through.
SEEDS = (*range(12), 12, 48, 78, 92, 142, 169, 191, 265, 276, 302)


@pytest.mark.parametrize("seed", SEEDS)
def test_the_numbers_say_what_the_reasoning_says_of_every_size_in_a_small_world(seed: int) -> None:
    world = world_of(seed)
    book = Written(world).book()
    place = place_of(book, VEHICLE, PLACE)
    for splits, mounts in ({}, None), ({}, (world.kits[0].name,)), ({"build": world.builds[0]}, None):
        question = Question(VEHICLE, PLACE, splits, mounts=mounts)
        told = told_of(place, question)
        told_once(told)
        for wide, deep in product((None, 2, 3), (1, 2, 3, 4)):
            across = {} if wide is None else {"width": wide * MM, "height": MM}
            agree(book, place, question, told, {**across, "depth": deep * MM})


# --- books as a shop writes them: clearances, ±, kits that stand out, pockets, blanks ---

AT = {"vehicle": "hatch-2", "place": "dash"}
blank = st.none()


def said(**fields: st.SearchStrategy[Any]) -> st.SearchStrategy[dict[str, Any]]:
    """Fields of a file, in which a None is a blank."""
    return st.fixed_dictionaries(fields).map(lambda all_: {k: v for k, v in all_.items() if v is not None})


def size(*middles: int) -> st.SearchStrategy[str | None]:
    """A size with its ±, or a blank."""
    way = st.sampled_from(("{} mm caliper", "{} ± 1 mm", "{} ± 3 mm", "{} mm printed"))
    return st.one_of(blank, *[st.builds(str.format, way, st.sampled_from(middles))] * 5)


state = {
    "splits": st.sampled_from(({}, {"build": "early"}, {"build": "late"}, {"build": "late"})),
    "mounts": st.sampled_from((None, "none", ["flush-kit"], ["flush-kit"], ["proud-kit"], ["pocket"])),
    "cut": st.sampled_from((None, "nothing", "nothing", "lip")),
    "loom": st.sampled_from((None, "aside", "behind")),
    "plugs": st.sampled_from((None, "on", "off")),
}
zones = st.one_of(
    st.just("all"), st.just("all"), st.lists(st.sampled_from(NINTHS), min_size=1, max_size=3, unique=True)
)
reading = st.one_of(
    said(
        of=st.just("depth"),
        reads=st.sampled_from(("150 ± 3 mm", "170 mm", "170 ± 1 mm", "190 ± 2 mm")),
        zones=zones,
        datum=st.sampled_from(("sub-dash face", "sub-dash face", "kit seat")),
        tool=st.sampled_from((None, "wire", "caliper")),
    ),
    said(of=st.sampled_from(("width", "height")), reads=st.sampled_from(("182 ± 1 mm", "112 mm", "180 mm"))),
)
tried = said(
    form=st.just("tried"),
    what=st.sampled_from(("short", "long", "long", "a borrowed one")),
    sizes=st.sampled_from((None, {"depth": "165 ± 2 mm", "width": "178 mm caliper"})),
    verdict=st.sampled_from(("goes in", "goes in", "does not")),
    sure=st.sampled_from(("fitted", "dry-fitted", "told")),
    reason=st.sampled_from((None, "depth", "depth", "width", "plug")),
    where=st.sampled_from(([], [], ["lower-left"], ["right"])),
    short_by=st.sampled_from((None, None, "4 ± 1 mm")),
    to_spare=st.sampled_from((None, None, "9 ± 1 mm")),
    **state,
)
measured = said(form=st.just("measured"), readings=st.lists(reading, min_size=1, max_size=3), **state)
plainly = st.one_of(tried, measured).map(  # so that many of them speak of one and the same state
    lambda note: {
        **note,
        "splits": {"build": "late"},
        "mounts": "none",
        "cut": "nothing",
        "loom": "aside",
        "plugs": "on",
    }
)


def unit(depth: int) -> st.SearchStrategy[dict[str, Any]]:
    return said(
        name=st.just("a unit"),
        size_class=st.just("double"),
        body_depth=size(depth),
        body_width=size(178, 181),
        body_height=size(100),
        plug_exit=st.sampled_from((None, "right", "lower-left")),
        plug_and_bend=size(32),
    )


books = st.fixed_dictionaries(
    {
        "shop": st.fixed_dictionaries(
            {
                "shop": st.builds(
                    lambda deep, wide: {
                        "name": "s",
                        "format": 1,
                        "clearances": {"depth": deep, "width": wide, "height": "0.5 mm"},
                    },
                    st.sampled_from(("0 mm", "3 mm")),
                    st.sampled_from(("0 mm", "1 mm")),
                )
            }
        ),
        "vehicles": st.just(
            {
                "hatch-2": {
                    "name": "hatch 2",
                    "vehicle_class": "hatch",
                    "generation": 2,
                    "model_years": 4,
                    "splits": {"build": {"values": {"early": {}, "late": {}}}},
                    "places": {"dash": {"kind": "plain opening", "side": "centre"}},
                }
            }
        ),
        "head_units": st.fixed_dictionaries({"short": unit(110), "long": unit(165)}),
        "mounts": st.fixed_dictionaries(
            {
                "flush-kit": st.just(
                    {
                        "name": "flush kit",
                        "mount_kind": "kit",
                        "proud": "flush",
                        "made_for": [AT],
                        "presents": {"width": "182 mm caliper", "height": "111 mm caliper"},
                    }
                ),
                "proud-kit": said(
                    name=st.just("proud kit"),
                    mount_kind=st.just("kit"),
                    proud=st.sampled_from((None, "22 ± 0.5 mm caliper", "22 mm caliper", "-6 ± 1 mm")),
                ),
                "pocket": st.just(
                    {
                        "name": "pocket",
                        "mount_kind": "pocket",
                        "proud": "flush",
                        "presents": {"ninths": ["upper-left", "upper", "upper-right"], "height": "53 mm"},
                    }
                ),
            }
        ),
        "notes": st.lists(st.one_of(plainly, plainly, tried, measured), max_size=5).map(
            lambda notes: {f"note-{number}": {**note, **AT} for number, note in enumerate(notes)}
        ),
    }
)
depths = st.sampled_from((20, 100, 110, 147, 150, 153, 160, 164, 165, 166, 168, 170, 172, 188, 192, 220))
hairs = st.sampled_from((-100, 0, 0, 0, 100))
ways = st.builds(
    Question,
    st.just("hatch-2"),
    st.just("dash"),
    st.sampled_from(({}, {"build": "late"}, {"build": "late"})),
    mounts=st.sampled_from((None, (), (), ("flush-kit",), ("proud-kit",), ("pocket",))),
)
wanted = st.tuples(depths, hairs, st.sampled_from((None, 177, 181, 182)), st.sampled_from((50, 100, 112)))


@given(books, ways, st.lists(wanted, min_size=1, max_size=6))
def test_the_numbers_say_what_the_reasoning_says_of_a_typed_size(
    book: Mapping[str, Any], question: Question, sizes: list[tuple[int, int, int | None, int]]
) -> None:
    base = book_of({"book": book})
    place = place_of(base, "hatch-2", "dash")
    told = told_of(place, question)
    for depth, hair, width, height in sizes:
        across = {} if width is None else {"width": width * MM, "height": height * MM}
        agree(base, place, question, told, {**across, "depth": depth * MM + hair})


# --- the trade's worked opening ---


def test_the_worked_opening_is_sure_to_147_mm_at_its_corner_and_short_from_153(worked_book: Path) -> None:
    """Trade 13: 150 ± 3 mm at the lower left moves 146 and 154 to 147 and 153 for a size that is typed exactly."""
    book = knowledge_base(load_book(worked_book).records)
    question = Question("compact-hatch-2", "centre-dash", {"build": "late"}, mounts=("flush-kit",))
    place = place_of(book, "compact-hatch-2", "centre-dash")
    told = told_of(place, question)
    [account] = told["accounts"]
    [setting] = account["settings"]
    by_ninth = {cell["ninth"]: cell for cell in setting["cells"] if cell["need"] == "depth"}
    assert list(by_ninth) == list(NINTHS)
    corner, rest = by_ninth.pop("lower-left"), list(by_ninth.values())
    assert (corner["sure"], corner["least"], corner["most"]) == (147 * MM, 147 * MM, 153 * MM)
    assert {(cell["least"], cell["most"]) for cell in rest} == {(202 * MM, 208 * MM)}
    assert all(cell["measured"] and cell["clearance"] == 0 for cell in (corner, *rest))
    for depth, verdict in ((147, "goes in if"), (148, "too close"), (152, "too close"), (153, "does not")):
        assert agree(book, place, question, told, {"depth": depth * MM}).verdict == verdict


CAR = {
    "name": "hatch 2",
    "vehicle_class": "hatch",
    "generation": 2,
    "model_years": 4,
    "places": {"dash": {"kind": "plain opening", "side": "centre"}},
}


def test_a_hole_takes_what_is_exactly_as_wide_and_nothing_wider() -> None:
    kit = {"name": "kit", "mount_kind": "kit", "proud": "flush", "presents": {"width": "182 mm caliper"}}
    exact = {"name": "s", "format": 1, "tools": {"bench_caliper": "0 mm"}}
    book = book_of({"book": {"shop": {"shop": exact}, "vehicles": {"hatch-2": CAR}, "mounts": {"kit": kit}}})
    place = place_of(book, "hatch-2", "dash")
    question = Question("hatch-2", "dash", mounts=("kit",))
    told = told_of(place, question)
    for width, verdict in ((182 * MM, "too close"), (182 * MM + 100, "does not")):
        assert agree(book, place, question, told, {"width": width, "height": MM, "depth": MM}).verdict == verdict


def test_what_only_readings_carry_is_sure_less_what_the_house_likes_to_leave() -> None:
    """150 ± 3 mm with one rib cut: 144 mm are sure there with 3 mm left over; with nothing cut it is no deeper."""
    house = {"name": "s", "format": 1, "clearances": {"depth": "3 mm"}}
    wire = {"of": "depth", "reads": "150 ± 3 mm", "tool": "wire", "zones": "all", "datum": "sub-dash face"}
    note = {**AT, "form": "measured", "readings": [wire], "cut": "one rib"}
    book = book_of({"book": {"shop": {"shop": house}, "vehicles": {"hatch-2": CAR}, "notes": {"m": note}}})
    place = place_of(book, "hatch-2", "dash")
    for cut, sure, least, measured in (("one rib", 144, 147, True), ("nothing", 0, 0, False)):
        question = Question("hatch-2", "dash", mounts=(), cut=cut)
        told = told_of(place, question)
        [setting] = told["accounts"][0]["settings"]
        cells = [cell for cell in setting["cells"] if cell["need"] == "depth"]
        assert {(cell["sure"], cell["least"], cell["most"], cell["measured"], cell["clearance"]) for cell in cells} == {
            (sure * MM, least * MM, 153 * MM, measured, 3 * MM)
        }
        for depth in (144, 145, 152, 153):
            agree(book, place, question, told, {"depth": depth * MM})


def boxes(**sizes: Mapping[str, str]) -> Mapping[str, Any]:
    """Boxes measured so well that the house takes them to be exact, by name."""
    exact = {"name": "s", "format": 1, "tools": {"bench_caliper": "0 mm"}}
    units = {name: {"name": name, "size_class": "double", **said} for name, said in sizes.items()}
    return {"shop": {"shop": exact}, "vehicles": {"hatch-2": CAR}, "head_units": units}


def test_a_spot_that_is_known_to_be_just_enough_was_not_what_stopped_a_thing() -> None:
    files = boxes(
        deep={"body_depth": "110 mm caliper"},
        wide={"body_depth": "110 mm caliper", "body_width": "178 mm caliper", "body_height": "50 mm caliper"},
    )
    note = {**AT, "form": "tried", "sure": "dry-fitted", "mounts": "none", "cut": "nothing", "loom": "aside"}
    yes = {**note, "what": "deep", "verdict": "goes in", "plugs": "off"}
    no = {**note, "what": "wide", "verdict": "does not", "plugs": "off"}
    height = {"of": "height", "reads": "100 ± 1 mm", "tool": "tape"}
    tape = {**AT, "form": "measured", "readings": [height]}
    files = {**files, "notes": {"yes": yes, "no": no, "tape": tape}}
    book = book_of({"book": files})
    place = place_of(book, "hatch-2", "dash")
    question = Question("hatch-2", "dash", mounts=())
    told = told_of(place, question)
    for width, verdict in ((177, "nobody has tried"), (178, "does not")):
        sizes = {"width": width * MM, "height": 50 * MM, "depth": 50 * MM}
        assert agree(book, place, question, told, sizes).verdict == verdict


def test_a_no_at_a_corner_says_nothing_of_a_pocket_above_it() -> None:
    pocket = {"name": "pocket", "mount_kind": "pocket", "proud": "flush", "presents": {"ninths": ["upper"]}}
    note = {**AT, "form": "tried", "what": "a box", "sizes": {"depth": "165 mm caliper"}, "verdict": "does not"}
    stopped = {
        **note,
        "sure": "dry-fitted",
        "reason": "depth",
        "where": ["lower-left"],
        "mounts": "none",
        "plugs": "off",
        "loom": "aside",
    }
    files = {"vehicles": {"hatch-2": CAR}, "mounts": {"pocket": pocket}, "notes": {"stopped": stopped}}
    book = book_of({"book": files})
    place = place_of(book, "hatch-2", "dash")
    for mounts, verdict in ((), "does not"), (("pocket",), "nobody has tried"):
        question = Question("hatch-2", "dash", mounts=mounts)
        assert agree(book, place, question, told_of(place, question), {"depth": 166 * MM}).verdict == verdict


def test_a_no_about_a_thing_that_nobody_measured_rules_no_size_out() -> None:
    boxed = {"name": "boxed", "size_class": "double", "body_depth": "165 mm printed"}
    state = {**AT, "form": "tried", "what": "boxed", "sure": "dry-fitted", "mounts": "none", "cut": "nothing"}
    went_in = {**state, "verdict": "goes in", "loom": "aside"}
    stopped = {**state, "verdict": "does not", "reason": "depth", "loom": "behind"}
    files = {"vehicles": {"hatch-2": CAR}, "head_units": {"boxed": boxed}, "notes": {"a": went_in, "b": stopped}}
    book = book_of({"book": files})
    place = place_of(book, "hatch-2", "dash")
    question = Question("hatch-2", "dash", mounts=(), loom="behind")
    told = told_of(place, question)
    for depth in (20, 165, 220):
        assert agree(book, place, question, told, {"depth": depth * MM}).verdict == "nobody has tried"


def test_how_much_was_left_over_counts_wherever_the_plug_left() -> None:
    """165.2 mm of body and 32.2 of plug at most, and less than 10 mm behind them: nothing of 208 mm goes in there."""
    box = {"name": "box", "size_class": "double", "body_depth": "165 mm caliper", "plug_and_bend": "32 mm caliper"}
    state = {"mounts": "none", "cut": "nothing", "loom": "aside", "plugs": "on"}
    note = {**AT, **state, "form": "tried", "what": "box", "verdict": "goes in", "sure": "fitted"}
    left_over = {**note, "where": ["lower-left"], "to_spare": "9 ± 1 mm"}
    book = book_of({"book": {"vehicles": {"hatch-2": CAR}, "head_units": {"box": box}, "notes": {"a": left_over}}})
    place = place_of(book, "hatch-2", "dash")
    question = Question("hatch-2", "dash", mounts=())
    told = told_of(place, question)
    for depth, verdict in ((207, "nobody has tried"), (208, "does not")):
        assert agree(book, place, question, told, {"depth": depth * MM}).verdict == verdict


# --- how large a need can be, worked by hand ---


@pytest.mark.parametrize("tops", [(9, 5), (5, 9)])
def test_what_must_be_short_of_two_spots_that_one_size_asks_for_is_short_of_the_roomier(tops: tuple[int, int]) -> None:
    leaf = before_choices([])
    assert leaf is not None
    spot = RoomCell((), "nothing", "aside", "left")
    either = Either(tuple(Under(spot, None, exactly(top)) for top in tops))
    wanted = (Demand("depth", spot, 0, "left"),)
    assert _no(leaf, either, wanted, [leaf.reach(spot)]) == {"0": 9}


def test_a_need_is_limited_by_a_top_that_nothing_gets_around() -> None:
    under_a_spot, top = Rise("spot", "need", 0), Under("spot", None, 10)
    way_around = Under("other", "another need", 0)
    asked_about = Under("cell", "need", 0)
    # The need is at most the spot, the spot is below 10, so at most 9; the cell is below the need.
    alone = before_choices([under_a_spot, Either((top,))])
    assert alone is not None
    assert _limit(alone, asked_about) == 9
    lifted = before_choices([Rise("spot", "need", 2), Either((top,))])
    assert lifted is not None
    assert _limit(lifted, asked_about) == 7
    # Where something else may hold instead of the top, the spot and with it the need may be anything.
    avoidable = before_choices([under_a_spot, Either((top, way_around))])
    assert avoidable is not None
    assert _limit(avoidable, asked_about) is None
