"""The oracle's own arithmetic, checked point by point."""

from itertools import product

from tests.laws.grid import Amount, Grid

VALUES = {"room": (0, 1, 2, 3, 4), "other": (0, 2, 4), "size": (1, 2)}


def value(amount: Amount, point: dict[str, int]) -> int:
    names, constant = amount
    return constant + sum(point[name] for name in names)


def expected(room: Amount, need: Amount) -> list[bool]:
    """Whether the room is no smaller, for every point in the order of its bits."""
    ways = product(*reversed(VALUES.values()))
    points = [dict(zip(VALUES, reversed(way), strict=True)) for way in ways]
    return [value(room, point) >= value(need, point) for point in points]


def test_a_comparison_holds_at_exactly_the_points_where_it_is_true() -> None:
    grid = Grid(VALUES)
    amounts: list[Amount] = [((), 2), (("room",), 0), (("other",), -1), (("size",), 1), (("room", "size"), 0)]
    for room, need in product(amounts, repeat=2):
        bits = grid.no_smaller(room, need)
        assert [bool(bits >> index & 1) for index in range(30)] == expected(room, need), (room, need)


def test_the_points_of_one_value_are_split_from_all_others() -> None:
    grid = Grid(VALUES)
    assert sum(grid.equal("other", value) for value in VALUES["other"]) == grid.everything
    assert grid.equal("other", 3) == 0
