"""How deep an opening was measured to be, ninth by ninth, and what stops a thing there."""

from collections.abc import Mapping
from dataclasses import dataclass

from bezelbook.kinds.note.record import Measured
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.cells import Setting
from bezelbook.reasoning.corners import body_demands
from bezelbook.reasoning.evidence import UNCUT, Standing, refused_reading
from bezelbook.reasoning.mounting import BARE
from bezelbook.reasoning.number import span_words
from bezelbook.reasoning.room import Place, Rooms
from bezelbook.reasoning.room_span import RoomSpan, room_spans
from bezelbook.values.shown import show_inch, show_mm
from bezelbook.values.words import NINTHS, Ninth

# The opening seen from the seat, row by row.
ROWS = (NINTHS[0:3], NINTHS[3:6], NINTHS[6:9])


@dataclass(frozen=True, slots=True)
class Depth:
    """What readings tell of one ninth: its depth lies between two lengths in nanometres, and what stops a thing there.

    `most` is None when no reading tells where it ends.
    """

    ninth: Ninth
    least: int
    most: int | None
    hits: str

    @property
    def measured(self) -> bool:
        """Whether readings tell both ends."""
        return self.most is not None

    def words(self, first: str) -> str:
        """The depth as a person writes it, in both units."""
        return "not looked" if self.most is None else span_words(self.least, self.most, first)

    def both(self, first: str) -> tuple[str, str]:
        """The depth with its ± in the unit that the shop puts first, and without it in the other."""
        if self.most is None:
            return "not looked", ""
        middle, give = (self.least + self.most) // 2, (self.most - self.least) // 2
        units = (show_mm, show_inch) if first == "mm" else (show_inch, show_mm)
        shown, other = (show(middle) for show in units)
        return f"{shown} ± {show_mm(give)}", other


def depths(place: Place, build: Build) -> tuple[Depth, ...]:
    """The nine depths of the bare opening of one build, nothing cut and the loom aside, from the sub-dash face."""
    setting = Setting(build, BARE, UNCUT, "aside", plugs_on=False)
    demands = [demand for demand in body_demands(place, setting) if demand.ninth is not None]
    readings = _readings(place)
    spans = room_spans(readings, setting, demands)
    found = {demand.ninth: span for demand, span in zip(demands, spans, strict=True)}
    stops = _stops(readings, build)
    return tuple(_depth(ninth, found[ninth], stops) for ninth in NINTHS)


def _depth(ninth: Ninth, found: RoomSpan, stops: Mapping[str, str]) -> Depth:
    return Depth(ninth, found.least, found.most, stops.get(ninth, ""))


def _readings(place: Place) -> Rooms:
    """Every reading, also of notes that are argued over; where readings cannot all be true, a set of them that can."""
    every = place.all_notes.measured()
    return every if every.possible else place.accounts[0].measured()


def _stops(readings: Rooms, build: Build) -> Mapping[str, str]:
    """What the readings of a build name as the thing that stops it, by ninth; the shallowest reading's word counts."""
    stopped = [reading for one in readings.notes if build in one.builds for reading in _stopped(one)]
    deepest_first = sorted(stopped, key=lambda one: -one[1])
    return {ninth: hits for ninths, _, hits in deepest_first for ninth in ninths}


def _stopped(one: Standing) -> list[tuple[tuple[str, ...], int, str]]:
    if not isinstance(one.note, Measured) or one.stack is None:
        return []
    return [
        (NINTHS if reading.zones == "all" else reading.zones, reading.reads.base, reading.hits)
        for reading in one.note.readings
        if reading.of == "depth" and reading.hits and refused_reading(reading, one.stack) is None
    ]
