"""How long a piece took to come off, over independent jobs."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from fractions import Fraction

from bezelbook.kinds.note.record import AnyNote
from bezelbook.reasoning.evidence import job_key

# With fewer jobs than this a time is thin.
ENOUGH = 3


@dataclass(frozen=True, slots=True)
class Clocked:
    """Times in seconds: the median, the range, and how many independent jobs they come from."""

    median: Fraction
    least: int
    most: int
    jobs: int

    @property
    def thin(self) -> bool:
        """Whether there are too few jobs to promise anything by."""
        return self.jobs < ENOUGH


def clocked(times: Iterable[tuple[int, AnyNote]]) -> Clocked | None:
    """The median of (seconds, note) pairs, a job that was written down twice counted once; None when there are none.

    The median of an even number of times is the middle of the two in the middle.
    """
    by_job: Mapping[object, int] = {job_key(note): seconds for seconds, note in times}
    if not by_job:
        return None
    ordered = sorted(by_job.values())
    half = len(ordered) // 2
    median = Fraction(ordered[half] + ordered[~half], 2)
    return Clocked(median, ordered[0], ordered[-1], len(ordered))
