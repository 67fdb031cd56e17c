"""Questions at the terminal: one in words, or a file of them, each with its answer or the reason why there is none."""

import json
from io import BytesIO, TextIOWrapper
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator

from tests.cli.conftest import STOPPED, WENT_IN, Run, Write

RIGHT = {"vehicle": "hatch-2", "place": "dash", "splits": {"build": "late"}, "what": "short"}


@pytest.fixture
def answers(root: Path) -> Draft202012Validator:
    """What an answer has to look like, as it is told to other programs."""
    schema = json.loads((root / "schema" / "answer.schema.json").read_text("utf-8"))
    Draft202012Validator.check_schema(schema)
    return Draft202012Validator(schema)


def lines(out: str) -> list[dict[str, Any]]:
    return [json.loads(line) for line in out.splitlines()]


# --- in words ---


def test_no_answer_carries_what_is_to_be_withheld(run: Run, write: Write, tmp_path: Path) -> None:
    """Source of the numbers: 555-01xx is kept for invented people in the North American plan (from memory)."""
    write(**{"notes/2026/went-in.yaml": f"{WENT_IN}words: Ring him on 555-0123 first. Plate AB12 CDE.\n"})
    (tmp_path / "asked.jsonl").write_text(json.dumps(RIGHT))
    words = ("short", "one", "late", "hatch", "radio", "hole")
    for asked in (words, (*words, "--format", "json"), ("--batch", "asked.jsonl")):
        ran = run("ask", *asked)
        assert "withheld: a phone number" in ran.out
        assert "withheld: a plate" in ran.out
        assert "555-0123" not in ran.said
        assert "AB12" not in ran.said


def test_an_answer_comes_in_the_order_in_which_a_counter_needs_it(run: Run, write: Write) -> None:
    write()
    ran = run("ask", "short", "one", "late", "hatch", "radio", "hole")
    assert ran.code == 0
    said = ran.out.splitlines()
    assert said[0] == "GOES IN"
    assert said[1].startswith(
        "short one in the radio hole of the Compact hatch, second generation, late, with no mount"
    )
    assert ": it asks " in said[2] or said[2].startswith("plug and body together ask ")
    assert said[3] == "fitted, 1 independent job"
    assert said[-1].startswith("note went-in, carries the answer: short one: goes in")


def test_how_a_bare_number_was_read_stands_first(run: Run, write: Write) -> None:
    write()
    assert run("ask", "hatch dash 6.5").out.splitlines()[0] == "6.5 read as in; cm would be 6.5 cm"


def test_what_is_left_open_is_asked_with_its_answers(run: Run, write: Write) -> None:
    write()
    ran = run("ask", "short", "hatch")
    assert ran.code == 0
    assert ran.out == "Which place?\n  radio hole\n  roof slot\n"


def test_one_answer_as_json_has_the_promised_shape(run: Run, write: Write, answers: Draft202012Validator) -> None:
    write()
    plain = json.loads(run("ask", "--format", "json", "short hatch dash late").out)
    answers.validate(plain)
    assert plain["for"]["splits"] == {"build": "late"}
    told = json.loads(run("ask", "--format", "json", "hatch dash 110").out)
    assert told.pop("took") == ["110 read as mm"]
    answers.validate(told)


def test_a_choice_as_json_is_what_to_ask_and_the_words_that_say_it(run: Run, write: Write) -> None:
    write()
    plain = json.loads(run("ask", "--format", "json", "short hatch").out)
    assert plain == {"ask": "Which place?", "options": [["radio hole", "dash"], ["roof slot", "pod"]]}


WEIRD = [
    "",
    " ",
    "?",
    "🚗 🔊 dash?",
    "ﷺ İ ẞ ſ K",
    "\x00\x07\x1b[31m",
    "\udcff\ud800",
    "'; rm -rf / --",
    "{{ 7*7 }} <script>",
    "9" * 5000,
    "1/" * 5000,
    "word " * 20_000,
    "½ ½ ½",
    "hatch -5 mm dash",
    "hatch dash 1e400 deep",
    "hatch dash ١٦٥ mm",
]


@pytest.mark.parametrize("words", WEIRD, ids=range(len(WEIRD)))
def test_whatever_is_typed_is_answered_or_asked_about(run: Run, write: Write, words: str) -> None:
    write()
    assert run("ask", words).code == 0


def test_a_question_in_pieces_is_one_question(run: Run, write: Write) -> None:
    write()
    assert run("ask", "short", "hatch", "dash", "late") == run("ask", "short hatch dash late")


# --- a file of questions ---


def test_every_line_that_is_not_blank_is_answered_in_its_order(
    run: Run, write: Write, tmp_path: Path, answers: Draft202012Validator
) -> None:
    write()
    asked = [RIGHT, {**RIGHT, "what": {"depth": "300 mm"}}, {"words": "short hatch dash late"}, {"words": "short"}]
    texts = [json.dumps(one) for one in asked]
    (tmp_path / "q.jsonl").write_bytes("\ufeff".encode() + "\r\n\r\n  \r\n".join(texts).encode())
    ran = run("ask", "--batch", "q.jsonl")
    assert ran.code == 0
    first, second, third, fourth = lines(ran.out)
    for answer in (first, second, third):
        answers.validate(answer)
    assert [first["verdict"], second["for"]["what"], third["verdict"]] == ["goes in", "300 mm", "goes in"]
    assert fourth["ask"] == "Which vehicle?"


WRONG_LINES: dict[bytes, tuple[str, str]] = {
    b"{bad": ("this line is not JSON", "Write one question a line"),
    b"": ("", ""),
    b"\xff\xfe\x00": ("this line is not UTF-8 text", "Save the file as UTF-8"),
    b"[1, 2]": ("a question is a set of keys and values", 'Write {"vehicle"'),
    b"null": ("a question is a set of keys and values", ""),
    b'"short hatch dash"': ("a question is a set of keys and values", ""),
    b"[" * 100_000: ("this line is not JSON", ""),
    b'{"a":' * 100_000: ("this line is not JSON", ""),
    b'{"year": ' + b"9" * 5000 + b"}": ("this line is not JSON", ""),
    b'{"vehicle": "hatch-3", "place": "dash", "what": "short"}': (
        'the book has no vehicle "hatch-3"',
        'Did you mean "hatch-2"?',
    ),
    b'{"vehicle": "hatch-2", "place": "dahs", "what": "short"}': (
        'the book has no place of hatch-2 "dahs"',
        'Did you mean "dash"?',
    ),
    b'{"vehicle": "\\ud800", "place": "dash"}': ('the book has no vehicle "', "One of: hatch-2"),
    b'{"vehicle": "hatch-2", "place": "dash", "what": {"depth": 165}}': ("depth is a bare number, 165", '"165 mm" or'),
    b'{"vehicle": "hatch-2", "place": "dash", "what": {"depth": NaN}}': ("depth is a bare number, nan", ""),
    b"\x00": ("this line is not JSON", ""),
}


def test_a_line_that_is_wrong_says_so_and_stops_nothing(run: Run, write: Write, tmp_path: Path) -> None:
    write()
    wrong = [line for line in WRONG_LINES if line]
    right = json.dumps(RIGHT).encode()
    (tmp_path / "q.jsonl").write_bytes(b"\n".join(part for line in wrong for part in (line, right)))
    ran = run("ask", "--batch", "q.jsonl")
    assert ran.code == 3
    told = lines(ran.out)
    assert [one["verdict"] for one in told[1::2]] == ["goes in"] * len(wrong)
    for number, (line, one) in enumerate(zip(wrong, told[::2], strict=True)):
        what, mend = WRONG_LINES[line]
        assert one["line"] == 2 * number + 1
        assert one["wrong"].startswith(what)
        assert mend in one["mend"]


def test_questions_may_come_from_stdin(run: Run, write: Write, monkeypatch: pytest.MonkeyPatch) -> None:
    write()
    typed = json.dumps(RIGHT).encode() + b"\n\xff\n" + json.dumps(RIGHT).encode()
    monkeypatch.setattr("sys.stdin", TextIOWrapper(BytesIO(typed), encoding="utf-8"))
    told = lines(run("ask", "--batch", "-").out)
    assert ["verdict" in one for one in told] == [True, False, True]


def test_a_book_with_an_unread_file_still_answers_and_ends_with_2(run: Run, write: Write, tmp_path: Path) -> None:
    write(**{"notes/2026/b.yaml": "form: tried\n"})
    (tmp_path / "q.jsonl").write_text(json.dumps(RIGHT), "utf-8")
    for ran in (run("ask", "short hatch dash late"), run("ask", "--batch", "q.jsonl")):
        assert ran.code == 2
        assert "goes in" in ran.out.lower()
        assert "some files could not be read and are left out. bezelbook check names them." in ran.err


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        ([], "ask takes a question in words, or --batch and a file"),
        (["short", "--batch", "q.jsonl"], "ask takes a question in words, or --batch and a file"),
        (["--batch", "nowhere.jsonl"], "nowhere.jsonl cannot be read: No such file or directory. Name a text file"),
        (["--batch", "kb"], "kb cannot be read: Is a directory. Name a text file"),
        (["--book", "nowhere", "x"], "there is no book in nowhere. Start one with bezelbook start"),
    ],
)
def test_wrong_use_ends_with_3_and_what_would_mend_it(run: Run, write: Write, arguments: list[str], said: str) -> None:
    write()
    ran = run("ask", *arguments)
    assert (ran.code, ran.out) == (3, "")
    assert ran.err.startswith(f"bezelbook: {said}")


def test_an_empty_file_of_questions_has_no_answers(run: Run, write: Write, tmp_path: Path) -> None:
    write()
    (tmp_path / "q.jsonl").write_bytes(b"\xef\xbb\xbf\n \n")
    assert run("ask", "--batch", "q.jsonl").said == ""


def test_an_argued_answer_says_what_to_do_until_it_is_settled(run: Run, write: Write) -> None:
    write(**{"notes/2026/stopped.yaml": STOPPED})
    said = run("ask", "short hatch dash late").out.splitlines()
    assert said[:2] == ["ARGUED OVER", "until settled: does not"]
    assert sum(line.startswith("argued over: ") for line in said) == 2


# --- the books that are there ---


def test_every_answer_of_the_published_book_has_the_promised_shape(
    run: Run, kb: Path, tmp_path: Path, answers: Draft202012Validator
) -> None:
    from bezelbook.pipeline import open_book  # noqa: PLC0415 - only this test looks at a book itself
    from bezelbook.reasoning.vocabulary import OPENINGS  # noqa: PLC0415

    book = open_book(kb).base
    openings = [(v.id, p) for v in book.vehicles.values() for p, place in v.places.items() if place.kind in OPENINGS]
    things: list[Any] = [*book.head_units, {"depth": "165 mm"}, {"width": "178 mm", "depth": "6 1/2 in"}]
    asked = [{"vehicle": v, "place": p, "what": thing} for v, p in openings for thing in things]
    (tmp_path / "q.jsonl").write_text("\n".join(map(json.dumps, asked)), "utf-8")
    ran = run("ask", "--book", kb, "--batch", "q.jsonl")
    assert ran.code == 0
    told = lines(ran.out)
    assert len(told) == len(asked)
    for answer in told:
        answers.validate(answer)
