"""The trade's worked example: one opening, six notes, and what a careful shop would say to each question.

Flush kit, late build. Note a: body 110 fitted; f is a copy of it; b: body 170 does not, because of depth; c: 185 goes
in, only told; d: 165, the customer is waiting; e: 6.5 "mm". Every ninth is 205 ± 3 mm deep, the lower left 150 ± 3.
"""

from collections.abc import Mapping
from typing import Any

import pytest

from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.answer import Answer, answer
from bezelbook.reasoning.asking import read_question
from bezelbook.reasoning.next_best.desk import Desk
from bezelbook.values.words import NINTHS
from tests.reasoning.making import changed, reading

Worked = Mapping[str, Record]
PLUG = {"plug": "32 ± 5 mm", "exit": "right"}


def book(worked: Worked, *others: Record) -> KnowledgeBase:
    """The worked book, with some of its records replaced."""
    return knowledge_base([*worked.values(), *others])


def ask(of: KnowledgeBase, what: str | Mapping[str, str], *mounts: str, **more: Any) -> Answer:
    """A question about the late build, with the flush kit unless other mounts are named."""
    state = {"mounts": list(mounts) or ["flush-kit"]}
    data = {"vehicle": "compact-hatch-2", "place": "centre-dash", "splits": {"build": "late"}, "state": state}
    question = read_question(of, data | {"what": what} | more).question
    assert question is not None
    return answer(of, question)


def depth(of: KnowledgeBase, size: str, *mounts: str) -> str:
    """The verdict on a body of this depth whose plug needs 32 ± 5 mm at the right."""
    return ask(of, {"depth": size} | PLUG, *mounts).verdict


def carried_by(found: Answer) -> list[str]:
    return [quoted.note.id for quoted in found.notes if quoted.why == "carries the answer"]


def beside(found: Answer) -> dict[str, str]:
    return {quoted.note.id: quoted.why for quoted in found.notes if quoted.why != "carries the answer"}


@pytest.mark.parametrize("size", ["20 ± 1 mm", "110 ± 1 mm", "140 ± 1 mm", "146 ± 1 mm"])
def test_up_to_146_it_goes_in(worked: Worked, size: str) -> None:
    assert depth(book(worked), size) == "goes in"


@pytest.mark.parametrize("size", ["147 ± 1 mm", "150 ± 1 mm", "153 ± 1 mm", "153.9 ± 1 mm"])
def test_between_146_and_154_it_is_too_close(worked: Worked, size: str) -> None:
    assert depth(book(worked), size) == "too close"


@pytest.mark.parametrize("size", ["154 ± 1 mm", "165 ± 1 mm", "170 ± 1 mm", "185 ± 1 mm"])
def test_from_154_it_does_not(worked: Worked, size: str) -> None:
    assert depth(book(worked), size) == "does not"


def test_an_exact_size_moves_the_ends_to_147_and_153(worked: Worked) -> None:
    sizes = ("147 mm", "147.1 mm", "152.9 mm", "153 mm")
    assert [depth(book(worked), size) for size in sizes] == ["goes in", "too close", "too close", "does not"]


def test_what_was_fitted_is_proven_by_its_own_note(worked: Worked) -> None:
    found = ask(book(worked), "two-high-a")
    assert (found.verdict, found.sure) == ("goes in", "fitted")
    assert "a-short-goes-in" in carried_by(found)


def test_a_smaller_body_is_proven_too_and_a_larger_one_is_worked_out(worked: Worked) -> None:
    assert ask(book(worked), {"depth": "109 mm", "plug": "27 mm", "exit": "right"}).sure == "fitted"
    found = ask(book(worked), {"depth": "140 ± 1 mm"} | PLUG)
    assert (found.sure, carried_by(found)) == ("worked out", ["duct-measured"])


def test_170_is_a_proven_no(worked: Worked) -> None:
    found = ask(book(worked), "two-high-deep")
    assert (found.verdict, found.sure) == ("does not", "dry-fitted")
    assert "b-deep-does-not" in carried_by(found)


def test_154_is_a_worked_out_no_and_names_the_corner(worked: Worked) -> None:
    found = ask(book(worked), {"depth": "154 ± 1 mm"} | PLUG)
    assert (found.sure, carried_by(found)) == ("worked out", ["duct-measured"])
    assert found.spot is not None
    assert (found.spot.need, found.spot.ninth, found.spot.to_spare) == ("depth", "lower-left", -4_000_000)


def test_the_waiting_customer_gets_a_no_because_of_the_corner(worked: Worked) -> None:
    found = ask(book(worked), "two-high-disc")
    assert (found.verdict, found.sure, carried_by(found)) == ("does not", "worked out", ["duct-measured"])
    assert beside(found)["d-customer-waiting"] == "not tried"


@pytest.mark.parametrize(("size", "room"), [("110 mm", "37 mm"), ("146 mm", "1 mm"), ("140 ± 1 mm", "6 mm")])
def test_with_the_plug_unknown_it_goes_in_if_its_plug_needs_no_more(worked: Worked, size: str, room: str) -> None:
    found = ask(book(worked), {"depth": size})
    assert found.verdict == "goes in if"
    assert found.needs[0].startswith(f"its plug and bend need no more than {room} (")


def test_the_plug_may_be_larger_where_the_opening_is_deeper(worked: Worked) -> None:
    words = ask(book(worked), {"depth": "110 mm"}).needs[0]
    assert "up to 92 mm" in words
    assert "if it does not leave at the lower-left" in words


def test_the_told_note_is_quoted_as_told(worked: Worked) -> None:
    found = ask(book(worked), {"depth": "185 ± 1 mm"} | PLUG)
    assert (found.verdict, beside(found)["c-deeper-they-say"]) == ("does not", "only told")


def test_what_the_told_note_leaves_out_is_among_the_unknowns(worked: Worked) -> None:
    unknown = [one for one in ask(book(worked), "two-high-a").unknown if "c-deeper-they-say" in one.what]
    assert len(unknown) == 1
    assert "which build" in unknown[0].what
    assert "which mounts" in unknown[0].what
    assert unknown[0].look == "ask counter"


def test_a_copied_job_is_one_witness(worked: Worked) -> None:
    found = ask(book(worked), "two-high-a")
    assert {"a-short-goes-in", "f-copy-of-a"} <= set(carried_by(found))
    assert found.witnesses == 1


def test_the_unit_slip_waits_until_somebody_reads_it_back(worked: Worked) -> None:
    found = ask(book(worked), "two-high-a")
    assert "6.5 mm" in beside(found)["e-six-and-a-half"]
    assert "e-six-and-a-half" not in carried_by(found)


def test_the_unit_slip_moves_no_answer(worked: Worked) -> None:
    without = {name: record for name, record in worked.items() if name != "e-six-and-a-half"}
    for size in ("110 ± 1 mm", "147 ± 1 mm", "154 ± 1 mm", "165 mm"):
        assert depth(book(worked), size) == depth(knowledge_base(without.values()), size)


def confirmed(worked: Worked, **content: Any) -> Record:
    """Note e once its author has said that 6.5 are inches: a fitted yes at 165."""
    note: Record = changed(worked["e-six-and-a-half"], sizes={"depth": "6.5 in caliper"}, **content)
    return note


def test_confirmed_with_the_kit_still_blank_the_flush_answers_stand(worked: Worked) -> None:
    settled = book(worked, confirmed(worked))
    sizes = ("146 ± 1 mm", "150 ± 1 mm", "154 ± 1 mm", "165 mm")
    assert [depth(settled, size) for size in sizes] == ["goes in", "too close", "does not", "does not"]
    assert ask(settled, "two-high-disc").argued == ()


def test_confirmed_as_flush_it_is_argued_over(worked: Worked) -> None:
    found = ask(book(worked, confirmed(worked, mounts=["flush-kit"])), "two-high-disc")
    assert (found.verdict, found.until_settled) == ("argued over", "does not")
    assert {quoted.note.id for quoted in found.argued} == {"e-six-and-a-half", "duct-measured"}


def test_confirmed_as_flush_it_reverses_no_ladder(worked: Worked) -> None:
    settled = book(worked, confirmed(worked, mounts=["flush-kit"]))
    assert [ask(settled, unit).verdict for unit in ("two-high-a", "two-high-deep")] == ["goes in", "does not"]


def all_deep(worked: Worked) -> KnowledgeBase:
    """The book as if the corner were as deep as everything else: the centre and right zone decide alone."""
    return book(worked, changed(worked["duct-measured"], readings=[reading("depth", "205 ± 3 mm")]))


@pytest.mark.parametrize(
    ("size", "kit", "verdict"),
    [
        ("165 ± 1 mm", "flush-kit", "too close"),
        ("165 ± 1 mm", "proud-kit", "goes in"),
        ("164 ± 1 mm", "flush-kit", "goes in"),
        ("110 ± 1 mm", "flush-kit", "goes in"),
        ("185 ± 1 mm", "flush-kit", "does not"),
    ],
)
def test_the_centre_alone_is_margin_against_the_sum_of_tolerances(
    worked: Worked, size: str, kit: str, verdict: str
) -> None:
    assert depth(all_deep(worked), size, kit) == verdict


def test_the_corner_stops_165_flush_and_proud(worked: Worked) -> None:
    assert [depth(book(worked), "165 ± 1 mm", kit) for kit in ("flush-kit", "proud-kit")] == ["does not"] * 2


def test_without_the_corner_the_answer_asks_for_it(worked: Worked) -> None:
    eight = [ninth for ninth in NINTHS if ninth != "lower-left"]
    measured = changed(worked["duct-measured"], readings=[reading("depth", "205 ± 3 mm", *eight)])
    found = ask(book(worked, measured), {"depth": "164 ± 1 mm"} | PLUG)
    assert (found.verdict, found.needs[0]) == ("goes in if", "it is at least 165 mm (6.50 in) deep at the lower-left")
    assert [one.what for one in found.unknown if "depth" in one.what] == ["depth not looked at: lower-left"]


def test_with_the_build_unknown_the_late_answer_is_a_condition(worked: Worked) -> None:
    found = ask(book(worked), "two-high-a", splits={})
    assert (found.verdict, found.needs[0]) == ("goes in if", "the build is late")
    assert [one.what for one in found.unknown][:1] == ["the build is not known"]


def test_instead_of_the_body_that_did_not_go_in_the_one_that_did_is_offered(worked: Worked) -> None:
    found = Desk(book(worked)).opening(ask(book(worked), "two-high-deep").question)
    assert found.verdict == "does not"
    first = found.instead[0]
    assert (first.thing, first.verdict, first.sure, first.witnesses) == ("two-high-a", "goes in", "fitted", 1)
    assert first.needs[0] == book(worked).mounts["flush-kit"].name


def test_instead_of_a_typed_depth_that_is_too_close_the_same_is_offered(worked: Worked) -> None:
    found = Desk(book(worked)).opening(ask(book(worked), {"depth": "150 ± 1 mm"} | PLUG).question)
    assert (found.verdict, [one.thing for one in found.instead][:1]) == ("too close", ["two-high-a"])
