import pytest

from bezelbook.reasoning.circuits.search import best_chain
from bezelbook.reasoning.circuits.wiring import Half, Link, Need, Output, Piece, Site
from bezelbook.values.words import Circuit

SQUARE = Half("square", "vehicle side")
SITE = Site((SQUARE,))
A, B = ("a", ""), ("b", "")


def lead(name: str, *circuits: str, end: Half | None = None, plug: str = "square", **more: object) -> Piece:
    plugs = {"a": Half(plug, "unit side")} | ({"b": end} if end else {})
    links = {circuit: (Link(A, B),) for circuit in circuits}
    sees = {"a": dict.fromkeys(circuits, "known")}
    given: dict[str, object] = {
        "plugs": plugs,
        "leads": frozenset() if end else frozenset("b"),
        "links": links,
        "sees": sees,
    }
    return Piece(name, **(given | more))  # type: ignore[arg-type]


def names(site: Site, needs: list[Need], *pieces: Piece) -> tuple[str, ...]:
    return best_chain(site, needs, pieces)[0]


def test_the_piece_that_feeds_more_is_taken() -> None:
    needs = [Need("constant"), Need("ground")]
    assert names(SITE, needs, lead("one", "constant"), lead("two", "constant", "ground")) == ("two",)


def test_a_box_that_wants_nothing_gives_what_it_gives() -> None:
    assert names(SITE, [Need("reverse")], Piece("box", gives={"reverse": Output(true=True)})) == ("box",)


def test_of_equal_pieces_the_proven_one_then_the_one_on_the_shelf_then_the_first_by_name() -> None:
    needs = [Need("constant")]
    one, two, three = (lead(name, "constant", standing=standing) for name, standing in (("a", 2), ("b", 1), ("c", 0)))
    assert names(SITE, needs, one, two, three) == ("c",)
    assert names(SITE, needs, one, two) == ("b",)
    assert names(SITE, needs, one, lead("d", "constant")) == ("a",)


def test_two_leads_in_a_row_are_found_where_one_is_not_enough() -> None:
    first = lead("first", "constant", end=Half("round", "vehicle side"))
    assert names(SITE, [Need("constant")], first, lead("second", "constant", plug="round")) == ("first", "second")


def test_the_radios_own_plug_saves_the_joints() -> None:
    site = Site((SQUARE,), unit=Half("round", "unit side"))
    needs = [Need("constant")]
    assert names(
        site, needs, lead("bare", "constant"), lead("plugged", "constant", end=Half("round", "vehicle side"))
    ) == ("plugged",)
    straight = Site((SQUARE,), unit=Half("square", "unit side"))
    assert names(straight, needs, lead("bare", "constant")) == ("bare",), "nobody knows that the two carry the same"


def test_a_box_comes_with_what_it_requires() -> None:
    box = Piece("box", wants=("constant",), gives={"accessory": Output()}, requires=frozenset({"lead"}))
    assert names(SITE, [Need("accessory")], box, lead("lead", "constant"), lead("other", "constant")) == ("box", "lead")
    needy = lead("needy", "constant", requires=frozenset({"plain"}))
    assert names(SITE, [Need("constant")], needy, Piece("plain")) == ("needy", "plain")


def test_what_has_no_plug_for_it_is_left_out() -> None:
    assert names(SITE, [Need("constant")], lead("other", "constant", plug="round")) == ()
    assert names(SITE, [Need("constant")], lead("untraced", links={"constant": (Link(A, B, sure=False),)})) == ()


def test_what_a_piece_makes_is_found() -> None:
    assert names(SITE, [Need("camera supply")], lead("maker", makes={"camera supply": (B,)})) == ("maker",)


def test_a_radio_that_stays_must_fit_the_car() -> None:
    site = Site((SQUARE,), unit=Half("flat", "unit side"), radio=Half("round", "unit side"))
    with pytest.raises(
        ValueError, match=r"^a radio that stays must fit the car's plug, so that it can be left as it was$"
    ):
        best_chain(site, [Need("constant")], [lead("one", "constant")])


def test_a_radio_that_stays_keeps_what_goes_through() -> None:
    site = Site((SQUARE,), radio=Half("square", "unit side"))
    halves = (Link(A, ("c", "a")), Link(B, ("c", "b")))
    tee = lead("tee", "constant", end=SQUARE, leads=frozenset("c"))
    tee = Piece(
        "tee", tee.plugs, tee.leads, {**tee.links, "left front +": halves}, sees={"a": {"left front +": "known"}}
    )
    needs = [Need("left front +", "from radio"), Need("left front +", "to car"), Need("constant", "through")]
    found, outcome = best_chain(site, needs, [tee])
    assert (found, outcome.cost[:2]) == (("tee",), (0, 0))


def test_a_half_that_comes_from_the_radio_alone_is_worth_a_piece() -> None:
    site = Site((SQUARE,), radio=Half("square", "unit side"))
    out: dict[Circuit, tuple[Link, ...]] = {"left front +": (Link(B, ("c", "b")),), "constant": (Link(A, B),)}
    plugs = {"a": Half("square", "unit side"), "b": SQUARE}
    half = Piece("half", plugs, frozenset("c"), out, sees={"a": {"left front +": "known", "constant": "known"}})
    assert names(site, [Need("left front +", "from radio")], half) == ("half",)
    assert names(site, [Need("left front +", "from radio"), Need("constant", "through")], half) == ("half",)


def test_what_can_be_done_without_is_fed_where_something_that_must_be_is_not() -> None:
    needs = [Need("ground"), Need("constant", must=False)]
    assert names(SITE, needs, lead("one", "constant")) == ("one",)


def test_a_piece_that_wants_another_which_nobody_has_is_left_out() -> None:
    needy = lead("needy", "constant", requires=frozenset({"gone"}))
    assert names(SITE, [Need("constant")], needy, lead("plain", "constant")) == ("plain",)
    behind = (lead("needy", "constant", requires=frozenset({"box"})), Piece("box", requires=frozenset({"gone"})))
    assert names(SITE, [Need("constant")], *behind, lead("plain", "constant")) == ("plain",)


def test_it_makes_no_difference_which_end_of_a_piece_goes_into_the_car() -> None:
    turned = Piece(
        "turned",
        {"b": Half("square", "unit side")},
        frozenset("a"),
        {"constant": (Link(A, B),)},
        sees={"b": {"constant": "known"}},
    )
    assert names(SITE, [Need("constant")], turned) == ("turned",)
