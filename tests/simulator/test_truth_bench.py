"""The bench of truth on a few books: what it counts, and that it counts right what is known beforehand."""

from dataclasses import replace

import pytest

from tests.bench.truth.blanks import BLANKS
from tests.bench.truth.books import Judged, judged
from tests.bench.truth.counts import Counts
from tests.bench.truth.fired import NEW_SPLIT, Fired
from tests.bench.truth.limits import outside
from tests.bench.truth.report import counted
from tests.bench.truth.right import doubts_what_is_true, is_false_alarm, is_right
from tests.bench.truth.turning import Case, cases

# Books of each regime, eight notes for each place; of the corrupted ones some in which something can be found out.
BOOKS = {"honest": (6, 7), "corrupted": (22, 30, 31, 38), "running change": (6, 7, 14, 15)}


@pytest.fixture(scope="module")
def books() -> dict[str, list[Judged]]:
    return {regime: [judged("small", regime, number) for number in numbers] for regime, numbers in BOOKS.items()}


def test_everything_is_counted_and_told(books: dict[str, list[Judged]]) -> None:
    counts = Counts()
    for found in books.values():
        for book in found:
            counts.add(book)
    assert counts.false["all"] >= counts.detectable["all"] >= counts.flagged["all"] > 0
    assert counts.answers["wrong"] >= counts.answers["unflagged"] >= 0
    assert sum(counts.alarms.values()) <= sum(counts.judged.values())
    told = "\n".join(counts.lines())
    for words in (
        "corrupted notes",
        "flagged",
        "honest notes",
        "honest notes in doubt   0 ",
        "unit-slip",
        "wrong and unflagged",
        "what clashes turn",
    ):
        assert words in told


def test_it_comes_to_the_same_however_many_processes_count() -> None:
    books = {"corrupted": 17, "running change": 3}
    alone, together = (counted("few", books, processes) for processes in (1, 3))
    assert alone == together
    by_hand = Counts()
    for regime, count in books.items():
        for number in range(count):
            by_hand.add(judged("few", regime, number))
    assert alone == by_hand
    assert alone.notes["corrupted"] > alone.notes["running change"] > 0


def test_a_detector_that_flags_all_that_can_be_found_out_is_the_ideal_one(books: dict[str, list[Judged]]) -> None:
    counts = Counts()
    for book in books["corrupted"]:
        able = tuple(name for name, found in book.detectable.items() if found)
        counts.add(replace(book, fired=(Fired("ideal", "conflict", able, (), ()),)))
    assert counts.flagged["all"] == counts.detectable["all"] > 0
    assert counts.answers["unflagged"] == counts.answers["unflagged by an ideal detector"]


def test_a_detector_that_flags_everything_is_full_of_false_alarms(books: dict[str, list[Judged]]) -> None:
    [book, *_] = books["honest"]
    where = max(book.places, key=lambda place: len(book.written.strong_at(place)))
    true = tuple(note.name for note in book.written.strong_at(where) if note.false is None)
    alarm = Fired("everything", "conflict", true[:2], (), ())
    assert is_false_alarm(book, alarm)
    assert is_right(book, alarm) is False
    assert not is_false_alarm(book, replace(alarm, sort="gap"))


@pytest.mark.parametrize(("sort", "expected"), [("conflict", True), ("slip", True), ("gap", False)])
def test_whoever_doubts_a_true_note_alone_is_counted_too(
    books: dict[str, list[Judged]], sort: str, *, expected: bool
) -> None:
    [book, *_] = books["honest"]
    strong = next(name for name in sorted(book.strong) if book.by_name[name].false is None)
    weak = next(note.name for note in book.made.notes if note.name not in book.strong)
    assert not is_false_alarm(book, Fired("doubt", sort, (strong,), (), ()))
    assert doubts_what_is_true(book, Fired("doubt", sort, (strong,), (), ())) is expected
    assert not doubts_what_is_true(book, Fired("doubt", sort, (weak,), (), ()))


def test_a_doubt_of_what_cannot_be_true_is_none(books: dict[str, list[Judged]]) -> None:
    found = [
        (book, names)
        for book in books["corrupted"]
        for where in book.places
        if book.can_be_true(names := tuple(note.name for note in book.written.strong_at(where))) is False
    ]
    assert found
    assert not any(doubts_what_is_true(book, Fired("doubt", "conflict", names, (), ())) for book, names in found)


def test_a_clash_is_right_and_turns_on_what_the_book_was_not_told(books: dict[str, list[Judged]]) -> None:
    found = [case for book in books["running change"] for case in cases(_every_pair(book))]
    assert len(found) >= 3
    assert {axis for case in found for axis in case.axes} & {"build", "package", "body", "hand", NEW_SPLIT}
    assert all(case.hit == bool(case.axes & {"build", "mount"}) for case in found)


def _every_pair(book: Judged) -> Judged:
    """The same book with a rule that sets every two strong notes of a place against each other."""
    pairs = {
        (one.name, other.name)
        for where in book.places
        for one in book.written.strong_at(where)
        for other in book.written.strong_at(where)
        if one.name < other.name
    }
    return replace(
        book, fired=tuple(Fired("pairs", "conflict", pair, (), ("build", "mount")) for pair in sorted(pairs))
    )


def test_only_the_first_two_proposals_count() -> None:
    assert Case("honest", frozenset({"mount"}), ("build", "mount", "loom")).hit
    assert not Case("honest", frozenset({"loom"}), ("build", "mount", "loom")).hit


def test_a_gap_is_right_where_the_note_leaves_out_what_it_says() -> None:
    world = judged("blank", "honest", 0).made.world
    vehicle = world.platforms[0].name
    assert BLANKS["mount-not-said"](world, {"vehicle": vehicle})
    assert not BLANKS["mount-not-said"](world, {"vehicle": vehicle, "mounts": "none"})
    assert BLANKS["name-that-leads-nowhere"](world, {"mounts": ["the usual ring"]})
    assert not BLANKS["name-that-leads-nowhere"](world, {"mounts": "none", "what": world.units[0].name})
    splits = {axis.name: "any" for axis in world.platforms[0].told}
    assert not BLANKS["split-not-said"](world, {"vehicle": vehicle, "splits": splits})
    assert bool(splits) == BLANKS["split-not-said"](world, {"vehicle": vehicle})
    assert BLANKS["other-side-assumed"](world, {"other_side": "assumed the same"})
    assert BLANKS["no-way-in-written"](world, {})


@pytest.mark.parametrize(
    ("of", "reads", "expected"),
    [
        ("depth", "6.5 mm", True),
        ("depth", "205 mm ± 3 mm", False),
        ("cut-out", "14.3 mm", True),
        ("width", "7 1/8 in", False),
    ],
)
def test_the_limits_that_catch_slips(of: str, reads: str, *, expected: bool) -> None:
    assert outside({"readings": [{"of": of, "reads": reads}]}) is expected
