"""Answers about typed sizes of a speaker, as the browser is told them."""

from collections.abc import Callable
from typing import Any

from bezelbook.publish.speakers.pieces import TYPED_ONE, Piece, pieces
from bezelbook.publish.speakers.place import PlaceForSpeakers
from bezelbook.publish.speakers.state import State
from bezelbook.reasoning.number import room_words
from bezelbook.reasoning.speakers.answer import SpeakerAnswer
from bezelbook.reasoning.speakers.number import WHERE
from bezelbook.values.shown import show_length

# Sizes that are published for every mount; the others only for none, and for any.
WITH_EVERY_MOUNT = ("mounting_depth",)


def typed_told(place: PlaceForSpeakers, state: State, answer: Callable[[SpeakerAnswer], int]) -> dict[str, Any]:
    """By size, its pieces; `answer` gives the number of what an answer about a named speaker has too."""
    if state.tabs or state.glass == "up":
        return {}
    sizes = TYPED_ONE if not state.mounts else WITH_EVERY_MOUNT
    return {of: [_piece(one, answer) for one in pieces(place, state, of)] for of in sizes}


def _piece(piece: Piece, answer: Callable[[SpeakerAnswer], int]) -> list[Any]:
    found = piece.answer
    conditions = [
        [one.template or one.words, [list(pair) for pair in zip(one.lengths, slopes, strict=True)], one.look]
        for one, slopes in zip(found.conditions, piece.slopes, strict=True)
    ]
    return [piece.low, piece.high, answer(found), _number(found, piece.low), conditions]


def _number(answer: SpeakerAnswer, size: int) -> list[Any] | None:
    """The deciding number: what, where, how much there is; then what is left plus the size, and what is wished for."""
    spot, first = answer.spot, answer.first_unit
    if spot is None:
        return None
    house = show_length(spot.house, first) if spot.house else ""
    bounded = spot.room.most is not None
    return [spot.need, WHERE[spot.size], room_words(spot.room, first), bounded, spot.left + size, house]
