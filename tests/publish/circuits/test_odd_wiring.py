"""Records that are valid and odd: ends and modules that are not there, words for ids, cavities beyond the plug."""

from typing import Any

import pytest

from bezelbook.publish.address import vehicle_page
from tests.publish.pages_of import pages_about
from tests.reasoning.circuits.a_car import CAR, connector, metered, module, plug_in, seen, tee, tried, vehicle
from tests.reasoning.making import record

ANYWHERE = {"connector": "gone", "side": "unit side"}
ODD: dict[str, tuple[Any, ...]] = {
    "no ends": (plug_in(ends={}),),
    "ends that are nothing": (plug_in(ends={"a": {}, "b": {}}),),
    "an end of a connector that is gone": (plug_in(ends={"a": ANYWHERE, "b": {"ends_in": "leads"}}),),
    "ways between ends that it does not have": (
        plug_in(
            ways={"speed": {"does": "passes", "between": ["x", "y"]}, "mute": {"does": "passes", "between": ["a"]}}
        ),
    ),
    "a cut that comes out nowhere": (tee("tee", ends={"a": {"connector": "square", "side": "unit side"}}),),
    "what it makes comes out at an end that it lacks": (
        plug_in(ways={"USB": {"does": "makes", "out_at": {"a": "z"}}}),
    ),
    "a module that is gone": (plug_in(needs_module=["gone"]), module(needs_adapter=["gone"])),
    "a circle of needs": (plug_in(needs_module=["box"]), module(needs_adapter=["plug-in"], needs=["speed"])),
    "both halves the same": (
        plug_in(
            ends={"a": {"connector": "square", "side": "unit side"}, "b": {"connector": "square", "side": "unit side"}}
        ),
    ),
    "an adapter and a module of one name": (plug_in("same"), module("same"), tried("t", adapters=["same"])),
    "cavities beyond the plug": (metered("m", (190, "constant"), (191, "no circuit at all")),),
    "a connector of which nothing is known": (record("connectors", "square", {"name": "Square", "shell": "other"}),),
    "a connector that looks like itself": (
        connector(
            looks_like=[{"connector": "square", "difference": "None."}, {"connector": "gone", "difference": "x"}]
        ),
    ),
    "made for splits and values that are not there": (
        plug_in(made_for=[{"vehicle": CAR, "splits": {"roof": "high", "build": "middle"}}, {"vehicle": "gone"}]),
    ),
    "builds that are not there": (seen("m", splits={"build": "middle", "roof": "high"}, year=40),),
    "a place that the vehicle does not list": (seen("m", place="attic"),),
    "aerials of words and of nothing": (seen("m", aerials=[{}, {"plug": "fat one"}, {"plug": "square"}]),),
    "words with markup": (
        seen("m", "<b>purple</b>"),
        plug_in(known_faults=["{{ 7 * 7 }}\n\n# no"], about="<b>purple</b>"),
    ),
    "a sister that is itself": (vehicle(sisters=[CAR, "gone"]),),
    "nothing was ever built": (vehicle(never_built=[{"build": "early"}, {"build": "late"}]),),
}


@pytest.mark.parametrize("odd", ODD)
def test_an_odd_book_still_has_its_page(odd: str) -> None:
    given = {one.id: one for one in (connector(), vehicle(), seen("one"), plug_in(), tee())}
    page = pages_about(*(given | {one.id: one for one in ODD[odd]}).values())[vehicle_page(CAR)]
    assert "Wiring" in [heading.text for heading in page.all("h2")]
    assert "purple" not in [one.text for one in page.all("b")]
