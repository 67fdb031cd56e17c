"""The book as one set of records: found by id, by name, by place, by part."""

from typing import Any

import pytest

from bezelbook.kinds import KINDS
from bezelbook.kinds.note.record import AnyNote
from bezelbook.knowledge_base import BLANK_SHOP, KnowledgeBase, Pointer, folded, knowledge_base, names_of
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
    assert [note.id for note in book.notes_of(CAR)] == ["a", "b", "elsewhere"]
    assert book.notes_of("gone") == ()


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


EVERY_KIND: dict[str, dict[str, Any]] = {
    "connectors": {"name": "Square 24", "shell": "square", "also": ["the square one"]},
    "speakers": {"name": "Slim six", "speaker_kind": "coaxial", "nominal": "6 1/2 in"},
    "amplifiers": {"name": "Small four", "origin": "added"},
    "modules": {"name": "Bus box", "module_kind": "data"},
    "adapters": {"name": "The T", "adapter_kind": "T"},
    "supplies": {"name": "Fleece", "form": "tape", "tape_kind": "fleece"},
    "shelf": {"thing": "fleece", "count": 1},
    "decisions": {"question": "which kit", "decided": "no problem", "reason": "Same kit."},
    "questions": {"words": "rear doors?"},
    "jobs": {"tag": "one", "vehicle": CAR, "wishes": [{"want": "add", "what": "sub"}]},
}


@pytest.mark.parametrize("folder", EVERY_KIND)
def test_every_kind_has_a_shelf_of_its_own(folder: str) -> None:
    one, two = (record(folder, name, EVERY_KIND[folder]) for name in ("one", "two"))
    book = knowledge_base([two, unit("one"), one])
    assert getattr(book, folder) == book.records[KINDS[folder].name] == {"one": one, "two": two}


def test_a_book_without_a_kind_has_an_empty_shelf_for_it() -> None:
    assert [len(getattr(knowledge_base([]), folder)) for folder in EVERY_KIND] == [0] * len(EVERY_KIND)


@pytest.mark.parametrize(("kind", "words"), [("connector", "The Square One"), ("connector", "one"), ("job", "one")])
def test_anything_is_found_by_kind_and_by_any_of_its_names(kind: str, words: str) -> None:
    book = knowledge_base(
        [record("connectors", "one", EVERY_KIND["connectors"]), record("jobs", "one", EVERY_KIND["jobs"])]
    )
    assert book.named(kind, words) == book.records[kind]["one"]


def test_what_no_record_goes_by_names_nothing() -> None:
    assert knowledge_base([]).named("connector", "square 24") is None
    assert knowledge_base([unit("one")]).named("connector", "one") is None


def test_who_points_at_a_vehicle_is_known_by_kind_id_and_field() -> None:
    fitting = mount("kit", made_for=[{"vehicle": CAR, "place": HOLE}])
    sister = vehicle().model_copy(update={"id": "other-van", "sisters": (CAR,)})
    book = knowledge_base([seen("b"), seen("a"), bench("c", "box"), fitting, vehicle(), sister])
    assert book.pointers_to("vehicle", CAR) == (
        Pointer("mount", "kit", ("made_for", 0, "vehicle")),
        Pointer("note", "a", ("vehicle",)),
        Pointer("note", "b", ("vehicle",)),
        Pointer("vehicle", "other-van", ("sisters", 0)),
    )


def test_a_note_points_at_a_part_in_any_words_that_name_it() -> None:
    square = record("connectors", "square-24", EVERY_KIND["connectors"])
    notes = [seen("a", plug="The Square One"), seen("b", plug="square-24"), seen("c", plug="round one")]
    assert [one.id for one in knowledge_base([square, *notes]).pointers_to("connector", "square-24")] == ["a", "b"]


def test_words_that_name_two_records_point_at_neither() -> None:
    both = [record("connectors", name, EVERY_KIND["connectors"]) for name in ("one", "two")]
    book = knowledge_base([*both, seen("a", plug="the square one")])
    assert book.pointers_to("connector", "one") == book.pointers_to("connector", "two") == ()


def test_where_ids_are_asked_for_a_name_points_at_nothing() -> None:
    book = knowledge_base(
        [record("supplies", "one", EVERY_KIND["supplies"]), record("shelf", "s", EVERY_KIND["shelf"])]
    )
    assert book.pointers_to("supply", "one") == ()


def test_one_id_of_two_kinds_is_pointed_at_as_both_where_both_may_be_meant() -> None:
    shelf = record("shelf", "s", {"thing": "box", "count": 1})
    book = knowledge_base([unit("box"), mount("box"), shelf])
    assert (
        book.pointers_to("head_unit", "box") == book.pointers_to("mount", "box") == (Pointer("stock", "s", ("thing",)),)
    )


def test_what_is_not_in_the_book_is_pointed_at_by_nobody() -> None:
    assert knowledge_base([seen("a")]).pointers_to("vehicle", CAR) == ()
