"""Vehicles, notes and orders for tests, from the few words in which they differ."""

from typing import Any

from bezelbook.kinds.note.record import Seen
from bezelbook.kinds.record import Record
from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.order.removal import Removal, removals_at
from tests.reasoning import making


def car(*pieces: str, **more: Any) -> Vehicle:
    """A vehicle whose pieces end in their side, such as lid-left; any other lies in the middle."""
    sides = {piece: piece.rsplit("-", 1)[-1] for piece in pieces}
    trim = {piece: {"side": side if side in ("left", "right") else "centre"} for piece, side in sides.items()}
    return making.vehicle(**{"trim": trim} | more)


def seen(named: str, /, **content: Any) -> Seen:
    """A note about what came off at the one opening."""
    said = {"form": "seen", "author": named, "vehicle": making.CAR, "place": making.HOLE} | content
    note: Seen = making.record("notes", named, said)
    return note


def first(piece: str, *others: str, why: str | None = "overlap") -> dict[str, Any]:
    """A piece that came off after others."""
    return {"piece": piece, "first": [{"piece": other, **({"why": why} if why else {})} for other in others]}


def over(upper: str, lower: str, **more: Any) -> dict[str, Any]:
    """A piece that lies over another."""
    return {"piece": upper, "over": lower, **more}


def book(*records: Record) -> KnowledgeBase:
    """A book of these records."""
    return making.book(*records)


def orders(base: KnowledgeBase, place: str = making.HOLE) -> tuple[Removal, ...]:
    """The orders that open a place of the one vehicle."""
    return removals_at(base, base.vehicles[making.CAR], place)


def order(*records: Record) -> Removal:
    """The one order that opens the one opening."""
    [found] = orders(book(*records))
    return found


def pieces(removal: Removal) -> list[str]:
    """The pieces of an order, the first to come off first."""
    return [step.piece for step in removal.steps]
