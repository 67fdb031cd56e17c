"""What goes on working when a radio is replaced in one build of a car, function by function, and with which module."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from bezelbook.kinds.module.record import Module
from bezelbook.kinds.note.record import After, AnyNote, Seen, Tried
from bezelbook.kinds.vehicle.record import Subject
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.chain import Chain
from bezelbook.reasoning.circuits.said import functions_said
from bezelbook.values.listed import listed
from bezelbook.values.words import FUNCTIONS, STRONG, Function

# Another plug is another adapter, and what is kept goes by way of that.
BEARS: tuple[Subject, ...] = ("kept", "plug")
Goes = Literal["kept", "kept with a module", "partly", "lost", "argued over", "not looked"]


@dataclass(frozen=True, slots=True)
class Kept:
    """One function: argued over is taken as lost until somebody settles it; a blank is not looked and no promise."""

    function: Function
    goes: Goes
    words: str
    notes: tuple[str, ...] = ()

    @property
    def until_settled(self) -> str:
        """What to tell a customer while it is argued over; empty when it is not."""
        return "lost" if self.goes == "argued over" else ""

    @property
    def said(self) -> str:
        """What becomes of it and why, without saying it twice."""
        if self.goes == "not looked" and not self.notes:
            return "not looked"
        return self.words if self.words.startswith(self.goes.split()[0]) else f"{self.goes}: {self.words}"


def kept_and_lost(chain: Chain) -> tuple[Kept, ...]:
    """Every function of a car, what becomes of it with the pieces of this chain, and who says so."""
    return tuple(_kept(chain, function) for function in FUNCTIONS)


def _kept(chain: Chain, function: Function) -> Kept:
    car = chain.car
    kept = list(_notes(car, function, "kept", sure=True))
    lost = list(_notes(car, function, "lost", sure=True))
    if kept and lost:
        return Kept(function, "argued over", "some kept it and some lost it in this build", _ids([*kept, *lost]))
    if lost:
        return Kept(function, "lost", "lost in this build", _ids(lost))
    if kept:
        boxes = listed(_modules(car, kept), "or")
        words = f"kept, with the {boxes} fitted" if boxes else "kept in this build"
        return Kept(function, "kept with a module" if boxes else "kept", words, _ids(kept))
    open_ = list(_notes(car, function, "lost", sure=False))
    if open_:
        return Kept(function, "lost", "lost on a car that may have been this build: count on no more", _ids(open_))
    return _printed(chain, function) or _through_the_radio(car, function) or _hearsay(car, function)


def _notes(car: Car, function: Function, field: str, *, sure: bool) -> Iterator[AnyNote]:
    """The notes that count and say this of a function, on this build alone or on a car that may have been it."""
    for note in car.notes:
        if isinstance(note, After) or (isinstance(note, Tried) and note.sure in STRONG):
            named = {one for words in getattr(note, field) for one in functions_said(words)}
            if function in named and car.may_be(note, *BEARS) and car.is_alone(note, *BEARS) is sure:
                yield note


def _ids(notes: list[AnyNote]) -> tuple[str, ...]:
    return tuple(note.id for note in notes)


def _modules(car: Car, notes: list[AnyNote]) -> list[str]:
    """The modules that these notes name, by the names of their records."""
    named = (words for note in notes if isinstance(note, After | Tried) for words in note.adapters)
    found = (car.book.named("module", words) for words in named)
    return list(dict.fromkeys(one.name for one in found if isinstance(one, Module)))


def _printed(chain: Chain, function: Function) -> Kept | None:
    """What a module of the chain is sold as keeping."""
    modules = [one.record for one in chain.pieces if isinstance(one.record, Module)]
    for module in modules:
        says = module.keeps.get(function)
        if says in ("kept", "partly", "lost"):
            goes: Goes = "kept with a module" if says == "kept" else "partly" if says == "partly" else "lost"
            return Kept(function, goes, f"{says} with the {module.name}, as printed; nobody here has tried")
    return None


def _through_the_radio(car: Car, function: Function) -> Kept | None:
    """A sound that was seen to go through the radio goes with it, unless somebody shows that it does not."""
    seen = [
        note
        for note in car.everywhere
        if isinstance(note, Seen) and function in note.sound_paths and car.may_be(note, *BEARS)
    ]
    words = "goes through the radio or its speakers, and no module here is said to keep it"
    return Kept(function, "lost", words, _ids(list(seen))) if seen else None


def _hearsay(car: Car, function: Function) -> Kept:
    maybe = list(_notes(car, function, "kept", sure=False))
    words = "kept on a car that may have been another build" if maybe else "not looked: ask at the write-back"
    return Kept(function, "not looked", words, _ids(maybe))
