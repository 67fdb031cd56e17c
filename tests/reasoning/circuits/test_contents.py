from typing import Any

import pytest

from bezelbook.reasoning.circuits.contents import Held, cavities_meant, contents
from bezelbook.values.words import Circuit
from tests.reasoning.circuits.a_car import DOOR, car, connector, every_cavity, metered, seen

NOT_SAID = {"corner": "upper-left", "view": "wire entry", "direction": "row by row"}


def held(*records: Any, circuit: Circuit = "constant") -> Held | None:
    return contents(car(*records), "square").get(circuit)


def test_what_was_metered_on_this_build_is_known() -> None:
    assert held(metered("one", (1, "constant"))) == Held("known", frozenset({1}), ("one",))
    assert held(metered("one", (1, "a brown wire"))) is None
    after_it = metered("one", (1, "a brown wire"), (2, "constant"))
    assert held(after_it) == Held("known", frozenset({2}), ("one",))


def test_hearsay_and_a_car_that_may_have_been_another_only_say_so() -> None:
    assert held(metered("one", (1, "constant"), sure="told")) == Held("said", frozenset({1}), ("one",))
    assert held(metered("one", (1, "constant"), splits={"build": "late"})) == Held("said", frozenset({1}), ("one",))
    cavities = [{"cavity": 1, "carries": "constant", "sure": "told"}]
    assert held(metered("one", cavities=cavities)) == Held("said", frozenset({1}), ("one",))
    assert held(metered("one", (1, "constant"), splits={"build": "early"})) is None


def test_a_number_counted_from_the_other_side_is_the_mirror_image() -> None:
    assert held(metered("one", (1, "constant"), view="wire entry")) == Held("known", frozenset({4}), ("one",))
    assert held(metered("one", (6, "constant"), view="wire entry")) == Held("known", frozenset({7}), ("one",))


def test_with_the_view_left_blank_it_may_be_either() -> None:
    assert held(metered("one", (1, "constant"), view=None)) == Held("known", frozenset({1, 4}), ("one",))
    both = (metered("one", (1, "constant"), view=None), metered("two", (4, "constant")))
    assert held(*both) == Held("known", frozenset({4}), ("one", "two"))


@pytest.mark.parametrize(
    ("changes", "view", "meant"),
    [
        ({"numbering": None}, "wire entry", {3}),
        ({"rows": None}, "wire entry", set()),
        ({"rows": None}, None, {3}),
        ({}, "mating face", {3}),
        ({"numbering": NOT_SAID}, "mating face", {2}),
    ],
)
def test_a_mirror_image_needs_rows_columns_and_a_view(changes: dict[str, Any], view: object, meant: set[int]) -> None:
    record = connector(**{key: value for key, value in changes.items() if value is not None})
    bare = {key: None for key, value in changes.items() if value is None}
    assert cavities_meant(record.model_copy(update=bare), 3, view) == meant  # type: ignore[arg-type]


def test_two_cavities_for_one_circuit_are_argued_over() -> None:
    found = held(metered("one", (1, "constant")), metered("two", (2, "constant")))
    assert found == Held("argued over", frozenset({1, 2}), ("one", "two"))
    told = [metered(name, (number, "constant"), sure="told") for name, number in (("one", 1), ("two", 2))]
    assert held(*told) == Held("argued over", frozenset({1, 2}), ("one", "two"))


def test_one_cavity_with_two_circuits_is_argued_over() -> None:
    notes = (metered("one", (4, "constant"), (7, "accessory")), metered("two", (7, "constant"), (4, "accessory")))
    assert [held(*notes, circuit=circuit).state for circuit in ("constant", "accessory")] == ["argued over"] * 2  # type: ignore[union-attr]
    emptied = (metered("one", (4, "constant")), metered("two", (4, "nothing")))
    assert held(*emptied) == Held("argued over", frozenset({4}), ("one", "two"))


def test_one_to_one_mirror_of_an_unknown_face_is_nowhere_for_sure() -> None:
    flat = connector().model_copy(update={"rows": None})
    assert held(flat, metered("one", (1, "constant"), view="wire entry")) == Held("known", frozenset(), ("one",))
    told = metered("one", (1, "constant"), view="wire entry", sure="told")
    assert held(flat, told) == Held("said", frozenset(), ("one",))


def test_a_plug_read_whole_lacks_what_was_not_found_in_it() -> None:
    assert held(every_cavity(), circuit="speed") == Held("not there", frozenset(), ())
    assert held(every_cavity(), circuit="constant").state == "known"  # type: ignore[union-attr]
    assert held(every_cavity(sure="told"), circuit="speed") is None
    endless = connector().model_copy(update={"cavities": None})
    assert held(endless, every_cavity(), circuit="speed") is None


def test_accessory_that_comes_over_the_bus_is_on_no_wire() -> None:
    bus = seen("bus", accessory_supply="data bus")
    assert held(bus, circuit="accessory") == Held("not there", frozenset(), ("bus",))
    assert held(bus, metered("one", (3, "accessory")), circuit="accessory") == Held(
        "argued over", frozenset({3}), ("one", "bus")
    )
    wire = metered("wire", (1, "constant"), accessory_supply="wire")
    assert held(bus, wire, circuit="accessory") == Held("argued over", frozenset(), ("bus", "wire"))
    both = (metered("one", (3, "accessory")), metered("two", (4, "accessory")))
    assert held(*both, bus, circuit="accessory") == Held("argued over", frozenset({3, 4}), ("one", "two", "bus"))


def test_a_bus_seen_on_a_car_of_which_the_package_was_left_blank_rules_no_wire_out() -> None:
    assert held(seen("bus", accessory_supply="data bus", splits={"build": "late"}), circuit="accessory") is None


def test_accessory_by_wire_in_another_plug_place_or_package_says_nothing_of_this_plug() -> None:
    for other in (
        seen("wire", "round", accessory_supply="wire"),
        seen("wire", place=DOOR, accessory_supply="wire"),
        seen("wire", accessory_supply="wire", splits={"audio": "upgraded"}),
    ):
        assert held(other, connector("round"), circuit="accessory") is None


def test_accessory_that_is_said_to_come_by_wire_is_said_until_it_is_metered() -> None:
    wire = seen("wire", accessory_supply="both")
    assert held(wire, circuit="accessory") == Held("said", frozenset(), ("wire",))
    assert held(wire, metered("one", (3, "accessory")), circuit="accessory") == Held("known", frozenset({3}), ("one",))
    assert held(wire, every_cavity(), circuit="accessory").state == "known"  # type: ignore[union-attr]
    told = metered("one", (3, "accessory"), sure="told")
    assert held(wire, told, circuit="accessory") == Held("said", frozenset({3}), ("one",))
