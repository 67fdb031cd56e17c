from fractions import Fraction
from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.looks.look import Look
from bezelbook.reasoning.looks.opening_looks import opening_looks
from bezelbook.reasoning.looks.pair import open_pairs
from bezelbook.reasoning.looks.readings import TRIED, read_as, unread
from bezelbook.values.words import NINTHS
from tests.reasoning import making

DEPTH = "depth from the sub-dash face: all nine ninths"
PLAIN: dict[str, Any] = {"nose_width": "170 ± 1 mm caliper", "nose_height": "95 ± 1 mm caliper"}


def looks(*records: Record) -> dict[str, Look]:
    place = making.place(making.book(*records))
    found = list(opening_looks(place, open_pairs(place)))
    assert len({(look.todo.what, look.todo.builds) for look in found}) == len(found)
    return {look.todo.what: look for look in found}


def box(named: str = "box", depth: int = 110) -> Record:
    return making.unit(named, body_depth=f"{depth} ± 1 mm caliper", **PLAIN)


def test_of_an_opening_nobody_read_one_may_read_the_front_the_depth_or_both() -> None:
    found = looks(box())
    assert [(look.todo.what, look.todo.tool, look.todo.minutes) for look in found.values()] == [
        ("width and height of the opening", "caliper", 2),
        (DEPTH, "depth gauge", 2),
        (
            "width and height of the opening, and depth from the sub-dash face: all nine ninths",
            "caliper and depth gauge",
            4,
        ),
    ]


def test_the_front_alone_settles_only_a_no() -> None:
    # A body of 178 x 100. The widths 66, 118, 170, 222 and 274 are read with the heights 60.5, 122.5, 184.5, 91.5 and
    # 153.5: both are enough in the last case alone, and then the depth is still not known.
    [pair] = looks(box())["width and height of the opening"].settles.items()
    assert pair[1] == Fraction(4, 5)


def test_where_all_but_the_depth_is_known_the_depth_settles_it() -> None:
    found = looks(box(), making.roomy())
    [look] = found.values()
    assert look.todo.what == DEPTH
    # Read as 89, 147, 205, 263 or 321 mm: a body of 110 with plug and bend of 32 ± 5 does not go in the first, goes in
    # the last three, and 142 ± 6 in 147 ± 1 is too near to say.
    assert set(look.settles.values()) == {Fraction(4, 5)}


def test_readings_that_the_notes_rule_out_are_not_counted() -> None:
    # What went in at 130 leaves no depth under it.
    found = looks(box("deep", 160), box("fitted", 130), making.roomy(), making.tried(what="fitted"))
    [look] = found.values()
    assert {pair.unit for pair in look.settles} == {"deep"}
    assert set(look.settles.values()) <= {Fraction(number, 5) for number in range(1, 6)}


def test_a_reading_that_no_room_would_give_is_no_outcome() -> None:
    # Somewhere a body of 170 was stopped, so not every ninth reads 205 or more: 89 and 147 mm are left, of which the
    # first refuses a body of 110 and the second is too near to its plug to say.
    no = making.tried(what="deep", verdict="does not", reason="depth", plugs="off")
    [look] = looks(box(), box("deep", 170), making.roomy(), no).values()
    assert {pair.unit: share for pair, share in look.settles.items()} == {"box": Fraction(1, 2)}


def test_a_look_settles_its_own_build_only() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    place = making.place(making.book(car, box()))
    for look in opening_looks(place, open_pairs(place)):
        assert {pair.build for pair in look.settles} == set(look.todo.builds)


def test_a_build_that_a_note_left_blank_is_asked_of_its_author() -> None:
    car = making.vehicle(splits={"build": making.split("early", "late")})
    no = making.tried(author="rk", date="2026-01-02", verdict="does not", reason="depth")
    found = looks(car, box(), box("deep", 170), making.roomy(), no)
    look = found["which build the car was in the note of rk, 2026-01-02"]
    assert (look.todo.tool, look.todo.minutes) == ("ask rk", 1)
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
    look = found["who is right: jo, no date or rk, no date"]
    assert look.todo.minutes == 5
    assert set(look.settles.values()) == {Fraction(1)}


def test_where_everything_is_firm_there_is_nothing_to_look_at() -> None:
    assert looks(box(), making.tried()) == {}
    assert looks() == {}


def test_a_ninth_left_unread_is_named() -> None:
    read = [ninth for ninth in NINTHS if ninth != "lower-right"]
    some = making.reading("depth", "205 ± 3 mm", *read)
    [what] = looks(box(), making.roomy(), making.measured("wire", some))
    assert what == "depth from the sub-dash face: lower-right"


def test_a_look_settles_what_the_book_answers_once_its_note_is_written() -> None:
    units = [box(f"u{depth}", depth) for depth in (80, 110, 140, 170, 200)]
    notes = [
        making.tried("yes", what="u110"),
        making.tried("no", what="u200", verdict="does not", reason="depth", plugs="off"),
        making.measured("left", making.reading("depth", "190 ± 3 mm", "left", "lower-left")),
    ]
    base = making.book(*units, *notes)
    place = making.place(base)
    blank = unread(place, ())
    written: dict[str, int] = {}
    for number in range(TRIED):
        numbers = {"width": number, "height": (2 * number) % TRIED, "depth": (3 * number + 1) % TRIED}
        told = making.book(*units, *notes, read_as(place, (), blank, numbers))
        for pair in open_pairs(place):
            firm = making.ask(told, pair.unit).verdict in ("goes in", "does not")
            written[pair.unit] = written.get(pair.unit, 0) + firm
    found = looks(*units, *notes)
    [both] = [look for what, look in found.items() if look.todo.minutes == 4]
    assert {pair.unit: share for pair, share in both.settles.items()} == {
        unit: Fraction(count, TRIED) for unit, count in written.items() if count
    }
    assert any(written.values())
