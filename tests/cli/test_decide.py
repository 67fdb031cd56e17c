"""What the team settled is written down in one command, all of it or nothing."""

import json
import shlex
from datetime import date
from pathlib import Path

import pytest

from tests.cli.conftest import STOPPED, Run, Write

KEY = "deeper-yes-left-open/hatch-2/dash/depth"
STRIKE = ("one-stands", "--strike", "went-in", "he sold it the next day", "--reason", "it never was in")


@pytest.fixture
def book(write: Write) -> Path:
    """A book in which one and the same thing goes in and does not."""
    return write(**{"notes/2026/stopped.yaml": STOPPED.replace("loom: aside\n", "")})


def keys(run: Run) -> list[str]:
    return [finding["key"] for finding in json.loads(run("check", "--format", "json").out)["findings"]]


def files(book: Path) -> dict[str, bytes]:
    return {path.relative_to(book).as_posix(): path.read_bytes() for path in sorted(book.rglob("*.yaml"))}


def test_a_loser_is_struck_and_the_question_is_off_the_list(run: Run, book: Path) -> None:
    ran = run("decide", KEY, *STRIKE, "--author", "rk", "--today", "2026-05-04", "--name", "he-sold-it")
    assert ran.out.splitlines() == [
        "Written to kb/decisions/he-sold-it.yaml.",
        "The question is off the list: bezelbook check no longer raises it.",
    ]
    text = (book / "decisions" / "he-sold-it.yaml").read_text()
    assert f"question: {KEY}" in text
    assert "said: " in text
    assert "author: rk" in text
    assert "2026-05-04" in text
    assert KEY not in keys(run)


def test_a_blank_is_filled_and_both_are_true(run: Run, book: Path) -> None:
    ran = run("decide", KEY, "both-true", "--differs", "loom", "--read", "stopped", "loom=behind", "--reason", "asked")
    assert ran.code == 0
    assert "off the list" in ran.out
    assert (book / "decisions" / "deeper-yes-left-open-hatch-2-dash-depth.yaml").is_file()


def test_without_a_day_it_is_dated_today(run: Run, book: Path) -> None:
    before = date.today().isoformat()  # noqa: DTZ011
    run("decide", KEY, *STRIKE, "--name", "d")
    text = (book / "decisions" / "d.yaml").read_text()
    assert before in text or date.today().isoformat() in text  # noqa: DTZ011


def test_whoever_goes_and_looks_leaves_the_question_on_the_list(run: Run, book: Path) -> None:
    del book
    look = ("--look", "offer it up again", "--who", "rk", "--next-car", "next late hatch", "--takes", "10 min")
    ran = run("decide", KEY, "go-and-look", "--reason", "nobody knows", *look)
    assert "stays on the list" in ran.out
    assert KEY in keys(run)


def test_a_second_decision_about_a_question_gets_a_name_of_its_own(run: Run, book: Path) -> None:
    for _ in range(2):
        assert run("decide", KEY, "no-problem", "--reason", "we know").code == 0
    assert len(list((book / "decisions").glob("*.yaml"))) == 2


def test_a_new_split_is_written_with_its_tells_in_the_same_step(run: Run, book: Path) -> None:
    split = ("--new-split", "hatch-2", "screen", "small=a knob beside the radio", "large=no knob")
    read = ("--read", "went-in", "splits.screen=small", "--read", "stopped", "splits.screen=large", "year=3")
    ran = run("decide", KEY, "both-true", "--differs", "display", "--reason", "two dashes", *split, *read)
    assert "off the list" in ran.out
    vehicle = (book / "vehicles" / "hatch-2.yaml").read_text()
    assert "tell: a knob beside the radio" in vehicle
    assert "early" in vehicle
    assert "also: [hatch two]" in vehicle


def test_a_loser_without_a_why_of_its_own_is_struck_for_the_reason(run: Run, book: Path) -> None:
    run("decide", KEY, "one-stands", "--strike", "went-in", "--reason", "it never was in", "--name", "d")
    assert "because: it never was in" in (book / "decisions" / "d.yaml").read_text()


def test_the_line_that_check_prints_settles_it_once_its_gaps_are_filled(run: Run, write: Write) -> None:
    write(**{"notes/2026/stopped.yaml": STOPPED.replace("loom: aside\n", "")})
    [line] = [line for line in run("check").out.splitlines() if line.startswith("  settle: ")]
    words = shlex.split(line.removeprefix("  settle: bezelbook "))
    assert run(*words).err.startswith("bezelbook: the line still has … in it")
    filled = [word.replace("loom=…", "loom=behind").replace("…", "asked") for word in words]
    assert "loom=behind" in filled
    assert "off the list" in run(*filled).out
    assert "settle: " not in run("check").out


WHY = ("--reason", "r")
WRONG = {
    "a question that nothing raises": ("no-such/question", *STRIKE),
    "a key with a slip": (KEY.replace("deeper-yes", "deper-yes"), *STRIKE),
    "a note that is not there": (KEY, *STRIKE[:2], "went-inn", *STRIKE[3:]),
    "a blank that its author filled": (KEY, "both-true", "--read", "went-in", "loom=behind", *WHY),
    "a field that says nothing": (KEY, "both-true", "--read", "stopped", "loom", *WHY),
    "a word that is none of the field's": (KEY, "both-true", "--read", "stopped", "loom=left", *WHY),
    "a look without saying what": (KEY, "go-and-look", "--who", "rk", *WHY),
    "a split of one value": (KEY, "both-true", "--new-split", "hatch-2", "s", "a=b", *WHY),
    "a split of no vehicle": (KEY, "both-true", "--new-split", "van", "s", "a=b", "c=d", *WHY),
    "a split that is there": (KEY, "both-true", "--new-split", "hatch-2", "build", "a=b", "c=d", *WHY),
    "a split with a name that is none": (
        KEY,
        "both-true",
        "--new-split",
        "hatch-2",
        "S T",
        "a=b",
        "c=d",
        "--reason",
        "r",
    ),
    "a name that is none": (KEY, *STRIKE, "--name", "Not A Name"),
}


@pytest.mark.parametrize("words", WRONG.values(), ids=WRONG)
def test_what_is_wrong_is_said_and_nothing_is_written(run: Run, book: Path, words: tuple[str, ...]) -> None:
    before = files(book)
    ran = run("decide", *words)
    assert ran.code == 3
    assert ran.err.startswith("bezelbook: ")
    assert files(book) == before


def test_a_near_miss_is_suggested(run: Run, book: Path) -> None:
    del book
    assert f'Did you mean "{KEY}"?' in run("decide", *WRONG["a key with a slip"]).err
    assert "Did you mean went-in?" in run("decide", *WRONG["a note that is not there"]).err


def test_a_name_is_taken_once(run: Run, book: Path) -> None:
    del book
    assert run("decide", KEY, "no-problem", "--reason", "r", "--name", "d").code == 0
    assert (
        "there is a decision called d already" in run("decide", KEY, "no-problem", "--reason", "r", "--name", "d").err
    )


def test_a_split_is_not_written_from_inside_the_book(run: Run, book: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    before = files(book)
    monkeypatch.chdir(book)
    ran = run("decide", KEY, "both-true", "--new-split", "hatch-2", "s", "a=b", "c=d", "--reason", "r", "--book", ".")
    assert "this runs inside it" in ran.err
    assert files(book) == before
