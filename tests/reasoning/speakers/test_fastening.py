"""What a speaker is screwed to, by the trade's figures (trade.md 4.5, 4.6; common practice, no source)."""

from typing import Any

import pytest

from bezelbook.reasoning.speakers.bolts import Pattern
from bezelbook.reasoning.speakers.fastening import pattern_of, typed_circle
from tests.reasoning.making import length
from tests.reasoning.speakers.doors import (
    ask,
    book,
    foam,
    measured,
    mount,
    place,
    reading,
    resolved,
    roomy,
    shop,
    speaker,
    tried,
)

BOLTS = {"count": 4, "circle": "156 mm caliper", "first": "12 o'clock"}
SIX = speaker(bolts=BOLTS, flange_thickness="4 mm caliper")


def lines(*records: Any, **more: Any) -> list[str]:
    said = ask(book(*records), **more).needs
    return [line for line in said if "restraint" not in line]


def holes(*readings: dict[str, Any], **bolt_holes: Any) -> Any:
    return measured("holes", *(readings or (reading("bolt circle", "156 ± 0.5 mm"),)), bolt_holes=bolt_holes or None)


def test_holes_that_meet_need_nothing() -> None:
    assert lines(SIX, roomy(), holes(count=4)) == []
    assert lines(SIX, roomy(), holes(reading("hole spacing", "110 ± 0.5 mm"), count=4)) == []
    assert lines(speaker(), roomy(), holes(count=4)) == []


def test_holes_that_do_not_meet_want_a_plate() -> None:
    assert lines(SIX, roomy(), holes(count=3)) == ["a plate, or new holes: 4 holes into 3: 1 of them can land"]
    away = holes(reading("bolt circle", "162 ± 0.5 mm"), count=4)
    assert lines(SIX, roomy(), away) == ["a plate, or new holes: the bolt circles differ"]


def test_a_spacing_called_a_circle_is_looked_at_first() -> None:
    [line] = lines(SIX, roomy(), holes(reading("bolt circle", "110 ± 0.5 mm"), count=4))
    assert line.startswith("look at the screw holes first: what is called a bolt circle reads like the way")


def test_what_nobody_agrees_on_or_looked_at_settles_nothing() -> None:
    [line] = lines(SIX, roomy(), holes(count=4), measured("b", reading("bolt circle", "150 ± 0.5 mm")))
    assert line == "look at the screw holes first: the bolt circle is not looked"
    other = measured("b", reading("front clearance", "20 ± 1 mm"), bolt_holes={"count": 3})
    assert lines(SIX, roomy(), holes(count=4), other) == []
    by_eye = holes(reading("bolt circle", "170 mm", tool="eye"), reading("cut-out", "140 ± 1 mm"), count=4)
    assert lines(SIX, roomy(), by_eye) == ["look at the screw holes first: the bolt circle is not looked"]
    assert lines(SIX, roomy(), holes(reading("hole spacing", "110 ± 0.5 mm"))) == []
    assert lines(SIX, roomy(), holes(reading("hole spacing", "110 ± 0.5 mm"), count=2)) == [
        "look at the screw holes first: the bolt circle is not looked"
    ]


def test_it_is_turned_until_the_screws_meet() -> None:
    [line] = lines(SIX, roomy(), holes(count=4, first="1:30"))
    assert line == "turn it by 45° so that the screws meet; its terminals turn with it"
    assert lines(SIX, roomy(), holes(count=4, first="3 o'clock")) == []


def test_slots_of_a_speaker_reach_further() -> None:
    slotted = speaker(bolts={**BOLTS, "circle_least": "150 mm caliper", "circle_most": "162 mm caliper"})
    assert lines(slotted, roomy(), holes(reading("bolt circle", "163 ± 0.5 mm"), count=4)) == []
    printed = speaker(bolts={"count": 4, "circle": "156 mm printed"})
    [line] = lines(printed, roomy(), holes(count=4))
    assert line.endswith("the bolt circle is not looked")


def test_a_mount_s_own_holes_come_before_the_car_s() -> None:
    pattern = {"state": "ready", "holds": "the part", "count": 4, "circle": "140 mm caliper"}
    car = {"state": "ready", "holds": "the car", "count": 4, "circle": "156 mm caliper"}
    bracket = mount(
        "b", mount_kind="bracket", thickness="1 mm caliper", inner="150 mm caliper", holes={"patterns": [pattern, car]}
    )
    assert lines(SIX, bracket, roomy(), mounts=["b"])[1:] == ["a plate, or new holes: the bolt circles differ"]
    plain = mount("b", mount_kind="bracket", thickness="1 mm caliper", inner="150 mm caliper")
    assert lines(SIX, plain, roomy(), holes(count=3), mounts=["b"])[1:] == []
    strange = tried(mounts=["some bracket"])
    assert lines(SIX, roomy(), strange, holes(count=3), mounts=["some bracket"]) == []


def test_screws_go_through_a_plain_ring_into_what_is_under_it() -> None:
    ring = mount("ring", thickness="1 mm caliper")
    [_, line] = lines(SIX, ring, roomy(), holes(count=3), mounts=["ring"])
    assert line.startswith("a plate, or new holes")


@pytest.mark.parametrize(
    ("kind", "words"),
    [
        ("plastic boss", "screws from 16 mm (0.63 in) up to 21 mm (0.83 in) (plastic boss; 6 mm lies under the head)"),
        ("clip nut", "screws from 10 mm (0.39 in) (clip nut; 6 mm lies under the head)"),
        ("twist-lock", None),
    ],
)
def test_how_long_the_screws_are(kind: str, words: str | None) -> None:
    ring = mount("ring", thickness="1 mm caliper")
    found = lines(SIX, ring, foam(), roomy(), holes(count=4, kind=kind), mounts=["ring"], gasket="foam")
    assert found[1:] == ([words] if words else [])


def test_nothing_is_said_of_screws_where_too_little_is_known() -> None:
    thin = speaker(bolts=BOLTS)
    assert lines(thin, roomy(), holes(count=4, kind="plain")) == []
    other = measured("b", reading("front clearance", "20 ± 1 mm"), bolt_holes={"kind": "clip nut"})
    assert lines(SIX, roomy(), holes(count=4, kind="plain"), other) == []
    assert lines(SIX, roomy(glass="50 ± 1 mm"), holes(count=3)) == []


def test_an_oblong_of_holes_has_two_ways() -> None:
    oblong = {"count": 4, "long_way": "150 mm caliper", "short_way": "100 mm caliper", "first": "1:30"}
    of = book(speaker(bolts=oblong))
    pattern = pattern_of(place(of), of.speakers["six"])
    assert pattern == Pattern(4, long_way=150_000_000, short_way=100_000_000, first="1:30")


def test_two_rings_that_would_do_say_of_the_screws_under_them_once() -> None:
    rings = [mount("eight", thickness="8 mm caliper"), mount("nine", thickness="9 mm caliper")]
    found = lines(SIX, *rings, roomy(glass="58 ± 1 mm"), holes(count=3), mounts=None)
    assert [line for line in found if "holes" in line] == ["a plate, or new holes: 4 holes into 3: 1 of them can land"]


def typed(circle: str, **state: Any) -> str:
    """What is said of a typed bolt circle over a car's of 155.5 to 156.5 mm."""
    of = book(roomy(), holes(count=4))
    return ask(of, {"bolt_circle": circle, "mounting_depth": "50 mm"}, **state).needs[0].partition(": ")[2]


def test_a_typed_circle_reaches_as_far_as_its_tolerance() -> None:
    assert typed("160 ± 3 mm") == typed("152 ± 3 mm") == "the number of holes is not looked"
    assert typed("165 ± 3 mm") == typed("147 ± 3 mm") == "the bolt circles differ"


def test_nothing_is_known_of_the_holes_of_a_mount_that_the_book_does_not_hold() -> None:
    of = book(roomy(), holes(count=4))
    question = resolved(of, mounts=("some bracket",), speaker=None, sizes={"bolt_circle": length("156 mm")})
    assert typed_circle(place(of), question, length("156 mm")) == ("bolt circle 156 mm: the bolt circle is not looked")


def test_screws_come_in_the_shops_own_unit_first() -> None:
    found = lines(shop("in"), SIX, roomy(), holes(count=4, kind="plastic boss"))
    assert found == ["screws from 0.55 in (14 mm) up to 0.75 in (19 mm) (plastic boss; 4 mm lies under the head)"]


def test_readings_that_only_touch_still_agree() -> None:
    assert lines(SIX, roomy(), holes(count=4), measured("b", reading("bolt circle", "155 ± 0.5 mm"))) == []


def test_three_holes_have_a_circle_by_their_spacing_too() -> None:
    """135 mm apart they are on a circle of 155.9."""
    three = speaker(bolts={"count": 3, "circle": "156 mm caliper"})
    assert lines(three, roomy(), holes(reading("hole spacing", "135 ± 0.5 mm"), count=3)) == []
    apart = holes(reading("hole spacing", "100 ± 0.5 mm"), count=3)
    assert lines(three, roomy(), apart) == ["a plate, or new holes: the bolt circles differ"]


def test_nothing_is_turned_whose_holes_do_not_meet_one_by_one() -> None:
    away = holes(reading("bolt circle", "162 ± 0.5 mm"), count=4, first="1:30")
    assert lines(SIX, roomy(), away) == ["a plate, or new holes: the bolt circles differ"]
    assert lines(SIX, roomy(), holes(count=8, first="1 o'clock")) == []
