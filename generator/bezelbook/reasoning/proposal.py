"""What would make two notes both true, as one sentence for the team."""

from dataclasses import dataclass

from bezelbook.values.words import Axis


@dataclass(frozen=True, slots=True)
class Proposal:
    """What would make both true, or mend a slip: what it turns on, and the sentence for the team."""

    axis: Axis
    words: str
