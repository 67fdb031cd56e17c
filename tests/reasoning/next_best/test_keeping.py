from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.next_best.keeping import keeping
from bezelbook.reasoning.offer import Offer
from tests.reasoning import making
from tests.reasoning.circuits import a_car

EARLY = {"build": "early", "audio": "base"}


def keep(*records: Record, **splits: str) -> Offer | None:
    return keeping(a_car.book(*records), a_car.CAR, a_car.DASH, splits or a_car.LATE)


def tee(name: str = "tee", **content: Any) -> Record:
    made: Record = a_car.tee(name, **{"ways": {"accessory": "tapped"}, **content})
    return made


def test_a_radio_whose_sound_nothing_of_the_book_reaches_is_not_kept() -> None:
    assert keep() is None
    assert keep(a_car.seen("one")) is None


def test_a_tee_that_is_right_keeps_it_and_what_nobody_metered_is_looked_at_first() -> None:
    offer = keep(a_car.seen("one"), tee())
    assert offer is not None
    assert (offer.kind, offer.verdict, offer.sure) == ("keep the radio", "goes in if", "worked out")
    assert offer.condition == "somebody looks at its wiring first"
    assert (offer.needs, offer.buy) == (("The tee", "an amplifier"), ("The tee",))


def test_with_every_cavity_metered_it_is_kept_for_certain() -> None:
    offer = keep(a_car.every_cavity(), tee(ways={"bus": "not there", "accessory": "tapped"}))
    assert offer is not None
    assert (offer.verdict, offer.condition) == ("goes in", "")


def test_what_the_tee_does_not_carry_has_to_be_found_elsewhere() -> None:
    offer = keep(a_car.seen("one"), tee(ways={"accessory": "not there"}))
    assert offer is not None
    assert offer.condition == "accessory is found elsewhere"


def test_where_only_some_builds_can_keep_it_they_are_named() -> None:
    offer = keep(a_car.seen("one"), tee(), audio="base")
    assert offer is not None
    assert offer.condition == "the car is late base and somebody looks at its wiring first"


def test_builds_that_take_different_pieces_say_which_takes_which() -> None:
    early = a_car.tee(
        "other",
        ways={"accessory": "tapped"},
        made_for=[{"vehicle": a_car.CAR, "place": a_car.DASH, "splits": {"build": "early"}}],
    )
    also = a_car.seen("two", splits=EARLY)
    offer = keep(a_car.seen("one"), also, tee(), early, audio="base")
    assert offer is not None
    assert offer.needs == ("early base: The other", "late base: The tee", "an amplifier")
    assert offer.buy == ()


def test_what_lies_on_the_shelf_is_not_bought() -> None:
    stock = making.record("shelf", "tee-here", {"thing": "tee", "count": 1, "place": "wall"})
    offer = keep(a_car.seen("one"), tee(), stock)
    assert offer is not None
    assert offer.buy == ()
