"""Ninths as a person names them."""

import pytest

from bezelbook.values.ninths import lines_said, ninths_said
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


@pytest.mark.parametrize(
    ("before", "now"),
    [
        ("at the lower-left and lower and lower-right, hits", "at the lower row, hits"),
        ("depth upper-left and left and centre 190 mm", "depth upper-left, left and centre 190 mm"),
        ("depth right and left 190 mm", "depth left and right 190 mm"),
        # What is said so now stays as it is, and what only looks like it.
        ("depth upper and middle row 192 mm", "depth upper and middle row 192 mm"),
        ("depth left and centre column and upper 192 mm", "depth left and centre column and upper 192 mm"),
        ("the upper and lower-middle clip", "the upper and lower-middle clip"),
        ("front-left and right", "front-left and right"),
    ],
)
def test_ninths_named_one_by_one_are_the_same_as_whole_lines(before: str, now: str) -> None:
    assert lines_said(before) == now
