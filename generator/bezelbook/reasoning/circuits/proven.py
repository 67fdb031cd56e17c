"""Which pieces of wiring were used in a build of a car, and what came of it."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from bezelbook.kinds.note.record import After, Tried
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.said import functions_said, strong
from bezelbook.reasoning.circuits.wiring import SPEAKERS
from bezelbook.values.words import Circuit, Function, Sureness

JobNote = Tried | After


@dataclass(frozen=True, slots=True)
class Used:
    """What notes say of one piece in one build: how sure the strongest is, and which notes they are.

    `failed` has the notes in which it went in and the circuits were not right, `maybe` those of cars that may have been
    another build, `heard` the circuits that the jobs showed to be there.
    """

    sure: Sureness | None
    notes: tuple[str, ...]
    failed: tuple[str, ...]
    maybe: tuple[str, ...]
    heard: frozenset[Circuit] = frozenset()


NEVER = Used(None, (), (), ())

# A radio that played showed that these were there. That there are rears shows when somebody fades to them, the rest
# when what hangs on it was tried.
PLAYED: frozenset[Circuit] = frozenset({"constant", "ground", "accessory", *SPEAKERS[:4]})
TRIED: Mapping[Function, frozenset[Circuit]] = {
    "fader": frozenset(SPEAKERS),
    "camera": frozenset({"camera", "camera supply"}),
    "wheel buttons": frozenset({"wheel buttons"}),
    "microphone": frozenset({"microphone"}),
    "USB": frozenset({"USB"}),
}


def proven(car: Car) -> Mapping[tuple[str, str], Used]:
    """By kind and id, every adapter and module that a strong note names as used in this build at this place."""
    return car.once(_proven)


def _proven(car: Car) -> Mapping[tuple[str, str], Used]:
    sure: dict[tuple[str, str], list[JobNote]] = {}
    maybe: dict[tuple[str, str], list[JobNote]] = {}
    for note in car.notes:
        if isinstance(note, Tried | After) and strong(note) and car.may_be(note, "circuits"):
            found = sure if car.is_alone(note, "circuits") else maybe
            for key in _named(car, note):
                found.setdefault(key, []).append(note)
    return {key: _used(sure.get(key, []), maybe.get(key, [])) for key in [*sure, *maybe]}


def _named(car: Car, note: JobNote) -> Iterator[tuple[str, str]]:
    for words in note.adapters:
        for kind in ("adapter", "module"):
            record = car.book.named(kind, words)
            if record:
                yield kind, record.id


def _used(notes: list[JobNote], maybe: list[JobNote]) -> Used:
    failed = [note for note in notes if _failed(note)]
    good = [note for note in notes if not _says_no(note)]
    fitted = any(isinstance(note, After) or note.sure == "fitted" for note in good)
    sure: Sureness | None = "fitted" if fitted else "dry-fitted" if good else None
    ids = tuple(note.id for note in maybe if not _says_no(note))
    return Used(sure, tuple(note.id for note in good), tuple(note.id for note in failed), ids, _heard(good))


def _heard(good: list[JobNote]) -> frozenset[Circuit]:
    kept = {one for note in good for words in note.kept for one in functions_said(words)}
    shown = (TRIED.get(one, frozenset()) for one in kept)
    return PLAYED.union(*shown) if good else frozenset()


def _says_no(note: JobNote) -> bool:
    """Whether the thing did not go in, so that its wiring was never tried."""
    return isinstance(note, Tried) and note.verdict in ("does not", "not tried")


def _failed(note: JobNote) -> bool:
    return _says_no(note) and isinstance(note, Tried) and note.reason == "circuit"
