from typing import Any

from bezelbook.reasoning.circuits.pieces import candidates, name_of
from bezelbook.reasoning.circuits.suits import adapter_suits, module_suits
from bezelbook.reasoning.circuits.wiring import Half, Link, Output, Piece
from bezelbook.values.words import Circuit
from tests.reasoning.circuits.a_car import car, every_cavity, metered, module, plug_in, tee, tried
from tests.reasoning.making import record

PLUG_IN = name_of("adapter", "plug-in")


def piece(adapter: Any, *records: Any, closing: tuple[Circuit, ...] = ()) -> Piece:
    [found] = [one.piece for one in candidates(car(adapter, *records), frozenset(closing)) if one.record is adapter]
    return found


def seen(adapter: Any, *records: Any, circuit: Circuit = "constant") -> str:
    return piece(adapter, *records).seen("a", circuit)


def test_a_piece_has_the_ends_and_links_of_its_record() -> None:
    found = piece(plug_in("plug-in", "constant", needs_module=["box"]))
    assert (found.name, found.plugs, found.leads) == (PLUG_IN, {"a": Half("square", "unit side")}, frozenset("b"))
    assert found.links["constant"] == (Link(("a", ""), ("b", "")),)
    assert found.requires == {"module/box"}
    assert found.standing == 2


def test_what_a_piece_makes_by_itself_is_said_of_it() -> None:
    found = piece(plug_in("plug-in", "constant", ways={"park brake": "makes", "camera supply": "makes"}))
    assert found.makes == {"park brake": (("b", ""),), "camera supply": (("b", ""),)}
    kept = plug_in("plug-in", ways={"speed": {"does": "passes", "made_by": "box"}, "reverse": "makes"})
    assert piece(kept).requires == frozenset(), "a module is needed only for what it makes"


def test_a_plug_of_which_nobody_said_which_half_it_is_plugs_in_nowhere() -> None:
    found = piece(plug_in(ends={"a": {"connector": "square"}, "b": {"ends_in": "bare leads"}}))
    assert (found.plugs, found.sees) == ({}, {})
    gone = piece(plug_in(ends={"a": {"connector": "gone", "side": "unit side"}}))
    assert gone.sees == {}


def test_what_was_metered_is_known_and_what_it_is_sold_for_is_said() -> None:
    assert seen(plug_in(), metered("one", (1, "constant"))) == "known"
    assert seen(plug_in()) == "said"
    assert seen(plug_in("plug-in", "ground")) == "not looked"
    turned = {"a": {"ends_in": "bare leads"}, "b": {"connector": "square", "side": "unit side"}}
    assert piece(plug_in(ends=turned)).seen("b", "constant") == "said"
    assert seen(plug_in(), every_cavity(), circuit="left rear +") == "not there"


def test_a_fitted_job_shows_what_a_radio_needs_to_play_and_no_more() -> None:
    fitted = tried("one", adapters=["plug-in"])
    both = plug_in("plug-in", "constant", "reverse")
    assert (seen(both, fitted), seen(both, fitted, circuit="reverse")) == ("known", "said")
    assert seen(both, fitted, metered("two", (1, "constant"), sure="told")) == "known"


def test_through_an_adapter_that_is_not_known_to_be_right_nothing_is_known_but_the_same_cavity() -> None:
    strange = plug_in("plug-in", "constant", "ground", made_for=[])
    assert seen(strange, metered("one", (1, "constant"))) == "not looked"
    same = plug_in("plug-in", made_for=[], ways={"constant": {"does": "passes", "cavities": {"a": 1}}})
    assert seen(same, metered("one", (1, "constant"))) == "known"
    assert seen(strange, every_cavity(), circuit="left rear +") == "not there"


def test_how_far_a_piece_is_from_being_proven_and_in_hand() -> None:
    stock = record("shelf", "tray", {"thing": "plug-in", "count": 1})
    empty = record("shelf", "tray", {"thing": "plug-in", "count": 0})
    found = (
        piece(plug_in()),
        piece(plug_in(), stock),
        piece(plug_in(), empty),
        piece(plug_in(), tried("one", adapters=["plug-in"])),
    )
    assert [one.standing for one in found] == [2, 1, 2, 0]
    box = module()
    boxes = (
        piece(box),
        piece(box, record("shelf", "tray", {"thing": "box", "count": 1})),
        piece(box, tried("one", adapters=["box"])),
    )
    assert [one.standing for one in boxes] == [2, 1, 0]


def test_what_is_wrong_here_is_no_candidate() -> None:
    failed = tried("one", adapters=["plug-in"], verdict="does not", reason="circuit")
    assert candidates(car(plug_in(), failed, module(made_for=["another-car"]))) == ()
    [box] = candidates(car(module()))
    assert box.suit == module_suits(car(), module())
    [lead] = candidates(car(plug_in()))
    assert lead.suit == adapter_suits(car(plug_in()), plug_in())


def test_a_box_is_true_where_it_reads_the_bus_and_needs_what_makes_for_it() -> None:
    box = module(outputs={"reverse": {"most": "500 mA"}, "speed": {}}, needs_adapter=["plug-in"])
    found = piece(box)
    assert found.name == "module/box"
    assert found.gives == {"reverse": Output(500_000, true=True), "speed": Output(None, true=True)}
    assert found.requires == {PLUG_IN}
    plain = module(needs=["constant"], outputs={"reverse": {}})
    assert piece(plain).gives["reverse"].true is False
    ring = module(needs=["constant"], network="optical ring", outputs={"reverse": {}})
    assert piece(ring).gives["reverse"].true is False
    on_bus = module(needs=["constant"], network="bus", outputs={"reverse": {}})
    assert piece(on_bus).gives["reverse"].true is True


def test_two_ends_of_one_shape_each_have_cavities_of_their_own() -> None:
    half = {"connector": "square", "side": "unit side"}
    way = {"does": "passes", "cavities": {"a": 1}}
    twin = piece(
        plug_in(made_for=[], ends={"a": half, "b": half}, ways={"constant": way}), metered("one", (1, "constant"))
    )
    assert (twin.seen("a", "constant"), twin.seen("b", "constant")) == ("known", "not looked")


def test_what_a_module_makes_in_an_adapter_needs_that_module() -> None:
    adapter = plug_in("plug-in", ways={"speed": {"does": "makes", "made_by": "box"}})
    assert piece(adapter).requires == {"module/box"}


def test_a_loop_back_closes_a_cut_that_the_job_does_not_use() -> None:
    loops = [{"closes": ["left front +"], "how": "supplied"}]
    closed = piece(tee("tee", loop_backs=loops), closing=("left front +", "left front -", "constant"))
    assert closed.links["left front +"] == (Link(("a", ""), ("b", "")),)
    assert len(closed.links["left front -"]) == 2
    tapped = piece(tee("tee", cut=(), ways={"left front +": "tapped"}, loop_backs=loops), closing=("left front +",))
    assert len(tapped.links["left front +"]) == 2


def test_a_loop_back_for_what_has_one_end_alone_closes_nothing() -> None:
    one_end = plug_in(
        ends={"a": {"connector": "square", "side": "unit side"}},
        ways={"left front +": "broken out"},
        loop_backs=[{"closes": ["left front +"], "how": "to be made"}],
    )
    [link] = piece(one_end, closing=("left front +",)).links["left front +"]
    assert link.one == ("a", "")
