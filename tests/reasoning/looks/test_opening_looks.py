from fractions import Fraction
from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.looks.look import CHASSIS, Look, Todo
from bezelbook.reasoning.looks.opening_looks import argument_ways, asking_ways, reading_ways
from bezelbook.reasoning.looks.pair import open_pairs
from bezelbook.reasoning.looks.ranking import looks as every_look
from bezelbook.reasoning.looks.readings import TRIED, unread
from bezelbook.values.span import Span
from bezelbook.values.words import NINTHS
from tests.reasoning import making

DEPTH = "depth from the sub-dash face: all nine ninths"
MM = 1_000_000
# A box of which all is known as closely as a caliper tells, so that nothing is to be looked at on the bench.
PLAIN: dict[str, Any] = {
    "body_width": "178 ± 0.2 mm caliper",
    "body_height": "100 ± 0.2 mm caliper",
    "nose_width": "170 ± 0.2 mm caliper",
    "nose_height": "95 ± 0.2 mm caliper",
    "plug_and_bend": "32 ± 1 mm caliper",
}


def looks(*records: Record) -> dict[str, Look]:
    base = making.book(*records)
    place = making.place(base)
    found = every_look(base, {(making.CAR, making.HOLE): place})
    assert {pair for look in found for pair in (*look.settles, *look.helps)} <= set(open_pairs(place))
    assert len({look.todo for look in found}) == len(found)
    return {look.todo.what: look for look in found}


def box(named: str = "box", depth: int = 110) -> Record:
    return making.unit(named, **{**PLAIN, "body_depth": f"{depth} ± 0.2 mm caliper"})


def test_of_an_opening_nobody_read_one_may_read_the_front_and_the_depth() -> None:
    found = looks(box())
    here = (making.CAR, making.HOLE, ((),))
    assert {look.todo for look in found.values()} == {
        Todo(*here, DEPTH, "depth gauge", 2, CHASSIS),
        Todo(*here, "width and height of the opening", "caliper", 2, CHASSIS),
    }


def test_behind_a_bezel_its_hole_is_part_of_the_front() -> None:
    bezel = making.vehicle(places={making.HOLE: {"kind": "opening behind a bezel", "side": "centre"}})
    assert "width, height, nose width and nose height of the opening" in looks(bezel, box())


def test_the_front_alone_settles_only_a_no_and_helps_to_a_yes() -> None:
    # Made for boxes of 178 x 100 it is likely 176 to 188 wide and 98 to 110 high. The least of either is too small, in
    # one outcome of seven each, and never in the same.
    [share] = looks(box())["width and height of the opening"].settles.values()
    assert share == Fraction(2, 7)


def test_where_all_but_the_depth_is_known_the_depth_settles_it() -> None:
    [look] = looks(box(), making.roomy()).values()
    assert look.todo.what == DEPTH
    # Read as 128, 145 and so on to 231 mm, each ± 1: a body of 110 with plug and bend of 32 asks for 142 ± 1.2 where
    # its plug leaves. It does not go in at 128, goes in from 162 on, and 145 ± 1 is enough.
    assert set(look.settles.values()) == {Fraction(1)}


def test_readings_that_the_notes_rule_out_are_not_counted() -> None:
    # What went in at 130 leaves no depth under it.
    found = looks(box("deep", 160), box("fitted", 130), making.roomy(), making.tried(what="fitted"))
    [look] = found.values()
    assert {pair.unit for pair in look.settles} == {"deep"}


def test_a_look_settles_its_own_build_only() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    for look in looks(car, box()).values():
        assert {pair.build for pair in (*look.settles, *look.helps)} == set(look.todo.builds)


def test_an_opening_that_was_read_is_not_read_again() -> None:
    depth = making.measured("wire", making.reading("depth", "205 ± 1 mm"))
    place = making.place(making.book(making.roomy(), depth))
    assert reading_ways(place, (), unread(place, ())) == ()


def test_a_look_tells_what_it_reads_in_each_outcome() -> None:
    place = making.place(making.book())
    front, depth = reading_ways(place, (), unread(place, ()))
    assert front.tells is not None
    assert depth.tells is not None
    assert set(front.tells(0)) == {"width", "height"}
    assert set(depth.tells(0)) == set(NINTHS)
    assert {depth.tells(number)["left"] for number in range(TRIED)} >= {Span(127 * MM, 129 * MM)}


def test_a_build_that_a_note_left_blank_is_asked_of_its_author() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    no = making.tried(author="rk", date="2026-01-02", verdict="does not", reason="depth")
    found = looks(car, box(), box("deep", 170), making.roomy(), no)
    what = "which build the car was in the note of rk, 2026-01-02"
    look = found[what]
    assert look.todo == Todo(making.CAR, making.HOLE, (), what, "ask rk", 1, CHASSIS, no.id)
    assert set(look.settles.values()) == {Fraction(1, 2)}


def test_mounts_that_a_note_left_blank_are_asked_of_its_author() -> None:
    kit = making.mount(made_for=[{"vehicle": making.CAR, "place": making.HOLE}])
    found = looks(kit, box(), making.roomy(), making.tried(mounts=None))
    look = found["which mounts were used in the note of somebody, no date"]
    assert look.todo.tool == "ask its author"
    assert set(look.settles.values()) == {Fraction(1)}


def test_where_notes_argue_offering_it_up_again_settles_it_one_way_or_the_other() -> None:
    no = making.tried("no", author="jo", verdict="does not", reason="depth")
    found = looks(box(), making.roomy(), making.tried("yes", author="rk"), no)
    what = "who is right: jo, no date or rk, no date"
    look = found[what]
    assert look.todo == Todo(making.CAR, making.HOLE, (), what, "offer it up again, and read the room", 5, CHASSIS)
    assert set(look.settles.values()) == {Fraction(1)}


def test_where_everything_is_firm_there_is_nothing_to_look_at() -> None:
    assert looks(box(), making.tried()) == {}
    assert looks() == {}


def test_a_ninth_left_unread_is_named() -> None:
    read = [ninth for ninth in NINTHS if ninth != "lower-right"]
    some = making.reading("depth", "205 ± 2 mm", *read)
    [what] = looks(box(), making.roomy(), making.measured("wire", some))
    assert what == "depth from the sub-dash face: lower-right"


def test_ninths_left_unread_are_named_by_rows_and_columns() -> None:
    lower = making.reading("depth", "205 ± 2 mm", *NINTHS[6:])
    [what] = looks(box(), making.roomy(), making.measured("wire", lower))
    assert what == "depth from the sub-dash face: upper and middle row"


def test_two_notes_that_say_the_same_of_themselves_are_two_to_ask() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    place = making.place(making.book(car, box(), making.tried("a"), making.tried("b")))
    assert [todo.about for todo, _ in asking_ways(place)] == ["a", "b"]
    assert list(argument_ways(place)) == []


def test_a_look_settles_what_the_book_answers_once_it_is_written_down() -> None:
    units = [box(f"u{depth}", depth) for depth in (80, 110, 140, 170, 200)]
    notes = [
        making.roomy(),
        making.tried("yes", what="u110"),
        making.tried("no", what="u200", verdict="does not", reason="depth", plugs="off"),
        making.measured("left", making.reading("depth", "190 ± 2 mm", "left", "lower-left")),
    ]
    place = making.place(making.book(*units, *notes))
    [way] = reading_ways(place, (), unread(place, ()))
    assert way.tells is not None
    settled: dict[str, int] = {}
    possible = 0
    for number in range(TRIED):
        lengths = {str(spot): ((span.low or 0) + (span.high or 0)) // 2 for spot, span in way.tells(number).items()}
        readings = [making.reading("depth", f"{length / MM:.4f} ± 1 mm", spot) for spot, length in lengths.items()]
        told = making.book(*units, *notes, making.measured("look", *readings, numbers="read back"))
        if len(making.place(told).accounts) > 1:
            continue
        possible += 1
        for pair in open_pairs(place):
            firm = making.ask(told, pair.unit).verdict in ("goes in", "does not")
            settled[pair.unit] = settled.get(pair.unit, 0) + firm
    found = looks(*units, *notes)[way.todo.what]
    assert {pair.unit: share for pair, share in found.settles.items()} == {
        unit: Fraction(count, possible) for unit, count in settled.items() if count
    }
    assert any(settled.values())


def test_a_note_that_says_all_of_itself_is_nothing_to_ask_about() -> None:
    assert list(asking_ways(making.place(making.book(box(), making.tried())))) == []


def test_what_an_author_says_of_his_note_leaves_the_other_notes_as_they_are() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    place = making.place(making.book(car, box(), making.roomy(), making.tried(splits={"build": "late"}, mounts=None)))
    asked = {todo.about: outcomes for todo, outcomes in asking_ways(place)}
    assert set(asked) == {"tape", "a-note"}
    told = [[one.note.id for one in rooms.notes] for outcomes in asked.values() for [rooms] in outcomes]
    assert told == [["a-note", "tape"]] * 3
    for builds, accounts in zip(place.frame.builds, asked["tape"], strict=True):
        assert {one.note.id: one.builds for one in accounts[0].notes}["tape"] == (builds,)
