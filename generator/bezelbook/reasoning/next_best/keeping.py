"""Whether the radio that is in a car can stay and be built on: from where the sound is taken, and what that lacks."""

from collections.abc import Iterator, Mapping, Sequence

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.circuits.cars import Car, cars_of
from bezelbook.reasoning.circuits.chain import Chain, chain
from bezelbook.reasoning.circuits.jobs import Job
from bezelbook.reasoning.circuits.wiring import FED, Need
from bezelbook.reasoning.next_best.buying import to_buy
from bezelbook.reasoning.offer import Offer
from bezelbook.values.listed import listed
from bezelbook.values.words import SURENESSES

KEEP = Job("keep it and amplify")


def keeping(book: KnowledgeBase, vehicle: str, place: str, splits: Mapping[str, str]) -> Offer | None:
    """Keeping the radio and adding an amplifier, where the book has a way into its sound; None where it has none.

    With the build open it takes a build in which that is so, and the offer says which.
    """
    found = [chain(car, KEEP) for car in cars_of(book, book.vehicles[vehicle], place, splits)]
    ways = [one for one in found if one.pieces]
    if not ways:
        return None
    pieces = {tuple(piece.record.id for piece in one.pieces): one for one in ways}
    lacks = [*_builds(ways, len(found)), *_missing(ways)]
    return Offer(
        "keep the radio",
        "keep the radio that is in it, and amplify",
        None,
        place,
        (),
        "goes in if" if lacks else "goes in",
        listed(lacks) if lacks else "",
        max((one.sure for one in ways if one.sure), key=SURENESSES.index),
        0,
        (*_pieces(ways), "an amplifier"),
        to_buy(book, next(iter(pieces))) if len(pieces) == 1 else (),
    )


def _pieces(ways: Sequence[Chain]) -> Iterator[str]:
    """What the builds that are left take; which build takes which, where they do not take the same."""
    by_name: dict[str, list[str]] = {}
    for one in ways:
        by_name.setdefault(listed([piece.record.name for piece in one.pieces]), []).append(_build(one.car))
    for names, builds in by_name.items():
        yield names if len(by_name) == 1 else f"{listed(builds, 'or')}: {names}"


def _builds(ways: Sequence[Chain], cars: int) -> Iterator[str]:
    if len(ways) < cars:
        yield f"the car is {listed([_build(one.car) for one in ways], 'or')}"


def _build(car: Car) -> str:
    return " ".join(value for _, value in car.build)


def _missing(ways: Sequence[Chain]) -> Iterator[str]:
    """What must be found elsewhere, or that somebody has to look at the wiring first."""
    unfed = [need.circuit for one in ways for need in _unfed(one)]
    if unfed:
        yield f"{listed(list(dict.fromkeys(unfed)))} is found elsewhere"
    if any(one.verdict == "complete if" for one in ways):
        yield "somebody looks at its wiring first"


def _unfed(one: Chain) -> Iterator[Need]:
    feeds = one.outcome.feeds if one.outcome else {}
    yield from (need for need, feed in feeds.items() if need.must and feed.state not in FED and not one.is_idle(need))
