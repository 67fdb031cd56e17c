"""What the browser is told of a vehicle's places for speakers: what is known there, and every published answer."""

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from bezelbook.publish.address import HOME, Links
from bezelbook.publish.speakers.place import PlaceForSpeakers, Places
from bezelbook.publish.speakers.state import State, states_of
from bezelbook.publish.speakers.typed import typed_told
from bezelbook.publish.telling import Pool, Telling
from bezelbook.reasoning.plain import PlainNote
from bezelbook.reasoning.speakers.answer import SpeakerAnswer, speaker_answer
from bezelbook.reasoning.speakers.question import SpeakerQuestion, asked
from bezelbook.reasoning.spoken.known import known_at


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
        "typed": {state.key: _typed(telling, place, state, fors, answers) for state in states_of(place)},
    }


def _typed(telling: Telling, place: PlaceForSpeakers, state: State, fors: Pool, answers: Pool) -> dict[str, Any]:
    """The answers about one typed size; the number and the conditions go with the size, so they stand apart."""

    def told(answer: SpeakerAnswer) -> int:
        needs = answer.needs[len(answer.conditions) :]
        return answers.number(_answer(telling, place, replace(answer, spot=None, conditions=(), needs=needs), fors))

    return typed_told(place, state, told)


def _answers(telling: Telling, place: PlaceForSpeakers, state: State, fors: Pool, answers: Pool) -> list[int]:
    """Which answer each speaker of the book has in a state, in the book's order."""
    every = (speaker_answer(place.book, state.question(place, speaker), place.room) for speaker in place.book.speakers)
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
