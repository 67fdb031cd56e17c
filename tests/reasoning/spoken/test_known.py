"""What is known of a place is told where a question leaves something open (the trade's doors, trade.md 13)."""

from pathlib import Path

from bezelbook.pipeline import Choice, Counter, knowledge_of
from bezelbook.reasoning.speakers.rooms import speaker_place_of
from bezelbook.reasoning.spoken.known import NOTHING, known_at, place_name, short_answer
from tests.reasoning.making import record
from tests.reasoning.speakers.doors import CAR, DOOR, ask, book, measured, mount, reading, roomy, tried


def test_readings_and_what_to_look_at_are_told(books: Path) -> None:
    base = knowledge_of(books / "doors").book
    left = list(known_at(speaker_place_of(base, "compact-hatch-2", "front-door-left")))
    assert "measured: cut-out 151 ± 0.5 mm by caliper" in left
    right = list(known_at(speaker_place_of(base, "compact-hatch-2", "front-door-right")))
    assert right[0] == NOTHING
    assert any("only assumed to be the same" in line for line in right)


def test_where_only_the_side_is_open_each_side_has_its_answer(books: Path) -> None:
    found, _ = Counter(knowledge_of(books / "doors").book).ask_words("hatch doors deep six and a half")
    assert isinstance(found, Choice)
    assert found.known[0].startswith("left front door: goes in if")
    assert found.known[1].startswith("right front door: nobody has tried")


def test_a_verdict_in_one_line_has_its_condition_or_how_sure_it_is() -> None:
    fits = ask(book(roomy(), tried()))
    assert (fits.verdict, short_answer(fits)) == ("goes in", f"goes in ({fits.sure})")
    asking = ask(book(tried(cut=None)))
    assert short_answer(asking) == "goes in if the note n was made with nothing cut"
    assert short_answer(ask(book())) == "nobody has tried"


def test_what_was_tried_is_quoted_with_how_sure_by_whom_and_when() -> None:
    place = speaker_place_of(book(tried(date="2026-02-03"), tried("m", author=None)), CAR, DOOR)
    lines = list(known_at(place))
    assert lines[0].endswith("(fitted, not signed, no date)")
    assert lines[1].endswith("(fitted, rk, 2026-02-03)")


def test_what_any_speaker_would_ask_is_looked_for_whatever_mount_it_has() -> None:
    ring = mount("ring", thickness="8 mm caliper")
    lines = list(known_at(speaker_place_of(book(ring), CAR, DOOR)))
    assert lines == [
        NOTHING,
        "not known: the hole was never measured (look: caliper across it, 2 min)",
        (
            "not known: the depth to the glass was never measured on this side "
            "(look: depth gauge or putty with the glass all the way down, 5 min)"
        ),
        "not known: the room in front was never measured (look: putty under the lining, 5 min)",
    ]


def test_the_hole_of_a_bracket_is_not_that_of_the_door() -> None:
    bracket = mount("bracket", mount_kind="bracket", inner="140 mm caliper", thickness="1 mm caliper")
    through_it = measured("m", reading("cut-out", "132 ± 1 mm"), mounts=["bracket"])
    lines = list(known_at(speaker_place_of(book(bracket, through_it), CAR, DOOR)))
    assert "not known: the hole was never measured (look: caliper across it, 2 min)" in lines


def test_what_went_in_and_what_the_car_came_with_is_told(kb: Path) -> None:
    base = knowledge_of(kb).book
    lines = list(known_at(speaker_place_of(base, "compact-hatch-2", "front-door-left")))
    assert any("goes in" in line and "(fitted, " in line for line in lines)
    assert any(line.startswith("the car came with a ") for line in lines)


def test_where_the_speaker_is_open_too_the_notes_of_each_side_are_told(books: Path) -> None:
    found, _ = Counter(knowledge_of(books / "doors").book).ask_words("hatch front door speakers")
    assert isinstance(found, Choice)
    assert "left front door: measured: cut-out 151 ± 0.5 mm by caliper" in found.known
    assert f"right front door: {NOTHING}" in found.known


def test_a_place_without_a_name_is_called_by_its_id() -> None:
    assert place_name(speaker_place_of(book(), CAR, DOOR)) == "door left"


def test_who_saw_what_the_car_came_with_is_told_or_that_nobody_signed() -> None:
    said = {"form": "seen", "vehicle": CAR, "place": DOOR, "factory_speaker": {"nominal": "6 1/2 in"}}
    notes = record("notes", "a", said | {"author": "rk"}), record("notes", "b", said)
    assert list(known_at(speaker_place_of(book(*notes), CAR, DOOR)))[:2] == [
        "the car came with a 6 1/2 in (rk)",
        "the car came with a 6 1/2 in (not signed)",
    ]
