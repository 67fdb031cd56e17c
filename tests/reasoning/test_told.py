"""What the notes of a place say, the same whether it is asked for once or many times."""

from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.claims import claim
from bezelbook.reasoning.needs import needs_of_note
from bezelbook.reasoning.told import Told
from bezelbook.values.words import Ninth
from tests.reasoning.making import book, frame, measured, reading, standing, tried, unit

BOOK = book(
    unit(plug_exit=None), tried("yes"), tried("no", verdict="does not"), measured("m", reading("width", "182 mm"))
)
EXITS: tuple[dict[str, Ninth], ...] = ({}, {"head_unit:box": "left"}, {"head_unit:box": "right"}, {"other": "left"})
PART = frozenset({"head_unit:box"})


def test_the_needs_are_those_of_the_thing_and_a_reading_has_none() -> None:
    told = Told(frame(BOOK))
    yes, tape = standing(BOOK, "yes"), standing(BOOK, "m")
    assert isinstance(yes.note, Tried)
    assert told.needs(yes) == told.needs(yes) == needs_of_note(BOOK, yes.note)
    assert told.needs(tape) is None


def test_a_claim_is_that_of_the_note_however_often_and_in_whatever_order_it_is_asked_for() -> None:
    told = Told(frame(BOOK))
    notes = [standing(BOOK, name) for name in ("yes", "no", "m")]
    settings = [(vary, exits, split) for vary in (frozenset[str](), PART) for exits in EXITS for split in (True, False)]
    for vary, exits, split in [*settings, *reversed(settings)]:
        for one in notes:
            expected = claim(frame(BOOK), one, vary, exits, split=split)
            assert told.claim(one, vary, exits, split=split) == expected


def test_a_question_is_worked_out_once_and_another_one_anew() -> None:
    told = Told(frame(BOOK))
    asked: list[str] = []

    def find(answer: str) -> str:
        asked.append(answer)
        return answer

    found = [told.once(("deep", 1), lambda: find("yes")), told.once(("deep", 1), lambda: find("no"))]
    assert found == ["yes", "yes"]
    assert told.once(("deep", 2), lambda: find("no")) == "no"
    assert asked == ["yes", "no"]


def test_a_note_without_its_gap_is_the_same_note_each_time() -> None:
    told, one = Told(frame(BOOK)), standing(BOOK, "yes")
    assert told.without_gap(one) is told.without_gap(one) is one
    of = book(unit(), *(tried(name, to_spare="3 mm", where=["left"]) for name in ("near", "far")))
    gap, far = standing(of, "near"), standing(of, "far")
    bare = told.without_gap(gap)
    assert bare is told.without_gap(gap)
    assert (bare.has_gap, gap.has_gap) == (False, True)
    assert [told.without_gap(note).note.id for note in (gap, far)] == ["near", "far"]
