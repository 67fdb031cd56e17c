"""The opening that the standard names, against what is said of the boxes made for it.

The figures are as secondary sources print them; the clause of the standard itself was not read, and no tolerance is
invented for it here.
"""

from dataclasses import dataclass

import pytest

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.values.quantity import read_quantity
from tests.reasoning.making import ask, book, measured, reading, shop, unit


@dataclass(frozen=True)
class Figure:
    """A figure with its source and how it is known."""

    value: str
    source: str
    known_by: str


OPENING_WIDTH = Figure(
    "182 mm",
    "ISO 7736 (figure of installation opening)",
    "read in >=3 unrelated open-source hardware documents found and one classic-car workshop page; clause text of the"
    " standard NOT read",
)
OPENING_HEIGHT = Figure(
    "53 mm", "ISO 7736 (figure of installation opening)", "as above; three sources print 53, one workshop page 52"
)
OTHER_HEIGHT = Figure("52 mm", "classic-car workshop page, secondary", "read in the page found; conflicts with 53")
FRONT_WIDTH = Figure(
    "180 mm", "encyclopedia article on ISO 7736 (several language mirrors), secondary", "read in the article found"
)
FRONT_HEIGHT = Figure("50 mm", FRONT_WIDTH.source, FRONT_WIDTH.known_by)
TWO_HIGH = Figure("100 mm", FRONT_WIDTH.source, "read in the article found; a trade convention, not in ISO 7736:1984")
INCH_FORM = Figure("2 x 7 in", FRONT_WIDTH.source, "read in the article found; not equal to 50 x 180 mm")
DEPTH = Figure("not standardised", FRONT_WIDTH.source, "read in the article found")


def opening(*heights: Figure) -> KnowledgeBase:
    """A car whose bare opening a caliper found as printed, in a shop with the usual clearances."""
    width = reading("width", OPENING_WIDTH.value, tool="caliper")
    notes = [
        measured(f"caliper-{number}", width, reading("height", height.value, tool="caliper"))
        for number, height in enumerate(heights)
    ]
    clearances = {"width": "1 mm", "height": "0.5 mm", "depth": "0 mm"}
    return book(
        shop(clearances=clearances), *notes, unit(body_depth=None, plug_and_bend=None, body_height="50 mm caliper")
    )


def verdict(of: KnowledgeBase, width: str, height: str) -> str:
    return ask(of, {"width": width, "height": height}).verdict


def test_the_opening_takes_the_front_that_is_made_for_it() -> None:
    assert verdict(opening(OPENING_HEIGHT), FRONT_WIDTH.value, FRONT_HEIGHT.value) == "goes in"


def test_a_two_high_front_does_not_go_into_a_one_high_opening() -> None:
    assert verdict(opening(OPENING_HEIGHT), FRONT_WIDTH.value, TWO_HIGH.value) == "does not"


def test_the_inch_form_is_another_size_and_goes_in_too() -> None:
    height, width = (f"{inches} in" for inches in INCH_FORM.value.removesuffix(" in").split(" x "))
    assert [read_quantity(size, "length").base for size in (width, height)] == [177_800_000, 50_800_000]
    assert verdict(opening(OPENING_HEIGHT), width, height) == "goes in"


@pytest.mark.parametrize(("height", "said"), [("50 mm", "goes in"), ("52 mm", "argued over"), ("53.5 mm", "does not")])
def test_two_sources_that_differ_argue_only_where_it_matters(height: str, said: str) -> None:
    assert verdict(opening(OPENING_HEIGHT, OTHER_HEIGHT), FRONT_WIDTH.value, height) == said


def test_where_depth_is_not_standardised_a_front_that_fits_is_no_yes() -> None:
    found = ask(opening(OPENING_HEIGHT), "box")
    assert found.verdict == "nobody has tried"
    assert any("depth" in one.what and "never measured" in one.what for one in found.unknown), DEPTH.value
