"""Squeezed foam, by the trade's worked figures (trade.md 4.4; common practice, no source)."""

from fractions import Fraction

import pytest

from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.speakers.gasket import NO_GASKET, gasket_named, unsaid_gasket
from bezelbook.values.span import BLANK, Span
from tests.reasoning.making import record

MM = 1_000_000


def foams(**content: str) -> KnowledgeBase:
    said = {"form": "foam", "name": "Thin foam", "foam_kind": "closed-cell tape", **content}
    ring = {"form": "foam", "name": "Front ring", "foam_kind": "open-cell ring", "free_thickness": "30 mm"}
    return knowledge_base([record("supplies", "thin", said), record("supplies", "ring", ring)])


def test_1_6_at_40_percent_holds_out_0_96() -> None:
    found = gasket_named(foams(free_thickness="1.6 mm", squeeze="40 %"), "Thin foam")
    assert (found.key, found.name, found.held) == ("thin", "Thin foam", Span(960_000, 960_000))


@pytest.mark.parametrize("words", [None, "none", "None"])
def test_none_holds_out_nothing(words: str | None) -> None:
    assert gasket_named(foams(), words) == NO_GASKET


def test_foam_of_unknown_squeeze_may_be_as_high_as_it_is_free() -> None:
    held = gasket_named(foams(free_thickness="1.6 mm"), "thin").held
    assert (held.low, held.high, held.closed) == (0, 1_600_001, True)


def test_foam_that_nobody_measured_holds_out_nobody_knows_how_far() -> None:
    assert gasket_named(foams(squeeze="40 %"), "thin").held == BLANK
    found = gasket_named(foams(), "a bead of Mastic")
    assert (found.key, found.name) == ('"a bead of mastic"', '"a bead of mastic"')


def test_a_squeeze_that_comes_out_at_no_whole_nanometre_is_bounded() -> None:
    held = gasket_named(foams(free_thickness="1/64 in", squeeze="33.333 %"), "thin").held
    true = Fraction(396_875) * (100_000 - 33_333) / 100_000
    assert held.low is not None
    assert held.high is not None
    assert held.low < true < held.high
    assert held.high - held.low == 1


def test_what_a_note_does_not_say_is_anything_up_to_the_thickest_but_for_front_rings() -> None:
    found = unsaid_gasket(foams(free_thickness="3 mm"), "a-note")
    assert (found.key, found.name, found.held) == (
        "not said in a-note",
        "gasket not said",
        Span(0, 3 * MM + 1, reached=True),
    )
    assert unsaid_gasket(foams(), "a-note") == NO_GASKET
