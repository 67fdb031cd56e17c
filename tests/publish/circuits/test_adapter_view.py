from typing import Any

from bezelbook.publish.address import Links
from bezelbook.publish.circuits.adapter_view import adapter_lines, mates
from tests.reasoning.circuits.a_car import book, plug_in, seen, tee

LATE = {"build": "late"}


def test_an_adapter_page_says_for_whom_it_is_right_and_how_to_tell() -> None:
    base = book(plug_in(), seen("one", splits=LATE))
    line = adapter_lines(base, base.adapters["plug-in"], Links("adapters/plug-in.md", base))[0]
    assert (line.is_, line.vehicle, line.place, line.builds) == ("Right", "Small van", "dash centre", "late")
    assert (line.adapter, line.vehicle_at) == ("The plug-in", "../vehicles/small-van-1.html")
    assert "Square vents" in line.tell


def halves(*records: Any) -> list[tuple[str, str]]:
    base = book(*records)
    found = mates(base, base.connectors["square"], Links("connectors/square.md", base))
    return [(name, half) for name, _, half in found.adapters]


def test_a_connector_page_says_what_mates_with_it_and_by_which_half() -> None:
    into = plug_in("into", ends={"a": {"connector": "square", "side": "vehicle side"}})
    blank = plug_in("blank", ends={"a": {"connector": "square"}})
    other = plug_in("other", ends={"a": {"connector": "round", "side": "unit side"}})
    assert halves(plug_in(), tee(), into, blank, other) == [
        ("The blank", "nobody looked which half it is"),
        ("The into", "goes into the radio"),
        ("The plug-in", "takes the car's plug"),
        ("The tee", "takes the car's plug"),
    ]


def test_and_in_which_cars_it_was_seen() -> None:
    base = book(seen("one", splits=LATE), seen("two", splits={}))
    found = mates(base, base.connectors["square"], Links("connectors/square.md", base))
    assert [(words, state) for words, _, state in found.places] == [("Small van, dash centre, late", "known")]
