"""A made-up book, loaded and asked like any other, and what of its answers is not so in the world it was drawn from."""

from collections import Counter as Tally
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from itertools import chain
from pathlib import Path
from random import Random
from tempfile import TemporaryDirectory

from bezelbook.finding import Finding
from bezelbook.pipeline import Counter, open_book
from bezelbook.reasoning.answer import place_of
from bezelbook.reasoning.asking import read_question
from bezelbook.reasoning.question import Question, asked
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.speakers import question as speaker_question
from bezelbook.reasoning.speakers import verdict as speaker_verdict
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.speakers.rooms import SpeakerPlace, speaker_place_of
from bezelbook.reasoning.verdict import settled, viable
from tests.simulator.book import write_book
from tests.simulator.box_world import World
from tests.simulator.doors import questions as doors
from tests.simulator.doors import truth as door_truth
from tests.simulator.doors.questions import DoorAsk
from tests.simulator.doors.seen import least_front
from tests.simulator.draw_world import draw_world
from tests.simulator.notes import Note
from tests.simulator.questions import Ask, near_the_edge, published
from tests.simulator.regimes import Regime
from tests.simulator.shop_years import notes_of
from tests.simulator.truth import mountings, outcomes

FIRM = ("goes in", "does not")
SETTLED = (*FIRM, "argued over")
Draw = Callable[[Random], World]


@dataclass(frozen=True)
class Wrong:
    """A firm answer that is not true, with all that it takes to see why."""

    seed: str
    ask: Ask | DoorAsk
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
    findings: tuple[Finding, ...] = field(default=(), repr=False)

    @cached_property
    def _openings(self) -> dict[tuple[str, str], Place]:
        return {}

    @cached_property
    def _doors(self) -> dict[tuple[str, str], SpeakerPlace]:
        return {}

    def in_full(self, ask: Ask | DoorAsk) -> tuple[str, list[list[str]]]:
        """The verdict in the whole answer to a question, and the mountings that it speaks of."""
        answer = self.counter.ask(ask.plain())
        return answer["verdict"], answer["for"]["mounts"]

    def settled(self, ask: Ask | DoorAsk) -> tuple[str | None, list[list[str]]]:
        """The same, as far as the notes settle it: None is any verdict but a firm one and one that is argued over."""
        question = read_question(self.counter.base, ask.plain()).read
        if isinstance(question, SpeakerQuestion):
            return self._at_a_door(question)
        if not isinstance(question, Question):
            raise TypeError(f"plain data is never asked back about: {question}")
        key = (question.vehicle, question.place)
        if key not in self._openings:
            self._openings[key] = place_of(self.counter.base, *key)
        place = self._openings[key]
        resolved = viable(place, asked(place.frame, place.evidence, question))
        return settled(place, resolved), [list(stack.key) for stack in resolved.stacks]

    def _at_a_door(self, question: SpeakerQuestion) -> tuple[str | None, list[list[str]]]:
        key = (question.vehicle, question.place)
        if key not in self._doors:
            self._doors[key] = speaker_place_of(self.counter.base, *key)
        place = self._doors[key]
        resolved = speaker_verdict.viable(place, speaker_question.asked(place, question))
        return speaker_verdict.settled(place, resolved), [list(stack.mounts) for stack in resolved.stacks]

    def wrong(self, ask: Ask | DoorAsk, verdict: str | None, mounts: list[list[str]]) -> Wrong | None:
        """What is wrong with a verdict, if it is firm and not true."""
        if verdict not in FIRM or truly(self.world, self.notes, ask, mounts) == {verdict}:
            return None
        return Wrong(self.seed, ask, verdict, self.world, self.notes)


def truly(world: World, notes: Sequence[Note], ask: Ask | DoorAsk, mounts: list[list[str]]) -> set[str]:
    """What can come of it in truth, for these mountings where the question names none, given what the shop saw."""
    if isinstance(ask, DoorAsk):
        seen = least_front(world, notes, ask.platform, ask.place, ask.speaker.name) if ask.speaker else None
        return door_truth.outcomes(ask, door_truth.mountings(world, ask, mounts), seen)
    return outcomes(ask, mountings(world, ask, mounts))


def make(seed: str, regime: Regime, notes: int, draw: Draw = draw_world) -> Made:
    """The book of a seed, always the same."""
    dice = Random(seed)
    world = draw(dice)
    return make_of(seed, world, notes_of(dice, world, regime, notes))


def make_of(seed: str, world: World, notes: Iterable[Note]) -> Made:
    """The book that these notes make; every file of it has to load."""
    told = tuple(notes)
    with TemporaryDirectory() as folder:
        write_book(Path(folder), world, told)
        book = open_book(Path(folder))
    if book.loaded.complaints:
        raise ValueError("\n".join(map(str, book.loaded.complaints)))
    return Made(seed, world, told, Counter(book.base), book.findings)


def asks(made: Made, near: int) -> Iterator[Ask | DoorAsk]:
    """All published questions of a book, and so many made-up bodies for each place."""
    dice, world = Random(f"{made.seed} asks"), made.world
    for platform in world.platforms:
        for opening in platform.openings:
            beside = (near_the_edge(dice, world, platform, opening) for _ in range(near))
            yield from chain(published(dice, world, platform, opening), beside)
        for door in platform.doors:
            by_the_door = (doors.near_the_edge(dice, world, platform, door) for _ in range(near))
            yield from chain(doors.published(dice, world, platform, door), by_the_door)


def tried_out(made: Made, near: int, whole: int) -> tuple[Tally[str], list[Wrong]]:
    """How often each verdict was given, and the firm ones that are wrong; each `whole`th is answered in full too."""
    tally: Tally[str] = Tally()
    wrong = []
    for number, ask in enumerate(asks(made, near)):
        verdict, mounts = made.settled(ask)
        tally[verdict or "open"] += 1
        fault = made.wrong(ask, verdict, mounts)
        if fault:
            wrong.append(fault)
        if number % whole == whole - 1:
            same_in_full(made, ask, verdict, mounts)
    return tally, wrong


def same_in_full(made: Made, ask: Ask | DoorAsk, verdict: str | None, mounts: list[list[str]]) -> None:
    """What is said at the counter is what was settled."""
    said, about = made.in_full(ask)
    if (said if said in SETTLED else None, about) != (verdict, mounts):
        raise ValueError(f"{made.seed}: {said} about {about} in full, {verdict} about {mounts} in short: {ask.plain()}")
