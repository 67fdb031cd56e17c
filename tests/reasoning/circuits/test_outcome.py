from typing import Any

from bezelbook.reasoning.circuits.outcome import Feed, Outcome, best_outcome
from bezelbook.reasoning.circuits.wiring import Half, Link, Need, Output, Piece, Site, State
from bezelbook.values.words import Circuit

SQUARE, ROUND = Half("square", "vehicle side"), Half("round", "vehicle side")
CAR = Site((SQUARE,))
KEPT = Site((SQUARE,), radio=Half("square", "unit side"))
A, B, C = ("a", ""), ("b", ""), ("c", "")


def lead(name: str = "lead", *circuits: Circuit, plug: str = "square", state: State = "known", **more: Any) -> Piece:
    """From a plug of the car to bare leads."""
    links = {circuit: (Link(A, B),) for circuit in circuits}
    sees = {"a": dict.fromkeys(circuits, state)}
    return Piece(
        name,
        **({"plugs": {"a": Half(plug, "unit side")}, "leads": frozenset("b"), "links": links, "sees": sees} | more),
    )


def tee(links: dict[Circuit, tuple[Link, ...]], states: dict[Circuit, State] | None = None) -> Piece:
    plugs = {"a": Half("square", "unit side"), "b": SQUARE}
    known: State = "known"
    return Piece("tee", plugs, frozenset("c"), links, sees={"a": dict.fromkeys(links, known) | (states or {})})


def outcome(site: Site, needs: list[Need], *pieces: Piece) -> Outcome:
    found = best_outcome(site, needs, pieces)
    assert found is not None
    return found


def feed(site: Site, need: Need, *pieces: Piece) -> Feed:
    return outcome(site, [need], *pieces).feeds[need]


def test_a_lead_feeds_what_the_car_has_and_is_joined_by_hand() -> None:
    assert feed(CAR, Need("constant"), lead("lead", "constant")) == Feed("known", ("lead", "b"))
    assert feed(CAR, Need("ground"), lead("lead", "constant")) == Feed("not there")


def test_the_cost_counts_what_is_missing_pieces_joints_and_how_far_from_proven() -> None:
    needs = [Need("constant"), Need("ground"), Need("illumination", must=False)]
    assert outcome(CAR, needs, lead("lead", "constant")).cost == (1, 1, 1, 1, 2)


def test_through_the_radios_own_plug_nothing_is_joined_by_hand() -> None:
    site = Site((SQUARE,), unit=Half("round", "unit side"))
    piece = lead("lead", "constant", plugs={"a": Half("square", "unit side"), "b": ROUND}, leads=frozenset())
    assert feed(site, Need("constant"), piece) == Feed("known")
    assert feed(site, Need("left front +"), lead("lead", "left front +", plugs=piece.plugs, leads=frozenset())) == Feed(
        "known"
    )


def test_two_sources_that_cannot_be_kept_apart_are_never_offered() -> None:
    both = Site((SQUARE, ROUND), unit=Half("flat", "unit side"))
    joined = (Link(A, B), Link(A, C))
    plugs = {"a": Half("square", "unit side"), "b": Half("round", "unit side"), "c": Half("flat", "vehicle side")}
    sees: dict[str, dict[Circuit, State]] = {one: {"accessory": "known", "ground": "known"} for one in "ab"}
    piece = Piece("join", plugs, links={"accessory": joined, "ground": joined}, sees=sees)
    needs = [Need("accessory"), Need("ground")]
    plugged = {len(found.plugged) for found in [outcome(both, needs, piece)]}
    assert plugged == {2}, "one of the car's plugs is left out"
    grounds = Piece("join", plugs, links={"ground": joined}, sees=sees)
    assert feed(both, Need("ground"), grounds) == Feed("known")
    assert len(outcome(both, [Need("ground")], grounds).plugged) == 3, "grounds may meet"


def test_a_made_up_park_brake_is_never_fed_and_never_wired_in() -> None:
    maker = lead("faker", makes={"park brake": (B,)})
    assert feed(CAR, Need("park brake"), maker) == Feed("not there")
    assert best_outcome(Site((SQUARE,), unit=Half("round", "unit side")), [Need("park brake")], [maker]) is not None
    hard = lead(
        "faker", plugs={"a": Half("square", "unit side"), "b": ROUND}, leads=frozenset(), makes={"park brake": (B,)}
    )
    wired = outcome(Site((SQUARE,), unit=Half("round", "unit side")), [Need("park brake")], hard)
    assert wired.feeds[Need("park brake")] == Feed("not there")
    assert all("what goes in" not in owner for pair in wired.plugged for owner, _ in pair)


def box(gives: dict[Circuit, Output]) -> Piece:
    return Piece("box", wants=("constant", "ground"), gives=gives)


def test_a_box_gives_what_it_reads_off_the_bus_once_it_is_fed() -> None:
    fed = lead("lead", "constant", "ground")
    true, fake = box({"reverse": Output(true=True)}), box({"reverse": Output(true=False)})
    assert feed(CAR, Need("reverse"), fed, true) == Feed("known", ("box", ""))
    assert feed(CAR, Need("reverse"), fed, fake) == Feed("not there")
    assert feed(CAR, Need("reverse"), lead("lead", "constant"), true) == Feed("not there")
    assert outcome(CAR, [Need("reverse")], fed, true).working == {"box"}


def test_what_a_box_is_fed_by_is_joined_by_hand_too() -> None:
    found = outcome(CAR, [Need("reverse")], lead("lead", "constant", "ground"), box({"reverse": Output(true=True)}))
    assert found.cost == (0, 0, 2, 3, 4), "reverse off the box, and constant and ground to it"


def test_the_cars_own_wire_goes_before_a_box_unless_the_box_is_surer() -> None:
    fed = lead("lead", "constant", "ground", "accessory")
    assert feed(CAR, Need("accessory"), fed, box({"accessory": Output()})) == Feed("known", ("lead", "b"))
    said = lead(
        "lead",
        "constant",
        "ground",
        "accessory",
        sees={"a": {"constant": "known", "ground": "known", "accessory": "said"}},
    )
    assert feed(CAR, Need("accessory"), said, box({"accessory": Output()})) == Feed("known", ("box", ""))


def test_a_turn_on_that_a_piece_makes_is_never_joined_to_that_of_the_radio() -> None:
    plain = lead("lead", "amplifier turn-on")
    assert feed(CAR, Need("amplifier turn-on"), plain) == Feed("known", ("lead", "b"))
    maker = lead("lead", "amplifier turn-on", makes={"amplifier turn-on": (B,)})
    assert feed(CAR, Need("amplifier turn-on"), maker) == Feed("not there")


def test_of_two_plugs_of_the_car_on_one_lead_the_better_known_counts() -> None:
    both = Site((SQUARE, ROUND))
    plugs = {"a": Half("square", "unit side"), "b": Half("round", "unit side")}
    sees: dict[str, dict[Circuit, State]] = {"a": {"left front +": "argued over"}, "b": {"left front +": "said"}}
    piece = Piece("join", plugs, frozenset("c"), {"left front +": (Link(A, C), Link(B, C))}, sees=sees)
    assert feed(both, Need("left front +"), piece) == Feed("said", ("join", "c"))


def test_what_nobody_traced_is_not_joined() -> None:
    piece = lead("lead", "constant", links={"constant": (Link(A, B, sure=False),)})
    assert feed(CAR, Need("constant"), piece) == Feed("not looked")
    assert feed(CAR, Need("constant"), lead("lead", "constant", state="not looked")) == Feed("not looked")


def test_a_set_that_lacks_what_it_requires_is_not_allowed() -> None:
    needy = lead("lead", "constant", requires=frozenset({"box"}))
    assert best_outcome(CAR, [Need("constant")], [needy]) is None
    assert best_outcome(CAR, [Need("constant")], [lead("lead", "constant", requires=frozenset({"lead"}))]) is not None
    behind = Piece("box", wants=("constant",), requires=frozenset({"lead"}))
    elsewhere = lead("lead", "constant", plug="round")
    assert best_outcome(CAR, [Need("constant")], [elsewhere, behind]) is None


CUT = (Link(A, ("c", "a")), Link(B, ("c", "b")))
WHOLE = (Link(A, B),)


def test_an_amplifier_sits_between_the_two_halves_of_a_cut_pair() -> None:
    cut = tee({"left front +": CUT, "constant": WHOLE})
    needs = [Need("left front +", "from radio"), Need("left front +", "to car"), Need("constant", "through")]
    feeds = outcome(KEPT, needs, cut).feeds
    assert [feeds[need] for need in needs] == [Feed("known", ("tee", "c")), Feed("known", ("tee", "c")), Feed("known")]
    assert feed(KEPT, Need("left front +", "tap"), cut) == Feed("not there")


def test_each_half_is_known_as_far_as_the_piece_that_it_comes_through() -> None:
    cut = tee({"left front +": CUT}, {"left front +": "said"})
    whole = tee({"left front +": WHOLE})
    longer = Piece("longer", whole.plugs, links=whole.links, sees=whole.sees)
    needs = [Need("left front +", "from radio"), Need("left front +", "to car")]
    found = outcome(KEPT, needs, cut, longer)
    assert (("the car", "0"), ("longer", "a")) in found.plugged, "so the T has only the radio behind it"
    assert [found.feeds[need] for need in needs] == [Feed("said", ("tee", "c")), Feed("known", ("tee", "c"))]


def test_a_tap_hangs_on_both_and_opens_nothing() -> None:
    tapped = tee({"left rear +": (Link(A, B), Link(A, C))})
    assert feed(KEPT, Need("left rear +", "tap"), tapped) == Feed("known", ("tee", "c"))
    assert feed(KEPT, Need("left rear +", "from radio"), tapped) == Feed("not there")
    untraced = tee({"left rear +": (Link(A, B), Link(A, C, sure=False))})
    assert feed(KEPT, Need("left rear +", "tap"), untraced) == Feed("not looked")


def test_what_fed_a_radio_that_stays_is_never_left_open() -> None:
    opened = tee({"constant": CUT})
    assert best_outcome(KEPT, [Need("constant", "through")], [opened]) is not None, (
        "without it the radio stays as it was"
    )
    assert outcome(KEPT, [Need("constant", "through")], opened).plugged == (
        (("the car", "0"), ("the radio that stays", "")),
    )


def test_what_the_car_does_not_have_need_not_go_on() -> None:
    needs = [Need("left front +", "from radio"), Need("accessory", "through"), Need("bus", "through", must=False)]
    found = outcome(KEPT, needs, tee({"left front +": CUT}, {"accessory": "not there"}))
    assert found.feeds[needs[1]] == Feed("not there")
    assert found.feeds[needs[2]] == Feed("not looked")
    assert found.cost[:2] == (0, 1)


def test_what_the_car_has_and_nobody_traced_to_the_radio_may_go_on() -> None:
    untraced = tee({"left front +": CUT, "bus": (Link(A, B, sure=False),)})
    needs = [Need("left front +", "from radio"), Need("bus", "through", must=False)]
    assert outcome(KEPT, needs, untraced).feeds[needs[1]] == Feed("not looked")


def test_a_piece_that_wakes_the_amplifier_by_itself_is_never_joined_to_a_radio_that_does() -> None:
    whole = tee({"amplifier turn-on": WHOLE})
    needs = [Need("amplifier turn-on", "through", must=False)]
    in_between = ((("the car", "0"), ("tee", "a")), (("the radio that stays", ""), ("tee", "b")))
    assert outcome(KEPT, needs, whole).plugged == in_between
    maker = Piece("tee", whole.plugs, links=whole.links, makes={"amplifier turn-on": (B,)}, sees=whole.sees)
    assert outcome(KEPT, needs, maker).plugged == ((("the car", "0"), ("the radio that stays", "")),)


def test_with_a_radio_that_stays_nothing_is_left_hanging() -> None:
    assert best_outcome(KEPT, [], []) is not None
    assert best_outcome(Site((SQUARE,), radio=Half("round", "unit side")), [], []) is None
