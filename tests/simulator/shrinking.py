"""The smallest set of notes that makes a wrong answer, and what a person has to read to see why."""

from collections.abc import Iterator
from dataclasses import replace

from bezelbook.store.yaml_out import to_yaml
from tests.simulator.book import records
from tests.simulator.box_world import Unit
from tests.simulator.counter import Wrong, make_of
from tests.simulator.doors.questions import DoorAsk
from tests.simulator.doors.world import Foam, Ring, Speaker


def shrunk(wrong: Wrong) -> Wrong:
    """The same wrong answer from as few of its notes as dropping one after the other leaves."""
    kept = wrong.notes
    for note in wrong.notes:
        fewer = tuple(other for other in kept if other is not note)
        made = make_of(wrong.seed, wrong.world, fewer)
        verdict, mounts = made.settled(wrong.ask)
        if verdict == wrong.verdict and made.wrong(wrong.ask, verdict, mounts):
            kept = fewer
    return replace(wrong, notes=kept)


def told(wrong: Wrong) -> Iterator[str]:
    """The question, the answer, the true rooms, and the files that bear on it."""
    ask = wrong.ask
    yield f"book {wrong.seed}: {wrong.verdict}, which is not so, to {ask.plain()}"
    for note in wrong.notes:
        yield f"# {note.name}{f' ({note.false})' if note.false else ''}\n{to_yaml(note.content)}"
    words = " ".join(str(note.content) for note in wrong.notes) + str(ask.plain())
    for path, record in records(wrong.world):
        name = path.rpartition("/")[2].removesuffix(".yaml")
        if name in words or name == "shop":
            yield f"# {path}\n{to_yaml(record)}"
    things: tuple[Unit | Speaker | Ring | Foam, ...] = (
        *wrong.world.units,
        *wrong.world.speakers,
        *wrong.world.rings,
        *wrong.world.foams,
    )
    yield from (f"truly {replace(thing, says=None)}" for thing in things if thing.name in words)
    rooms = ask.platform.door(ask.place).rooms if isinstance(ask, DoorAsk) else ask.platform.opening(ask.place).rooms
    for state, room in rooms.items():
        yield f"truly {state}: {room}"
