from bezelbook.reasoning.circuits.spoken import spoken
from tests.reasoning.circuits.a_car import SPEAKERS


def test_a_pair_is_said_once_and_all_four_together() -> None:
    assert spoken(["constant", "left front +", "left front -"]) == "constant and left front ±"
    assert spoken(["left front +", "left front -"]) == "left front ±"
    assert spoken(["left front +", "ground"]) == "left front + and ground"
    assert spoken(SPEAKERS) == "all speakers"
