"""One thing that would make two notes both true, with how much speaks for it."""

from dataclasses import dataclass
from fractions import Fraction

from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.words import Axis


@dataclass(frozen=True, slots=True)
class Explanation:
    """What the clash may turn on, the sentence for the team, and how likely it is beside the others.

    `weight` lies between 0 and 1 and is worked out of the book: how often each value is said, whether the difference
    gives room enough and the right way round, and what the place's other notes bear out. `because` says which of
    these spoke up; `split` names the vehicle's split, if it is one.
    """

    axis: Axis
    words: str
    weight: Fraction
    because: tuple[str, ...] = ()
    split: str | None = None

    @property
    def proposal(self) -> Proposal:
        """As it stands in a finding."""
        return Proposal(self.axis, self.words, split=self.split)

    @property
    def line(self) -> str:
        """As one line for whoever wants to see how it was weighed."""
        reasons = f" ({'; '.join(self.because)})" if self.because else ""
        return f"{self.weight} {self.axis}: {self.words}{reasons}"
