from typing import Any

from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.two_piece import fits_in, pairs, two_piece
from bezelbook.reasoning.wiring_asked.chains import chain_answer, two_piece_answer
from bezelbook.reasoning.wiring_asked.plain import PlainBuild
from tests.reasoning.circuits.a_car import CAR, DASH, after, car, connector, module, plug_in, seen, tee, vehicle
from tests.reasoning.making import record


def answered(*records: Any, job: Any = "replace the radio") -> PlainBuild:
    return chain_answer(car(*records), Job(job))


def test_what_to_take_what_becomes_of_it_and_what_is_lost() -> None:
    box = module(needs=["constant"], outputs={"accessory": {"most": "1 A"}})
    lost = after("two", lost=["camera"])
    alike = connector("offset", looks_like=[{"connector": "square", "difference": "Rib."}])
    found = answered(seen("one"), plug_in("plug-in", "constant", "ground", "left front +"), box, lost, alike)
    assert found["plugs"] == [
        {"plug": "The square", "state": "known", "notes": ["one"], "not_to_be_taken_for": ["The offset: Rib"]}
    ]
    assert [(piece["kind"], piece["id"], piece["ends"], piece["in_hand"]) for piece in found["pieces"]] == [
        ("adapter", "plug-in", "The square to bare leads", "to order"),
        ("module", "box", "", "to order"),
    ]
    circuits = {one["circuit"]: one for one in found["circuits"]}
    limit = "made by the The box, 1 A at most, a relay for more"
    assert circuits["accessory"] == {"circuit": "accessory", "becomes": "used", "words": limit, "must": True}
    assert circuits["ground"]["must"]
    [camera] = [one for one in found["kept"] if one["function"] == "camera"]
    lost_here = {"goes": "lost", "said": "lost in this build", "until_settled": None, "notes": ["two"]}
    assert camera == {"function": "camera"} | lost_here
    [minus] = [one for one in found["lacks"] if one["circuit"] == "left front -"]
    assert minus == {
        "circuit": "left front -",
        "why": "not traced through the The plug-in: cap each end until somebody has",
        "must": True,
        "remedies": ["look in the plug for the cavities; failing that, new leads to the speakers"],
    }
    assert (found["sure"], found["load"], found["beside"]) == ("worked out", None, [])
    assert [look["what"] for look in found["unknown"]][:1] == [
        "constant, ground and left front +: only as the adapter is sold, or from a car that may have been another build"
    ]


def test_what_is_argued_over_is_lost_until_it_is_settled() -> None:
    found = answered(seen("one"), plug_in(), after("two", lost=["camera"]), after("three", kept=["camera"]))
    [camera] = [one for one in found["kept"] if one["function"] == "camera"]
    assert (camera["goes"], camera["until_settled"]) == ("argued over", "lost")


def test_a_job_that_keeps_the_radio_loses_nothing_and_says_what_stands_beside_it() -> None:
    found = answered(seen("one"), tee(), job="keep it and amplify")
    assert found["kept"] == []
    assert len(found["beside"]) == 1
    assert found["beside"][0].startswith("The amplifier has a constant of its own, fused beside the battery")
    assert found["load"] == (
        "Load resistors across left front ± and right front ± from the radio: unknown. "
        "Nobody tried this build with and without: a ten-minute test with the speakers off."
    )
    bare = answered(seen("one"), job="keep it and amplify")
    assert (bare["circuits"], bare["lacks"]) == ([], []), "there is no piece of which to say it"
    [would_do] = bare["beside"]
    assert would_do.startswith("It takes a T that goes between The square and the radio")


def test_where_no_sister_lends_anything_nothing_stands_beside_it() -> None:
    assert answered()["beside"] == []


def test_what_a_sister_lends_is_told_and_no_more() -> None:
    sister = record("vehicles", "sister", vehicle().model_dump(mode="json", exclude={"id"}, exclude_none=True))
    other = seen("one", vehicle="sister")
    found = answered(vehicle(sisters=["sister"]), sister, other)
    assert found["beside"] == ["a sister platform has The square; told, and no more than that"]
    both = (other, connector("round"), seen("two", "round", vehicle="sister"))
    either = answered(vehicle(sisters=["sister"]), sister, *both)
    assert either["beside"] == ["a sister platform has The square or The round; told, and no more than that"]
    assert (found["pieces"], found["circuits"], found["lacks"]) == ([], [], [])


def test_a_radio_in_two_pieces_has_both_places_and_its_cable() -> None:
    display = {"name": "Display", "size_class": "two-piece display", "goes_with": ["box"], "cable": "2 m"}
    pieces = (
        record("head_units", "display", display),
        record("head_units", "box", {"name": "Box", "size_class": "two-piece box"}),
    )
    own = car(*pieces, seen("one"), plug_in())
    found = two_piece_answer(two_piece(own, pairs(own.book)[0], fits_in(own.book)))
    assert found["seats"] == [{"piece": "Display", "place": DASH, "verdict": "nobody has tried"}]
    assert found["words"].startswith("display: nobody has tried; box: no place for it yet; leads: complete, once")
    assert {one["goes"] for one in found["kept"]} == {"not looked"}
    assert found["cable"] == "2000 mm (78.74 in); never laid in this vehicle"
    assert found["unknown"][-1]["what"].startswith("how long the way is")
    assert own.vehicle.id == CAR
