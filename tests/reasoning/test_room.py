"""The rooms that a place may still have, and what fits in all of them or in none."""

from typing import Any

import pytest

from bezelbook.kinds.record import Record
from bezelbook.reasoning.bounds import Rise, exactly
from bezelbook.reasoning.cells import RoomCell
from bezelbook.reasoning.needs import needs_of_unit
from bezelbook.reasoning.outlook import Outlook, always_fits, outlook
from bezelbook.reasoning.room import Rooms
from tests.reasoning.making import (
    book,
    frame,
    length,
    measured,
    mount,
    place,
    reading,
    resolved,
    roomy,
    setting,
    shop,
    split,
    standing,
    tried,
    unit,
    vehicle,
)

MM = 1_000_000


def seen(*records: Record, **question: Any) -> Outlook:
    """How a question looks over all rooms that agree with every note."""
    of = book(*records)
    asked = resolved(of, **question)
    return outlook(place(of).all_notes, asked.needs, asked.settings)


def test_the_same_thing_fits_again_in_the_same_state_whatever_its_size() -> None:
    assert seen(unit(), tried(), unit="box") == "always"
    blank = unit(body_width=None, body_height=None, body_depth=None, plug_and_bend=None, plug_exit=None)
    assert seen(blank, tried(), unit="box") == "always"
    assert seen(unit(plug_exit=None), tried(), unit="box") == "always"


def test_among_many_things_whose_plug_may_leave_anywhere_one_that_went_in_still_does() -> None:
    boxes = [unit(f"box-{number}", body_depth=f"{100 + number} ± 1 mm", plug_exit=None) for number in range(12)]
    yeses = [tried(f"yes-{number}", what=f"box-{number}") for number in range(12)]
    assert seen(*boxes, *yeses, unit="box-5") == "always"
    assert (
        seen(*boxes, *yeses, tried("no", what="box-5", verdict="does not", mounts=["other"]), unit="box-5") == "always"
    )


def test_the_same_thing_does_not_fit_again_in_the_same_state_whatever_its_size() -> None:
    blank = unit(body_width=None, body_height=None, body_depth=None, plug_and_bend=None, plug_exit=None)
    for box in (blank, unit(), unit(plug_exit=None)):
        assert seen(box, tried(verdict="does not", sure="dry-fitted"), unit="box") == "never"
        assert seen(box, tried(verdict="does not", sure="dry-fitted", reason="depth"), unit="box") == "never"


def test_a_thing_has_one_exit_for_its_plug_whichever_note_is_about_it() -> None:
    box, plugged = unit(plug_exit=None), {"verdict": "does not", "reason": "depth"}
    kit = mount(presents={"ninths": ["left", "right"], "width": "190 ± 1 mm", "height": "120 ± 1 mm"})
    stopped = [tried(ninth, where=[ninth], mounts=["kit"], **plugged) for ninth in ("left", "right")]
    # Wherever the plug leaves, the body itself was stopped at the other ninth.
    assert seen(kit, box, *stopped, unit="box", plugs="off", mounts=("kit",)) == "never"
    assert seen(kit, box, stopped[0], unit="box", plugs="off", mounts=("kit",)) == "open"


def test_notes_of_a_thing_that_would_need_two_exits_for_its_plug_cannot_all_be_true() -> None:
    """By hand: a body of 110 clears the 130 that were read on either side, a plug of 142 does not."""
    kit = mount(presents={"ninths": ["left", "right"], "width": "190 ± 1 mm", "height": "120 ± 1 mm"})
    read = measured("wire", reading("depth", "130 ± 3 mm", "left", "right"))
    plugged = {"mounts": ["kit"], "verdict": "does not", "reason": "depth"}
    left, right = (tried(ninth, where=[ninth], **plugged) for ninth in ("left", "right"))
    box = unit(plug_exit=None)
    assert [rooms_of(kit, box, read, *notes).possible for notes in ((left,), (right,), (left, right))] == [
        True,
        True,
        False,
    ]


@pytest.mark.parametrize(("width", "expected"), [("5 mm", "always"), ("20 mm", "open")])
def test_a_caliper_on_a_kit_does_not_carry_what_went_in_through_it_past_the_house_clearance(
    width: str, expected: Outlook
) -> None:
    """By hand: the box passed a hole of 150, and 159 went in without the kit: 9 are left, by the caliper alone."""
    house = shop(clearances={"width": width}, tools={"bench_caliper": "0 mm"})
    kit = mount(presents={"width": "150 mm caliper"})
    things = [unit("big", body_width="160 ± 1 mm"), unit(body_width="155 ± 10 mm")]
    notes = [tried("bare", what="big"), tried("kitted", mounts=["kit"])]
    assert seen(house, kit, *things, *notes, unit="box") == expected


def test_another_thing_is_covered_only_if_its_largest_is_no_larger_than_the_other_s_smallest() -> None:
    def other(depth: str) -> Outlook:
        return seen(unit(), unit("other", body_depth=depth), tried(), unit="other")

    smaller = {"body_width": "176 ± 1 mm", "body_height": "98 ± 1 mm", "plug_and_bend": "22 ± 5 mm"}
    assert seen(unit(), unit("other", body_depth="108 ± 1 mm", **smaller), tried(), unit="other") == "always"
    assert seen(unit(), unit("other", body_depth="108.1 ± 1 mm", **smaller), tried(), unit="other") == "open"
    assert other("110 ± 1 mm") == "open"


def test_what_went_in_on_another_build_says_nothing_of_this_one() -> None:
    car = vehicle(splits={"build": split("early", "late")})
    early = tried(splits={"build": "early"})
    assert seen(car, unit(), early, unit="box", splits={"build": "early"}) == "always"
    assert seen(car, unit(), early, unit="box", splits={"build": "late"}) == "open"
    assert seen(car, unit(), early, unit="box") == "open"


def test_it_never_fits_only_if_it_fits_no_way_that_was_asked_about() -> None:
    car = vehicle(splits={"build": split("early", "late")})
    notes = [tried(build, verdict="does not", splits={"build": build}) for build in ("early", "late")]
    assert seen(car, unit(), notes[0], unit="box") == "open"
    assert seen(car, unit(), *notes, unit="box") == "never"


def test_notes_that_cannot_all_be_true_settle_nothing_together() -> None:
    assert seen(unit(), tried("a"), tried("b", verdict="does not"), unit="box") == "open"


def test_each_largest_set_of_notes_that_agree_is_an_account() -> None:
    of = book(unit(), tried("a"), tried("b", verdict="does not"), roomy())
    accounts = place(of).accounts
    assert {frozenset(one.note.id for one in rooms.notes) for rooms in accounts} == {
        frozenset({"a", "tape"}),
        frozenset({"b", "tape"}),
    }
    assert not place(of).all_notes.possible


def test_with_no_notes_every_room_is_possible() -> None:
    assert seen(unit(), unit="box") == "open"
    assert place(book()).all_notes.possible


def rooms_of(*records: Record) -> Rooms:
    return place(book(*records)).all_notes


def ids(rooms: Rooms) -> set[str]:
    return {one.note.id for one in rooms.notes}


def test_notes_can_be_looked_at_by_what_they_say() -> None:
    yes, no = tried("yes"), tried("no", verdict="does not", reason="width", where=["left"])
    spare = tried("spare", where=["left"], to_spare="5 mm")
    rooms = rooms_of(unit(), yes, no, spare, roomy())
    assert ids(rooms.only("goes in")) == ids(rooms.fitted()) == {"yes", "spare"}
    assert ids(rooms.only("reading", "does not")) == {"no", "tape"}
    assert ids(rooms.measured()) == {"tape", "spare"}
    assert ids(rooms.agreeing(one for one in rooms.notes if one.says != "goes in")) == {"no", "tape"}
    assert not any(one.has_gap for one in rooms.fitted().notes)
    assert rooms.fitted().frame == rooms.measured().frame == rooms.frame


def test_a_note_is_about_the_sizes_of_the_thing_it_tried() -> None:
    rooms = rooms_of(unit(), tried("a"), tried("b", what="something"), roomy())
    assert {one.note.id: rooms.key_of(one) for one in rooms.notes} == {
        "a": "head_unit:box",
        "b": "note:b",
        "tape": None,
    }


def test_what_asks_nothing_of_the_opening_is_not_said_to_fit() -> None:
    assert seen(unit(), tried(), sizes={"nose width": length("300 mm")}) == "open"


def test_what_two_people_cut_and_did_not_say_need_not_be_the_same() -> None:
    cut = {"cut": None, "where": ["left"]}
    of = book(unit(), tried("a", to_spare="5 ± 1 mm", **cut), tried("b", to_spare="50 ± 1 mm", **cut))
    assert place(of).all_notes.possible


def test_what_is_assumed_counts_like_a_note() -> None:
    of = book()
    asked = resolved(of, sizes={"width": length("100 mm")})
    wide = Rise(RoomCell((), "nothing", None, "width"), None, exactly(100 * MM))
    assert outlook(Rooms(frame(of), (), (wide,)), asked.needs, asked.settings) == "always"


def test_what_was_worked_out_before_may_be_forgotten_and_nothing_changes(monkeypatch: pytest.MonkeyPatch) -> None:
    of = book(unit(), tried(), tried("no", verdict="does not", sure="dry-fitted", reason="depth", loom="behind"))
    needs, ways = needs_of_unit(of, of.head_units["box"]), [setting(of), setting(of, loom="behind"), setting(of)]
    remembered = [outlook(place(of).all_notes, needs, (way,)) for way in ways]
    monkeypatch.setattr("bezelbook.reasoning.start.MOST_STARTS", 1)
    forgetful = place(of).all_notes
    assert [outlook(forgetful, needs, (way,)) for way in ways] == remembered == ["always", "never", "always"]


def test_words_that_name_no_mount_need_not_mean_the_same_thing_in_two_notes() -> None:
    hole = measured("hole", reading("width", "189 mm", tool="caliper"), mounts=["something home made"])
    no = tried("no", mounts=["something home made"], verdict="does not", sure="dry-fitted", reason="width")
    kit = mount("kit", presents={"width": "185 mm caliper", "height": "120 mm caliper"})
    blank = unit(body_width=None)
    assert seen(blank, kit, hole, no, unit="box", mounts=("kit",)) == "open"
    # A mount with a record is one thing: there the same two notes say that the unit is wider than the kit.
    made = [one.model_copy(update={"mounts": ("ring",)}) for one in (hole, no)]
    ring = mount("ring", presents={"width": "189 mm caliper"})
    assert seen(blank, kit, ring, *made, unit="box", mounts=("kit",)) == "never"


def test_a_reading_that_is_assumed_does_what_it_does_as_a_note() -> None:
    deep = unit("deep", body_depth="150 ± 1 mm caliper", nose_width=None)
    for depth in (120, 160, 190, 230):
        read = measured("wire", reading("depth", f"{depth} ± 1 mm"), reading("width", "180 ± 1 mm"))
        of = book(unit(), deep, tried(what="deep"), read)
        note = standing(of, "wire")
        with_it = place(of).all_notes.agreeing([standing(of, "a-note"), note])
        assumed = with_it.agreeing(with_it.notes[:1]).reading(note)
        assert assumed.possible == with_it.possible
        for named in of.head_units:
            asked = resolved(of, unit=named)
            for one in asked.settings:
                assert assumed.takes(asked.needs, one) == with_it.takes(asked.needs, one)
                assert always_fits(assumed, asked.needs, one) == always_fits(with_it, asked.needs, one)
