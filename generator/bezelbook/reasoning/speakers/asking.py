"""A question about a speaker handed over as plain data, checked against the book and read."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, cast

from bezelbook.kinds.record import Named
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.kinds.vehicle.record import PlaceKind
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.plain_data import (
    choice_of,
    cut_of,
    length_of,
    mapping_of,
    mounts_of,
    one_of,
    only,
    splits_of,
    year_of,
)
from bezelbook.reasoning.speakers.cells import EITHER_PLACES, SPEAKER_PLACES
from bezelbook.reasoning.speakers.needs import FIELDS, TYPED
from bezelbook.reasoning.speakers.question import SpeakerQuestion
from bezelbook.reasoning.speakers.stacks import Tabs
from bezelbook.values.complaint import Wrong
from bezelbook.values.quantity import Quantity

STATE_KEYS = ("mounts", "tabs", "gasket", "glass", "cut")
# What a question may call a size beside the words of a record.
SHORTER: Mapping[str, str] = {"depth": "mounting_depth", "hole": "cut_out", "front": "front_height"}
WHAT_KEYS = (*TYPED, *SHORTER, "like")


@dataclass(frozen=True)
class SpeakerReading:
    """What plain data about a speaker was read as, in the shape of a reading about an opening."""

    read: SpeakerQuestion
    took: tuple[str, ...] = ()

    @property
    def question(self) -> None:
        """The question about an opening, of which there is none."""


def is_speaker_question(book: KnowledgeBase, kind: PlaceKind, what: object) -> bool:
    """Whether a question is about a speaker: its place takes nothing else, or takes both and what it names is one."""
    if kind in SPEAKER_PLACES:
        return True
    if kind not in EITHER_PLACES:
        return False
    if isinstance(what, Mapping):
        return _named(book, str(what.get("like"))) is not None or any(key in TYPED for key in what)
    return isinstance(what, str) and _named(book, what) is not None


def read_speaker_question(book: KnowledgeBase, vehicle: str, place: str, data: Mapping[str, Any]) -> SpeakerQuestion:
    """Read a question from plain data whose vehicle and place are known; raises Wrong, naming the key."""
    what = data.get("what")
    unit = book.head_unit_named(what) if isinstance(what, str) else None
    if unit is not None:
        raise Wrong(
            f"{unit.name} is a head unit, and {place} does not take a box",
            "Ask about a dash opening, or about a speaker here",
        )
    speaker, sizes = _what(book, what)
    state = mapping_of(data, "state")
    only(state, STATE_KEYS, "state")
    return SpeakerQuestion(
        vehicle,
        place,
        splits=splits_of(book, vehicle, mapping_of(data, "splits")),
        year=year_of(book, vehicle, data.get("year")),
        mounts=mounts_of(book, vehicle, place, state.get("mounts")),
        cut=cut_of(state.get("cut")),
        tabs=cast("Tabs | None", choice_of(state, "tabs", ("in", "out"))),
        glass="up" if choice_of(state, "glass", ("up", "down")) == "up" else "run",
        gasket=_gasket(book, state.get("gasket")),
        speaker=speaker,
        sizes=sizes,
    )


def _what(book: KnowledgeBase, what: object) -> tuple[str | None, dict[str, Quantity]]:
    if isinstance(what, str):
        named = _named(book, what)
        return named.id if named else one_of(what, book.speakers, "speaker"), {}
    if not isinstance(what, Mapping) or not what:
        raise Wrong(
            '"what" is missing or empty', 'Write a speaker\'s file name, or sizes such as {"mounting_depth": "63 mm"}'
        )
    only(what, WHAT_KEYS, "what")
    like = what.get("like")
    speaker = None if like is None else one_of(str(like), book.speakers, "speaker")
    sizes = {SHORTER.get(key, key): length_of(book, key, value) for key, value in what.items() if key != "like"}
    if not sizes:
        raise Wrong("no size is given in what", 'Give at least one, such as {"mounting_depth": "63 mm"}')
    if speaker is None and not any(own in sizes or instead in sizes for own, instead in FIELDS.values()):
        raise Wrong(
            f"{', '.join(sizes)} says nothing of whether it goes in", 'Add a size such as {"mounting_depth": "63 mm"}'
        )
    return speaker, sizes


def _gasket(book: KnowledgeBase, gasket: object) -> str | None:
    if gasket in (None, "", "none"):
        return None
    if not isinstance(gasket, str):
        raise Wrong("gasket is not a name", 'Write a foam\'s file name, or "none"')
    found = book.named("supply", gasket)
    return found.id if isinstance(found, Named) else one_of(gasket, book.supplies, "foam")


def _named(book: KnowledgeBase, words: str) -> Speaker | None:
    found = book.named("speaker", words)
    return found if isinstance(found, Speaker) else None
