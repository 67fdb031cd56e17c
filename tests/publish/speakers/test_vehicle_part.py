"""A place for a speaker on its vehicle's page."""

from typing import Any

import pytest

from bezelbook.publish.address import Links, vehicle_page
from bezelbook.publish.speakers.place import places_for_speakers
from bezelbook.publish.speakers.vehicle_part import SpeakerPart, speaker_part, window_words
from bezelbook.reasoning.speakers.thickness import End
from bezelbook.reasoning.speakers.window import Window
from tests.reasoning.speakers.doors import CAR, DOOR, OTHER, book, measured, mount, reading, roomy, speaker, tried

MM = 1_000_000
RING = mount("ring", thickness="5 mm caliper")


def part(*records: Any, where: str = DOOR) -> SpeakerPart:
    of = book(*records)
    places = places_for_speakers(of)
    return speaker_part(places[CAR, where], places, Links(vehicle_page(CAR), of))


def test_readings_are_quoted_and_those_of_the_other_side_say_so() -> None:
    note = roomy(other_side="measured the same")
    assert part(note).readings[1] == "rear depth to glass down 70 ± 1 mm from the door metal by putty"
    assert part(note, where=OTHER).readings[1].endswith(", read on the other side and said to be measured the same")
    wide = measured("m", reading("depth", "100 mm"), reading("bolt circle", "156 mm", datum=None))
    assert part(wide).readings == ("bolt circle 156 mm by putty",)


def test_rows_say_the_verdict_the_reason_and_the_number() -> None:
    found = part(roomy(), speaker("big", basket="200 mm caliper"), speaker("boxed", basket="130 mm printed"))
    rows = {row.name: row for row in found.rows}
    assert (rows["six"].words, rows["six"].reason) == ("Goes in", "worked out · one job")
    assert rows["big"].words == "Does not go in"
    assert rows["boxed"].reason.startswith("its printed sizes are true")
    assert rows["big"].number.startswith("basket: it asks 200 mm")
    assert (found.untried, found.argued) == (0, False)
    assert rows["six"].at.endswith("speakers/six.html")


def test_what_is_argued_over_says_what_holds_until_it_is_settled() -> None:
    found = part(tried("yes"), tried("no", verdict="does not"))
    assert found.argued
    assert [row.reason for row in found.rows] == ["until settled: does not"]
    close = part(roomy(glass="60 ± 1 mm"))
    assert [row.reason for row in close.rows] == [""]


def test_a_place_that_nobody_looked_at_says_how_to_look() -> None:
    found = part()
    assert (found.rows, found.untried, found.drawing, found.rings) == ((), 1, None, ())
    assert "depth gauge or putty with the glass all the way down, 5 min" in [one.look for one in found.missing]


def test_rings_are_told_for_here_and_for_both_sides() -> None:
    left = part(RING, roomy(glass="58 ± 1 mm"))
    [line] = left.rings
    assert line.words == (
        "a ring of at least 2 mm (0.08 in) ± 1 mm, at most 10 mm (0.39 in) ± 1 mm; of the book's rings ring would do "
        "here; too little is known of the door right to name one ring for both sides"
    )
    assert left.ring_names == ("ring 5 mm",)
    both = part(RING, roomy(glass="58 ± 1 mm", other_side="measured the same"))
    assert both.rings[0].words.endswith("the same on both sides: ring")
    right = roomy("right", glass="54.9 ± 1 mm", place=OTHER)
    assert part(RING, roomy(glass="58 ± 1 mm"), right).rings[0].words.endswith("no one ring does for both sides")


def test_without_another_side_nothing_is_said_of_it() -> None:
    fixed = reading("rear depth to fixed", "70 ± 1 mm", datum="inside face of panel")
    front = reading("front clearance", "20 ± 1 mm", datum="inside face of panel")
    shelf = measured("m", reading("cut-out", "140 ± 1 mm"), fixed, front, place="shelf")
    [line] = part(shelf, where="shelf").rings
    assert line.words.endswith("no ring of the book does for certain")


@pytest.mark.parametrize(
    ("low", "high", "words"),
    [
        (-3, 10, "no ring is needed for what is behind, at most 10 mm (0.39 in) ± 1 mm"),
        (None, 10, "nobody measured behind, at most 10 mm (0.39 in) ± 1 mm"),
        (3, None, "a ring of at least 3 mm (0.12 in) ± 1 mm, nobody measured in front"),
        (-9, -3, "no ring is needed for what is behind, it stands out too far even without a ring"),
        (9, 3, "no ring does: what is wanted behind is more than there is in front"),
    ],
)
def test_a_window_in_words(low: int | None, high: int | None, words: str) -> None:
    ends = [None if at is None else End(at * MM, MM, "glass") for at in (low, high)]
    assert window_words(Window(ends[0], ends[1], ()), "mm") == words
