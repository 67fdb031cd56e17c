"""An offer instead of a wish: what, how sure that is, what it takes, and what of it would have to be bought."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal, get_args

from bezelbook.reasoning.plain import PlainOffer
from bezelbook.values.words import SURENESSES, AnswerVerdict

Kind = Literal[
    "another of its size",
    "of another size",
    "another one",
    "in two pieces",
    "another mount",
    "another place",
    "keep the radio",
]
KINDS: tuple[Kind, ...] = get_args(Kind)
# With so many of a kind a customer has a choice; more is a catalogue.
MOST = 3
# With these answers somebody at the counter wants something else to say.
WANTING: frozenset[AnswerVerdict] = frozenset({"does not", "too close", "nobody has tried", "argued over"})


@dataclass(frozen=True, slots=True)
class Offer:
    """Something that goes in, or goes in if; `condition` ends that sentence, and is empty where nothing is left open.

    `thing` is the id of what is fitted, None for what was wished for itself; `mounts` are those that it takes, where
    one way alone is left; `buy` are the names of what is not on the shelf.
    """

    kind: Kind
    words: str
    thing: str | None
    place: str
    mounts: tuple[str, ...]
    verdict: AnswerVerdict
    condition: str
    sure: str | None
    witnesses: int
    needs: tuple[str, ...]
    buy: tuple[str, ...]

    def plain(self) -> PlainOffer:
        """The offer as plain data."""
        return {
            "kind": self.kind,
            "words": self.words,
            "what": self.thing,
            "place": self.place,
            "mounts": list(self.mounts),
            "verdict": self.verdict,
            "condition": self.condition,
            "sure": self.sure,
            "witnesses": self.witnesses,
            "needs": list(self.needs),
            "to_buy": list(self.buy),
        }


def may_be_offered(verdict: AnswerVerdict, witnesses: int) -> bool:
    """Whether an answer may be offered: a condition that no job carries may be put to any hole at all."""
    return verdict == "goes in" or (verdict == "goes in if" and witnesses > 0)


def rank(offer: Offer) -> tuple[object, ...]:
    """Surest first, then the least to buy, then the most independent jobs; what is left is the same each time."""
    sure = [*SURENESSES].index(offer.sure) if offer.sure in SURENESSES else len(SURENESSES)
    kind = KINDS.index(offer.kind)
    least = (offer.verdict != "goes in", sure, len(offer.buy), -offer.witnesses, kind)
    return (*least, offer.thing or "", offer.place, offer.mounts)


def best_of(offers: Iterable[Offer]) -> tuple[Offer, ...]:
    """The best few of each kind, best first."""
    ranked = sorted(offers, key=rank)
    few = {kind: [offer for offer in ranked if offer.kind == kind][:MOST] for kind in KINDS}
    return tuple(offer for offer in ranked if offer in few[offer.kind])
