"""A scope holds what its rules may see and nothing else."""

from collections.abc import Mapping
from typing import Any

import pytest

from bezelbook.checking.scopes import part_scopes, place_scopes, records_of, scopes_of, vehicle_scopes
from bezelbook.finding import BookScope, DecisionScope, NoteScope, PartScope, PlaceScope, Scope, VehicleScope
from bezelbook.kinds.decision.record import Decision
from bezelbook.kinds.record import kind_of
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from tests.rules.case_books import records_of as made

CAR: Mapping[str, Any] = {
    "name": "a car",
    "vehicle_class": "car",
    "generation": 2,
    "model_years": 4,
    "places": {"dash": {"kind": "plain opening", "side": "centre"}, "bay": {"kind": "module bay", "side": "left"}},
}
TRIED: Mapping[str, Any] = {"form": "tried", "verdict": "goes in", "sure": "fitted"}


@pytest.fixture
def book() -> KnowledgeBase:
    files: dict[str, dict[str, Any]] = {
        "vehicles": {"hatch-2": CAR, "van-2": {**CAR, "sisters": ["hatch-2", "nobodys-car"]}},
        "head_units": {
            "short": {"name": "the short one", "also": ["brick"], "size_class": "double", "goes_with": ["hidden-box"]},
            "deep": {"name": "the deep one", "also": ["Brick"], "size_class": "double"},
            "hidden-box": {"name": "box", "size_class": "two-piece box"},
            "other": {"name": "other", "size_class": "double"},
        },
        "mounts": {
            "frame": {"name": "frame", "mount_kind": "kit", "needs_too": ["strap"]},
            "strap": {"name": "strap", "mount_kind": "rear support"},
        },
        "shelf": {"straps": {"thing": "strap", "count": 2}},
        "questions": {"deep-one": {"words": "deep one?", "vehicle": "hatch-2"}, "lost": {"words": "van?"}},
        "jobs": {"monday": {"tag": "monday", "vehicle": "hatch-2", "wishes": [{"want": "add", "what": "short"}]}},
        "notes": {
            "a": {**TRIED, "vehicle": "hatch-2", "place": "dash", "what": "brick", "mounts": ["frame"]},
            "b": {**TRIED, "vehicle": "hatch-2", "place": "bay", "what": "other"},
            "c": {**TRIED, "vehicle": "van-2", "place": "dash", "what": "other"},
            "d": {**TRIED, "vehicle": "nobodys-car", "place": "dash", "what": "other"},
            "e": {"form": "bench", "part": "deep"},
            "f": {"form": "bench", "part": "strap"},
        },
    }
    return knowledge_base(made(files))


def held(scope: Scope) -> set[tuple[str, str]]:
    return {(kind_of(type(record)), record.id) for record in records_of(scope)}


def test_a_place_has_its_notes_and_all_that_they_name_by_whatever_name(book: KnowledgeBase) -> None:
    scopes = {(scope.vehicle, scope.place): scope for scope in place_scopes(book)}
    assert list(scopes) == [("hatch-2", "bay"), ("hatch-2", "dash"), ("van-2", "dash")]
    units = {("head_unit", "short"), ("head_unit", "deep"), ("head_unit", "hidden-box")}
    mounts = {("mount", "frame"), ("mount", "strap")}
    notes = {("note", "a"), ("note", "e"), ("note", "f")}
    shop = {("shop", "shop")}
    assert held(scopes["hatch-2", "dash"]) == {("vehicle", "hatch-2"), *units, *mounts, *notes, *shop}
    assert held(scopes["van-2", "dash"]) == {("vehicle", "van-2"), ("head_unit", "other"), ("note", "c"), *shop}


@pytest.mark.parametrize(
    ("place", "gasket", "form", "seen"),
    [
        ("door-left", None, TRIED, {"tape", "sheet"}),
        ("door-left", "tape", TRIED, {"tape"}),
        ("door-left", "none", TRIED, set()),
        ("door-left", None, {"form": "measured", "readings": [{"of": "front clearance", "reads": "20 mm"}]}, set()),
        ("dash", None, TRIED, set()),
        ("nowhere", None, TRIED, set()),
    ],
)
def test_a_speaker_place_has_every_foam_where_nobody_said_what_was_under_a_flange(
    place: str, gasket: str | None, form: Mapping[str, Any], seen: set[str]
) -> None:
    door = {"kind": "door lower", "side": "left"}
    what = {"what": "some coax"} if form is TRIED else {}
    note = {**form, **what, "vehicle": "hatch-2", "place": place} | ({"gasket": gasket} if gasket else {})
    foam = {"form": "foam", "name": "foam", "foam_kind": "sheet"}
    book = knowledge_base(
        made(
            {
                "vehicles": {"hatch-2": {**CAR, "places": {**CAR["places"], "door-left": door}}},
                "supplies": {"tape": foam | {"name": "tape"}, "sheet": foam, "wire": {"form": "other", "name": "wire"}},
                "notes": {"a": note},
            }
        )
    )
    [scope] = place_scopes(book)
    assert held(scope) >= {("vehicle", "hatch-2"), ("note", "a"), ("shop", "shop")}
    assert {name for kind, name in held(scope) if kind == "supply"} == seen


def test_a_part_has_what_it_names_and_the_parts_that_name_it(book: KnowledgeBase) -> None:
    scopes = {scope.part.id: scope for scope in part_scopes(book)}
    assert list(scopes) == ["deep", "hidden-box", "other", "short", "frame", "strap"]
    shop = ("shop", "shop")
    assert held(scopes["strap"]) == {shop, ("mount", "strap"), ("mount", "frame"), ("note", "f")}
    assert held(scopes["frame"]) == {shop, ("mount", "strap"), ("mount", "frame")}
    assert held(scopes["deep"]) == {shop, ("head_unit", "deep"), ("note", "e")}
    assert scopes["deep"].kind == "head_unit"


def test_a_vehicle_has_its_sisters_what_was_noted_and_asked_and_every_part(book: KnowledgeBase) -> None:
    hatch, van = vehicle_scopes(book)
    everywhere = {thing for thing in held(van) if thing[0] in {"shop", "head_unit", "mount", "stock"}}
    assert len(everywhere) == 8
    benches = {("note", "e"), ("note", "f")}
    asked = {("asked", "deep-one"), ("job", "monday")}
    own = {("vehicle", "hatch-2"), ("note", "a"), ("note", "b")}
    assert held(hatch) == everywhere | benches | asked | own
    assert held(van) == everywhere | benches | {("vehicle", "van-2"), ("vehicle", "hatch-2"), ("note", "c")}
    assert (hatch.vehicle, van.vehicle) == ("hatch-2", "van-2")


def test_each_note_is_a_scope_and_the_book_is_one(book: KnowledgeBase) -> None:
    assert [held(scope) for scope in scopes_of(book, NoteScope)] == [{("note", name)} for name in "abcdef"]
    [whole] = scopes_of(book, BookScope)
    assert held(whole) == {(kind, name) for kind, records in book.records.items() for name in records}


def test_each_sort_of_scope_is_made_by_its_name(book: KnowledgeBase) -> None:
    assert [held(scope) for scope in scopes_of(book, PlaceScope)] == [held(scope) for scope in place_scopes(book)]
    assert [held(scope) for scope in scopes_of(book, PartScope)] == [held(scope) for scope in part_scopes(book)]
    assert [held(scope) for scope in scopes_of(book, VehicleScope)] == [held(scope) for scope in vehicle_scopes(book)]
    assert list(scopes_of(book, DecisionScope)) == []


def test_a_scope_about_a_decision_holds_that_decision() -> None:
    [decision] = made({"decisions": {"d": {"question": "q", "decided": "no problem", "reason": "r"}}})
    assert isinstance(decision, Decision)
    assert held(DecisionScope(decision, None, None, (), None)) == {("decision", "d")}
