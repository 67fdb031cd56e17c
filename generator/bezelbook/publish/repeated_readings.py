"""What was read more than once at a place, as its page tells it: each reading, what they come to, the one apart."""

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links
from bezelbook.reasoning.agreement.repeated import Vote
from bezelbook.reasoning.agreement.told_apart import Told, told_apart
from bezelbook.reasoning.evidence import Evidence
from bezelbook.values.shown import show_length, show_mm


@dataclass(frozen=True, slots=True)
class VoteRow:
    """One job's reading: what it reads and how, by whom, where the note is, and how far off it is for its ±."""

    by: str
    at: str
    reads: str
    how: str
    off: str
    apart: bool


@dataclass(frozen=True, slots=True)
class RepeatedReading:
    """One quantity that several jobs have read, in words, with a row for each job."""

    what: str
    says: str
    look_first: tuple[str, ...]
    repeats: str
    rows: tuple[VoteRow, ...]


def repeated_readings(book: KnowledgeBase, evidence: Evidence, to: Links) -> tuple[RepeatedReading, ...]:
    """Every quantity of a place that several jobs have read, those that do not agree first."""
    told = sorted(told_apart(book, evidence.standing), key=lambda one: one.agreement.agree)
    return tuple(
        RepeatedReading(one.what, one.says, one.look_first, one.repeats, tuple(_rows(one, book.shop.units_first, to)))
        for one in told
    )


def _rows(told: Told, first: str, to: Links) -> Iterator[VoteRow]:
    for index, (vote, strain) in enumerate(zip(told.repeated.votes, told.agreement.strains, strict=True)):
        note = vote.notes[0]
        yield VoteRow(
            f"{note.author or 'not signed'}, {note.date or 'no date'}",
            to.note(note),
            _reads(vote, first),
            ", ".join(dict.fromkeys(reading.tool or "no tool named" for reading in vote.readings)),
            _off(strain),
            index == told.agreement.odd,
        )


def _reads(vote: Vote, first: str) -> str:
    times = f", from {len(vote.readings)} readings" if len(vote.readings) > 1 else ""
    house = ", the house's ±" if vote.house else ""
    figure = f"{show_length(round(vote.figure.value), first)} ± {show_mm(round(vote.figure.give))}"
    return f"{figure}{house}{times}"


def _off(strain: Fraction) -> str:
    """E_n to a hundredth, rounded so that what is above 1 never reads 1."""
    e_n = (Decimal(strain.numerator) / Decimal(strain.denominator)).sqrt()
    shown = round(e_n, 2)
    return f"{max(shown, Decimal('1.01')) if strain > 1 else min(shown, Decimal('1.00')):.2f}"
