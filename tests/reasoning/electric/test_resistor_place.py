import pytest

from bezelbook.reasoning.electric.resistor_place import Amplifier, Speaker, wants
from bezelbook.reasoning.electric.resistor_rule import ResistorRule
from tests.reasoning.electric.test_resistor_rule import NEEDS, NEEDS_NOT, UPGRADED, after, resistor, rules

PROVEN = rules(after("a", NEEDS, splits=UPGRADED))["upgraded"]
UNKNOWN = rules()["base"]
NOT_NEEDED = rules(after("a", NEEDS_NOT, splits=UPGRADED))["upgraded"]
ARGUED = rules(after("a", NEEDS, splits=UPGRADED), after("b", NEEDS_NOT, splits=UPGRADED))["upgraded"]


# Trade 4.8: only on circuits of a kept factory amplifier whose speaker has been taken away.
@pytest.mark.parametrize(
    ("amplifier", "speaker", "says"),
    [
        ("kept", "taken away", "needs it"),
        ("kept", "still driven", "none"),
        ("kept", "not looked", "unknown"),
        ("gone", "taken away", "none"),
        ("not there", "taken away", "none"),
        ("gone", "not looked", "none"),
        ("not looked", "taken away", "unknown"),
        ("not looked", "still driven", "none"),
    ],
)
def test_only_a_kept_amplifier_that_lost_its_speaker_gets_one(
    amplifier: Amplifier, speaker: Speaker, says: str
) -> None:
    assert wants(amplifier, speaker, PROVEN).says == says


TWO = resistor("47 ohm", "works", "muted")
SEVERAL = rules(after("a", NEEDS, TWO, splits=UPGRADED), after("b", NEEDS, splits=UPGRADED))["upgraded"]


@pytest.mark.parametrize(
    ("rule", "says", "why"),
    [
        (SEVERAL, "needs it", "20 ohm, 47 ohm proven on this package"),
        (PROVEN, "needs it", "20 ohm proven on this package"),
        (ARGUED, "argued over", "20 ohm proven on this package"),
        (NOT_NEEDED, "none", "it was tried without on this package and works"),
        (UNKNOWN, "unknown", "nobody has tried this package with and without"),
        (None, "unknown", "which audio package it is, is not looked"),
    ],
)
def test_no_value_is_named_but_one_that_was_proven(rule: ResistorRule | None, says: str, why: str) -> None:
    assert wants("kept", "taken away", rule) == (says, why)


def test_a_circuit_without_its_amplifier_says_so() -> None:
    assert wants("not looked", "taken away", PROVEN).why == (
        "whether a factory amplifier is there and stays is not looked"
    )
    assert wants("kept", "not looked", PROVEN).why == "whether its speaker is taken away is not said"
    assert wants("gone", "taken away", PROVEN).why == "its factory amplifier is gone"
    assert wants("kept", "still driven", PROVEN).why == "it still drives its speaker"
