from bezelbook.reasoning.wiring_asked.question import usual_places
from tests.reasoning.circuits.a_car import CAR, DASH, DOOR, book, seen, vehicle


def test_the_place_in_the_dash_that_has_a_plug_is_meant() -> None:
    dash = {"kind": "plain opening", "side": "centre"}
    two = vehicle(places={"upper": dash, DASH: dash, "under": {"kind": "under seat", "side": "left"}})
    plugged = book(two, seen("one"))
    assert usual_places(plugged, plugged.vehicles[CAR], "add a sub") == (DASH,)
    blank = book(two)
    assert usual_places(blank, blank.vehicles[CAR], "aerial") == ("upper", DASH)
    assert usual_places(blank, blank.vehicles[CAR], "speaker lead") == ()


def test_a_speakers_lead_is_for_every_place_of_a_speaker() -> None:
    base = book()
    assert usual_places(base, base.vehicles[CAR], "speaker lead") == (DOOR,)
