"""A chain of pieces as an answer to a question about wiring: what to take, what becomes of it all, what to look at."""

from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.chain import Chain, chain
from bezelbook.reasoning.circuits.in_words import load_words, own_supply, verdict_words, would_do
from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.kept import kept_and_lost
from bezelbook.reasoning.circuits.looks import looks
from bezelbook.reasoning.circuits.plugs import Plugs, plugs_at
from bezelbook.reasoning.circuits.remedies import lacks
from bezelbook.reasoning.circuits.table import table
from bezelbook.reasoning.circuits.two_piece import Seat, TwoPiece
from bezelbook.reasoning.wiring_asked.parts import missing_of, nothing_of, piece_of, plugs_of
from bezelbook.reasoning.wiring_asked.plain import PlainBuild, PlainKept, PlainSeat
from bezelbook.values.listed import listed


def chain_answer(car: Car, job: Job) -> PlainBuild:
    """The cheapest pieces for a job in one build."""
    return _answer(chain(car, job))


def two_piece_answer(found: TwoPiece) -> PlainBuild:
    """The same for a radio in two pieces, with a place for each and the cable between."""
    answer = _answer(found.chain)
    return {
        **answer,
        "words": found.headline,
        "seats": [_seat(seat) for seat in (found.front, *found.elsewhere)],
        "cable": found.cable_words,
        "unknown": [*answer["unknown"], *missing_of(found.unknown)],
    }


def _answer(one: Chain) -> PlainBuild:
    kept = kept_and_lost(one) if one.job.name in ("replace the radio", "two-piece radio") else ()
    beside = [words for words in (own_supply(one) if one.pieces else "", would_do(one)) if words]
    lent = _lent(one.plugs) if not plugs_at(one.car).plugs else []
    return nothing_of(one.car, one.job.name, one.verdict, verdict_words(one)) | {
        "sure": one.sure,
        "plugs": plugs_of(one.car),
        "pieces": [piece_of(one.car.book, piece.record, piece.suit.why) for piece in one.pieces],
        "circuits": [
            {"circuit": row.circuit, "becomes": row.becomes, "words": row.words, "must": row.must}
            for row in (table(one) if one.pieces else ())
        ],
        "kept": [
            PlainKept(
                function=line.function,
                goes=line.goes,
                said=line.said,
                until_settled=line.until_settled or None,
                notes=list(line.notes),
            )
            for line in kept
        ],
        "lacks": [
            {"circuit": lack.circuit, "why": lack.why, "must": lack.must, "remedies": list(lack.remedies)}
            for lack in (lacks(one) if one.pieces else ())
        ],
        "load": load_words(one) or None,
        "beside": [*beside, *lent],
        "unknown": missing_of(looks(one)),
    }


def _lent(plugs: Plugs) -> list[str]:
    """What sister platforms are known to have, which is hearsay here."""
    words = listed([plug.words for plug in plugs.plugs], "or")
    return [f"a sister platform has {words}; told, and no more than that"] if words else []


def _seat(seat: Seat) -> PlainSeat:
    return {"piece": seat.piece.name, "place": seat.place, "verdict": seat.answer.verdict}
