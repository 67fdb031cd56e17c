"""Bolt patterns: chords against roots of unity, and the trade's worked patterns (trade.md 4.5; common practice)."""

from cmath import exp, pi
from dataclasses import replace

import pytest

from bezelbook.reasoning.speakers.bolts import (
    MM,
    Meeting,
    Pattern,
    circle_of,
    landing,
    meeting,
    spacing_of,
    turned_by,
)


def on(count: int | None, circle: float | None, slots: float = 0, first: str | None = None) -> Pattern:
    if circle is None:
        return Pattern(count)
    return Pattern(count, round((circle - slots) * MM), round((circle + slots) * MM), first=first)


@pytest.mark.parametrize("count", [3, 4, 5, 6, 8, 12])
def test_a_chord_is_the_way_between_neighbouring_roots_of_unity(count: int) -> None:
    way = abs(exp(2j * pi / count) - 1) * 156 / 2
    low, high = spacing_of(156 * MM, count)
    assert low <= way * MM + 1e-3
    assert high >= way * MM - 1e-3
    assert high - low <= 2
    least, most = circle_of(low, count)[0], circle_of(high, count)[1]
    assert least <= 156 * MM <= most
    assert most - least < 10


@pytest.mark.parametrize(("count", "share"), [(3, 0.866), (4, 0.707), (6, 0.5)])
def test_the_trade_s_shares_of_a_circle(count: int, share: float) -> None:
    assert spacing_of(1000 * MM, count)[0] / MM == pytest.approx(share * 1000, abs=0.5)


def test_110_on_four_holes_is_155_6_and_135_on_three_is_155_9() -> None:
    assert [round(end / MM, 1) for end in circle_of(110 * MM, 4)] == [155.6, 155.6]
    assert [round(end / MM, 1) for end in circle_of(135 * MM, 3)] == [155.9, 155.9]


@pytest.mark.parametrize(
    ("ours", "theirs", "lands"),
    [(4, 4, 4), (3, 4, 1), (4, 3, 1), (3, 6, 3), (6, 3, 3), (4, 8, 4), (2, 4, 2), (1, 1, 1), (9, 10, 3)],
)
def test_how_many_land_where_counts_differ(ours: int, theirs: int, lands: int) -> None:
    assert landing(ours, theirs) == lands


def test_three_into_four_lands_one_or_two_and_wants_a_plate() -> None:
    found = meeting(on(3, 156), on(4, 156))
    assert found.word == "does not meet"
    assert found.lands in (1, 2)
    assert found.why == "3 holes into 4: 1 of them can land"


@pytest.mark.parametrize(
    ("car", "word"),
    [(156, "meets"), (157.5, "meets"), (154.5, "meets"), (157.6, "does not meet"), (154.4, "does not meet")],
)
def test_a_circle_meets_within_one_and_a_half(car: float, word: str) -> None:
    assert meeting(on(4, 156), on(4, car)).word == word


@pytest.mark.parametrize(("car", "word"), [(161.5, "meets"), (161.6, "does not meet"), (150.5, "meets")])
def test_slots_reach_further(car: float, word: str) -> None:
    assert meeting(on(4, 156, slots=4), on(4, car)).word == word


def test_a_spacing_written_as_a_circle_is_said_to_read_like_one() -> None:
    found = meeting(on(4, 156), on(4, 110))
    assert (found.word, found.why) == (
        "not looked",
        "what is called a bolt circle reads like the way from hole to hole",
    )
    assert meeting(on(4, 156), on(4, 100)).why == "the bolt circles differ"
    assert meeting(on(4, 156), on(4, 120)).why == "the bolt circles differ"
    assert meeting(on(4, 156), on(None, 110)).why == "the bolt circles differ"
    assert meeting(on(4, 156), on(2, 110)).why == "the bolt circles differ"


def test_what_nobody_looked_at_settles_nothing() -> None:
    for ours, theirs in ((on(4, None), on(4, 156)), (on(4, 156), on(4, None)), (on(None, 156), on(4, 156))):
        assert meeting(ours, theirs).word == "not looked"
    assert meeting(on(4, 156), on(None, 156)).why == "the number of holes is not looked"
    assert meeting(replace(on(4, 156), most=None), on(4, 156)).why == "the bolt circle is not looked"
    assert meeting(on(4, 156), replace(on(4, 156), most=None)).why == "the bolt circle is not looked"


def oblong(long_way: float | None, short_way: float | None) -> Pattern:
    ways = [None if way is None else round(way * MM) for way in (long_way, short_way)]
    return Pattern(4, long_way=ways[0], short_way=ways[1])


@pytest.mark.parametrize(
    ("car", "word"),
    [
        ((164, 111), "meets"),
        ((165.5, 109.5), "meets"),
        ((166, 111), "does not meet"),
        ((164, 113), "does not meet"),
        ((164, None), "not looked"),
        ((None, 111), "not looked"),
        ((166, None), "does not meet"),
        ((None, None), "not looked"),
    ],
)
def test_an_oval_meets_only_both_ways(car: tuple[float | None, float | None], word: str) -> None:
    assert meeting(oblong(164, 111), oblong(*car)).word == word


def test_an_oval_does_not_meet_a_circle() -> None:
    assert meeting(oblong(164, 111), on(4, 156)).word == "does not meet"
    assert meeting(on(4, 156), oblong(164, 111)).word == "does not meet"


@pytest.mark.parametrize(
    ("ours", "theirs", "count", "degrees"),
    [
        ("12 o'clock", "1:30", 4, 45),
        ("1:30", "1:30", 4, 0),
        ("1:30", "4:30", 4, 0),
        ("12 o'clock", "11 o'clock", 4, 30),
        ("12 o'clock", "1 o'clock", 6, 30),
        (None, "1:30", 4, None),
        ("1:30", None, 4, None),
    ],
)
def test_how_far_it_is_turned(ours: str | None, theirs: str | None, count: int, degrees: int | None) -> None:
    assert turned_by(ours, theirs, count) == degrees


def test_an_hour_on_the_clock_is_thirty_degrees_either_way() -> None:
    assert turned_by("1:00", "2:00", 4) == turned_by("2:00", "1:00", 4) == 30


@pytest.mark.parametrize(
    ("ours", "theirs", "found"),
    [
        (on(4, 156), on(4, 156), Meeting("meets", "the holes meet", 4)),
        (on(4, 156), on(4, 165), Meeting("does not meet", "the bolt circles differ")),
        (on(4, 156), on(None, None), Meeting("not looked", "the bolt circle is not looked")),
        (on(None, 156), on(4, 156), Meeting("not looked", "the number of holes is not looked")),
        (oblong(164, 111), oblong(164, 111), Meeting("meets", "the holes meet both ways")),
        (oblong(164, 111), oblong(164, 120), Meeting("does not meet", "the sides of the oblongs differ")),
        (oblong(164, 111), oblong(164, None), Meeting("not looked", "one way of the oblong is not looked")),
        (
            oblong(164, 111),
            on(4, 156),
            Meeting("does not meet", "one pattern is oblong and the other is on a circle"),
        ),
    ],
)
def test_what_is_said_of_two_patterns(ours: Pattern, theirs: Pattern, found: Meeting) -> None:
    assert meeting(ours, theirs) == found


def test_three_holes_135_apart_called_a_circle_read_like_a_spacing_too() -> None:
    assert meeting(on(3, 156), on(3, 135)).why == "what is called a bolt circle reads like the way from hole to hole"


def test_a_spacing_called_a_circle_counts_as_far_as_its_tolerance_and_the_slots_reach() -> None:
    """Four holes 104 to 112 mm apart are on circles of 147 to 158; 106 mm on one of 149.9, which slots reach."""
    reads_like = "what is called a bolt circle reads like the way from hole to hole"
    assert meeting(on(4, 150), on(4, 108, slots=4)).why == reads_like
    assert meeting(on(4, 156, slots=6), on(4, 106)).why == reads_like
