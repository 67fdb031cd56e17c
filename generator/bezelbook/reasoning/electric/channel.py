"""What one channel sees of all that hangs on it: below, where only some speakers play, and where all of them do."""

from collections.abc import Sequence
from dataclasses import dataclass

from bezelbook.reasoning.electric.amounts import Range
from bezelbook.reasoning.electric.wiring import in_parallel


@dataclass(frozen=True, slots=True)
class Hanging:
    """A speaker on a channel: its load in ohm, None when not known, and whether only high notes reach it."""

    where: str
    load: Range | None
    high_only: bool = False


@dataclass(frozen=True, slots=True)
class Seen:
    """The loads in ohm that a channel sees; None when not known. `least` is the one that counts against a limit."""

    low_notes: Range | None
    where_all_play: Range | None

    @property
    def least(self) -> Range | None:
        """The lower of the two: a capacitor keeps a tweeter out of the low notes, not out of those it plays."""
        return self.where_all_play


def sees(hanging: Sequence[Hanging], *, nothing_else: bool) -> Seen:
    """What a channel sees of these; unless it was looked at that nothing else hangs there, it is not known.

    Behind its capacitor a tweeter adds its load only where it plays; the least that any of it comes to is as if the
    capacitor were a wire.
    """
    full = [one for one in hanging if not one.high_only]
    return Seen(_together(full, nothing_else=nothing_else), _together(hanging, nothing_else=nothing_else))


def _together(hanging: Sequence[Hanging], *, nothing_else: bool) -> Range | None:
    loads = [one.load for one in hanging if one.load is not None]
    if not nothing_else or not loads or len(loads) < len(hanging):
        return None
    return in_parallel(loads)
