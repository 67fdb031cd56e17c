"""How commands end, and what they share."""

import pytest

from bezelbook.cli.outcome import (
    ALL_READ,
    STOP_STANDS,
    UNREAD,
    WRONG_USE,
    as_json,
    as_text,
    counted,
    ending,
    fail,
    opened,
    warn_unread,
)
from bezelbook.values.complaint import Wrong
from tests.cli.conftest import Write


def test_the_exit_codes_are_those_of_the_design() -> None:
    assert (ALL_READ, STOP_STANDS, UNREAD, WRONG_USE) == (0, 1, 2, 3)


@pytest.mark.parametrize(("number", "words"), [(0, "0 files"), (1, "1 file"), (2, "2 files"), (1000, "1000 files")])
def test_things_are_counted_as_a_person_does(number: int, words: str) -> None:
    assert counted(number, "file") == words


def test_lines_data_and_complaints_about_a_call_are_told_as_they_may_be_shown(
    capsys: pytest.CaptureFixture[str],
) -> None:
    assert as_text(["a", "25 Nm"]) == "a\nwithheld: a tightening figure"
    assert (
        as_json({"note": "a-note", "words": "25 Nm"}) == '{"note": "a-note", "words": "withheld: a tightening figure"}'
    )
    fail("25 Nm")
    assert capsys.readouterr().err == "bezelbook: withheld: a tightening figure\n"


def test_a_book_that_was_read_whole_ends_with_0_and_in_silence(
    write: Write, capsys: pytest.CaptureFixture[str]
) -> None:
    book = opened(write())
    warn_unread(book)
    assert ending(book) == 0
    assert capsys.readouterr().err == ""


def test_a_book_with_a_file_left_out_ends_with_2_and_says_so_on_the_side(
    write: Write, capsys: pytest.CaptureFixture[str]
) -> None:
    book = opened(write(**{"notes/2026/b.yaml": "form: tired\n"}))
    warn_unread(book)
    assert ending(book) == 2
    said = capsys.readouterr()
    assert said.out == ""
    assert said.err.startswith("1 complaint: some files could not be read")


def test_no_folder_is_no_book(write: Write) -> None:
    with pytest.raises(Wrong, match="there is no book in"):
        opened(write() / "shop.yaml")
