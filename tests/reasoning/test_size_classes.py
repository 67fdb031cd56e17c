"""The sizes that speakers are sold as; the classes are trade.md 2.3's (common practice, no source)."""

import pytest

from bezelbook.reasoning.size_classes import class_of_nominal, size_class


@pytest.mark.parametrize(
    ("said", "name"),
    [
        ("6.5", "6 1/2 in"),
        ("6 1/2 in", "6 1/2 in"),
        ('6½"', "6 1/2 in"),
        ("165 mm", "6 1/2 in"),
        ("6.75", "6 3/4 in"),
        ("6x8", "5 x 7 in"),
        ("6x9", "6 x 9 in"),
        ("130", "5 1/4 in"),
        ("10 inch", "10 in"),
        ("63", None),
        ("6.5 mm", None),
        ("165 deep", None),
    ],
)
def test_what_is_said_is_a_class_or_none(said: str, name: str | None) -> None:
    assert size_class(said) == name


@pytest.mark.parametrize(("nominal", "name"), [("6 x 9 in", "6 x 9 in"), ("130 mm", "5 1/4 in"), ("25 mm", None)])
def test_what_a_record_says_it_is_sold_as_has_a_class(nominal: str, name: str | None) -> None:
    assert class_of_nominal(nominal) == name
