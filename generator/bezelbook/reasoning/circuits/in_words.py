"""What a chain comes to as the shop says it: its verdict, circuits that fare alike together, loads, own supply."""

from collections.abc import Mapping, Sequence

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.circuits.chain import Chain, Verdict
from bezelbook.reasoning.circuits.contents import contents
from bezelbook.reasoning.circuits.remedies import lacks
from bezelbook.reasoning.circuits.resistors import loads
from bezelbook.reasoning.circuits.spoken import spoken
from bezelbook.reasoning.circuits.table import Row, table
from bezelbook.reasoning.circuits.wiring import FED, SPEAKERS
from bezelbook.values.listed import listed
from bezelbook.values.words import Circuit

TITLES: Mapping[str, str] = {
    "replace the radio": "Replace the radio",
    "keep it and amplify": "Keep the radio, amplify the fronts",
    "add a sub": "Keep the radio, add a sub",
    "two-piece radio": "A radio in two pieces",
}
VERDICTS: dict[Verdict, str] = {
    "complete": "complete",
    "complete if": "complete, once the looks below are made",
    "not complete": "not complete",
    "nothing mates": "nothing in the book that is known to be right here does it",
    "plug not looked": "nobody knows: the plug comes first",
}


def verdict_words(chain: Chain) -> str:
    """What a chain comes to, and what is missing where the rest of the job is served."""
    words = VERDICTS[chain.verdict]
    if chain.verdict == "complete":
        unproven = _unproven(chain)
        return f"{words}; {spoken(unproven)} to be metered first" if unproven else words
    if chain.verdict != "not complete" or chain.outcome is None:
        return words
    feeds = {need: feed for need, feed in chain.outcome.feeds.items() if need.must and not chain.is_idle(need)}
    missing = [need.circuit for need, feed in feeds.items() if feed.state not in FED]
    sound = [need for need in feeds if need.circuit in SPEAKERS]
    served = sound and all(feeds[need].state in FED for need in sound)
    return f"{'complete for the speakers; missing' if served else 'not complete: missing'} {spoken(missing)}"


def _unproven(chain: Chain) -> list[Circuit]:
    """What the job can be done without, and which nobody has proven in this build."""
    feeds = chain.outcome.feeds if chain.outcome else {}
    return list(dict.fromkeys(need.circuit for need, feed in feeds.items() if feed.state in ("said", "argued over")))


def _with_speakers(chain: Chain) -> list[str]:
    """The plugs in which notes found a speaker; all of them where none did, or where a radio goes in."""
    every = list(chain.plugs.connectors)
    held = {one: contents(chain.car, one) for one in every}
    found = [one for one in every if any(of in SPEAKERS and held[one][of].state in FED for of in held[one])]
    return found if found and chain.task and chain.task.site.radio else every


def would_do(chain: Chain) -> str:
    """What would do a job for which no piece goes into the plug; empty where some do. Common practice, no source."""
    plugs = listed([chain.car.book.connectors[connector].name for connector in _with_speakers(chain)], "or")
    if chain.verdict != "nothing mates":
        return ""
    if chain.job.name in ("replace the radio", "two-piece radio"):
        return f"It takes an adapter that goes into {plugs} and ends in bare leads."
    pairs = "cuts the front speakers" if chain.job.name == "keep it and amplify" else "taps two of the speakers"
    return (
        f"It takes a T that goes between {plugs} and the radio and {pairs}; or the sound taken at the speakers "
        "themselves, with their linings off."
    )


def load_words(chain: Chain) -> str:
    """What is known of load resistors for the pairs that the radio has lost; empty when it has lost none."""
    load = loads(chain)
    if load is None:
        return ""
    pairs = spoken(load.circuits)
    proven = f"{', '.join(load.values)} was proven."
    return {
        "needed": f"Load resistors across {pairs} from the radio: without them it failed in this build. {proven}",
        "not needed": f"Load resistors across {pairs} from the radio: not needed, it played without in this build.",
        "argued over": f"Load resistors across {pairs} from the radio: argued over; until settled: needed. {proven}",
        "unknown": f"Load resistors across {pairs} from the radio: unknown. Nobody tried this build with and without: "
        "a ten-minute test with the speakers off.",
    }[load.wanted]


def own_supply(chain: Chain) -> str:
    """What an added amplifier wants that no piece of a chain brings; empty where none is added. Common practice."""
    if chain.job.name not in ("keep it and amplify", "add a sub"):
        return ""
    return (
        "The amplifier has a constant of its own, fused beside the battery, and a ground of its own on bare metal. "
        "Neither comes through these pieces: they bring it its sound and what wakes it."
    )


def rows_together(rows: Sequence[Row]) -> tuple[tuple[str, str, str], ...]:
    """Circuits that fare alike in one line, each with what becomes of it and how."""
    found: dict[tuple[str, str], list[Row]] = {}
    for row in rows:
        found.setdefault((row.becomes, row.words), []).append(row)
    return tuple((spoken(row.circuit for row in alike), *key) for key, alike in found.items())


def lacks_together(chain: Chain) -> tuple[tuple[str, str], ...]:
    """What is missing, circuits with the same remedies in one line."""
    found: dict[tuple[str, ...], list[Row]] = {}
    by_circuit = {row.circuit: row for row in table(chain)}
    for lack in lacks(chain):
        found.setdefault(lack.remedies, []).append(by_circuit[lack.circuit])
    return tuple((spoken(row.circuit for row in alike), "; or ".join(said)) for said, alike in found.items())


def in_hand(book: KnowledgeBase, piece: str) -> str:
    """Whether a piece, by its id, lies on the shelf or has to be ordered."""
    there = any(stock.thing == piece and stock.count > 0 for stock in book.shelf.values())
    return "on the shelf" if there else "to order"


def ends_words(book: KnowledgeBase, adapter: Adapter) -> str:
    """From which plug to what, in the order of its ends."""
    found = [(book.connectors.get(end.connector or ""), end.ends_in) for end in adapter.ends.values()]
    return " to ".join(plug.name if plug else words or "an end nobody looked at" for plug, words in found)
