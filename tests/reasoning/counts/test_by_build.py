from typing import Any

import pytest

from bezelbook.kinds.record import Record
from bezelbook.reasoning.counts.by_build import ClipsFor, clips_at, clips_by_build
from bezelbook.reasoning.counts.lost import standing, tallies
from tests.reasoning import making
from tests.reasoning.counts.test_clips import TRAY
from tests.reasoning.counts.test_fixing import seen, supply
from tests.reasoning.counts.test_lost import after
from tests.reasoning.making import CAR, HOLE

TODAY = "2026-01-20"
BUILDS = making.vehicle(splits={"build": making.split("early", "late")})


def piece(name: str, count: int | None, **more: Any) -> dict[str, Any]:
    clips = {"kind": "sail clip"} | ({} if count is None else {"count": count})
    return {"piece": name, "fasteners": [clips], **more}


def by_build(*records: Record) -> dict[str, int | None]:
    """How many clips come off at the dash, by the builds for which that holds."""
    book = making.book(supply("white-clip"), *records)
    found = clips_by_build(book, CAR, HOLE, tallies(book, standing(book)), TODAY)
    return {_builds(one): one.needs[0].handled if one.needs else 0 for one in found}


def _builds(one: ClipsFor) -> str:
    return " or ".join(" ".join(value for _, value in build) for build in one.builds)


def test_clips_are_those_on_every_piece_of_the_removal_counted_once() -> None:
    # The strip is listed for the dash and counted by a note about the glovebox; the sill is on no way to the dash.
    way = seen("a", pieces=[piece("strip", 22), piece("bezel", 22, first=[{"piece": "strip", "why": "overlap"}])])
    other = seen("b", place="glovebox", pieces=[piece("strip", 22), piece("sill", 9)])
    assert by_build(way, other) == {"": 44}


def test_a_piece_that_lies_over_the_way_counts_though_another_place_asked_for_it() -> None:
    way = seen("a", pieces=[piece("bezel", 6)])
    over = seen("b", place="vents", lies_over=[{"piece": "strip", "over": "bezel"}], pieces=[piece("strip", 5)])
    assert by_build(way, over) == {"": 11}


def test_what_was_counted_on_no_piece_elsewhere_is_no_clip_of_this_job() -> None:
    way = seen("a", pieces=[piece("bezel", 6)])
    assert by_build(way, seen("b", place="door", fasteners=[{"kind": "sail clip", "count": 20}])) == {"": 6}


def test_builds_with_other_pieces_or_counts_are_told_apart() -> None:
    early = seen("a", pieces=[piece("bezel", 6)], splits={"build": "early"})
    late = seen("b", pieces=[piece("bezel", 8), piece("strip", 3)], splits={"build": "late"})
    assert by_build(BUILDS, early, late) == {"early": 6, "late": 11}
    assert by_build(BUILDS, seen("c", pieces=[piece("bezel", 6)])) == {"early or late": 6}


def test_a_write_back_of_one_build_says_nothing_of_the_other() -> None:
    bezel = seen("a", pieces=[piece("bezel", 6)])
    assert by_build(BUILDS, bezel, after("b", 1, 9, "sail clip", splits={"build": "late"})) == {"early": 6, "late": 9}


def test_a_write_back_that_does_not_say_its_build_may_be_of_either_and_a_year_says_it() -> None:
    bezel = seen("a", pieces=[piece("bezel", 6)])
    assert by_build(BUILDS, bezel, after("b", 1, 9, "sail clip")) == {"early or late": 9}
    years = {"values": {"early": {"years": [1, 2]}, "late": {"years": [3, 4, 5]}}}
    van = making.vehicle(splits={"build": years})
    assert by_build(van, bezel, after("b", 1, 9, "sail clip", year=3)) == {"early": 6, "late": 9}


def test_a_split_that_bears_on_the_trim_of_this_place_tells_its_clips_apart_and_no_other_does() -> None:
    early = seen("a", pieces=[piece("bezel", 6)], splits={"build": "early"})
    late = seen("b", pieces=[piece("bezel", 8)], splits={"build": "late"})
    here = making.split("early", "late", bears_on={"places": [HOLE], "subjects": ["trim"]})
    assert by_build(making.vehicle(splits={"build": here}), early, late) == {"early": 6, "late": 8}
    for other in ({"places": ["overhead"], "subjects": ["trim"]}, {"places": [HOLE], "subjects": ["room"]}):
        van = making.vehicle(splits={"build": making.split("early", "late", bears_on=other)})
        assert by_build(van, early, late) == {"": 8}


def test_a_job_that_knows_its_build_takes_its_count_and_one_that_does_not_the_larger() -> None:
    early = seen("a", pieces=[piece("bezel", 6)], splits={"build": "early"})
    late = seen("b", pieces=[piece("bezel", 8)], splits={"build": "late"})
    uncounted = seen("c", pieces=[{"piece": "bezel", "fasteners": ["black clip"]}], splits={"build": "late"})
    book = making.book(BUILDS, supply("white-clip"), early, late, uncounted)

    def handled(**splits: str) -> dict[str, int | None]:
        found = clips_at(book, CAR, HOLE, tallies(book, standing(book)), TODAY, splits)
        return {need.kind: need.handled for need in found}

    assert handled(build="early") == {"white-clip": 6}
    assert handled(build="late") == handled() == {"black clip": None, "white-clip": 8}


@pytest.mark.parametrize(("early", "late", "larger"), [(8, 6, 8), (6, 8, 8), (None, 0, 0), (0, None, 0), (None, 3, 3)])
def test_over_the_builds_the_larger_count_is_taken_and_any_before_none(
    early: int | None, late: int | None, larger: int
) -> None:
    notes = [
        seen(build, pieces=[piece("bezel", count)], splits={"build": build})
        for build, count in (("early", early), ("late", late))
    ]
    book = making.book(BUILDS, supply("white-clip"), TRAY, *notes)
    [need] = clips_at(book, CAR, HOLE, tallies(book, standing(book)), TODAY)
    assert need.handled == larger
    assert (need.shelf.count, need.shelf.count_it) == (2, False)


def test_nothing_written_asks_for_no_clips() -> None:
    assert by_build() == {"": 0}


def test_of_a_car_that_is_not_in_the_book_nothing_is_known() -> None:
    book = making.book(seen("a", pieces=[piece("bezel", 6)]))
    assert clips_at(book, "nobodys-car", HOLE, tallies(book, standing(book)), TODAY) == ()
