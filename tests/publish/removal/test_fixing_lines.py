from typing import Any, get_args

import pytest

from bezelbook.kinds.supply.fastener import FastenerKind
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.removal.fixing_lines import fixing_lines, fixing_words, stop_words
from bezelbook.reasoning.order.fixings import Fixing
from tests.reasoning import making
from tests.reasoning.order import trim

SCREW = {"form": "fastener", "name": "Short hex screw", "fastener_kind": "self-tapping screw", "drive": "7 mm hex"}
BOLT = {"form": "fastener", "name": "Bolt", "fastener_kind": "bolt"}
SUPPLIES = (making.record("supplies", "short-hex-screw", SCREW), making.record("supplies", "bolt", BOLT))
CAR = trim.car("strip")


def book_of(*said: Any) -> tuple[KnowledgeBase, tuple[Fixing, ...]]:
    notes = [trim.seen(f"n{number}", fasteners=[one]) for number, one in enumerate(said)]
    base = trim.book(CAR, *SUPPLIES, *notes)
    [order] = trim.orders(base)
    return base, order.loose


def fixing(*said: dict[str, Any]) -> tuple[str, ...]:
    base, held = book_of(*said)
    return fixing_words(base, held[0])


def test_fasteners_are_one_line_and_the_odd_one_has_its_own() -> None:
    full = {"kind": "short-hex-screw", "count": 4, "where": "below", "length": "12 mm", "odd_one": "Left is 20 mm."}
    assert fixing(full) == ("4 × Short hex screw, 7 mm hex, below, 12 mm long", "Odd one: Left is 20 mm.")
    assert fixing({"kind": "clip"}) == ("clip, not counted",)
    assert fixing({"kind": "bolt", "count": 6}, {"kind": "bolt", "count": 11}) == (
        "6 or 11 × Bolt, the notes differ, so have 11 ready",
    )


@pytest.mark.parametrize("kind", get_args(FastenerKind))
def test_every_kind_of_fastener_has_its_act(kind: FastenerKind) -> None:
    supply = making.record("supplies", "thing", {"form": "fastener", "name": "Thing", "fastener_kind": kind})
    base = trim.book(CAR, supply, trim.seen("a", fasteners=["thing"]))
    acts = dict(fixing_lines(base, trim.orders(base)[0].loose))
    pulled = any(word in kind for word in ("clip", "claw", "stud", "tab")) and kind != "clip nut"
    assert acts["Ease out" if pulled else "Undo"] == ("Thing, not counted",)
    assert acts["What holds it"] == ()


def test_what_the_book_does_not_have_goes_by_its_words() -> None:
    base, held = book_of("cross screw", "white clip", "glue")
    assert list(fixing_lines(base, held)) == [
        ("Undo", ("cross screw, not counted",)),
        ("What holds it", ("glue, not counted",)),
        ("Ease out", ("white clip, not counted",)),
    ]


def test_when_to_stop_counts_what_has_to_be_out_where_all_of_it_was_counted() -> None:
    for said, words in (
        ([{"kind": "bolt", "count": 1}], "it bends, or does not move with its one screw out: something still holds it"),
        (
            [{"kind": "bolt", "count": 1}, {"kind": "short-hex-screw", "count": 3}, {"kind": "clip", "count": 9}],
            "it bends, or does not move with all 4 out: something still holds it",
        ),
        (
            [{"kind": "bolt", "count": 1}, {"kind": "cross screw"}],
            "it bends and does not come: something still holds it",
        ),
        ([{"kind": "clip", "count": 9}], "it bends and does not come: something still holds it"),
    ):
        assert stop_words(*book_of(*said)) == words
