from bezelbook.publish.circuits.runs import bars_of, runs_of
from bezelbook.publish.drawing.chain import Run
from bezelbook.reasoning.circuits.chain import Chain
from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.table import table
from tests.reasoning.circuits.a_car import chained, module, plug_in, seen, tee


def runs(chain: Chain) -> dict[str, Run]:
    return {run.label: run for run in runs_of(chain, table(chain))}


def test_pieces_stand_between_the_car_and_the_radio() -> None:
    assert bars_of(chained(seen("one"), plug_in())) == ("the car", "1", "the radio")
    assert bars_of(chained(seen("one"), tee(), job=Job("keep it and amplify")))[-1] == "the radio that stays"


def test_a_wire_of_the_car_runs_to_the_radio_and_one_of_a_box_from_the_box() -> None:
    box = module(needs=["constant", "bus"], outputs={"accessory": {}})
    found = runs(
        chained(seen("one"), plug_in("plug-in", "constant", "ground", "bus", ways={"speed": "not there"}), box)
    )
    assert found["constant"] == Run("constant", "used", 0, 3)
    assert found["accessory"] == Run("accessory", "used", 2, 3)
    assert found["bus"] == Run("bus", "used", 0, 2)
    assert found["speed"] == Run("speed", "not there", 0, 1, "blank")
    assert found["illumination"] == Run("illumination", "unknown", 0, 1, "cap")


def test_a_pair_that_fares_alike_is_one_line_and_one_that_does_not_is_two() -> None:
    found = runs(
        chained(seen("one"), plug_in("plug-in", "left front +", "left front -", ways={"left rear +": "passes"}))
    )
    assert found["left front ±"] == Run("left front ±", "used", 0, 2)
    assert {found["left rear +"].becomes, found["left rear -"].becomes} == {"used", "unknown"}


def test_a_cut_pair_is_cut_and_a_looped_one_goes_on() -> None:
    found = runs(chained(seen("one"), tee(), job=Job("keep it and amplify")))
    assert found["left front ±"].mark == "cut"
    assert found["left rear ±"] == Run("left rear ±", "looped", 0, 2)
