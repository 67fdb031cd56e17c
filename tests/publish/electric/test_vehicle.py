from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.publish.address import Links, vehicle_page
from bezelbook.publish.electric.vehicle import LoadsPart, loads_part
from tests.publish.pages_of import pages_about
from tests.reasoning import making
from tests.reasoning.electric.test_factory_channels import PLACES, seen
from tests.reasoning.electric.test_level import metered
from tests.reasoning.electric.test_resistor_rule import AUDIO, NEEDS, NEEDS_NOT, UPGRADED, after, resistor
from tests.reasoning.making import CAR


def car(**content: Any) -> Record:
    return making.vehicle(**{"places": PLACES, "splits": {"sound": AUDIO}, "supply": "12 V"} | content)


def part(*notes: Record, **content: Any) -> LoadsPart:
    book = making.book(car(**content), *notes)
    return loads_part(book, book.vehicles[CAR], Links(vehicle_page(CAR), book))


def test_a_channel_is_said_with_its_notes() -> None:
    speaker = {"impedance": "4 ohm", "together_with": ["mirror"], "driven_by": "factory amplifier"}
    places = PLACES | {"door": PLACES["door"] | {"name": "left door"}}
    [row] = part(
        seen("a", "door", speaker, splits=UPGRADED),
        seen("b", "mirror", {"impedance": "4 ohm"}, splits=UPGRADED),
        places=places,
    ).channels
    assert (row.places, row.build, row.driven_by) == ("left door and mirror", "upgraded", "factory amplifier")
    assert (row.speakers, row.sees) == ("4 ohm; 4 ohm", "2 ohm")
    assert [at for _, at in row.notes] == [f"{CAR}.html#note-a", f"{CAR}.html#note-b"]


def test_the_amplifiers_that_may_stand_in_are_named_once_the_load_is_known() -> None:
    alone = seen("a", "door", {"impedance": "2 ohm", "together_with": []})
    two = making.record("amplifiers", "two", {"name": "Two", "origin": "added", "least_load": "2 ohm"})
    four = making.record("amplifiers", "four", {"name": "Four", "origin": "added", "least_load": "4 ohm"})
    [row] = part(alone, two, four).channels
    assert row.drives == (
        ("fine", (("Two", "../amplifiers/two.html"),)),
        ("below the minimum", (("Four", "../amplifiers/four.html"),)),
    )
    [unknown] = part(seen("a", "door", {"impedance": "2 ohm"}), two).channels
    assert unknown.drives == ()
    text = pages_about(car(), alone, two, four)[f"vehicles/{CAR}.md"].text
    assert "below the minimum: Four" in text


def test_a_tweeter_behind_a_capacitor_is_said_both_ways() -> None:
    low = {"impedance": "4 ohm", "together_with": ["mirror"]}
    high = {"impedance": "4 ohm", "filter": {"capacitor": "4.7 µF"}}
    [row] = part(seen("a", "door", low), seen("b", "mirror", high)).channels
    assert row.sees == "4 ohm in the low notes, 2 ohm where all play"


def test_what_nobody_knows_is_said_and_where_to_look() -> None:
    [row] = part(seen("a", "door", {"dc_resistance": "3.6 ohm"})).channels
    assert row.sees == "not known; a meter's reading points at 4 ohm to 4.5 ohm, worked out"
    assert row.speakers == "not looked"
    page = pages_about(car(), seen("a", "door", {"dc_resistance": "3.6 ohm"}))[f"vehicles/{CAR}.md"].text
    assert "What else hangs on this channel: a tone on one speaker's leads" in page
    assert "Nobody looked at a factory speaker here" in pages_about(car())[f"vehicles/{CAR}.md"].text
    [bare] = part(seen("a", "door", {"driven_by": "radio"})).channels
    assert bare.sees == "not known"


def test_a_place_that_the_vehicle_does_not_list_is_called_by_its_words() -> None:
    [row] = part(seen("a", "far-attic", {"impedance": "4 ohm"})).channels
    assert row.places == "far attic"


def test_a_supply_that_can_hurt_is_said_first() -> None:
    assert part().caution == ""
    said = pages_about(car(supply="48 V present"))[f"vehicles/{CAR}.md"].all("p", kind="caution")
    assert "There is 48 V in this car" in said[0].text


def test_resistors_are_told_package_by_package_and_only_where_a_note_tells_of_any() -> None:
    assert part().resistors == ()
    base, upgraded = part(after("a", NEEDS, splits=UPGRADED)).resistors
    assert (base.package, base.says, base.heat) == ("base", "unknown", None)
    assert [missing.look[:11] for missing in base.unknown] == ["ten minutes"]
    assert (upgraded.package, upgraded.says) == ("upgraded", "needs it, by one job")
    assert [quoted.words for quoted in upgraded.proven] == ["20 ohm, with: works, without: muted – needs it"]
    assert upgraded.heat is not None
    assert upgraded.unknown == ()


def test_a_level_that_was_metered_on_that_package_is_told_with_the_heat() -> None:
    notes = (after("a", NEEDS, splits=UPGRADED), metered("m", "10 V"))
    _, upgraded = part(*notes).resistors
    assert upgraded.heat is not None
    assert upgraded.heat.rows[-1][:2] == ("output metered here, loud, 10 V", "5 W")


def test_what_is_argued_over_says_what_to_do_until_then() -> None:
    _, upgraded = part(after("a", NEEDS, splits=UPGRADED), after("b", NEEDS_NOT, splits=UPGRADED)).resistors
    assert upgraded.says == "argued over; until settled: needs it, by two jobs"
    assert len(upgraded.against) == 1


def test_what_proves_nothing_is_quoted_beside_it_with_the_reason() -> None:
    odd = resistor("20 ohm") | {"rated": "10 W", "across": ["left front +"], "fixed_to": "foam or tape"}
    base, _ = part(after("a", odd)).resistors
    [quoted] = base.beside
    what, _, why = quoted.words.partition(" – ")
    assert what == (
        "20 ohm, rated 10 W, across left front +, with: not looked, without: not looked, fixed to foam or tape"
    )
    assert why == "which package it was is not looked"


def test_a_car_without_packages_has_one_for_every_car() -> None:
    [row] = part(after("a", NEEDS), splits={}).resistors
    assert (row.package, row.says) == ("every car", "needs it, by one job")


def test_its_page_shows_proof_against_and_beside() -> None:
    notes = (after("a", NEEDS, splits=UPGRADED), after("b", NEEDS_NOT, splits=UPGRADED), after("c", NEEDS))
    text = pages_about(car(), *notes)[f"vehicles/{CAR}.md"].text
    assert "Upgraded: argued over" in text
    assert "Tried without, and works:" in text
    assert "Quoted beside it, and proves nothing:" in text
    assert "5.2 W" in text
    assert "Only on circuits of a factory amplifier that stays" in text
