"""Whether a factory amplifier sits behind the speaker leads of a build, as far as anybody looked."""

from dataclasses import dataclass

from bezelbook.kinds.note.record import Seen
from bezelbook.reasoning.builds import bearing_axes
from bezelbook.reasoning.circuits.cars import Car, tells
from bezelbook.reasoning.circuits.wiring import State
from bezelbook.reasoning.unknowns import Missing


@dataclass(frozen=True, slots=True)
class FactoryAmplifier:
    """Known: one is there. Argued over: some saw one and some saw none. `where` is empty when nobody wrote it."""

    state: State
    where: str
    notes: tuple[str, ...]


def factory_amplifier(car: Car) -> FactoryAmplifier:
    """What was seen on cars of this build and of no other, at whatever place of the vehicle."""
    notes = [note for note in car.everywhere if isinstance(note, Seen) and car.is_sure(note, "amplifier")]
    there = [note for note in notes if note.amplifier == "there"]
    absent = [note for note in notes if note.amplifier == "not there"]
    state: State = "argued over" if there and absent else "known" if there else "not there" if absent else "not looked"
    where = next((note.amplifier_where or _place(car, note.place) for note in there), "")
    return FactoryAmplifier(state, where, tuple(note.id for note in (*there, *absent)))


def _place(car: Car, place: str) -> str:
    record = car.vehicle.places.get(place)
    return (record.name if record else None) or place.replace("-", " ")


def amplifier_look(car: Car) -> Missing | None:
    """What to look at before a radio is replaced; None where somebody looked and there is no amplifier."""
    found = factory_amplifier(car)
    if found.state == "not there":
        return None
    if found.state == "known":
        return Missing(
            f"a factory amplifier is there ({found.where}), and the speaker leads go to it",
            "meter at its plug which level it takes and what wakes it, 10 min; or run leads round it",
            "no sound, or the wrong level",
        )
    axes = bearing_axes(car.vehicle, car.place, "amplifier")
    seat = f"; from the seat: {tells(car.vehicle, axes)}" if axes else ""
    what = "whether a factory amplifier sits behind the speaker leads"
    return Missing(
        f"{what} is argued over" if found.state == "argued over" else what,
        f"look under the seats and behind the linings, 5 min{seat}",
        "no sound, if there is one and nothing wakes it",
    )
