"""What is offered instead of a wish, against trying every unit, mount and place of small made-up books one by one."""

from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from random import Random
from typing import Any

import pytest

from bezelbook.kinds.record import Record
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.answer import Answer, answer, place_of
from bezelbook.reasoning.next_best.desk import Desk
from bezelbook.reasoning.offer import Offer
from bezelbook.reasoning.question import Question
from tests.reasoning import making

BOOKS = 25
PLACES = ("dash", "pocket")
UNITS, KITS = ("u1", "u2", "u3", "u4", "u5"), ("flush", "proud")
SURE = ("fitted", "dry-fitted", "measured", "eyeballed", "told", "worked out", None)


def book_of(dice: Random) -> KnowledgeBase:
    """Two openings, five units of two sizes, two kits, and some notes of what went in and what did not."""
    here = [{"vehicle": making.CAR, "place": place} for place in PLACES]
    split = {"build": making.split("early", "late")}
    places = {place: {"kind": "plain opening", "side": "centre"} for place in PLACES}
    records: list[Record] = [
        making.vehicle(places=places, splits=split),
        making.mount("flush", made_for=here),
        making.mount("proud", proud="25 ± 1 mm caliper", made_for=here[: dice.randint(0, 2)]),
    ]
    for unit in UNITS:
        size = {
            "body_depth": f"{dice.randint(80, 200)} ± 1 mm caliper",
            "size_class": dice.choice(("single", "double")),
        }
        records.append(making.unit(unit, **size))
    records += [note_of(dice, f"note-{number}") for number in range(dice.randint(2, 6))]
    for thing in dice.sample((*UNITS, *KITS), 3):
        stock = {"thing": thing, "count": dice.randint(0, 2), "place": "wall"}
        records.append(making.record("shelf", f"{thing}-here", stock))
    return making.book(*records)


def note_of(dice: Random, name: str) -> Record:
    said: dict[str, Any] = {
        "place": dice.choice(PLACES),
        "splits": dice.choice(({}, {"build": "early"}, {"build": "late"})),
    }
    if dice.random() < 0.2:
        return making.measured(name, making.reading("depth", f"{dice.randint(120, 260)} ± 2 mm"), **said)
    no = {"verdict": "does not", "reason": "depth"} if dice.random() < 0.4 else {}
    sure = dice.choice(("fitted", "dry-fitted"))
    return making.tried(name, what=dice.choice(UNITS), mounts=[dice.choice(KITS)], sure=sure, job=name, **no, **said)


@dataclass(frozen=True)
class Could:
    """Something that could be said instead, as the engine answers it when it is asked outright."""

    kind: str
    what: str | None
    place: str
    found: Answer

    @property
    def firm(self) -> bool:
        return self.found.verdict == "goes in"

    @property
    def offered(self) -> bool:
        return self.firm or (self.found.verdict == "goes in if" and self.found.witnesses > 0)

    def worth(self, book: KnowledgeBase, wish: str) -> tuple[bool, int, int]:
        """Surest first, then the least to buy: what is fitted and, where one way alone is left, its mounts."""
        stacks = self.found.asked.stacks
        things = {self.what or wish, *(stacks[0].key if len(stacks) == 1 else ())}
        lies = {stock.thing for stock in book.shelf.values() if stock.count}
        return not self.firm, SURE.index(self.found.sure), len(things - lies)


Ask = Callable[[Question], Answer]


def asker(book: KnowledgeBase) -> Ask:
    """The engine's plain answers, each place made ready once."""
    ready = {place: place_of(book, making.CAR, place) for place in PLACES}
    return lambda question: answer(book, question, ready[question.place])


def everything(book: KnowledgeBase, wish: Question, ask: Ask) -> Iterator[Could]:
    """Every other unit here, the same one with every other mount that is usual here, and in the other opening."""
    for unit in UNITS:
        if unit != wish.unit:
            alike = book.head_units[unit].size_class == book.head_units[str(wish.unit)].size_class
            kind = "another of its size" if alike else "of another size"
            other = Question(wish.vehicle, wish.place, wish.splits, mounts=wish.mounts, unit=unit)
            yield Could(kind, unit, wish.place, ask(other))
    for place in PLACES:
        if place != wish.place:
            there = Question(wish.vehicle, place, wish.splits, unit=wish.unit)
            yield Could("another place", None, place, ask(there))
    for kit in KITS if wish.mounts else ():
        made = any(use.place == wish.place for use in book.mounts[kit].made_for)
        seen = any(kit in (getattr(note, "mounts", None) or ()) for note in book.notes_at(wish.vehicle, wish.place))
        if (kit,) != wish.mounts and (made or seen):
            with_it = Question(wish.vehicle, wish.place, wish.splits, mounts=(kit,), unit=wish.unit)
            yield Could("another mount", None, wish.place, ask(with_it))


def wishes() -> Iterator[Question]:
    for place in PLACES:
        for splits in ({}, {"build": "late"}):
            for mounts in (None, ("flush",)):
                for unit in UNITS[:2]:
                    yield Question(making.CAR, place, splits, mounts=mounts, unit=unit)


@pytest.mark.parametrize("seed", range(BOOKS))
def test_every_offer_holds_when_it_is_asked_outright_and_nothing_better_is_left_out(seed: int) -> None:
    book = book_of(Random(seed))  # noqa: S311 - made-up books need no cryptography
    desk, ask = Desk(book), asker(book)
    for wish in wishes():
        found = desk.opening(wish)
        if found.verdict in ("goes in", "goes in if"):
            assert found.instead == ()
            continue
        could = {
            (one.kind, one.what, one.place, one.found.asked.stacks): one
            for one in everything(book, wish, ask)
            if one.offered
        }
        by_kind: dict[str, list[Could]] = {}
        for one in could.values():
            by_kind.setdefault(one.kind, []).append(one)
        assert {offer.kind for offer in found.instead} == set(by_kind)
        for kind, ones in by_kind.items():
            offered = [offer for offer in found.instead if offer.kind == kind]
            best = sorted(one.worth(book, str(wish.unit)) for one in ones)[:3]
            assert [(one.verdict != "goes in", SURE.index(one.sure), len(one.buy)) for one in offered] == best
        assert all(holds(wish, offer, ask) for offer in found.instead)


def holds(wish: Question, offer: Offer, ask: Ask) -> bool:
    """Whether what is offered is answered so when somebody asks for just that."""
    here = offer.place == wish.place
    mounts = offer.mounts or (wish.mounts if here else None)
    again = Question(wish.vehicle, offer.place, wish.splits, mounts=mounts, unit=offer.thing or wish.unit)
    return ask(again).verdict == offer.verdict


def test_these_books_offer_much_and_of_every_kind() -> None:
    kinds: Counter[str] = Counter()
    for seed in range(BOOKS):
        desk = Desk(book_of(Random(seed)))  # noqa: S311 - made-up books need no cryptography
        kinds.update(f"{offer.kind}, {offer.verdict}" for wish in wishes() for offer in desk.opening(wish).instead)
    assert len(kinds) >= 6, kinds
    assert kinds.total() > BOOKS
