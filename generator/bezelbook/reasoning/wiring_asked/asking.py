"""A question about wiring handed over as plain data, checked against the book and read."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.circuits.jobs import RADIO_PLACES
from bezelbook.reasoning.plain_data import mapping_of, near, one_of, only, short, splits_of, text_of, year_of
from bezelbook.reasoning.speakers.cells import EITHER_PLACES, SPEAKER_PLACES
from bezelbook.reasoning.wiring_asked.question import JOBS_ASKED, JobAsked, WiringQuestion, usual_places
from bezelbook.values.complaint import Wrong

KEYS = ("vehicle", "place", "splits", "year", "job", "unit", "amplifier")
# What people call a job beside its own name; common practice, no source.
ALSO: Mapping[str, JobAsked] = {
    "replace radio": "replace the radio",
    "radio": "replace the radio",
    "keep and amplify": "keep it and amplify",
    "keep the radio and amplify": "keep it and amplify",
    "amplify": "keep it and amplify",
    "sub only": "add a sub",
    "sub": "add a sub",
    "two-piece": "two-piece radio",
    "speaker leads": "speaker lead",
    "antenna": "aerial",
}


@dataclass(frozen=True)
class WiringReading:
    """What plain data about wiring was read as, in the shape of a reading about an opening."""

    read: WiringQuestion
    took: tuple[str, ...] = ()

    @property
    def question(self) -> None:
        """The question about an opening, of which there is none."""


def read_wiring_question(book: KnowledgeBase, data: Mapping[str, Any]) -> WiringReading:
    """Read `vehicle` and `job`, with `place`, `splits`, `year`, `unit` and `amplifier` where they are known.

    Raises Wrong, naming the key, when something in it is not in the book.
    """
    only(data, KEYS, "a question about wiring")
    vehicle = one_of(text_of(data, "vehicle"), book.vehicles, "vehicle")
    job = _job(text_of(data, "job"))
    places = usual_places(book, book.vehicles[vehicle], job)
    if data.get("place") is not None:
        places = (_place(book, vehicle, job, text_of(data, "place")),)
    return WiringReading(
        WiringQuestion(
            vehicle,
            places,
            (job,),
            splits_of(book, vehicle, mapping_of(data, "splits")),
            year_of(book, vehicle, data.get("year")),
            _named(book, data, "unit", "head_unit"),
            _named(book, data, "amplifier", "amplifier"),
        )
    )


def _job(words: str) -> JobAsked:
    said = " ".join(words.casefold().split())
    found = ALSO.get(said) or next((job for job in JOBS_ASKED if job == said), None)
    if found is None:
        raise Wrong(f'there is no job "{short(words)}"', near(said, JOBS_ASKED))
    return found


def _place(book: KnowledgeBase, vehicle: str, job: JobAsked, word: str) -> str:
    places = book.vehicles[vehicle].places
    kind = places[one_of(word, places, f"place of {vehicle}")].kind
    takes = (SPEAKER_PLACES | EITHER_PLACES) if job == "speaker lead" else RADIO_PLACES
    if kind not in takes:
        raise Wrong(
            f"{word} is no place for that job ({kind})", "Leave the place out, or name the one where it is done"
        )
    return word


def _named(book: KnowledgeBase, data: Mapping[str, Any], key: str, kind: str) -> str | None:
    if data.get(key) is None:
        return None
    words = text_of(data, key)
    found = book.named(kind, words)
    return found.id if found else one_of(words, book.records.get(kind, {}), kind.replace("_", " "))
