"""What a size means as somebody wrote it: everything that it may be, in millimetres."""

import re
from collections.abc import Iterator, Mapping
from fractions import Fraction

from tests.simulator.box_world import MM, Shop
from tests.simulator.possible.linear import Clause, Name, Sum, constant, more_than, number

SIZE = re.compile(r"^([+-]?)([\d./ ]+?) (mm|in)(?: ± ([\d./ ]+?) (mm|in))?(?: (caliper|printed))?$")
MM_PER = {"mm": Fraction(1), "in": Fraction("25.4")}
Interval = tuple[float, float] | None


def read(text: str) -> tuple[float, float | None, str | None]:
    """How large, its own ± if any, and the word behind it if any."""
    found = SIZE.match(text)
    if found is None:
        raise ValueError(f"nobody writes a size like that: {text}")
    sign, plain, unit, give, give_unit, by = found.groups()
    middle = _sum(plain) * MM_PER[unit] * (-1 if sign == "-" else 1)
    return float(middle), None if give is None else float(_sum(give) * MM_PER[give_unit]), by


def _sum(words: str) -> Fraction:
    return sum(map(Fraction, words.split()), Fraction(0))


def on_the_bench(shop: Shop, text: object, unsaid: float | None = None) -> Interval:
    """A size of a part; what is printed, or says neither caliper nor ±, may be anything, unless `unsaid` is its ±."""
    if text is None:
        return None
    middle, give, by = read(str(text))
    house = shop.tools["bench_caliper"] / MM if by == "caliper" else unsaid
    known = give if give is not None else house
    return None if by == "printed" or known is None else (middle - known, middle + known)


def in_the_car(shop: Shop, reading: Mapping[str, object]) -> tuple[float, float]:
    """A reading, within its own ± or what the house trusts its tool."""
    middle, give, _ = read(str(reading["reads"]))
    tool = str(reading.get("tool", "none")).replace(" ", "_")
    known = shop.tools[tool] / MM if give is None else give
    return middle - known, middle + known


def gap(shop: Shop, text: object) -> tuple[float, float]:
    """By so much."""
    middle, give, _ = read(str(text))
    known = shop.tools["none"] / MM if give is None else give
    return middle - known, middle + known


def within(what: Sum, ends: tuple[float, float]) -> tuple[Sum, Sum]:
    """It lies between these ends, or is exactly there."""
    low, high = ends
    if low == high:
        return what - constant(low), constant(high) - what
    return more_than(what, constant(low)), more_than(constant(high), what)


def known(name: Name, ends: Interval) -> Iterator[Clause]:
    """A named number within its ends; what nobody knows is no less than nothing."""
    yield (within(number(name), ends) if ends else (number(name),),)
