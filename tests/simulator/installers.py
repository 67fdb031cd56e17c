"""The people of a shop: how careful each is, and with that how often something is left blank or guessed."""

from dataclasses import dataclass
from random import Random


@dataclass(frozen=True)
class Installer:
    """Somebody who fits things; `care` runs from 0, who leaves half of everything blank, to 1, who leaves nothing."""

    initials: str
    care: float

    def leaves_blank(self, dice: Random) -> bool:
        """Whether one field stays empty this time."""
        return dice.random() < (1 - self.care) * 0.5

    def says_by_how_much(self, dice: Random) -> bool:
        """Whether the gap was read."""
        return dice.random() < self.care * 0.4

    def slips(self, dice: Random) -> bool:
        """Whether a number is typed in the wrong unit."""
        return dice.random() < (1 - self.care) * 0.06

    def says_give(self, dice: Random) -> bool:
        """Whether a reading gets a ± of its own."""
        return dice.random() < self.care * 0.5


CREW = (
    Installer("ada", 1.0),
    Installer("ben", 0.85),
    Installer("cy", 0.6),
    Installer("dot", 0.35),
    Installer("eli", 0.1),
)
