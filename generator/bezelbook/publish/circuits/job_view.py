"""One job in one build of a car as its part of a page: the pieces in order, every circuit, and what is missing."""

from collections.abc import Sequence
from dataclasses import dataclass

from markupsafe import Markup

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.publish.address import Links
from bezelbook.publish.circuits.runs import bars_of, runs_of
from bezelbook.publish.drawing.chain import chain_drawing
from bezelbook.reasoning.circuits.chain import Chain, Verdict
from bezelbook.reasoning.circuits.looks import looks
from bezelbook.reasoning.circuits.remedies import lacks
from bezelbook.reasoning.circuits.resistors import loads
from bezelbook.reasoning.circuits.spoken import spoken
from bezelbook.reasoning.circuits.table import Row, table
from bezelbook.reasoning.circuits.wiring import FED
from bezelbook.reasoning.unknowns import Missing

TITLES = {
    "replace the radio": "Replace the radio",
    "keep it and amplify": "Keep the radio, amplify the fronts",
    "add a sub": "Keep the radio, add a sub",
}
VERDICTS: dict[Verdict, str] = {
    "complete": "complete",
    "complete if": "complete, once the looks below are made",
    "not complete": "not complete",
    "nothing mates": "nothing in the book that is known to be right here does it",
    "plug not looked": "nobody knows: the plug comes first",
}
IN_HAND = ("proven in this build", "on the shelf", "to order")


@dataclass(frozen=True, slots=True)
class PieceLine:
    """A piece of a chain: its number in the drawing, its name, page and ends, and why it is right here."""

    number: int
    name: str
    at: str
    ends: str
    why: str


@dataclass(frozen=True, slots=True)
class JobView:
    """A job; `drawing` is empty when there is no chain. `rows` are circuits that fare alike, as one line."""

    title: str
    verdict: str
    sure: str
    pieces: tuple[PieceLine, ...]
    drawing: Markup | str
    rows: tuple[tuple[str, str, str], ...]
    lacks: tuple[tuple[str, str], ...]
    looks: tuple[Missing, ...]
    load: str


def job_view(chain: Chain, to: Links) -> JobView:
    """The view of a chain."""
    rows = table(chain) if chain.pieces else ()
    title = TITLES[chain.job.name]
    drawing = chain_drawing(bars_of(chain), runs_of(chain, rows), title) if chain.pieces else ""
    return JobView(
        title,
        verdict_words(chain),
        chain.sure or "",
        tuple(_piece(chain, number, to) for number in range(len(chain.pieces))),
        drawing,
        _grouped(rows),
        _lacks(chain) if chain.pieces else (),
        looks(chain),
        load_words(chain),
    )


def verdict_words(chain: Chain) -> str:
    """What a chain comes to, and what is missing where the rest of the job is served."""
    words = VERDICTS[chain.verdict]
    if chain.verdict != "not complete" or chain.outcome is None:
        return words
    feeds = {need: feed for need, feed in chain.outcome.feeds.items() if need.must and not chain.is_idle(need)}
    missing = [need.circuit for need, feed in feeds.items() if feed.state not in FED]
    sound = [need for need in feeds if need.circuit[-1] in "+-"]
    served = sound and all(feeds[need].state in FED for need in sound)
    return f"{'complete for the speakers; missing' if served else 'not complete: missing'} {spoken(missing)}"


def _piece(chain: Chain, number: int, to: Links) -> PieceLine:
    one = chain.pieces[number]
    kind, _, id_ = one.piece.name.partition("/")
    ends = _ends(chain, one.record) if isinstance(one.record, Adapter) else ""
    return PieceLine(
        number + 1, one.record.name, to.record(kind, id_), ends, f"{one.suit.why}; {IN_HAND[one.piece.standing]}"
    )


def _ends(chain: Chain, adapter: Adapter) -> str:
    """From which plug to what, in the order of its ends."""
    connectors = chain.car.book.connectors
    found = [(connectors.get(end.connector or ""), end.ends_in) for end in adapter.ends.values()]
    return " to ".join(plug.name if plug else words or "an end nobody looked at" for plug, words in found)


def _grouped(rows: Sequence[Row]) -> tuple[tuple[str, str, str], ...]:
    """Circuits that fare alike in one line, each with what becomes of it and how."""
    found: dict[tuple[str, str], list[Row]] = {}
    for row in rows:
        found.setdefault((row.becomes, row.words), []).append(row)
    return tuple((spoken(row.circuit for row in alike), *key) for key, alike in found.items())


def _lacks(chain: Chain) -> tuple[tuple[str, str], ...]:
    """What is missing, circuits with the same remedies in one line."""
    found: dict[tuple[str, ...], list[Row]] = {}
    by_circuit = {row.circuit: row for row in table(chain)}
    for lack in lacks(chain):
        found.setdefault(lack.remedies, []).append(by_circuit[lack.circuit])
    return tuple((spoken(row.circuit for row in alike), "; or ".join(said)) for said, alike in found.items())


def load_words(chain: Chain) -> str:
    """What is known of load resistors for the pairs that the radio has lost; empty when it has lost none."""
    load = loads(chain)
    if load is None:
        return ""
    pairs = spoken(load.circuits)
    values = f" {', '.join(load.values)} was proven." if load.values else ""
    return {
        "needed": f"Load resistors across {pairs} from the radio: without them it failed in this build.{values}",
        "not needed": f"Load resistors across {pairs} from the radio: not needed, it played without in this build.",
        "argued over": f"Load resistors across {pairs} from the radio: argued over; until settled: needed.{values}",
        "unknown": f"Load resistors across {pairs} from the radio: unknown. Nobody tried this build with and without: "
        "a ten-minute test with the speakers off.",
    }[load.wanted]
