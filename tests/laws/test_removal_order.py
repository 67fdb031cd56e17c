"""What must hold of any removal order: nothing before what lies over it, fewest moves, no news from agreement."""

from collections.abc import Iterable, Mapping
from itertools import pairwise, permutations
from typing import Any

import networkx as nx
from hypothesis import given, settings
from hypothesis import strategies as st

from bezelbook.reasoning.order.graph import befores, circles, closure, depths, knots, reduced, untied
from bezelbook.reasoning.order.removal import Removal
from bezelbook.reasoning.order.sequence import least_moves
from tests.reasoning import making
from tests.reasoning.order import trim

PIECES = ("a", "b", "c", "d", "e", "f", "g")
SIDES = ("left", "right", "centre", None)
WHYS = ("overlap", "reach", "cable", "screw", None, "habit")
Pair = tuple[str, str]
Note = Mapping[str, Any]

piece = st.sampled_from(PIECES)
pair = st.tuples(piece, piece)
pairs = st.lists(pair, max_size=10)
small_pairs = st.lists(st.tuples(st.sampled_from(PIECES[:6]), st.sampled_from(PIECES[:6])), max_size=9)
side_maps = st.fixed_dictionaries({one: st.sampled_from(SIDES) for one in PIECES})


@st.composite
def notes(draw: st.DrawFn) -> list[dict[str, Any]]:
    """A few notes as plain data: what lies over what, and lists of pieces with what they need first."""
    found = []
    for number in range(draw(st.integers(1, 4))):
        overlaps = [{"piece": upper, "over": lower} for upper, lower in draw(st.lists(pair, max_size=3))]
        listed = [
            {"piece": one, "first": [_first(*said) for said in draw(st.lists(st.tuples(piece, why()), max_size=2))]}
            for one in draw(st.lists(piece, max_size=4, unique=True))
        ]
        place = draw(st.sampled_from([making.HOLE, making.HOLE, "shelf"]))
        found.append({"date": f"2026-01-{number + 1:02}", "place": place, "lies_over": overlaps, "pieces": listed})
    return found


def why() -> st.SearchStrategy[str | None]:
    return st.sampled_from(WHYS)


def _first(other: str, reason: str | None) -> dict[str, str]:
    return {"piece": other} | ({"why": reason} if reason else {})


def musts(said: Iterable[Note]) -> set[Pair]:
    """What has to be off before what, read off the plain data by hand."""
    found = set()
    for note in said:
        found |= {(one["piece"], one["over"]) for one in note["lies_over"]}
        for off in note["pieces"]:
            found |= {(one["piece"], off["piece"]) for one in off["first"] if one.get("why") != "habit"}
    return {(first, then) for first, then in found if first != then}


def ordered(said: Iterable[Note], sides: Mapping[str, str | None]) -> Removal:
    listed = {one: ({"side": side} if side else {}) for one, side in sides.items()}
    return trim.order(
        making.vehicle(trim=listed), *(trim.seen(f"n{number}", **note) for number, note in enumerate(said))
    )


def digraph(edges: Iterable[Pair], things: Iterable[str] = ()) -> Any:
    graph = nx.DiGraph(list(edges))
    graph.add_nodes_from(things)
    return graph


def walked(order: Iterable[str], sides: Mapping[str, str | None]) -> int:
    """How often somebody changes sides, counted by hand."""
    stood = [sides[one] for one in order if sides[one] is not None]
    return sum(one != other for one, other in pairwise(stood))


# --- of any notes ---


@given(notes(), side_maps)
def test_no_piece_comes_off_before_what_lies_over_it(said: list[Note], sides: Mapping[str, str | None]) -> None:
    found = ordered(said, sides)
    order = trim.pieces(found)
    assert len(order) == len(set(order))
    graph = digraph(musts(said))
    for first, then in musts(said):
        if then in order:
            assert first in order
            if not nx.has_path(graph, then, first):
                assert order.index(first) < order.index(then)


@given(notes(), side_maps)
def test_what_goes_round_is_argued_over_and_nothing_else(said: list[Note], sides: Mapping[str, str | None]) -> None:
    found = ordered(said, sides)
    order = set(trim.pieces(found))
    edges = {(first, then) for first, then in musts(said) if then in order}
    tied = [knot for knot in nx.strongly_connected_components(digraph(edges, order)) if len(knot) > 1]
    assert {one for circle in found.argued for one in circle.pieces} == {one for knot in tied for one in knot}
    told = {(before.first, before.then) for circle in found.argued for before in circle.befores}
    assert told == {(first, then) for first, then in edges for knot in tied if {first, then} <= knot}
    for circle in found.argued:
        assert all(before.notes for before in circle.befores)


@given(notes(), side_maps)
def test_nothing_comes_off_that_no_list_and_no_layer_asks_for(
    said: list[Note], sides: Mapping[str, str | None]
) -> None:
    order = set(trim.pieces(ordered(said, sides)))
    here = [note for note in said if note["place"] == making.HOLE]
    named = {one["piece"] for note in here for one in note["pieces"]}
    if not named:
        named = {one for note in here for overlap in note["lies_over"] for one in overlap.values()}
    graph = digraph(musts(said), PIECES)
    assert order <= set.union(named, *(nx.ancestors(graph, one) for one in named))
    if not named:
        assert order == set()


@given(notes(), side_maps, st.data())
def test_a_note_that_agrees_changes_no_order(
    said: list[dict[str, Any]], sides: Mapping[str, str | None], data: st.DataObject
) -> None:
    before = ordered(said, sides)
    again = {**data.draw(st.sampled_from(said)), "date": "2026-02-01"}
    after = ordered([*said, again], sides)
    assert trim.pieces(after) == trim.pieces(before)
    assert [step.first and [one.first for one in step.first] for step in after.steps] == [
        step.first and [one.first for one in step.first] for step in before.steps
    ]
    assert [step.stands for step in after.steps] == [step.stands for step in before.steps]
    assert [circle.pieces for circle in after.argued] == [circle.pieces for circle in before.argued]


@given(notes(), side_maps)
def test_the_pairs_of_a_drawing_say_all_that_the_order_keeps(said: list[Note], sides: Mapping[str, str | None]) -> None:
    found = ordered(said, sides)
    order = trim.pieces(found)
    drawn = digraph(found.over, order)
    graph = digraph(musts(said), order)
    for first, then in musts(said):
        if then in order and not nx.has_path(graph, then, first):
            assert nx.has_path(drawn, first, then)


# --- of any graph, against networkx ---


@given(pairs)
def test_a_closure_is_the_ancestors(edges: list[Pair]) -> None:
    graph = befores(edges, PIECES)
    for one in PIECES:
        assert closure(graph, [one]) == nx.ancestors(digraph(edges, PIECES), one) | {one}


@given(pairs)
def test_knots_are_the_strongly_connected_parts(edges: list[Pair]) -> None:
    expected = {frozenset(part) for part in nx.strongly_connected_components(digraph(edges)) if len(part) > 1}
    assert knots(befores(edges)) == expected


@given(pairs)
def test_every_circle_is_one_and_every_pair_of_a_knot_is_in_a_shortest_one(edges: list[Pair]) -> None:
    graph = digraph(edge for edge in edges if edge[0] != edge[1])
    found = [tuple(zip(circle, (*circle[1:], circle[0]), strict=True)) for circle in circles(befores(graph.edges))]
    assert all(edge in graph.edges for circle in found for edge in circle)
    for first, then in graph.edges:
        through = [circle for circle in found if (first, then) in circle]
        back = nx.has_path(graph, then, first)
        assert bool(through) == back
        if back:
            assert min(map(len, through)) == nx.shortest_path_length(graph, then, first) + 1


@given(pairs)
def test_without_its_knots_a_graph_can_be_sorted_and_says_the_same_outside_them(edges: list[Pair]) -> None:
    whole, free = digraph(edges, PIECES), untied(befores(edges, PIECES))
    plain = digraph(((first, then) for then in free for first in free[then]), PIECES)
    assert nx.is_directed_acyclic_graph(plain)
    for then in PIECES:
        outside = {one for one in nx.ancestors(whole, then) if not nx.has_path(whole, then, one)}
        assert nx.ancestors(plain, then) == outside


@given(pairs)
def test_the_fewest_pairs_are_the_transitive_reduction(edges: list[Pair]) -> None:
    upward = [(min(edge), max(edge)) for edge in edges if edge[0] != edge[1]]
    mine = {(first, then) for then, before in reduced(befores(upward)).items() for first in before}
    assert mine == set(nx.transitive_reduction(digraph(upward)).edges)
    deep = depths(befores(upward))
    layers = nx.topological_generations(digraph(upward))
    assert deep == {one: level for level, layer in enumerate(layers) for one in layer}


# --- fewest moves, against every order there is ---


@settings(max_examples=150)
@given(small_pairs, side_maps)
def test_no_order_walks_round_the_car_less_often(edges: list[Pair], sides: Mapping[str, Any]) -> None:
    upward = {(min(edge), max(edge)) for edge in edges if edge[0] != edge[1]}
    things = PIECES[:6]
    found = least_moves(befores(upward, things), sides)
    assert sorted(found) == list(things)
    valid = [
        order for order in permutations(things) if all(order.index(first) < order.index(then) for first, then in upward)
    ]
    assert found in valid
    assert walked(found, sides) == min(walked(order, sides) for order in valid)


@given(pairs, side_maps, st.permutations(PIECES))
def test_the_same_is_always_done_the_same_way(edges: list[Pair], sides: Mapping[str, Any], done: list[str]) -> None:
    upward = [(min(edge), max(edge)) for edge in edges if edge[0] != edge[1]]
    found = least_moves(befores(upward, PIECES), sides, done)
    assert found == least_moves(befores(reversed(upward), reversed(PIECES)), sides, done)
    assert nx.is_directed_acyclic_graph(digraph([*upward, *pairwise(found)], PIECES))
