from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.next_best.plug_in import PlugIn, plug_in
from tests.reasoning.circuits import a_car


def lead(*records: Record, **splits: str) -> PlugIn:
    return plug_in(a_car.book(a_car.seen("one"), *records), a_car.CAR, a_car.DASH, splits or a_car.LATE)


def made_for(build: str) -> list[dict[str, Any]]:
    return [{"vehicle": a_car.CAR, "place": a_car.DASH, "splits": {"build": build}}]


def test_the_one_adapter_that_was_made_for_the_build_is_named() -> None:
    assert lead(a_car.plug_in(), a_car.tee()) == PlugIn(("plug-in",), ("The plug-in",))


def test_without_one_that_says_so() -> None:
    none = PlugIn((), ("an adapter that is right here: the book has none",))
    assert lead() == lead(a_car.plug_in(made_for=made_for("early"))) == none


def test_of_two_that_are_right_either_does_and_neither_has_to_be_bought() -> None:
    assert lead(a_car.plug_in(), a_car.plug_in("other")) == PlugIn((), ("The other or The plug-in",))


def test_builds_that_differ_are_told_apart() -> None:
    found = lead(a_car.plug_in(), a_car.plug_in("old", made_for=made_for("early")), audio="base")
    assert found == PlugIn((), ("early base: The old", "late base: The plug-in"))
    assert lead(a_car.plug_in(), audio="base").lines == (
        "early base: no adapter of the book is right",
        "late base: The plug-in",
    )


def test_builds_that_take_the_same_are_told_in_one_line() -> None:
    book = a_car.book(a_car.seen("one"), a_car.plug_in(), a_car.plug_in("old", made_for=made_for("early")))
    assert plug_in(book, a_car.CAR, a_car.DASH, {}).lines == (
        "early base or early upgraded: The old",
        "late base or late upgraded: The plug-in",
    )
