from collections.abc import Mapping
from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.counts.by_build import clips_at
from bezelbook.reasoning.counts.clips import ClipNeed, clip_needs
from bezelbook.reasoning.counts.fixing import Fixing
from bezelbook.reasoning.counts.lost import Tally, standing, tallies
from tests.reasoning import making
from tests.reasoning.counts.test_fixing import seen, supply
from tests.reasoning.counts.test_lost import after
from tests.reasoning.making import CAR, HOLE

TODAY = "2026-01-20"
TRAY = making.record("shelf", "tray", {"thing": "white-clip", "count": 2, "counted_on": "2026-01-10"})
PAST = (after("a", 5, 44, place="x"), after("b", 7, 44, place="x"), after("c", 3, 38, place="x"))


def need_of(*records: Record, removal: tuple[Fixing, ...]) -> ClipNeed:
    book = making.book(*records)
    [need] = clip_needs(book, removal, (), tallies(book, standing(book)), TODAY)
    return need


def at(*records: Record) -> Mapping[str, ClipNeed]:
    book = making.book(*records)
    return {need.kind: need for need in clips_at(book, CAR, HOLE, tallies(book, standing(book)), TODAY)}


def pieces(*counts: int | None, kind: str = "white-clip") -> tuple[Fixing, ...]:
    return tuple(Fixing(f"piece-{number}", kind, {"n": count}) for number, count in enumerate(counts))


# Trade 4.10 and 13: 15/126 lost, 44 come off, ten ready, two on the shelf, one pack of ten.
def test_the_worked_order() -> None:
    need = need_of(supply("white-clip", pack=10), TRAY, *PAST, removal=pieces(22, 22))
    assert (need.handled, need.need, need.past.thin) == (44, 10, False)
    assert need.shelf.count == 2
    assert not need.shelf.count_it
    assert need.order is not None
    assert (need.order.short, need.order.packs) == (8, 1)
    assert need.unknown == ()
    assert need.name == "White sail clip"
    assert need.pieces == pieces(22, 22)


def test_what_is_for_single_use_is_replaced_whatever_was_lost() -> None:
    need = need_of(supply("white-clip", pack=10, single_use="single use"), TRAY, *PAST, removal=pieces(22, 22))
    assert (need.need, need.single_use) == (44, True)
    assert need.order is not None
    assert need.order.packs == 5
    back = need_of(supply("white-clip", single_use="goes back"), *PAST, removal=pieces(22, 22))
    assert (back.need, back.single_use) == (10, False)


def test_with_few_notes_it_is_the_same_sum_and_thin() -> None:
    need = need_of(supply("white-clip"), PAST[0], removal=pieces(12))
    assert need.past.thin
    assert need.need is not None
    assert need.need > 0
    assert need.order is not None
    assert need.order.packs is None


def test_of_a_clip_that_nobody_wrote_back_all_may_fly() -> None:
    assert need_of(supply("white-clip"), removal=pieces(7)).need == 7


def test_what_nobody_counted_is_not_known_and_says_where_to_look() -> None:
    need = need_of(supply("white-clip"), removal=pieces(None))
    assert (need.handled, need.need, need.order) == (None, None, None)
    assert need.unknown == ("how many are on the piece 0: count them when it is off, 1 min",)
    some = need_of(supply("white-clip"), removal=pieces(None, 3))
    assert some.handled == 3
    assert len(some.unknown) == 1


def test_where_counts_differ_the_larger_is_taken_and_it_is_said() -> None:
    need = need_of(supply("white-clip"), removal=(Fixing("bezel", "white-clip", {"a": 6, "b": 11, "c": None}),))
    assert need.handled == 11
    assert need.unknown == (
        "notes differ on the bezel (6 in a, 11 in b): look at its back, 1 min; until then the larger counts",
    )


def test_a_clip_without_a_record_has_to_be_measured() -> None:
    need = need_of(removal=pieces(4, kind="some clip"))
    assert need.name == "some clip"
    assert need.unknown == ("which clip that is: caliper the shank of the first one that flies, 1 min",)


def test_a_slip_in_a_write_back_is_told() -> None:
    need = need_of(supply("white-clip"), after("a", 5, 4), removal=pieces(4))
    assert need.unknown == ("more lost than handled in a: set aside until somebody reads it back",)
    need = need_of(supply("white-clip"), after("a", 5, 4), after("b", 2, 1), removal=pieces(4))
    assert need.unknown == ("more lost than handled in a, b: set aside until somebody reads it back",)


def test_at_a_place_every_piece_counts_once() -> None:
    bezel = {"piece": "bezel", "fasteners": [{"kind": "sail clip", "count": 6}]}
    strip = {"piece": "strip", "fasteners": [{"kind": "sail clip", "count": 22}]}
    notes = (seen("s", pieces=[bezel]), seen("t", pieces=[bezel, strip]))
    assert at(supply("white-clip"), *notes)["white-clip"].handled == 28
    assert at(supply("white-clip"), seen("s", pieces=[bezel], place="elsewhere")) == {}


def test_a_job_that_handled_more_than_the_notes_counted_is_believed() -> None:
    bezel = {"piece": "bezel", "fasteners": [{"kind": "sail clip", "count": 6}]}
    found = at(supply("white-clip"), seen("s", pieces=[bezel]), after("a", 2, 14))
    assert found["white-clip"].handled == 14
    assert found["white-clip"].past.handled == 14


def test_a_count_of_the_whole_place_is_not_added_to_its_pieces() -> None:
    bezel = {"piece": "bezel", "fasteners": [{"kind": "sail clip", "count": 11}]}
    whole = seen("t", fasteners=[{"kind": "sail clip", "count": 9}])
    need = at(supply("white-clip"), seen("s", pieces=[bezel]), whole)["white-clip"]
    assert need.handled == 11
    [differ] = need.unknown
    assert differ.startswith("notes differ on how many there are (11 piece by piece, 9 counted in all): count them")
    alike = seen("t", fasteners=[{"kind": "sail clip", "count": 11}])
    assert at(supply("white-clip"), seen("s", pieces=[bezel]), alike)["white-clip"].unknown == ()
    uncounted = seen("t", fasteners=["sail clip"])
    need = at(supply("white-clip"), uncounted)["white-clip"]
    assert need.handled is None
    assert need.unknown == (
        "how many are on the pieces there, which the note does not name: count them when it is off, 1 min",
    )


def test_what_was_lost_elsewhere_counts_and_what_was_handled_there_does_not() -> None:
    bezel = {"piece": "bezel", "fasteners": [{"kind": "sail clip", "count": 6}]}
    need = at(supply("white-clip"), seen("s", pieces=[bezel]), *PAST)["white-clip"]
    assert (need.handled, need.past.handled) == (6, 126)


def test_a_note_whose_place_another_took_is_not_counted() -> None:
    bezel = {"piece": "bezel", "fasteners": [{"kind": "sail clip", "count": 6}]}
    old: Any = seen("s", pieces=[bezel])
    assert at(supply("white-clip"), old, seen("t", replaces="s")) == {}
    replaced = at(supply("white-clip"), after("a", 2, 14), after("b", 1, 3, replaces="a"))["white-clip"]
    assert replaced.handled == 3


def test_kinds_come_in_order() -> None:
    book = making.book()
    removal = (*pieces(1, kind="b clip"), *pieces(1, kind="a clip"))
    found = clip_needs(book, removal, (after("a", 1, 2, "c clip"),), {"a clip": Tally()}, TODAY)
    assert [need.kind for need in found] == ["a clip", "b clip", "c clip"]
