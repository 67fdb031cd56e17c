from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.looks.met import ENDLESS, OFFSET, AllMet, Met, Read, Room, Spot, common, empty
from bezelbook.reasoning.needs import needs_of_unit
from bezelbook.values.span import UNKNOWN, Span, around
from tests.reasoning import making

MM = 1_000_000
UNREAD = Read({})


def met(*records: Record, read: Read = UNREAD, mounts: tuple[str, ...] = (), **state: Any) -> AllMet | None:
    base = making.book(making.unit(), *records)
    place = making.place(base)
    setting = making.setting(base, *mounts, **state)
    room = Room(place.accounts[0], setting)
    return room.met(needs_of_unit(base, base.head_units["box"]), read)


def at(found: AllMet | None, need: str, ninth: str | None = None) -> Met:
    assert found is not None
    [one] = [one for one in (*found.body, *found.plug) if (one.demand.need, one.demand.ninth) == (need, ninth)]
    return one


def room(found: AllMet | None, need: str, ninth: str | None = None) -> tuple[float, float]:
    one = at(found, need, ninth)
    return one.sure / MM, one.most / MM


def test_what_nobody_read_may_be_anything() -> None:
    assert room(met(), "width") == (0, ENDLESS / MM)
    assert at(met(), "plug", "right").demand.need == "plug"


def test_what_both_of_two_spans_allow() -> None:
    assert common(Span(1, 5), Span(3, None)) == Span(3, 5)
    assert common(UNKNOWN, Span(None, 4)) == Span(None, 4)
    assert not empty(common(Span(1, 5), Span(5, 9)))
    assert empty(common(Span(1, 5), Span(6, 9)))
    assert not empty(UNKNOWN)
    assert not empty(Span(1, None))


def test_a_reading_bounds_what_it_was_taken_of_and_nothing_else() -> None:
    read = Read({"width": around(182 * MM, MM), "left": around(150 * MM, MM)})
    found = met(read=read)
    assert room(found, "width") == (181, 183)
    assert room(found, "height") == (0, ENDLESS / MM)
    assert room(found, "depth", "left") == (149, 151)
    assert room(found, "depth", "right") == (0, ENDLESS / MM)


def test_a_reading_that_the_notes_do_not_allow_is_none() -> None:
    wide = making.measured("tape", making.reading("width", "190 ± 1 mm"))
    narrow = Read({"width": around(180 * MM, MM)})
    assert met(wide, read=narrow) is None
    assert room(met(wide, read=Read({"width": around(191 * MM, MM)})), "width") == (190, 191)


def test_a_kit_with_a_hole_of_its_own_is_met_instead_of_the_opening() -> None:
    kit = making.mount(presents={"width": "180 ± 1 mm caliper"})
    wide = Read({"width": around(190 * MM, MM)})
    assert room(met(kit, read=wide, mounts=("kit",)), "width") == (179, 181)
    closer = Read({("kit", "width"): around(180 * MM, MM // 2)})
    assert room(met(kit, read=closer, mounts=("kit",)), "width") == (179.5, 180.5)


def test_a_kit_that_holds_out_gives_its_offset_to_every_depth() -> None:
    kit = making.mount(proud="+10 ± 2 mm")
    read: dict[Spot, Span] = {"left": around(150 * MM, MM)}
    assert room(met(kit, read=Read(read), mounts=("kit",)), "depth", "left") == (157, 163)
    told: dict[Spot, Span] = {**read, ("kit", OFFSET): around(11 * MM, MM // 2)}
    assert room(met(kit, read=Read(told), mounts=("kit",)), "depth", "left") == (159.5, 162.5)
    seen = making.measured("seat", making.reading("depth", "158 ± 1 mm", "left", datum="kit seat"), mounts=["kit"])
    assert room(met(kit, seen, read=Read(read), mounts=("kit",)), "depth", "left") == (157, 159)


def test_a_flush_kit_gives_nothing() -> None:
    read = Read({"left": around(150 * MM, MM)})
    assert room(met(making.mount(), read=read, mounts=("kit",)), "depth", "left") == (149, 151)


def test_the_house_clearance_is_left_where_only_a_reading_carries_it() -> None:
    shop = making.shop(clearances={"width": "2 mm", "height": "0 mm", "depth": "0 mm"})
    assert room(met(shop, read=Read({"width": around(182 * MM, MM)})), "width") == (179, 183)
    assert room(met(shop, making.tried(), read=Read({"width": around(178 * MM, MM)})), "width")[0] == 177


def test_what_is_known_of_a_room_is_the_same_as_long_as_its_lengths_are() -> None:
    def known(*records: Record) -> object:
        base = making.book(making.unit(), *records)
        return Room(making.place(base).accounts[0], making.setting(base)).known

    assert known() == known()
    assert known() != known(making.roomy())
    assert known() == known(making.tried(sure="told"))


def test_a_kit_that_holds_out_by_exactly_so_much_gives_that_to_what_was_read_and_to_what_went_in() -> None:
    """In a shop that takes its caliper for exact: whatever the house likes to leave, what went in needs no more."""
    shop = making.shop(tools={"bench_caliper": "0 mm"}, clearances={"width": "0 mm", "height": "0 mm", "depth": "3 mm"})
    kit = making.mount(proud="+10 mm caliper")
    bare = making.measured("wire", making.reading("depth", "150 ± 1 mm", "left"))
    assert room(met(shop, kit, bare, mounts=("kit",)), "depth", "left") == (156, 161)
    fitted = making.tried(mounts=["kit"], plugs="off")
    assert room(met(shop, kit, fitted, mounts=("kit",)), "depth", "left")[0] == 109
