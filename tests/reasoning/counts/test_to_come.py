from typing import Any

from bezelbook.kinds.job.record import Job
from bezelbook.kinds.record import Record
from bezelbook.reasoning.counts.lost import standing, tallies
from bezelbook.reasoning.counts.to_come import Wanted, wanted
from tests.reasoning import making
from tests.reasoning.counts.test_clips import TRAY
from tests.reasoning.counts.test_fixing import seen, supply
from tests.reasoning.counts.test_lost import after
from tests.reasoning.making import CAR, HOLE

CLIPS = seen("s", pieces=[{"piece": "bezel", "fasteners": [{"kind": "sail clip", "count": 7}]}])


def job(named: str, *wishes: dict[str, Any], **content: Any) -> Job:
    said = {"tag": named, "vehicle": CAR, "day": "2026-02-02", "wishes": list(wishes)} | content
    made: Job = making.record("jobs", named, {key: value for key, value in said.items() if value is not None})
    return made


def wish(**content: Any) -> dict[str, Any]:
    return {"want": "replace", "what": "box", "place": HOLE} | content


def to_come(*records: Record) -> dict[str, list[tuple[str, int | None]]]:
    book = making.book(making.unit(), supply("white-clip"), *records)
    found = wanted(book, tallies(book, standing(book)), "2026-01-20")
    return {thing: [(one.job.id, one.count) for one in jobs] for thing, jobs in found.items()}


def test_a_job_wants_its_wishes_its_mounts_and_the_clips_at_its_places() -> None:
    two = (wish(mounts=["ring"]), wish(mounts=["ring"], place="elsewhere"), wish(what="something odd"))
    assert to_come(job("one", *two), CLIPS) == {
        "box": [("one", 2)],
        "ring": [("one", 2)],
        "white-clip": [("one", 7)],
    }


def test_each_says_why_it_is_wanted_and_the_clips_are_those_of_the_build_that_comes() -> None:
    builds = making.vehicle(splits={"build": making.split("early", "late")})
    fasteners = {"early": [{"kind": "sail clip", "count": 7}], "late": [{"kind": "sail clip", "count": 11}]}
    notes = [
        seen(build, pieces=[{"piece": "bezel", "fasteners": some}], splits={"build": build})
        for build, some in fasteners.items()
    ]
    one = job("one", wish(mounts=["ring"]), splits={"build": "early"})
    book = making.book(builds, making.unit(), supply("white-clip"), TRAY, *notes, one)
    assert wanted(book, tallies(book, standing(book)), "2026-01-20") == {
        "box": (Wanted(one, 1, "it is what is wished for"),),
        "ring": (Wanted(one, 1, "it is the mount that is settled"),),
        "white-clip": (Wanted(one, 7, "clips at the dash centre"),),
    }


def test_a_wish_without_a_place_wants_no_clips_and_one_place_wants_them_once() -> None:
    assert "white-clip" not in to_come(job("one", wish(place=None) | {"place": "x"}), CLIPS)
    assert to_come(job("one", wish(), wish()), CLIPS)["white-clip"] == [("one", 7)]
    nowhere = {"want": "add", "what": "box"}
    assert to_come(job("one", nowhere), CLIPS) == {"box": [("one", 1)]}


def test_clips_that_nobody_counted_are_wanted_in_an_unknown_number() -> None:
    uncounted = seen("s", fasteners=["sail clip"])
    assert to_come(job("one", wish()), uncounted)["white-clip"] == [("one", None)]


def test_the_soonest_comes_first_and_one_without_a_day_last() -> None:
    jobs = (job("a", wish(), day=None), job("b", wish(), day="2026-03-01"), job("c", wish(), day="2026-01-20"))
    assert to_come(*jobs)["box"] == [("c", 1), ("b", 1), ("a", 1)]


def test_a_job_that_is_over_wants_nothing() -> None:
    assert to_come(job("a", wish(), day="2026-01-19")) == {}
    assert to_come(job("a", wish()), after("n", 0, 0, clips=[], job="a")) == {}
    assert to_come(job("a", wish()), after("n", 0, 0, clips=[]))["box"] == [("a", 1)]
