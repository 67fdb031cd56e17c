from bezelbook.reasoning.circuits.hyperpath import Arc, least_values


def test_what_needs_two_things_waits_for_the_dearer() -> None:
    arcs = [Arc("a", (), lambda: 1), Arc("b", (), lambda: 5), Arc("c", ("a", "b"), lambda x, y: max(x, y) + 1)]
    assert least_values(arcs) == {"a": 1, "b": 5, "c": 6}


def test_of_two_ways_the_cheaper_counts_whichever_is_met_first() -> None:
    arcs = [Arc("a", (), lambda: 1), Arc("b", ("a",), lambda x: x + 9), Arc("b", (), lambda: 4)]
    assert least_values(arcs)["b"] == 4


def test_a_thing_named_twice_among_what_is_needed_is_waited_for_once() -> None:
    arcs = [Arc("a", (), lambda: 2), Arc("b", ("a", "a"), lambda x, y: x + y)]
    assert least_values(arcs) == {"a": 2, "b": 4}


def test_what_needs_itself_is_never_reached() -> None:
    arcs = [Arc("a", ("b",), lambda x: x), Arc("b", ("a",), lambda x: x)]
    assert least_values(arcs) == {}
