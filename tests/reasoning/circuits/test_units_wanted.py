from typing import Any

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.circuits.units_wanted import units_wanted
from tests.rules.case_books import book_of

HATCH = {
    "name": "compact hatch 2",
    "vehicle_class": "compact hatch",
    "generation": 2,
    "model_years": 5,
    "places": {"dash": {"kind": "plain opening", "side": "centre"}, "boot": {"kind": "load bay side", "side": "left"}},
}


def book(**more: Any) -> KnowledgeBase:
    units = {"short": {"name": "short double", "size_class": "double"}}
    return book_of({"book": {"vehicles": {"hatch": HATCH}, "head_units": units, **more}})


def tried(**said: Any) -> dict[str, Any]:
    whole = {"form": "tried", "vehicle": "hatch", "place": "dash", "what": "short double", "sure": "fitted"}
    return {**whole, "verdict": "goes in", **said}


def wanted(**more: Any) -> list[tuple[str, str]]:
    return [(one.kind, one.id) for one in units_wanted(book(**more), "hatch", "dash")]


def test_a_radio_is_wanted_by_who_fitted_it_by_a_job_and_by_who_asked() -> None:
    wishes = [{"want": "mend", "what": "short", "place": "dash"}, {"want": "replace", "what": "short", "place": "dash"}]
    jobs = {"may": {"tag": "may-04", "vehicle": "hatch", "wishes": wishes, "year": 3}}
    questions = {"q": {"words": "short in the hatch", "vehicle": "hatch", "place": "dash", "what": "short"}}
    found = units_wanted(book(notes={"in": tried()}, jobs=jobs, questions=questions), "hatch", "dash")
    assert [(one.kind, one.id, one.path) for one in found] == [
        ("note", "in", ("what",)),
        ("job", "may", ("wishes", 1, "what")),
        ("asked", "q", ("what",)),
    ]
    assert [one.year for one in found] == [None, 3, None]
    assert {one.unit.id for one in found} == {"short"}


def test_a_note_that_names_an_adapter_says_that_something_leads_there() -> None:
    notes = {"a": tried(adapters=["the long lead"]), "b": tried()}
    assert [one.leads for one in units_wanted(book(notes=notes), "hatch", "dash")] == [True, False]


def test_hearsay_a_no_another_place_and_other_words_want_nothing() -> None:
    notes = {
        "told": tried(sure="told"),
        "no": tried(verdict="does not"),
        "boot": tried(place="boot"),
        "words": tried(what="some double"),
        "seen": {"form": "seen", "vehicle": "hatch", "place": "dash"},
    }
    jobs = {"may": {"tag": "may-04", "vehicle": "hatch", "wishes": [{"want": "add", "what": "a sub", "place": "dash"}]}}
    questions = {
        "q": {"words": "what goes in", "vehicle": "hatch", "place": "dash"},
        "r": {"words": "short in the boot", "vehicle": "hatch", "place": "boot", "what": "short"},
    }
    assert wanted(notes=notes, jobs=jobs, questions=questions) == []
