from bezelbook.reasoning.circuits.plugs import Plug, Plugs, lent_by_sisters, plugs_at
from tests.reasoning.circuits import a_car
from tests.reasoning.circuits.a_car import car, connector, metered, seen

BLANK: dict[str, str] = {}


def test_a_plug_seen_on_this_build_is_known_by_whatever_name() -> None:
    found = plugs_at(car(seen("one", "The SQUARE"), metered("two", (1, "constant"))))
    assert (found.state, found.connectors) == ("known", ("square",))
    assert found.plugs == (Plug("The square", "square", "known", ("one", "two")),)


def test_what_another_build_has_says_nothing_of_this_one() -> None:
    found = plugs_at(car(seen("one", splits={"build": "early"})))
    assert (found.state, found.plugs) == ("not looked", ())


def test_two_plugs_of_one_job_are_both_there() -> None:
    found = plugs_at(car(connector("round"), seen("one", job="j"), seen("two", "round", job="j")))
    assert (found.state, found.connectors) == ("known", ("square", "round"))


def test_two_jobs_that_each_saw_another_plug_are_argued_over() -> None:
    found = plugs_at(car(connector("round"), seen("one", job="j"), seen("two", "round", job="k")))
    assert (found.state, {plug.state for plug in found.plugs}) == ("argued over", {"argued over"})


def test_notes_without_a_job_are_of_one_where_one_person_wrote_both_that_day() -> None:
    mine = {"author": "ab", "date": "2026-01-01"}
    for other, state in (
        (mine, "known"),
        (mine | {"author": "cd"}, "argued over"),
        (mine | {"date": "2026-01-02"}, "argued over"),
    ):
        assert plugs_at(car(connector("round"), seen("one", **mine), seen("two", "round", **other))).state == state


def test_a_third_job_that_saw_both_settles_it() -> None:
    both = (seen("three", author="ab", date="2026-01-01"), seen("four", "round", author="ab", date="2026-01-01"))
    assert (
        plugs_at(car(connector("round"), seen("one", job="j"), seen("two", "round", job="k"), *both)).state == "known"
    )


def test_a_note_without_its_build_only_says_so() -> None:
    found = plugs_at(car(seen("one", splits=BLANK)))
    assert (found.state, found.plugs[0].state) == ("said", "said")


def test_a_note_without_its_build_is_explained_by_the_build_that_is_known_to_have_it() -> None:
    early = seen("early", splits={"build": "early"})
    assert plugs_at(car(early, seen("one", splits=BLANK))).state == "not looked"


def test_hearsay_is_said() -> None:
    assert plugs_at(car(metered("one", (1, "constant"), sure="told"))).state == "said"


def test_hearsay_of_another_build_says_nothing_of_this_one() -> None:
    assert plugs_at(car(metered("one", (1, "constant"), sure="told", splits={"build": "early"}))).state == "not looked"


def test_somebody_looked_and_there_is_none() -> None:
    assert plugs_at(car(seen("one", "not there"))).state == "not there"
    assert plugs_at(car(seen("one", "not there", splits=BLANK))).state == "not looked"
    assert plugs_at(car(seen("one", "not there", job="j"), seen("two", job="j"))).state == "argued over"


def test_a_plug_that_no_record_goes_by_keeps_its_words() -> None:
    found = plugs_at(car(seen("one", "some  purple one")))
    assert (found.connectors, found.plugs[0].words) == ((), "some purple one")


def test_sisters_lend_what_is_known_of_them_as_told() -> None:
    lending = a_car.vehicle(sisters=["sister", "gone"])
    sister = a_car.vehicle(name="Sister").model_copy(update={"id": "sister"})
    notes = (seen("one", vehicle="sister"), seen("two", "round", vehicle="sister", splits=BLANK))
    found = lent_by_sisters(car(lending, sister, connector("round"), *notes))
    assert found == Plugs("said", (Plug("The square", "square", "said", ("one",)),))
    assert lent_by_sisters(car()) == Plugs("not looked", ())


def test_plugs_are_of_one_car_where_jobs_join_each_to_each_by_way_of_others() -> None:
    pairs = {"a": ("square", "round"), "b": ("square", "flat"), "c": ("round", "long")}
    notes = [seen(f"{job}-{plug}", plug, job=job) for job, plugs in pairs.items() for plug in plugs]
    found = plugs_at(car(*(connector(name) for name in ("round", "flat", "long")), *notes))
    assert (found.state, found.connectors) == ("known", ("round", "square", "flat", "long"))


def test_hearsay_of_this_build_is_not_explained_by_another_that_is_known_to_have_the_plug() -> None:
    early = seen("early", splits={"build": "early"})
    assert plugs_at(car(early, metered("late", (1, "constant"), sure="told"))).state == "said"
