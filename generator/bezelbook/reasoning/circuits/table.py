"""What becomes of every circuit in a chain: used, looped, capped, not there or unknown, and by which lead."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.kinds.module.record import Module
from bezelbook.reasoning.circuits.chain import Chain
from bezelbook.reasoning.circuits.contents import contents
from bezelbook.reasoning.circuits.nets import points_of
from bezelbook.reasoning.circuits.outcome import Feed
from bezelbook.reasoning.circuits.pieces import Candidate
from bezelbook.reasoning.circuits.wiring import FED, Need
from bezelbook.values.shown import show_quantity
from bezelbook.values.words import CIRCUITS, Circuit

Becomes = Literal["used", "looped", "capped", "not there", "unknown"]
NONE_THERE = "this car has none in the plug"
_TELLS = {"said": "not proven in this build: meter it first", "argued over": "argued over: meter it first"}
# What something may hang on; the others are signals, of which nobody draws a current.
FEEDS: tuple[Circuit, ...] = (
    *("constant", "accessory", "ignition", "illumination", "dimmer"),
    *("amplifier turn-on", "aerial feed", "reverse", "camera supply"),
)


@dataclass(frozen=True, slots=True)
class Row:
    """One circuit of a chain; `must` is whether the job cannot be done without it."""

    circuit: Circuit
    becomes: Becomes
    words: str
    must: bool


def table(chain: Chain) -> tuple[Row, ...]:
    """Every circuit that the job needs or that comes out of a piece, in the usual order."""
    return tuple(row for circuit in CIRCUITS for row in _rows(chain, circuit))


def _rows(chain: Chain, circuit: Circuit) -> Iterator[Row]:
    feeds = chain.outcome.feeds if chain.outcome else {}
    found = [(need, feed) for need, feed in feeds.items() if need.circuit == circuit and not chain.is_idle(need)]
    fed = [(need, feed) for need, feed in found if need.kind != "through"] or found
    must = any(need.must for need, _ in found)
    if not fed:
        takers = _takers(chain, circuit)
        if takers:
            yield Row(circuit, "used", f"goes to the {' and the '.join(takers)}", must=False)
        elif _comes_out(chain, circuit):
            yield Row(circuit, "capped", "not used: cap each end by itself", must=False)
        return
    states = [feed.state for _, feed in fed]
    if all(state in FED for state in states):
        becomes: Becomes = "looped" if all(need.kind == "through" for need, _ in fed) else "used"
        yield Row(circuit, becomes, _all_said(chain, fed), must)
    elif "not looked" in states:
        yield Row(circuit, "unknown", _unknown(chain, circuit), must)
    else:
        yield Row(circuit, "not there", _absent(chain, circuit), must)


def _all_said(chain: Chain, fed: list[tuple[Need, Feed]]) -> str:
    """How each need of a circuit is fed; the two halves of a cut pair in one breath where they come out alike."""
    said = {need.kind: _said(chain, need, feed) for need, feed in fed}
    ways = {words.partition(", ")[2] for words in said.values()}
    if "from radio" in said and len(said) > 1 and len(ways) == 1:
        return f"from the radio and back to the speaker, {ways.pop()}"
    return "; ".join(said.values())


def _said(chain: Chain, need: Need, feed: Feed) -> str:
    how = {
        "through": "goes on to the radio",
        "from radio": "from the radio",
        "to car": "to the speaker",
        "tap": "tapped",
    }
    words = [how.get(need.kind), _by(chain, need.circuit, feed), _TELLS.get(feed.state)]
    return ", ".join(word for word in words if word)


def _by(chain: Chain, circuit: Circuit, feed: Feed) -> str:
    """Where it is joined: the lead of an adapter, or the box that makes it and how much it gives."""
    if feed.at is None:
        return "" if chain.task and chain.task.site.radio else "through the plug"
    piece = next(one for one in chain.pieces if one.piece.name == feed.at[0])
    if isinstance(piece.record, Module):
        most = piece.record.outputs[circuit].most
        limit = f"{show_quantity(most)} at most, a relay for more" if most else "nobody noted how much it gives"
        return f"made by the {piece.record.name}{f', {limit}' if circuit in FEEDS else ''}"
    way = piece.record.circuits.get(circuit)
    lead = f" ({way.lead})" if way and way.lead else ""
    return f"lead{lead} of the {piece.record.name}"


def _takers(chain: Chain, circuit: Circuit) -> list[str]:
    """The modules at work that want it."""
    working = chain.outcome.working if chain.outcome else frozenset()
    return [one.record.name for one in chain.pieces if one.piece.name in working and circuit in one.piece.wants]


def _comes_out(chain: Chain, circuit: Circuit) -> bool:
    """Whether it ends on a bare lead of a piece, or in a module, with nothing to join it to."""
    return any(
        circuit in one.piece.gives
        or any(point[0] in one.piece.leads for point in points_of(one.piece, circuit) if _is_traced(one, circuit))
        for one in chain.pieces
    )


def _is_traced(one: Candidate, circuit: Circuit) -> bool:
    """Whether a lead for it is known to be there: what nobody looked at may be no lead at all."""
    return isinstance(one.record, Adapter) and circuit in one.record.circuits


def _unknown(chain: Chain, circuit: Circuit) -> str:
    untraced = [
        one.record.name for one in chain.pieces if any(not link.sure for link in one.piece.links.get(circuit, ()))
    ]
    if untraced:
        stays = chain.task is not None and chain.task.site.radio is not None
        then = "" if stays else ": cap each end until somebody has"
        return f"not traced through the {' and the '.join(untraced)}{then}"
    return "nobody has looked whether the car has it there"


def _absent(chain: Chain, circuit: Circuit) -> str:
    held = (contents(chain.car, connector).get(circuit) for connector in chain.plugs.connectors)
    if any(one and one.state == "not there" for one in held):
        return NONE_THERE
    for one in chain.pieces:
        way = one.record.circuits.get(circuit) if isinstance(one.record, Adapter) else None
        if way and way.does == "not there":
            return f"the {one.record.name} has no lead for it"
    return "no piece brings it"
