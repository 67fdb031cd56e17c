"""Whether the jobs that read one quantity agree, and which one stands apart from the rest when they do not."""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from bezelbook.reasoning.agreement.chi_square import chance_of_wider
from bezelbook.reasoning.agreement.consensus import (
    Consensus,
    Figure,
    consensus,
    e_n_squared_of_rest,
    variance_between,
)

# Wider than this by chance is too rare to be chance (M. G. Cox, Metrologia 39 (2002) 589).
RARE = Decimal("0.05")


@dataclass(frozen=True, slots=True)
class Agreement:
    """What figures for one quantity come to.

    `odd` is the one that stands apart, by its place among them: with it they do not agree, without it the rest do, and
    of no other can that be said. `consensus` is of those that agree; where nothing singles one out, it is of all, made
    as wide as they scatter. `strains` are the squares of E_n of each against the others, up to 1 where it agrees.
    `chance` is how often figures that agree would scatter as wide as these.
    """

    agree: bool
    odd: int | None
    consensus: Consensus
    strains: tuple[Fraction, ...]
    chance: Decimal

    @property
    def birge_squared(self) -> Fraction:
        """The square of the Birge ratio of those that the consensus is of; two at least."""
        return self.consensus.birge_squared


def agreement(figures: Sequence[Figure]) -> Agreement:
    """What two figures or more come to."""
    together = consensus(figures)
    strains = tuple(e_n_squared_of_rest(figures, index) for index in range(len(figures)))
    chance = chance_of_wider(together.chi_square, len(figures) - 1)
    if agree(figures):
        return Agreement(agree=True, odd=None, consensus=together, strains=strains, chance=chance)
    odd = _odd(figures)
    if odd is None:
        return Agreement(
            agree=False,
            odd=None,
            consensus=consensus(figures, variance_between(figures)),
            strains=strains,
            chance=chance,
        )
    rest = consensus(_without(figures, odd))
    return Agreement(agree=False, odd=odd, consensus=rest, strains=strains, chance=chance)


def agree(figures: Sequence[Figure]) -> bool:
    """Whether no figure has an E_n above 1 against the others, and all together scatter no wider than chance allows.

    Of two, E_n says all there is to say; one alone agrees with itself.
    """
    if any(e_n_squared_of_rest(figures, index) > 1 for index in range(len(figures)) if len(figures) > 1):
        return False
    return len(figures) < 3 or chance_of_wider(consensus(figures).chi_square, len(figures) - 1) >= RARE


def _odd(figures: Sequence[Figure]) -> int | None:
    """The one figure without which the rest agree; none when there is no such or more than one."""
    found = [index for index in range(len(figures)) if agree(_without(figures, index))]
    return found[0] if len(found) == 1 else None


def _without(figures: Sequence[Figure], index: int) -> list[Figure]:
    return [*figures[:index], *figures[index + 1 :]]
