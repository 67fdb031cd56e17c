"""A file's text becomes a record, or everything that is wrong with it with its place."""

import pytest

from bezelbook.kinds import Kind
from bezelbook.store.record_text import read_record
from bezelbook.values.complaint import sentences
from tests.store.toys import BOX, LOG, Box, Seen

SOUND = "name: n\nverdict: goes in\n"


def said(kind: Kind, text: str) -> list[str]:
    record, faults = read_record(text.encode(), kind, "x")
    assert record is None
    return [f"{fault.line}:{fault.column}: {sentences(fault.what, fault.mend)}" for fault in faults]


def test_the_file_s_name_is_the_id() -> None:
    record, faults = read_record(SOUND.encode(), BOX, "some-box")
    assert faults == ()
    assert isinstance(record, Box)
    assert (record.id, record.name) == ("some-box", "n")


def test_the_form_decides_which_record_it_is() -> None:
    record, _ = read_record(b"form: seen\nwhat: w\nday: 2026-03-09\n", LOG, "x")
    assert isinstance(record, Seen)
    assert record.day == "2026-03-09"


def test_five_different_mistakes_are_told_at_their_places_in_one_run() -> None:
    text = "# a box\nverdict: goes inn\nhieght: 3 mm\nheight: 165\nscrews:\n  - thread: M5\n  - 7\n"
    assert sorted(said(BOX, text)) == [
        '2:10: "goes inn" is not one of goes in, goes in if, does not, not tried. Did you mean "goes in"?',
        '2:1: "name" is missing. Add it: what people call it.',
        '3:1: there is no field "hieght" here. Did you mean "height"?',
        "4:9: height is a bare number, 165. Write 165 mm or 165 in.",
        '6:5: "length" is missing. Add it: how long it is.',
        "7:5: entry 2 of screws is 7, not a group of fields. Write its fields as key: value lines below, further in.",
    ]


def test_an_id_in_the_file_is_told_beside_everything_else() -> None:
    assert said(BOX, f"{SOUND}id: x\n") == [
        "3:1: an id is not written in a file; the file's name is its id. Take the line out."
    ]
    assert len(said(BOX, "id: x\nname: n\n")) == 2


def test_what_the_text_got_wrong_is_told_beside_what_the_model_finds() -> None:
    text = "name: n\nname: m\nverdict: nope\n"
    assert [line.partition(": ")[0] for line in said(BOX, text)] == ["2:1", "3:10"]


def test_a_value_that_could_not_be_read_is_told_once() -> None:
    assert said(BOX, "name: *x\nverdict: goes in\n") == [
        "1:7: *x stands for something written elsewhere. Write it out here."
    ]


def test_a_fault_in_the_text_alone_keeps_the_record_out() -> None:
    assert len(said(BOX, f"{SOUND}---\n{SOUND}")) == 1


def test_a_wrong_key_stands_at_the_key() -> None:
    (line,) = said(BOX, f"{SOUND}splits:\n  Build: early\n")
    assert line.startswith("4:3: ")


@pytest.mark.parametrize(
    ("text", "line"),
    [
        ("", "1:1: this file is empty. Start from an example of this kind."),
        ("# nothing yet\n", "1:1: this file is empty. Start from an example of this kind."),
        ("- a\n", "1:1: a record is made of lines that say key: value. Start from an example of this kind."),
        ("just words\n", "1:1: a record is made of lines that say key: value. Start from an example of this kind."),
        ("name: [\n", "2:1: something is opened before this and nothing follows. Close it, or take it out."),
    ],
)
def test_what_is_no_record_at_all_gets_one_complaint(text: str, line: str) -> None:
    assert said(BOX, text) == [line]


def test_a_record_without_its_form_is_told_at_its_start() -> None:
    assert said(LOG, "# a log\nwhat: w\n") == ['2:1: "form" is missing. Add it: one of tried, seen.']
    assert said(LOG, "what: w\nform: tired\n") == ['2:7: "tired" is not one of tried, seen. Did you mean "tried"?']
