"""Whether a kept factory amplifier wants a load resistor in the place of a speaker, and of which proven value."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

from bezelbook.kinds.note.fitting import LoadResistor
from bezelbook.kinds.note.record import After
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.electric.package import package_of, packages
from bezelbook.reasoning.evidence import unreplaced, witnesses
from bezelbook.reasoning.unknowns import Missing

Says = Literal["needs it", "not needed", "argued over", "unknown"]
WORKS, FAILS = "works", ("muted", "hiss", "shuts off")
TEST = Missing(
    "whether this package wants a load resistor, and of how many ohms",
    "ten minutes on the bench or in the bay with the speaker off: with a resistor, and without",
    "a muted amplifier, or resistors bought for nothing",
)


@dataclass(frozen=True, slots=True)
class Proof:
    """One resistor of one job, with what happened; `shows` is what it proves, or why it proves nothing."""

    note: After
    resistor: LoadResistor
    shows: str


@dataclass(frozen=True, slots=True)
class ResistorRule:
    """What is proven for one audio package; `until_settled` is what to do while it is argued over, else empty.

    `proven` hold the values that somebody tried with and without on that package; no other value is ever offered.
    """

    package: Build
    says: Says
    until_settled: str
    proven: tuple[Proof, ...]
    against: tuple[Proof, ...]
    beside: tuple[Proof, ...]
    witnesses: int
    missing: tuple[Missing, ...]


def resistor_rules(book: KnowledgeBase, vehicle: Vehicle) -> tuple[ResistorRule, ...]:
    """What is proven for each audio package of a vehicle, in its own order."""
    found = [(package, proof) for package, proof in _proofs(book, vehicle)]
    loose = [proof for package, proof in found if package is None]
    return tuple(_rule(package, [one for at, one in found if at == package], loose) for package in packages(vehicle))


def _rule(package: Build, proofs: Sequence[Proof], loose: Sequence[Proof]) -> ResistorRule:
    needs = tuple(one for one in proofs if one.shows == "needs it")
    without = tuple(one for one in proofs if one.shows == "not needed")
    beside = tuple(one for one in (*proofs, *loose) if one not in needs and one not in without)
    says, until = _says(needs=bool(needs), without=bool(without))
    jobs = witnesses(one.note for one in (*needs, *without))
    return ResistorRule(package, says, until, needs, without, beside, jobs, (TEST,) if says == "unknown" else ())


def _says(*, needs: bool, without: bool) -> tuple[Says, str]:
    if needs and without:
        return "argued over", "needs it"
    if needs:
        return "needs it", ""
    return ("not needed", "") if without else ("unknown", "")


def _proofs(book: KnowledgeBase, vehicle: Vehicle) -> Iterator[tuple[Build | None, Proof]]:
    for note in unreplaced(note for note in book.notes_of(vehicle.id) if isinstance(note, After)):
        package = package_of(vehicle, note.splits, note.year)
        for resistor in note.resistors:
            shows = _shows(resistor) if package is not None else "which package it was is not looked"
            yield package, Proof(note, resistor, shows)


def _shows(resistor: LoadResistor) -> str:
    """What a with and without proves; the words are the form's own, in any mixture of capitals."""
    with_it, without = ((one or "not tried").casefold().strip() for one in (resistor.with_it, resistor.without_it))
    if without == WORKS:
        return "not needed"
    if with_it == WORKS and without in FAILS:
        return "needs it"
    if with_it == WORKS:
        return "it worked with it, and nobody tried without"
    return "it did not work with this one" if with_it in FAILS else "nobody says whether it worked"
