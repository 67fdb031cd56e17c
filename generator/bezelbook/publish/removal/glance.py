"""What comes off first in one line, for somebody who has five seconds."""

from dataclasses import dataclass

from bezelbook.publish.removal.cautions import RESTRAINT, all_stopped
from bezelbook.reasoning.order.removal import Removal
from bezelbook.reasoning.order.step import Step


@dataclass(frozen=True, slots=True)
class Glance:
    """An order in a line; `which` says for which cars, empty for all."""

    which: str
    words: str


def glance(which: str, removal: Removal) -> Glance:
    """The pieces with their numbers; where a restraint is near, that alone."""
    if not removal.written:
        return Glance(which, "nobody wrote what comes off first")
    if all_stopped(removal):
        return Glance(which, f"{RESTRAINT}: stop")
    return Glance(which, ", ".join(f"{number} {_short(step)}" for number, step in enumerate(removal.steps, 1)))


def _short(step: Step) -> str:
    if RESTRAINT in step.safety:
        return f"{step.name} ({RESTRAINT}: stop)"
    return f"{step.name} (perhaps)" if step.stands != "needed" else step.name
