from typing import Any

from bezelbook.kinds.note.record import After
from bezelbook.reasoning.counts.lost import Tally, standing, tallies
from bezelbook.reasoning.evidence import job_key
from tests.reasoning import making
from tests.reasoning.making import CAR, HOLE


def after(named: str, lost: int, handled: int, kind: str = "sail clip", **content: Any) -> After:
    clips = [{"kind": kind, "handled": handled, "lost": lost}]
    said = {"form": "after", "vehicle": CAR, "place": HOLE, "clips": clips, "author": named, "date": "2026-01-02"}
    made: After = making.record("notes", named, said | content)
    return made


def lost(*notes: After, kind: str = "sail clip") -> Tally:
    return tallies(making.book(*notes), notes)[kind]


# Trade 4.10: 5/44, 7/44, 3/38.
def test_jobs_are_added_up() -> None:
    past = lost(after("a", 5, 44), after("b", 7, 44), after("c", 3, 38))
    assert (past.lost, past.handled, past.witnesses, past.thin) == (15, 126, 3, False)


def test_fewer_than_three_jobs_are_thin() -> None:
    assert lost(after("a", 5, 44), after("b", 7, 44)).thin
    assert Tally().thin
    assert (Tally().lost, Tally().handled) == (0, 0)


# Trade C46: a copied job is one witness.
def test_a_copied_job_counts_once() -> None:
    tag = {"job": "jan-02-bay-1"}
    past = lost(after("a", 5, 44, **tag), after("b", 5, 44, **tag), after("c", 3, 38))
    assert (past.lost, past.handled, past.witnesses) == (8, 82, 2)


def test_of_two_notes_of_one_job_that_differ_the_larger_counts() -> None:
    tag = {"job": "jan-02-bay-1"}
    for one, other in (((1, 40), (5, 44)), ((5, 44), (1, 40)), ((2, 44), (5, 44)), ((5, 44), (2, 44))):
        past = lost(after("a", one[0], one[1], **tag), after("b", other[0], other[1], **tag))
        assert (past.lost, past.handled) == (5, 44)


def test_without_a_tag_one_author_on_one_day_with_one_car_is_one_job() -> None:
    copied = after("b", 5, 44, author="a")
    assert lost(after("a", 5, 44), copied).handled == 44
    assert lost(after("a", 5, 44), after("b", 5, 44, author="a", date="2026-01-03")).handled == 88
    assert lost(after("a", 5, 44), after("b", 5, 44, author="a", vehicle="another")).handled == 88
    assert job_key(copied) == ("a", "2026-01-02", CAR)


def test_the_other_places_of_a_job_are_other_panels() -> None:
    tag = {"job": "jan-02-bay-1"}
    past = lost(after("a", 1, 9, place="left", **tag), after("b", 1, 9, place="right", **tag))
    assert (past.lost, past.handled, past.witnesses) == (2, 18, 1)


def test_more_lost_than_handled_waits_until_somebody_reads_it_back() -> None:
    past = lost(after("a", 5, 4), after("b", 1, 4))
    assert (past.lost, past.handled, past.aside) == (1, 4, ("a",))
    assert lost(after("a", 4, 4)).aside == ()


def test_rows_of_one_kind_in_one_note_are_added_and_kinds_are_kept_apart() -> None:
    rows = [
        {"kind": "sail clip", "handled": 4, "lost": 1},
        {"kind": "Sail  clip", "handled": 6, "lost": 2},
        {"kind": "metal claw", "handled": 8, "lost": 0},
    ]
    note = after("a", 0, 0, clips=rows)
    assert (lost(note).lost, lost(note).handled) == (3, 10)
    assert lost(note, kind="metal claw").handled == 8


def test_a_note_whose_place_another_took_says_nothing() -> None:
    old, new = after("a", 5, 44), after("b", 1, 44, replaces="a")
    assert [note.id for note in standing(making.book(old, new, making.tried("c")))] == ["b"]
