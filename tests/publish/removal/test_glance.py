from bezelbook.publish.address import Links, vehicle_page
from bezelbook.publish.removal.glance import Glance, PlaceGlance, glance, glances
from tests.reasoning import making
from tests.reasoning.order import trim

CAR = trim.car("strip", "bezel", "lid")
STOP = {"piece": "strip", "safety": "restraint near"}


def words(*notes: object) -> str:
    return glance("", trim.order(CAR, *notes)).words  # type: ignore[arg-type]


def test_the_pieces_stand_in_a_line_with_their_numbers() -> None:
    note = trim.seen("a", pieces=["strip", trim.first("bezel", "strip")])
    assert words(note) == "1 strip, 2 bezel"
    assert words(note, trim.seen("b", pieces=["strip", "bezel", "lid"])) == "1 strip, 2 bezel, 3 lid (perhaps)"


def test_a_restraint_is_said_at_its_piece_and_alone_where_there_is_nothing_else() -> None:
    assert words(trim.seen("a", pieces=[STOP, "bezel"])) == "1 strip (restraint near: stop), 2 bezel"
    assert words(trim.seen("a", pieces=[STOP])) == "restraint near: stop"


def test_what_nobody_wrote_is_said_with_the_cars_it_is_of() -> None:
    assert glance("early", trim.order(CAR)) == Glance("early", "nobody wrote what comes off first")


def test_a_vehicle_has_a_line_for_each_place_that_somebody_wrote_of_and_build_that_differs() -> None:
    places = {
        making.HOLE: {"kind": "plain opening", "side": "centre", "name": "the hole"},
        "shelf": {"kind": "parcel shelf", "side": "left"},
    }
    car = trim.car("strip", places=places, splits={"build": making.split("early", "late")})
    base = trim.book(car, trim.seen("a", pieces=["strip"], splits={"build": "early"}))
    [found] = glances(base.vehicles[making.CAR], Links(vehicle_page(making.CAR), base))
    orders = (Glance("early", "1 strip"), Glance("late", "nobody wrote what comes off first"))
    assert found == PlaceGlance("the hole", f"{making.CAR}/removal.html#place-{making.HOLE}", orders)
