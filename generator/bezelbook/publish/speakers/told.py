"""What the browser is told of a vehicle's places for speakers: what is known there, and every published answer."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import product
from typing import Any

from bezelbook.publish.address import HOME, Links
from bezelbook.publish.speakers.place import PlaceForSpeakers, Places
from bezelbook.publish.telling import Pool, Telling
from bezelbook.reasoning.builds import bearing_axes
from bezelbook.reasoning.plain import PlainNote
from bezelbook.reasoning.speakers.answer import SpeakerAnswer, speaker_answer
from bezelbook.reasoning.speakers.cells import Glass
from bezelbook.reasoning.speakers.question import SpeakerQuestion, asked
from bezelbook.reasoning.speakers.stacks import Tabs
from bezelbook.reasoning.spoken.known import known_at


@dataclass(frozen=True, slots=True)
class State:
    """What is said of the car and of how a speaker is fitted: `mounts` is None when any may do, tabs when open."""

    splits: tuple[tuple[str, str], ...] = ()
    mounts: tuple[str, ...] | None = None
    tabs: Tabs | None = None
    glass: Glass = "run"

    @property
    def key(self) -> str:
        """The state as one word, which the browser makes up as well: `build=late|ten-ring|out|up`."""
        splits = ",".join(f"{axis}={value}" for axis, value in self.splits)
        mounts = "" if self.mounts is None else "+".join(self.mounts) or "none"
        return f"{splits}|{mounts}|{self.tabs or ''}|{'up' if self.glass == 'up' else ''}"

    def question(self, place: PlaceForSpeakers, speaker: str) -> SpeakerQuestion:
        """The question about a speaker in this state."""
        return SpeakerQuestion(
            place.vehicle,
            place.id,
            splits=dict(self.splits),
            mounts=self.mounts,
            tabs=self.tabs,
            glass=self.glass,
            speaker=speaker,
        )


def states_of(place: PlaceForSpeakers) -> tuple[State, ...]:
    """The states whose answers are published: each build and mount with tabs and glass where they matter.

    Where no note stands there is only the open question; with the glass up only what needs no mount, or any.
    """
    if not place.room.evidence.standing:
        return (State(),)
    return tuple(dict.fromkeys(_states(place)))


def _states(place: PlaceForSpeakers) -> Iterator[State]:
    frame = place.room.frame
    axes = bearing_axes(frame.vehicle, frame.place, "room")
    values = [(None, *frame.vehicle.splits[axis].values) for axis in axes]
    stacks = asked(place.room, SpeakerQuestion(place.vehicle, place.id)).stacks
    tabbed = [stack.mounts for stack in stacks if stack.has_tabs]
    for picked in product(*values):
        splits = tuple((axis, value) for axis, value in zip(axes, picked, strict=True) if value is not None)
        for mounts in (None, *(stack.mounts for stack in stacks)):
            state = State(splits, mounts)
            yield state
            if mounts in tabbed or (mounts is None and tabbed):
                yield from (replace(state, tabs=tabs) for tabs in TABS)
            if "glass" in frame.rears and not mounts:
                yield replace(state, glass="up")


TABS: tuple[Tabs, ...] = ("in", "out")


def speakers_told(telling: Telling, vehicle: str, places: Places) -> dict[str, Any]:
    """Everything about a vehicle's places for speakers, as plain data."""
    fors, answers = Pool(), Pool()
    here = {place.id: place for (of, _), place in places.items() if of == vehicle}
    told = {id_: _place(telling, place, fors, answers) for id_, place in here.items()}
    return {"places": told, "fors": fors.values, "answers": answers.values}


def _place(telling: Telling, place: PlaceForSpeakers, fors: Pool, answers: Pool) -> dict[str, Any]:
    frame = place.room.frame
    stacks = asked(place.room, SpeakerQuestion(place.vehicle, place.id)).stacks
    return {
        "name": place.name,
        "at": Links(HOME, telling.book).place(place.vehicle, place.id),
        "axes": [axis for axis, _ in frame.builds[0]],
        "mounts": [{"key": list(stack.mounts), "words": stack.words} for stack in stacks],
        "known": list(known_at(place.room)),
        "states": {state.key: _answers(telling, place, state, fors, answers) for state in states_of(place)},
    }


def _answers(telling: Telling, place: PlaceForSpeakers, state: State, fors: Pool, answers: Pool) -> list[int]:
    """Which answer each speaker of the book has in a state, in the book's order."""
    every = (
        speaker_answer(place.book, state.question(place, speaker), place.room) for speaker in place.book.speakers
    )
    return [answers.number(_answer(telling, place, one, fors)) for one in every]


def _answer(telling: Telling, place: PlaceForSpeakers, answer: SpeakerAnswer, fors: Pool) -> list[Any]:
    plain = answer.plain()
    tail = plain["for"]["words"].removeprefix(answer.asked.needs.name)
    shared = {**plain["for"], "what": "", "words": tail}
    return [
        plain["verdict"],
        plain["until_settled"],
        fors.number(shared),
        plain["number"],
        plain["sure"],
        plain["witnesses"],
        [_note(telling, place, note) for note in plain["notes"]],
        [[telling.note(note["note"]), note["why"]] for note in plain["argued"]],
        telling.unknown(answer.unknown),
        plain["needs"],
        [one.look for one in answer.conditions],
    ]


def _note(telling: Telling, place: PlaceForSpeakers, note: PlainNote) -> list[str]:
    return [telling.note(note["note"]), note["why"], _stands(place).get(note["note"], "strong")]


def _stands(place: PlaceForSpeakers) -> Mapping[str, str]:
    """The notes at a place that bind nothing, each with how it is shown."""
    evidence = place.room.evidence
    return {one.note.id: "weak" for one in evidence.weak} | {one.note.id: "aside" for one in evidence.aside}
