from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.next_best.keeping import keeping
from bezelbook.reasoning.offer import Offer
from tests.reasoning import making
from tests.reasoning.circuits import a_car

EARLY = {"build": "early", "audio": "base"}
UPGRADED = {"build": "late", "audio": "upgraded"}
FOR_EARLY = [{"vehicle": a_car.CAR, "place": a_car.DASH, "splits": {"build": "early"}}]


def keep(*records: Record, **splits: str) -> Offer | None:
    return keeping(a_car.book(*records), a_car.CAR, a_car.DASH, splits or a_car.LATE)


def keep_any(*records: Record) -> Offer | None:
    """With every split left open."""
    return keeping(a_car.book(*records), a_car.CAR, a_car.DASH, {})


def tee(name: str = "tee", **content: Any) -> Record:
    made: Record = a_car.tee(name, **{"ways": {"accessory": "tapped"}, **content})
    return made


def test_a_radio_whose_sound_nothing_of_the_book_reaches_is_not_kept() -> None:
    assert keep() is None
    assert keep(a_car.seen("one")) is None


def test_a_tee_that_is_right_keeps_it_and_what_nobody_metered_is_looked_at_first() -> None:
    offer = keep(a_car.seen("one"), tee())
    assert offer == Offer(
        kind="keep the radio",
        words="keep the radio that is in it, and amplify",
        thing=None,
        place=a_car.DASH,
        mounts=(),
        verdict="goes in if",
        condition="somebody looks at its wiring first",
        sure="worked out",
        witnesses=0,
        needs=("The tee", "an amplifier"),
        buy=("The tee",),
    )


def test_over_several_builds_it_is_as_sure_as_in_the_least_sure_of_them() -> None:
    fitted = a_car.tried("fitted", adapters=["tee"])
    other = a_car.tried("other", adapters=["tee"], sure="dry-fitted", splits=UPGRADED)
    seen = [a_car.seen("one"), a_car.seen("two", splits=UPGRADED)]
    one, both = keep(*seen, tee(), fitted, other), keep(*seen, tee(), fitted, other, build="late")
    assert one is not None
    assert both is not None
    assert (one.sure, both.sure) == ("fitted", "dry-fitted")


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
    offer = keep_any(a_car.seen("one"), tee())
    assert offer is not None
    assert offer.condition == "the car is late base or late upgraded and somebody looks at its wiring first"


def test_builds_that_take_different_pieces_say_which_takes_which() -> None:
    early = tee("other", made_for=FOR_EARLY)
    also = a_car.seen("two", splits=EARLY)
    offer = keep(a_car.seen("one"), also, tee(), early, audio="base")
    assert offer is not None
    assert offer.needs == ("early base: The other", "late base: The tee", "an amplifier")
    assert offer.buy == ()
    offer = keep_any(a_car.seen("one"), also, tee(), early)
    assert offer is not None
    assert offer.needs == (
        "early base or early upgraded: The other",
        "late base or late upgraded: The tee",
        "an amplifier",
    )


def test_what_lies_on_the_shelf_is_not_bought() -> None:
    stock = making.record("shelf", "tee-here", {"thing": "tee", "count": 1, "place": "wall"})
    offer = keep(a_car.seen("one"), tee(), stock)
    assert offer is not None
    assert offer.buy == ()
