"""Which pieces of wiring a job takes in one build of a car, what becomes of every circuit, and what it hangs on."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.jobs import Job, Task, tasks
from bezelbook.reasoning.circuits.outcome import Feed, Outcome
from bezelbook.reasoning.circuits.pieces import Candidate, candidates
from bezelbook.reasoning.circuits.plugs import Plugs, lent_by_sisters, plugs_at
from bezelbook.reasoning.circuits.search import best_chain
from bezelbook.reasoning.circuits.wiring import FED, Need, Piece
from bezelbook.values.words import SURENESSES, Sureness

Verdict = Literal["complete", "complete if", "not complete", "nothing mates", "plug not looked"]


@dataclass(frozen=True)
class Chain:
    """The cheapest pieces for a job in one build, and what comes of them.

    Complete: everything that must be fed is, and that is known. Complete if: it is, once somebody has looked. Not
    complete: something that must be fed is not. The last two verdicts: no piece of the book goes into the plug; nobody
    has looked which plug it is.
    """

    car: Car
    job: Job
    plugs: Plugs
    task: Task | None
    pieces: tuple[Candidate, ...]
    outcome: Outcome | None

    @property
    def verdict(self) -> Verdict:
        """What the chain comes to."""
        if self.outcome is None:
            return "plug not looked"
        must = [self.outcome.feeds[need].state for need in self.outcome.feeds if need.must and not self.is_idle(need)]
        if not self.pieces and any(state not in FED for state in must):
            return "nothing mates"
        if any(state not in FED for state in must):
            return "not complete"
        known = self.plugs.state == "known" and all(state == "known" for state in must)
        return "complete" if known and not _asleep(self.outcome.feeds) else "complete if"

    def is_idle(self, need: Need) -> bool:
        """Whether a need asks for nothing: there is nothing there that would have to stay whole."""
        return need.kind == "through" and self.outcome is not None and self.outcome.feeds[need].state == "not there"

    @property
    def sure(self) -> Sureness | None:
        """How sure it is: as its weakest piece; a piece that nobody fitted in this build is worked out."""
        if not self.pieces:
            return None
        each: list[Sureness] = [one.suit.used.sure or "worked out" for one in self.pieces]
        return max(each, key=SURENESSES.index)


def chain(car: Car, job: Job) -> Chain:
    """The cheapest chain for a job at a place, in one build."""
    plugs = plugs_at(car)
    if not plugs.connectors:
        # What a sister lends is named, and nothing is built on it.
        return Chain(car, job, lent_by_sisters(car) if plugs.state == "not looked" else plugs, None, (), None)
    found = [_done(car, job, plugs, task) for task in tasks(car, job, plugs.connectors, _pieces(candidates(car)))]
    return min(found, key=lambda one: one.outcome.cost if one.outcome else ())


def _asleep(feeds: Mapping[Need, Feed]) -> bool:
    """Whether an amplifier that gets its sound from the new radio has nothing that is known to wake it."""
    waking = [feed for need, feed in feeds.items() if (need.circuit, need.kind) == ("amplifier turn-on", "feed")]
    return any(feed.state != "known" for feed in waking)


def _done(car: Car, job: Job, plugs: Plugs, task: Task) -> Chain:
    every = {one.piece.name: one for one in candidates(car, task.closing)}
    names, outcome = best_chain(task.site, task.needs, _pieces(tuple(every.values())))
    return Chain(car, job, plugs, task, tuple(every[name] for name in names), outcome)


def _pieces(found: tuple[Candidate, ...]) -> list[Piece]:
    return [one.piece for one in found]
