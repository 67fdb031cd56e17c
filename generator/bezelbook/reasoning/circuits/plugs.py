"""Which plugs a place has in each build, as far as notes say, and which of those cannot all be true."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from bezelbook.kinds.note.record import AnyNote, Metered, Seen
from bezelbook.reasoning.circuits.cars import Car, cars_of
from bezelbook.reasoning.circuits.said import NOTHING
from bezelbook.reasoning.circuits.wiring import State

_NONE = frozenset({"not there", "none", NOTHING})


@dataclass(frozen=True, slots=True)
class Plug:
    """A plug at a place. `connector` is empty when the book has no record that its words name.

    Known: seen on this build. Said: seen on a car that may have been this build, or lent by a sister platform. Argued
    over: jobs that saw it never saw the others here, nor they it.
    """

    words: str
    connector: str
    state: State
    notes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Plugs:
    """The plugs of one build; known as soon as one is, argued over when they may not all be there."""

    state: State
    plugs: tuple[Plug, ...]

    @property
    def connectors(self) -> tuple[str, ...]:
        """Those of which the book has a record."""
        return tuple(plug.connector for plug in self.plugs if plug.connector)


def plugs_at(car: Car) -> Plugs:
    """What is known of the plugs of one build at a place."""
    return car.once(_plugs_at)


def _plugs_at(car: Car) -> Plugs:
    seen = list(_seen(car))
    sure = _grouped(car, (note for note in seen if car.is_sure(note, "plug")))
    if sure:
        names = [name for name in sure if name not in _NONE]
        if not names:
            return Plugs("not there", ())
        state: State = "known" if len(names) == len(sure) and _together(list(sure.values())) else "argued over"
        return Plugs(state, tuple(_plug(car, name, state, sure[name]) for name in names))
    said = _grouped(car, (note for note in seen if _unexplained(car, note)))
    found = [_plug(car, name, "said", notes) for name, notes in said.items() if name not in _NONE]
    return Plugs("said", tuple(found)) if found else Plugs("not looked", ())


def lent_by_sisters(car: Car) -> Plugs:
    """The plugs that sister platforms are known to have at a place of the same name: told, and no more than that."""
    lent: dict[str, Plug] = {}
    for sister in car.vehicle.sisters:
        vehicle = car.book.vehicles.get(sister)
        for other in cars_of(car.book, vehicle, car.place) if vehicle else ():
            for plug in plugs_at(other).plugs:
                if plug.state == "known":
                    lent[plug.words] = Plug(plug.words, plug.connector, "said", plug.notes)
    return Plugs("said", tuple(lent.values())) if lent else Plugs("not looked", ())


def _seen(car: Car) -> Iterator[AnyNote]:
    return (note for note in car.notes if isinstance(note, Seen | Metered) and note.plug)


def plug_named(car: Car, note: AnyNote) -> str:
    """The connector that a note names, by id, or its own words where the book has none of that name."""
    words = (note.plug if isinstance(note, Seen | Metered) else None) or ""
    found = car.book.named("connector", words)
    return found.id if found else " ".join(words.split())


def _grouped(car: Car, notes: Iterable[AnyNote]) -> dict[str, list[AnyNote]]:
    found: dict[str, list[AnyNote]] = {}
    for note in notes:
        found.setdefault(plug_named(car, note), []).append(note)
    return found


def _unexplained(car: Car, note: AnyNote) -> bool:
    """Whether a note may be of this build, and no other build that it may be of is known to have that plug."""
    if not car.may_be(note, "plug"):
        return False
    name = plug_named(car, note)
    others = (other for other in cars_of(car.book, car.vehicle, car.place) if other.may_be(note, "plug"))
    return not any(
        plug_named(car, one) == name and other.is_sure(one, "plug") for other in others for one in _seen(car)
    )


def _together(groups: list[list[AnyNote]]) -> bool:
    """Whether jobs that saw one of these plugs saw another too, from each to each."""
    reached, left = {0}, [0]
    jobs = [{_job(note) for note in notes} for notes in groups]
    while left:
        here = left.pop()
        near = [other for other in range(len(groups)) if other not in reached and jobs[here] & jobs[other]]
        reached.update(near)
        left += near
    return len(reached) == len(groups)


def _job(note: AnyNote) -> tuple[str | None, ...]:
    return (note.job,) if note.job else (note.author, note.date)


def _plug(car: Car, name: str, state: State, notes: list[AnyNote]) -> Plug:
    record = car.book.connectors.get(name)
    return Plug(record.name if record else name, name if record else "", state, tuple(note.id for note in notes))
