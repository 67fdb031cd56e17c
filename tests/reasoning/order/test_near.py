from typing import Any

from bezelbook.reasoning.order.near import restraint_near
from tests.reasoning import making

NEAR = "restraint near"


def off(name: str, *pieces: Any, **content: Any) -> Any:
    plain = {"form": "seen", "vehicle": making.CAR, "place": making.HOLE, "pieces": list(pieces)}
    return making.record("notes", name, plain | content)


def test_the_vehicles_list_or_any_note_may_say_so() -> None:
    car = making.vehicle(trim={"pillar": {"safety": NEAR}, "strip": {"safety": "none"}, "tray": {}})
    lining = off("a", {"piece": "lining", "safety": NEAR}, {"piece": "pocket", "safety": "stored energy"})
    other = off("b", "lining", {"piece": "seat", "safety": NEAR}, place="elsewhere")
    book = making.book(car, lining, other, making.tried("c"))
    assert restraint_near(book, making.CAR) == {"pillar", "lining", "seat"}


def test_a_vehicle_that_is_not_in_the_book_has_what_notes_say() -> None:
    lost = off("a", {"piece": "lining", "safety": NEAR}, vehicle="gone")
    assert restraint_near(making.book(lost), "gone") == {"lining"}
    assert restraint_near(making.book(), "gone") == frozenset()
