from typing import Any

import pytest

from bezelbook.kinds.stock.record import Stock
from bezelbook.reasoning.counts.shelf import is_fresh, shelf
from tests.reasoning import making


def stock(named: str, **content: Any) -> Stock:
    made: Stock = making.record("shelf", named, {"thing": "clip", "count": 2} | content)
    return made


def test_what_lies_nowhere_is_not_looked() -> None:
    lies = shelf(making.book(stock("tray", thing="another")), "clip", "2026-05-01")
    assert (lies.count, lies.counted_on, lies.count_it) == (None, (), True)


@pytest.mark.parametrize(
    ("counted_on", "fresh"),
    [("2026-05-01", True), ("2026-04-01", True), ("2026-03-31", False), ("2026-05-02", False)],
)
def test_after_thirty_days_it_has_to_be_counted(counted_on: str, *, fresh: bool) -> None:
    assert is_fresh(counted_on, "2026-05-01") is fresh
    lies = shelf(making.book(stock("tray", counted_on=counted_on)), "clip", "2026-05-01")
    assert (lies.count, lies.counted_on, lies.count_it) == (2, (counted_on,), not fresh)


def test_a_count_without_a_day_and_a_book_without_one_have_to_be_counted() -> None:
    assert shelf(making.book(stock("tray")), "clip", "2026-05-01").count_it
    assert not is_fresh("2026-05-01", "no date")


def test_all_the_places_where_it_lies_are_added_and_one_old_count_is_enough_to_count_it() -> None:
    both = making.book(stock("tray", counted_on="2026-05-01"), stock("box", count=5, counted_on="2026-01-01"))
    lies = shelf(both, "clip", "2026-05-01")
    assert (lies.count, lies.counted_on, lies.count_it) == (7, ("2026-01-01", "2026-05-01"), True)
