"""A number that arithmetic explains is read back as a question, beside the number that bears it out."""

from typing import Any

import pytest

from bezelbook.kinds.note.record import AnyNote
from tests.reasoning import making
from tests.reasoning.differing.a_clash import axes, why, why_still, yes


def read(name: str, of: str, text: str) -> AnyNote:
    return making.measured(name, making.reading(of, text))


def told(first: AnyNote, second: AnyNote, *others: Any) -> list[str]:
    return [one.words for one in why(first, second, *others) if one.axis == "unit"]


@pytest.mark.parametrize(
    ("of", "one", "other", "question"),
    [
        # Trade 5.1: unit slips, a radius, the spacing of holes for their circle (4.5: 110 of four is 155.6).
        ("depth", "165 mm", "6.5 mm", "6.5 mm was meant in inches: 165.1 mm (6 1/2 in)?"),
        ("depth", "16.4 mm", "165 mm", "16.4 mm was meant in centimetres: 164 mm (6.46 in)?"),
        ("cut-out", "143 mm", "72 mm", "72 mm was to the middle: 144 mm (5.67 in) across?"),
        ("bolt circle", "156 mm", "110 mm", "110 mm is from hole to hole: 155.6 mm (6.12 in) across the circle of 4?"),
        (
            "bolt circle",
            "155.9 mm",
            "135 mm",
            "135 mm is from hole to hole: 155.9 mm (6.14 in) across the circle of 3?",
        ),
    ],
)
def test_a_slip_is_read_back(of: str, one: str, other: str, question: str) -> None:
    assert question in told(read("a", of, one), read("b", of, other))
    assert question in told(read("b", of, other), read("a", of, one))


@pytest.mark.parametrize(("of", "one", "other"), [("depth", "165 mm", "80 mm"), ("cut-out", "143 mm", "128 mm")])
def test_two_numbers_that_only_differ_are_no_slip(of: str, one: str, other: str) -> None:
    assert told(read("a", of, one), read("b", of, other)) == []


def test_a_stated_give_counts_as_often_as_the_number_does() -> None:
    exact = "70 ± 0.1 mm"
    assert told(read("a", "cut-out", "143 ± 0.1 mm"), read("b", "cut-out", exact)) == []
    assert told(read("a", "cut-out", "140.2 ± 0.1 mm"), read("b", "cut-out", exact))


def test_the_size_it_is_sold_as_is_not_the_hole() -> None:
    """Trade 5.1: 6 1/2 in is 165 mm, the cut-out 128."""
    said = {"name": "cone", "nominal": "6 1/2 in", "shape": "round", "speaker_kind": "coaxial"}
    cone = making.record("speakers", "cone", said)
    odd = making.record("speakers", "odd", said | {"nominal": "six and a half"})
    found = told(read("a", "cut-out", "165 mm"), read("b", "cut-out", "128 mm"), cone, odd)
    assert found == ["165 mm is 6 1/2 in, the size it is sold as, and not the hole?"]


def test_a_reading_too_small_for_what_went_in_may_be_meant_otherwise() -> None:
    first = yes(what="cone", sizes={"mounting_depth": "63 ± 1 mm", "basket": "141 ± 1 mm"})
    found = told(first, read("m", "cut-out", "72 mm"))
    assert found == ["72 mm was to the middle: 144 mm (5.67 in) across?"]
    assert told(yes(), read("m", "depth", "150 mm")) == []
    assert told(read("m", "nose width", "100 mm"), read("n", "nose width", "180 mm")) == []
    assert "unit" not in axes(
        why(yes(), making.tried("no", what="deep", verdict="does not", reason="depth", sizes={"depth": "17 mm"}))
    )


def test_a_factor_between_numbers_that_do_not_clash_says_nothing() -> None:
    deep = making.measured("a", making.reading("depth", "165 ± 1 mm"), making.reading("width", "18 mm"))
    shallow = making.measured("b", making.reading("depth", "150 ± 1 mm"), making.reading("height", "180 mm"))
    assert "unit" not in axes(why_still(deep, shallow))


def test_a_spacing_beside_its_own_circle_is_no_slip() -> None:
    spacing = making.measured("a", making.reading("hole spacing", "110 ± 1 mm"))
    circle = making.measured("b", making.reading("bolt circle", "156 ± 1 mm"))
    assert "unit" not in axes(why(spacing, circle))
