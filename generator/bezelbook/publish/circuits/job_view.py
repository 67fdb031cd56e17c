"""One job in one build of a car as its part of a page: the pieces in order, every circuit, and what is missing."""

from dataclasses import dataclass

from markupsafe import Markup

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.publish.address import Links
from bezelbook.publish.circuits.runs import bars_of, runs_of
from bezelbook.publish.drawing.chain import chain_drawing
from bezelbook.reasoning.circuits.chain import Chain
from bezelbook.reasoning.circuits.in_words import (
    TITLES,
    ends_words,
    in_hand,
    lacks_together,
    load_words,
    own_supply,
    rows_together,
    verdict_words,
    would_do,
)
from bezelbook.reasoning.circuits.looks import looks
from bezelbook.reasoning.circuits.table import table
from bezelbook.reasoning.unknowns import Missing


@dataclass(frozen=True, slots=True)
class PieceLine:
    """A piece of a chain: its number in the drawing, its name, page and ends, and why it is right here."""

    number: int
    name: str
    at: str
    ends: str
    why: str


@dataclass(frozen=True, slots=True)
class SeatLine:
    """A piece of a radio in two, its page, the place, whether it goes in there, and where that answer is in full."""

    piece: str
    piece_at: str
    place: str
    verdict: str
    at: str


@dataclass(frozen=True, slots=True)
class JobView:
    """A job; `drawing` is empty when there is no chain. `rows` are circuits that fare alike, as one line.

    `seats` and `cable` are those of a radio in two pieces.
    """

    title: str
    verdict: str
    sure: str
    pieces: tuple[PieceLine, ...]
    drawing: Markup | str
    rows: tuple[tuple[str, str, str], ...]
    lacks: tuple[tuple[str, str], ...]
    looks: tuple[Missing, ...]
    load: str
    supply: str
    would_do: str
    seats: tuple[SeatLine, ...] = ()
    cable: str = ""


def job_view(chain: Chain, to: Links) -> JobView:
    """The view of a chain."""
    rows = table(chain) if chain.pieces else ()
    title = TITLES[chain.job.name]
    drawing = chain_drawing(bars_of(chain), runs_of(chain, rows), title) if chain.pieces else ""
    return JobView(
        title,
        verdict_words(chain),
        chain.sure or "",
        tuple(_piece(chain, number, to) for number in range(len(chain.pieces))),
        drawing,
        rows_together(rows),
        lacks_together(chain) if chain.pieces else (),
        looks(chain),
        load_words(chain),
        own_supply(chain),
        would_do(chain),
    )


def _piece(chain: Chain, number: int, to: Links) -> PieceLine:
    one = chain.pieces[number]
    kind, _, id_ = one.piece.name.partition("/")
    ends = ends_words(chain.car.book, one.record) if isinstance(one.record, Adapter) else ""
    return PieceLine(
        number + 1, one.record.name, to.record(kind, id_), ends, f"{one.suit.why}; {in_hand(chain.car.book, id_)}"
    )
