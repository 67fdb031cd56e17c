"""Which clashes are asked for at which sort of place."""

from bezelbook.kinds.record import Record
from bezelbook.reasoning.clashes.at_place import clashes_at
from tests.reasoning.clashes.made import CAR, DASH, LEFT, SEAT, book, measured

ALL = (DASH, LEFT, SEAT)


def read(of: str, *lengths: int) -> list[Record]:
    return [measured(f"{place}-{of}-{mm}", (of, f"{mm} ± 1 mm"), place=place) for place in ALL for mm in lengths]


def test_a_door_has_holes_and_a_dash_has_widths() -> None:
    said = book(*read("width", 170, 182), *read("cut-out", 131, 151))
    found = {place: [clash.first.size for clash in clashes_at(said, CAR, place)] for place in (*ALL, "nowhere")}
    assert found == {DASH: ["width"], LEFT: ["hole"], SEAT: ["width", "hole"], "nowhere": []}
