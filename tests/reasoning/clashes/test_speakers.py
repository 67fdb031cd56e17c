"""Which notes of a door cannot all be true, about which of its three rooms, and why (worked by hand)."""

import pytest

from bezelbook.kinds.note.record import RoomReading
from bezelbook.reasoning.clashes.speakers import size_of, speaker_clashes
from bezelbook.values.quantity import read_quantity
from tests.reasoning.clashes.made import CAR, LEFT, book, measured, speaker, tried


@pytest.mark.parametrize(
    ("of", "size"),
    [
        ("cut-out", "hole"),
        ("front clearance", "room in front"),
        ("rear depth to fixed", "depth behind"),
        ("bolt circle", ""),
    ],
)
def test_a_reading_is_of_one_of_three_rooms(of: str, size: str) -> None:
    assert size_of(RoomReading.model_construct(of=of, reads=read_quantity("1 mm", "length"))) == size  # type: ignore[arg-type]


def told(*records: object) -> list[tuple[str, str, list[str]]]:
    clashes = speaker_clashes(book(*records), CAR, LEFT)  # type: ignore[arg-type]
    return [(one.first.explained.why, one.first.size, [note.id for note in one.first.notes]) for one in clashes]


def test_a_radius_is_told_as_one() -> None:
    holes = [
        measured(name, ("cut-out", reads), place=LEFT) for name, reads in (("a", "72 ± 1 mm"), ("b", "143 ± 1 mm"))
    ]
    assert told(*holes) == [("radius", "hole", ["a", "b"])]


def test_a_no_and_a_reading_that_leaves_room_for_it() -> None:
    six = speaker("six", basket="141 mm caliper", mounting_depth="63 mm caliper", front_height="12 mm caliper")
    no = tried("no", "six", "does not", place=LEFT, reason="grille", gasket="none")
    assert told(six, no, measured("m", ("front clearance", "40 ± 1 mm"), place=LEFT)) == [
        ("room", "room in front", ["m", "no"])
    ]


WORST, DOWN = "rear depth at worst of travel", "rear depth to glass down"


@pytest.mark.parametrize(
    ("readings", "expected"),
    [
        ([(WORST, 50), (DOWN, 60), (DOWN, 60)], []),
        ([(WORST, 50), (DOWN, 60), (DOWN, 70)], [("room", "depth behind", ["b", "c"])]),
        ([(WORST, 50), (DOWN, 40)], [("room", "depth behind", ["a", "b"])]),
        ([(DOWN, 60), (DOWN, 70)], [("room", "depth behind", ["a", "b"])]),
    ],
)
def test_glass_that_is_down_is_as_far_for_everybody_though_it_comes_nearer_on_its_way(
    readings: list[tuple[str, int]], expected: object
) -> None:
    notes = [
        measured(name, (of, f"{reads} ± 1 mm"), place=LEFT)
        for name, (of, reads) in zip("abc"[: len(readings)], readings, strict=True)
    ]
    assert told(*notes) == expected
