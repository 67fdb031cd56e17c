"""What would make two notes both true, as one sentence for the team."""

from dataclasses import dataclass

from bezelbook.values.words import Axis

NEW_SPLIT = "a new split"


@dataclass(frozen=True, slots=True)
class Proposal:
    """What would make both true, or mend a slip: what it turns on, and the sentence for the team.

    `reads` is how a decision would read a note so, where one can: the note, and a field of it with its value. `split`
    is the vehicle's split that it turns on, `NEW_SPLIT` where the book has none for it.
    """

    axis: Axis
    words: str
    reads: tuple[str, str] | None = None
    split: str | None = None
