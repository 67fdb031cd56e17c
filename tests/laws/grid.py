"""Every way to give a few numbers their values, each way one bit of a whole number."""

from collections.abc import Iterable, Mapping
from functools import lru_cache
from itertools import product

Values = tuple[int, ...]
Amount = tuple[tuple[str, ...], int]


class Grid:
    """The product of small lists of values, one list a name; a set of points is a whole number, one bit a point."""

    def __init__(self, values: Mapping[str, Values]) -> None:
        self.values = dict(values)
        self._place = {name: place for place, name in enumerate(self.values)}
        self._lengths = tuple(len(found) for found in self.values.values())
        self.everything = (1 << size(self.values)) - 1

    def equal(self, name: str, value: int) -> int:
        """The points at which a name has this value."""
        found = self.values[name]
        if value not in found:
            return 0
        index = found.index(value)
        return _slab(self._lengths, self._place[name], index, index + 1)

    def at_least(self, name: str, value: int) -> int:
        """The points at which a name has this value or a larger one."""
        found = self.values[name]
        first = next((index for index, one in enumerate(found) if one >= value), len(found))
        return _slab(self._lengths, self._place[name], first, len(found))

    def no_smaller(self, room: Amount, need: Amount) -> int:
        """The points at which one sum of names and a constant is no smaller than another."""
        (names, more), (others, less) = room, need
        if not names:
            return self._constant(more, need)
        lead, rest = names[0], names[1:]
        points = 0
        for way in product(*(self.values[name] for name in (*rest, *others))):
            wanted = less - more + sum(way[len(rest) :]) - sum(way[: len(rest)])
            points |= self._all(zip((*rest, *others), way, strict=True)) & self.at_least(lead, wanted)
        return points

    def _constant(self, room: int, need: Amount) -> int:
        names, less = need
        ways = product(*(self.values[name] for name in names))
        fitting = (way for way in ways if room >= less + sum(way))
        points = 0
        for way in fitting:
            points |= self._all(zip(names, way, strict=True))
        return points

    def _all(self, pairs: Iterable[tuple[str, int]]) -> int:
        points = self.everything
        for name, value in pairs:
            points &= self.equal(name, value)
        return points


def size(values: Mapping[str, Values]) -> int:
    """How many points a grid of these values has."""
    count = 1
    for found in values.values():
        count *= len(found)
    return count


@lru_cache(maxsize=2048)
def _slab(lengths: tuple[int, ...], place: int, first: int, last: int) -> int:
    """The points whose coordinate at a place has an index from `first` up to, not including, `last`."""
    stride, total = 1, 1
    for index, length in enumerate(lengths):
        stride *= length if index < place else 1
        total *= length
    block = ((1 << stride * (last - first)) - 1) << (stride * first)
    width = stride * lengths[place]
    while width < total:
        block |= block << width
        width *= 2
    return block & ((1 << total) - 1)
