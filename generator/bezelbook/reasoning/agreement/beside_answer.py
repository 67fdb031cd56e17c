"""Readings that do not agree, as what an answer does not know; it never changes the verdict, which takes them all."""

from collections.abc import Iterator

from bezelbook.reasoning.agreement.told_apart import Told, told_apart
from bezelbook.reasoning.question import Asked
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.unknowns import Missing

AGAIN = "read it again"


def apart_unknowns(place: Place, asked: Asked) -> tuple[Missing, ...]:
    """Every quantity of the builds asked about on which the jobs that read it do not agree."""
    return tuple(_missing(place, asked))


def _missing(place: Place, asked: Asked) -> Iterator[Missing]:
    for told in told_apart(place.frame.book, place.evidence.standing):
        if not told.agreement.agree and told.repeated.same.build in asked.builds:
            yield Missing(f"{told.what}: {told.says}", _look(told), "which of these readings is right")


def _look(told: Told) -> str:
    return f"{AGAIN}; look first at {'; '.join(told.look_first)}" if told.look_first else AGAIN
