from bezelbook.reasoning.circuits.jobs import EXTRAS, FRONTS, REARS, Job, tasks, wanted_by
from bezelbook.reasoning.circuits.wiring import Half, Need, Piece, Site
from bezelbook.values.words import CIRCUITS
from tests.reasoning.circuits.a_car import car, metered, seen
from tests.reasoning.making import record

SQUARE = Half("square", "vehicle side")
UNIT = {
    "name": "A radio",
    "size_class": "double",
    "needs": ["constant", "reverse", "left front +", "camera"],
    "own_plug": "The round",
}


def test_a_radio_wants_what_its_record_says_beyond_supply_and_speakers() -> None:
    own = car(record("head_units", "radio", UNIT))
    assert wanted_by(own, Job("replace the radio", "radio")) == ("reverse", "camera")
    assert wanted_by(own, Job("replace the radio", "gone")) == EXTRAS


def test_a_radio_in_two_pieces_wants_what_either_wants() -> None:
    display = record(
        "head_units", "display", {"name": "Display", "size_class": "two-piece display", "goes_with": ["box", "gone"]}
    )
    box = record("head_units", "box", UNIT)
    own = car(display, box, record("head_units", "stranger", {**UNIT, "needs": ["speed"]}))
    assert wanted_by(own, Job("two-piece radio", "display")) == ("reverse", "camera")
    assert wanted_by(own, Job("replace the radio", "display")) == ()


def test_replacing_needs_supply_and_fronts_and_the_rears_that_the_car_is_said_to_have() -> None:
    lead = Piece("lead", sees={"a": {"left rear +": "known", "left rear -": "said"}})
    own = car(metered("one", (5, "right rear +"), sure="told"))
    [task] = tasks(own, Job("replace the radio"), ["square"], [lead])
    must = [need.circuit for need in task.needs if need.must]
    assert must == ["constant", "ground", "accessory", *FRONTS, "left rear +", "right rear +"]
    assert task.site == Site((SQUARE,))


def test_a_factory_amplifier_wants_waking() -> None:
    seen_there = seen("one", None, amplifier="there")
    [task] = tasks(car(seen_there), Job("replace the radio"), ["square"], [])
    assert Need("amplifier turn-on", must=False) in task.needs


def test_a_radio_with_a_plug_of_its_own_ends_the_chain_there() -> None:
    own = car(
        record("connectors", "round", {"name": "The round", "shell": "round"}), record("head_units", "radio", UNIT)
    )
    [task] = tasks(own, Job("replace the radio", "radio"), ["square"], [])
    assert task.site.unit == Half("round", "unit side")
    extras = [need.circuit for need in task.needs if not need.must and need.circuit not in REARS]
    assert extras == ["reverse", "camera"]


def test_keeping_cuts_the_amplified_pairs_and_leaves_the_rest_whole() -> None:
    [task] = tasks(car(), Job("keep it and amplify"), ["square"], [])
    assert task.site == Site((SQUARE,), radio=Half("square", "unit side"))
    assert [need for need in task.needs if need.circuit == "left front +"] == [
        Need("left front +", "from radio"),
        Need("left front +", "to car"),
    ]
    through = [need for need in task.needs if need.kind == "through"]
    assert [need.circuit for need in through] == [one for one in CIRCUITS if one not in FRONTS]
    assert {need.circuit for need in through if need.must} == {"constant", "ground", *REARS}
    assert Need("accessory") in task.needs
    assert "left rear +" in task.closing
    assert "left front +" not in task.closing


def test_a_sub_listens_to_the_rears_or_else_the_fronts() -> None:
    rears, fronts = tasks(car(), Job("add a sub"), ["square"], [])
    assert [need.circuit for need in rears.needs if need.kind == "tap"] == list(REARS)
    assert [need.circuit for need in fronts.needs if need.kind == "tap"] == list(FRONTS)


def test_an_amplifier_that_wakes_from_the_signal_can_do_without_accessory() -> None:
    inputs = [{"level": "low", "wakes": "not there"}, {"level": "high", "wakes": "there"}]
    amplifier = record("amplifiers", "amp", {"name": "Amp", "origin": "added", "inputs": inputs})
    [task] = tasks(car(amplifier), Job("keep it and amplify", amplifier="amp"), ["square"], [])
    assert Need("accessory", must=False) in task.needs
    asleep = [{"level": "low", "wakes": "there"}, {"level": "high", "wakes": "not there"}]
    deaf = record("amplifiers", "amp", {"name": "Amp", "origin": "added", "inputs": asleep})
    [task] = tasks(car(deaf), Job("keep it and amplify", amplifier="amp"), ["square"], [])
    assert Need("accessory") in task.needs
