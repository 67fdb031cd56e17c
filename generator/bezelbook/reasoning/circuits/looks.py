"""What somebody should look at before the pieces of a chain are joined, with what, and what it would change."""

from collections.abc import Iterator

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.reasoning.builds import bearing_axes
from bezelbook.reasoning.circuits.cars import tells
from bezelbook.reasoning.circuits.chain import Chain
from bezelbook.reasoning.circuits.contents import contents
from bezelbook.reasoning.circuits.factory_amplifier import amplifier_look
from bezelbook.reasoning.circuits.nets import CAR
from bezelbook.reasoning.circuits.spoken import spoken
from bezelbook.reasoning.circuits.wiring import State
from bezelbook.reasoning.unknowns import Missing
from bezelbook.values.listed import listed
from bezelbook.values.words import Circuit


def looks(chain: Chain) -> tuple[Missing, ...]:
    """Everything that a chain does not know, the plug first."""
    return (
        *_plug(chain),
        *_second_plug(chain),
        *_argued(chain),
        *_said(chain),
        *_untraced(chain),
        *_halves(chain),
        *_faults(chain),
        *_amplifier(chain),
        *_left_open(chain),
    )


def _plug(chain: Chain) -> Iterator[Missing]:
    plugs = chain.plugs
    if plugs.state == "known":
        if not plugs.connectors:
            yield Missing(
                f"the plug has no record: {listed([plug.words for plug in plugs.plugs])}",
                "caliper its face, count its cavities, look at its key, 5 min with the radio out",
                "whether anything mates",
            )
        return
    seen = listed([plug.words for plug in plugs.plugs], "or")
    what = {
        "argued over": f"the plug is argued over: {seen}",
        "said": f"the plug of this build was never seen for certain; said: {seen}",
        "not there": "no plug is there",
    }.get(plugs.state, "nobody has looked which plug it has")
    axes = bearing_axes(chain.car.vehicle, chain.car.place, "plug")
    seat = f"; from the seat: {tells(chain.car.vehicle, axes)}" if axes else ""
    yield Missing(what, f"look behind the radio, 2 min with the bezel off{seat}", "the adapter")


def _second_plug(chain: Chain) -> Iterator[Missing]:
    """The plugs of an adapter for which nobody has seen the other half in this build."""
    book = chain.car.book
    for one in chain.pieces:
        halves = [half.connector for half in one.piece.plugs.values() if half.side == "unit side"]
        for connector in halves:
            if connector in book.connectors and connector not in chain.plugs.connectors:
                name = book.connectors[connector].name
                yield Missing(
                    f"the {one.record.name} has a plug for {name}, which nobody has seen in this build",
                    "look behind the radio for it, 2 min with the bezel off",
                    "what would come through it",
                )


def _states(chain: Chain, state: State) -> list[Circuit]:
    feeds = chain.outcome.feeds if chain.outcome else {}
    return list(dict.fromkeys(need.circuit for need, feed in feeds.items() if feed.state == state))


def _argued(chain: Chain) -> Iterator[Missing]:
    for circuit in _states(chain, "argued over"):
        held = [contents(chain.car, connector).get(circuit) for connector in chain.plugs.connectors]
        cavities = sorted({str(one) for each in held if each for one in each.cavities}, key=int)
        where = f"cavities {listed(cavities, 'or')}" if cavities else "its cavity"
        yield Missing(
            f"{circuit} is argued over: {where}",
            f"meter {where} with the key out and on accessory, 3 min",
            "which lead is which: do not join any of them before",
        )


def _said(chain: Chain) -> Iterator[Missing]:
    said = _states(chain, "said")
    if said:
        yield Missing(
            f"{spoken(said)}: only as the adapter is sold, or from a car that may have been another build",
            "meter them at the plug with the radio out, 5 min",
            "whether they are where the adapter takes them",
        )


def _untraced(chain: Chain) -> Iterator[Missing]:
    wanted = set(_states(chain, "not looked"))
    through: dict[tuple[Circuit, ...], list[str]] = {}
    for one in chain.pieces:
        links = one.piece.links
        blank = tuple(circuit for circuit in links if circuit in wanted and not links[circuit][0].sure)
        through.setdefault(blank, []).append(f"the {one.record.name}")
    for blank, names in through.items():
        if blank:
            yield Missing(
                f"{spoken(blank)}: nobody has traced through {listed(names)}",
                "meter on the bench from end to end, 3 min",
                "whether the job gets them",
            )


def _halves(chain: Chain) -> Iterator[Missing]:
    """Where both halves of a cut pair come out at one end of a piece, on leads that look alike."""
    at: dict[tuple[str, str], set[str]] = {}
    for need, feed in chain.outcome.feeds.items() if chain.outcome else ():
        if feed.at and need.kind in ("from radio", "to car"):
            at.setdefault(feed.at, set()).add(need.kind)
    names = [one.record.name for one in chain.pieces for key in at if key[0] == one.piece.name and len(at[key]) == 2]
    for name in dict.fromkeys(names):
        yield Missing(
            f"which leads of the {name} come from the radio and which go to the speakers: all are on one end",
            "meter on the bench from each plug to each lead, 3 min",
            "an amplifier that plays into the radio",
        )


def _amplifier(chain: Chain) -> Iterator[Missing]:
    """Where the factory radio goes, what it fed is fed by the new one."""
    replaced = chain.task is not None and chain.task.site.radio is None
    look = amplifier_look(chain.car) if replaced and chain.pieces else None
    if look:
        yield look


def _left_open(chain: Chain) -> Iterator[Missing]:
    """The plugs of the car that no piece goes into."""
    used = {socket for pair in chain.outcome.plugged for socket in pair} if chain.outcome else set()
    halves = chain.task.site.car if chain.task and chain.pieces and not chain.task.site.radio else ()
    for number, half in enumerate(halves):
        if (CAR, str(number)) not in used:
            yield Missing(
                f"nothing goes into {chain.car.book.connectors[half.connector].name}",
                "look what was plugged in there, then tie it back, 2 min",
                "what hung on it is lost",
            )


def _faults(chain: Chain) -> Iterator[Missing]:
    for one in chain.pieces:
        for fault in one.record.known_faults if isinstance(one.record, Adapter) else ():
            yield Missing(
                f"the {one.record.name}: {fault.removesuffix('.')}",
                "check each lead on the bench, 3 min",
                "which lead is which",
            )
