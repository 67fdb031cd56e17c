"""A made-up book, loaded and asked like any other, and what of its answers is not so in the world it was drawn from."""

from collections import Counter as Tally
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from random import Random
from tempfile import TemporaryDirectory

from bezelbook.pipeline import Counter, open_book
from tests.simulator.book import write_book
from tests.simulator.box_world import World
from tests.simulator.draw_world import draw_world
from tests.simulator.notes import Note
from tests.simulator.questions import Ask, near_the_edge, published
from tests.simulator.regimes import Regime
from tests.simulator.shop_years import notes_of
from tests.simulator.truth import mountings, outcomes

FIRM = ("goes in", "does not")


@dataclass(frozen=True)
class Wrong:
    """A firm answer that is not true, with all that it takes to see why."""

    seed: str
    ask: Ask
    verdict: str
    world: World = field(repr=False)
    notes: tuple[Note, ...] = field(repr=False)


@dataclass(frozen=True)
class Made:
    """A world, its notes, and the book that they make."""

    seed: str
    world: World
    notes: tuple[Note, ...]
    counter: Counter

    def wrong(self, ask: Ask) -> tuple[str, Wrong | None]:
        """The verdict to a question, and what is wrong with it if it is firm and not true."""
        answer = self.counter.ask(ask.plain())
        verdict: str = answer["verdict"]
        true = {verdict} if verdict not in FIRM else outcomes(ask, mountings(self.world, ask, answer["for"]["mounts"]))
        return verdict, None if true == {verdict} else Wrong(self.seed, ask, verdict, self.world, self.notes)


def make(seed: str, regime: Regime, notes: int) -> Made:
    """The book of a seed, always the same."""
    dice = Random(seed)  # noqa: S311 - made-up worlds need no cryptography
    world = draw_world(dice)
    return make_of(seed, world, notes_of(dice, world, regime, notes))


def make_of(seed: str, world: World, notes: Iterable[Note]) -> Made:
    """The book that these notes make; every file of it has to load."""
    told = tuple(notes)
    with TemporaryDirectory() as folder:
        write_book(Path(folder), world, told)
        book = open_book(Path(folder))
    if book.loaded.complaints:
        raise ValueError("\n".join(map(str, book.loaded.complaints)))
    return Made(seed, world, told, Counter(book.base))


def asks(made: Made, near: int) -> Iterator[Ask]:
    """All published questions of a book, and so many made-up bodies for each opening."""
    dice = Random(f"{made.seed} asks")  # noqa: S311 - see above
    for platform in made.world.platforms:
        for opening in platform.openings:
            yield from published(dice, made.world, platform, opening)
            yield from (near_the_edge(dice, made.world, platform, opening) for _ in range(near))


def tried_out(made: Made, near: int) -> tuple[Tally[str], list[Wrong]]:
    """How often each verdict was given, and the firm ones that are wrong."""
    tally: Tally[str] = Tally()
    wrong = []
    for ask in asks(made, near):
        verdict, fault = made.wrong(ask)
        tally[verdict] += 1
        if fault:
            wrong.append(fault)
    return tally, wrong
