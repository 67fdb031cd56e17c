"""The least and the most that a room can be, as the notes leave it."""

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.cells import demands
from bezelbook.reasoning.needs import needs_of_unit
from bezelbook.reasoning.room_span import RoomSpan, room_spans
from tests.reasoning.making import ask, book, frame, measured, mount, place, reading, setting, shop, tried, unit

MM = 1_000_000


def spans(of: KnowledgeBase, need: str, *mounts: str) -> set[tuple[int, int | None]]:
    at = setting(of, *mounts)
    wanted, _ = demands(frame(of), needs_of_unit(of, unit()), at)
    asked = [demand for demand in wanted if demand.need == need]
    return {(room.least, room.most) for room in room_spans(place(of).all_notes, at, asked)}


def test_the_room_lies_between_what_went_in_and_what_did_not() -> None:
    assert spans(book(), "depth") == {(0, None)}
    assert spans(book(measured("m", reading("depth", "150 ± 3 mm"))), "depth") == {(147 * MM, 153 * MM)}
    assert spans(book(unit(), tried()), "depth") >= {(109 * MM, None)}
    no = tried("n", what="deep", verdict="does not", reason="width")
    assert spans(book(unit("deep"), no), "width") == {(0, 179 * MM)}


def test_the_room_seen_through_a_mount_is_moved_by_its_offset() -> None:
    measurement = measured("m", reading("depth", "150 ± 3 mm"))
    of = book(
        measurement,
        mount("exact", proud="6 mm caliper"),
        mount("rough", proud="6 ± 1 mm"),
        shop(tools={"bench_caliper": "0 mm"}),
    )
    assert spans(of, "depth", "exact") == {(153 * MM, 159 * MM)}
    assert spans(of, "depth", "rough") == {(152 * MM, 160 * MM)}


def test_a_room_is_read_where_it_is_bounded_on_both_sides() -> None:
    assert RoomSpan(1, 2).read
    assert not RoomSpan(0, 2).read
    assert not RoomSpan(1, None).read


def test_what_is_like_a_unit_shares_the_sizes_that_nobody_typed() -> None:
    """Its depth is only known to 5 mm, and is the very one that went in, which a depth of 115 mm need not be."""
    of = book(unit(body_depth="110 ± 5 mm caliper"), tried())
    bare = {"mounts": "none"}
    assert ask(of, {"like": "box", "width": "170 mm"}, state=bare).verdict == "goes in"
    assert ask(of, {"width": "170 mm", "depth": "115 mm"}, state=bare).verdict == "nobody has tried"
