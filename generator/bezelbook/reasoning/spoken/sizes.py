"""Sizes of a speaker in free words: which numbers are a depth, a hole, a bolt circle or only the size it is sold as."""

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field

from bezelbook.reasoning.said_sizes import BARE_UNITS, NO_SIZES, SIZE, UNIT, not_read
from bezelbook.reasoning.size_classes import size_class
from bezelbook.values.complaint import Wrong
from bezelbook.values.quantity import Quantity, read_quantity

MM = 1_000_000
# What a size is of, by the word beside it.
LABELS: Mapping[str, str] = {
    "depth": "mounting_depth",
    "deep": "mounting_depth",
    "cutout": "cut_out",
    "basket": "basket",
    "flange": "flange",
    "bcd": "bolt_circle",
    "high": "front_height",
    "height": "front_height",
    "tall": "front_height",
}
# Ways to say those words, each replaced in turn.
LABEL_WORDS: tuple[tuple[str, str], ...] = (
    (r"\b(?:bolt (?:hole )?circle|bolt pattern|bcd|pcd|b c d)(?: (?:dia|diameter))?\b", "bcd"),
    (r"\b(?:top |bottom )?mount(?:ing)? depth\b", "depth"),
    (r"\b(?:cut ?outs?|holes?(?: (?:size|dia|diameter))?)\b", "cutout"),
    (r"\b(?:front height|sticks out|stands out)\b", "height"),
    (r"\b(depth|cutout|basket|flange|bcd|height) (?:of|is|=)(?= )", "$1"),
)
SAID = re.compile(
    f"(?:^| )(?:({'|'.join(LABELS)}) ({SIZE})|({SIZE})(?: ?x ?({SIZE}))?(?: ({'|'.join(LABELS)}))?)(?= |$)"
)
# What each size usually is, in millimetres (common practice, no source); beyond that a bare number has another unit.
USUAL_MM: Mapping[str, tuple[int, int]] = {
    "mounting_depth": (8, 200),
    "cut_out": (30, 300),
    "basket": (30, 300),
    "flange": (30, 330),
    "bolt_circle": (70, 320),
    "front_height": (1, 60),
}
# Sizes that an oval has two of.
TWO_WAYS = ("cut_out", "basket", "flange")
# Deeper than nearly any speaker, so that a bare number as large may be its hole just as well.
DEEPEST = 100 * MM


@dataclass
class SpeakerSizes:
    """The sizes that were said, the class it is sold as, how numbers were taken; `rival` may be a depth or a hole."""

    sizes: dict[str, Quantity] = field(default_factory=dict)
    size_class: str | None = None
    took: list[str] = field(default_factory=list)
    rival: str | None = None


@dataclass(frozen=True, slots=True)
class _One:
    """One size, or two of an oval, and what it is of where a word says so."""

    parts: tuple[str, ...]
    of: str | None

    @property
    def words(self) -> str:
        return " x ".join(self.parts)

    @property
    def bare(self) -> str:
        return " x ".join(_bare(part) for part in self.parts)


@dataclass(frozen=True, slots=True)
class _Taken:
    """Sizes as read, the unit that was taken where none was typed, and the others that would be as usual."""

    sizes: tuple[Quantity, ...]
    unit: str = ""
    others: tuple[str, ...] = ()


def speaker_sizes(text: str, *, beside_speaker: bool) -> SpeakerSizes:
    """Read the sizes in words. A number with no word beside it is the class it is sold as, or else its depth.

    `beside_speaker`: a speaker with sizes of its own was named, so that such a number says nothing. The same number
    said once more with a word beside it means what that word says.
    """
    said = list(_said(NO_SIZES.sub("|", text)))
    found = SpeakerSizes()
    for one in said:
        if one.of:
            _read(found, one, one.of)
    plain = {one.bare for one in said if one.of}
    for one in said:
        if not one.of and one.bare not in plain:
            _guess(found, one, beside_speaker=beside_speaker)
    return found


def _said(text: str) -> Iterator[_One]:
    for found in SAID.finditer(text):
        label, labelled, first, second, behind = found.groups()
        word = label or behind
        parts = tuple(part.strip() for part in (labelled or first, second) if part)
        yield _One(parts, LABELS[word] if word else None)


def _guess(found: SpeakerSizes, one: _One, *, beside_speaker: bool) -> None:
    """Take a number that nothing says what it is of."""
    words = one.words.replace(" x ", "x")
    sold_as = size_class(words) or size_class(words.removesuffix(" in"))
    if beside_speaker:
        found.took += [] if sold_as else [not_read(one.words)]
    elif sold_as and found.size_class in (None, sold_as):
        _class(found, one, sold_as)
    elif len(one.parts) > 1:
        _read(found, one, "cut_out", told=" across, the hole it needs")
    elif "mounting_depth" in found.sizes or found.rival:
        found.took.append(not_read(one.words))
    elif _is_deepest(one) and "cut_out" not in found.sizes:
        found.rival = one.words
    else:
        _read(found, one, "mounting_depth", told=" deep", other=f"the hole it needs would be cut-out {one.words}")


def _is_deepest(one: _One) -> bool:
    taken = _taken(one.parts, "mounting_depth")
    return taken is not None and taken.sizes[0].base > DEEPEST


def _class(found: SpeakerSizes, one: _One, sold_as: str) -> None:
    """Take a number for the class, and say how it would be said to be a depth where it may be one."""
    if found.size_class is None:
        deep = _taken(one.parts, "mounting_depth") if len(one.parts) == 1 else None
        also = f"; deep would be {one.words} deep" if deep and _within(deep.sizes[0], "mounting_depth") else ""
        found.took.append(f"{one.words} read as the {sold_as} size{also}")
    found.size_class = sold_as


def _read(found: SpeakerSizes, one: _One, of: str, told: str = "", other: str = "") -> None:
    """Take sizes that can be read and are not said already; tell of any others."""
    ways = (of, f"{of}_short")[: len(one.parts)]
    taken = _taken(one.parts, of)
    if taken is None or any(way in found.sizes for way in ways) or (len(one.parts) > 1 and of not in TWO_WAYS):
        found.took.append(not_read(one.words))
        return
    found.sizes |= dict(zip(ways, sorted(taken.sizes, key=lambda size: -size.base), strict=True))
    if taken.unit or told:
        word = next(word for word, name in LABELS.items() if name == of)
        others = [f"{unit} would be {one.bare} {unit} {word}" for unit in taken.others]
        others += [other] if other else []
        found.took.append("; ".join([f"{one.words} read as {taken.unit}{told}".replace("as  ", "as "), *others]))


def _taken(parts: tuple[str, ...], of: str) -> _Taken | None:
    """Sizes typed together share the last unit typed; without any the usual limits tell. None if neither."""
    units = [unit for part in parts for unit in re.findall(UNIT, part)]
    bare = tuple(_bare(part) for part in parts)
    try:
        # "A 165 in the door": nothing is that many inches, so that "in" is only a word.
        only_a_word = set(units) == {"in"} and not _usual(bare, of, "in") and _usual(bare, of, "mm")
        if units and not only_a_word:
            return _sized(part if re.search(UNIT, part) else f"{part} {units[-1]}" for part in parts)
        usual = [unit for unit in BARE_UNITS if _usual(bare, of, unit)]
        unit = usual[0] if usual else "mm"
        sized = _sized(f"{part} {unit}" for part in bare)
        return sized and _Taken(sized.sizes, unit, tuple(usual[1:]))
    except Wrong:
        return None


def _sized(parts: Iterable[str]) -> _Taken | None:
    sizes = tuple(read_quantity(part, "length") for part in parts)
    return _Taken(sizes) if all(size.base for size in sizes) else None


def _bare(part: str) -> str:
    return re.sub(f" ?{UNIT}", "", part)


def _usual(bare: Iterable[str], of: str, unit: str) -> bool:
    return all(_within(read_quantity(f"{part} {unit}", "length"), of) for part in bare)


def _within(size: Quantity, of: str) -> bool:
    low, high = USUAL_MM[of]
    return low * MM <= size.base <= high * MM
