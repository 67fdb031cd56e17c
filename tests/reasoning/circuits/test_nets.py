from typing import Any

from bezelbook.reasoning.circuits.nets import CAR, RADIO, UNIT, Net, Node, Source, attached, matings, points_of, sockets
from bezelbook.reasoning.circuits.wiring import Half, Link, Piece, Site, State
from bezelbook.values.words import Circuit

SQUARE, ROUND = Half("square", "vehicle side"), Half("round", "vehicle side")
INTO_SQUARE = Half("square", "unit side")
IN_CAR = (((CAR, "0"), ("lead", "a")),)
AT_CAR: Node = (CAR, "0", "")


def lead(*links: Link, **more: Any) -> Piece:
    has: tuple[Circuit, ...] = ("constant", "accessory", "left front +")
    known: State = "known"
    sees = {"a": dict.fromkeys(has, known)}
    return Piece(
        "lead", {"a": INTO_SQUARE}, frozenset({"b"}), {"constant": links, "left front +": links}, sees=sees, **more
    )


def through(*, sure: bool = True) -> Link:
    return Link(("a", ""), ("b", ""), sure)


def net(piece: Piece, circuit: Any = "constant") -> Net:
    return Net(circuit, {"lead": piece}, IN_CAR)


def test_everything_that_fits_is_plugged_together_in_every_way_and_in_none() -> None:
    site = Site((SQUARE, ROUND), unit=Half("square", "unit side"), radio=None)
    halves = sockets(site, [lead(through())])
    found = set(matings(halves))
    assert found == {(), (((CAR, "0"), ("lead", "a")),), (((CAR, "0"), (UNIT, "")),)}


def test_nothing_is_plugged_into_itself() -> None:
    tee = Piece("tee", {"a": INTO_SQUARE, "b": SQUARE})
    assert list(matings(sockets(Site(()), [tee]))) == [()]


def test_a_lead_joins_what_the_car_has_with_its_other_end() -> None:
    strand = net(lead(through())).at(("lead", "b", ""))
    assert strand.sources == (Source(f"{CAR} 0", "known"),)
    assert strand.cars == ("known",)
    assert not strand.has_unit


def test_which_half_of_a_pair_of_plugs_is_named_first_makes_no_difference() -> None:
    turned = Net("constant", {"lead": lead(through())}, tuple((one, other) for other, one in IN_CAR))
    assert turned.at(("lead", "b", "")).cars == ("known",)
    assert turned.car_ends == (AT_CAR,)


def test_of_a_speaker_every_radio_is_a_source() -> None:
    plugged = (((UNIT, ""), ("lead", "a")), ((RADIO, ""), ("lead", "c")))
    three = Net("left front +", {"lead": lead(through(), Link(("c", ""), ("b", "")))}, plugged)
    assert three.at(("lead", "b", "")).sources == (Source(RADIO, "known"), Source(UNIT, "known"))


def test_a_lead_that_nobody_traced_is_doubtful_and_joins_nothing_for_certain() -> None:
    doubtful = net(lead(through(sure=False)))
    assert doubtful.at(("lead", "b", "")).sources == ()
    assert doubtful.perhaps(("lead", "b", "")).cars == ("known",)
    assert doubtful.doubtful(("lead", "b", ""))
    assert not net(lead(through())).doubtful(("lead", "b", ""))


def test_of_a_speaker_the_car_is_no_source() -> None:
    strand = net(lead(through()), "left front +").at(("lead", "b", ""))
    assert (strand.sources, strand.cars) == ((), ("known",))


def test_what_a_piece_makes_counts_once_it_is_plugged_in() -> None:
    maker = lead(makes={"accessory": (("b", ""),), "reverse": (("b", ""),)})
    assert net(maker, "accessory").at(("lead", "b", "")).sources == (Source("lead", "known"),)
    assert Net("accessory", {"lead": maker}, ()).at(("lead", "b", "")).sources == ()
    assert net(maker, "reverse").at(("lead", "b", "")).sources == (Source("lead", "known", true=False),)
    apart = [[source.name for source in strand.sources] for strand in net(maker, "accessory").everything]
    assert sorted(apart) == [["lead"], [f"{CAR} 0"]]


def test_ends_are_the_bare_leads_alone() -> None:
    assert net(lead(through())).ends == (("lead", "b", ""),)
    assert points_of(lead(through()), "ground") == ()


def test_what_the_radio_that_stays_has_is_known_as_far_as_the_piece_in_it_is() -> None:
    tee = Piece("tee", {"a": INTO_SQUARE, "b": SQUARE}, sees={"a": {"constant": "said"}})
    plugged = (((RADIO, ""), ("tee", "b")),)
    assert Net("constant", {"tee": tee}, plugged).radio_has == "said"
    assert Net("constant", {}, (((RADIO, ""), (CAR, "0")),)).radio_has == "not looked"
    assert Net("constant", {"tee": tee}, ()).radio_has == "not looked"
    tail = Piece("tail", {"a": Half("round", "unit side"), "b": SQUARE}, sees={"a": {"constant": "known"}})
    assert Net("constant", {"tail": tail}, (((RADIO, ""), ("tail", "b")),)).radio_has == "not looked"


def test_the_cars_plugs_count_where_something_is_in_them() -> None:
    assert net(lead(through())).car_ends == (AT_CAR,)
    assert Net("constant", {}, ()).car_ends == ()


def test_attached_is_what_hangs_on_the_car_if_only_through_others() -> None:
    plugged = (((CAR, "0"), ("one", "a")), (("one", "b"), ("two", "a")), (("three", "a"), ("four", "a")))
    assert attached(plugged) == {CAR, RADIO, UNIT, "one", "two"}
