"""Sizes of a speaker in free words: which numbers are a depth, a hole, a bolt circle or only the size it is sold as."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from bezelbook.reasoning.said_sizes import BARE_UNITS, NO_SIZES, SIZE, UNIT
from bezelbook.reasoning.spoken.size_classes import size_class
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
SAID = re.compile(f"(?:^| )(?:({'|'.join(LABELS)}) ({SIZE})|({SIZE})(?: ?x ?({SIZE}))?(?: ({'|'.join(LABELS)}))?)(?= |$)")
# What each size usually is, in millimetres (common practice, no source); beyond that a bare number has another unit.
USUAL_MM: Mapping[str, tuple[int, int]] = {
    "mounting_depth": (8, 200),
    "cut_out": (30, 300),
    "basket": (30, 300),
    "flange": (30, 330),
    "bolt_circle": (70, 320),
    "front_height": (1, 60),
}
# How a size is said in plain words.
OF_WHAT: Mapping[str, str] = {
    "mounting_depth": "deep",
    "cut_out": "the hole it needs",
    "basket": "the basket",
    "flange": "the flange",
    "bolt_circle": "the bolt circle",
    "front_height": "high in front",
}
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
    parts: tuple[str, ...]
    of: str | None

    @property
    def words(self) -> str:
        return " x ".join(self.parts)


def speaker_sizes(text: str, *, beside_speaker: bool) -> SpeakerSizes:
    """Read the sizes in words. A number with no word beside it is the class it is sold as, or else its depth.

    `beside_speaker`: a speaker with sizes of its own was named, so that such a number says nothing.
    """
    said = list(_said(NO_SIZES.sub("|", text)))
    found = SpeakerSizes()
    for one in said:
        if one.of:
            _read(found, one, one.of)
    for one in said:
        if not one.of:
            _bare(found, one, beside_speaker=beside_speaker)
    return found


def _said(text: str) -> Iterator[_One]:
    for found in SAID.finditer(text):
        label, labelled, first, second, behind = found.groups()
        word = label or behind
        parts = tuple(part.strip() for part in (labelled or first, second) if part)
        yield _One(parts, LABELS[word] if word else None)


def _bare(found: SpeakerSizes, one: _One, *, beside_speaker: bool) -> None:
    words = one.words.replace(" x ", "x")
    sold_as = size_class(words) or size_class(words.removesuffix(" in"))
    if beside_speaker:
        if sold_as is None:
            found.took.append(f"{one.words} was not read as a size")
    elif sold_as is not None and found.size_class in (None, sold_as):
        _class(found, one, sold_as)
    elif len(one.parts) > 1:
        _read(found, one, "cut_out", told="the hole it needs")
    elif "mounting_depth" in found.sizes or found.rival:
        found.took.append(f"{one.words} was not read as a size")
    elif (_size(one.parts[0], "mounting_depth") or ZERO)[0].base > DEEPEST and "cut_out" not in found.sizes:
        found.rival = one.words
    else:
        _read(found, one, "mounting_depth", told="deep")


def _class(found: SpeakerSizes, one: _One, sold_as: str) -> None:
    """Take a number for the class, and say how it would be said to be a depth where it may be one."""
    if found.size_class is None:
        deep = _size(one.parts[0], "mounting_depth") if len(one.parts) == 1 else None
        low, high = USUAL_MM["mounting_depth"]
        other = deep is not None and low * MM <= deep[0].base <= high * MM
        also = f"; deep would be {one.words} deep" if other else ""
        found.took.append(f"{one.words} read as sold as {sold_as}{also}")
    found.size_class = sold_as


def _read(found: SpeakerSizes, one: _One, of: str, told: str = "") -> None:
    """Take sizes that can be read and are not said already; tell of any others."""
    ways = (of, f"{of}_short")[: len(one.parts)]
    read = [_size(part, of, one.parts) for part in one.parts]
    if any(size is None for size in read) or any(way in found.sizes for way in ways) or _no_short(of, one):
        found.took.append(f"{one.words} was not read as a size")
        return
    sizes = sorted((size for size in read if size is not None), key=lambda size: -size[0].base)
    found.sizes |= {way: size[0] for way, size in zip(ways, sizes, strict=True)}
    unit = sizes[0][1]
    if unit or told:
        found.took.append(_told(one, of, unit, told))


def _no_short(of: str, one: _One) -> bool:
    return len(one.parts) > 1 and of not in ("cut_out", "basket", "flange")


def _told(one: _One, of: str, unit: str, told: str) -> str:
    """How a number was taken, and how it would be said to be something else."""
    read_as = " ".join(word for word in (unit, told) if word)
    others = [f"{other} would be {one.words} {other} {_label(of)}" for other in _others(one, of, unit)]
    if told == "deep":
        others.append(f"the hole it needs would be cut-out {one.words}")
    return "; ".join([f"{one.words} read as {read_as}", *others])


def _label(of: str) -> str:
    return next(word for word, name in LABELS.items() if name == of)


def _others(one: _One, of: str, unit: str) -> list[str]:
    if not unit:
        return []
    usual = [other for other in BARE_UNITS if all(_usual(part, of, other) for part in one.parts)]
    return [other for other in usual if other != unit]


ZERO = (read_quantity("0 mm", "length"), "")


def _size(typed: str, of: str, together: tuple[str, ...] = ()) -> tuple[Quantity, str] | None:
    """A size and the unit that was taken for it, which is empty where one was typed; None when it cannot be read."""
    units = [unit for part in together or (typed,) for unit in re.findall(UNIT, part)]
    bare = re.sub(f" ?{UNIT}", "", typed)
    try:
        if units and not (set(units) == {"in"} and not _usual(bare, of, "in") and _usual(bare, of, "mm")):
            size = read_quantity(typed if re.search(UNIT, typed) else f"{typed} {units[-1]}", "length")
            return (size, "") if size.base else None
        together = together or (bare,)
        whole = [re.sub(f" ?{UNIT}", "", part) for part in together]
        usual = [unit for unit in BARE_UNITS if all(_usual(part, of, unit) for part in whole)]
        unit = usual[0] if usual else "mm"
        size = read_quantity(f"{bare} {unit}", "length")
        return (size, unit) if size.base else None
    except Wrong:
        return None


def _usual(bare: str, of: str, unit: str) -> bool:
    low, high = USUAL_MM[of]
    return low * MM <= read_quantity(f"{bare} {unit}", "length").base <= high * MM
