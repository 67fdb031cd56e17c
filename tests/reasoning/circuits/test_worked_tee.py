"""The trade's worked adapter: a T for the late plug, fronts on an amplifier, rears on the radio.

Common practice, no source: constant and ground pass, accessory is not there, fronts are broken out, rears pass. What a
careful shop says: the chain is complete for the speakers; accessory is missing and comes from a module or from the fuse
box with a relay; rears are looped; load resistors on the fronts only where the package is the upgraded one, else
unknown.
"""

from pathlib import Path

import pytest

from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.circuits.cars import cars_of
from bezelbook.reasoning.circuits.chain import Chain, chain
from bezelbook.reasoning.circuits.in_words import verdict_words
from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.look_alikes import look_alikes
from bezelbook.reasoning.circuits.plugs import plugs_at
from bezelbook.reasoning.circuits.remedies import lacks
from bezelbook.reasoning.circuits.resistors import loads
from bezelbook.reasoning.circuits.right_for import every_car, right_for
from bezelbook.reasoning.circuits.table import table
from bezelbook.store.book import load_book

FRONTS = ["left front +", "left front -", "right front +", "right front -"]
REARS = ["left rear +", "left rear -", "right rear +", "right rear -"]


@pytest.fixture(scope="module")
def shop(books: Path) -> KnowledgeBase:
    loaded = load_book(books / "late-t")
    assert loaded.complaints == ()
    return knowledge_base(loaded.records)


def amplified(shop: KnowledgeBase, audio: str) -> Chain:
    [car] = cars_of(shop, shop.vehicles["compact-hatch-2"], "dash-centre", {"build": "late", "audio": audio})
    return chain(car, Job("keep it and amplify"))


@pytest.mark.parametrize("audio", ["base", "upgraded"])
def test_the_chain_is_complete_for_the_speakers_and_accessory_is_missing(shop: KnowledgeBase, audio: str) -> None:
    found = amplified(shop, audio)
    assert [one.record.id for one in found.pieces] == ["t-late"]
    assert verdict_words(found) == "complete for the speakers; missing accessory"


@pytest.mark.parametrize("audio", ["base", "upgraded"])
def test_fronts_are_used_rears_looped_and_supply_goes_on(shop: KnowledgeBase, audio: str) -> None:
    becomes = {row.circuit: row.becomes for row in table(amplified(shop, audio))}
    assert [becomes[one] for one in FRONTS] == ["used"] * 4  # type: ignore[index]
    assert [becomes[one] for one in REARS] == ["looped"] * 4  # type: ignore[index]
    assert (becomes["constant"], becomes["ground"], becomes["accessory"]) == ("looped", "looped", "not there")
    assert becomes["illumination"] == "unknown", "nobody looked at it"


def test_accessory_comes_from_a_module_or_the_fuse_box_with_a_relay(shop: KnowledgeBase) -> None:
    [lack] = [one for one in lacks(amplified(shop, "base")) if one.circuit == "accessory"]
    module, fuse, signal = lack.remedies
    assert (module, "relay" in fuse, "signal" in signal) == (
        "the Bus box, 2 A at most, with a relay for more",
        True,
        True,
    )


def test_load_resistors_go_on_the_fronts_of_the_upgraded_package_alone(shop: KnowledgeBase) -> None:
    upgraded, base = loads(amplified(shop, "upgraded")), loads(amplified(shop, "base"))
    assert upgraded is not None
    assert base is not None
    assert (upgraded.wanted, list(upgraded.circuits), upgraded.values) == ("needed", FRONTS, ("20 ohm",))
    assert (base.wanted, base.values) == ("unknown", ())


def test_the_long_and_the_square_plug_split_early_from_late(shop: KnowledgeBase) -> None:
    cars = cars_of(shop, shop.vehicles["compact-hatch-2"], "dash-centre")
    plugs = {dict(car.build)["build"]: plugs_at(car).connectors for car in cars}
    assert plugs == {"early": ("long-24",), "late": ("square-24",)}


def test_the_offset_key_is_a_look_alike_told_apart_by_its_rib(shop: KnowledgeBase) -> None:
    [found] = look_alikes(shop, "square-24")
    assert found.connector == "square-24-offset"
    assert "right of the middle" in found.difference


def test_the_t_is_right_for_late_and_wrong_for_early(shop: KnowledgeBase) -> None:
    lines = right_for(every_car(shop), shop.adapters["t-late"])
    assert [(line.is_, {dict(build)["build"] for build in line.builds}) for line in lines] == [
        ("right", {"late"}),
        ("wrong", {"early"}),
    ]
    assert "Square vents" in lines[1].tell
