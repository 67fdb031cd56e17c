"""What the browser is told about a vehicle: the answers to every published choice, and the room for typed sizes."""

from collections.abc import Mapping, Sequence
from typing import Any

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.choices import Choice
from bezelbook.publish.opening import Opening
from bezelbook.publish.telling import Telling
from bezelbook.reasoning.answer import Answer
from bezelbook.reasoning.corners import corners
from bezelbook.reasoning.evidence import Evidence, Standing
from bezelbook.reasoning.plain import PlainNote
from bezelbook.reasoning.question import open_axes
from bezelbook.reasoning.room import Place


def vehicle_data(book: KnowledgeBase, vehicle: str, openings: Sequence[Opening]) -> dict[str, Any]:
    """Everything about the openings of one vehicle, as plain data."""
    telling = Telling(book)
    record = book.vehicles[vehicle]
    splits = {
        axis: {value: {"tell": side.tell or "", "years": list(side.years)} for value, side in split.values.items()}
        for axis, split in record.splits.items()
    }
    places = {opening.id: _place(telling, opening) for opening in openings if opening.vehicle == vehicle}
    return {
        "id": vehicle,
        "name": record.name,
        "splits": splits,
        "places": places,
        "answers": telling.answers.values,
        "missing": telling.missing.values,
        "notes": telling.notes,
    }


def _place(telling: Telling, opening: Opening) -> dict[str, Any]:
    standing = opening.room.accounts[0].notes
    alone = {telling.note(one.note.id): _alone(opening, one) for one in standing}
    return {
        "name": opening.name,
        "axes": [axis for axis, _ in opening.room.frame.builds[0]],
        "mounts": [{"key": list(stack.key), "words": stack.words} for stack in opening.everything.stacks],
        "accounts": opening.corners["accounts"],
        "alone": {note: noes for note, noes in alone.items() if noes},
        "choices": {choice.key: _choice(telling, opening, choice) for choice in opening.choices},
    }


def _choice(telling: Telling, opening: Opening, choice: Choice) -> dict[str, Any]:
    typed = opening.answer(choice, None)
    plain = typed.plain()["for"]
    units = {unit: opening.answer(choice, unit) for unit in telling.book.head_units}
    return {
        "words": plain["words"].removeprefix(plain["what"]),
        "splits": plain["splits"],
        "settings": list(opening.settings(choice)),
        "units": {unit: telling.answers.number(_answer(telling, opening, one)) for unit, one in units.items()},
        "typed": _typed(telling, opening, typed),
    }


def _answer(telling: Telling, opening: Opening, answer: Answer) -> dict[str, Any]:
    plain = answer.plain()
    return {
        "verdict": plain["verdict"],
        "until_settled": plain["until_settled"],
        "number": plain["number"],
        "sure": plain["sure"],
        "witnesses": plain["witnesses"],
        "notes": [_note(telling, opening, note) for note in plain["notes"]],
        "argued": [[telling.note(note["note"]), note["why"]] for note in plain["argued"]],
        "unknown": telling.unknown(answer.unknown),
        "conditions": [[one.words, one.look] for one in answer.conditions],
        "needs": plain["needs"][len(answer.conditions) :],
    }


def _typed(telling: Telling, opening: Opening, answer: Answer) -> dict[str, Any]:
    """What an answer about typed sizes says whatever they are; the rest the browser works out from the room."""
    plain = answer.plain()
    builds, vehicle = answer.asked.builds, opening.room.frame.vehicle
    axes = open_axes(vehicle, opening.id, builds)
    built = {axis: {dict(build)[axis] for build in builds} for axis in axes}
    return {
        "open": [
            [axis, one.what, one.look, [value for value in vehicle.splits[axis].values if value in built[axis]]]
            for axis, one in zip(axes, answer.unknown, strict=False)
        ],
        "unknown": telling.unknown(answer.unknown[len(axes) :]),
        "notes": [_note(telling, opening, note) for note in plain["notes"] if note["note"] in _beside(opening)],
        "argued": [[telling.note(note["note"]), note["why"]] for note in plain["argued"]],
        "needs": plain["needs"][len(answer.conditions) :],
    }


def _beside(opening: Opening) -> Mapping[str, str]:
    """The notes at a place that bind nothing, each with how it is shown."""
    evidence = opening.room.evidence
    weak = {one.note.id: "weak" for one in evidence.weak}
    return weak | {one.note.id: "aside" for one in evidence.aside}


def _note(telling: Telling, opening: Opening, note: PlainNote) -> list[str]:
    return [telling.note(note["note"]), note["why"], _beside(opening).get(note["note"], "strong")]


def _alone(opening: Opening, one: Standing) -> Mapping[str, Any]:
    """By setting, the noes of a note with no other beside it; a setting in which it rules nothing out is left out."""
    room = Place(opening.room.frame, Evidence((one,), (), ()))
    settings = corners(room, opening.everything)["accounts"][0]["settings"]
    return {str(number): setting["leaves"] for number, setting in enumerate(settings) if all(setting["leaves"])}
