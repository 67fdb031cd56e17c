"""The parts that every answer about wiring has: plugs, pieces, what is missing, and an answer with nothing in it."""

from collections.abc import Iterable

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.module.record import Module
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.chain import Verdict
from bezelbook.reasoning.circuits.in_words import ends_words, in_hand
from bezelbook.reasoning.circuits.look_alikes import look_alikes
from bezelbook.reasoning.circuits.plugs import Plug, plugs_at
from bezelbook.reasoning.plain import PlainMissing
from bezelbook.reasoning.unknowns import Missing
from bezelbook.reasoning.wiring_asked.plain import PlainBuild, PlainPiece, PlainPlug
from bezelbook.reasoning.wiring_asked.question import JobAsked

NO_LOOK = "nobody has looked at the keys of both: do not push"


def nothing_of(car: Car, job: JobAsked, verdict: Verdict, words: str) -> PlainBuild:
    """An answer with a verdict, and every list of it empty."""
    return {
        "job": job,
        "place": car.place,
        "builds": [dict(car.build)],
        "builds_words": "",
        "tell": "",
        "verdict": verdict,
        "words": words,
        "sure": None,
        "plugs": [],
        "pieces": [],
        "circuits": [],
        "kept": [],
        "lacks": [],
        "load": None,
        "beside": [],
        "seats": [],
        "cable": None,
        "unknown": [],
    }


def piece_of(book: KnowledgeBase, record: Adapter | Module, why: str) -> PlainPiece:
    """A piece to take to the car, and why it is right there."""
    return {
        "kind": "adapter" if isinstance(record, Adapter) else "module",
        "id": record.id,
        "name": record.name,
        "ends": ends_words(book, record) if isinstance(record, Adapter) else "",
        "why": why,
        "in_hand": in_hand(book, record.id),
    }


def plugs_of(car: Car) -> list[PlainPlug]:
    """Every plug that somebody saw at a place."""
    return [
        {
            "plug": plug.words,
            "state": plug.state,
            "notes": list(plug.notes),
            "not_to_be_taken_for": _alikes(car, plug),
        }
        for plug in plugs_at(car).plugs
    ]


def _alikes(car: Car, plug: Plug) -> list[str]:
    found = look_alikes(car.book, plug.connector) if plug.connector else ()
    names = ((car.book.connectors[one.connector].name, one.difference) for one in found)
    return [f"{name}: {(difference or NO_LOOK).removesuffix('.')}" for name, difference in names]


def missing_of(unknown: Iterable[Missing]) -> list[PlainMissing]:
    """What is not known, each with where to look and what it changes."""
    return [{"what": one.what, "look": one.look, "changes": one.changes} for one in unknown]
