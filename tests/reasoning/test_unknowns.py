"""What an answer had to do without, where to look, and what it would change."""

from typing import Any

import pytest

from bezelbook.kinds.record import Record
from bezelbook.reasoning.cells import Setting
from bezelbook.reasoning.evidence import UNCUT
from bezelbook.reasoning.mounting import BARE
from bezelbook.reasoning.unknowns import FACE, Missing, blank_ninths, unknowns
from tests.reasoning.making import book, length, measured, mount, place, reading, resolved, roomy, tried, unit, vehicle

DEEP = measured("deep", reading("depth", "205 ± 3 mm"))
SEATS = {"bare": "none", "seated": ["kit"]}
PLUG = Missing("how much its plug and bend need", "plug it in on the bench and rule it, 3 min", "the last 15 mm")
TELLS = vehicle(
    splits={"build": {"values": {"early": {"tell": "Round vents."}, "late": {"tell": "Square vents."}, "last": {}}}}
)


def missing(*records: Record, **question: Any) -> dict[str, Missing]:
    of = book(*records)
    asked = resolved(of, **question) if question else resolved(of, unit="box")
    return {one.what: one for one in unknowns(place(of), asked)}


def test_where_everything_was_looked_at_nothing_is_missing() -> None:
    assert missing(unit(), DEEP, roomy(), tried()) == {}


def test_an_open_build_says_how_to_tell_and_what_each_would_answer() -> None:
    found = missing(TELLS, unit(), DEEP, roomy(), tried(splits={"build": "late"}))
    assert found["the build is not known"] == Missing(
        "the build is not known",
        "early: Round vents.; late: Square vents.",
        "early: nobody has tried; late: goes in; last: nobody has tried",
    )


def test_a_build_that_nobody_can_tell_is_said_to_be_so() -> None:
    car = vehicle(splits={"build": {"values": {"early": {}, "late": {}}}})
    assert missing(car, unit())["the build is not known"].look == "nobody has written how to tell"


def test_only_builds_that_the_question_leaves_open_are_named() -> None:
    car = vehicle(splits={"build": {"values": {"early": {}, "late": {}, "last": {}}}}, never_built=[{"build": "early"}])
    changes = missing(car, unit())["the build is not known"].changes
    assert changes == "late: nobody has tried; last: nobody has tried"


def test_a_printed_size_asks_for_a_caliper() -> None:
    found = missing(unit(body_width="178 mm printed", body_depth="110 mm printed"), DEEP)
    assert list(found.values()) == [
        Missing("width, depth of box: printed only", "caliper, 2 min on the bench", "whether it goes in at all")
    ]


def test_a_blank_size_asks_for_a_caliper_and_a_blank_nose_does_not() -> None:
    found = missing(unit(body_width=None, body_height=None, plug_and_bend="32 mm printed"), DEEP)
    assert list(found.values()) == [
        Missing("plug of box: printed only", "caliper, 2 min on the bench", "whether it goes in at all"),
        Missing("width, height of box: not looked", "caliper, 2 min on the bench", "whether it goes in at all"),
        PLUG,
    ]


def test_an_unknown_plug_or_exit_is_asked_for() -> None:
    exit_ = Missing("where its plug leaves", "look at the back of it, 1 min", "which ninth has to be the deep one")
    assert list(missing(unit(plug_and_bend=None, plug_exit=None), DEEP).values()) == [PLUG, exit_]
    assert list(missing(unit(plug_exit=None), DEEP).values()) == [exit_]
    assert missing(unit(), DEEP) == {}


def test_a_size_that_was_not_asked_about_is_not_missing() -> None:
    assert missing(roomy(), sizes={"width": length("178 mm")}) == {}


def test_the_ninths_without_a_reading_are_named() -> None:
    assert list(missing(unit()).values()) == [Missing("the depth was never measured", FACE, "how deep a thing may be")]
    found = missing(unit(), measured("m", reading("depth", "205 ± 3 mm", "left", "centre", "right")))
    assert list(found) == ["depth not looked at: upper-left, upper, upper-right, lower-left, lower, lower-right"]


def test_only_ninths_behind_the_hole_have_to_be_looked_at() -> None:
    kit = mount(presents={"ninths": ["left", "right"]})
    found = missing(unit(), kit, measured("m", reading("depth", "205 ± 3 mm", "left")), unit="box", mounts=("kit",))
    assert "depth not looked at: right" in found


def test_by_how_much_at_a_ninth_is_a_look_at_it() -> None:
    spare = tried(where=["left"], to_spare="5 ± 1 mm")
    (looked,) = (what for what in missing(unit(), spare) if "looked at" in what)
    assert "left" not in looked.removeprefix("depth not looked at: ").split(", ")


@pytest.mark.parametrize(
    ("content", "blank"),
    [
        ({"mounts": None}, "which mounts were used"),
        ({"cut": None}, "whether anything was cut"),
        ({"verdict": "does not", "loom": None}, "where the loom was"),
        ({"verdict": "does not", "mounts": None, "loom": None}, "which mounts were used or where the loom was"),
    ],
)
def test_what_a_note_leaves_out_is_asked_of_its_author(content: dict[str, Any], blank: str) -> None:
    found = missing(unit(), DEEP, tried("n", author="rk", **content))[f"n does not say {blank}"]
    assert (found.look, found.changes) == ("ask rk", "how far that carries")


def test_one_person_is_asked_in_one_line_for_all_their_notes() -> None:
    mine = [tried("a", author="rk", mounts=None), tried("b", author="rk", cut=None), tried("c", author="rk")]
    found = missing(unit(), DEEP, *mine, tried("d", author="jo", cut=None))
    asked = {what: one.look for what, one in found.items() if "say" in what}
    assert asked == {
        "a and b do not all say which mounts were used or whether anything was cut": "ask rk",
        "d does not say whether anything was cut": "ask jo",
    }


def test_a_note_that_does_not_say_which_build_it_was_is_asked_of_its_author() -> None:
    found = missing(TELLS, unit(), DEEP, tried("n", author="rk"))
    assert found["n does not say which build the car was"].look == "ask rk"
    assert found[f"{DEEP.id} does not say which build the car was"].look == "ask its author"


def test_a_weak_note_is_asked_about_too_and_one_about_nothing_tried_is_not() -> None:
    assert "n does not say which mounts were used" in missing(unit(), tried("n", sure="told", mounts=None))
    told = tried("n", sure="told", mounts=["kit"], cut=None)
    assert "n does not say whether anything was cut" in missing(unit(), mount(), told)
    assert not any("n does" in what for what in missing(unit(), tried("n", verdict="not tried", mounts=None)))


def test_what_does_not_matter_to_a_no_or_a_yes_is_not_asked_about() -> None:
    found = missing(unit(), tried("yes", loom=None), tried("no", verdict="does not", cut=None))
    assert not any("does not say" in what for what in found)


def test_a_reading_that_cannot_be_compared_says_why() -> None:
    note = measured("m", reading("depth", "150 mm", datum=None), reading("width", "182 mm"))
    found = missing(unit(), note)
    said = "depth 150 mm in m does not say from which face it was measured"
    assert found[said] == Missing(said, FACE, "whether that number can be used")


def test_a_reading_from_a_kit_seat_counts_only_where_there_is_a_kit() -> None:
    notes = [measured(name, reading("depth", "150 mm", datum="kit seat"), mounts=on) for name, on in SEATS.items()]
    said = "depth 150 mm in bare was measured from the kit seat, not from the sub-dash face"
    assert missing(unit(), mount(), *notes)[said] == Missing(said, FACE, "whether that number can be used")
    assert not any("in seated" in what for what in missing(unit(), mount(), *notes))


def test_the_blank_ninths_of_a_setting_are_those_with_an_open_end() -> None:
    of = book(measured("m", reading("depth", "150 ± 3 mm", "upper", "left")))
    assert blank_ninths(place(of), Setting((), BARE, UNCUT, "aside", plugs_on=True)) == [
        "upper-left",
        "upper-right",
        "centre",
        "right",
        "lower-left",
        "lower",
        "lower-right",
    ]


def test_a_ninth_that_is_argued_over_was_looked_at() -> None:
    near, deep = (measured(f"at-{mm}", reading("depth", f"{mm} ± 3 mm", "centre")) for mm in (90, 150))
    blank = blank_ninths(place(book(near, deep)), Setting((), BARE, UNCUT, "aside", plugs_on=True))
    assert "centre" not in blank
    assert len(blank) == 8
