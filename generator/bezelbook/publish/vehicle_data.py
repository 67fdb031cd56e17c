"""What the browser is told about a vehicle: the answers to every published choice, and the room for typed sizes."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.address import HOME, Links
from bezelbook.publish.choices import Choice
from bezelbook.publish.offers import Offers
from bezelbook.publish.opening import Opening
from bezelbook.publish.speakers.place import Places
from bezelbook.publish.speakers.told import speakers_told
from bezelbook.publish.telling import Telling
from bezelbook.reasoning.answer import Answer
from bezelbook.reasoning.corners import corners
from bezelbook.reasoning.evidence import Evidence, Standing
from bezelbook.reasoning.mounting import Stack
from bezelbook.reasoning.next_best.buying import mounts_with, to_buy
from bezelbook.reasoning.plain import PlainNote
from bezelbook.reasoning.question import open_axes
from bezelbook.reasoning.room import Place
from bezelbook.reasoning.unknowns import blank_ninths
from bezelbook.values.listed import listed

# What it changes that a ninth was never measured; the browser words that itself, for the mounts that are left.
HOW_DEEP = "how deep a thing may be"


def vehicle_data(
    book: KnowledgeBase, vehicle: str, openings: Sequence[Opening], speakers: Places | None = None
) -> dict[str, Any]:
    """Everything about the openings of one vehicle and its places for speakers, as plain data."""
    telling = Telling(book)
    record = book.vehicles[vehicle]
    splits = {
        axis: {value: {"tell": side.tell or "", "years": list(side.years)} for value, side in split.values.items()}
        for axis, split in record.splits.items()
    }
    own = [opening for opening in openings if opening.vehicle == vehicle]
    offers = Offers(book, own)
    places = {opening.id: _place(telling, opening, offers) for opening in own}
    told = speakers_told(telling, vehicle, speakers or {})
    return {
        "id": vehicle,
        "name": record.name,
        "splits": splits,
        "places": places,
        "speakers": told,
        "answers": telling.answers.values,
        "missing": telling.missing.values,
        "offers": telling.offers.values,
        "notes": telling.notes,
    }


def _place(telling: Telling, opening: Opening, offers: Offers) -> dict[str, Any]:
    alone = [(one.note.id, _alone(opening, one)) for one in opening.room.accounts[0].notes]
    return {
        "name": opening.name,
        "at": Links(HOME, telling.book).place(opening.vehicle, opening.id),
        "axes": [axis for axis, _ in opening.room.frame.builds[0]],
        "mounts": [_mount(telling.book, stack) for stack in opening.everything.stacks],
        "accounts": opening.corners["accounts"],
        "blank": [blank_ninths(opening.room, setting) for setting in opening.everything.settings],
        "alone": [[telling.note(note), shown] for note, shown in alone if shown],
        "choices": {choice.key: _choice(telling, opening, choice, offers) for choice in opening.choices},
    }


def _mount(book: KnowledgeBase, stack: Stack) -> dict[str, Any]:
    return {"key": list(stack.key), "words": stack.words, "buy": list(to_buy(book, mounts_with(book, stack.key)))}


def _choice(telling: Telling, opening: Opening, choice: Choice, offers: Offers) -> dict[str, Any]:
    typed = opening.answer(choice, None)
    units = {unit: opening.answer(choice, unit) for unit in telling.book.head_units}
    return {
        "settings": list(opening.numbers(opening.asked(choice))),
        "units": {unit: telling.answers.number(_answer(telling, opening, one, offers)) for unit, one in units.items()},
        "typed": _typed(telling, opening, choice, typed),
        "instead": [telling.offers.number(offer.plain()) for offer in offers.units(opening, choice)],
    }


def _answer(telling: Telling, opening: Opening, answer: Answer, offers: Offers) -> dict[str, Any]:
    plain = answer.plain()
    return {
        "verdict": plain["verdict"],
        "until_settled": plain["until_settled"],
        "mounts": plain["for"]["mounts"],
        "number": plain["number"],
        "sure": plain["sure"],
        "witnesses": plain["witnesses"],
        "notes": [_note(telling, opening, note) for note in plain["notes"]],
        "argued": [[telling.note(note["note"]), note["why"]] for note in plain["argued"]],
        "unknown": telling.unknown(answer.unknown),
        "conditions": [[one.words, one.look] for one in answer.conditions],
        "needs": plain["needs"][len(answer.conditions) :],
        "instead": [telling.offers.number(offer.plain()) for offer in offers.of(answer)],
    }


def _typed(telling: Telling, opening: Opening, choice: Choice, answer: Answer) -> dict[str, Any]:
    """What an answer about typed sizes says whatever they are; the rest the browser works out from the room."""
    plain = answer.plain()
    axes = open_axes(opening.room.frame.vehicle, opening.id, answer.asked.builds)
    before, after = _around_mounts(answer)
    return {
        "words": [before, after],
        "splits": plain["for"]["splits"],
        "open": [
            [axis, one.what, one.look, list(_values(opening, choice, axis))]
            for axis, one in zip(axes, answer.unknown, strict=False)
        ],
        "unknown": telling.unknown(one for one in answer.unknown[len(axes) :] if one.changes != HOW_DEEP),
        "notes": [_note(telling, opening, note) for note in plain["notes"] if note["note"] in _beside(opening)],
        "argued": [[telling.note(note["note"]), note["why"]] for note in plain["argued"]],
        "needs": plain["needs"][len(answer.conditions) :],
    }


def _around_mounts(answer: Answer) -> tuple[str, str]:
    """What is said for exactly what, before the mounts are named and behind them; the thing itself is left out."""
    plain = answer.plain()["for"]
    mounts = f"with {listed([stack.words for stack in answer.asked.stacks], 'or')}"
    before, _, after = plain["words"].removeprefix(plain["what"]).rpartition(mounts)
    return f"{before}with ", after


def _values(opening: Opening, choice: Choice, axis: str) -> Iterator[list[Any]]:
    """The values of a split that a choice leaves open, each with the settings that it would leave."""
    asked = opening.asked(choice)
    for value in opening.room.frame.vehicle.splits[axis].values:
        builds = tuple(build for build in asked.builds if dict(build)[axis] == value)
        if builds:
            yield [value, list(opening.numbers(asked.narrowed(builds=builds)))]


def _beside(opening: Opening) -> Mapping[str, str]:
    """The notes at a place that bind nothing, each with how it is shown."""
    evidence = opening.room.evidence
    weak = {one.note.id: "weak" for one in evidence.weak}
    return weak | {one.note.id: "aside" for one in evidence.aside}


def _note(telling: Telling, opening: Opening, note: PlainNote) -> list[str]:
    return [telling.note(note["note"]), note["why"], _beside(opening).get(note["note"], "strong")]


def _alone(opening: Opening, one: Standing) -> Mapping[str, Any]:
    """What a note shows with no other beside it, by setting: the room it proves, and its noes where it has any."""
    room = Place(opening.room.frame, Evidence((one,), (), ()))
    settings = corners(room, opening.everything)["accounts"][0]["settings"]
    shown = {str(number): _shown(setting) for number, setting in enumerate(settings)}
    return {number: one for number, one in shown.items() if any(one["sure"]) or "leaves" in one}


def _shown(setting: Mapping[str, Any]) -> dict[str, Any]:
    sure = [max(cell["sure"], 0) for cell in setting["cells"]]
    return {"sure": sure, "leaves": setting["leaves"]} if all(setting["leaves"]) else {"sure": sure}
