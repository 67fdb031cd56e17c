"""How far the mounts that a place may have hold a thing out, and whether that is what two notes differ in."""

from collections.abc import Mapping
from fractions import Fraction

from bezelbook.kinds.note.record import AnyNote, Bench, Measured
from bezelbook.reasoning.differing.case import Case, Explains
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.worded import worded
from bezelbook.reasoning.mounting import BARE, Stack, stack_of
from bezelbook.values.shown import show_length

BARE_WORDS = "none"
STRANGE = "another mount"
PERHAPS = Fraction(1, 2)
# A kit stands out by so much and seldom by more (common practice, no source): one that nobody knows may well do it.
STANDS_OUT = 25_000_000
WELL, HARDLY = Fraction(3, 4), Fraction(1, 4)


def held_out(case: Case) -> Explanation | None:
    """Whether the one that wants more room had a mount that gives it, where one of the two mounts is not known."""
    if not case.clash.size or any(isinstance(note, Measured) and note.mounts is None for note in case.notes):
        return None
    stacks = _stacks(case)
    found = case.unequal("mount", mount_said, tuple(stacks), _explains(case, stacks))
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


def _gives(case: Case, roomier: Stack, other: Stack) -> Fraction:
    """Whether the one stack gives as much more room than the other as is wanted; half where nobody can tell."""
    if case.clash.size != "depth":
        return PERHAPS if dict(roomier.holes) != dict(other.holes) or roomier.strange or other.strange else Fraction(0)
    if roomier.strange or other.strange:
        return WELL if case.clash.by <= STANDS_OUT else HARDLY
    most = roomier.offset.minus(other.offset).high
    return PERHAPS if most is None else Fraction(most >= max(case.clash.by, 1))


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
