"""Which numbers among words are sizes, of what, and in which unit; the reading taken is told."""

import pytest

from bezelbook.reasoning.said_sizes import SaidSizes, sizes_said
from bezelbook.reasoning.vocabulary import folded_words
from bezelbook.values.quantity import read_quantity

MM = 1_000_000


def said(text: str, *, beside_unit: bool = False, taken: tuple[str, ...] = ()) -> SaidSizes:
    """The sizes in what was typed, of which some words already mean something else."""
    return sizes_said([None if word in taken else word for word in folded_words(text)], beside_unit=beside_unit)


def lengths(text: str, *, beside_unit: bool = False) -> dict[str, float]:
    """The sizes in mm, by what they are of."""
    return {need: size.base / MM for need, size in said(text, beside_unit=beside_unit).sizes.items()}


@pytest.mark.parametrize(
    ("text", "depth"),
    [
        ("165 mm", 165),
        ("165mm deep", 165),
        ("depth 165 mm", 165),
        ("16.5 cm", 165),
        ("6 1/2 in", 165.1),
        ('6.5"', 165.1),
        ("6½ inches", 165.1),
        ("165 millimetres", 165),
        ("165 ± 1 mm", 165),
    ],
)
def test_one_size_that_nothing_says_what_it_is_of_is_the_depth(text: str, depth: float) -> None:
    assert lengths(text) == {"depth": depth}
    assert said(text).took == ()


def test_a_plus_minus_is_read_with_its_size() -> None:
    assert said("165 ± 1 mm").sizes["depth"].give == MM


@pytest.mark.parametrize(
    ("text", "depth", "told"),
    [
        ("165", 165, "165 read as mm"),
        ("6.5", 165.1, "6.5 read as in; cm would be 6.5 cm"),
        ("9", 228.6, "9 read as in; cm would be 9 cm"),
        ("20", 20, "20 read as mm; cm would be 20 cm"),
        ("14", 140, "14 read as cm"),
        ("500", 500, "500 read as mm"),
    ],
)
def test_a_bare_number_is_read_by_the_usual_limits_and_the_other_readings_are_told(
    text: str, depth: float, told: str
) -> None:
    assert lengths(text) == {"depth": depth}
    assert said(text).took == (told,)


def test_sizes_said_together_are_width_height_and_depth() -> None:
    assert lengths("178 x 100 mm") == {"width": 178, "height": 100}
    assert lengths("178x100x165 mm") == {"width": 178, "height": 100, "depth": 165}
    assert lengths("7 x 4 in") == {"width": 177.8, "height": 101.6}
    assert said("178 x 100").took == ("178 x 100 read as mm",)


def test_a_word_before_or_behind_a_size_says_what_it_is_of() -> None:
    assert lengths("178 mm wide 100 mm high 165 mm deep") == {"width": 178, "height": 100, "depth": 165}
    assert lengths("width 178 mm height 100 mm") == {"width": 178, "height": 100}
    assert lengths("100 mm tall") == {"height": 100}


def test_a_size_that_says_what_it_is_of_counts_before_one_that_does_not() -> None:
    found = said("165 mm deep and 7 inches")
    assert ({need: size.base / MM for need, size in found.sizes.items()}, found.rivals) == ({"depth": 165}, ())
    assert found.took == ("7 inches was not read as a size",)


def test_where_the_depth_is_said_no_other_number_is_a_rival_of_it() -> None:
    found = said("165 mm deep, 7 inches or 8 inches")
    assert (list(found.sizes), found.rivals) == (["depth"], ())
    assert found.took == ("7 inches was not read as a size", "8 inches was not read as a size")


def test_what_was_said_more_plainly_is_kept_beside_rivals() -> None:
    assert said("178 wide, 165 mm or 170 mm") == SaidSizes(
        {"width": read_quantity("178 mm", "length")}, ("178 read as mm",), ("165 mm", "170 mm")
    )


def test_a_number_that_cannot_be_read_is_no_rival() -> None:
    found = said("0 mm or 165 mm")
    assert ({need: size.base / MM for need, size in found.sizes.items()}, found.rivals) == ({"depth": 165}, ())
    assert found.took == ("0 mm was not read as a size",)


def test_sizes_said_together_of_which_one_cannot_be_read_are_left_out_together() -> None:
    assert said("0 x 100 mm") == SaidSizes({}, ("0 x 100 mm was not read as a size",))


def test_a_size_that_is_too_fine_says_so() -> None:
    assert said("165.12345 mm").took == ("165.12345 mm was not read as a size: no size has more than 4 decimals",)


def test_two_sizes_that_might_each_be_the_depth_are_left_to_the_person() -> None:
    assert said("165 mm or 170 mm").rivals == ("165 mm", "170 mm")
    assert said("165 mm or 165 mm").rivals == ()


def test_the_same_size_again_says_nothing_new() -> None:
    assert said("165 mm deep 165 mm").took == ()
    found = said("165 mm deep, depth 170 mm")
    assert (found.sizes["depth"].base, found.took) == (165 * MM, ("170 mm was not read as a size",))


def test_beside_a_thing_with_sizes_of_its_own_a_bare_number_says_nothing() -> None:
    found = said("165", beside_unit=True)
    assert (dict(found.sizes), found.took) == ({}, ("165 was not read as a size",))
    assert lengths("165 mm deep", beside_unit=True) == {"depth": 165}
    assert lengths("178 x 100 mm", beside_unit=True) == {"width": 178, "height": 100}


@pytest.mark.parametrize("text", ["year 4", "2 din", "4 door", "5 doors", "1.5 din"])
def test_a_number_that_counts_something_else_is_no_size(text: str) -> None:
    assert said(text) == SaidSizes({})


def test_a_word_that_already_means_something_is_no_size() -> None:
    assert said("hatch 2 165 mm", taken=("hatch", "2")).sizes["depth"].base == 165 * MM


def test_in_behind_a_number_that_cannot_be_inches_is_only_a_word() -> None:
    assert lengths("a 165 in the hatch") == {"depth": 165}
    assert lengths("a 7 in the hatch") == {"depth": 177.8}


@pytest.mark.parametrize(
    ("size", "inches"),
    [
        ("depth 19", 482.6),
        ("depth 20", None),
        ("depth 229", None),
        ("depth 230", 5842),
        ("width 39", 990.6),
        ("width 40", None),
        ("width 300", None),
        ("width 301", 7645.4),
        ("height 24", 609.6),
        ("height 25", None),
        ("height 200", None),
        ("height 201", 5105.4),
    ],
)
def test_in_is_only_a_word_where_the_number_is_a_chassis_in_millimetres(size: str, inches: float | None) -> None:
    # Common practice, no source: a chassis is 20 to 229 mm deep, 40 to 300 wide and 25 to 200 high.
    need, number = size.split()
    assert lengths(f"a {size} in the hatch") == {need: inches or int(number)}


def test_a_unit_that_is_no_word_is_a_unit_however_large_it_makes_the_size() -> None:
    assert lengths("165 cm") == {"depth": 1650}
    assert lengths('165"') == {"depth": 4191}


@pytest.mark.parametrize("text", ["0 mm", "0", "1/3 in", "1,000 mm"])
def test_a_number_that_cannot_be_read_is_left_out_and_told(text: str) -> None:
    found = said(text)
    assert dict(found.sizes) == {}
    assert [told.endswith("was not read as a size") for told in found.took] == [True]
