"""The book as it reads once what the team settled acts: blanks filled, numbers read as said, losers struck."""

from collections.abc import Iterable, Mapping
from typing import Any, get_args

from bezelbook.kinds.decision.record import Decision, ReadAs
from bezelbook.kinds.note.record import AnyNote, Bench, Measured, Metered, RoomReading, Tool
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase, Struck
from bezelbook.reasoning.claims import house_tolerance
from bezelbook.reasoning.reread import number_reread, reading_reread
from bezelbook.values.ninths import lines_said

# What a decision fills where its author left a note blank. The other blanks are in its readings.
BLANKS = ("year", "mounts", "plugs", "loom", "glass", "tabs", "cut")


def decided(book: KnowledgeBase, decisions: Iterable[Decision]) -> KnowledgeBase:
    """The book with these decisions acting on it, the oldest first; no note is lost, and nothing written is changed.

    A decision fills blanks and never overwrites; what names a note that is not there does nothing. Who goes and looks
    has settled nothing yet, so that such a decision does not act.
    """
    notes = dict(book.notes)
    struck: dict[str, Struck] = dict(book.struck)
    for decision in sorted(decisions, key=lambda one: (one.date or "", one.id)):
        if decision.decided == "go and look":
            continue
        for reading in decision.read_as:
            if reading.note in notes:
                note = notes[reading.note]
                notes[reading.note] = _read(book, note, reading)
        if decision.decided == "same job twice":
            notes |= _one_job([notes[weighed.note] for weighed in decision.notes if weighed.note in notes], decision)
        struck |= {
            lost.note: Struck(notes[lost.note], lost.because, decision.id)
            for lost in decision.struck
            if lost.note in notes
        }
    standing = {id_: note for id_, note in notes.items() if id_ not in struck}
    typed = {id_: book.notes[id_] for id_, note in notes.items() if note != book.notes[id_]}
    return KnowledgeBase({**book.records, "note": standing}, struck, typed)


def says_the_same(then: str, now: str) -> bool:
    """Whether a quote still says what it said when it was weighed, whatever else its author has added in words."""
    return _spoken(then) == _spoken(now)


def _spoken(quote: str) -> str:
    return lines_said(" ".join(quote.partition(" \u2013 ")[0].split()).rstrip(".").casefold())


def _read(book: KnowledgeBase, note: AnyNote, said: ReadAs) -> AnyNote:
    """A note with its blanks filled and its odd number read as the team said."""
    if isinstance(note, Bench):
        return note
    filled: dict[str, Any] = {
        name: value for name in BLANKS if getattr(note, name) is None and (value := getattr(said, name)) is not None
    }
    filled["splits"] = {**said.splits, **note.splits}
    if said.side and note.vehicle in book.vehicles:
        filled["place"] = _on_side(book.vehicles[note.vehicle], note.place, said.side)
    if isinstance(note, Metered) and note.view is None:
        filled["view"] = said.view
    if isinstance(note, Measured):
        filled["readings"] = tuple(_reading(book, one, said) for one in note.readings)
    return number_reread(note.model_copy(update=filled), said.unit)


def _reading(book: KnowledgeBase, reading: RoomReading, said: ReadAs) -> RoomReading:
    filled: dict[str, Any] = {}
    if reading.datum is None:
        filled["datum"] = said.datum
    if reading.tool is None and said.tool in get_args(Tool):
        filled["tool"] = said.tool
    read = reading.model_copy(update=filled)
    return reading_reread(read, said.measured_to, house_tolerance(book.shop.tools, read))


def _on_side(vehicle: Vehicle, place: str, side: str) -> str:
    """The same place on the side that the team said, where the vehicle has one."""
    here = vehicle.places.get(place)
    if here is None or here.side == side or here.other_side is None:
        return place
    there = vehicle.places.get(here.other_side)
    return here.other_side if there is not None and there.side == side else place


def _one_job(notes: Iterable[AnyNote], decision: Decision) -> Mapping[str, AnyNote]:
    """These notes under one job tag: the first that one of them has, else the decision's own name."""
    every = list(notes)
    tag = next((note.job for note in every if note.job), decision.id)
    return {note.id: note.model_copy(update={"job": tag}) for note in every}
