from typing import Any

from bezelbook.reasoning.wiring_asked.leads import aerial_answer, speaker_answer
from bezelbook.reasoning.wiring_asked.parts import nothing_of, piece_of
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
    own = car(lead(), metered("one", (1, "left front +"), (2, "left front -"), place=DOOR), place=DOOR)
    why = "made for another place of this car: its leads may not be what is there"
    assert speaker_answer(own) == nothing_of(own, "speaker lead", "complete", "The lead, and its plus is known") | {
        "plugs": [{"plug": "The square", "state": "known", "notes": ["one"], "not_to_be_taken_for": []}],
        "pieces": [piece_of(own.book, own.book.adapters["lead"], why)],
    }


def test_one_whose_plus_nobody_knows_hangs_on_a_look() -> None:
    found = speaker(lead(), lead("other"), seen("one", place=DOOR))
    assert (found["verdict"], found["words"]) == ("complete if", "The lead or The other, once the looks below are made")
    assert found["unknown"][0]["what"] == "which cavity is plus"


def test_no_lead_and_no_plug_say_so() -> None:
    none = speaker(seen("one", place=DOOR))
    assert (none["verdict"], none["words"]) == ("nothing mates", "no speaker lead in the book fits it")
    blank = speaker(lead())
    assert (blank["verdict"], blank["words"]) == ("plug not looked", "nobody knows: the plug comes first")


def aerial(*records: Any, plug: str = "coded", amplified: str = "there") -> PlainBuild:
    wire = plug_in("wire", adapter_kind="aerial", ends=AERIAL, ways={"aerial feed": "makes"})
    one = seen("one", None, aerials=[{"plug": plug, "amplified": amplified}])
    return aerial_answer(car(connector("coded"), connector("old"), wire, one, *records))


def test_an_aerial_has_its_lead() -> None:
    found = aerial()
    words = "The coded, with an amplifier that wants feeding: The wire"
    assert (found["job"], found["verdict"], found["words"]) == ("aerial", "complete", words)
    assert [(piece["id"], piece["why"]) for piece in found["pieces"]] == [
        ("wire", "made for this build, as printed; nobody here has fitted it")
    ]
    blank = aerial(amplified="not looked")
    assert (blank["verdict"], blank["words"]) == ("complete if", "The coded: The wire")
    assert [look["what"] for look in blank["unknown"]] == ["whether the aerial has an amplifier that wants feeding"]


def test_one_that_needs_none_and_one_that_nothing_fits() -> None:
    assert aerial(plug="old", amplified="not there")["words"] == "The old: it goes into a radio as it is"
    assert aerial(plug="old", amplified="not there")["verdict"] == "complete"
    assert aerial(plug="square", amplified="not there")["verdict"] == "nothing mates"
    two = seen("two", None, aerials=[{"amplified": "not there"}])
    found = aerial(two)
    assert found["verdict"] == "nothing mates"
    assert found["words"] == (
        "The coded, with an amplifier that wants feeding: The wire; "
        "an aerial plug that nobody looked at: no lead in the book fits it"
    )


def test_an_aerial_that_nobody_looked_at_is_looked_at() -> None:
    own = car()
    words = "nobody has looked which plug the aerial has"
    look = {
        "what": "which plug the aerial has",
        "look": "look behind the radio, 2 min with it out",
        "changes": "which lead, and whether it wants feeding",
    }
    assert aerial_answer(own) == nothing_of(own, "aerial", "plug not looked", words) | {"unknown": [look]}
