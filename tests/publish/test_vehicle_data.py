from typing import Any

import pytest

from bezelbook.publish.knowledge import Knowledge
from bezelbook.publish.opening import Opening, openings_of
from bezelbook.publish.site_file import SiteFile
from bezelbook.publish.vehicle_data import vehicle_data
from tests.publish.scripts import handed_over

HATCH = "compact-hatch-2"


@pytest.fixture(scope="module")
def told(worked: Knowledge, dash: Opening) -> dict[str, Any]:
    return vehicle_data(worked.book, HATCH, [dash])


@pytest.fixture(scope="module")
def place(told: dict[str, Any]) -> dict[str, Any]:
    found: dict[str, Any] = told["places"]["centre-dash"]
    return found


def test_splits_come_with_their_tells_and_years(told: dict[str, Any]) -> None:
    assert told["splits"]["build"]["late"] == {"tell": "a square plug behind the left vent, 2 min", "years": [3, 4, 5]}


def test_every_choice_has_an_answer_for_every_head_unit(
    worked: Knowledge, told: dict[str, Any], place: dict[str, Any]
) -> None:
    assert set(place["choices"]) == {
        f"{build}|{mount}" for build in ("", "build=early", "build=late") for mount in ("", "flush-kit")
    }
    for choice in place["choices"].values():
        assert choice["units"].keys() == worked.book.head_units.keys()
        assert all(0 <= number < len(told["answers"]) for number in choice["units"].values())
    late = told["answers"][place["choices"]["build=late|"]["units"]["two-high-a"]]
    assert (late["verdict"], late["sure"], late["witnesses"]) == ("goes in", "fitted", 1)


def test_notes_are_told_once_and_pointed_at(told: dict[str, Any]) -> None:
    for answer in told["answers"]:
        for note, why, stands in answer["notes"]:
            assert note in told["notes"]
            assert why
            assert stands in {"strong", "weak", "aside"}
    [aside] = {note for answer in told["answers"] for note, _, stands in answer["notes"] if stands == "aside"}
    assert aside == "e-six-and-a-half"


def test_a_typed_size_gets_what_an_answer_says_whatever_it_is(told: dict[str, Any], place: dict[str, Any]) -> None:
    typed = place["choices"]["|"]["typed"]
    assert typed["words"] == [
        " in the centre dash of the compact hatch, generation 2, build not known, with ",
        ", nothing cut, loom aside, plugs on",
    ]
    [[axis, what, look, values]] = typed["open"]
    assert (axis, what) == ("build", "the build is not known")
    assert "square plug" in look
    assert values == [["early", [0]], ["late", [1]]]
    whats = [told["missing"][number][0] for number in typed["unknown"]]
    assert whats[:2] == ["how much its plug and bend need", "where its plug leaves"]
    assert not any("measured" in what for what in whats)


def test_blank_ninths_are_told_for_each_setting(place: dict[str, Any]) -> None:
    early, late = place["blank"]
    assert (len(early), late) == (9, [])


def test_what_each_note_shows_by_itself_is_told(place: dict[str, Any]) -> None:
    alone = dict(place["alone"])
    assert list(alone) == ["a-short-goes-in", "b-deep-does-not", "duct-measured", "f-copy-of-a"]
    assert "leaves" not in alone["a-short-goes-in"]["1"]
    assert max(alone["a-short-goes-in"]["1"]["sure"]) > 0
    assert alone["b-deep-does-not"]["1"]["leaves"]
    assert "0" not in alone["duct-measured"]


def test_openings_of_other_vehicles_are_left_to_their_own_scripts(
    demo: Knowledge, demo_files: tuple[SiteFile, ...]
) -> None:
    scripts = {file.path: file.text for file in demo_files}
    openings = openings_of(demo.book)
    for vehicle in demo.book.vehicles:
        _, data = handed_over(scripts[f"data/vehicles/{vehicle}.js"])
        assert set(data["places"]) == {one.id for one in openings if one.vehicle == vehicle}
