"""A box named by how high it is measures what the trade says (common practice, no source)."""

import pytest

from bezelbook.reasoning.said_box import as_sold
from bezelbook.reasoning.said_sizes import SaidSizes, sizes_said
from bezelbook.reasoning.vocabulary import folded_words

MM = 1_000_000


def said(text: str, taken: tuple[str, ...] = ()) -> SaidSizes:
    """The sizes in what was typed, of which some words already mean something else."""
    left = [None if word in taken else word for word in folded_words(text)]
    return as_sold(sizes_said(left, beside_unit=False), left)


def lengths(found: SaidSizes) -> dict[str, float]:
    return {need: size.base / MM for need, size in found.sizes.items()}


@pytest.mark.parametrize(
    ("text", "height"),
    [("double 165 deep", 100), ("2-DIN, 165", 100), ("2din 165", 100), ("single 165", 50), ("a one din 165 deep", 50)],
)
def test_a_box_is_as_wide_and_as_high_as_the_trade_has_it(text: str, height: int) -> None:
    assert lengths(said(text)) == {"width": 178, "height": height, "depth": 165}


def test_how_it_was_read_is_told() -> None:
    assert said("2din 165 mm").took == ("2 din read as 178 mm x 100 mm, which such a box measures",)


@pytest.mark.parametrize(
    "text", ["165 deep", "wide double 165 deep", "double or single 165 deep", "doubled 165", "22 din 165"]
)
def test_other_words_name_no_box(text: str) -> None:
    assert not {"width", "height"} & lengths(said(text)).keys()


def test_what_somebody_says_of_its_size_counts() -> None:
    assert lengths(said("double 182 x 103 x 165")) == {"width": 182, "height": 103, "depth": 165}
    assert lengths(said("double 103 high")) == {"height": 103}
    assert lengths(said("double 165 deep", taken=("double",))) == {"depth": 165}


def test_without_a_depth_it_still_has_a_front() -> None:
    assert lengths(said("will a double go in")) == {"width": 178, "height": 100}
