"""The drawings of an opening: a tape strip for each build and mount, and a section for each build that was measured."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from markupsafe import Markup

from bezelbook.kinds.note.record import Tried
from bezelbook.publish.drawing.section import section
from bezelbook.publish.drawing.svg import MM, Scale, scale_for
from bezelbook.publish.drawing.tape import Notch, lettered, reach_words, tape
from bezelbook.publish.ninths import ROWS, Depth, depths
from bezelbook.publish.opening import Opening
from bezelbook.publish.reach import Reach, reach
from bezelbook.publish.wording import build_words
from bezelbook.reasoning.cells import Setting
from bezelbook.reasoning.evidence import Standing
from bezelbook.reasoning.needs import Need, needs_of_note
from bezelbook.reasoning.quote import quote

SHORTEST_TAPE = 200 * MM
NAMES_BEHIND = Fraction(7, 5)


@dataclass(frozen=True, slots=True)
class Strip:
    """How deep a body may be in one build with one mount, drawn and in words; width and height in words only."""

    title: str
    drawing: Markup
    words: str
    notches: tuple[tuple[str, Notch], ...]
    others: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Section:
    """The depths of one build: nine in three rows, and drawn."""

    title: str
    rows: tuple[tuple[tuple[Depth, str, str], ...], ...]
    drawing: Markup


@dataclass(frozen=True, slots=True)
class _Known:
    """What is known of the depth in one setting."""

    number: int
    title: str
    reach: Reach
    notches: tuple[Notch, ...]

    @property
    def nothing(self) -> bool:
        return not self.notches and self.reach == Reach(0, None, None)

    @property
    def ends(self) -> list[int]:
        known = [self.reach.sure, self.reach.argued or 0, self.reach.refused or 0]
        return known + [notch.size for notch in self.notches]


def strips(opening: Opening) -> tuple[Strip, ...]:
    """A strip for each setting of which anything is known, all to one scale."""
    first = opening.book.shop.units_first
    known = [one for one in _settings(opening) if not one.nothing]
    scale = scale_for(max([SHORTEST_TAPE, *(end for one in known for end in one.ends)]), Fraction(11, 10))
    return tuple(
        Strip(
            one.title,
            tape(one.reach, one.notches, scale, one.title, first),
            reach_words(one.reach, first),
            lettered(one.notches),
            _others(opening, one.number),
        )
        for one in known
    )


def unknown_strips(opening: Opening) -> tuple[str, ...]:
    """The settings of which nothing is known, in words."""
    return tuple(one.title for one in _settings(opening) if one.nothing)


def sections(opening: Opening) -> tuple[Section, ...]:
    """A section for each build of which at least one ninth was measured, all to one scale."""
    first = opening.book.shop.units_first
    found = {build: depths(opening.room, build) for build in opening.room.frame.builds}
    measured = {build: nine for build, nine in found.items() if any(one.measured for one in nine)}
    ends = [one.most for nine in measured.values() for one in nine if one.most is not None]
    scale = scale_for(max(ends, default=SHORTEST_TAPE), NAMES_BEHIND)
    return tuple(_section(build_words(build), nine, scale, first) for build, nine in measured.items())


def _section(title: str, nine: tuple[Depth, ...], scale: Scale, first: str) -> Section:
    by_name = {one.ninth: (one, *one.both(first)) for one in nine}
    rows = tuple(tuple(by_name[ninth] for ninth in row) for row in ROWS)
    return Section(title, rows, section(nine, scale, title, first))


def _settings(opening: Opening) -> Iterator[_Known]:
    for number, setting in enumerate(opening.everything.settings):
        build = build_words(setting.build)
        title = f"{build}, {setting.stack.words}" if build else setting.stack.words
        yield _Known(number, title, reach(opening.corners, number, "depth"), tuple(_notches(opening, setting)))


def _others(opening: Opening, setting: int) -> tuple[str, ...]:
    first = opening.book.shop.units_first
    others: tuple[Need, ...] = ("width", "height")
    return tuple(f"{need}: {reach_words(reach(opening.corners, setting, need), first)}" for need in others)


def _notches(opening: Opening, setting: Setting) -> Iterator[Notch]:
    """What was tried in this very setting, shallowest first; things of one depth and fate share a notch."""
    tried: dict[tuple[int, bool], list[str]] = {}
    for one in opening.room.evidence.standing:
        if not isinstance(one.note, Tried) or not _about_depth(one, setting):
            continue
        depth = needs_of_note(opening.book, one.note).spans["depth"]
        if depth.low is not None and depth.high is not None:
            key = ((depth.low + depth.high) // 2, one.says == "goes in")
            tried.setdefault(key, []).append(quote(opening.book, one.note))
    for (size, went_in), words in sorted(tried.items()):
        yield Notch(size, went_in, tuple(words))


def _about_depth(one: Standing, setting: Setting) -> bool:
    """Whether a note was made in this setting, and says anything of how deep a thing may be."""
    here = one.stack is not None and one.stack.key == setting.stack.key and setting.build in one.builds
    return here and getattr(one.note, "reason", None) in (None, "depth")
