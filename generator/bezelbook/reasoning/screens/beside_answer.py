"""What an answer about a unit with a screen adds of the controls near the opening; it never changes the verdict."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.question import Asked
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.screens.controls import hole_of
from bezelbook.reasoning.screens.screen_at import ScreenAt, screen_at
from bezelbook.reasoning.screens.screen_words import crowd_words, verdict_words
from bezelbook.reasoning.unknowns import Missing


@dataclass(frozen=True, slots=True)
class ScreenTold:
    """The lines that an answer adds about a screen, and what nobody looked at that bears on them."""

    lines: tuple[str, ...]
    missing: tuple[Missing, ...]


def screens_told(place: Place, asked: Asked, unit: str | None) -> ScreenTold:
    """A line for each build of a question, and for each mounting where that makes a difference.

    There is nothing to tell where the thing asked about is no unit of the book, or has no screen that stands off.
    """
    of = place.frame.book.head_units.get(unit or "")
    if of is None or of.screen is None:
        return ScreenTold((), ())
    lines: list[str] = []
    missing: list[Missing] = []
    for build in asked.builds:
        hole = hole_of(place, build)
        found = [(stack.words, screen_at(place, of, build, stack, hole)) for stack in asked.stacks]
        missing += [one for _, screen in found for one in screen.missing]
        lines += _lines(found, build if len(asked.builds) > 1 else (), place.frame.book.shop.units_first)
    return ScreenTold(tuple(dict.fromkeys(lines)), tuple(dict.fromkeys(missing)))


def _lines(found: Sequence[tuple[str, ScreenAt]], build: Build, first: str) -> Iterator[str]:
    told = [(stack, (verdict_words(one, first), crowd_words(one, first))) for stack, one in found]
    differ = len({said for _, said in told}) > 1
    for stack, said in told:
        of = [value for _, value in build] + ([f"with {stack}"] if differ else [])
        head = f"screen ({', '.join(of)})" if of else "screen"
        yield from (f"{head}: {line}" for line in said if line)
