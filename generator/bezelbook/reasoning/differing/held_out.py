"""How far the mounts that a place may have hold a thing out, and whether that is what two notes differ in."""

from collections.abc import Mapping
from fractions import Fraction

from bezelbook.kinds.mount.record import Mount
from bezelbook.kinds.note.record import AnyNote, Bench, Measured
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.differing.case import Asked, Case, Explains
from bezelbook.reasoning.differing.clash import GIVEN_BY_MOUNTS
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.rooms_said import SEATS, said_of
from bezelbook.reasoning.differing.weights import STANDS_OUT, weighs
from bezelbook.reasoning.differing.worded import worded
from bezelbook.reasoning.mounting import BARE, HOLES, Stack, span_of_mount, stack_of
from bezelbook.values.quantity import Quantity
from bezelbook.values.shown import show_length
from bezelbook.values.span import UNKNOWN, Span

BARE_WORDS = "none"
STRANGE = "another mount"
HOLE_FIELDS = ("inner", "inner_short", "basket", "basket_short", "tabs_in", "tabs_out")


def held_out(case: Case) -> Explanation | None:
    """Whether the one that wants more room had a mount that gives it, where one of the two mounts is not known."""
    if not case.clash.size:
        return None
    if not case.weighed and any(isinstance(note, Measured) and note.mounts is None for note in case.notes):
        return None
    stacks = _stacks(case)
    read = _read_as if case.weighed else mount_said
    asked = Asked("mount", read, tuple(stacks), mount_said, weighed=case.weighed, given_away=_sat_on_something)
    found = case.unequal(asked, _as_another(case, stacks) if case.weighed else _explains(case, stacks))
    if found is None:
        return None
    strange = _strangers(case)
    words = f"the mount: {strange}" if strange else worded("mount", case.notes, mount_said, _enough(case, stacks))
    return Explanation("mount", words, found.weight, found.because)


def mount_said(note: AnyNote) -> str | None:
    """The mounts of a note as one word list; None where it does not say."""
    if isinstance(note, Bench) or note.mounts is None:
        return None
    return BARE_WORDS if isinstance(note.mounts, str) else " and ".join(note.mounts)


def _read_as(note: AnyNote) -> str | None:
    """The same, where a reading is of the bare hole unless it says."""
    said = mount_said(note)
    return BARE_WORDS if said is None and isinstance(note, Measured) else said


def _sat_on_something(note: AnyNote) -> bool:
    """Whether a reading names the seat of a mount, or says where its tabs were: then there was one."""
    return isinstance(note, Measured) and (note.tabs is not None or any(one.datum in SEATS for one in note.readings))


def _stacks(case: Case) -> Mapping[str, Stack]:
    """What may have been used here: what its notes name, what was made for it, and one nobody has."""
    found: dict[str, Stack] = {BARE_WORDS: BARE, STRANGE: Stack(strange=(STRANGE,))}
    for note in case.around:
        said = mount_said(note)
        if said not in (None, BARE_WORDS) and not isinstance(note, Bench) and isinstance(note.mounts, tuple):
            found[said or ""] = stack_of(case.book, note.mounts, note.id)
    for mount in case.book.mounts.values():
        here = [one for one in mount.made_for if case.vehicle is not None and one.vehicle == case.vehicle.id]
        if any(one.place == case.place for one in here):
            found.setdefault(mount.id, stack_of(case.book, (mount.id,)))
    return found


def _explains(case: Case, stacks: Mapping[str, Stack]) -> Explains:
    def explains(first: str, second: str) -> Fraction:
        pair = (stacks[first], stacks[second]) if case.clash.roomier == 0 else (stacks[second], stacks[first])
        return Fraction(0) if first == second != STRANGE else _gives(case, *pair)

    return explains


def _as_another(case: Case, stacks: Mapping[str, Stack]) -> Explains:
    """Where the mounts as they are read do not do it: whether the one that is not as read would say just that."""

    def explains(first: str, second: str) -> Fraction:
        read = [_read_as(note) for note in case.notes]
        likely = Fraction(1)
        for at, value in enumerate((first, second)):
            if read[at] not in (None, value):
                likely *= _would_say(case, at, stacks[value], stacks.get(read[at] or "", BARE))
        return likely

    return explains


def _would_say(case: Case, at: int, truly: Stack, read: Stack) -> Fraction:
    """Whether a note would say what it does of the clashing size, had it been of this stack and not as it is read."""
    size, roomier = case.clash.size, case.clash.roomier == at
    said = [one for one in said_of(case.book, case.notes[at]) if one.size == size and one.held]
    if not said:
        return Fraction(0)  # nothing that a mount would be in
    if truly.strange or read.strange:
        return weighs("perhaps") / 2
    if size in GIVEN_BY_MOUNTS:
        more = truly.offset.minus(read.offset) if roomier else read.offset.minus(truly.offset)
        most = more.high if GIVEN_BY_MOUNTS[size] > 0 else None if more.low is None else -more.low
        return weighs("perhaps") if most is None else Fraction(most >= max(case.clash.by, 1))
    framed = framed_by(case.book, truly.key, size)
    if framed is None or framed == framed_by(case.book, read.key, size):
        return Fraction(0)
    return Fraction(
        all(
            (one.least is None or framed.high is None or framed.high >= one.least)
            and (one.most is None or framed.low is None or framed.low <= one.most)
            for one in said
        )
    )


def framed_by(book: KnowledgeBase, mounts: tuple[str, ...], size: str) -> Span | None:
    """The hole of a size that these mounts leave, in nanometres; None where they frame none."""
    found: Span | None = None
    for mount in (book.mounts[key] for key in mounts if key in book.mounts):
        sizes = [one for name in _fields(size) if (one := _size(mount, name)) is not None]
        if sizes:
            spans = [span_of_mount(one, book.shop.tools.bench_caliper.base) for one in sizes]
            lows, highs = [span.low for span in spans], [span.high for span in spans]
            known = None not in lows and None not in highs
            found = Span(min(low or 0 for low in lows), max(high or 0 for high in highs)) if known else UNKNOWN
    return found


def _fields(size: str) -> tuple[str, ...]:
    return HOLE_FIELDS if size == "hole" else (HOLES[size],) if size in HOLES else ()


def _size(mount: Mount, name: str) -> Quantity | None:
    found: Quantity | None = getattr(mount if name in HOLE_FIELDS else mount.presents, name)
    return found


def _gives(case: Case, roomier: Stack, other: Stack) -> Fraction:
    """Whether the one stack gives as much more room than the other as is wanted; half where nobody can tell."""
    if case.clash.size != "depth":
        unlike = dict(roomier.holes) != dict(other.holes) or roomier.strange or other.strange
        return weighs("perhaps") if unlike else Fraction(0)
    if roomier.strange or other.strange:
        return weighs("a stranger's reach" if case.clash.by <= STANDS_OUT else "beyond its reach")
    most = roomier.offset.minus(other.offset).high
    return weighs("perhaps") if most is None else Fraction(most >= max(case.clash.by, 1))


def _strangers(case: Case) -> str:
    words = [word for note in case.notes for word in _strange(case, note)]
    return f'nobody has written how far "{words[0]}" holds a thing out' if words else ""


def _strange(case: Case, note: AnyNote) -> tuple[str, ...]:
    mounts = () if isinstance(note, Bench) or not isinstance(note.mounts, tuple) else note.mounts
    return stack_of(case.book, mounts).strange


def _enough(case: Case, stacks: Mapping[str, Stack]) -> str:
    """The mount of the place that would give the missing room, when the one that wants it does not say."""
    if case.roomier is None or mount_said(case.roomier) is not None or case.clash.size != "depth":
        return ""
    enough = [
        (stack.offset.low, stack.words)
        for stack in stacks.values()
        if stack.offset.low is not None and not stack.strange and stack.offset.low >= max(case.clash.by, 1)
    ]
    if not enough:
        return ""
    wanted = f"{show_length(case.clash.by)} is wanted, and " if case.clash.by else ""
    return f"{wanted}{min(enough)[1]} would give it"
