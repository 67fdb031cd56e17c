from typing import Any

from bezelbook.reasoning.circuits.factory_amplifier import FactoryAmplifier, amplifier_look, factory_amplifier
from tests.reasoning.circuits.a_car import DOOR, car, seen, vehicle

UPGRADED = {"audio": "base"}


def note(name: str = "one", amplifier: str = "there", **content: Any) -> Any:
    return seen(name, None, **({"place": DOOR, "splits": UPGRADED, "amplifier": amplifier} | content))


def test_one_that_was_seen_in_this_package_is_there_wherever_the_note_was_made() -> None:
    assert factory_amplifier(car(note())) == FactoryAmplifier("known", "front door left", ("one",))
    assert factory_amplifier(car(note(amplifier_where="boot floor"))).where == "boot floor"
    assert factory_amplifier(car(note(place="attic"))).state == "not looked", "the vehicle has no such place"
    named = vehicle(places={"dash-centre": {"kind": "plain opening", "side": "centre", "name": "The hole"}})
    assert factory_amplifier(car(named, note(place="dash-centre"))).where == "The hole"


def test_another_package_or_a_blank_one_says_nothing() -> None:
    assert factory_amplifier(car(note(splits={"audio": "upgraded"}))).state == "not looked"
    assert factory_amplifier(car(note(splits={}))).state == "not looked"


def test_seen_and_not_seen_is_argued_over() -> None:
    found = factory_amplifier(car(note(), note("two", "not there")))
    assert (found.state, found.notes) == ("argued over", ("one", "two"))


def test_what_to_look_at_depends_on_what_was_seen() -> None:
    def what(*notes: Any) -> str:
        look = amplifier_look(car(*notes))
        return look.what if look else ""

    assert what(note("one", "not there")) == ""
    assert what(note()).startswith("a factory amplifier is there (front door left)")
    assert what() == "whether a factory amplifier sits behind the speaker leads"
    assert what(note(), note("two", "not there")).endswith("is argued over")


def test_the_package_is_told_from_the_seat_where_there_is_one() -> None:
    look = amplifier_look(car())
    assert look is not None
    assert look.look.endswith("from the seat: upgraded: Nine grilles")
    build = {"build": {"values": {"late": {}}, "bears_on": {"subjects": ["plug"]}}}
    look = amplifier_look(car(vehicle(splits=build), audio="base"))
    assert look is not None
    assert look.look == "look under the seats and behind the linings, 5 min"
