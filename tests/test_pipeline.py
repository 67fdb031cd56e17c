"""From a folder to checked knowledge and answers: what the command and the site both stand on."""

import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest
from jsonschema import Draft202012Validator

from bezelbook.checking import rules
from bezelbook.kinds import KINDS
from bezelbook.pipeline import (
    Counter,
    every_schema,
    knowledge,
    knowledge_of,
    open_book,
    site_files,
    stale,
    write_pages,
    write_schemas,
)
from bezelbook.reasoning.answer import Answer
from bezelbook.reasoning.words import Choice
from bezelbook.values.complaint import Wrong

QUESTION = {"vehicle": "compact-hatch-2", "place": "centre-dash", "splits": {"build": "late"}}


@pytest.fixture(scope="module")
def counter(request: pytest.FixtureRequest) -> Counter:
    return Counter(open_book(request.getfixturevalue("worked_book")).base)


def verdict(found: Mapping[str, Any]) -> str:
    return str(found["verdict"])


# --- opening a book ---


def test_an_opened_book_is_read_indexed_and_checked(worked_book: Path) -> None:
    book = open_book(worked_book)
    assert book.loaded.complaints == ()
    assert len(book.base.notes) == 7
    assert {"depth-ladder-reversed", "unit-slip"} <= {finding.rule for finding in book.findings}


def test_what_was_kept_gives_the_same_findings(worked_book: Path) -> None:
    first = open_book(worked_book)
    assert open_book(worked_book, first.checked.kept).findings == first.findings


def test_a_finding_is_traced_to_the_lines_of_its_notes(worked_book: Path) -> None:
    """Counted in the files by hand."""
    book = open_book(worked_book)
    by_rule = {finding.rule: finding for finding in book.findings}
    ladder, slip = by_rule["depth-ladder-reversed"], by_rule["unit-slip"]
    assert [at.rpartition("/")[2] for at in book.places_of(ladder)] == [
        "c-deeper-they-say.yaml:8:10",
        "b-deep-does-not.yaml:9:10",
    ]
    assert [at.rpartition("/")[2] for at in book.places_of(slip)] == ["e-six-and-a-half.yaml:9:16"]


def test_a_folder_that_is_not_there_is_an_empty_book_with_a_complaint(tmp_path: Path) -> None:
    book = open_book(tmp_path / "nowhere")
    assert (book.loaded.records, book.findings) == ((), ())
    assert [complaint.what for complaint in book.loaded.complaints] == ["there is no book here"]


# --- what there is to publish ---


def test_everything_to_publish_comes_with_every_rule_and_its_cases(worked_book: Path) -> None:
    found = knowledge_of(worked_book)
    assert found == knowledge(open_book(worked_book))
    assert [page.name for page in found.rules] == [rule.name for rule in rules()]
    assert all(page.cases and page.title and page.says for page in found.rules)
    assert found.findings == open_book(worked_book).findings
    assert found.left_out == ()


def test_the_date_is_that_of_the_newest_note_unless_another_is_given(worked_book: Path, tmp_path: Path) -> None:
    assert knowledge_of(worked_book).today == "2026-03-05"
    assert knowledge_of(worked_book, "2026-12-24").today == "2026-12-24"
    assert knowledge_of(tmp_path).today == "no date"


def test_a_file_that_cannot_be_read_is_said_as_one_line(tmp_path: Path) -> None:
    (tmp_path / "shop.yaml").write_text("name: [\n", "utf-8")
    [line] = knowledge_of(tmp_path).left_out
    assert "shop.yaml:" in line
    assert "\n" not in line


def test_the_pages_that_are_written_are_the_pages_that_there_are(worked_book: Path, tmp_path: Path) -> None:
    book = open_book(worked_book)
    files = {file.path: file.text for file in site_files(knowledge(book, "2026-06-01"))}
    assert write_pages(book, tmp_path / "out", "2026-06-01") == len(files)
    written = {
        path.relative_to(tmp_path / "out").as_posix(): path.read_text("utf-8")
        for path in (tmp_path / "out").rglob("*")
        if path.is_file()
    }
    assert written == files


def test_there_is_a_schema_for_every_kind_and_one_for_an_answer(tmp_path: Path) -> None:
    kinds = {f"{kind.name}.schema.json" for kind in KINDS.values()}
    names = kinds | {"answer.schema.json", "wiring_answer.schema.json"}
    assert every_schema().keys() == names
    write_schemas(tmp_path, every_schema())
    assert stale(tmp_path, every_schema()) == ()


# --- answering ---


def test_the_worked_depths_get_their_worked_verdicts(counter: Counter) -> None:
    """Trade 13, for sizes typed with ± 1 mm and the kit flush."""
    state = {"state": {"mounts": ["flush-kit"]}}
    wanted = {"110": "goes in if", "146": "goes in if", "150": "too close", "154": "does not", "170": "does not"}
    asked = {depth: {**QUESTION, **state, "what": {"depth": f"{depth} ± 1 mm"}} for depth in wanted}
    assert {depth: verdict(counter.ask(one)) for depth, one in asked.items()} == wanted
    assert verdict(counter.ask({**QUESTION, **state, "what": "two-high-a"})) == "goes in"


def test_every_answer_has_the_promised_shape(counter: Counter) -> None:
    validator = Draft202012Validator(json.loads(every_schema()["answer.schema.json"]))
    things: list[Any] = [*counter.base.head_units, {"depth": "165 mm"}, {"width": "1 in", "like": "two-high-a"}]
    for thing in things:
        for splits in ({}, {"build": "early"}, {"build": "late"}):
            validator.validate(counter.ask({**QUESTION, "splits": splits, "what": thing}))


def test_words_and_plain_data_get_one_answer(counter: Counter) -> None:
    found, took = counter.ask_words("hatch 2 late two-high A flush kit")
    assert isinstance(found, Answer)
    assert took == ()
    data = {**QUESTION, "what": "two-high-a", "state": {"mounts": ["flush-kit"]}}
    assert found.plain() == counter.ask(data) == counter.ask({"words": "hatch 2 late two-high A flush kit"})


def test_how_bare_numbers_were_read_goes_with_the_answer_and_with_what_is_asked(counter: Counter) -> None:
    assert counter.ask({"words": "hatch 2, 6.5 deep"})["took"] == ["6.5 read as in; cm would be 6.5 cm"]
    asked = counter.ask({"words": "hatch 2, 18 wide"})
    assert asked.pop("known")
    assert asked == {"ask": "How deep is it?", "options": [], "took": ["18 read as cm"]}
    assert "took" not in counter.ask({"words": "hatch 2 two-high A"})


def test_what_is_left_open_is_asked(counter: Counter) -> None:
    found, _ = counter.ask_words("two-high A")
    assert found == Choice("Which vehicle?", (("compact hatch, generation 2", "compact hatch 2"),))
    assert counter.ask({"words": "two-high A"}) == {
        "ask": "Which vehicle?",
        "options": [["compact hatch, generation 2", "compact hatch 2"]],
    }


def test_what_cannot_be_read_is_refused_with_a_mend(counter: Counter) -> None:
    with pytest.raises(Wrong, match="Did you mean"):
        counter.ask({**QUESTION, "what": "two-high-b"})


def test_a_batch_answers_line_by_line_without_reading_ahead(counter: Counter) -> None:
    def lines() -> Any:
        yield json.dumps({**QUESTION, "what": "two-high-a"}).encode()
        yield b"  "
        yield b"not json"
        pytest.fail("it read ahead")

    answers = counter.batch(lines())
    assert "verdict" in next(answers)
    assert next(answers)["line"] == 3
