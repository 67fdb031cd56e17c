"""The one number that decides an answer: the tightest spot, what is asked of it and what there is."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.reasoning.cells import Demand, demands
from bezelbook.reasoning.needs import Need
from bezelbook.reasoning.question import Asked
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.room_span import RoomSpan, room_spans
from bezelbook.values.shown import show_length, show_mm
from bezelbook.values.words import AnswerVerdict


@dataclass(frozen=True, slots=True)
class Spot:
    """A demand with its need and the room there, both in nanometres."""

    need: Need
    ninth: str | None
    asks_low: int
    asks_high: int
    room: RoomSpan

    @property
    def sure_gap(self) -> int:
        """What is left over at worst, in nanometres; negative when it may not fit."""
        return self.room.least - self.asks_high

    @property
    def best_gap(self) -> int | None:
        """What is left over at best, in nanometres; None when nothing bounds the room from above."""
        return None if self.room.most is None else self.room.most - self.asks_low

    @property
    def to_spare(self) -> int | None:
        """The gap between the middles, in nanometres; None when the room is not bounded on both sides."""
        if self.room.most is None:
            return None
        return (self.room.least + self.room.most - self.asks_low - self.asks_high) // 2

    def words(self, first: str) -> str:
        """The spot as a sentence, lengths in both units with `first` first."""
        where = f" at the {self.ninth}" if self.ninth else ""
        what = "plug and body together ask" if self.need == "plug" else f"{self.need}: it asks"
        return f"{what} {self.asks(first)}{where}; {room_words(self.room, first)}"

    def asks(self, first: str) -> str:
        """What is asked, as a person writes it."""
        return span_words(self.asks_low, self.asks_high, first)


def spots(place: Place, question: Asked) -> Iterator[Spot]:
    """Every spot where something is asked, over all settings and accounts; a need nobody knows is left out."""
    for rooms in place.accounts:
        for setting in question.settings:
            sure, plug = demands(rooms.frame, question.needs, setting)
            wanted: tuple[Demand, ...] = sure + plug
            for demand, room in zip(wanted, room_spans(rooms, setting, wanted), strict=True):
                asks = question.needs.spans[demand.need]
                if asks.low is not None and asks.high is not None:
                    yield Spot(demand.need, demand.ninth, asks.low, asks.high, room)


def deciding(place: Place, question: Asked, verdict: AnswerVerdict) -> Spot | None:
    """The spot that decides: the one furthest short for a no, otherwise the tightest one that was bounded."""
    found = list(spots(place, question))
    if verdict == "does not":
        short = {spot: gap for spot in found if (gap := spot.best_gap) is not None and gap <= 0}
        return min(short, key=short.__getitem__, default=None)
    bounded = [spot for spot in found if spot.room.least]
    if verdict == "too close":
        bounded = [spot for spot in bounded if spot.room.most is not None]
    return min(bounded, key=lambda spot: spot.sure_gap, default=None)


def span_words(low: int, high: int, first: str) -> str:
    """A span in nanometres as a person writes it: the middle, and its ± when it has one."""
    middle, give = (low + high) // 2, (high - low) // 2
    return f"{show_length(middle, first)} ± {show_mm(give)}" if give else show_length(middle, first)


def room_words(room: RoomSpan, first: str) -> str:
    """The room as a person says it."""
    if room.most is None:
        return f"at least {show_length(room.least, first)} is known to be there"
    if not room.least:
        return f"less than {show_length(room.most, first)} is there"
    return f"there is {span_words(room.least, room.most, first)}"
