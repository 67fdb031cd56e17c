from bezelbook.reasoning.unknowns import Missing
from bezelbook.reasoning.wiring_asked.parts import missing_of, nothing_of, piece_of, plugs_of
from tests.reasoning.circuits.a_car import DASH, LATE, car, connector, module, plug_in, seen
from tests.reasoning.making import record


def test_an_empty_answer_is_for_one_build_of_one_place() -> None:
    found = nothing_of(car(), "aerial", "plug not looked", "nobody knows")
    assert dict(found) == {
        "job": "aerial",
        "place": DASH,
        "builds": [LATE],
        "builds_words": "",
        "tell": "",
        "verdict": "plug not looked",
        "words": "nobody knows",
        "sure": None,
        "plugs": [],
        "pieces": [],
        "circuits": [],
        "kept": [],
        "lacks": [],
        "load": None,
        "beside": [],
        "seats": [],
        "cable": None,
        "unknown": [],
    }


def test_a_piece_says_what_it_is_why_it_is_right_and_whether_it_is_in_hand() -> None:
    shelf = record("shelf", "tray", {"thing": "plug-in", "count": 1})
    own = car(plug_in(), module(), shelf).book
    assert piece_of(own, own.adapters["plug-in"], "it is") == {
        "kind": "adapter",
        "id": "plug-in",
        "name": "The plug-in",
        "ends": "The square to bare leads",
        "why": "it is",
        "in_hand": "on the shelf",
    }
    assert piece_of(own, own.modules["box"], "so it is") == {
        "kind": "module",
        "id": "box",
        "name": "The box",
        "ends": "",
        "why": "so it is",
        "in_hand": "to order",
    }


def test_a_plug_says_what_it_must_not_be_taken_for() -> None:
    [plug] = plugs_of(car(seen("one"), connector("other")))
    assert plug == {
        "plug": "The square",
        "state": "known",
        "notes": ["one"],
        "not_to_be_taken_for": ["The other: nobody has looked at the keys of both: do not push"],
    }
    [strange] = plugs_of(car(seen("one", "purple one")))
    assert (strange["plug"], strange["not_to_be_taken_for"]) == ("purple one", [])


def test_what_is_missing_is_said_with_where_to_look() -> None:
    assert missing_of([Missing("a", "b", "c")]) == [{"what": "a", "look": "b", "changes": "c"}]
