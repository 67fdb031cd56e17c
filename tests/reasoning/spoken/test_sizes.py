"""Sizes of speakers in free words, by the trade's limits (trade.md 2.3 and 11: common practice, no source)."""

import pytest

from bezelbook.reasoning.spoken.sizes import SpeakerSizes, speaker_sizes

MM = 1_000_000


def read(text: str, *, beside: bool = False) -> SpeakerSizes:
    return speaker_sizes(text, beside_speaker=beside)


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("63", {"mounting_depth": 63}),
        ("2.5", {"mounting_depth": 63.5}),
        ("2 1/2 in", {"mounting_depth": 63.5}),
        ("depth 63 cutout 143", {"mounting_depth": 63, "cut_out": 143}),
        ("63 deep 156 bcd", {"mounting_depth": 63, "bolt_circle": 156}),
        ("152 x 222 cutout", {"cut_out": 222, "cut_out_short": 152}),
        ("152 x 222", {"cut_out": 222, "cut_out_short": 152}),
        ("6 x 5.5 in basket", {"basket": 152.4, "basket_short": 139.7}),
        ("165 in deep", {"mounting_depth": 165}),
        ("143 deep 143", {"mounting_depth": 143}),
        ("14.3 cutout", {"cut_out": 143}),
        ("8 deep", {"mounting_depth": 8}),
        ("7.9 deep", {"mounting_depth": 79}),
        ("20 deep", {"mounting_depth": 20}),
        ("20 cm deep", {"mounting_depth": 200}),
        ("500 deep", {"mounting_depth": 500}),
        ("cutout 143 150", {"cut_out": 143, "mounting_depth": 150}),
    ],
)
def test_sizes_are_read_as_a_shop_means_them(text: str, mm: dict[str, float]) -> None:
    assert {of: size.base / MM for of, size in read(text).sizes.items()} == mm


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("63", "63 read as mm deep; the hole it needs would be cut-out 63"),
        ("2.5", "2.5 read as in deep; cm would be 2.5 cm depth; the hole it needs would be cut-out 2.5"),
        ("165", "165 read as the 6 1/2 in size; deep would be 165 deep"),
        ("12", "12 read as the 12 in size; deep would be 12 deep"),
        ("6x9", "6 x 9 read as the 6 x 9 in size"),
        ("3/7 deep", "3/7 was not read as a size"),
        ("0 mm deep", "0 mm was not read as a size"),
        ("63.12345 deep", "63.12345 was not read as a size: no size has more than 4 decimals"),
        ("63 x 70 deep", "63 x 70 was not read as a size"),
        ("143 deep 143", "143 read as mm"),
        ("5 x 6 cutout", "5 x 6 read as in; cm would be 5 x 6 cm cutout"),
        ("152 x 222", "152 x 222 read as mm across, the hole it needs"),
        ("63 mm", "63 mm read as deep; the hole it needs would be cut-out 63 mm"),
    ],
)
def test_how_a_number_was_taken_is_told_with_the_other_readings(text: str, told: str) -> None:
    assert read(text).took == [told]


def test_a_number_that_may_be_a_depth_or_a_hole_is_asked_about() -> None:
    assert read("143").rival == "143"
    assert (read("10.0 cm").rival, read("10.1 cm").rival) == (None, "10.1 cm")
    assert read("143 70").took == ["70 was not read as a size"]


def test_a_second_size_of_one_sort_is_told_and_left_out() -> None:
    assert read("63 deep 70 deep").took == ["63 read as mm", "70 was not read as a size"]
    assert read("63 deep 70").took == ["63 read as mm", "70 was not read as a size"]


def test_the_class_is_told_once_and_another_class_is_read_as_a_size() -> None:
    found = read("6.5 165")
    assert (found.size_class, len(found.took)) == ("6 1/2 in", 1)
    assert read("6.5 8").size_class == "6 1/2 in"


def test_beside_a_speaker_a_bare_number_says_nothing() -> None:
    assert read("6.5", beside=True) == SpeakerSizes()
    assert read("63", beside=True).took == ["63 was not read as a size"]
    assert read("63 deep 70 6.5", beside=True).took == ["63 read as mm", "70 was not read as a size"]
    assert read("63 deep", beside=True).sizes.keys() == {"mounting_depth"}


def test_what_is_no_usual_size_is_in_mm_and_a_depth_is_said_once() -> None:
    assert read("500 deep").took == ["500 read as mm"]
    twice = read("63 deep 143")
    assert (twice.took, twice.rival) == (["63 read as mm", "143 was not read as a size"], None)


def test_the_least_and_the_most_that_is_usual_are_usual() -> None:
    """From 8 to 200 mm of depth: 8 mm is one, and so is 20 cm, and 21 cm is none."""
    assert read("8 deep").took == ["8 read as mm; cm would be 8 cm depth"]
    assert read("20 deep").took == ["20 read as mm; cm would be 20 cm depth"]
    assert read("21 deep").took == ["21 read as mm"]


def test_in_behind_a_class_said_in_millimetres_is_only_a_word() -> None:
    assert read("165 in").size_class == "6 1/2 in"
