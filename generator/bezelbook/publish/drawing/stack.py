"""Pieces of trim as a stack of cards: the first to come off lies on top, over the edge of what it covers."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from markupsafe import Markup

from bezelbook.publish.drawing.svg import element

CARD = 34
# How far the next card shows below the one that covers its edge, and where nothing covers it.
COVERED, APART = 26, 42
INDENT = 5
DEEPEST = 5
GUTTER = 14
MOST_LANES = 5
LONGEST = 28
TOP = 4


@dataclass(frozen=True, slots=True)
class Card:
    """A piece in the stack. `depth` is how many pieces lie over it in the longest chain; 0 lies on top."""

    piece: str
    name: str
    depth: int
    unsure: bool


def stack(cards: Sequence[Card], over: Sequence[tuple[str, str]], title: str) -> Markup:
    """The cards in their order, first on top; `over` has the (upper, lower) pairs, both by piece.

    A card stands as far to the right as it lies deep. One that covers the edge of the next lies over it; a line on the
    right leads from a piece to one further down that it lies over.
    """
    tops = _tops(cards, frozenset(over))
    number = {card.piece: place for place, card in enumerate(cards)}
    drawn = [_card(card, place, tops[place]) for place, card in enumerate(cards)]
    said = "; ".join(_said(card, place, cards, over) for place, card in enumerate(cards))
    lines = _lines(sorted((number[one], number[other]) for one, other in over), tops)
    # What is drawn last lies on top, so the last card comes first.
    parts = [element("title", {}, f"{title}: {said}"), *reversed(drawn), *lines]
    height = tops[-1] + CARD + TOP
    return element("svg", {"class": "stack", "role": "img", "width": "100%", "height": height}, *parts)


def _tops(cards: Sequence[Card], over: frozenset[tuple[str, str]]) -> list[int]:
    tops = [TOP]
    for upper, lower in pairwise(cards):
        tops.append(tops[-1] + (COVERED if (upper.piece, lower.piece) in over else APART))
    return tops


def _left(card: Card) -> int:
    return min(card.depth, DEEPEST) * INDENT


def _card(card: Card, place: int, top: int) -> Markup:
    left = _left(card)
    size = {"x": f"{left}%", "y": top, "width": f"{100 - GUTTER - left}%", "height": CARD, "rx": 4}
    kind = "card unsure" if card.unsure else "card"
    at = {"data-piece": card.piece, "data-place": place + 1, "data-depth": card.depth}
    shown = card.name if len(card.name) <= LONGEST else f"{card.name[: LONGEST - 1]}…"
    label = element("text", {"x": f"{left}%", "y": top + 23, "dx": 10}, f"{place + 1}  {shown}")
    return element("g", {"class": kind, **at}, element("rect", size), label)


def _said(card: Card, place: int, cards: Sequence[Card], over: Sequence[tuple[str, str]]) -> str:
    numbers: Mapping[str, int] = {one.piece: number for number, one in enumerate(cards, 1)}
    under = [str(numbers[lower]) for upper, lower in over if upper == card.piece]
    lies = f", off before {' and '.join(under)}" if under else ""
    return f"{place + 1} {card.name}{lies}{', not sure' if card.unsure else ''}"


def _lines(pairs: Sequence[tuple[int, int]], tops: Sequence[int]) -> Iterator[Markup]:
    """A line for every pair that is not shown by a card on the next one, each in a lane of its own."""
    lanes: list[int] = []
    for upper, lower in pairs:
        if lower == upper + 1:
            continue
        lane = next((lane for lane, end in enumerate(lanes) if end < upper), len(lanes))
        lanes[lane : lane + 1] = [lower]
        yield _line(upper, lower, f"{100 - GUTTER + 2 * (1 + min(lane, MOST_LANES))}%", tops)


def _line(upper: int, lower: int, at: str, tops: Sequence[int]) -> Markup:
    """From the edge of one card out to a lane, down it, and back to the edge of another."""
    edge = f"{100 - GUTTER}%"
    start, end = tops[upper] + CARD // 3, tops[lower] + CARD - CARD // 3
    parts = [
        element("line", {"x1": edge, "x2": at, "y1": start, "y2": start}),
        element("line", {"x1": at, "x2": at, "y1": start, "y2": end}),
        element("line", {"x1": at, "x2": edge, "y1": end, "y2": end}),
    ]
    return element("g", {"class": "over", "data-over": f"{upper + 1} {lower + 1}"}, *parts)
