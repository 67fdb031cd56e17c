"""The one number that decides, and how it is said."""

import pytest

from bezelbook.kinds.record import Record
from bezelbook.reasoning.number import Spot, deciding, room_words, span_words, spots
from bezelbook.reasoning.room_span import RoomSpan
from bezelbook.reasoning.verdict import judge
from tests.reasoning.making import book, length, measured, place, reading, resolved, roomy, tried, unit

MM = 1_000_000
NINE = measured("deep", reading("depth", "205 ± 3 mm"))


def spot(low: float, high: float, least: float, most: float | None) -> Spot:
    room = RoomSpan(int(least * MM), None if most is None else int(most * MM))
    return Spot("depth", "left", int(low * MM), int(high * MM), room)


def test_the_gap_at_worst_and_at_best_add_the_tolerances() -> None:
    found = spot(164, 166, 202, 208)
    assert (found.sure_gap, found.best_gap, found.to_spare) == (36 * MM, 44 * MM, 40 * MM)
    short = spot(209, 211, 202, 208)
    assert (short.sure_gap, short.best_gap, short.to_spare) == (-9 * MM, -1 * MM, -5 * MM)


def test_where_nothing_bounds_the_room_nobody_knows_what_is_left_over() -> None:
    assert (spot(1, 1, 5, None).best_gap, spot(1, 1, 5, None).to_spare) == (None, None)


def test_a_spot_is_said_with_what_it_asks_and_what_there_is() -> None:
    found = spot(164, 166, 202, 208)
    assert found.words("mm") == ("depth: it asks 165 mm (6.50 in) ± 1 mm at the left; there is 205 mm (8.07 in) ± 3 mm")
    assert found.asks("in") == "6.50 in (165 mm) ± 1 mm"


def test_a_plug_is_said_with_the_body_before_it() -> None:
    found = Spot("plug", "right", 140 * MM, 140 * MM, RoomSpan(150 * MM, None))
    assert found.words("mm") == (
        "plug and body together ask 140 mm (5.51 in) at the right; at least 150 mm (5.91 in) is known to be there"
    )


def test_a_width_is_said_without_a_place() -> None:
    assert (
        Spot("width", None, MM, MM, RoomSpan(0, 2 * MM)).words("mm").startswith("width: it asks 1 mm (0.04 in); less")
    )


@pytest.mark.parametrize(
    ("room", "words", "inches"),
    [
        (
            RoomSpan(5 * MM, None),
            "at least 5 mm (0.20 in) is known to be there",
            "at least 0.20 in (5 mm) is known to be there",
        ),
        (RoomSpan(0, 5 * MM), "less than 5 mm (0.20 in) is there", "less than 0.20 in (5 mm) is there"),
        (RoomSpan(4 * MM, 6 * MM), "there is 5 mm (0.20 in) ± 1 mm", "there is 0.20 in (5 mm) ± 1 mm"),
        (RoomSpan(5 * MM, 5 * MM), "there is 5 mm (0.20 in)", "there is 0.20 in (5 mm)"),
    ],
)
def test_the_room_is_said_as_far_as_it_is_known(room: RoomSpan, words: str, inches: str) -> None:
    assert (room_words(room, "mm"), room_words(room, "in")) == (words, inches)


def test_a_span_is_said_as_its_middle_and_its_plus_minus() -> None:
    assert span_words(164 * MM, 166 * MM, "mm") == "165 mm (6.50 in) ± 1 mm"
    assert span_words(165_100_000, 165_100_000, "in") == "6 1/2 in (165.1 mm)"


def decided(*records: Record, depth: str = "150 ± 1 mm", plug: str | None = "32 ± 5 mm") -> Spot | None:
    of = book(*records)
    sizes = {"depth": length(depth)} | ({"plug": length(plug)} if plug else {})
    question = resolved(of, sizes=sizes, exit="right")
    return deciding(place(of), question, judge(place(of), question).verdict)


def test_the_tightest_spot_decides_a_yes() -> None:
    corner = measured("corner", reading("depth", "160 ± 3 mm", "lower-left"))
    eight = measured(
        "rest",
        reading(
            "depth",
            "205 ± 3 mm",
            "upper",
            "upper-left",
            "upper-right",
            "left",
            "centre",
            "right",
            "lower",
            "lower-right",
        ),
    )
    found = decided(corner, eight, depth="150 ± 1 mm")
    assert found is not None
    assert (found.need, found.ninth, found.sure_gap) == ("depth", "lower-left", 6 * MM)


def test_the_spot_furthest_short_decides_a_no() -> None:
    found = decided(NINE, depth="210 ± 1 mm")
    assert found is not None
    assert (found.need, found.ninth, found.best_gap) == ("plug", "right", (208 - 209 - 27) * MM)


def test_a_no_is_decided_where_it_is_certain_and_not_where_it_is_most_in_doubt() -> None:
    rough = reading("width", "200 ± 40 mm")
    of = book(measured("m", rough, reading("height", "118 ± 1 mm")))
    question = resolved(of, sizes={"width": length("190 mm"), "height": length("120 mm")})
    found = deciding(place(of), question, judge(place(of), question).verdict)
    assert found is not None
    assert (found.need, found.sure_gap, found.best_gap) == ("height", -3 * MM, -1 * MM)


@pytest.mark.parametrize(("depth", "decides"), [("208 mm", True), ("207.999 mm", False)])
def test_what_asks_for_all_that_there_could_be_is_short(depth: str, *, decides: bool) -> None:
    of = book(NINE)
    question = resolved(of, sizes={"depth": length(depth)}, plugs="off")
    assert (deciding(place(of), question, "does not") is not None) == decides


def test_what_is_too_close_is_not_decided_where_nobody_measured() -> None:
    shelf = tried(what="shelf", sizes={"height": "101 ± 1 mm"})
    of = book(NINE, shelf)
    question = resolved(of, sizes={"depth": length("203 mm"), "height": length("110 mm")}, plugs="off")
    assert judge(place(of), question).verdict == "too close"
    found = deciding(place(of), question, "too close")
    assert found is not None
    assert (found.need, found.sure_gap) == ("depth", -1 * MM)


def test_what_is_too_close_is_decided_where_it_is_too_close() -> None:
    found = decided(NINE, tried(what="deep", sizes={"depth": "20 ± 1 mm", "height": "30 ± 1 mm"}), depth="170 ± 1 mm")
    assert found is not None
    assert (found.need, found.ninth, found.sure_gap, found.best_gap) == ("plug", "right", -6 * MM, 12 * MM)


def test_where_nothing_is_known_of_the_room_nothing_decides() -> None:
    assert decided() is None


def test_a_need_that_nobody_knows_is_no_spot() -> None:
    of = book(NINE, unit(plug_and_bend=None, body_width="178 mm printed"), roomy())
    question = resolved(of, unit="box")
    assert {one.need for one in spots(place(of), question)} == {"height", "depth"}


def test_a_no_that_nothing_bounds_by_itself_has_no_single_number() -> None:
    both = tried(what="box", verdict="does not", sure="dry-fitted", plugs="off")
    of = book(unit(), both)
    question = resolved(of, unit="box")
    assert judge(place(of), question).verdict == "does not"
    assert deciding(place(of), question, "does not") is None
