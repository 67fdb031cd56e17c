"""What a note says on each axis, and what it leaves blank."""

from bezelbook.reasoning.differing.axes import said_on
from tests.reasoning import making


def test_a_note_of_something_tried_has_its_state_and_its_splits() -> None:
    car = making.vehicle(splits={"build": {"values": {"early": {}, "late": {"years": [3]}}}})
    said = said_on(car, making.tried(mounts=["kit", "strap"], loom="aside", year=3))
    assert said["build"] == "late"
    assert said["mount"] == "kit and strap"
    assert said["loom"] == "aside"
    assert said["glass"] is None
    assert "datum" not in said


def test_a_split_is_named_after_what_it_differs_in() -> None:
    car = making.vehicle(splits={"sound": {"differs_in": "audio", "values": {"base": {}, "upgraded": {}}}})
    assert said_on(car, making.tried(splits={"sound": "base"}))["package"] == "base"
    assert said_on(None, making.tried()).keys().isdisjoint({"build", "package"})


def test_readings_have_a_datum_only_where_all_of_them_name_the_same() -> None:
    face = {"datum": "sub-dash face", "tool": "tape"}
    bezel = {"datum": "finished bezel face", "tool": "tape"}
    same = making.measured("m", making.reading("depth", "205 mm", **face), making.reading("depth", "150 mm", **face))
    other = making.measured("m", making.reading("depth", "205 mm", **face), making.reading("depth", "150 mm", **bezel))
    assert said_on(None, same)["datum"] == "sub-dash face"
    assert said_on(None, other)["datum"] is None
    assert said_on(None, other)["tool"] == "tape"
    assert "plugs" not in said_on(None, other)


def test_a_metered_plug_has_its_view_and_a_bench_note_has_nothing() -> None:
    cavities = [{"cavity": 1, "carries": "constant"}]
    metered = making.record(
        "notes",
        "m",
        {
            "form": "metered",
            "vehicle": making.CAR,
            "place": making.HOLE,
            "plug": "p",
            "view": "mating face",
            "cavities": cavities,
        },
    )
    assert said_on(None, metered)["view"] == "mating face"
    assert said_on(None, making.record("notes", "b", {"form": "bench", "part": "p"})) == {}
