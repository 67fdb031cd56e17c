from fractions import Fraction
from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.order.step import Step, name_of
from tests.reasoning import making
from tests.reasoning.order import trim

TOOL = {
    "form": "tool",
    "name": "Seven on a swivel",
    "tool_kind": "hex socket",
    "reach": ["swivel"],
    "not_on": ["Plastic."],
}
RECORDS = (
    making.record("supplies", "swivel-seven", TOOL),
    making.record("connectors", "hazard-6", {"name": "Hazard plug", "shell": "square"}),
)


def step(*said: dict[str, Any], car: Record | None = None) -> Step:
    """The strip, as notes that each say this of it have it."""
    notes = [trim.seen(f"n{number}", pieces=[{"piece": "strip", **one}]) for number, one in enumerate(said)]
    [found] = trim.order(car or trim.car("strip"), *RECORDS, *notes).steps
    return found


def test_a_piece_nobody_said_anything_of_is_blank_in_everything() -> None:
    blank = step({})
    assert blank.blank == (
        "what holds it",
        "which edge to start at",
        "which way it comes",
        "which tool",
        "what to unplug",
    )
    assert (blank.safety, blank.took, blank.cups, blank.hidden, blank.refit) == ((), None, (), (), ())
    assert (blank.name, blank.side, blank.on_the_list) == ("strip", "centre", True)


def test_what_notes_say_is_put_together() -> None:
    one = {
        "lead_edge": "right",
        "pull": ["toward you", "left"],
        "hooks": "Two at the left.",
        "hidden": "One behind the blank.",
        "plugs": ["hazard-6", "hazard PLUG", "some plug"],
        "fasteners": ["clip"],
        "tools": ["lever"],
        "refit": "Plug first.",
        "cup": 2,
        "took": "4 min",
    }
    both = step(one, {**one, "lead_edge": "left", "pull": ["up"], "took": "6 min"})
    assert [said.what for said in both.lead_edges] == ["right", "left"]
    assert [said.what for said in both.pulls] == [("toward you", "left"), ("up",)]
    assert [(said.what, said.notes) for said in both.hooks] == [("Two at the left.", ("n0", "n1"))]
    assert [said.what for said in both.plugs] == ["Hazard plug", "some plug"]
    assert [said.what for said in both.cups] == [2]
    assert [said.what for said in both.refit] == ["Plug first."]
    assert [said.what for said in both.hidden] == ["One behind the blank."]
    assert both.took is not None
    assert (both.took.median, both.took.jobs) == (Fraction(300), 2)
    assert both.blank == ()
    assert both.notes == ("n0", "n1")


def test_a_tool_has_the_reach_of_its_record_and_of_every_note() -> None:
    [tool] = step(
        {"tools": [{"tool": "swivel-seven", "reach": ["long"]}]},
        {"tools": [{"tool": "seven on a SWIVEL", "reach": ["swivel"], "not_here": "Powered driver."}]},
    ).tools
    assert (tool.name, tool.record) == ("Seven on a swivel", "swivel-seven")
    assert tool.reach == ("swivel", "long")
    assert tool.not_here == ("Plastic.", "Powered driver.")
    assert tool.notes == ("n0", "n1")


def test_each_tool_has_what_was_said_of_it_alone() -> None:
    tools = [{"tool": "lever", "not_here": "Steel."}, {"tool": "seven", "reach": ["long"]}]
    lever, seven = step({"tools": tools}).tools
    assert (lever.reach, lever.not_here) == ((), ("Steel.",))
    assert (seven.reach, seven.not_here) == (("long",), ())


def test_a_tool_without_a_record_is_its_words_however_they_are_spelled() -> None:
    [tool] = step({"tools": ["7 mm Socket"]}, {"tools": [{"tool": "7 mm socket", "reach": ["deep"]}]}).tools
    assert (tool.name, tool.record, tool.reach) == ("7 mm Socket", None, ("deep",))


def test_a_class_that_anybody_gives_stands_and_none_stands_only_alone() -> None:
    assert step({"safety": "none"}).safety == ("none",)
    assert step({"safety": "none"}, {"safety": "restraint near"}).safety == ("restraint near",)
    own = trim.car("strip", trim={"strip": {"safety": "stored energy"}})
    assert step({"safety": "restraint near"}, car=own).safety == ("stored energy", "restraint near")


def test_a_piece_is_called_as_the_shop_calls_it() -> None:
    own = trim.car(trim={"strip": {"name": "wood strip"}, "side-panel": {}})
    assert [name_of(own, piece) for piece in ("strip", "side-panel", "not-listed")] == [
        "wood strip",
        "side panel",
        "not listed",
    ]
    off_the_list = step({}, car=trim.car())
    assert (off_the_list.on_the_list, off_the_list.side) == (False, None)
