from typing import Any

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.circuits.metered_through import does, leads_of, links_of, made_by_itself
from bezelbook.reasoning.circuits.wiring import Link
from tests.reasoning.circuits.a_car import plug_in, tee
from tests.reasoning.making import record


def bench(name: str, **circuits: str) -> Any:
    return record("notes", name, {"form": "bench", "part": "plug-in", "circuits": circuits})


def made(adapter: Any, *notes: Any) -> tuple[KnowledgeBase, Adapter]:
    return knowledge_base([adapter, *notes]), adapter


def test_the_bench_fills_a_blank_and_overrules_nothing_quietly() -> None:
    adapter = plug_in("plug-in", "constant", ways={"ground": "unknown"})
    book, own = made(adapter, bench("one", ground="passes", constant="not there", speed="not there"))
    assert [does(book, own, one) for one in ("ground", "constant", "speed", "bus")] == [
        "passes",
        "unknown",
        "not there",
        "unknown",
    ]


def test_a_newer_bench_note_takes_the_place_of_an_older_one() -> None:
    newer = record(
        "notes", "two", {"form": "bench", "part": "plug-in", "replaces": "one", "circuits": {"constant": "passes"}}
    )
    book, own = made(plug_in("plug-in", "constant"), bench("one", constant="not there"), newer)
    assert does(book, own, "constant") == "passes"


def links(adapter: Any, circuit: str) -> tuple[Link, ...]:
    return links_of(*made(adapter)).get(circuit, ())  # type: ignore[call-overload,no-any-return]


def test_what_passes_joins_its_ends_and_what_is_not_there_joins_nothing() -> None:
    assert links(plug_in("plug-in", "constant"), "constant") == (Link(("a", ""), ("b", "")),)
    assert links(plug_in("plug-in", ways={"constant": "not there"}), "constant") == ()
    assert links(plug_in("plug-in", ways={"constant": "looped"}), "constant") == (Link(("a", ""), ("b", "")),)


def test_what_nobody_traced_may_come_out_at_any_end() -> None:
    found = links(tee("tee", ways={"constant": "unknown"}), "constant")
    assert found == (Link(("a", ""), ("b", ""), sure=False), Link(("a", ""), ("c", ""), sure=False))


def test_a_tap_goes_through_and_comes_out_on_the_leads() -> None:
    found = links(tee("tee", ways={"constant": "tapped"}), "constant")
    assert found == (Link(("a", ""), ("b", "")), Link(("a", ""), ("c", "")))


def test_a_cut_circuit_has_two_halves_on_leads_or_where_it_says() -> None:
    assert links(tee(), "left front +") == (Link(("a", ""), ("c", "a")), Link(("b", ""), ("c", "b")))
    said = tee("tee", ways={"left front +": {"does": "broken out", "out_at": {"a": "c"}}}, ends={"a": {}, "b": {}})
    assert links(said, "left front +") == (Link(("a", ""), ("c", "a")), Link(("b", ""), ("b", "b")))


def test_an_adapter_without_ends_joins_nothing() -> None:
    bare = plug_in("plug-in", "constant", ends={}, ways={"camera": "tapped"})
    assert links_of(*made(bare)) == {}


def test_what_it_makes_comes_out_on_its_leads_unless_a_module_makes_it() -> None:
    ways = {
        "camera supply": "makes",
        "reverse": {"does": "makes", "made_by": "box"},
        "speed": {"does": "makes", "out_at": {"a": "a"}},
    }
    assert made_by_itself(*made(plug_in("plug-in", ways=ways))) == {
        "camera supply": (("b", ""),),
        "speed": (("a", ""),),
    }


def test_leads_are_the_ends_that_are_no_connector() -> None:
    adapter = made(tee("tee", ends={"a": {"connector": "square"}, "b": {}, "c": {"ends_in": "blades"}}))[1]
    assert leads_of(adapter) == ("c",)


def test_an_end_with_a_connector_is_no_lead_whatever_else_it_is_said_to_end_in() -> None:
    both = {"connector": "square", "side": "unit side", "ends_in": "bare leads"}
    assert leads_of(tee(ends={"a": both, "b": {"ends_in": "blades"}})) == ("b",)
