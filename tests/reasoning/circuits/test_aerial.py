from typing import Any

from bezelbook.reasoning.circuits.aerial import AerialLead, AerialSeen, aerial_leads, aerials
from bezelbook.reasoning.unknowns import Missing
from tests.reasoning.circuits.a_car import DOOR, car, connector, plug_in, seen

ENDS = {"a": {"connector": "coded", "side": "unit side"}, "b": {"connector": "old", "side": "vehicle side"}}


def aerial(name: str = "one", **content: Any) -> Any:
    said = {"plug": "coded", "amplified": "there"} | content.pop("aerial", {})
    return seen(name, **({"aerials": [said]} | content))


def lead(name: str = "lead", **content: Any) -> Any:
    return plug_in(name, ways={"aerial feed": "makes"}, **({"adapter_kind": "aerial", "ends": ENDS} | content))


def found(*records: Any) -> AerialLead:
    [one] = aerial_leads(car(connector("coded"), connector("old"), *records))
    return one


def test_an_aerial_seen_anywhere_in_the_car_has_its_plug() -> None:
    [one] = aerials(car(connector("coded"), aerial(place=DOOR)))
    assert one == AerialSeen("coded", "The coded", "there", ("one",), sure=True)
    [one] = aerials(car(aerial(aerial={"plug": "fat one", "amplified": None})))
    assert (one.connector, one.words, one.amplified) == ("", "fat one", "not looked")
    [one] = aerials(car(aerial(aerial={"plug": None})))
    assert (one.connector, one.words, one.amplified) == ("", "", "there")
    assert aerials(car(aerial(splits={"build": "early"}))) == ()


def test_the_lead_that_takes_it_ends_in_another_plug() -> None:
    one = found(aerial(), lead(), lead("second"))
    assert one.aerial == AerialSeen("coded", "The coded", "there", ("one",), sure=True)
    assert ([adapter.id for adapter in one.adapters], one.ends_in, one.unknown) == (["lead"], "old", ())


def test_what_is_no_aerial_lead_or_ends_as_it_began_is_no_lead() -> None:
    same = {"a": ENDS["a"], "b": {"connector": "coded", "side": "vehicle side"}, "c": {"ends_in": "bare leads"}}
    other = {"a": {"connector": "old", "side": "unit side"}, "b": ENDS["b"]}
    joins = {"a": ENDS["a"], "b": {"connector": "old", "side": "unit side"}, "c": {"side": "vehicle side"}}
    none = (lead(adapter_kind="plug-in"), lead("same", ends=same), lead("other", ends=other), lead("joins", ends=joins))
    one = found(aerial(), *none)
    assert (one.adapters, one.ends_in) == ((), "")
    assert found(aerial(aerial={"plug": "fat one"}), lead()).adapters == ()


def test_what_nobody_knows_of_the_feed_is_said() -> None:
    assert found(aerial(aerial={"amplified": "not looked"}), lead()).unknown == (
        Missing(
            "whether the aerial has an amplifier that wants feeding",
            "meter its feed on the factory radio, 3 min",
            "whether reception is weak without a feed",
        ),
    )
    unfed = lead(circuits={})
    assert found(aerial(), unfed).unknown == (
        Missing("how the amplifier in the aerial is fed", "meter the lead on the bench, 3 min", "reception"),
    )
    assert found(aerial(aerial={"amplified": "not there"}), unfed).unknown == ()
    assert found(aerial()).unknown == (), "there is no lead that could feed it"
    assert found(aerial(splits={}), lead()).unknown == (
        Missing("the aerial plug was seen on a car that may have been another build", "look, 1 min", "the lead"),
    )


def test_a_plug_in_which_leads_of_the_book_end_goes_into_a_radio_as_it_is() -> None:
    one = found(aerial(aerial={"plug": "old"}), lead())
    assert (one.adapters, one.straight, one.unknown) == ((), True, ())
    assert not found(aerial(aerial={"plug": "old"}), lead(adapter_kind="plug-in")).straight
    assert not found(aerial(), lead()).straight
    half = {"a": {"side": "unit side"}, "b": ENDS["b"]}
    assert not found(aerial(aerial={"plug": "old"}), lead(ends=half)).straight
