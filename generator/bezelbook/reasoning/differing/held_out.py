"""How far the mounts that a place may have hold a thing out, and whether that is what two notes differ in."""

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from functools import partial

from bezelbook.kinds.note.record import AnyNote, Bench, Measured
from bezelbook.reasoning.differing.case import Asked, Case, Explains
from bezelbook.reasoning.differing.explanation import Explanation
from bezelbook.reasoning.differing.rooms_said import SEATS
from bezelbook.reasoning.differing.weights import STANDS_OUT, weighs
from bezelbook.reasoning.differing.worded import worded
from bezelbook.reasoning.mounting import BARE, Stack, stack_of
from bezelbook.values.shown import show_length

BARE_WORDS = "none"
STRANGE = "another mount"


def held_out(case: Case) -> Explanation | None:
    """Whether the one that wants more room had a mount that gives it, where one of the two mounts is not known."""
    if case.otherwise is None and (case.weighed or not case.clash.size):
        return None
    if not case.weighed and any(isinstance(note, Measured) and note.mounts is None for note in case.notes):
        return None
    stacks = _stacks(case)
    read = _read_as if case.weighed else mount_said
    put = partial(_held_by, stacks)
    asked = Asked("mount", read, tuple(stacks), mount_said, put, weighed=case.weighed, given_away=_sat_on_something)
    if case.weighed:
        asked = replace(asked, hardly=_off_the_bare_hole, unnamed=STRANGE)
    found = case.unequal(asked, _whatever if case.weighed else _explains(case, stacks))
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


def _off_the_bare_hole(note: AnyNote) -> bool:
    """Whether a reading names a face, and that is not the seat of a mount."""
    named = {one.datum for one in note.readings if one.datum} if isinstance(note, Measured) else set()
    return bool(named) and not named & set(SEATS)


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


def _whatever(_first: str, _second: str) -> Fraction:
    """Every two mounts, where the room itself says what they explain."""
    return Fraction(1)


def _held_by(stacks: Mapping[str, Stack], note: AnyNote, value: str) -> AnyNote:
    """A note of the same on these mounts."""
    stack = stacks[value]
    return note.model_copy(update={"mounts": (STRANGE,) if stack.strange else stack.key or BARE_WORDS})


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
