from typing import Any

from bezelbook.reasoning.circuits.chain import chain
from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.plugs import Plugs
from tests.reasoning.circuits import a_car
from tests.reasoning.circuits.a_car import EVERYTHING, chained, connector, metered, module, plug_in, seen, tee, tried


def every_one(name: str = "meter") -> Any:
    return metered(name, *[(number, circuit) for number, circuit in enumerate(EVERYTHING, 1)])


def test_where_everything_is_known_the_chain_is_complete() -> None:
    found = chained(connector(cavities=None), every_one(), plug_in())
    assert (found.verdict, [one.record.name for one in found.pieces]) == ("complete", ["The plug-in"])


def test_a_factory_amplifier_that_nothing_is_known_to_wake_leaves_a_look() -> None:
    there = seen("amp", amplifier="there")
    assert chained(connector(cavities=None), every_one(), plug_in(), there).verdict == "complete if"
    woken = tried("woken", adapters=["plug-in"])
    cavities = [*enumerate(EVERYTHING, 1), (20, "amplifier turn-on")]
    lead = plug_in("plug-in", *EVERYTHING, "amplifier turn-on")
    assert chained(connector(cavities=None), metered("m", *cavities), lead, there, woken).verdict == "complete"


def test_what_is_only_said_makes_it_complete_once_somebody_has_looked() -> None:
    assert chained(seen("one"), plug_in()).verdict == "complete if"
    blank = metered("one", *[(number, circuit) for number, circuit in enumerate(EVERYTHING, 1)], splits={})
    assert chained(connector(cavities=None), blank, plug_in()).verdict == "complete if"


def test_the_plug_alone_may_be_what_it_hangs_on() -> None:
    fitted = tried("two", adapters=["plug-in"], job="k")
    argued = (connector("round"), seen("one", job="j"), seen("three", "round", job="k"))
    assert chained(*argued, fitted, plug_in()).verdict == "complete if"


def test_what_must_be_fed_and_is_not_leaves_it_incomplete() -> None:
    assert chained(seen("one"), plug_in("plug-in", "constant", "ground")).verdict == "not complete"


def test_with_no_piece_for_the_plug_nothing_mates() -> None:
    assert chained(seen("one")).verdict == "nothing mates"
    assert chained(seen("one")).sure is None


def test_without_a_plug_there_is_no_chain() -> None:
    found = chained(plug_in())
    assert (found.verdict, found.outcome, found.pieces) == ("plug not looked", None, ())
    assert (found.job, found.task, found.plugs) == (Job("replace the radio"), None, Plugs("not looked", ()))
    assert chained(seen("one", "not there")).plugs.state == "not there"


def test_what_a_sister_lends_is_named_and_nothing_is_built_on_it() -> None:
    sister = a_car.vehicle(name="Sister").model_copy(update={"id": "sister"})
    found = chained(a_car.vehicle(sisters=["sister"]), sister, seen("one", vehicle="sister"), plug_in())
    assert (found.verdict, found.plugs.connectors) == ("plug not looked", ("square",))


def test_it_is_as_sure_as_its_weakest_piece() -> None:
    bus = module(outputs={"accessory": {"most": "2 A"}}, needs=["constant", "ground"])
    lead = plug_in("plug-in", *[one for one in EVERYTHING if one != "accessory"])
    fitted = tried("two", adapters=["plug-in"])
    assert chained(seen("one"), lead, bus, fitted).sure == "worked out"
    assert chained(seen("one"), lead, bus, tried("two", adapters=["plug-in", "box"])).sure == "fitted"
    dry = tried("two", adapters=["box"], sure="dry-fitted")
    assert chained(seen("one"), lead, bus, tried("three", adapters=["plug-in"]), dry).sure == "dry-fitted"


def test_a_radio_that_stays_takes_a_tee_and_keeps_the_rest() -> None:
    found = chained(seen("one"), tee("tee", ways={"accessory": "tapped"}), job=Job("keep it and amplify"))
    assert (found.verdict, [one.record.id for one in found.pieces]) == ("complete if", ["tee"])


def test_a_cut_that_the_job_does_not_use_is_looped_or_the_tee_is_not_offered() -> None:
    every = a_car.SPEAKERS
    loops = [{"closes": list(every[4:]), "how": "to be made"}]
    metered_all = metered("meter", *[(number, circuit) for number, circuit in enumerate(every, 1)])
    job = Job("keep it and amplify")
    assert chained(metered_all, tee("tee", cut=every, loop_backs=loops), job=job).pieces
    assert chained(metered_all, tee("tee", cut=every), job=job).pieces == ()


def test_a_sub_takes_whichever_pairs_are_tapped() -> None:
    tapped = tee("tee", cut=(), ways=dict.fromkeys(("accessory", *a_car.SPEAKERS[:4]), "tapped"))
    found = chain(a_car.car(seen("one"), tapped), Job("add a sub"))
    assert found.outcome is not None
    taps = [need.circuit for need in found.outcome.feeds if need.kind == "tap"]
    assert taps == list(a_car.SPEAKERS[:4])
    assert found.verdict == "complete if"


def test_nothing_to_keep_whole_asks_for_nothing() -> None:
    found = chained(a_car.every_cavity(), tee("tee", ways={"bus": "not there"}), job=Job("keep it and amplify"))
    assert found.outcome is not None
    idle = [need.circuit for need in found.outcome.feeds if found.is_idle(need)]
    assert idle == ["bus"]
