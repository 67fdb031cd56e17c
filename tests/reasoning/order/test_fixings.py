from typing import Any

from bezelbook.kinds.note.removal import Fasteners
from bezelbook.reasoning.order.fixings import Fixing, fixings, record_of
from tests.reasoning import making
from tests.reasoning.order import trim

CLAW = making.record(
    "supplies",
    "metal-claw",
    {"form": "fastener", "name": "Metal claw", "also": ["bezel claw"], "fastener_kind": "metal claw"},
)
LEVER = making.record("supplies", "lever", {"form": "tool", "name": "Lever", "tool_kind": "pry tool"})
BOOK = trim.book(CLAW, LEVER)


def found(*said: tuple[dict[str, Any], str]) -> tuple[Fixing, ...]:
    return fixings(BOOK, [(Fasteners.model_validate(one), note) for one, note in said])


def test_a_kind_is_one_kind_by_whatever_name_of_its_record() -> None:
    [one] = found(({"kind": "metal-claw", "count": 9}, "a"), ({"kind": "Bezel claw", "count": 9}, "b"))
    assert (one.name, one.record, one.most, one.notes) == ("Metal claw", "metal-claw", 9, ("a", "b"))
    assert len(one.counts) == 1


def test_two_counts_are_both_told_and_the_larger_is_the_one_to_have_ready() -> None:
    [one] = found(({"kind": "clip", "count": 6}, "a"), ({"kind": "Clip", "count": 11}, "b"))
    assert [(said.what, said.notes) for said in one.counts] == [(6, ("a",)), (11, ("b",))]
    assert one.most == 11
    assert (one.name, one.record) == ("clip", None)


def test_fasteners_of_two_spots_are_two_and_a_blank_spot_is_the_only_one_named() -> None:
    both = found(({"kind": "screw", "where": "top"}, "a"), ({"kind": "screw", "where": "bottom"}, "a"))
    assert [one.where for one in both] == ["top", "bottom"]
    [one] = found(({"kind": "screw", "count": 2}, "a"), ({"kind": "screw", "where": "Top", "count": 2}, "b"))
    assert one.where == "Top"
    three = found(
        ({"kind": "screw", "where": "top"}, "a"), ({"kind": "screw", "where": "bottom"}, "a"), ({"kind": "screw"}, "b")
    )
    assert [one.where for one in three] == ["top", "bottom", None]


def test_within_one_note_the_counts_add_up() -> None:
    [one] = found(({"kind": "clip", "count": 2}, "a"), ({"kind": "clip", "count": 3}, "a"), ({"kind": "clip"}, "b"))
    assert one.most == 5


def test_nobody_counted_is_no_count() -> None:
    [one] = found(({"kind": "clip"}, "a"))
    assert one.most is None


def test_an_odd_length_and_an_odd_one_are_kept_as_typed() -> None:
    [one] = found(({"kind": "screw", "length": "12 mm", "odd_one": "Lower left is 20 mm."}, "a"))
    assert [said.what for said in one.lengths] == ["12 mm"]
    assert [said.what for said in one.odd_ones] == ["Lower left is 20 mm."]


def test_a_tool_is_no_fastener() -> None:
    assert record_of(BOOK, "lever") is None
    assert record_of(BOOK, "bezel claw") == CLAW
