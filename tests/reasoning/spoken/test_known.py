"""What is known of a place is told where a question leaves something open (the trade's doors, trade.md 13)."""

from pathlib import Path

from bezelbook.pipeline import Choice, Counter, knowledge_of
from bezelbook.reasoning.speakers.rooms import speaker_place_of
from bezelbook.reasoning.spoken.known import NOTHING, known_at


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
