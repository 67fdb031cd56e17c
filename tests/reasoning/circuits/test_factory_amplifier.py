from dataclasses import replace
from typing import Any

from bezelbook.reasoning.circuits.factory_amplifier import FactoryAmplifier, amplifier_look, factory_amplifier
from bezelbook.reasoning.unknowns import Missing
from tests.reasoning.circuits.a_car import DASH, DOOR, car, seen, vehicle

UPGRADED = {"audio": "base"}


def note(name: str = "one", amplifier: str = "there", **content: Any) -> Any:
    return seen(name, None, **({"place": DOOR, "splits": UPGRADED, "amplifier": amplifier} | content))


def test_one_that_was_seen_in_this_package_is_there_wherever_the_note_was_made() -> None:
    assert factory_amplifier(car(note())) == FactoryAmplifier("known", "front door left", ("one",))
    assert factory_amplifier(car(note(amplifier_where="boot floor"))).where == "boot floor"
    nothing = FactoryAmplifier("not looked", "", ())
    assert factory_amplifier(car(note(place="attic"))) == nothing, "the vehicle has no such place"
    assert factory_amplifier(car(note(place="loft-hatch"), place="loft-hatch")).where == "loft hatch"
    named = vehicle(places={"dash-centre": {"kind": "plain opening", "side": "centre", "name": "The hole"}})
    assert factory_amplifier(car(named, note(place="dash-centre"))).where == "The hole"


def test_another_package_or_a_blank_one_says_nothing() -> None:
    assert factory_amplifier(car(note(splits={"audio": "upgraded"}))).state == "not looked"
    assert factory_amplifier(car(note(splits={}))).state == "not looked"


def test_seen_and_not_seen_is_argued_over() -> None:
    found = factory_amplifier(car(note(), note("two", "not there")))
    assert (found.state, found.notes) == ("argued over", ("one", "two"))


def test_what_to_look_at_depends_on_what_was_seen() -> None:
    assert amplifier_look(car(note("one", "not there"))) is None
    assert amplifier_look(car(note())) == Missing(
        "a factory amplifier is there (front door left), and the speaker leads go to it",
        "meter at its plug which level it takes and what wakes it, 10 min; or run leads round it",
        "no sound, or the wrong level",
    )
    blank = Missing(
        "whether a factory amplifier sits behind the speaker leads",
        "look under the seats and behind the linings, 5 min; from the seat: upgraded: Nine grilles",
        "no sound, if there is one and nothing wakes it",
    )
    assert amplifier_look(car()) == blank
    argued = "whether a factory amplifier sits behind the speaker leads is argued over"
    assert amplifier_look(car(note(), note("two", "not there"))) == replace(blank, what=argued)


def test_the_package_is_told_from_the_seat_where_there_is_one() -> None:
    only_door = {"values": {"few": {"tell": "Three grilles."}, "many": {}}, "bears_on": {"places": [DOOR]}}
    look = amplifier_look(car(vehicle(splits={"audio": only_door}), audio="base"))
    assert look is not None
    assert look.look == "look under the seats and behind the linings, 5 min", "that bears on the door alone"
    at_dash = only_door | {"bears_on": {"places": [DASH]}}
    look = amplifier_look(car(vehicle(splits={"audio": at_dash}), audio="few"))
    assert look is not None
    assert look.look == "look under the seats and behind the linings, 5 min; from the seat: few: Three grilles"
    build = {"build": {"values": {"late": {}}, "bears_on": {"subjects": ["plug"]}}}
    look = amplifier_look(car(vehicle(splits=build), audio="base"))
    assert look is not None
    assert look.look == "look under the seats and behind the linings, 5 min"
