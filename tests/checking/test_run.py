"""A rule is handed its scope and nothing else, and what was kept from before never changes what is found."""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bezelbook.checking import run
from bezelbook.checking.run import rules, run_rule
from bezelbook.checking.scopes import place_scopes
from bezelbook.checking.settling import check
from bezelbook.finding import Finding, NoteScope, PlaceScope, Quote, Rule
from bezelbook.kinds import KINDS
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase, knowledge_base
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.proposal import Proposal
from bezelbook.rules.numbers import unit_slip
from bezelbook.rules.openings import depth_ladder_reversed

Files = Mapping[tuple[str, str], Mapping[str, Any]]


def made(files: Files) -> KnowledgeBase:
    return knowledge_base(one_record(*where, said) for where, said in files.items())


def one_record(folder: str, name: str, said: Mapping[str, Any]) -> Record:
    record: Record = KINDS[folder].reader.validate_python({**said, "id": name})
    return record


# --- random books, and edits of them ---

UNITS, MOUNTS, CARS, PLACES = (
    ("deep", "deeper", "boxed"),
    ("flush-kit", "proud-kit"),
    ("hatch-2", "van-2"),
    ("dash", "pod"),
)
opening = {"kind": "plain opening", "side": "centre"}
blank = st.none()


def said(**fields: st.SearchStrategy[Any]) -> st.SearchStrategy[dict[str, Any]]:
    """A file of these fields, in which a None is a blank."""
    return st.fixed_dictionaries(fields).map(lambda all_: {k: v for k, v in all_.items() if v is not None})


shops = said(name=st.just("A shop"), format=st.just(1), clearances=st.sampled_from(({}, {"depth": "3 mm"})))
vehicles = said(
    name=st.sampled_from(("a car", "another")),
    vehicle_class=st.just("car"),
    generation=st.just(2),
    model_years=st.just(4),
    places=st.sampled_from((dict.fromkeys(PLACES, opening), {"dash": opening})),
    splits=st.sampled_from(({}, {"build": {"values": {"early": {}, "late": {"years": [3]}}}})),
)
units = said(
    name=st.sampled_from(("a box", "a deep box", "old faithful")),
    also=st.sampled_from((None, ["old faithful"], ["the deep one"])),
    size_class=st.just("double"),
    body_depth=st.sampled_from(("120 ± 1 mm", "170 ± 1 mm caliper", "185 mm caliper", "185 mm printed", None)),
)
mounts = said(
    name=st.sampled_from(("kit", "the kit", "big kit")),
    also=st.sampled_from((None, ["big kit"])),
    mount_kind=st.just("kit"),
    proud=st.sampled_from((None, "flush", "22 ± 0.5 mm caliper")),
)
tried = said(
    form=st.just("tried"),
    vehicle=st.sampled_from(("hatch-2", *CARS, *CARS, "nobodys-car")),
    place=st.sampled_from(("dash", "dash", "dash", *PLACES)),
    what=st.sampled_from((*UNITS, "old faithful", "something else")),
    sizes=st.sampled_from((None, {"depth": "6.5 mm"}, {"depth": "165 mm"}, {"depth": "190 ± 1 mm"})),
    verdict=st.sampled_from(("goes in", "does not")),
    sure=st.sampled_from(("fitted", "dry-fitted", "told")),
    reason=st.sampled_from((None, "depth", "depth", "depth", "width")),
    mounts=st.sampled_from((None, "none", "none", ["flush-kit"], ["flush-kit"], ["big kit"], ["a kit nobody knows"])),
    splits=st.sampled_from(({}, {"build": "late"})),
    cut=st.sampled_from((None, "nothing", "nothing", "lip")),
    loom=st.sampled_from((None, "aside", "aside", "behind")),
    numbers=st.sampled_from((None, None, "read back")),
)
alike = tried.map(  # so that two of them may well contradict each other
    lambda note: {
        **note,
        "vehicle": "hatch-2",
        "place": "dash",
        "mounts": ["flush-kit"],
        "cut": "nothing",
        "loom": "aside",
    }
)
reading = said(of=st.just("depth"), reads=st.sampled_from(("20.5 mm", "205 mm")), datum=st.just("sub-dash face"))
measured = said(
    form=st.just("measured"),
    vehicle=st.sampled_from(CARS),
    place=st.sampled_from(PLACES),
    readings=st.lists(reading, min_size=1, max_size=2),
)
bench = said(
    form=st.just("bench"),
    part=st.sampled_from(UNITS),
    readings=st.just([{"of": "body_depth", "reads": "182 ± 1 mm"}]),
)
contents = {
    ("shop", ("shop",)): shops,
    ("vehicles", CARS): vehicles,
    ("head_units", UNITS): units,
    ("mounts", MOUNTS): mounts,
    ("notes", tuple(f"note-{number}" for number in range(7))): st.one_of(
        alike, alike, alike, tried, tried, measured, bench
    ),
}


@st.composite
def files(draw: st.DrawFn) -> tuple[tuple[str, str], Mapping[str, Any]]:
    """One file of the book: where it is and what it says."""
    folder, names = draw(st.sampled_from(list(contents)))
    return (folder, draw(st.sampled_from(names))), draw(contents[folder, names])


@st.composite
def whole_books(draw: st.DrawFn) -> Files:
    """A book in which there is something to try and somewhere to try it, whatever else."""
    always = {(folder, name): draw(one) for (folder, names), one in contents.items() for name in names[:6]}
    return {**always, **dict(draw(st.lists(files(), max_size=8)))}


books = whole_books()
edits = st.lists(st.tuples(files(), st.booleans()), min_size=1, max_size=5)


def edited(book: Files, edit: tuple[tuple[tuple[str, str], Mapping[str, Any]], bool]) -> Files:
    """The book after a file was written, or taken away."""
    (where, text), keep = edit
    rest = {other: said for other, said in book.items() if other != where}
    return {**rest, where: text} if keep else rest


@pytest.mark.no_cover  # hundreds of edited books, which counting lines would slow; the others reach all that it does
@settings(max_examples=200)
@given(books, edits)
def test_checking_after_edits_with_what_was_kept_finds_what_checking_everything_finds(
    book: Files, changes: Any
) -> None:
    kept = check(made(book)).kept
    for change in changes:
        book = edited(book, change)
        whole, following = check(made(book)), check(made(book), kept)
        assert following == whole
        assert list(following.kept) == list(whole.kept)
        kept = following.kept


@given(books)
def test_checking_again_runs_no_rule(book: Files) -> None:
    first = check(made(book))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(run, "run_rule", lambda *_: pytest.fail("a rule was run again"))
        assert check(made(book), first.kept) == first


@given(books)
def test_a_place_seen_by_itself_says_what_it_says_in_the_whole_book(book: Files) -> None:
    base = made(book)
    for scope in place_scopes(base):
        alone = tuple(depth_ladder_reversed.check(scope))
        assert tuple(depth_ladder_reversed.check(replace(scope, book=base))) == alone


# --- what is handed to whom ---


def a_finding(rule: str, key: str, **more: Any) -> Finding:
    said: dict[str, Any] = {"says": "s", "quotes": (Quote("n", "w"),), "difference": "d"}
    rest: dict[str, Any] = {
        "loss": TOO_DEEP,
        "proposals": (Proposal("unit", "p"),),
        "question": "q?",
        "answers": ("a", "b"),
        "weight": "tidy up",
    }
    return Finding(**{"rule": rule, "key": key, **said, **rest, **more})


@pytest.fixture
def a_book() -> KnowledgeBase:
    note = {"form": "tried", "what": "deep", "verdict": "goes in", "sure": "fitted"}
    car = {"name": "a car", "vehicle_class": "car", "generation": 2, "model_years": 4, "places": {"dash": opening}}
    return made(
        {
            ("vehicles", "hatch-2"): car,
            ("vehicles", "van-2"): car,
            ("head_units", "deep"): {"name": "deep one", "size_class": "double"},
            ("head_units", "deeper"): {"name": "deeper one", "size_class": "double"},
            ("notes", "b-here"): {**note, "vehicle": "hatch-2", "place": "dash", "mounts": "none"},
            ("notes", "a-there"): {**note, "vehicle": "van-2", "place": "dash"},
            ("notes", "c-lost"): {**note, "vehicle": "nobodys-car", "place": "dash"},
            ("notes", "d-bench"): {"form": "bench", "part": "deep"},
            ("notes", "e-bench"): {"form": "bench", "part": "deeper"},
        }
    )


def test_a_rule_about_notes_is_handed_each_note_and_a_rule_about_places_each_place(
    a_book: KnowledgeBase, monkeypatch: pytest.MonkeyPatch
) -> None:
    scopes: list[NoteScope | PlaceScope] = []

    def watch(scope: NoteScope | PlaceScope) -> Iterator[Finding]:
        scopes.append(scope)
        yield from ()

    pair = (
        Rule("of-notes", "t", "gap", "s", NoteScope, watch),
        Rule("of-places", "t", "gap", "s", PlaceScope, watch),
    )
    monkeypatch.setattr(run, "rules", lambda: pair)
    assert check(a_book).findings == ()
    notes = [scope.note.id for scope in scopes if isinstance(scope, NoteScope)]
    places = [scope for scope in scopes if isinstance(scope, PlaceScope)]
    assert notes == ["a-there", "b-here", "c-lost", "d-bench", "e-bench"]
    assert [(scope.vehicle, scope.place) for scope in places] == [("hatch-2", "dash"), ("van-2", "dash")]
    assert [list(scope.book.notes) for scope in places] == [["b-here", "d-bench"], ["a-there", "d-bench"]]
    assert [list(scope.book.head_units) for scope in places] == [["deep"], ["deep"]]


def test_a_rule_is_never_run_on_a_scope_of_another_sort(a_book: KnowledgeBase) -> None:
    scope = next(place_scopes(a_book))
    with pytest.raises(TypeError, match="unit-slip"):
        run_rule(unit_slip.RULE, scope)
    with pytest.raises(TypeError, match="depth-ladder-reversed"):
        run_rule(depth_ladder_reversed.RULE, NoteScope(a_book.notes["b-here"]))


def test_what_is_found_comes_heaviest_first_then_by_place(
    a_book: KnowledgeBase, monkeypatch: pytest.MonkeyPatch
) -> None:
    def speak(scope: NoteScope) -> Iterator[Finding]:
        weight = {"a-there": "tidy up", "b-here": "stop", "c-lost": "look first"}.get(scope.note.id)
        if weight:
            yield a_finding("z", f"{scope.note.id}/2", weight=weight, vehicle=getattr(scope.note, "vehicle", ""))
            yield a_finding("z", f"{scope.note.id}/1", weight=weight, vehicle=getattr(scope.note, "vehicle", ""))

    monkeypatch.setattr(run, "rules", lambda: (Rule("z", "t", "gap", "s", NoteScope, speak),))
    keys = [finding.key for finding in check(a_book).findings]
    assert keys == ["b-here/1", "b-here/2", "c-lost/1", "c-lost/2", "a-there/1", "a-there/2"]


def about_both(files: Files) -> list[Finding]:
    """What is found of the two notes together."""
    return [finding for finding in check(made(files)).findings if {"in", "out"} <= set(finding.notes)]


def test_a_nickname_that_two_parts_share_stays_open_to_a_rule() -> None:
    """One of the two is named plainly by another note of the place, and the nickname still names neither."""
    note = {"form": "tried", "vehicle": "hatch-2", "place": "dash", "sure": "fitted", "mounts": "none"}
    double = {"also": ["faithful"], "size_class": "double", "plug_exit": "right", "plug_and_bend": "30 ± 1 mm"}
    files: dict[tuple[str, str], Mapping[str, Any]] = {
        ("vehicles", "hatch-2"): {
            "name": "a car",
            "vehicle_class": "car",
            "generation": 2,
            "model_years": 4,
            "places": {"dash": opening},
        },
        ("head_units", "deep"): {**double, "name": "a", "body_depth": "170 ± 1 mm"},
        ("head_units", "short"): {**double, "name": "b", "body_depth": "90 ± 1 mm"},
        ("notes", "in"): {**note, "what": "faithful", "verdict": "goes in"},
        ("notes", "out"): {**note, "what": "deep", "verdict": "does not", "reason": "depth"},
    }
    assert about_both(files) == []
    plain = {**files, ("notes", "in"): {**note, "what": "deep", "verdict": "goes in"}}
    assert len(about_both(plain)) == 1


def test_every_module_of_the_rules_folder_is_a_rule_of_its_name(package: Any) -> None:
    modules = sorted(path.stem for path in (package / "rules").glob("*/[!_]*.py"))
    assert [rule.name.replace("-", "_") for rule in rules()] == modules
    assert all(rule.title and rule.says.startswith(rule.says[0].upper()) for rule in rules())
