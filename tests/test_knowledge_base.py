"""The book as one set of records: found by id, by name, by place, by part."""

import pytest

from bezelbook.kinds.note.record import AnyNote
from bezelbook.knowledge_base import BLANK_SHOP, KnowledgeBase, folded, knowledge_base, names_of
from tests.reasoning.making import CAR, HOLE, measured, mount, reading, record, shop, tried, unit, vehicle


def bench(name: str, part: str) -> AnyNote:
    note: AnyNote = record("notes", name, {"form": "bench", "part": part, "date": "2026-01-02"})
    return note


def seen(name: str, **content: str) -> AnyNote:
    note: AnyNote = record("notes", name, {"form": "seen", "vehicle": CAR, "place": HOLE, **content})
    return note


def test_every_kind_of_record_is_found_by_its_id_in_order_of_id() -> None:
    notes = [tried("z"), measured("m", reading("width", "182 mm")), bench("b", "box"), seen("a")]
    book = knowledge_base([*notes, unit("box"), unit("another"), mount("kit"), vehicle(), shop()])
    assert (list(book.vehicles), list(book.mounts)) == ([CAR], ["kit"])
    assert list(book.head_units) == ["another", "box"]
    assert list(book.notes) == ["a", "b", "m", "z"]
    assert book.shop.name == "A shop"


def test_an_empty_book_has_a_shop_without_a_name() -> None:
    assert knowledge_base([]) == KnowledgeBase()
    assert knowledge_base([]).shop == BLANK_SHOP


def test_of_two_records_with_one_id_the_later_counts() -> None:
    twice = knowledge_base([unit("box", name="first"), unit("box", name="second"), shop(name="one"), shop(name="two")])
    assert (twice.head_units["box"].name, twice.shop.name) == ("second", "two")


def test_the_book_is_as_new_as_its_newest_note() -> None:
    notes = [seen("a", date="2026-02-01"), seen("b", date="2026-03-01"), seen("c")]
    assert knowledge_base(notes).newest_day == "2026-03-01"
    assert knowledge_base([seen("c"), unit()]).newest_day is None


def test_the_notes_of_a_place_are_those_made_there() -> None:
    notes = [
        seen("b"),
        tried("a"),
        seen("elsewhere", place="glovebox"),
        seen("other", vehicle="big-van-1"),
        bench("x", "y"),
    ]
    book = knowledge_base(notes)
    assert [note.id for note in book.notes_at(CAR, HOLE)] == ["a", "b"]
    assert book.notes_at(CAR, "roof") == ()


def test_the_bench_notes_of_a_part_are_about_that_part() -> None:
    book = knowledge_base([bench("b", "box"), bench("a", "box"), bench("c", "other"), seen("d")])
    assert [note.id for note in book.bench_notes("box")] == ["a", "b"]


@pytest.mark.parametrize("words", ["short-double", "Short Double", "short  double", "SLIM double", "slim-double"])
def test_a_thing_is_found_by_any_of_its_names_however_they_are_written(words: str) -> None:
    book = knowledge_base([unit("short-double", name="short two-high", also=["slim double"])])
    found = book.head_unit_named(words)
    assert found is not None
    assert found.id == "short-double"


def test_a_mount_is_found_by_name_too() -> None:
    book = knowledge_base([mount("flush-kit", name="the flush one")])
    assert book.mount_named("The Flush One") == book.mounts["flush-kit"]
    assert book.mount_named("flush one") is None


def test_a_name_of_two_things_names_neither() -> None:
    book = knowledge_base([unit("a", also=["slim"]), unit("b", also=["slim"])])
    assert book.head_unit_named("slim") is None


def test_an_id_names_its_own_record_whatever_another_is_called() -> None:
    book = knowledge_base([unit("slim", name="first"), unit("b", name="slim"), unit("c", name="Slim")])
    found = book.head_unit_named("slim")
    assert found is not None
    assert found.id == "slim"


def test_names_cannot_be_written_to() -> None:
    with pytest.raises(TypeError):
        names_of({})["a"] = "b"  # type: ignore[index]


def test_words_are_folded_to_lower_case_single_blanks_and_no_hyphens() -> None:
    assert folded(" Short-Double\t SEVEN ") == "short double seven"
