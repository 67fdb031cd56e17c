from typing import Any

import pytest
from pydantic import ValidationError

from bezelbook.kinds.stock.record import Stock

LEAST = {"id": "sail-clips", "thing": "white-sail-clip", "count": 2}


def stock(**fields: Any) -> Stock:
    return Stock.model_validate({**LEAST, **fields})


def test_a_thing_and_a_count_are_enough() -> None:
    clips = stock()
    assert (clips.place, clips.counted_on, clips.left) == (None, None, None)


@pytest.mark.parametrize("missing", ["thing", "count"])
def test_neither_can_be_left_out(missing: str) -> None:
    with pytest.raises(ValidationError, match=missing):
        Stock.model_validate({field: value for field, value in LEAST.items() if field != missing})


def test_none_left_is_a_count() -> None:
    assert stock(count=0).count == 0


def test_what_comes_by_length_says_how_much_is_left_of_it() -> None:
    left = stock(count=1, left="5.5 m").left
    assert left is not None
    assert left.base == 5_500_000_000


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("thing", "White sail clip"),
        ("count", -1),
        ("count", 1.5),
        ("count", "12"),
        ("left", 5),
        ("counted_on", "20.4.2026"),
    ],
)
def test_a_field_says_which_value_it_does_not_take(field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        stock(**{field: wrong})
