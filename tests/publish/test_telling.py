from bezelbook.publish.telling import Pool, Telling
from bezelbook.reasoning.unknowns import Missing
from tests.reasoning import making


def test_a_value_is_told_once() -> None:
    pool = Pool()
    assert [pool.number(value) for value in (["a"], ["b"], ["a"])] == [0, 1, 0]
    assert pool.values == [["a"], ["b"]]


def test_a_note_is_told_with_its_job_so_that_jobs_can_be_counted() -> None:
    notes = [
        making.tried("a", job="monday"),
        making.tried("b", job="monday", author="tm"),
        making.tried("c", author="rk", date="2026-01-01"),
        making.measured("d", making.reading("width", "184 mm"), author="rk", date="2026-01-01"),
    ]
    telling = Telling(making.book(making.unit(), *notes))
    assert [telling.note(note.id) for note in notes] == ["a", "b", "c", "d"]
    assert [telling.notes[name]["job"] for name in "abcd"] == [0, 0, 1, 1]
    assert telling.notes["d"]["sure"] == "measured"
    assert telling.notes["a"] == {
        "author": None,
        "date": None,
        "sure": "fitted",
        "form": "tried",
        "words": "box: goes in [no mount, nothing cut, loom aside]",
        "job": 0,
        "at": f"vehicles/{making.CAR}.html#note-a",
    }


def test_what_is_not_known_is_told_by_number() -> None:
    telling = Telling(making.book())
    missing = Missing("what", "look", "changes")
    assert telling.unknown([missing, missing]) == [0, 0]
    assert telling.missing.values == [["what", "look", "changes"]]
