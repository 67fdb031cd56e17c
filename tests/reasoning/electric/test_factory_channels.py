from typing import Any

from bezelbook.kinds.note.record import Seen
from bezelbook.kinds.record import Record
from bezelbook.reasoning.electric.channel import Hanging
from bezelbook.reasoning.electric.factory_channels import FactoryChannel, factory_channels
from bezelbook.reasoning.unknowns import Missing
from tests.reasoning import making
from tests.reasoning.electric.ranges import span
from tests.reasoning.making import CAR, split

PLACES = {
    "door": {"kind": "door lower", "side": "left"},
    "mirror": {"kind": "mirror triangle", "side": "left"},
    "dash": {"kind": "dash corner", "side": "left"},
}
AUDIO = split("base", "upgraded", differs_in="audio")


def seen(named: str, place: str, speaker: dict[str, Any], **content: Any) -> Seen:
    said = {"form": "seen", "vehicle": CAR, "place": place, "factory_speaker": speaker} | content
    made: Seen = making.record("notes", named, said)
    return made


def channels(*notes: Record, **car: Any) -> tuple[FactoryChannel, ...]:
    vehicle = making.vehicle(**({"places": PLACES} | car))
    return factory_channels(making.book(vehicle, *notes), vehicle)


def test_a_place_that_nobody_looked_at_is_on_no_channel() -> None:
    assert channels() == ()
    assert channels(making.record("notes", "n", {"form": "seen", "vehicle": CAR, "place": "door"})) == ()


def test_a_load_is_not_quoted_until_somebody_looked_what_else_hangs_there() -> None:
    [one] = channels(seen("a", "door", {"impedance": "4 ohm", "driven_by": "radio"}))
    assert one.places == ("door",)
    assert one.sees.least is None
    assert one.driven_by == "radio"
    assert one.unknown == (
        Missing(
            "what else hangs on this channel",
            "a tone on one speaker's leads, and listen which others play, 5 min",
            "a second speaker in parallel halves the load",
        ),
    )


def test_a_speaker_that_hangs_alone_is_the_load() -> None:
    [one] = channels(seen("a", "door", {"impedance": "2 ohm", "together_with": []}))
    assert one.sees.least == span(2)
    assert one.unknown == ()
    assert one.driven_by == "not looked"
    assert one.notes == ("a",)


def test_two_places_on_one_channel_are_in_parallel_whichever_note_says_so() -> None:
    [one] = channels(
        seen("a", "door", {"impedance": "4 ohm", "together_with": ["mirror"]}),
        seen("b", "mirror", {"impedance": "4 ohm"}),
    )
    assert one.places == ("door", "mirror")
    assert one.hanging == (Hanging("door", span(4)), Hanging("mirror", span(4)))
    assert one.sees.least == span(2)
    assert one.notes == ("a", "b")


def test_three_places_hang_together_by_two_notes() -> None:
    [one] = channels(
        seen("a", "dash", {"impedance": "4 ohm", "together_with": ["mirror"]}),
        seen("b", "mirror", {"impedance": "4 ohm", "together_with": ["door"]}),
        seen("c", "door", {"impedance": "2 ohm"}),
    )
    assert one.places == ("door", "mirror", "dash")
    assert one.sees.least == span(1)


def test_a_tweeter_behind_its_capacitor_counts_where_both_play() -> None:
    [one] = channels(
        seen("a", "door", {"impedance": "4 ohm", "together_with": ["mirror"]}),
        seen("b", "mirror", {"impedance": "4 ohm", "filter": {"capacitor": "4.7 µF"}}),
    )
    assert one.hanging == (Hanging("door", span(4)), Hanging("mirror", span(4), high_only=True))
    assert one.sees.low_notes == span(4)
    assert one.sees.least == span(2)


def test_a_partner_whose_load_nobody_read_leaves_it_unknown() -> None:
    [one] = channels(seen("a", "door", {"impedance": "4 ohm", "together_with": ["mirror", "gone-by"]}))
    assert one.places == ("door", "mirror", "gone-by")
    assert one.sees.least is None
    look = "meter at the speaker's plug, speaker off the loom, 3 min; a tweeter behind a capacitor reads open"
    changes = "what the channel sees, and which amplifier may stand in for it"
    assert one.unknown == (
        Missing("the load of the speaker at mirror", look, changes),
        Missing("the load of the speaker at gone by", look, changes),
    )


def test_builds_are_kept_apart_and_a_blank_is_a_build_of_its_own() -> None:
    found = channels(
        seen("a", "door", {"impedance": "4 ohm", "together_with": []}, splits={"sound": "base"}),
        seen("b", "door", {"impedance": "2 ohm", "together_with": []}, splits={"sound": "upgraded"}),
        seen("c", "door", {"impedance": "8 ohm", "together_with": []}),
        splits={"sound": AUDIO},
    )
    assert {dict(one.build)["sound"]: one.sees.least for one in found} == {
        "base": span(4),
        "upgraded": span(2),
        "not looked": span(8),
    }


def test_notes_of_two_packages_do_not_hang_together() -> None:
    found = channels(
        seen("a", "door", {"impedance": "4 ohm", "together_with": ["mirror"]}, splits={"sound": "upgraded"}),
        seen("b", "mirror", {"impedance": "4 ohm", "together_with": []}, splits={"sound": "base"}),
        splits={"sound": AUDIO},
    )
    assert {one.places: one.sees.least for one in found} == {("door", "mirror"): None, ("mirror",): span(4)}


def test_where_notes_differ_the_lower_load_counts_until_settled() -> None:
    [one] = channels(
        seen("a", "door", {"impedance": "4 ohm", "together_with": []}),
        seen("b", "door", {"impedance": "2 ohm"}),
        seen("c", "door", {"driven_by": "radio"}),
    )
    assert one.sees.least == span(2)
    assert one.differ == ("door: a says 4 ohm, b says 2 ohm",)
    places = {"rear-door": {"kind": "door lower", "side": "left"}}
    [one] = channels(
        seen("a", "rear-door", {"impedance": "4 ohm", "together_with": []}),
        seen("b", "rear-door", {"impedance": "4 ohm"}),
        seen("c", "rear-door", {"impedance": "2 ohm"}),
        places=places,
    )
    assert one.differ == ("rear door: a says 4 ohm, b says 4 ohm, c says 2 ohm",)


def test_a_note_that_was_replaced_says_nothing() -> None:
    [one] = channels(
        seen("a", "door", {"impedance": "4 ohm", "together_with": []}),
        seen("b", "door", {"impedance": "2 ohm", "together_with": []}, replaces="a"),
    )
    assert one.sees.least == span(2)
    assert one.differ == ()


# Trade 4.7: nominal is about Re/0.8 to 0.9; worked out, so it is quoted and decides nothing.
def test_a_meters_reading_is_quoted_and_decides_nothing() -> None:
    [one] = channels(seen("a", "door", {"dc_resistance": "3.6 ohm", "together_with": []}))
    assert one.sees.least is None
    assert one.about == span(4, "4.5")
    [two] = channels(seen("a", "door", {"dc_resistance": "3.6 ohm", "together_with": ["mirror"]}))
    assert two.about is None, "of two places nobody knows of which it is"
    [read] = channels(seen("a", "door", {"dc_resistance": "3.6 ohm", "impedance": "4 ohm", "together_with": []}))
    assert read.about is None
    [open_] = channels(seen("a", "door", {"dc_resistance": "open", "together_with": []}))
    assert open_.about is None


def test_an_output_that_was_metered_says_what_it_feeds() -> None:
    outputs = [{"channel": "left front", "feeds": ["door", "mirror"]}, {"channel": "mute"}]
    metered = making.record(
        "notes",
        "m",
        {"form": "metered", "vehicle": CAR, "place": "door", "plug": "p", "cavities": [{"cavity": 1, "carries": "x"}]}
        | {"channels": outputs},
    )
    [one] = channels(metered, seen("a", "door", {"impedance": "4 ohm"}), seen("b", "mirror", {"impedance": "4 ohm"}))
    assert one.places == ("door", "mirror")
    assert one.sees.least == span(2)
    assert one.driven_by == "factory amplifier"
    assert one.notes == ("a", "b", "m")


def test_who_drives_it_may_be_argued_over() -> None:
    [one] = channels(seen("a", "door", {"driven_by": "radio"}), seen("b", "door", {"driven_by": "factory amplifier"}))
    assert one.driven_by == "factory amplifier or radio"


def test_a_place_that_the_vehicle_does_not_list_comes_last() -> None:
    found = channels(seen("a", "attic", {"impedance": "4 ohm"}), seen("b", "door", {"impedance": "4 ohm"}))
    assert [one.places for one in found] == [("door",), ("attic",)]


def test_only_what_bears_on_the_speakers_of_the_place_keeps_builds_apart() -> None:
    at_door = split("few", "many", bears_on={"places": ["door"], "subjects": ["speakers"]})
    roof = split("low", "high", bears_on={"subjects": ["room"]})
    said = {"form": "metered", "vehicle": CAR, "plug": "p", "cavities": [{"cavity": 1, "carries": "x"}]}
    outputs = [{"channel": "left front", "feeds": ["door"]}, {"channel": "left rear", "feeds": ["dash"]}]
    found = channels(
        seen("a", "door", {"impedance": "4 ohm"}, splits={"sound": "few", "roof": "low"}),
        seen("b", "mirror", {"impedance": "4 ohm"}, splits={"sound": "few", "roof": "low"}),
        making.record("notes", "m", said | {"place": "dash", "splits": {"sound": "many"}, "channels": outputs}),
        splits={"sound": at_door, "roof": roof},
    )
    assert [(one.places, one.build) for one in found] == [
        (("door",), (("sound", "few"),)),
        (("door",), (("sound", "many"),)),
        (("mirror",), ()),
        (("dash",), ()),
    ]


def test_places_hang_together_though_builds_differ_at_one_of_them_alone() -> None:
    at_door = split("few", "many", bears_on={"places": ["door"], "subjects": ["speakers"]})
    found = channels(
        seen("a", "mirror", {"impedance": "4 ohm", "together_with": ["door"]}),
        seen("b", "door", {"impedance": "4 ohm"}, splits={"sound": "few"}),
        splits={"sound": at_door},
    )
    assert {(one.places, one.build): one.sees.least for one in found} == {
        (("door", "mirror"), (("sound", "few"),)): span(2),
        (("door", "mirror"), ()): span(2),
    }


def test_a_year_tells_the_build_where_only_one_lists_it() -> None:
    sides = {"base": {"years": [1, 2]}, "upgraded": {"years": [3, 4]}}
    said = {"form": "metered", "vehicle": CAR, "plug": "p", "cavities": [{"cavity": 1, "carries": "x"}]}
    outputs = [{"channel": "left front", "feeds": ["mirror"]}]
    found = channels(
        seen("a", "door", {"impedance": "4 ohm"}, year=1),
        making.record("notes", "m", said | {"place": "dash", "year": 3, "channels": outputs}),
        splits={"sound": {"values": sides, "differs_in": "audio"}},
    )
    assert [(one.places, one.build) for one in found] == [
        (("door",), (("sound", "base"),)),
        (("mirror",), (("sound", "upgraded"),)),
    ]
