"""What an answer had to do without."""

from typing import Any

import pytest

from bezelbook.reasoning.speakers.unknowns import unknowns
from bezelbook.reasoning.unknowns import Missing
from tests.reasoning.speakers.doors import (
    BUILDS,
    DOOR,
    OTHER,
    SHELF,
    ask,
    book,
    car,
    foam,
    measured,
    mount,
    place,
    reading,
    resolved,
    roomy,
    shop,
    speaker,
    tried,
)

TRAVEL = "the worst point of the glass's way was not looked at"


def unknown(*records: Any, what: Any = "six", **more: Any) -> list[str]:
    return [one.what for one in ask(book(*records), what, **more).unknown]


def test_what_nobody_read_on_this_side() -> None:
    assert unknown() == [
        "the hole was never measured",
        "the depth to the glass was never measured on this side",
        "the room in front was never measured",
    ]
    assert unknown(roomy()) == [TRAVEL, NO_EXCURSION]
    worst = measured("w", reading("rear depth at worst of travel", "69 ± 1 mm"))
    assert unknown(speaker(excursion="2 mm caliper"), roomy(), worst) == []
    assert "the depth behind to what does not move was never measured" in unknown(where=SHELF)


CONE = "no figure shows that its cone clears the grille when it plays: it comes up to 4 mm (0.16 in) further out"
NO_EXCURSION = "no figure shows that its cone clears the grille when it plays: its record has no excursion"


@pytest.mark.parametrize(
    ("front", "height", "told"),
    [
        ("20 ± 1 mm", "10 mm caliper", False),
        ("14 ± 1 mm", "10 mm caliper", True),
        ("15 ± 1 mm", "10 mm caliper", False),
        ("20 ± 1 mm", None, True),
        (None, "10 mm caliper", True),
    ],
)
def test_that_it_went_in_does_not_show_that_its_cone_clears_the_grille(
    front: str | None, height: str | None, *, told: bool
) -> None:
    """By hand: 10 in front and 4 further out ask for 14."""
    plays = speaker(front_height=height, excursion="4 mm caliper")
    read = [measured("f", reading("front clearance", front))] if front else []
    assert ask(book(plays, tried(), *read)).verdict == "goes in"
    assert (CONE in unknown(plays, tried(), *read)) == told


def test_how_it_is_seen_whether_a_cone_clears_the_grille() -> None:
    look = "putty inside the grille, play it loud, 3 min"
    assert (
        Missing(CONE, look, "how thick a ring may be") in ask(book(speaker(excursion="4 mm caliper"), tried())).unknown
    )


def test_how_far_a_cone_comes_out_is_said_in_the_shops_own_unit_first() -> None:
    found = unknown(shop("in"), speaker(excursion="4 mm caliper"), tried())
    assert CONE.replace("4 mm (0.16 in)", "0.16 in (4 mm)") in found


def test_the_long_way_of_a_hole_may_be_all_that_nobody_read() -> None:
    oval = speaker("oval", basket="150 mm caliper", basket_short="90 mm caliper")
    across = measured("m", reading("cut-out short way", "95 ± 1 mm"))
    long_way = "the hole was never measured the long way"
    assert ask(book(oval, across), "oval").unknown[0] == Missing(
        long_way, "caliper across it, 2 min", "whether a basket goes through"
    )


def test_the_hole_may_be_all_that_nobody_read() -> None:
    deep = [reading("rear depth to glass down", "70 ± 1 mm"), reading("front clearance", "20 ± 1 mm")]
    assert unknown(measured("m", *deep)) == ["the hole was never measured", TRAVEL]


def test_of_a_cone_only_what_is_said_to_go_in_is_asked_about() -> None:
    plays = speaker(excursion="4 mm caliper")
    assert CONE not in unknown(plays)
    assert CONE not in unknown(speaker(), tried())
    assert NO_EXCURSION in unknown(speaker(), tried())
    assert NO_EXCURSION not in unknown(speaker())
    for height in ("10 mm caliper", None):
        dome = speaker(speaker_kind="tweeter", front_height=height)
        assert not [one for one in unknown(dome, tried()) if "grille" in one], "a dome hardly moves"
    assert NO_EXCURSION not in unknown(tried(), what={"mounting_depth": "60 mm"}), "nobody spoke of its front"
    assert NO_EXCURSION not in unknown(tried(), what={"like": "six", "front_height": "9 mm"})
    assert NO_EXCURSION in unknown(tried(), what={"like": "six", "mounting_depth": "60 mm"})
    assert CONE not in unknown(plays, tried(), what={"like": "six", "front_height": "9 mm"})
    assert CONE not in unknown(plays, tried(), what={"mounting_depth": "60 mm"})


def test_glass_behind_a_shelf_has_no_travel() -> None:
    seat = {"datum": "inside face of panel"}
    readings = [
        reading("rear depth to glass down", "70 ± 1 mm", **seat),
        reading("rear depth to fixed", "70 ± 1 mm", **seat),
    ]
    assert TRAVEL not in unknown(measured("m", *readings, place=SHELF), where=SHELF)


def test_the_hole_of_a_place_does_not_matter_behind_a_bracket() -> None:
    bracket = mount("b", mount_kind="bracket", inner="140 mm caliper", thickness="1 mm caliper")
    assert "the hole was never measured" not in unknown(bracket, mounts=["b"])


def test_a_side_that_was_only_assumed() -> None:
    found = ask(book(roomy(other_side="assumed the same")), where=OTHER).unknown
    [one] = [one for one in found if "assumed" in one.what]
    assert one == Missing(
        "this side was only assumed to be the same, in roomy",
        "measure it, depth gauge or putty, 5 min",
        "everything on this side",
    )


def test_the_build_and_what_it_changes() -> None:
    splits: dict[str, Any] = {"build": {"values": {"early": {"tell": "a round handle"}, "late": {}}}}
    of = book(car(splits=splits), roomy(splits={"build": "late"}))
    [one] = [one for one in ask(of).unknown if "build" in one.what]
    assert (one.look, one.changes) == ("early: a round handle", "early: nobody has tried; late: goes in")
    never = book(car(splits=BUILDS | {"body": {"values": {"van": {}, "bus": {}}}}, never_built=[{"build": "early"}]))
    found = {one.what: one for one in ask(never).unknown}
    assert found["the body is not known"].look == "nobody has written how to tell"


def test_what_is_not_known_of_the_speaker() -> None:
    settles = "caliper, 2 min on the bench", "whether it goes in at all"
    boxed = ask(book(speaker("boxed", mounting_depth="60 mm printed")), "boxed").unknown
    assert Missing("mounting depth of boxed: printed only", *settles) in boxed
    odd = ask(book(speaker("odd", front_height=None, mounting_depth=None)), "odd").unknown
    assert Missing("mounting depth, front height of odd: not looked", *settles) in odd


@pytest.mark.parametrize(
    ("content", "words"),
    [
        ({"mounts": None}, "n does not say which mounts were used"),
        ({"gasket": None}, "n does not say whether there was a gasket"),
        ({"cut": None}, "n does not say whether anything was cut"),
        ({"glass": None, "verdict": "does not"}, "n does not say where the glass was"),
        ({"mounts": ["b"]}, "n does not say whether the tabs were in or out"),
        ({"cut": None, "glass": None}, "n does not say whether anything was cut or where the glass was"),
    ],
)
def test_what_a_note_does_not_say(content: dict[str, Any], words: str) -> None:
    bracket = mount("b", mount_kind="bracket", tabs_in="120 mm caliper", tabs_out="140 mm caliper")
    of = book(bracket, foam(), tried(author=None, **content))
    assert Missing(words, "ask its author", "how far that note carries") in ask(of).unknown


def test_a_note_of_an_unknown_build() -> None:
    assert "n does not say which build the car was" in unknown(car(splits=BUILDS), tried(), splits={"build": "late"})


def test_a_reading_that_cannot_be_compared() -> None:
    note = measured("m", reading("front clearance", "20 mm", datum=None))
    assert (
        Missing(
            "front clearance 20 mm in m does not say from which face it was measured",
            "depth gauge or putty from the face that the speaker sits on, 5 min",
            "whether that number can be used",
        )
        in ask(book(note)).unknown
    )
    assert unknown(tried())[-1] != "n"


def test_a_build_that_was_never_built_changes_nothing() -> None:
    splits: dict[str, Any] = {"build": {"values": {"early": {}, "late": {}, "last": {}}}}
    of = book(car(splits=splits, never_built=[{"build": "last"}]), roomy(splits={"build": "late"}))
    [one] = [one for one in ask(of).unknown if "build" in one.what]
    assert one.changes == "early: nobody has tried; late: goes in"


def test_each_thing_that_nobody_read_says_how_to_read_it_and_what_for() -> None:
    assert ask(book()).unknown == (
        Missing("the hole was never measured", "caliper across it, 2 min", "whether a basket goes through"),
        Missing(
            "the depth to the glass was never measured on this side",
            "depth gauge or putty with the glass all the way down, 5 min",
            "how deep a speaker may be",
        ),
        Missing(
            "the room in front was never measured", "putty under the lining, 5 min", "how far a ring may hold it out"
        ),
    )
    assert ask(book(speaker(excursion="2 mm caliper"), roomy())).unknown == (
        Missing(TRAVEL, "putty on the magnet and run the glass, 5 min", "how deep a speaker may be"),
    )
    shelf = ask(book(), where=SHELF).unknown
    assert (
        Missing(
            "the depth behind to what does not move was never measured",
            "depth gauge or putty, 5 min",
            "how deep a speaker may be",
        )
        in shelf
    )


def test_a_build_that_bears_only_on_another_place_is_not_asked_about() -> None:
    splits: dict[str, Any] = {"build": {"values": {"early": {}, "late": {}}, "bears_on": {"places": [OTHER]}}}
    assert not [what for what in unknown(car(splits=splits), roomy()) if "build" in what]


def test_behind_a_bracket_everything_but_the_hole_is_not_read() -> None:
    bracket = mount("b", mount_kind="bracket", inner="140 mm caliper", thickness="1 mm caliper")
    assert unknown(bracket, mounts=["b"]) == [
        "the depth to the glass was never measured on this side",
        "the room in front was never measured",
    ]


def test_a_reading_at_a_place_that_the_vehicle_does_not_list_cannot_be_compared_either() -> None:
    of = book(measured("m", reading("front clearance", "20 mm", datum=None), place="boot"))
    assert list(unknowns(place(of, "boot"), resolved(of, "boot", mounts=())))[-1] == Missing(
        "front clearance 20 mm in m does not say from which face it was measured",
        "depth gauge or putty from the face that the speaker sits on, 5 min",
        "whether that number can be used",
    )


def test_behind_what_takes_the_place_of_the_hole_no_way_of_it_is_asked_for() -> None:
    bracket = mount("b", mount_kind="bracket", thickness="1 mm caliper")
    oval = speaker("oval", basket_short="90 mm caliper")
    for found in (unknown(bracket, mounts=["b"]), unknown(bracket, oval, what="oval", mounts=["b"])):
        assert not [what for what in found if "hole" in what]
    assert "the hole was never measured" in unknown(oval, what="oval")


def test_a_trial_on_the_other_side_assumes_nothing_of_this_one() -> None:
    found = unknown(roomy(other_side="assumed the same"), tried(), where=OTHER)
    assert [what for what in found if "assumed" in what] == ["this side was only assumed to be the same, in roomy"]


def test_only_a_build_that_bears_on_the_place_is_unknown() -> None:
    values: dict[str, Any] = {"values": {"early": {}, "late": {}}}
    places = {"door": [DOOR], "shelf": [SHELF]}
    of = car(splits={axis: {**values, "bears_on": {"places": where}} for axis, where in places.items()})
    assert [what for what in unknown(of, roomy(splits={"door": "late"})) if what.startswith("the ")][:1] == [
        "the door is not known"
    ]
    assert "the shelf is not known" not in unknown(of, roomy(splits={"door": "late"}))


def test_all_that_is_only_printed_is_named() -> None:
    boxed = speaker("boxed", mounting_depth="60 mm printed", front_height="10 mm printed")
    assert "mounting depth, front height of boxed: printed only" in unknown(boxed, what="boxed")


def test_where_the_book_has_no_foam_nobody_is_asked_about_a_gasket() -> None:
    assert not [what for what in unknown(tried(gasket=None)) if "gasket" in what]
    assert [what for what in unknown(foam(), tried(gasket=None)) if "gasket" in what]


def test_one_reading_of_a_hole_that_is_not_round_wants_its_way() -> None:
    assert "cut-out 140 ± 1 mm in roomy does not say which way of the oval hole it is" in unknown(roomy(shape="oval"))


def test_a_reading_from_the_seat_of_a_ring_can_be_used_where_the_ring_is_named() -> None:
    seat = reading("rear depth to glass down", "70 ± 1 mm", datum="bracket seat")
    ring = mount("ring", thickness="8 mm caliper")
    assert not any("in seat" in one for one in unknown(ring, measured("seat", seat, mounts=["ring"])))
    assert any("in seat was measured from the bracket seat" in one for one in unknown(ring, measured("seat", seat)))
