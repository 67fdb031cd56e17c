"""Ninths as a person names them."""

import pytest

from bezelbook.values.ninths import ninths_said
from bezelbook.values.words import NINTHS, Ninth


@pytest.mark.parametrize(
    ("ninths", "said"),
    [
        (NINTHS, "everywhere"),
        (NINTHS[:6], "upper and middle row"),
        (NINTHS[6:], "lower row"),
        (NINTHS[3:], "middle and lower row"),
        (("upper-left", "left", "lower-left"), "left column"),
        (("upper-left", "left", "lower-left", "upper", "centre", "lower"), "left and centre column"),
        (("lower-right", *NINTHS[:3]), "upper row and lower-right"),
        (("right", "upper-right", "lower-right", "centre"), "right column and centre"),
        # All but one corner: two rows, and what is left of the third.
        (NINTHS[:8], "upper and middle row, lower-left and lower"),
        (("lower", "lower-left"), "lower-left and lower"),
        (("centre",), "centre"),
        ((), ""),
    ],
)
def test_whole_rows_and_columns_are_named_as_such(ninths: tuple[Ninth, ...], said: str) -> None:
    assert ninths_said(ninths) == said
