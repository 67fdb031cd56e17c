import pytest

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import HOME, LOOSE, Links, built, note_page, vehicle_page
from tests.reasoning import making


def test_a_page_is_built_beside_its_source() -> None:
    assert built("vehicles/van.md") == "vehicles/van.html"
    assert built("data/book.js") == "data/book.js"


@pytest.mark.parametrize(
    ("page", "address"),
    [
        (HOME, "vehicles/van.html"),
        ("head-units/box.md", "../vehicles/van.html"),
        ("vehicles/hatch.md", "van.html"),
    ],
)
def test_a_link_is_relative_to_the_page_it_is_on(page: str, address: str) -> None:
    assert Links(page, KnowledgeBase()).vehicle("van") == address


def test_words_in_an_address_are_spelled_out() -> None:
    assert Links("vehicles/van.md", KnowledgeBase()).ask('van 7" & dash') == "../index.html#ask=van%207%22%20%26%20dash"


def test_each_page_that_there_is_one_of_has_its_address() -> None:
    top = Links("mounts/kit.md", KnowledgeBase()).top
    assert top["home"] == "../index.html"
    assert top["monday"] == "../monday.html"


def test_a_record_of_any_kind_has_its_address() -> None:
    stock = making.record("shelf", "tray", {"thing": "kit", "count": 1})
    book = making.book(making.vehicle(), making.mount(), making.tried("seen-here"), stock)
    to = Links("mounts/kit.md", book)
    assert to.record("vehicle", making.CAR) == to.vehicle(making.CAR)
    assert to.record("mount", "kit") == "kit.html"
    assert to.record("note", "seen-here") == f"../vehicles/{making.CAR}.html#note-seen-here"
    assert to.record("stock", "tray") == "../shelf.html#stock-tray"
    assert to.record("shop", "shop") == "../shop.html"


@pytest.mark.parametrize("kind", ["mount", "note", "stock", "connector"])
def test_what_is_not_in_the_book_has_none(kind: str) -> None:
    assert Links(HOME, KnowledgeBase()).record(kind, "gone") == ""


def test_a_note_is_quoted_in_full_where_it_points() -> None:
    of_car = making.tried("seen-here")
    bench = making.record("notes", "on-bench", {"form": "bench", "part": "box"})
    of_kit = making.record("notes", "on-bench-too", {"form": "bench", "part": "kit"})
    lost = making.record("notes", "lost", {"form": "bench", "part": "nothing"})
    elsewhere = making.tried("elsewhere", vehicle="gone")
    book = making.book(making.unit(), making.mount(), of_car, bench, of_kit, lost, elsewhere)
    pages = [note_page(book, note) for note in (of_car, bench, of_kit, lost, elsewhere)]
    assert pages == [vehicle_page(making.CAR), "head-units/box.md", "mounts/kit.md", LOOSE, LOOSE]
    assert Links(HOME, book).note(of_car) == f"vehicles/{making.CAR}.html#note-seen-here"
