"""A note as one line: its own words and numbers, and the blanks that matter said to be blank."""

from typing import Any

import pytest

from bezelbook.kinds.note.record import Measured
from bezelbook.reasoning.quote import quote, reading_words
from tests.reasoning.making import CAR, HOLE, book, measured, reading, record, tried, unit

AT = {"vehicle": CAR, "place": HOLE}


def line(**content: object) -> str:
    return quote(book(unit(name="two-high A")), tried(**content))


def test_a_tried_note_says_what_with_which_verdict_in_which_state() -> None:
    assert line() == "two-high A: goes in [no mount, nothing cut, loom aside]"


def test_what_has_no_record_is_said_in_the_note_s_own_words_and_sizes_as_typed() -> None:
    said = line(
        what="a disc double", sizes={"depth": "6-1/2 in ± 1/16 in", "nose_width": "180 mm", "plug_exit": "left"}
    )
    assert said.startswith("a disc double (depth 6-1/2 in ± 1/16 in, nose width 180 mm): goes in")


def test_a_no_says_why_where_and_what_it_hit() -> None:
    said = line(verdict="does not", reason="depth", where=["lower-left", "lower"], hit="heater duct")
    assert "does not, because of depth at the lower-left and lower, hits the heater duct [" in said


def test_a_condition_and_the_author_s_words_are_kept() -> None:
    said = line(verdict="goes in if", condition="the tabs are broken out", words="Sits straight.")
    assert said.startswith("two-high A: goes in if the tabs are broken out [")
    assert said.endswith("] – Sits straight.")


def test_the_state_is_said_as_far_as_it_was_written_down() -> None:
    splits = {"build": "late", "audio": "base"}
    said = line(splits=splits, mounts=["ring", "kit"], cut="one rib", loom="behind")
    assert said.endswith("[base, late, ring and kit, one rib cut, loom behind]")


def test_at_a_place_for_a_speaker_its_tabs_its_glass_and_its_gasket_are_said() -> None:
    of = book(record("speakers", "slim", {"name": "Slim six", "speaker_kind": "coaxial", "nominal": "6 1/2 in"}))
    note = tried(what="slim", plugs=None, loom=None, tabs="in", glass="down", gasket="none")
    assert quote(of, note) == "Slim six: goes in [no mount, nothing cut, tabs in, glass down, gasket none]"


def test_mounts_left_blank_are_said_to_be_blank() -> None:
    assert line(mounts=None, cut=None, loom=None).endswith("[mounts not said]")


def test_of_a_note_with_fields_of_many_sorts_only_what_is_asked_about_is_said() -> None:
    seen = record("notes", "s", {**AT, "form": "seen", "plug": "long 20", "membrane": "there", "words": "Dusty."})
    assert quote(book(), seen, ("plug",)) == "plug long 20 – Dusty."
    assert quote(book(), seen, ("grille",)) == quote(book(), seen) == "plug long 20; membrane there – Dusty."


def test_readings_are_said_one_after_the_other() -> None:
    note = measured(
        "m",
        reading("depth", "150 ± 3 mm", "lower-left", "lower", hits="heater duct"),
        reading("width", "182 mm", tool=None),
        splits={"build": "late"},
    )
    assert quote(book(), note) == (
        "depth lower-left and lower 150 ± 3 mm from the sub-dash face to the heater duct by wire; width 182 mm [late]"
    )
    assert quote(book(), measured("m", reading("width", "182 mm", tool=None))) == "width 182 mm"
    said = quote(book(), measured("m", reading("width", "182 mm", tool=None), words="Between the ribs."))
    assert said == "width 182 mm – Between the ribs."


def test_a_reading_of_the_whole_opening_says_everywhere() -> None:
    note: Measured = measured("m", reading("depth", "205 mm", datum=None, tool=None))
    assert reading_words(note.readings[0]) == "depth everywhere 205 mm"


@pytest.mark.parametrize(
    ("content", "said"),
    [
        ({"form": "bench", "part": "box"}, "part box"),
        ({"form": "bench", "part": "box", "words": "A long plug."}, "part box – A long plug."),
        ({"form": "seen", **AT}, "seen"),
        ({"form": "seen", **AT, "words": "Dark in there."}, "seen – Dark in there."),
        ({"form": "seen", **AT, "plug": "long 20", "splits": {"build": "late"}}, "plug long 20 [late]"),
    ],
)
def test_any_other_note_is_what_its_author_filled_in_and_their_words(content: dict[str, Any], said: str) -> None:
    assert quote(book(), record("notes", "b", content)) == said
