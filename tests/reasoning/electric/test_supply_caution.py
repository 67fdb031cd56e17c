import pytest

from bezelbook.reasoning.electric.supply_caution import NOT_LOOKED, supply_caution
from tests.reasoning import making


@pytest.mark.parametrize(
    ("supply", "says"),
    [
        ("12 V from a converter", "neither overloaded nor drained"),
        ("48 V present", "48 V in this car"),
        ("high voltage present", "anything orange"),
    ],
)
def test_a_supply_that_can_hurt_is_said_with_its_pointer(supply: str, says: str) -> None:
    assert says in supply_caution(making.vehicle(supply=supply))


@pytest.mark.parametrize("supply", ["48 V present", "high voltage present"])
def test_what_is_dangerous_points_to_the_service_information(supply: str) -> None:
    assert "service information comes first, and a qualified person" in supply_caution(making.vehicle(supply=supply))


def test_a_plain_supply_needs_no_caution_and_a_blank_is_said() -> None:
    assert supply_caution(making.vehicle(supply="12 V")) == ""
    assert supply_caution(making.vehicle()) == NOT_LOOKED
