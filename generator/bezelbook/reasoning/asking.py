"""A question handed over as plain data, checked against the book and read; a fault is said with what would mend it."""

from collections.abc import Mapping
from typing import Any

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.needs import SIZE_FIELDS, Need
from bezelbook.reasoning.plain_data import (
    choice_of,
    cut_of,
    length_of,
    mapping_of,
    mounts_of,
    one_of,
    only,
    short,
    splits_of,
    text_of,
    year_of,
)
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.speakers.asking import SpeakerReading, is_speaker_question, read_speaker_question
from bezelbook.reasoning.vocabulary import OPENINGS, Phrase
from bezelbook.reasoning.wiring_asked.asking import WiringReading, read_wiring_question
from bezelbook.reasoning.words import Reading, read_words
from bezelbook.values.complaint import Wrong
from bezelbook.values.quantity import Quantity
from bezelbook.values.words import NINTHS, Ninth

KEYS = ("vehicle", "place", "splits", "year", "state", "what", "words")
STATE_KEYS = ("mounts", "cut", "loom", "plugs")
# What a question may call a size: the words of a note, and the shorter ones that people say.
SIZE_KEYS: Mapping[str, Need] = {name: need for need, name in SIZE_FIELDS.items()} | {"plug": "plug"}
WHAT_KEYS = (*SIZE_KEYS, "plug_exit", "exit", "like")


def read_question(
    book: KnowledgeBase, data: Mapping[str, Any], phrases: tuple[Phrase, ...] | None = None
) -> Reading | SpeakerReading | WiringReading:
    """Read a question from plain data: `words`; or `vehicle`, `place` and `what`, `splits` and `state`; or a `job`.

    Raises Wrong, naming the key. `phrases` is the book's vocabulary, where many questions are read one after another.
    """
    if "job" in data:
        return read_wiring_question(book, data)
    only(data, KEYS, "a question")
    if "words" in data:
        only(data, ("words",), "a question in words")
        return read_words(book, text_of(data, "words"), phrases)
    vehicle = one_of(text_of(data, "vehicle"), book.vehicles, "vehicle")
    place = one_of(text_of(data, "place"), book.vehicles[vehicle].places, f"place of {vehicle}")
    kind = book.vehicles[vehicle].places[place].kind
    if is_speaker_question(book, kind, data.get("what")):
        return SpeakerReading(read_speaker_question(book, vehicle, place, data))
    if kind not in OPENINGS:
        raise Wrong(
            f"{place} is no place for a part ({kind}); nothing goes in there",
            "Ask about a dash opening or a place for a speaker",
        )
    unit, sizes, exit_ = _what(book, data.get("what"))
    state = mapping_of(data, "state")
    only(state, STATE_KEYS, "state")
    question = Question(
        vehicle,
        place,
        splits=splits_of(book, vehicle, mapping_of(data, "splits")),
        year=year_of(book, vehicle, data.get("year")),
        mounts=mounts_of(book, vehicle, place, state.get("mounts")),
        cut=cut_of(state.get("cut")),
        loom="behind" if choice_of(state, "loom", ("aside", "behind")) == "behind" else "aside",
        plugs="off" if choice_of(state, "plugs", ("on", "off")) == "off" else "on",
        unit=unit,
        sizes=sizes,
        exit=exit_,
    )
    return Reading(question)


def _what(book: KnowledgeBase, what: object) -> tuple[str | None, dict[Need, Quantity], Ninth | None]:
    if isinstance(what, str):
        named = book.head_unit_named(what)
        return named.id if named else one_of(what, book.head_units, "head unit"), {}, None
    if not isinstance(what, Mapping) or not what:
        raise Wrong(
            '"what" is missing or empty', 'Write a head unit\'s file name, or sizes such as {"depth": "165 mm"}'
        )
    only(what, WHAT_KEYS, "what")
    like = what.get("like")
    unit = None if like is None else one_of(str(like), book.head_units, "head unit")
    sizes = {SIZE_KEYS[key]: length_of(book, key, value) for key, value in what.items() if key in SIZE_KEYS}
    if not sizes:
        raise Wrong("no size is given in what", 'Give at least one, such as {"depth": "165 mm"}')
    exit_ = what.get("plug_exit", what.get("exit"))
    return unit, sizes, None if exit_ is None else _ninth(str(exit_))


def _ninth(word: str) -> Ninth:
    found = [ninth for ninth in NINTHS if ninth == word]
    if not found:
        raise Wrong(f'"{short(word)}" is not one of the nine places behind an opening', f"One of: {', '.join(NINTHS)}")
    return found[0]
