"""What a shop sees when it checks its book: every mistake at its place, what cannot both be true, and how it ends."""

import json
from pathlib import Path

import pytest

from tests.cli.conftest import STOPPED, TRIED, Ran, Run, Write

BROKEN = """\
form: tried
vehicle: hatch-2
place: dash
what: short
verdict: goes inn
sure: fitted
reson: depth
date: 2026-02-30
sizes: {depth: 165}
loom: [aside]
"""


def test_a_book_without_a_fault_is_read_and_ends_with_0(run: Run, write: Write) -> None:
    write()
    assert run("check") == Ran(0, "7 records read; 0 findings.\n", "")
    assert run("check", "--strict").code == 0


def test_five_mistakes_in_one_record_are_five_complaints_at_their_places(run: Run, write: Write) -> None:
    write(**{"notes/2026/broken.yaml": BROKEN})
    ran = run("check")
    told = [line for line in ran.out.splitlines() if line.startswith("kb/")]
    places = [line.split(": ")[0] for line in told]
    here = "kb/notes/2026/broken.yaml"
    assert places == [f"{here}:5:10", f"{here}:7:1", f"{here}:8:7", f"{here}:9:16", f"{here}:10:7"]
    assert ran.code == 2
    assert ran.out.endswith("7 records read, 1 file left out; 0 findings.\n")
    assert all(line.count(". ") >= 1 for line in told)
    assert "goes in" in told[0]
    assert "reason" in told[1]
    assert "165 mm" in told[3]
    assert "165 in" in told[3]


def test_two_files_that_cannot_be_read_are_told_in_one_run_and_the_rest_is_checked(run: Run, write: Write) -> None:
    write(**{"notes/2026/stopped.yaml": STOPPED, "notes/2026/b.yaml": b"\xff\xfe\x00", "mounts/kit.yaml": "name: [\n"})
    ran = run("check")
    assert ran.code == 2
    assert "kb/notes/2026/b.yaml:1:1: this is not UTF-8 text. Save the file as UTF-8.\n" in ran.out
    assert "kb/mounts/kit.yaml:" in ran.out
    assert ran.out.endswith("8 records read, 2 files left out; 1 finding.\n")


def test_what_cannot_both_be_true_is_put_as_a_question_with_both_notes(run: Run, write: Write) -> None:
    write(**{"notes/2026/stopped.yaml": STOPPED})
    ran = run("check")
    assert ran.code == 0
    assert ran.out.startswith(
        "stop: Compact hatch, second generation, radio hole: one and the same thing is said to go in and not to go in"
    )
    assert "  kb/notes/2026/went-in.yaml:13:10: short one: goes in" in ran.out
    assert "  kb/notes/2026/stopped.yaml:12:10: short one: does not" in ran.out
    assert "What differs?" in ran.out


def test_with_strict_a_stop_ends_with_1_and_an_unread_file_still_with_2(run: Run, write: Write) -> None:
    write(**{"notes/2026/stopped.yaml": STOPPED})
    assert run("check", "--strict").code == 1
    write(**{"notes/2026/stopped.yaml": STOPPED, "notes/2026/b.yaml": "form: tried\n"})
    assert run("check", "--strict").code == 2


def test_with_strict_what_does_not_say_stop_ends_with_0(run: Run, write: Write) -> None:
    slip = TRIED.replace("mounts: none\n", "") + "what: box\nsizes: {depth: 6.5 mm}\nverdict: goes in\nsure: fitted\n"
    write(**{"notes/2026/slip.yaml": slip})
    ran = run("check", "--strict")
    assert ran.out.startswith(
        "look first: Compact hatch, second generation, radio hole: depth 6.5 mm is outside the usual 20 to 220 mm"
    )
    assert ran.code == 0


def test_a_program_reads_complaints_and_findings_as_json(run: Run, write: Write) -> None:
    write(**{"notes/2026/stopped.yaml": STOPPED, "notes/2026/broken.yaml": BROKEN})
    ran = run("check", "--format", "json")
    told = json.loads(ran.out)
    assert told.keys() == {"records", "complaints", "findings"}
    assert told["records"] == 8
    assert [complaint["line"] for complaint in told["complaints"]] == [5, 7, 8, 9, 10]
    assert told["complaints"][0].keys() == {"path", "line", "column", "what", "mend"}
    [finding] = [one for one in told["findings"] if one["rule"] == "depth-ladder-reversed"]
    assert finding["weight"] == "stop"
    assert finding["places"] == ["kb/notes/2026/went-in.yaml:13:10", "kb/notes/2026/stopped.yaml:12:10"]
    assert [(quote["kind"], quote["id"]) for quote in finding["quotes"]] == [("note", "went-in"), ("note", "stopped")]
    assert ran.code == 2


def test_a_note_is_found_again_even_below_a_folder_called_notes(run: Run, write: Write, tmp_path: Path) -> None:
    """A vehicle of the same name as a note is not taken for it."""
    write(**{"notes/2026/hatch-2.yaml": STOPPED})
    (tmp_path / "notes").mkdir()
    (tmp_path / "kb").rename(tmp_path / "notes" / "kb")
    ran = run("check", "--book", "notes/kb")
    assert "  notes/kb/notes/2026/hatch-2.yaml:12:10: short one: does not" in ran.out


def test_a_book_is_named_from_anywhere(run: Run, write: Write, tmp_path: Path) -> None:
    book = write()
    (tmp_path / "elsewhere").mkdir()
    assert run("check", "--book", book).out.endswith("7 records read; 0 findings.\n")


@pytest.mark.parametrize("day", ["2026-02-28", "2000-02-29"])
def test_a_day_of_the_calendar_may_be_today(run: Run, write: Write, day: str) -> None:
    write()
    assert run("check", "--today", day).code == 0


def test_the_published_book_is_read_whole(run: Run, kb: Path) -> None:
    assert run("check", "--book", kb).code == 0


def test_the_worked_book_tells_of_the_ladder_and_of_the_slip(run: Run, worked_book: Path) -> None:
    """Trade 13: note c contradicts b, and e is a slip of the unit."""
    told = json.loads(run("check", "--book", worked_book, "--format", "json").out)
    found = {finding["rule"]: [quote["id"] for quote in finding["quotes"]] for finding in told["findings"]}
    assert found["depth-ladder-reversed"] == ["c-deeper-they-say", "b-deep-does-not"]
    assert found["unit-slip"] == ["e-six-and-a-half"]


def test_an_empty_book_is_a_book(run: Run, tmp_path: Path) -> None:
    (tmp_path / "kb").mkdir()
    assert run("check").said == "0 records read; 0 findings.\n"
