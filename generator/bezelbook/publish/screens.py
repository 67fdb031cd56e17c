"""The screens that stand off the dash at an opening, and what becomes of the controls near it, for its page."""

from collections.abc import Iterator
from dataclasses import dataclass
from string import ascii_uppercase

from markupsafe import Markup

from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.publish.address import Links
from bezelbook.publish.choices import Choice
from bezelbook.publish.drawing.screen import screen
from bezelbook.publish.mentions import place_words
from bezelbook.publish.opening import Opening
from bezelbook.publish.wording import build_words
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.mounting import Stack
from bezelbook.reasoning.screens.controls import Hole, hole_of
from bezelbook.reasoning.screens.screen_at import Lying, ScreenAt, screen_at
from bezelbook.reasoning.screens.screen_words import control_words, crowd_words, height_words, verdict_words


@dataclass(frozen=True, slots=True)
class ControlLine:
    """One control of a drawing: its letter, its name, what becomes of it and where the note is."""

    letter: str
    what: str
    words: str
    at: str


@dataclass(frozen=True, slots=True)
class ScreenFigure:
    """A screen over an opening in one build and mounting, in words and drawn; nothing is drawn where nobody looked."""

    unit: str
    at: str
    state: str
    words: str
    more: tuple[str, ...]
    drawing: Markup | None
    controls: tuple[ControlLine, ...]
    looks: tuple[str, ...]


def screens(opening: Opening, to: Links) -> tuple[ScreenFigure, ...]:
    """Every screen of the book at an opening, in each build and mounting that makes a difference.

    One that does not go in there is left out.
    """
    units = (unit for unit in opening.book.head_units.values() if unit.screen is not None)
    return tuple(figure for unit in units for figure in _of_unit(opening, unit, to))


def screen_places(openings: tuple[Opening, ...], unit: HeadUnit, to: Links) -> tuple[tuple[str, str, str], ...]:
    """Where a screen's controls were looked at: which opening, its address on the page, and what it covers there."""
    if unit.screen is None:
        return ()
    rows: list[tuple[str, str, str]] = []
    for opening in openings:
        where = place_words(opening.book, opening.vehicle, opening.id)
        for figure in _of_unit(opening, unit, to):
            if figure.drawing is not None:
                words = f"{figure.state}: {figure.words}" if figure.state else figure.words
                rows.append((where, to.place(opening.vehicle, opening.id), words))
    return tuple(rows)


def _of_unit(opening: Opening, unit: HeadUnit, to: Links) -> Iterator[ScreenFigure]:
    builds = opening.room.frame.builds
    first = opening.book.shop.units_first
    for build in builds:
        answer = opening.answer(Choice(build, None), unit.id)
        if answer.verdict == "does not":
            continue
        hole = hole_of(opening.room, build)
        by_words: dict[str, tuple[ScreenAt, list[str]]] = {}
        for stack in answer.asked.stacks:
            found = _at(opening, unit, build, stack, hole)
            by_words.setdefault(verdict_words(found, first), (found, []))[1].append(stack.words)
        for words, (found, stacks) in by_words.items():
            state = [build_words(build)] if len(builds) > 1 else []
            state += [f"with {' or '.join(stacks)}"] if len(by_words) > 1 else []
            yield _figure(opening, unit, found, ", ".join(state), words, to)


def _at(opening: Opening, unit: HeadUnit, build: Build, stack: Stack, hole: Hole) -> ScreenAt:
    return screen_at(opening.room, unit, build, stack, hole)


def _figure(opening: Opening, unit: HeadUnit, found: ScreenAt, state: str, words: str, to: Links) -> ScreenFigure:
    first = opening.book.shop.units_first
    lying = found.lying if found.lying is not None and found.lying.usable.overs else None
    controls = tuple(_control_lines(opening, lying, to)) if lying else ()
    looks = tuple(f"{one.what}: {one.look}" for one in found.missing)
    crowds = crowd_words(found, first)
    drawn = f"Drawn with the middle of the screen {height_words(lying.usable.best, first)}" if lying else ""
    more = tuple(line for line in (drawn, crowds) if line)
    drawing = None
    if lying:
        said = "; ".join(f"{line.letter} {line.what}: {line.words}" for line in controls)
        title = f"{unit.name}{f', {state}' if state else ''}: {words}. {said}"
        drawing = screen(lying, [line.letter for line in controls], title)
    return ScreenFigure(unit.name, to.head_unit(unit.id), state, words, more, drawing, controls, looks)


def _control_lines(opening: Opening, lying: Lying, to: Links) -> Iterator[ControlLine]:
    for number, over in enumerate(lying.usable.overs):
        words = control_words(over, lying, opening.book.shop.units_first)
        at = to.note(opening.book.notes[over.control.note])
        yield ControlLine(letter_of(number), over.control.what, words, at)


def letter_of(number: int) -> str:
    """A to Z, then A1 to Z1 and so on."""
    again, letter = divmod(number, len(ascii_uppercase))
    return f"{ascii_uppercase[letter]}{again or ''}"
