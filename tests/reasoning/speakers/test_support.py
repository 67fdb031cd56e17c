"""Which notes carry an answer about a speaker."""

from typing import Any

from bezelbook.reasoning.speakers.answer import SpeakerAnswer
from tests.reasoning.speakers.doors import ask, book, measured, mount, reading, roomy, tried


def carried(found: SpeakerAnswer) -> tuple[Any, ...]:
    return (found.sure, found.witnesses, [one.note.id for one in found.notes if one.why == "carries the answer"])


def test_what_was_fitted_carries_it_by_itself() -> None:
    of = book(roomy(), tried("a", sure="dry-fitted", job="one"), tried("b", job="one"), tried("c", job="two"))
    assert carried(ask(of)) == ("fitted", 2, ["a", "b", "c", "roomy"])


def test_readings_of_several_notes_carry_it_together() -> None:
    of = book(
        measured("a", reading("cut-out", "140 ± 1 mm"), job="one"),
        measured("b", reading("front clearance", "20 ± 1 mm"), reading("rear depth to glass down", "70 ± 1 mm")),
        measured("c", reading("front clearance", "21 ± 1 mm")),
    )
    found = ask(of)
    assert (found.verdict, carried(found)[0]) == ("goes in", "worked out")
    assert carried(found)[2][0] == "a"
    assert len(carried(found)[2]) == 2


def test_where_notes_argue_over_a_number_that_does_not_matter_the_larger_account_carries_it() -> None:
    of = book(roomy("a", job="one"), roomy("b", "70.5 ± 1 mm", job="two"), roomy("c", "74 ± 1 mm", job="three"))
    found = ask(of)
    assert (found.verdict, carried(found)) == ("goes in", ("worked out", 2, ["a", "b"]))


def test_what_a_mount_alone_decides_is_carried_by_no_note() -> None:
    bracket = mount("b", mount_kind="bracket", inner="120 mm caliper")
    assert carried(ask(book(bracket, roomy()), {"basket": "130 mm"}, mounts=["b"])) == ("worked out", 0, [])
