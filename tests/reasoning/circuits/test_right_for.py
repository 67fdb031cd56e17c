from typing import Any

from bezelbook.reasoning.circuits.right_for import RightFor, ends_for_car, every_car, right_for
from tests.reasoning.circuits.a_car import CAR, DASH, book, connector, plug_in, seen, tee, tried

BOTH = ({"build": "late", "audio": "base"}, {"build": "late", "audio": "upgraded"})
LATE = {"build": "late"}
OPEN: dict[str, str] = {}
LONG = {"shell": "long"}


def lines(adapter: Any, *records: Any) -> tuple[RightFor, ...]:
    return right_for(every_car(book(adapter, *records)), adapter)


def said(adapter: Any, *records: Any) -> list[tuple[str, str]]:
    return [(line.is_, line.why) for line in lines(adapter, *records)]


def test_it_is_right_for_the_builds_whose_plug_it_takes_and_that_it_was_made_for() -> None:
    [right] = [line for line in lines(plug_in(), seen("one", splits={"build": "late"})) if line.is_ == "right"]
    assert (right.vehicle, right.place) == (CAR, DASH)
    assert [dict(build) for build in right.builds] == list(BOTH)
    assert right.tell == "early: Round vents; late: Square vents"


def test_it_is_wrong_for_the_other_build_whose_plug_is_another() -> None:
    early = seen("one", "round", splits={"build": "early"})
    found = said(plug_in(), connector("round"), early, seen("two", splits={"build": "late"}))
    assert [is_ for is_, _ in found] == ["right", "wrong"]
    assert found[1][1] == "made for late, not for this build; the plug there is The round"


def test_made_for_it_and_another_plug_there_is_wrong() -> None:
    late = seen("one", "round", splits={"build": "late"})
    assert said(plug_in(), connector("round"), late) == [
        ("wrong", "made for this build, as printed; nobody here has fitted it; the plug there is The round")
    ]
    two = (connector("round"), late, connector("flat"), seen("two", "flat", splits={"build": "late"}))
    assert said(plug_in(), *two)[0][1].endswith("; the plug there is The round or The flat")


def test_where_the_plug_is_not_known_for_certain_look_first() -> None:
    assert said(plug_in())[0] == (
        "look first",
        "made for this build, as printed; nobody here has fitted it; nobody has looked which plug is there",
    )
    assert (
        "look first",
        "made for this build, as printed; nobody here has fitted it; the plug is said, so look first",
    ) in said(plug_in(), seen("one", splits=OPEN))


def test_what_plugs_in_and_was_made_for_others_is_looked_at_first() -> None:
    [line] = said(plug_in(made_for=["another-car"]), seen("one", splits={"build": "late"}))
    assert line == (
        "look first",
        "it plugs in, but it was made for other cars: its leads may not be what this car has there",
    )
    [line] = said(plug_in(made_for=[]), seen("one", splits={"build": "late"}))
    assert line == ("look first", "it plugs in, and it does not say for which cars it was made")


def test_a_job_that_failed_makes_it_wrong() -> None:
    failed = tried("two", adapters=["plug-in"], verdict="does not", reason="circuit")
    assert ("wrong", "its circuits were not right here: two") in said(
        plug_in(), seen("one", splits={"build": "late"}), failed
    )


def test_a_plug_that_only_looks_like_its_own_is_wrong_and_says_the_line() -> None:
    alike = connector("offset", looks_like=[{"connector": "square", "difference": "Rib on the right."}])
    strange = plug_in(made_for=[])
    [line] = said(strange, alike, seen("one", "offset", splits={"build": "late"}))
    assert line == ("wrong", "the plug there only looks like its own: Rib on the right")
    [line] = said(strange, connector("offset"), seen("one", "offset", splits={"build": "late"}))
    assert line[1].endswith("nobody has looked at the keys of both")


def test_a_place_that_nobody_would_take_it_to_is_left_out() -> None:
    strange = plug_in(made_for=[])
    assert said(strange) == []
    assert said(strange, connector("long", **LONG), seen("one", "long")) == []
    gone = plug_in(made_for=[], ends={"a": {"connector": "gone", "side": "unit side"}})
    assert said(gone, seen("one")) == []


def test_a_lead_that_goes_by_its_plug_is_nothing_where_that_plug_is_not() -> None:
    lead = plug_in(made_for=[], adapter_kind="speaker lead")
    assert said(lead) == said(lead, connector("round", **LONG), seen("one", "round")) == []
    assert said(lead, seen("one", splits=LATE))[0] == ("right", "it goes by its plug, whatever the car")


def test_its_ends_for_the_car_are_those_shaped_like_a_radio() -> None:
    assert ends_for_car(tee()) == ("square",)
    ends = {
        "a": {"connector": "square", "side": "unit side"},
        "b": {"connector": "round", "side": "vehicle side"},
        "c": {"side": "unit side"},
        "d": {"connector": "flat", "side": "unit side"},
        "e": {"connector": "square", "side": "unit side"},
    }
    assert ends_for_car(tee(ends=ends)) == ("square", "flat")


def test_where_every_build_is_alike_there_is_nothing_to_tell() -> None:
    everywhere = plug_in(made_for=[CAR])
    notes = [seen(f"n-{build}", splits={"build": build}) for build in ("early", "late")]
    assert [line.tell for line in lines(everywhere, *notes) if line.place == DASH] == [""]
