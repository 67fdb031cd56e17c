"""What the page of a thing says of how many jobs lose and want of it."""

from dataclasses import dataclass

from bezelbook.kinds.stock.record import Stock
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import Links
from bezelbook.publish.counts.clip_words import shelf_words
from bezelbook.publish.counts.ready import ReadyPart, ready_parts
from bezelbook.publish.wording import counted
from bezelbook.reasoning.counts.fixing import is_clip
from bezelbook.reasoning.counts.lost import Tally, standing, tallies
from bezelbook.reasoning.counts.order_quantity import order_quantity
from bezelbook.reasoning.counts.shelf import is_fresh, shelf
from bezelbook.reasoning.counts.to_come import Wanted, wanted

COMING = (5, 10, 20, 40)


@dataclass(frozen=True, slots=True)
class WantRow:
    """What one job to come wants of the thing."""

    job: str
    at: str
    words: str


@dataclass(frozen=True, slots=True)
class ThingPart:
    """What jobs lose and want of one thing; `table` has for so many handled the number to have ready, for a clip."""

    shelf: str
    past: str
    table: tuple[tuple[int, int], ...]
    jobs: tuple[WantRow, ...]


class Things:
    """What all jobs of a book lost, and what those to come want, worked out once for all its pages."""

    def __init__(self, book: KnowledgeBase, today: str) -> None:
        self._book, self._today = book, today
        self._everywhere = tallies(book, standing(book))
        self._wanted = wanted(book, self._everywhere, today)

    def part(self, thing: str, to: Links) -> ThingPart | None:
        """What is known of how many of a thing are wanted; None where nothing is."""
        lies = shelf(self._book, thing, self._today)
        jobs = self.wanted(thing, to)
        clip = thing in self._book.supplies and is_clip(self._book, thing)
        if lies.count is None and not jobs and not clip:
            return None
        past, table = self._lost(thing) if clip else ("", ())
        return ThingPart(shelf_words(lies), past, table, jobs)

    def wanted(self, thing: str, to: Links) -> tuple[WantRow, ...]:
        """The jobs to come that want a thing."""
        return tuple(_row(one, to) for one in self._wanted.get(thing, ()))

    def ready(self, vehicle: Vehicle, to: Links) -> tuple[ReadyPart, ...]:
        """What to have ready for a job at each place of a vehicle."""
        return ready_parts(self._book, vehicle, self._everywhere, to, self._today)

    def fresh(self, stock: Stock) -> bool:
        """Whether a place on the shelf was counted lately enough to be believed."""
        return stock.counted_on is not None and is_fresh(stock.counted_on, self._today)

    def _lost(self, thing: str) -> tuple[str, tuple[tuple[int, int], ...]]:
        return _lost(self._everywhere.get(thing, Tally()), single=self._book.supplies[thing].single_use == "single use")


def _lost(past: Tally, *, single: bool) -> tuple[str, tuple[tuple[int, int], ...]]:
    said = (
        f"{past.lost} of {past.handled} lost in {counted(past.witnesses, 'job')}."
        if past.jobs
        else "No job wrote back."
    )
    if single:
        return f"{said} Single use: as many new ones as come off.", ()
    thin = "Thin: " if past.thin else ""
    return thin + said, tuple((coming, order_quantity(past.lost, past.handled, coming)) for coming in COMING)


def _row(one: Wanted, to: Links) -> WantRow:
    count = "how many is not known" if one.count is None else f"have {one.count} ready"
    day = f"{one.job.day}: " if one.job.day else "no day yet: "
    return WantRow(one.job.tag, to.record("job", one.job.id), f"{day}{count}, {one.why}")
