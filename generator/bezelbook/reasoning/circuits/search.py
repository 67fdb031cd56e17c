"""The cheapest pieces that join a car to what goes in: each counted once, exact, and never one that is unsafe."""

from collections.abc import Iterable, Iterator, Mapping, Sequence

from bezelbook.reasoning.circuits.cheapest import Cost, Item, Wanted, cheapest_set
from bezelbook.reasoning.circuits.hyperpath import Arc, least_values
from bezelbook.reasoning.circuits.nets import points_of
from bezelbook.reasoning.circuits.outcome import Outcome, best_outcome
from bezelbook.reasoning.circuits.wiring import Half, Need, Piece, Point, Site
from bezelbook.values.words import CIRCUITS, Circuit, PlugSide

# A circuit as it comes from the car or from the radio that stays, on a half of a plug, on a lead, or at its end.
Node = tuple[str, ...]
FROM_CAR, OF_RADIO = "from the car", "of the radio"
LEAD, STAYS, HAS = "a lead", "the radio that stays", "has"

Way = tuple[tuple[Node, ...], tuple[Node, ...]]


def best_chain(site: Site, needs: Sequence[Need], pieces: Iterable[Piece]) -> tuple[tuple[str, ...], Outcome]:
    """The names of the cheapest pieces and what comes of them.

    Cost, in this order: needs that must be fed and are not, others that are not, pieces, joints made by hand, and how
    far each piece is from being proven and in hand. Of equal sets the first by name. Raises ValueError for a radio that
    stays and that does not even fit the car by itself.
    """
    by_name = {piece.name: piece for piece in _near(site, list(pieces))}
    items = [Item(piece.name, 1, tuple(_ways(site, piece))) for piece in by_name.values()]
    requires = {piece.name: piece.requires for piece in by_name.values()}
    wanted = Wanted(tuple(_start(site)), _goals(needs))
    outcomes: dict[tuple[str, ...], Outcome] = {}

    def cost(names: tuple[str, ...]) -> Cost | None:
        found = best_outcome(site, needs, [by_name[name] for name in names])
        if found is None:
            return None
        outcomes[names] = found
        return found.cost

    found = cheapest_set(_useful(items, wanted, requires), wanted, cost)
    if found is None:
        raise ValueError("a radio that stays must fit the car's plug, so that it can be left as it was")
    return found.names, outcomes[found.names]


def _near(site: Site, pieces: Sequence[Piece]) -> list[Piece]:
    """The pieces that can be plugged in at all, if only through others; one without a plug may always be joined."""
    open_ = {half for half in (*site.car, site.unit, site.radio) if half}
    near: dict[str, Piece] = {piece.name: piece for piece in pieces if not piece.plugs}
    for _ in pieces:
        for piece in pieces:
            if any(half.mates(other) for half in piece.plugs.values() for other in open_):
                near[piece.name] = piece
                open_.update(piece.plugs.values())
    return list(near.values())


def _useful(
    items: Sequence[Item[Node]], wanted: Wanted[Node], requires: Mapping[str, frozenset[str]]
) -> list[Item[Node]]:
    """The items that anything could come of with all others bought too, and those that they require."""
    arcs = [Arc(node, (), lambda: 0) for node in wanted.start]
    arcs += [Arc(head, tails, lambda *_: 0) for item in items for tails, heads in item.ways for head in heads]
    reached = least_values(arcs)
    useful = {item.name for item in items if any(_reaches(way, reached) for way in item.ways)}
    for _ in items:
        useful |= {name for one in useful for name in requires.get(one, ())}
    return [item for item in items if item.name in useful]


def _reaches(way: Way, reached: Mapping[Node, int]) -> bool:
    tails, heads = way
    return heads[0][0] != HAS and all(tail in reached for tail in tails)


def _start(site: Site) -> Iterator[Node]:
    for circuit in CIRCUITS:
        yield from (_on(FROM_CAR, half, circuit) for half in site.car)
        if site.radio:
            yield _on(OF_RADIO, site.radio, circuit)
            if any(half.mates(site.radio) for half in site.car):
                yield (FROM_CAR, STAYS, circuit)
        if site.unit and any(half.mates(site.unit) for half in site.car):
            yield (FROM_CAR, LEAD, circuit)


def _on(origin: str, half: Half, circuit: Circuit) -> Node:
    return origin, half.connector, half.side, circuit


def _goals(needs: Sequence[Need]) -> tuple[tuple[Node, ...], ...]:
    """One goal a need, so that they can be counted; those that must be fed come first."""
    return tuple(tuple(_goal(need) for need in needs if need.must is must) for must in (True, False))


def _goal(need: Need) -> Node:
    if need.kind == "through":
        return FROM_CAR, STAYS, need.circuit
    return OF_RADIO if need.kind == "from radio" else FROM_CAR, LEAD, need.circuit


def _ways(site: Site, piece: Piece) -> Iterator[Way]:
    """What a piece may do at best: every circuit that it joins for certain, whatever else is plugged in."""
    yield (), ((HAS, piece.name),)
    has = tuple((HAS, name) for name in sorted(piece.requires))
    for circuit in dict.fromkeys((*piece.links, *piece.makes)):
        for origin in (FROM_CAR, OF_RADIO):
            yield from _through(site, piece, circuit, origin, has)
        for point in piece.makes.get(circuit, ()):
            yield has, (_at(FROM_CAR, piece, point, circuit),)
    wants = tuple((FROM_CAR, LEAD, circuit) for circuit in piece.wants)
    for circuit in piece.gives:
        yield (*has, *wants), ((FROM_CAR, LEAD, circuit),)


def _at(origin: str, piece: Piece, point: Point, circuit: Circuit) -> Node:
    return origin, piece.name, *point, circuit


def _through(site: Site, piece: Piece, circuit: Circuit, origin: str, has: tuple[Node, ...]) -> Iterator[Way]:
    """A circuit in at the plugs of a piece, along its links, and out again; a lead is no way in."""
    for link in piece.links.get(circuit, ()):
        if link.sure:
            ends = (_at(origin, piece, link.one, circuit), _at(origin, piece, link.other, circuit))
            yield (ends[0],), (ends[1],)
            yield (ends[1],), (ends[0],)
    for point in points_of(piece, circuit):
        here = _at(origin, piece, point, circuit)
        half = piece.plugs.get(point[0])
        if half:
            side: PlugSide = "unit side" if half.side == "vehicle side" else "vehicle side"
            yield (*has, _on(origin, Half(half.connector, side), circuit)), (here,)
        yield (here,), tuple(_out(site, half, origin, circuit))


def _out(site: Site, half: Half | None, origin: str, circuit: Circuit) -> Iterator[Node]:
    if half is None or (site.unit and half.mates(site.unit)):
        yield origin, LEAD, circuit
    if half:
        yield _on(origin, half, circuit)
        if site.radio and half.mates(site.radio):
            yield origin, STAYS, circuit
