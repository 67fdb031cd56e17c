"""The answers at an opening as a table: every head unit against the build that is not known and each build there is."""

from dataclasses import dataclass

from bezelbook.publish.address import Links
from bezelbook.publish.choices import Choice
from bezelbook.publish.opening import OPEN, Opening
from bezelbook.publish.wording import VERDICTS, ask_words, build_words, short_reason

UNKNOWN_BUILD = "build not known"
ANY_CAR = "any car"


@dataclass(frozen=True, slots=True)
class Cell:
    """A verdict in words, the few words under it, for which build, and where the whole answer is."""

    build: str
    verdict: str
    words: str
    reason: str
    at: str


@dataclass(frozen=True, slots=True)
class Row:
    """A head unit with its answers, one a build."""

    name: str
    at: str
    cells: tuple[Cell, ...]


@dataclass(frozen=True, slots=True)
class Table:
    """The builds that the answers are for, and a row for each head unit."""

    builds: tuple[str, ...]
    rows: tuple[Row, ...]


def answer_table(opening: Opening, to: Links) -> Table:
    """The answers at an opening, whatever mount is used."""
    choices = _choices(opening)
    units = opening.book.head_units.values()
    rows = (
        Row(unit.name, to.head_unit(unit.id), tuple(_cell(opening, choice, unit.id, to) for choice in choices))
        for unit in units
    )
    return Table(tuple(_build(opening, choice) for choice in choices), tuple(rows))


def open_cell(opening: Opening, unit: str, to: Links) -> Cell:
    """The answer about one head unit when nothing is known of the car."""
    return _cell(opening, OPEN, unit, to)


def _choices(opening: Opening) -> tuple[Choice, ...]:
    builds = opening.room.frame.builds
    each = tuple(Choice(build, None) for build in builds) if len(builds) > 1 else ()
    return (OPEN, *each)


def _build(opening: Opening, choice: Choice) -> str:
    if choice.splits:
        return build_words(choice.splits)
    return UNKNOWN_BUILD if len(opening.room.frame.builds) > 1 else ANY_CAR


def _cell(opening: Opening, choice: Choice, unit: str, to: Links) -> Cell:
    answer = opening.answer(choice, unit)
    at = to.ask(ask_words(opening.vehicle, opening.id, choice, [unit]))
    return Cell(_build(opening, choice), answer.verdict, VERDICTS[answer.verdict], short_reason(answer), at)
