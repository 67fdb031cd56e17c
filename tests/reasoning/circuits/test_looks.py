from bezelbook.reasoning.circuits.chain import Chain
from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.looks import looks
from bezelbook.reasoning.unknowns import Missing
from tests.reasoning.circuits.a_car import EVERYTHING, chained, connector, metered, module, plug_in, seen, tee, vehicle

TELL = "; from the seat: early: Round vents; late: Square vents"


def whats(chain: Chain) -> list[str]:
    return [one.what for one in looks(chain)]


def test_a_plug_that_nobody_saw_is_looked_at_first() -> None:
    [look] = looks(chained())
    assert look.what == "nobody has looked which plug it has"
    assert look.look == f"look behind the radio, 2 min with the bezel off{TELL}"
    assert look.changes == "the adapter"


def test_where_builds_share_their_plug_there_is_nothing_to_tell_from_the_seat() -> None:
    [look] = looks(
        chained(
            vehicle(splits={"audio": {"values": {"base": {}}, "bears_on": {"subjects": ["circuits"]}}}), audio="base"
        )
    )
    assert look.look == "look behind the radio, 2 min with the bezel off"


def test_a_plug_that_is_said_argued_over_or_not_there() -> None:
    assert (
        whats(chained(seen("one", splits={})))[0]
        == "the plug of this build was never seen for certain; said: The square"
    )
    both = (connector("round"), seen("one", job="j"), seen("two", "round", job="k"))
    assert whats(chained(*both))[0] == "the plug is argued over: The square or The round"
    assert whats(chained(seen("one", "not there")))[0] == "no plug is there"


def test_a_plug_without_a_record_is_calipered() -> None:
    assert looks(chained(seen("one", "purple one"))) == (
        Missing(
            "the plug has no record: purple one",
            "caliper its face, count its cavities, look at its key, 5 min with the radio out",
            "whether anything mates",
        ),
    )


def test_a_circuit_that_is_argued_over_is_metered_before_anything_is_joined() -> None:
    notes = (metered("one", (1, "constant")), metered("two", (2, "constant")))
    [look] = [one for one in looks(chained(*notes, plug_in())) if one.what.startswith("constant is")]
    joined = "which lead is which: do not join any of them before"
    assert look == Missing(
        "constant is argued over: cavities 1 or 2",
        "meter cavities 1 or 2 with the key out and on accessory, 3 min",
        joined,
    )
    notes = (seen("bus", accessory_supply="data bus"), metered("w", (1, "constant"), accessory_supply="wire"))
    [look] = [one for one in looks(chained(*notes, plug_in())) if one.what.startswith("accessory is")]
    assert look == Missing(
        "accessory is argued over: its cavity", "meter its cavity with the key out and on accessory, 3 min", joined
    )
    far = (connector(cavities=12), metered("one", (2, "constant")), metered("two", (10, "constant")))
    assert "constant is argued over: cavities 2 or 10" in whats(chained(*far, plug_in()))


def test_what_is_only_said_is_metered_at_the_plug() -> None:
    [said] = [look for look in looks(chained(seen("one"), plug_in())) if "sold" in look.what]
    sold = "only as the adapter is sold, or from a car that may have been another build"
    assert said == Missing(
        f"constant, ground, accessory and all speakers: {sold}",
        "meter them at the plug with the radio out, 5 min",
        "whether they are where the adapter takes them",
    )


def test_what_nobody_traced_is_metered_on_the_bench() -> None:
    box = module(needs=["constant"], outputs={"microphone": {}})
    [look] = [one for one in looks(chained(seen("one"), plug_in(), box)) if "traced" in one.what]
    assert look == Missing(
        "illumination, reverse, park brake, speed, wheel buttons, camera, camera supply and USB: "
        "nobody has traced through the The plug-in",
        "meter on the bench from end to end, 3 min",
        "whether the job gets them",
    )


def test_known_faults_are_looked_for() -> None:
    faults = ["Labels swapped.", "White runs thin"]
    found = looks(chained(seen("one"), plug_in(known_faults=faults)))
    assert [look for look in found if look.what.startswith("the The plug-in:")] == [
        Missing("the The plug-in: Labels swapped", "check each lead on the bench, 3 min", "which lead is which"),
        Missing("the The plug-in: White runs thin", "check each lead on the bench, 3 min", "which lead is which"),
    ]


def test_where_all_is_known_only_the_wishes_are_left() -> None:
    every = metered("one", *[(number, circuit) for number, circuit in enumerate(EVERYTHING, 1)])
    none = seen("two", amplifier="not there")
    found = whats(chained(connector(cavities=None), every, plug_in(), none))
    assert len(found) == 1
    assert "traced" in found[0]


def test_a_factory_amplifier_is_looked_for_where_the_radio_goes() -> None:
    amplifier = "whether a factory amplifier sits behind the speaker leads"
    assert amplifier in whats(chained(seen("one"), plug_in()))
    assert amplifier not in whats(chained(seen("one"), tee(), job=Job("keep it and amplify")))
    assert amplifier not in whats(chained(seen("one")))


def test_a_plug_that_nothing_goes_into_is_named() -> None:
    both = (connector("round"), seen("one", job="j"), seen("two", "round", job="j"))
    open_ = Missing(
        "nothing goes into The round",
        "look what was plugged in there, then tie it back, 2 min",
        "what hung on it is lost",
    )
    assert open_ in looks(chained(*both, plug_in()))
    assert "nothing goes into The square" not in whats(chained(*both, plug_in()))
    assert not any(what.startswith("nothing goes into") for what in whats(chained(seen("one"))))


def test_two_halves_on_one_end_are_told_apart_on_the_bench() -> None:
    one_end = chained(seen("one"), tee(), job=Job("keep it and amplify"))
    told_apart = Missing(
        "which leads of the The tee come from the radio and which go to the speakers: all are on one end",
        "meter on the bench from each plug to each lead, 3 min",
        "an amplifier that plays into the radio",
    )
    assert looks(one_end).count(told_apart) == 1
    ends = {
        "a": {"connector": "square", "side": "unit side"},
        "b": {"connector": "square", "side": "vehicle side"},
        "c": {"ends_in": "bare leads"},
        "d": {"ends_in": "bare leads"},
    }
    cut = {circuit: {"does": "broken out", "out_at": {"a": "c", "b": "d"}} for circuit in EVERYTHING[3:7]}
    cut["accessory"] = {"does": "tapped", "out_at": {"a": "c"}}
    two_ends = chained(seen("one"), tee(ends=ends, ways=cut), job=Job("keep it and amplify"))
    assert two_ends.pieces
    assert not any("come from the radio" in what for what in whats(two_ends))


def test_what_several_pieces_leave_untraced_is_asked_once() -> None:
    other = {"a": {"connector": "round", "side": "unit side"}, "b": {"ends_in": "bare leads"}}
    cars = (connector("round"), seen("one", job="j"), seen("two", "round", job="j"))
    found = whats(chained(*cars, plug_in(), plug_in("camera-lead", "camera", ends=other)))
    [untraced] = [what for what in found if "nobody has traced" in what and "The camera-lead" in what]
    assert "the The camera-lead" in untraced


def test_a_second_plug_of_an_adapter_is_looked_for_where_nobody_has_seen_its_other_half() -> None:
    ends = {
        "a": {"connector": "square", "side": "unit side"},
        "b": {"connector": "round", "side": "unit side"},
        "c": {"connector": "gone", "side": "unit side"},
        "d": {"ends_in": "bare leads"},
    }
    ways = {circuit: {"does": "passes", "between": ["a", "d"]} for circuit in ("constant", "ground", "accessory")}
    ways |= {circuit: {"does": "passes", "between": ["b", "d"]} for circuit in EVERYTHING[3:]}
    both = plug_in("both", ends=ends, ways=ways)
    [look] = [one for one in looks(chained(connector("round"), seen("one"), both)) if "a plug for" in one.what]
    assert look == Missing(
        "the The both has a plug for The round, which nobody has seen in this build",
        "look behind the radio for it, 2 min with the bezel off",
        "what would come through it",
    )
    two = (seen("one"), seen("two", "round"))
    assert not any("a plug for" in what for what in whats(chained(connector("round"), *two, both)))
