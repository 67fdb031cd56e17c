from typing import Any

import pytest

from bezelbook.kinds.note.record import Seen
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.counts.fixing import Fixing, fixings, is_clip, kind_key
from tests.reasoning import making
from tests.reasoning.making import CAR, HOLE

SAIL = {"name": "White sail clip", "also": ["sail clip"], "form": "fastener", "fastener_kind": "W-base clip"}


def supply(named: str, /, **content: Any) -> Record:
    made: Record = making.record("supplies", named, SAIL | content)
    return made


def seen(named: str, **content: Any) -> Seen:
    made: Seen = making.record("notes", named, {"form": "seen", "vehicle": CAR, "place": HOLE} | content)
    return made


BOOK = making.book(supply("white-clip"), supply("screw", name="Screw", also=[], fastener_kind="machine screw"))


def rows(*notes: Seen, book: KnowledgeBase = BOOK) -> dict[tuple[str, str], int | None]:
    return {(one.piece, one.kind): one.count for one in fixings(book, notes)}


def test_a_clip_is_called_by_any_of_its_names() -> None:
    assert kind_key(BOOK, "Sail Clip") == kind_key(BOOK, "white-clip") == "white-clip"
    assert kind_key(BOOK, "Some  Clip") == "some clip"


@pytest.mark.parametrize(
    ("kind", "clip"),
    [
        ("white-clip", True),
        ("screw", False),
        ("some clip", True),
        ("big push rivet", True),
        ("fir tree", True),
        ("7 mm hex screw", False),
        ("t20 screw", False),
    ],
)
def test_what_breaks_or_flies_is_a_clip(kind: str, *, clip: bool) -> None:
    assert is_clip(BOOK, kind) is clip


def test_a_supply_that_is_no_fastener_is_no_clip() -> None:
    tool = making.record("supplies", "clip-puller", {"name": "Clip puller", "form": "tool", "tool_kind": "lever"})
    assert not is_clip(making.book(tool), "clip-puller")


def test_each_kind_on_each_piece_is_counted_once_however_many_notes_saw_it() -> None:
    piece = {"piece": "bezel", "fasteners": [{"kind": "sail clip", "count": 6}, {"kind": "screw", "count": 4}]}
    strip = {"piece": "strip", "fasteners": [{"kind": "white-clip", "count": 22}]}
    assert rows(seen("a", pieces=[piece, strip]), seen("b", pieces=[piece])) == {
        ("bezel", "white-clip"): 6,
        ("strip", "white-clip"): 22,
    }


# Trade C36: notes that count differently; the larger is taken for ordering.
def test_where_notes_differ_the_larger_count_is_for_ordering() -> None:
    six, eleven = ({"piece": "bezel", "fasteners": [{"kind": "sail clip", "count": count}]} for count in (6, 11))
    [fixing] = fixings(BOOK, [seen("a", pieces=[six]), seen("b", pieces=[eleven])])
    assert (fixing.count, fixing.differ) == (11, True)
    assert fixing.counts == {"a": 6, "b": 11}


def test_rows_of_one_kind_on_one_piece_are_added() -> None:
    left = {"kind": "sail clip", "count": 2, "where": "left"}
    right = {"kind": "sail clip", "count": 3, "where": "right"}
    assert rows(seen("a", pieces=[{"piece": "bezel", "fasteners": [left, right]}])) == {("bezel", "white-clip"): 5}
    blank = {"piece": "bezel", "fasteners": [left, "sail clip", right]}
    assert rows(seen("a", pieces=[blank])) == {("bezel", "white-clip"): None}


def test_what_nobody_counted_is_no_number_and_differs_from_nothing() -> None:
    fixing = Fixing("bezel", "clip", {"a": None, "b": 4})
    assert (fixing.count, fixing.differ) == (4, False)
    assert Fixing("bezel", "clip", {"a": None}).count is None


def test_what_is_counted_without_a_piece_is_the_whole_of_what_that_note_saw() -> None:
    bezel = {"piece": "bezel", "fasteners": [{"kind": "sail clip", "count": 6}]}
    loose = [{"kind": "sail clip", "count": 4}, {"kind": "metal claw", "count": 9}]
    assert rows(seen("a", pieces=[bezel], fasteners=loose)) == {
        ("", "metal claw"): 9,
        ("", "white-clip"): 10,
        ("bezel", "white-clip"): 6,
    }
