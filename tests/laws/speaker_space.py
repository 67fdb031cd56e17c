"""All the rooms of a small world as one number a statement: bit by bit, whether the statement is true in that room."""

from collections.abc import Callable, Iterable, Sequence
from math import prod

Room = tuple[int, ...]
Test = Callable[[Room], bool]


class Space:
    """Every combination of one room a dimension; rooms of which all the tests say the same count once."""

    def __init__(self, tests: Sequence[Sequence[Test]], rooms: Sequence[Iterable[Room]]) -> None:
        self._truths = [
            sorted({tuple(test(room) for test in own) for room in ways}) for own, ways in zip(tests, rooms, strict=True)
        ]
        self._sizes = [len(truths) for truths in self._truths]
        self.all = (1 << prod(self._sizes)) - 1

    def true(self, dimension: int, test: int) -> int:
        """The rooms in which a test, by its number among its dimension's, is true."""
        inner, outer = prod(self._sizes[dimension + 1 :]), prod(self._sizes[:dimension])
        ones = (1 << inner) - 1
        block = sum(ones << number * inner for number, truths in enumerate(self._truths[dimension]) if truths[test])
        length = self._sizes[dimension] * inner
        return block * (((1 << length * outer) - 1) // ((1 << length) - 1))
