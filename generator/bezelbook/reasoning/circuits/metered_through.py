"""What becomes of each circuit in an adapter: what its record says and what was metered through it on the bench."""

from collections.abc import Iterator, Mapping

from bezelbook.kinds.adapter.record import Adapter, Way
from bezelbook.kinds.circuits import Does
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.circuits.wiring import Link, Point
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.values.words import CIRCUITS, Circuit

# Bare leads, by whatever name; anything else that is no connector, such as blades or phono, fits something already.
JOINED_BY_HAND = "leads"


def does(book: KnowledgeBase, adapter: Adapter, circuit: Circuit) -> Does:
    """What becomes of a circuit; unknown when nobody looked, or when bench and record say two different things.

    A meter on the bench fills a blank and bears out a word; it never quietly overrules one.
    """
    way = adapter.circuits.get(circuit)
    notes = unreplaced(book.bench_notes(adapter.id))
    metered = {note.circuits[circuit].does for note in notes if circuit in note.circuits}
    said = {word for word in ({way.does} if way else set()) | metered if word != "unknown"}
    return said.pop() if len(said) == 1 else "unknown"


def links_of(book: KnowledgeBase, adapter: Adapter) -> Mapping[Circuit, tuple[Link, ...]]:
    """What runs between the ends of an adapter, circuit by circuit."""
    found = {circuit: tuple(_links(adapter, circuit, does(book, adapter, circuit))) for circuit in CIRCUITS}
    return {circuit: links for circuit, links in found.items() if links}


def made_by_itself(book: KnowledgeBase, adapter: Adapter) -> Mapping[Circuit, tuple[Point, ...]]:
    """The circuits that it makes with no module of the book, and where they come out."""
    making = {circuit: way for circuit, way in adapter.circuits.items() if does(book, adapter, circuit) == "makes"}
    alone = {circuit: way for circuit, way in making.items() if way.made_by is None}
    return {circuit: _out(adapter, way) for circuit, way in alone.items()}


def _links(adapter: Adapter, circuit: Circuit, word: Does) -> Iterator[Link]:
    way = adapter.circuits.get(circuit) or Way(does=word)
    ends = way.between or tuple(end for end in ("a", "b") if end in adapter.ends)
    if not ends:
        return
    if word == "unknown":
        every = list(adapter.ends)
        yield from (Link((every[0], ""), (end, ""), sure=False) for end in every[1:])
    elif word in ("passes", "looped"):
        yield from (Link((ends[0], ""), (end, "")) for end in ends[1:])
    elif word == "tapped":
        yield from (Link((ends[0], ""), (end, "")) for end in (*ends[1:], *(point[0] for point in _out(adapter, way))))
    elif word == "broken out":
        yield from (Link((end, ""), (_comes_out(adapter, way, end), end)) for end in ends)


def _out(adapter: Adapter, way: Way) -> tuple[Point, ...]:
    """Where a tapped or a made circuit comes out: as it says, else on the leads."""
    said = dict.fromkeys(way.out_at.values())
    return tuple((end, "") for end in said or leads_of(adapter) if end in adapter.ends)


def _comes_out(adapter: Adapter, way: Way, end: str) -> str:
    """Where the half of a broken circuit that hangs on this end comes out."""
    leads = [*leads_of(adapter), end]
    return way.out_at.get(end, leads[0])


def leads_of(adapter: Adapter) -> tuple[str, ...]:
    """Its ends that are joined by hand."""
    return tuple(end for end, one in adapter.ends.items() if one.connector is None and one.ends_in is not None)
