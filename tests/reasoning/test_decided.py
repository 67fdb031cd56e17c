"""A decision fills blanks and strikes losers; it changes nothing that an author wrote, and loses no note."""

from typing import Any

from bezelbook.kinds.decision.record import Decision
from bezelbook.kinds.note.record import Measured, Metered, Tried
from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.decided import decided, says_the_same
from bezelbook.reasoning.evidence import evidence_at, witnesses
from tests.reasoning import making


def decision(name: str = "d", /, **content: Any) -> Decision:
    made: Decision = making.record(
        "decisions", name, {"question": "q", "decided": "both true", "reason": "we asked", **content}
    )
    return made


def read_as(*records: Record, **said: Any) -> KnowledgeBase:
    """The book of these records once the note n is read as said."""
    return decided(making.book(*records), [decision(read_as=[{"note": "n", **said}])])


def test_blanks_are_filled_and_what_was_written_stands() -> None:
    note = making.tried("n", mounts=None, loom="aside", splits={}, year=None)
    other = making.tried("o")
    book = read_as(note, other, mounts=["kit"], loom="behind", splits={"build": "late"}, year=3, tabs="out")
    assert (book.typed, book.notes["o"]) == ({"n": note}, other)
    read = book.notes["n"]
    assert isinstance(read, Tried)
    assert (read.mounts, read.loom, read.splits, read.year, read.tabs) == (
        ("kit",),
        "aside",
        {"build": "late"},
        3,
        "out",
    )


def test_a_split_that_its_author_wrote_is_not_overwritten() -> None:
    book = read_as(making.tried("n", splits={"build": "early"}), splits={"build": "late", "audio": "base"})
    read = book.notes["n"]
    assert isinstance(read, Tried)
    assert read.splits == {"build": "early", "audio": "base"}


def test_readings_get_the_datum_and_the_tool_that_they_lack() -> None:
    note = making.measured(
        "n",
        making.reading("depth", "205 mm", datum=None, tool=None),
        making.reading("depth", "223 mm", datum="finished bezel face", tool="tape"),
    )
    read = read_as(note, datum="sub-dash face", tool="wire").notes["n"]
    assert isinstance(read, Measured)
    assert [(one.datum, one.tool) for one in read.readings] == [
        ("sub-dash face", "wire"),
        ("finished bezel face", "tape"),
    ]


def test_a_tool_that_nobody_measures_with_fills_nothing() -> None:
    read = read_as(making.measured("n", making.reading("depth", "205 mm", tool=None)), tool="a stick").notes["n"]
    assert isinstance(read, Measured)
    assert read.readings[0].tool is None


def test_a_radius_is_doubled_with_the_house_tolerance_of_its_tool() -> None:
    """A caliper in the car is good to half a millimetre: twice that across (common practice, no source)."""
    note = making.measured("n", making.reading("cut-out", "72 mm", tool="caliper"))
    read = read_as(note, measured_to="to the middle").notes["n"]
    assert isinstance(read, Measured)
    assert (read.readings[0].reads.base, read.readings[0].reads.give) == (144_000_000, 1_000_000)


def test_the_view_of_cavities_is_filled_once() -> None:
    content = {
        "form": "metered",
        "vehicle": making.CAR,
        "place": making.HOLE,
        "plug": "p",
        "cavities": [{"cavity": 1, "carries": "constant"}],
    }
    for written, view in (({}, "wire entry"), ({"view": "mating face"}, "mating face")):
        read = read_as(making.record("notes", "n", content | written), view="wire entry").notes["n"]
        assert isinstance(read, Metered)
        assert read.view == view


def test_a_bench_note_is_read_as_it_is() -> None:
    note = making.record("notes", "n", {"form": "bench", "part": "p"})
    assert read_as(note, tabs="out").notes["n"] == note


DOORS = {
    "left-door": {"kind": "door lower", "side": "left", "other_side": "right-door"},
    "right-door": {"kind": "door lower", "side": "right", "other_side": "left-door"},
    "dash": {"kind": "plain opening", "side": "centre"},
    "twin": {"kind": "door lower", "side": "left", "other_side": "left-door"},
    "lost": {"kind": "door lower", "side": "left", "other_side": "nowhere"},
}


def placed(place: str, side: str) -> str:
    car = making.vehicle(places=DOORS)
    note = read_as(car, making.tried("n", place=place), side=side).notes["n"]
    assert isinstance(note, Tried)
    return note.place


def test_a_note_of_the_drivers_side_goes_to_the_side_that_was_said() -> None:
    assert placed("left-door", "right") == "right-door"
    assert placed("left-door", "left") == "left-door"
    assert placed("twin", "left") == "twin"
    assert placed("dash", "left") == "dash"
    assert placed("lost", "right") == "lost"
    assert placed("unheard-of", "right") == "unheard-of"


def test_a_side_says_nothing_of_a_car_that_is_not_in_the_book() -> None:
    read = read_as(making.tried("n", vehicle="unheard-of-1", place="left-door"), side="right").notes["n"]
    assert isinstance(read, Tried)
    assert read.place == "left-door"


def test_an_odd_number_is_read_in_the_unit_that_was_said() -> None:
    read = read_as(making.tried("n", sizes={"depth": "6.5 mm"}), unit="in").notes["n"]
    assert isinstance(read, Tried)
    assert read.sizes is not None
    assert read.sizes.depth is not None
    assert read.sizes.depth.base == 165_100_000


def struck(*names: str, **content: Any) -> Decision:
    return decision(decided="one stands", struck=[{"note": name, "because": "eyeballed"} for name in names], **content)


def test_a_struck_note_binds_nothing_and_is_kept_with_its_reason() -> None:
    car, loser, other = making.vehicle(), making.tried("n"), making.tried("o", verdict="does not", reason="depth")
    book = decided(making.book(car, loser, other), [struck("n", "nobody")])
    assert list(book.notes) == ["o"]
    assert book.written("n") == loser
    assert book.written("o") == other
    assert [(one.note.id, one.because, one.decision) for one in book.struck_at(making.CAR, making.HOLE)] == [
        ("n", "eyeballed", "d")
    ]
    evidence = evidence_at(book, car, making.HOLE)
    assert [one.note.id for one in evidence.standing] == ["o"]
    assert [(one.note.id, one.why) for one in evidence.aside] == [("n", "struck: eyeballed")]


def test_who_goes_and_looks_has_settled_nothing_yet() -> None:
    book = making.book(making.tried("n", mounts=None))
    looking = decision(
        decided="go and look", read_as=[{"note": "n", "mounts": ["kit"]}], struck=[{"note": "n", "because": "b"}]
    )
    assert decided(book, [looking]).records == book.records


def test_what_follows_a_decision_to_go_and_look_acts_all_the_same() -> None:
    looking = decision("a", decided="go and look", date="2026-01-01")
    book = decided(making.book(making.tried("n"), making.tried("o")), [looking, struck("n", date="2026-02-02")])
    assert list(book.notes) == ["o"]


def test_what_one_decision_struck_another_does_not_bring_back() -> None:
    both = [struck("n"), decision("e", decided="one stands", struck=[{"note": "o", "because": "read by eye"}])]
    book = decided(making.book(making.tried("n"), making.tried("o")), both)
    assert {name: one.because for name, one in book.struck.items()} == {"n": "eyeballed", "o": "read by eye"}


def test_what_names_no_note_of_the_book_does_nothing() -> None:
    book = making.book(making.tried("n"))
    lost = decision(decided="same job twice", notes=["gone"], read_as=[{"note": "gone", "tabs": "in"}])
    assert decided(book, [lost]).records == book.records


def test_one_job_written_twice_is_one_witness() -> None:
    first, second = making.tried("n", author="rk", date="2026-01-01"), making.tried("o", author="db", date="2026-02-02")
    same = decision(decided="same job twice", notes=["n", "o"])
    book = decided(making.book(first, second), [same])
    assert witnesses(book.notes.values()) == 1
    assert {note.job for note in book.notes.values()} == {"d"}
    tagged = decided(making.book(first, making.changed(second, job="tag")), [same])
    assert {note.job for note in tagged.notes.values()} == {"tag"}


def test_the_oldest_decision_fills_a_blank_first() -> None:
    book = making.book(making.tried("n", tabs=None))
    later = decision("a", date="2026-02-02", read_as=[{"note": "n", "tabs": "in"}])
    sooner = decision("b", date="2026-01-01", read_as=[{"note": "n", "tabs": "out"}])
    read = decided(book, [later, sooner]).notes["n"]
    assert isinstance(read, Tried)
    assert read.tabs == "out"
    undated = decided(book, [later, decision("z", read_as=[{"note": "n", "tabs": "out"}])]).notes["n"]
    assert isinstance(undated, Tried)
    assert undated.tabs == "out"


def test_a_quote_says_the_same_whatever_was_added_in_words() -> None:
    now = "Short double: goes in [late, kit] \u2013 tight on the left"
    assert says_the_same("short double: goes in  [late, kit].", now)
    assert not says_the_same("Short double: does not [late, kit]", now)
    assert not says_the_same("Short double: goes in [late, kit]X", now)


def test_a_quote_of_a_book_from_before_names_ninths_one_by_one() -> None:
    before = "short double: does not, because of depth at the lower-left and lower and lower-right [late]"
    assert says_the_same(before, "short double: does not, because of depth at the lower row [late]")
    assert not says_the_same(before, "short double: does not, because of depth at the middle row [late]")
