"""Sizes in free words: which numbers are sizes, of what, and in which unit."""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from bezelbook.reasoning.needs import Need
from bezelbook.values.complaint import Wrong
from bezelbook.values.quantity import Quantity, read_quantity
from bezelbook.values.unit import MOST_DECIMALS

NUMBER = "(?:\\d+ \\d+/\\d+|\\d+/\\d+|\\d+(?:[.,]\\d+)?(?: ?[\u00bc-\u00be\u215b-\u215e])?)"
UNIT = '(?:mm|millimet(?:re|er)s?|cm|centimet(?:re|er)s?|inches|inch|in|")'
SIZE = f"{NUMBER} ?{UNIT}?(?: ?\u00b1 ?{NUMBER} ?{UNIT}?)?"
NEED_WORDS: Mapping[str, Need] = {
    "deep": "depth",
    "depth": "depth",
    "wide": "width",
    "width": "width",
    "high": "height",
    "height": "height",
    "tall": "height",
}
# Either "depth 165", or one to three sizes with what they are behind them: "178 x 100", "165 mm deep".
SIZES = re.compile(
    f"(?:^| )(?:(depth|width|height) ({SIZE})|({SIZE})(?: ?x ?({SIZE}))?(?: ?x ?({SIZE}))?"
    f"(?: ({'|'.join(NEED_WORDS)}))?)(?= |$)"
)
# Numbers that are no sizes, whatever stands around them.
NO_SIZES = re.compile(r"\b(?:year \d{1,2}|\d(?:[.,]\d)? (?:din|door|doors))\b")
# A bare number is read in the first of these units that brings it within what a chassis ever measures.
BARE_UNITS = ("mm", "in", "cm")
# A depth of 2 to 9 means inches to whoever says it.
CHASSIS_MM: Mapping[Need, tuple[int, int]] = {"depth": (20, 229), "width": (40, 300), "height": (25, 200)}
WIDTH_FIRST: tuple[Need, ...] = ("width", "height", "depth")
MM = 1_000_000
TOO_FINE = re.compile(f"[.,]\\d{{{MOST_DECIMALS + 1},}}")


@dataclass(frozen=True)
class SaidSizes:
    """The sizes that were said, and how they were taken; `rivals` are numbers of which any one may be the depth."""

    sizes: Mapping[Need, Quantity]
    took: tuple[str, ...] = ()
    rivals: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class _Said:
    """One to three sizes said together, by what they are of; `labelled` when the words tell that."""

    parts: Mapping[Need, str]
    labelled: bool

    @property
    def words(self) -> str:
        return " x ".join(self.parts.values())


def sizes_said(left: Sequence[str | None], *, beside_unit: bool) -> SaidSizes:
    """Read the sizes in words, of which those that already mean something else are None.

    One number that nothing says what it is of is the depth. `beside_unit`: the thing asked about has its own sizes,
    so that such a number says nothing. A number that was left out is told.
    """
    said = list(_said(NO_SIZES.sub("|", " ".join(word or "|" for word in left))))
    found = _Reader()
    for one in (one for one in said if one.labelled):
        found.read(one)
    bare = [one for one in said if not one.labelled]
    readable = list(dict.fromkeys(one.words for one in bare if _taken(one)[0]))
    open_depth = not beside_unit and "depth" not in found.sizes
    if open_depth and len(readable) > 1:
        return SaidSizes(found.sizes, tuple(found.took), tuple(readable))
    for one in bare:
        found.read(one) if open_depth else found.leave(one)
    return SaidSizes(found.sizes, tuple(dict.fromkeys(found.took)))


class _Reader:
    def __init__(self) -> None:
        self.sizes: dict[Need, Quantity] = {}
        self.took: list[str] = []
        self._words: set[str] = set()

    def read(self, one: _Said) -> None:
        """Take sizes that can be read and are not said already; tell of any others."""
        sizes, told = _taken(one)
        if not sizes or any(self.sizes.get(need, size) != size for need, size in sizes.items()):
            self.leave(one)
        else:
            self.sizes |= sizes
            self.took += told
            self._words.add(one.words)

    def leave(self, one: _Said) -> None:
        """Tell that these were not taken for sizes, unless the same was taken where it was said more plainly."""
        if one.words not in self._words:
            self.took.append(not_read(one.words))


def not_read(words: str) -> str:
    """Say that words were not taken for a size, and why where they are finer than any size is kept."""
    why = f": no size has more than {MOST_DECIMALS} decimals" if TOO_FINE.search(words) else ""
    return f"{words} was not read as a size{why}"


def _said(text: str) -> Iterator[_Said]:
    for found in SIZES.finditer(text):
        parts = [part.strip() for part in (found[2], *found.groups()[2:5]) if part]
        word = found[1] or found[6]
        if len(parts) > 1:
            yield _Said(dict(zip(WIDTH_FIRST, parts, strict=False)), labelled=True)
        else:
            yield _Said({NEED_WORDS[word] if word else "depth": parts[0]}, labelled=bool(word))


def _taken(one: _Said) -> tuple[dict[Need, Quantity], tuple[str, ...]]:
    """What these are read as; no sizes where they cannot be, or where one is of no size at all."""
    try:
        sizes, told = _read(one.parts)
    except Wrong:
        return {}, ()
    return (sizes, told) if all(size.base for size in sizes.values()) else ({}, ())


def _read(parts: Mapping[Need, str]) -> tuple[dict[Need, Quantity], tuple[str, ...]]:
    """Sizes typed together share the last unit typed; without any unit they are read by the usual limits."""
    units = [unit for part in parts.values() for unit in re.findall(UNIT, part)]
    bare = {need: re.sub(f" ?{UNIT}", "", part) for need, part in parts.items()}
    # "A 165 in the hatch": nothing is that many inches, so that "in" is only a word.
    only_a_word = set(units) == {"in"} and not _usual(parts, "in") and _usual(bare, "mm")
    if units and not only_a_word:
        return _quantities(parts, units[-1]), ()
    usual = [unit for unit in BARE_UNITS if _usual(bare, unit)]
    unit = usual[0] if usual else "mm"
    typed = " x ".join(bare.values())
    others = "".join(f"; {other} would be {typed} {other}" for other in usual[1:])
    return _quantities(bare, unit), (f"{typed} read as {unit}{others}",)


def _quantities(parts: Mapping[Need, str], unit: str) -> dict[Need, Quantity]:
    """Raises Wrong when a part cannot be read."""
    return {
        need: read_quantity(part if re.search(UNIT, part) else f"{part} {unit}", "length")
        for need, part in parts.items()
    }


def _usual(parts: Mapping[Need, str], unit: str) -> bool:
    """Whether all of these are within what a chassis ever measures, in this unit where they have none."""
    return all(_within(size, CHASSIS_MM[need]) for need, size in _quantities(parts, unit).items())


def _within(size: Quantity, usual_mm: Iterable[int]) -> bool:
    low, high = usual_mm
    return low * MM <= size.base <= high * MM
