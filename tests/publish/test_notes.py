from bezelbook.publish.notes import loose_notes, newest_first, said, said_at
from bezelbook.publish.opening import Opening
from tests.reasoning import making


def test_notes_that_bind_come_first_then_the_weak_then_those_set_aside(dash: Opening) -> None:
    notes = said_at(dash.book, dash.vehicle, dash.id, dash.room.evidence)
    assert [(one.note.id, one.stands) for one in notes] == [
        ("b-deep-does-not", "strong"),
        ("f-copy-of-a", "strong"),
        ("a-short-goes-in", "strong"),
        ("duct-measured", "strong"),
        ("d-customer-waiting", "weak"),
        ("c-deeper-they-say", "weak"),
        ("e-six-and-a-half", "aside"),
    ]
    assert {one.note.id: one.why for one in notes}["c-deeper-they-say"] == "only told"


def test_a_note_says_who_when_and_how_sure() -> None:
    book = making.book(making.unit())
    signed = said(book, making.tried("a", author="rk", date="2026-02-03"))
    assert (signed.by, signed.sure, signed.anchor) == ("rk, 2026-02-03", "fitted", "note-a")
    bare = said(book, making.measured("m", making.reading("width", "184 mm")))
    assert (bare.by, bare.sure, bare.stands) == ("not signed, no date", "measured", "other")
    assert {line.label for line in bare.lines} == {"vehicle", "place", "form", "readings"}


def test_newest_first_and_undated_last() -> None:
    book = making.book(making.unit())
    days = {"c": "2026-01-02", "b": "2026-01-02", "a": None, "d": "2026-03-01"}
    notes = [said(book, making.tried(name, date=day)) for name, day in days.items()]
    assert [one.note.id for one in newest_first(notes)] == ["d", "b", "c", "a"]


def test_other_notes_at_a_place_are_quoted_too() -> None:
    seen = making.record(
        "notes", "seen", {"form": "seen", "vehicle": making.CAR, "place": making.HOLE, "plug": "long 20"}
    )
    book = making.book(making.unit(), making.tried(), seen)
    notes = said_at(book, making.CAR, making.HOLE, making.place(book).evidence)
    assert [(one.note.id, one.stands) for one in notes] == [("a-note", "strong"), ("seen", "other")]


def test_a_note_that_points_at_nothing_is_not_lost() -> None:
    lost = making.record("notes", "lost", {"form": "bench", "part": "nothing"})
    found = making.record("notes", "found", {"form": "bench", "part": "kit"})
    book = making.book(making.mount(), making.tried("here"), making.tried("gone", vehicle="gone"), lost, found)
    assert {one.note.id for one in loose_notes(book)} == {"lost", "gone"}
