"""Cars change in mid generation, and their book was told less of it than there is."""

from random import Random

import pytest

from tests.simulator.book import records
from tests.simulator.box_world import World
from tests.simulator.changes import TOLD, changing_doors, changing_openings
from tests.simulator.counter import Draw
from tests.simulator.regimes import HONEST
from tests.simulator.shop_years import notes_of


def worlds(draw: Draw) -> list[World]:
    return [draw(Random(f"change {number}")) for number in range(30)]


@pytest.mark.parametrize("draw", [changing_openings, changing_doors])
def test_each_way_of_not_being_told_comes_about_and_a_running_change_falls_within_a_year(draw: Draw) -> None:
    axes = [platform.axes[0] for world in worlds(draw) for platform in world.platforms]
    assert {axis.told for axis in axes} == set(TOLD)
    assert {axis.name for axis in axes} == {"build", "audio", "body", "hand"}
    builds = [axis for axis in axes if axis.name == "build"]
    assert all(set(axis.years["early"]) & set(axis.years["late"]) for axis in builds)


def test_a_note_says_nothing_of_what_its_book_does_not_know() -> None:
    dice = Random("unknown")
    world = changing_openings(dice)
    known = {platform.name: {axis.name for axis in platform.told} for platform in world.platforms}
    for note in notes_of(dice, world, HONEST, 40):
        if "vehicle" in note.content:
            splits = note.content.get("splits", {})
            assert isinstance(splits, dict)
            assert set(splits) <= known[str(note.content["vehicle"])]


def test_the_record_of_a_sharp_change_names_no_year_twice() -> None:
    for world in worlds(changing_openings):
        sharp = {one.name: one.axes[0] for one in world.platforms if one.axes[0].told == "between two years"}
        for path, record in records(world):
            name = path.removeprefix("vehicles/").removesuffix(".yaml")
            if name in sharp and isinstance(record, dict):
                values = record["splits"][sharp[name].name]["values"].values()
                years = [year for value in values for year in value.get("years", [])]
                assert len(years) == len(set(years))
