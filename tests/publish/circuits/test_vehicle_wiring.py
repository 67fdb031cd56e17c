from typing import Any

from bezelbook.publish.address import Links, vehicle_page
from bezelbook.publish.circuits.vehicle_wiring import PlaceWiring, Wiring
from tests.publish.pages_of import pages_about
from tests.reasoning.circuits.a_car import CAR, DOOR, book, connector, metered, plug_in, seen, vehicle

LATE = {"build": "late"}


def wiring(*records: Any) -> list[PlaceWiring]:
    base = book(*records)
    return list(Wiring(base).of(base.vehicles[CAR], Links(vehicle_page(CAR), base)))


def test_a_place_that_nobody_looked_at_and_nothing_was_made_for_is_left_out() -> None:
    assert wiring() == []
    assert [place.name for place in wiring(plug_in())] == ["dash centre"]


def test_builds_that_are_alike_stand_together_under_what_they_share() -> None:
    [dash] = wiring(seen("one", splits=LATE), plug_in())
    assert [build.title for build in dash.builds] == ["early", "late"]
    assert dash.tell == "early: Round vents; late: Square vents; upgraded: Nine grilles"
    assert [job.title for job in dash.builds[1].jobs] == [
        "Replace the radio",
        "Keep the radio, amplify the fronts",
        "Keep the radio, add a sub",
    ]
    assert [line.is_ for line in dash.adapters] == ["Right"]


def test_a_plug_says_what_it_carries_and_what_it_must_not_be_taken_for() -> None:
    offset = connector("offset", looks_like=[{"connector": "square", "difference": "Rib."}])
    [dash] = wiring(metered("one", (1, "constant"), (1, "ground"), accessory_supply="data bus"), offset)
    base, *_ = [build.plugs[0] for build in dash.builds if build.plugs and build.plugs[0].carries]
    assert ("constant", "argued over, cavity 1") in base.carries
    assert all(circuit != "accessory" for circuit, _ in base.carries)
    assert [(name, difference) for name, _, difference in base.alikes] == [("The offset", "Rib.")]
    assert base.at == "../connectors/square.html"


def test_a_plug_without_a_record_says_so() -> None:
    [dash] = wiring(seen("one", "purple one", splits=LATE))
    [plug] = next(build.plugs for build in dash.builds if build.plugs)
    assert (plug.words, plug.at, plug.state) == ("purple one", "", "known, no record of it yet")


def test_a_speakers_place_has_its_lead_and_no_jobs() -> None:
    [door] = wiring(seen("one", place=DOOR))
    assert (door.builds[0].jobs, door.builds[0].kept) == ((), ())
    assert all(build.speaker is not None for build in door.builds)


def test_a_place_without_splits_is_every_build() -> None:
    [dash] = wiring(vehicle(splits={}), seen("one", splits={}))
    assert ([build.title for build in dash.builds], dash.tell) == (["Every build"], "")


def test_the_page_shows_it_all() -> None:
    aerial = seen("two", splits=LATE, plug=None, aerials=[{"plug": "fat one", "amplified": "there"}])
    pages = pages_about(vehicle(), connector(), plug_in(), seen("one", splits=LATE), aerial, seen("three", place=DOOR))
    page = pages[vehicle_page(CAR)]
    words = page.text
    for said in (
        "Replace the radio",
        "Kept and lost",
        "fat one, with an amplifier",
        "No lead in the book fits it",
        "No speaker lead",
    ):
        assert said in words
    assert page.all("svg", kind="wires")
    assert "Right for late" in words
    assert "What it is right for" in pages["adapters/plug-in.md"].text
    assert "takes the car's plug" in pages["connectors/square.md"].text
