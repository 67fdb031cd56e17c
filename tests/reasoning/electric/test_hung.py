"""Loads as the trade sums them: two of 4 ohm in parallel are 2, two of 2 ohm are 1 in parallel and 4 in series."""

from fractions import Fraction
from typing import Any

from bezelbook.kinds.note.fitting import Hung
from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.hung import hung_load, hung_sight, would_do
from tests.rules.case_books import book_of

SUB = {"speaker_kind": "subwoofer", "nominal": "10 in"}
BOOK = book_of(
    {
        "book": {
            "amplifiers": {
                "four": {"name": "four", "origin": "added", "least_load": "2 ohm", "least_load_bridged": "4 ohm"}
            },
            "speakers": {
                "two": {"name": "two ohm", "impedance": "2 ohm", **SUB},
                "coils": {"name": "two coils", "impedance": "4 ohm", "voice_coils": 2, **SUB},
                "blank": {"name": "blank", **SUB},
            },
        }
    }
)


def hung(**said: Any) -> Hung:
    return Hung.model_validate({"amplifier": "four", "speaker": "two", **said})


def load(**said: Any) -> tuple[Fraction | int, Fraction | int] | None:
    found = hung_load(BOOK, hung(**said))
    return (found.low, found.high) if found else None


def test_two_alike_halve_in_parallel_and_double_in_series() -> None:
    assert load(count=2, wired="in parallel") == (1, 1)
    assert load(count=2, wired="in series") == (4, 4)
    assert load() == (2, 2)


def test_what_nobody_wrote_may_be_either() -> None:
    assert load(count=2) == (1, 4)
    assert load(speaker="coils") == (2, 8)


def test_the_coils_of_each_are_wired_before_the_speakers_are() -> None:
    assert load(speaker="coils", coils="in parallel", count=2, wired="in series") == (4, 4)
    assert load(speaker="coils", coils="in series", count=2, wired="in parallel") == (4, 4)


def test_a_load_in_the_note_stands_before_the_record_s() -> None:
    assert load(load="8 ohm") == (8, 8)
    assert load(speaker="his old one", load="4 ohm", count=2, wired="in parallel") == (2, 2)


def test_without_either_nobody_knows() -> None:
    assert load(speaker="his old one") is None
    assert load(speaker="blank") is None
    assert load(load="0 ohm") is None


def test_a_load_is_weighed_as_it_was_wired_and_by_one_channel_where_nobody_wrote_bridged() -> None:
    parallel = {"count": 2, "wired": "in parallel"}
    assert hung_sight(BOOK, hung(**parallel, bridged="bridged")).says == "below the minimum"
    assert hung_sight(BOOK, hung(**parallel)).says == "below the minimum"
    assert hung_sight(BOOK, hung()).says == "fine"
    assert hung_sight(BOOK, hung(bridged="bridged")).says == "below the minimum"
    assert hung_sight(BOOK, hung(amplifier="his old amp")).says == "unknown"


def test_another_way_is_offered_only_where_the_amplifier_may_see_it() -> None:
    assert would_do(BOOK, hung(count=2, wired="in parallel", bridged="bridged")) == ("in series: 4 ohm",)
    assert would_do(BOOK, hung(count=3, wired="in series")) == ()
    assert would_do(BOOK, hung(bridged="bridged")) == ()
    assert would_do(BOOK, hung(speaker="blank", count=2, wired="in parallel")) == ()


def test_ways_are_sums_of_whole_ranges() -> None:
    assert hung_load(BOOK, hung(load="4 ± 1 ohm", count=2, wired="in series")) == Range(Fraction(6), Fraction(10))
