"""The rooms that a place may still have."""

from bezelbook.reasoning.speakers.cells import demands
from tests.reasoning.speakers.doors import BUILDS, book, car, measured, mount, place, reading, resolved, roomy, tried

MM = 1_000_000


def test_a_place_that_nobody_looked_at_has_one_account_and_any_room() -> None:
    here = place(book())
    [rooms] = here.accounts
    assert (rooms.possible, rooms.notes, rooms.tried) == (True, (), {})
    asked = resolved(book(), mounts=())
    [setting] = asked.settings
    spans = rooms.spans(setting, demands(here.frame, asked.needs, setting))
    assert [(room.least, room.most) for room in spans] == [(0, None)] * 3


def test_the_room_lies_between_what_went_in_and_what_was_read() -> None:
    of = book(roomy(glass="70 ± 1 mm"), tried(what="deep", sizes={"mounting_depth": "69.5 mm caliper"}))
    asked = resolved(of, mounts=())
    here = place(of)
    [setting] = asked.settings
    [rooms] = here.accounts
    rear = demands(here.frame, asked.needs, setting)[1]
    [room] = rooms.spans(setting, (rear,))
    assert (room.least, room.most) == (69_500_000, 71 * MM)
    [read] = rooms.measured.spans(setting, (rear,))
    assert (read.least, read.most) == (69 * MM, 71 * MM)


def test_a_hole_read_at_a_place_that_the_car_does_not_list_is_as_large_as_it_was_read() -> None:
    of = book(measured("m", reading("cut-out", "140 ± 1 mm"), place="gone"))
    asked = resolved(of, "gone", mounts=())
    here = place(of, "gone")
    [setting] = asked.settings
    [rooms] = here.accounts
    [hole] = rooms.spans(setting, demands(here.frame, asked.needs, setting)[:1])
    assert (hole.least, hole.most) == (139 * MM, 141 * MM)


def test_notes_that_cannot_all_be_true_make_several_accounts() -> None:
    here = place(book(roomy(glass="50 ± 1 mm"), tried()))
    assert sorted(one.note.id for rooms in here.accounts for one in rooms.notes) == ["n", "roomy"]
    assert not here.accounts[0].agreeing(here.evidence.standing).possible


def test_asking_nothing_is_refused_nowhere() -> None:
    of = book()
    asked = resolved(of, mounts=())
    assert not place(of).accounts[0].refuses(asked.needs, asked.settings[0], ())


def test_a_ring_over_a_place_that_nobody_looked_at_makes_no_room_known() -> None:
    of = book(mount("ring", thickness="8 mm caliper"))
    here, asked = place(of), resolved(of, mounts=("ring",))
    [setting] = asked.settings
    spans = here.accounts[0].spans(setting, demands(here.frame, asked.needs, setting))
    assert [(room.least, room.most) for room in spans] == [(0, None)] * 3


def test_a_no_without_a_reason_bounds_no_one_room() -> None:
    of = book(tried(verdict="does not"))
    here, asked = place(of), resolved(of, mounts=())
    [setting] = asked.settings
    spans = here.accounts[0].spans(setting, demands(here.frame, asked.needs, setting))
    assert [room.most for room in spans] == [None] * 3


def test_a_reading_of_nobody_knows_which_build_bounds_the_room_of_none() -> None:
    of = book(car(splits=BUILDS), roomy())
    here, asked = place(of), resolved(of, mounts=())
    for setting in asked.settings:
        spans = here.accounts[0].spans(setting, demands(here.frame, asked.needs, setting))
        assert [(room.least, room.most) for room in spans] == [(0, None)] * 3
