from typing import Any

from bezelbook.reasoning.circuits.proven import NEVER, Used
from bezelbook.reasoning.circuits.suits import Suit, adapter_suits, carried, module_suits, reads_bus
from tests.reasoning.circuits.a_car import CAR, DOOR, car, metered, module, plug_in, tee, tried


def suit(adapter: Any, *records: Any) -> Suit:
    return adapter_suits(car(adapter, *records), adapter)


def test_an_adapter_is_right_for_the_build_that_it_was_made_for() -> None:
    assert suit(plug_in()).is_ == "made for it"
    assert suit(plug_in(made_for=[{"vehicle": CAR, "splits": {"hand": "left"}}])).is_ == "made for it"
    assert suit(plug_in(made_for=[{"vehicle": CAR, "splits": {"build": "early"}}])).is_ == "made for other builds"
    assert suit(plug_in(made_for=[{"vehicle": CAR, "place": DOOR}])).is_ == "made for other cars"
    assert suit(plug_in(made_for=["another-car"])).is_ == "made for other cars"
    assert suit(plug_in(made_for=[])).is_ == "made for none by name"
    assert suit(plug_in(made_for=[])).why == "it does not say for which cars it was made"
    elsewhere = "made for another place of this car: its leads may not be what is there"
    assert suit(plug_in(made_for=["another-car", {"vehicle": CAR, "place": DOOR}])).why == elsewhere
    words = "made for other cars: its leads may not be what this car has there"
    assert suit(plug_in(made_for=["another-car"])) == Suit("made for other cars", words, NEVER)


def test_the_reason_names_the_builds_and_who_fitted_it() -> None:
    other = suit(plug_in(made_for=[{"vehicle": CAR, "splits": {"build": "early"}}]))
    assert other == Suit("made for other builds", "made for early, not for this build", NEVER)
    lines = [{"vehicle": CAR, "splits": {"build": "early", "audio": one}} for one in ("base", "upgraded")]
    assert suit(plug_in(made_for=lines)).why == "made for early, base or early, upgraded, not for this build"
    fitted = tried("one", adapters=["plug-in"], splits={"build": "late"})
    again = tried("two", adapters=["plug-in"], splits={"build": "late"})
    assert suit(plug_in(), fitted, again).why.endswith("; fitted on a car that may have been this build: one, two")
    assert (
        suit(plug_in(), fitted).why
        == "made for this build, as printed; fitted on a car that may have been this build: one"
    )


def test_a_lead_that_goes_by_its_plug_is_right_whatever_the_car() -> None:
    by_shape = suit(plug_in(adapter_kind="speaker lead", made_for=[]))
    assert by_shape == Suit("made for it", "it goes by its plug, whatever the car", NEVER)
    assert not suit(plug_in(adapter_kind="load resistor lead", made_for=[])).right


def test_what_was_fitted_here_is_proven_whoever_it_was_made_for() -> None:
    found = suit(plug_in(made_for=[]), tried("one", adapters=["plug-in"]))
    assert (found.is_, found.right, found.used.notes) == ("proven", True, ("one",))
    twice = suit(plug_in(), tried("one", adapters=["plug-in"]), tried("two", adapters=["plug-in"]))
    assert twice.why == "fitted in this build: one, two"


def test_a_job_in_which_its_circuits_were_wrong_rules_it_out() -> None:
    failed = tried("one", adapters=["plug-in", "box"], verdict="does not", reason="circuit")
    again = tried("two", adapters=["plug-in", "box"], verdict="does not", reason="circuit")
    used = Used(None, (), ("one", "two"), ())
    assert suit(plug_in(), failed, again) == Suit("wrong", "its circuits were not right here: one, two", used)
    box: Any = module()
    assert module_suits(car(box, failed, again), box) == Suit("wrong", "it was not right here: one, two", used)


def test_an_adapter_that_takes_a_circuit_from_another_ones_cavity_is_wrong() -> None:
    crossed = plug_in("plug-in", ways={"constant": {"does": "passes", "cavities": {"a": 7}}})
    clash = suit(crossed, metered("one", (7, "accessory")))
    words = "it takes constant from cavity 7, and this car has accessory there"
    assert clash == Suit("wrong", words, NEVER)
    assert suit(crossed, metered("one", (7, "constant"))).right
    assert suit(crossed, metered("one", (7, "accessory"), sure="told")).right, "hearsay rules nothing out"
    assert suit(crossed).right


def test_cavities_of_an_end_that_does_not_go_to_the_car_clash_with_nothing() -> None:
    way = {"does": "passes", "cavities": {"b": 7, "c": 7, "x": 7}}
    assert suit(tee("tee", ways={"constant": way}), metered("one", (7, "accessory"))).right


def test_what_a_cavity_carries_is_known_only_when_a_note_that_counts_says_so() -> None:
    own = car(metered("one", (1, "constant")))
    assert (carried(own, "square", 1), carried(own, "square", 2)) == ("constant", None)


def test_a_box_that_reads_the_bus_must_be_made_for_that_car() -> None:
    box: Any = module(made_for=[])
    assert not module_suits(car(box), box).right
    plain: Any = module(needs=["constant", "wheel buttons"], made_for=[])
    assert module_suits(car(plain), plain) == Suit("made for it", "it works in any car, as printed", NEVER)
    assert reads_bus(box)
    assert reads_bus(module(needs=[], network="optical ring"))
    assert not reads_bus(plain)
