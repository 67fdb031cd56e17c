"""The one number that decides an answer about a speaker: the tightest spot, what is asked of it and what there is."""

from collections.abc import Iterator
from dataclasses import dataclass

from bezelbook.reasoning.number import room_words, span_words
from bezelbook.reasoning.room_span import RoomSpan
from bezelbook.reasoning.speakers.cells import RoomSize, SpeakerSetting, demands
from bezelbook.reasoning.speakers.needs import SpeakerNeed
from bezelbook.reasoning.speakers.outlook import clearance, left_over
from bezelbook.reasoning.speakers.question import SpeakerAsked
from bezelbook.reasoning.speakers.rooms import SpeakerPlace
from bezelbook.values.shown import show_length
from bezelbook.values.words import AnswerVerdict

WHERE: dict[RoomSize, str] = {
    "long way": "the hole, the long way",
    "short way": "the hole",
    "fixed": "the first thing behind that does not move",
    "glass": "the glass",
    "front": "the grille",
}


@dataclass(frozen=True, slots=True)
class SpeakerSpot:
    """A demand with its need and the room there, in nm; `left` is between the middles, `house` is wished for.

    `further` is the part of what is asked at most that is asked only while it plays.
    """

    need: SpeakerNeed
    size: RoomSize
    asks_low: int
    asks_high: int
    room: RoomSpan
    left: int
    house: int
    further: int = 0

    @property
    def sure_gap(self) -> int:
        """What is left over at worst; negative when it may not fit."""
        return self.room.least - self.asks_high

    @property
    def best_gap(self) -> int | None:
        """What is left over at best; None when nothing bounds the room from above."""
        return None if self.room.most is None else self.room.most - self.asks_low

    @property
    def is_tight(self) -> bool:
        """Whether it may not fit, or leaves less than the house likes."""
        return self.sure_gap < 0 or self.left < self.house

    def words(self, first: str, *, went_in: bool = False) -> str:
        """The spot as a sentence, lengths in both units with `first` first; `went_in` when it was seen to go in."""
        asks = f"{self.asks(first)}," if self.further else self.asks(first)
        said = f"{self.need}: it asks {asks} at {WHERE[self.size]}; {room_words(self.room, first)}"
        if self.room.most is None or not self.house:
            return said
        if self.left < 0:
            short = show_length(-self.left, first)
            seen = f"; by these figures it is short by about {short}, but it was seen to go in"
            return said + (seen if went_in else f", so it is short by about {short}")
        return f"{said}, so {show_length(self.left, first)} is left; the house wants {show_length(self.house, first)}"

    def asks(self, first: str) -> str:
        """What is asked, as a person writes it."""
        playing = f", and up to {show_length(self.further, first)} more when it plays" if self.further else ""
        return span_words(self.asks_low, self.asks_high - self.further, first) + playing


def spots(place: SpeakerPlace, question: SpeakerAsked, setting: SpeakerSetting) -> Iterator[SpeakerSpot]:
    """Every spot in a setting where something is asked, over all accounts; a need nobody knows is left out."""
    needs = question.needs
    for rooms in place.accounts:
        wanted = demands(rooms.frame, needs, setting)
        for demand, room in zip(wanted, rooms.spans(setting, wanted), strict=True):
            asks = needs.spans[demand.need]
            if asks.low is not None and asks.high is not None:
                left, house = left_over(needs, demand, room), clearance(rooms.frame, needs, demand)
                further = (needs.further or 0) if demand.size == "front" else 0
                yield SpeakerSpot(demand.need, demand.size, asks.low, asks.high, room, left, house, further)


def deciding(place: SpeakerPlace, question: SpeakerAsked, verdict: AnswerVerdict) -> SpeakerSpot | None:
    """The spot that decides: in a setting the one that leaves least of what is wanted, or is furthest short for a no.

    A yes holds in every setting, so the tightest of them decides; else the one in which it comes nearest to going in.
    """
    tightest = [_tightest(list(spots(place, question, setting)), verdict) for setting in question.settings]
    known = [spot for spot in tightest if spot is not None]
    choose = min if verdict == "goes in" else max
    return choose(known, key=lambda spot: spot.left - spot.house, default=None)


def _tightest(found: list[SpeakerSpot], verdict: AnswerVerdict) -> SpeakerSpot | None:
    if verdict == "does not":
        short = [spot for spot in found if spot.best_gap is not None and spot.best_gap <= 0]
        return min(short, key=lambda spot: spot.best_gap or 0, default=None)
    bounded = [spot for spot in found if spot.room.least > 0]
    if verdict == "too close":
        bounded = [spot for spot in bounded if spot.room.most is not None and spot.is_tight]
    return min(bounded, key=lambda spot: spot.left - spot.house, default=None)
