from typing import Any

from bezelbook.reasoning.wiring_asked.leads import aerial_answer, speaker_answer
from bezelbook.reasoning.wiring_asked.plain import PlainBuild
from tests.reasoning.circuits.a_car import DOOR, car, connector, metered, plug_in, seen

MARKED = {
    "a": {"connector": "square", "side": "unit side"},
    "b": {"ends_in": "blades", "polarity_mark": "wide is plus"},
}
AERIAL = {"a": {"connector": "coded", "side": "unit side"}, "b": {"connector": "old", "side": "vehicle side"}}


def lead(name: str = "lead") -> Any:
    return plug_in(name, "left front +", "left front -", adapter_kind="speaker lead", ends=MARKED)


def speaker(*records: Any) -> PlainBuild:
    return speaker_answer(car(*records, place=DOOR))


def test_a_speakers_lead_whose_plus_is_known_is_complete() -> None:
    found = speaker(lead(), metered("one", (1, "left front +"), (2, "left front -"), place=DOOR))
    assert (found["verdict"], found["words"]) == ("complete", "The lead, and its plus is known")
    assert [(piece["id"], piece["in_hand"]) for piece in found["pieces"]] == [("lead", "to order")]
    assert found["unknown"] == []


def test_one_whose_plus_nobody_knows_hangs_on_a_look() -> None:
    found = speaker(lead(), lead("other"), seen("one", place=DOOR))
    assert (found["verdict"], found["words"]) == ("complete if", "The lead or The other, once the looks below are made")
    assert found["unknown"][0]["what"] == "which cavity is plus"


def test_no_lead_and_no_plug_say_so() -> None:
    assert speaker(seen("one", place=DOOR))["words"] == "no speaker lead in the book fits it"
    assert speaker(lead())["verdict"] == "plug not looked"


def aerial(*records: Any, plug: str = "coded", amplified: str = "there") -> PlainBuild:
    wire = plug_in("wire", adapter_kind="aerial", ends=AERIAL, ways={"aerial feed": "makes"})
    one = seen("one", None, aerials=[{"plug": plug, "amplified": amplified}])
    return aerial_answer(car(connector("coded"), connector("old"), wire, one, *records))


def test_an_aerial_has_its_lead() -> None:
    found = aerial()
    assert (found["verdict"], [piece["id"] for piece in found["pieces"]]) == ("complete", ["wire"])
    assert found["words"] == "The coded, with an amplifier that wants feeding: The wire"
    assert aerial(amplified="not looked")["verdict"] == "complete if"


def test_one_that_needs_none_and_one_that_nothing_fits() -> None:
    assert aerial(plug="old", amplified="not there")["words"] == "The old: it goes into a radio as it is"
    assert aerial(plug="old", amplified="not there")["verdict"] == "complete"
    assert aerial(plug="square", amplified="not there")["verdict"] == "nothing mates"
    two = seen("two", None, aerials=[{"amplified": "not there"}])
    found = aerial(two)
    assert found["verdict"] == "nothing mates"
    assert "an aerial plug that nobody looked at: no lead in the book fits it" in found["words"]


def test_an_aerial_that_nobody_looked_at_is_looked_at() -> None:
    found = aerial_answer(car())
    assert (found["verdict"], found["unknown"][0]["what"]) == ("plug not looked", "which plug the aerial has")
