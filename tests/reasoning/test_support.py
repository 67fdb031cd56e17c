"""Which notes carry an answer, how sure that makes it, and how many jobs stand behind it."""

from bezelbook.kinds.record import Record
from bezelbook.reasoning.support import Support, support
from bezelbook.reasoning.verdict import judge
from tests.reasoning.making import book, length, measured, place, reading, resolved, tried, unit

DEEP = measured("deep", reading("depth", "205 ± 3 mm"), job="m")


def behind(*records: Record, depth: str | None = None) -> Support:
    """What carries the answer about the box, or about a body of this depth without its plug."""
    of = book(*records)
    asked = {"sizes": {"depth": length(depth)}, "plugs": "off"} if depth else {"unit": "box"}
    question = resolved(of, **asked)
    verdict = judge(place(of), question).verdict
    assert verdict in ("goes in", "does not")
    return support(place(of), question, "always" if verdict == "goes in" else "never")


def ids(found: Support) -> list[str]:
    return [one.note.id for one in found.notes]


def test_every_note_that_shows_it_by_itself_carries_it() -> None:
    found = behind(unit(), tried("a", job="one"), tried("b", job="two"), tried("c", what="other"), unit("other"))
    assert (ids(found), found.sure, found.witnesses) == (["a", "b"], "fitted", 2)


def test_the_strongest_of_them_says_how_sure_it_is() -> None:
    plugged = [tried(name, sure=name, plugs="on", job=name) for name in ("measured", "dry-fitted")]
    assert behind(unit(), *plugged).sure == "dry-fitted"
    assert behind(unit(), plugged[0]).sure == "measured"
    assert behind(unit(), *plugged, tried("fitted")).sure == "fitted"


def test_where_only_readings_show_it_it_is_worked_out() -> None:
    found = behind(DEEP, depth="150 mm")
    assert (ids(found), found.sure, found.witnesses) == (["deep"], "worked out", 1)
    assert behind(DEEP, depth="210 mm").sure == "worked out"


def test_beside_a_fitting_a_reading_is_no_further_witness() -> None:
    fitted = tried("f", what="shelf", sizes={"depth": "151 ± 1 mm"}, job="f")
    found = behind(DEEP, fitted, depth="150 mm")
    assert (ids(found), found.sure, found.witnesses) == (["deep", "f"], "fitted", 1)


def test_a_copied_job_is_one_witness() -> None:
    assert behind(unit(), tried("a", job="one"), tried("b", job="one")).witnesses == 1


def test_where_no_note_shows_it_alone_a_set_is_named_of_which_none_can_be_left_out() -> None:
    halves = [
        measured("left", reading("depth", "205 ± 3 mm", "left", "upper-left", "lower-left", "upper", "lower"), job="l"),
        measured("right", reading("depth", "205 ± 3 mm", "right", "upper-right", "lower-right", "centre"), job="r"),
        measured("again", reading("depth", "206 ± 3 mm", "left"), job="a"),
    ]
    found = behind(*halves, depth="150 mm")
    assert (ids(found), found.sure, found.witnesses) == (["left", "right"], "worked out", 2)


def test_a_no_is_carried_by_the_notes_that_show_it() -> None:
    no = tried("no", verdict="does not", sure="dry-fitted", reason="depth", job="n")
    found = behind(unit(body_depth="210 ± 1 mm caliper"), no, DEEP)
    assert (ids(found), found.sure, found.witnesses) == (["deep", "no"], "dry-fitted", 1)
