from dataclasses import replace

from bezelbook.reasoning.circuits.chain import Chain
from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.table import Row, table
from bezelbook.reasoning.circuits.wiring import Need
from tests.reasoning.circuits import a_car
from tests.reasoning.circuits.a_car import EVERYTHING, chained, every_cavity, metered, module, plug_in, seen, tee
from tests.reasoning.making import record


def rows(chain: Chain) -> dict[str, Row]:
    return {row.circuit: row for row in table(chain)}


def test_what_is_fed_is_used_and_says_by_which_lead() -> None:
    lead = {"does": "passes", "lead": "yellow"}
    found = rows(chained(metered("one", (1, "constant")), plug_in("plug-in", *EVERYTHING, ways={"constant": lead})))
    assert found["constant"] == Row("constant", "used", "lead (yellow) of the The plug-in", must=True)
    assert found["ground"].words == "lead of the The plug-in, not proven in this build: meter it first"


def test_what_is_argued_over_says_so() -> None:
    notes = (metered("one", (1, "constant")), metered("two", (2, "constant")))
    words = "lead of the The plug-in, argued over: meter it first"
    assert rows(chained(*notes, plug_in()))["constant"].words == words


def test_what_a_box_makes_says_how_much_it_gives() -> None:
    box = module(needs=["constant"], outputs={"accessory": {"most": "2 A"}, "illumination": {}, "mute": {}})
    found = rows(chained(seen("one"), plug_in("plug-in", "constant", "ground"), box))
    assert found["accessory"].words == "made by the The box, 2 A at most, a relay for more"
    assert found["illumination"].words == "made by the The box, nobody noted how much it gives"
    assert found["mute"] == Row("mute", "capped", "not used: cap each end by itself", must=False)
    signal = module(needs=["constant"], outputs={"reverse": {}, "speed": {}, "wheel buttons": {"most": "1 A"}})
    found = rows(chained(seen("one"), plug_in("plug-in", "constant"), signal))
    assert found["wheel buttons"].words == "made by the The box", "nobody draws a current of a signal"


def test_what_a_box_takes_is_used_though_the_radio_does_not_want_it() -> None:
    box = module(needs=["constant", "bus"], outputs={"accessory": {}})
    found = rows(chained(seen("one"), plug_in("plug-in", "constant", "bus", "mute"), box))
    assert found["bus"] == Row("bus", "used", "goes to the The box", must=False)
    assert found["mute"].becomes == "capped"


def test_what_nobody_traced_and_what_nobody_saw_in_the_car_are_unknown() -> None:
    strange = plug_in("plug-in", "constant", ways={"ground": "unknown"}, made_for=[])
    found = rows(chained(metered("one", (1, "constant"), (2, "ground")), strange))
    assert {row.becomes for row in found.values()} == {"not there"}, "nothing comes of it, so it is not taken"
    found = rows(
        chained(seen("one"), plug_in("plug-in", "constant", ways={"ground": "unknown", "reverse": "not there"}))
    )
    assert found["ground"].becomes == "unknown"
    assert found["ground"].words == "not traced through the The plug-in: cap each end until somebody has"
    assert found["reverse"] == Row("reverse", "not there", "the The plug-in has no lead for it", must=False)


def test_the_car_itself_may_be_what_nobody_looked_at() -> None:
    proven = plug_in(
        "plug-in", "constant", "ground", made_for=[], ways={"constant": {"does": "passes", "cavities": {"a": 1}}}
    )
    found = rows(chained(metered("one", (1, "constant")), proven))
    assert found["ground"].words == "nobody has looked whether the car has it there"


def test_what_two_pieces_leave_untraced_names_both() -> None:
    other = {"a": {"connector": "round", "side": "unit side"}, "b": {"ends_in": "bare leads"}}
    both = (a_car.connector("round"), seen("one", job="j"), seen("two", "round", job="j"))
    second = plug_in("second", "camera", ends=other, ways={"reverse": "unknown"})
    found = rows(chained(*both, plug_in("plug-in", *EVERYTHING, ways={"reverse": "unknown"}), second))
    assert found["reverse"].words == (
        "not traced through the The plug-in and the The second: cap each end until somebody has"
    )


def test_what_two_boxes_take_names_both() -> None:
    boxes = [module(name, needs=["bus"], outputs={made: {}}) for name, made in (("box", "speed"), ("cube", "reverse"))]
    found = rows(chained(seen("one"), plug_in("plug-in", *EVERYTHING, "bus"), *boxes))
    assert found["bus"] == Row("bus", "used", "goes to the The box and the The cube", must=False)


def test_a_tap_for_a_sub_is_said_to_be_one() -> None:
    tapped = tee("tee", cut=(), ways=dict.fromkeys(("accessory", *a_car.SPEAKERS[:4]), "tapped"))
    found = rows(chained(seen("one"), tapped, job=Job("add a sub")))
    assert found["left front +"] == Row(
        "left front +", "used", "tapped, lead of the The tee, not proven in this build: meter it first", must=True
    )
    assert found["accessory"].words == "lead of the The tee, not proven in this build: meter it first"


def test_halves_of_which_one_is_better_known_than_the_other_are_said_apart() -> None:
    chain = chained(seen("one"), tee(), job=Job("keep it and amplify"))
    assert chain.outcome is not None
    feeds = dict(chain.outcome.feeds)
    from_radio = Need("left front +", "from radio")
    feeds[from_radio] = replace(feeds[from_radio], state="known")
    surer = replace(chain, outcome=replace(chain.outcome, feeds=feeds))
    assert rows(surer)["left front +"].words == (
        "from the radio, lead of the The tee; to the speaker, lead of the The tee, "
        "not proven in this build: meter it first"
    )
    alone = replace(chain, outcome=replace(chain.outcome, feeds={from_radio: feeds[from_radio]}))
    assert rows(alone)["left front +"].words == "from the radio, lead of the The tee"


def test_where_nobody_looked_whether_there_is_a_lead_there_is_none_to_cap() -> None:
    assert "mute" not in rows(chained(seen("one"), plug_in()))


def test_what_no_piece_brings_is_not_there() -> None:
    found = rows(chained(every_cavity(), plug_in()))
    assert found["left rear +"] == Row("left rear +", "not there", "this car has none in the plug", must=False)


def test_a_radio_that_stays_keeps_looped_what_is_not_used() -> None:
    found = rows(chained(seen("one"), tee(), job=Job("keep it and amplify")))
    assert found["left rear +"] == Row("left rear +", "looped", "goes on to the radio", must=True)
    assert found["accessory"] == Row("accessory", "not there", "no piece brings it", must=True)
    assert found["left front +"].becomes == "used"
    assert found["left front +"].words == (
        "from the radio and back to the speaker, lead of the The tee, not proven in this build: meter it first"
    )


def test_halves_that_come_out_on_leads_of_their_own_are_one_pair_all_the_same() -> None:
    cut = ("left front +", "left front -")
    ends = {
        "a": {"connector": "square", "side": "unit side"},
        "b": {"connector": "square", "side": "vehicle side"},
        "c": {"ends_in": "bare leads"},
        "d": {"ends_in": "more leads"},
    }
    out = {"does": "broken out", "out_at": {"a": "c", "b": "d"}}
    apart = tee("tee", cut=cut, ends=ends, ways=dict.fromkeys(a_car.SPEAKERS[:4], out))
    found = rows(chained(metered("one", (1, "left front +")), apart, job=Job("keep it and amplify")))
    assert found["left front +"].words == "from the radio and back to the speaker, lead of the The tee"


def test_a_pair_of_which_only_one_half_comes_out_is_not_there() -> None:
    out = {"does": "broken out", "out_at": {"a": "c", "b": "b"}}
    half = tee("tee", ways={"left front +": out})
    found = rows(chained(seen("one"), half, job=Job("keep it and amplify")))
    assert found["left front +"] == Row("left front +", "not there", "no piece brings it", must=True)
    assert found["left front -"].becomes == "used"
    box = module(needs=["constant"], outputs={"accessory": {}}, needs_adapter=["tee"])
    boxed = chained(
        seen("one"), tee("tee", ways={"left front +": out, "constant": "tapped"}), box, job=Job("keep it and amplify")
    )
    assert [one.record.id for one in boxed.pieces] == ["tee", "box"]
    assert rows(boxed)["left front +"].words == "no piece brings it"


def test_what_nobody_traced_through_to_a_radio_that_stays_is_not_capped() -> None:
    found = rows(chained(seen("one"), tee("tee", ways={"bus": "unknown"}), job=Job("keep it and amplify")))
    assert found["bus"].words == "not traced through the The tee"


def test_what_the_car_has_not_and_a_radio_that_stays_does_not_get_is_no_row() -> None:
    keep = Job("keep it and amplify")
    assert "bus" not in rows(chained(every_cavity(), tee("tee", ways={"bus": "not there"}), job=keep))


def test_through_the_radios_own_plug() -> None:
    radio = record(
        "head_units", "radio", {"name": "A radio", "size_class": "double", "own_plug": "round", "needs": ["reverse"]}
    )
    ends = {"a": {"connector": "square", "side": "unit side"}, "b": {"connector": "round", "side": "vehicle side"}}
    chain = chained(
        metered("one", (1, "constant")),
        radio,
        a_car.connector("round"),
        plug_in(ends=ends),
        job=Job("replace the radio", "radio"),
    )
    assert rows(chain)["constant"].words == "through the plug"
    mute = chained(
        metered("one", (1, "constant")),
        radio,
        a_car.connector("round"),
        plug_in("plug-in", *EVERYTHING, "mute", ends=ends),
        job=Job("replace the radio", "radio"),
    )
    assert "mute" not in rows(mute), "it ends in a plug, so there is nothing to cap"


def test_without_a_chain_there_is_no_table() -> None:
    assert table(chained()) == ()
