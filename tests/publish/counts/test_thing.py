from bezelbook.kinds.record import Record
from bezelbook.publish.address import Links, part_page
from bezelbook.publish.counts.thing import ThingPart, Things
from tests.publish.pages_of import pages_about
from tests.reasoning import making
from tests.reasoning.counts.test_clips import PAST, TRAY
from tests.reasoning.counts.test_fixing import supply
from tests.reasoning.counts.test_lost import after
from tests.reasoning.counts.test_to_come import CLIPS, job, wish

CLIP = supply("white-clip", pack=10)


def part(thing: str, *records: Record) -> ThingPart | None:
    book = making.book(*records)
    return Things(book, "2026-01-20").part(thing, Links(part_page("supply", thing), book))


def test_a_clip_says_how_many_are_lost_and_how_many_to_have_ready() -> None:
    shown = part("white-clip", CLIP, TRAY, *PAST)
    assert shown is not None
    assert shown.shelf == "2, counted 2026-01-10"
    assert shown.past == "15 of 126 lost in three jobs."
    # Quantiles of the beta-binomial with 15.5 and 111.5, by the library scipy.stats.
    assert shown.table == ((5, 2), (10, 3), (20, 5), (40, 9))
    assert shown.jobs == ()


def test_few_jobs_are_thin_and_single_use_is_replaced() -> None:
    thin = part("white-clip", CLIP, after("a", 5, 44))
    assert thin is not None
    assert thin.past == "Thin: 5 of 44 lost in one job."
    none = part("white-clip", CLIP)
    assert none is not None
    assert none.past == "Thin: No job wrote back."
    single = part("white-clip", supply("white-clip", single_use="single use"))
    assert single is not None
    assert single.past == "No job wrote back. Single use: as many new ones as come off."
    assert single.table == ()


def test_a_thing_that_nobody_wants_and_that_lies_nowhere_says_nothing() -> None:
    tool = making.record("supplies", "clip-puller", {"name": "Clip puller", "form": "tool", "tool_kind": "lever"})
    assert part("clip-puller", tool) is None
    assert part("some-clip") is None
    stock = making.record("shelf", "hook", {"thing": "some-clip", "count": 1})
    lying = part("some-clip", stock)
    assert lying is not None
    assert (lying.past, lying.table) == ("", ())


def test_the_jobs_to_come_are_named_with_their_day() -> None:
    wants = (job("one", wish()), job("two", wish(), day=None), making.unit(), CLIPS, CLIP)
    shown = part("white-clip", *wants)
    assert shown is not None
    assert [row.words for row in shown.jobs] == [
        "2026-02-02: have 7 ready, clips at the dash centre",
        "no day yet: have 7 ready, clips at the dash centre",
    ]
    assert shown.jobs[0].at == "../jobs.html#job-one"
    uncounted = part("box", *wants)
    assert uncounted is not None
    assert uncounted.jobs[0].words == "2026-02-02: have 1 ready, it is what is wished for"


def test_clips_that_nobody_counted_are_wanted_all_the_same() -> None:
    note = making.record(
        "notes", "s", {"form": "seen", "vehicle": making.CAR, "place": making.HOLE, "fasteners": ["sail clip"]}
    )
    shown = part("white-clip", job("one", wish()), making.unit(), note, CLIP)
    assert shown is not None
    assert shown.jobs[0].words == "2026-02-02: how many is not known, clips at the dash centre"


def test_a_count_on_the_shelf_is_fresh_for_thirty_days() -> None:
    things = Things(making.book(), "2026-01-20")
    assert things.fresh(TRAY)
    assert not things.fresh(making.record("shelf", "tray", {"thing": "x", "count": 1, "counted_on": "2025-12-20"}))
    assert not things.fresh(making.record("shelf", "tray", {"thing": "x", "count": 1}))


def test_its_page_and_the_shelf_show_it() -> None:
    records = (CLIP, making.unit(), CLIPS, TRAY, job("one", wish(), day="2026-04-01"), *PAST)
    pages = pages_about(*records)  # of 2026-03-05
    assert "2, counted 2026-01-10: count it" in pages["supplies/white-clip.md"].text
    assert "of 20 that come off have 5 ready" in pages["supplies/white-clip.md"].text
    assert "have 2 ready, clips at the dash centre" in pages["shelf.md"].text
    assert "counted 2026-01-10: count it" in pages["shelf.md"].text
    bare = pages_about(CLIP)["supplies/white-clip.md"].text
    assert "No job to come wants it, as far as the book knows." in bare
