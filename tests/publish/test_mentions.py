from bezelbook.publish.address import HOME, Links
from bezelbook.publish.mentions import mentions, place_words, quoted, where
from tests.reasoning import making

UNIT = making.unit("box", also=["the box"])
KIT = making.mount("kit", also=["that kit"])


def test_a_note_names_its_head_unit_and_each_mount_by_any_of_their_names() -> None:
    notes = [
        making.tried("a", what="the box", mounts=["kit", "that kit", "no such kit"]),
        making.tried("b", what="something else"),
        making.measured("m", making.reading("width", "184 mm"), mounts=["that kit"]),
        making.record("notes", "bench", {"form": "bench", "part": "box"}),
    ]
    named = mentions(making.book(UNIT, KIT, *notes))
    assert {unit: [note.id for note in found] for unit, found in named.tried.items()} == {"box": ["a"]}
    assert {mount: [note.id for note in found] for mount, found in named.used.items()} == {"kit": ["a", "m"]}
    assert named.places == {making.CAR: {making.HOLE}}


def test_a_mention_says_where_and_leads_to_the_whole_note() -> None:
    old, new = making.tried("old", date="2025-01-01"), making.tried("new", date="2026-01-01")
    book = making.book(UNIT, old, new)
    found = quoted(book, (old, new), Links(HOME, book))
    assert [(one.said.note.id, one.where, one.at) for one in found] == [
        ("new", "small van, dash centre", "vehicles/small-van-1.html#note-new"),
        ("old", "small van, dash centre", "vehicles/small-van-1.html#note-old"),
    ]


def test_what_is_not_in_the_book_stands_for_itself() -> None:
    book = making.book()
    assert place_words(book, "gone-van-9", "boot-left") == "gone van 9, boot left"
    assert where(book, making.record("notes", "bench", {"form": "bench", "part": "box"})) == "on the bench"
