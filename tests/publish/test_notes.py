from bezelbook.publish.notes import loose_notes, newest_first, said, said_at, said_on_bench
from bezelbook.publish.opening import Opening
from bezelbook.reasoning.decided import decided
from bezelbook.reasoning.evidence import evidence_at
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


def test_a_note_that_lost_is_shown_last_and_struck_with_the_reason_wherever_it_belongs() -> None:
    unit = making.unit()
    loser, other = making.tried("loser"), making.tried("other", verdict="does not", reason="depth")
    bench = making.record("notes", "bench", {"form": "bench", "part": unit.id})
    lost = making.tried("lost", vehicle="nobodys-car")
    decision = making.record(
        "decisions",
        "d",
        {
            "question": "q",
            "decided": "one stands",
            "reason": "r",
            "struck": [{"note": name, "because": "eyeballed"} for name in ("loser", "bench", "lost")],
        },
    )
    book = decided(making.book(making.vehicle(), unit, loser, other, bench, lost), [decision])
    evidence = evidence_at(book, book.vehicles[making.CAR], making.HOLE)
    shown = said_at(book, making.CAR, making.HOLE, evidence)
    assert [(one.note.id, one.stands, one.why) for one in shown] == [
        ("other", "strong", ""),
        ("loser", "struck", "struck: eyeballed"),
    ]
    assert [(one.note.id, one.stands) for one in said_on_bench(book, unit.id)] == [("bench", "struck")]
    assert [(one.note.id, one.stands) for one in loose_notes(book)] == [("lost", "struck")]


def test_a_note_is_quoted_as_it_was_typed_and_says_how_it_is_read() -> None:
    note = making.tried("n", mounts=None)
    decision = making.record(
        "decisions",
        "d",
        {
            "question": "q",
            "decided": "both true",
            "reason": "two were there",
            "author": "rk",
            "read_as": [{"note": "n", "mounts": ["kit"]}, {"note": "other", "tabs": "in"}],
        },
    )
    book = decided(making.book(making.vehicle(), note, decision), [decision])
    one = said(book, book.notes["n"])
    assert "mounts not said" in one.words
    assert one.read_as == ("read as mounts kit: two were there (rk, no date)",)
    assert said(making.book(note), note).read_as == ()
