from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.publish.address import Links, vehicle_page
from bezelbook.publish.counts.ready import ReadyPart, ready_parts
from bezelbook.reasoning.counts.lost import standing, tallies
from tests.publish.pages_of import pages_about
from tests.reasoning import making
from tests.reasoning.counts.test_fixing import seen, supply
from tests.reasoning.counts.test_minutes import after, first
from tests.reasoning.counts.test_used_up import ROPE
from tests.reasoning.making import CAR, HOLE

TIMES = (after("a", "80 min"), after("b", "95 min"), after("c", "110 min"), after("d", first("150 min")))


def parts(*records: Record, **car: Any) -> tuple[ReadyPart, ...]:
    book = making.book(making.vehicle(**car), supply("white-clip"), *records)
    everywhere = tallies(book, standing(book))
    return ready_parts(book, book.vehicles[CAR], everywhere, Links(vehicle_page(CAR), book), "2026-01-20")


# Trade 13: 1 h 35 (80 to 110 min, three jobs; 150 the first time).
def test_the_worked_times_in_words() -> None:
    [part] = parts(*TIMES)
    [row] = part.times
    assert (row.scope, row.words) == (
        "radio out and in",
        "about 1 h 35 (1 h 20 to 1 h 50, 3 jobs; 2 h 30 the first time)",
    )
    assert row.also == ("Three notes of these did not say whether it was a first time.",)


def test_few_jobs_are_thin_and_a_time_out_of_line_is_asked_about() -> None:
    done = {"scope": "bench", "first_time": "done before"}
    [part] = parts(*(after(name, done | {"took": took}) for name, took in (("a", "20 min"), ("b", "25 min"))))
    assert part.times[0].also == ("Thin: two jobs so far.",)
    slow = [after(name, done | {"took": took}) for name, took in zip("abcd", ("20 min",) * 3 + ("9 h",), strict=True)]
    [part] = parts(*slow)
    assert part.times[0].also == ("Ask d what d covered.",)
    nobody = after("e", done | {"took": "9 h"}, author=None)
    [part] = parts(*slow[:3], nobody)
    assert part.times[0].also == ("Ask its author what e covered.",)
    [only_first] = parts(TIMES[3])
    assert only_first.times[0].also == ()


def test_a_place_of_which_no_note_tells_any_of_it_has_no_part() -> None:
    assert parts() == ()
    assert parts(making.tried(), making.unit()) == ()


def test_each_place_has_its_part_in_the_vehicles_order_and_others_after() -> None:
    places = {
        "door": {"kind": "door lower", "side": "left", "name": "left door"},
        HOLE: {"kind": "pocket", "side": "left"},
    }
    notes = (after("a", "1 h", place="the-attic"), after("b", "1 h"), after("c", "1 h", place="door"))
    found = parts(*notes, places=places)
    assert [part.place for part in found] == ["left door", "dash centre", "the attic"]
    assert found[0].at == f"{CAR}.html#place-door"


def test_clips_and_what_gets_used_up_are_told() -> None:
    clips = seen("s", fasteners=[{"kind": "sail clip", "count": 4}])
    [part] = parts(clips, ROPE, after("a", used=[{"what": "rope", "length": "1 m"}, "ties"]))
    assert [(table.which, [row.comes_off for row in table.rows]) for table in part.clips] == [("", ["4"])]
    assert [(row.name, row.at, row.words, row.jobs) for row in part.used] == [
        ("Butyl rope", "../supplies/rope.html", "1000 mm (39.37 in)", "one job"),
        ("ties", "", "how much is not looked", "one job"),
    ]


def test_builds_that_want_other_clips_have_a_table_each() -> None:
    clips = [
        seen(name, fasteners=[{"kind": "sail clip", "count": count}], splits={"build": name})
        for name, count in (("early", 4), ("late", 7))
    ]
    [part] = parts(*clips, splits={"build": making.split("early", "late")})
    found = [(table.which, [row.comes_off for row in table.rows]) for table in part.clips]
    assert found == [("early", ["4"]), ("late", ["7"])]
    [part] = parts(clips[0], splits={"build": making.split("early", "late")})
    assert [table.which for table in part.clips] == ["early"]


def test_a_note_whose_place_another_took_is_not_counted() -> None:
    [part] = parts(after("a", "80 min"), after("b", "95 min", replaces="a"))
    assert part.times[0].words == "about 1 h 35 (1 h 35, one job)"


def test_the_vehicles_page_shows_it() -> None:
    clips = seen("s", fasteners=[{"kind": "sail clip", "count": 4}, "odd clip"])
    used = after("u", used=[{"what": "rope", "length": "1 m"}])
    page = pages_about(supply("white-clip"), ROPE, clips, used, *TIMES)[f"vehicles/{CAR}.md"]
    assert [heading.text for heading in page.all("h2", id="ready")] == ["Have ready"]
    assert "About 1 h 35 (1 h 20 to 1 h 50, 3 jobs; 2 h 30 the first time)." in page.text
    rows = {row.all("th")[0].text.strip(): row.all("td") for row in page.all("tr") if row.all("td")}
    assert [cell.text for cell in rows["White sail clip"][:4]] == [
        "4",
        "4",
        "not looked: count it",
        "four pieces; pack not looked",
    ]
    assert "Not known: how many are on the pieces there" in rows["odd clip"][4].text
    assert page.all("h2", id="ready") != []
    assert pages_about(making.unit())[f"vehicles/{CAR}.md"].all("h2", id="ready") == []
