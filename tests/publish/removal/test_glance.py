from bezelbook.publish.removal.glance import Glance, glance
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
