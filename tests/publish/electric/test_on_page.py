from typing import Any

import pytest

from bezelbook.publish.electric.on_page import Electric
from tests.publish.pages_of import pages_about
from tests.reasoning import making

LEAD = {"name": "Lead", "adapter_kind": "load resistor lead"}


@pytest.mark.parametrize(
    ("folder", "content", "has"),
    [
        ("supplies", {"form": "resistor", "value": "20 ohm"}, {"heat"}),
        ("supplies", {"form": "wire", "size": "4 AWG"}, {"wire"}),
        ("supplies", {"form": "tool", "tool_kind": "lever"}, set()),
        ("amplifiers", {"origin": "added"}, {"loads"}),
        ("speakers", {"speaker_kind": "mid", "nominal": "3 in"}, {"load"}),
        ("modules", {"module_kind": "data", "outputs": {"accessory": {}}}, {"outputs"}),
        ("adapters", LEAD | {"resistor": {"value": "20 ohm", "rated": "10 W"}}, {"heat"}),
        ("adapters", LEAD | {"resistor": "not there"}, set()),
        ("adapters", LEAD, set()),
        ("connectors", {"shell": "square"}, set()),
    ],
)
def test_a_part_has_what_belongs_to_its_sort(folder: str, content: dict[str, Any], has: set[str]) -> None:
    record = making.record(folder, "one", {"name": "The one"} | content)
    found = Electric(making.book(record)).of(record)
    assert {key for key, value in found.items() if value} == has
    assert set(found) == {"heat", "wire", "loads", "load", "outputs"}


def test_a_lead_with_a_resistor_in_it_says_how_hot_it_gets() -> None:
    lead = making.record("adapters", "one", LEAD | {"resistor": {"value": "20 ohm", "rated": "10 W"}})
    page = pages_about(lead)["adapters/one.md"]
    assert "How hot it gets" in page.text
    assert "It is rated 10 W, which is too small even for clean sound." in page.text
    assert "How hot it gets" not in pages_about(making.record("adapters", "one", LEAD))["adapters/one.md"].text
