"""The plain form of an answer has the keys that are promised, and no others."""

from typing import get_type_hints

from bezelbook.reasoning.plain import PlainAnswer, PlainFor, PlainMissing, PlainNote, PlainNumber
from tests.reasoning.making import ask, book, measured, reading, tried, unit

PROMISED = (
    "verdict",
    "until_settled",
    "for",
    "number",
    "sure",
    "witnesses",
    "notes",
    "argued",
    "unknown",
    "needs",
    "instead",
)


def test_an_answer_has_the_promised_keys_in_their_order() -> None:
    assert tuple(get_type_hints(PlainAnswer)) == PROMISED


def test_every_part_of_an_answer_holds_exactly_what_its_form_says() -> None:
    of = book(unit(), tried(), tried("told", sure="told", mounts=None), measured("m", reading("depth", "205 ± 3 mm")))
    plain = ask(of, "box").plain()
    assert plain["number"] is not None
    assert plain["number"].keys() == get_type_hints(PlainNumber).keys()
    assert plain["for"].keys() == PlainFor.__required_keys__
    assert [note.keys() == get_type_hints(PlainNote).keys() for note in plain["notes"]] == [True, True]
    assert [one.keys() == get_type_hints(PlainMissing).keys() for one in plain["unknown"]] == [True]
