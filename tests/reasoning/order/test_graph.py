from bezelbook.reasoning.order.graph import befores, circles, closure, depths, knots, reduced, untied, within

CHAIN = befores([("a", "b"), ("b", "c"), ("a", "c")])
# a and b go round, as do d, e and f; c lies between the two.
ROUND = befores([("a", "b"), ("b", "a"), ("b", "c"), ("c", "d"), ("d", "e"), ("e", "f"), ("f", "d")])


def test_the_graph_names_everything_that_is_named() -> None:
    assert befores([("a", "b")], ["z"]) == {"z": frozenset(), "a": frozenset(), "b": frozenset({"a"})}


def test_all_that_is_before_something_is_in_its_closure() -> None:
    assert closure(CHAIN, ["b"]) == {"a", "b"}
    assert closure(CHAIN, ["c", "z"]) == {"a", "b", "c", "z"}
    assert closure(ROUND, ["a"]) == {"a", "b"}


def test_a_part_of_a_graph_is_about_its_own_things_only() -> None:
    assert within(CHAIN, frozenset({"a", "c", "z"})) == {"a": frozenset(), "c": frozenset({"a"}), "z": frozenset()}


def test_things_that_go_round_are_a_knot() -> None:
    assert knots(CHAIN) == frozenset()
    assert knots(ROUND) == {frozenset({"a", "b"}), frozenset({"d", "e", "f"})}


def test_each_circle_is_told_once_from_its_first_name_on() -> None:
    assert circles(ROUND) == (("a", "b"), ("d", "e", "f"))


def test_two_circles_through_one_thing_are_two() -> None:
    assert circles(befores([("a", "b"), ("b", "a"), ("b", "c"), ("c", "b")])) == (("a", "b"), ("b", "c"))


def test_the_shortest_circle_through_a_pair_is_the_one_that_is_told() -> None:
    longer = befores([("a", "b"), ("b", "c"), ("c", "a"), ("b", "a")])
    assert circles(longer) == (("a", "b"), ("a", "b", "c"))


def test_without_its_circles_a_graph_keeps_what_is_before_and_after_them() -> None:
    assert untied(ROUND) == {
        "a": frozenset(),
        "b": frozenset(),
        "c": frozenset({"b", "a"}),
        "d": frozenset({"c"}),
        "e": frozenset({"c"}),
        "f": frozenset({"c"}),
    }


def test_a_pair_that_follows_from_others_is_not_needed() -> None:
    assert reduced(CHAIN) == {"a": frozenset(), "b": frozenset({"a"}), "c": frozenset({"b"})}


def test_a_thing_lies_as_deep_as_its_longest_chain() -> None:
    assert depths(CHAIN) == {"a": 0, "b": 1, "c": 2}
    assert depths(befores([("b", "c"), ("a", "b")])) == {"a": 0, "b": 1, "c": 2}
    assert depths({}) == {}
