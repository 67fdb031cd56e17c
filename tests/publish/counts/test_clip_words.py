from typing import Any

from bezelbook.publish.address import Links
from bezelbook.publish.counts.clip_words import clip_row, order_words, past_words, shelf_words
from bezelbook.reasoning.counts.packs import Packs
from bezelbook.reasoning.counts.shelf import Shelf
from tests.reasoning import making
from tests.reasoning.counts.test_clips import PAST, TRAY, need_of, pieces
from tests.reasoning.counts.test_fixing import supply


def test_the_shelf_says_when_it_was_counted_and_when_it_has_to_be() -> None:
    assert shelf_words(Shelf(2, ("2026-01-10",), count_it=False)) == "2, counted 2026-01-10"
    assert shelf_words(Shelf(2, ("2025-01-10", "2026-01-10"), count_it=True)) == (
        "2, counted 2025-01-10 and 2026-01-10: count it"
    )
    assert shelf_words(Shelf(2, (), count_it=True)) == "2, counted on no known day: count it"
    assert shelf_words(Shelf(None, (), count_it=True)) == "not looked: count it"


def test_an_order_is_in_packs_or_in_pieces_or_nothing() -> None:
    assert order_words(Packs(8, 10, 1)) == "one pack of 10"
    assert order_words(Packs(12, 10, 2)) == "two packs of 10"
    assert order_words(Packs(8, None, None)) == "eight pieces; pack not looked"
    assert order_words(Packs(0, 10, 0)) == "nothing"
    assert order_words(None) == "unknown"


def row_of(*records: Any, removal: Any) -> Any:
    need = need_of(*records, removal=removal)
    book = making.book(*records)
    return clip_row(need, Links("vehicles/x.md", book))


# Trade 4.10 and 13.
def test_the_worked_order_in_words() -> None:
    row = row_of(supply("white-clip", pack=10), TRAY, *PAST, removal=pieces(22, 22))
    assert (row.name, row.at) == ("White sail clip", "../supplies/white-clip.html")
    assert (row.comes_off, row.have, row.order) == ("44", "10", "one pack of 10")
    assert (row.shelf, row.past) == ("2, counted 2026-01-10", "15 of 126 lost in three jobs.")


def test_few_notes_and_none_are_thin() -> None:
    thin = need_of(supply("white-clip"), PAST[0], removal=pieces(12))
    assert past_words(thin) == "Thin: 5 of 44 lost in one job."
    assert past_words(need_of(removal=pieces(2))) == "Thin: no job wrote back yet, so all of them may fly."


def test_single_use_and_what_nobody_counted_are_said() -> None:
    single = row_of(supply("white-clip", single_use="single use"), removal=pieces(4))
    assert single.have == "4, single use"
    blank = row_of(removal=pieces(None, kind="odd clip"))
    assert (blank.at, blank.comes_off, blank.have, blank.order) == ("", "not counted", "unknown", "unknown")
    assert len(blank.also) == 2
