"""The adapters and modules of a book as pieces of wiring in one build of a car."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.module.record import Module
from bezelbook.reasoning.circuits.cars import Car
from bezelbook.reasoning.circuits.contents import NOT_LOOKED, Held, contents
from bezelbook.reasoning.circuits.metered_through import leads_of, links_of, made_by_itself
from bezelbook.reasoning.circuits.suits import Suit, adapter_suits, module_suits, reads_bus
from bezelbook.reasoning.circuits.wiring import Half, Link, Output, Piece, State
from bezelbook.values.words import CIRCUITS, Circuit

PROVEN, ON_SHELF, TO_ORDER = 0, 1, 2


@dataclass(frozen=True)
class Candidate:
    """A piece of wiring beside the record that it is of."""

    piece: Piece
    record: Adapter | Module
    suit: Suit


def name_of(kind: str, id_: str) -> str:
    """What a piece is called in a search: no adapter and no module share it."""
    return f"{kind}/{id_}"


def candidates(car: Car, closing: frozenset[Circuit] = frozenset()) -> tuple[Candidate, ...]:
    """Every piece that may be used in a build: what is known to be wrong there is left out.

    Of the circuits in `closing`, an adapter that cuts them and has a loop-back for them is taken with that in.
    """
    shelf = {stock.thing for stock in car.book.shelf.values() if stock.count > 0}
    found = [*_adapters(car, shelf, closing), *_modules(car, shelf)]
    return tuple(sorted(found, key=lambda one: one.piece.name))


def _adapters(car: Car, shelf: set[str], closing: frozenset[Circuit]) -> Iterator[Candidate]:
    for adapter in car.book.adapters.values():
        suit = adapter_suits(car, adapter)
        if suit.is_ != "wrong":
            piece = _adapter(car, adapter, suit, _standing(adapter.id, suit, shelf))
            yield Candidate(_closed(piece, adapter, closing), adapter, suit)


def _modules(car: Car, shelf: set[str]) -> Iterator[Candidate]:
    for module in car.book.modules.values():
        suit = module_suits(car, module)
        if suit.right:
            yield Candidate(_module(module, _standing(module.id, suit, shelf)), module, suit)


def _standing(id_: str, suit: Suit, shelf: set[str]) -> int:
    return PROVEN if suit.used.sure else ON_SHELF if id_ in shelf else TO_ORDER


def _adapter(car: Car, adapter: Adapter, suit: Suit, standing: int) -> Piece:
    ends = adapter.ends.items()
    plugs = {letter: Half(end.connector, end.side) for letter, end in ends if end.connector and end.side}
    links = links_of(car.book, adapter)
    needs = adapter.needs_module if isinstance(adapter.needs_module, tuple) else ()
    made = (way.made_by for way in adapter.circuits.values() if way.does == "makes" and way.made_by)
    return Piece(
        name=name_of("adapter", adapter.id),
        plugs=plugs,
        leads=frozenset(leads_of(adapter)),
        links=links,
        makes=made_by_itself(car.book, adapter),
        sees={
            letter: _sees(car, adapter, letter, half.connector, suit, links)
            for letter, half in plugs.items()
            if half.side == "unit side" and half.connector in car.book.connectors
        },
        requires=frozenset(name_of("module", module) for module in (*needs, *made)),
        standing=standing,
    )


def _closed(piece: Piece, adapter: Adapter, closing: frozenset[Circuit]) -> Piece:
    """The same piece with its loop-backs in, so that what they close goes straight through."""
    closes = closing & {circuit for loop in adapter.loop_backs for circuit in loop.closes}
    cut = {circuit: links for circuit, links in piece.links.items() if circuit in closes and len(links) == 2}
    whole = {circuit: (Link(links[0].one, links[1].one),) for circuit, links in cut.items() if links[0].other[1]}
    return replace(piece, links={**piece.links, **whole})


def _sees(
    car: Car, adapter: Adapter, letter: str, connector: str, suit: Suit, links: Mapping[Circuit, tuple[Link, ...]]
) -> Mapping[Circuit, State]:
    held = contents(car, connector)
    return {
        circuit: _state(
            held.get(circuit, NOT_LOOKED),
            suit,
            circuit,
            takes=any(link.sure and letter in (link.one[0], link.other[0]) for link in links.get(circuit, ())),
            right=suit.right or _same_cavity(adapter, circuit, letter, held.get(circuit, NOT_LOOKED)),
        )
        for circuit in CIRCUITS
    }


def _state(held: Held, suit: Suit, circuit: Circuit, *, takes: bool, right: bool) -> State:
    """What the car has behind a plug of an adapter that is or is not known to be right for it."""
    if not right:
        return held.state if held.state == "not there" else "not looked"
    if suit.used.sure and takes and circuit in suit.used.heard and held.state in ("said", "not looked"):
        return "known"
    if held.state == "not looked" and suit.right and takes:
        return "said"
    return held.state


def _same_cavity(adapter: Adapter, circuit: Circuit, letter: str, held: Held) -> bool:
    """Whether an adapter takes a circuit from the very cavity in which a note that counts found it."""
    way = adapter.circuits.get(circuit)
    return held.state == "known" and way is not None and held.cavities == {way.cavities.get(letter)}


def _module(module: Module, standing: int) -> Piece:
    needs = module.needs_adapter if isinstance(module.needs_adapter, tuple) else ()
    true = reads_bus(module) and module.network in (None, "bus")
    return Piece(
        name=name_of("module", module.id),
        wants=module.needs,
        gives={
            circuit: Output(output.most.base if output.most else None, true)
            for circuit, output in module.outputs.items()
        },
        requires=frozenset(name_of("adapter", adapter) for adapter in needs),
        standing=standing,
    )
