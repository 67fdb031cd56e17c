"""Free words at the counter that ask about wiring: what shows that they do, and which jobs they mean."""

from collections.abc import Collection, Sequence

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.circuits.two_piece import pairs
from bezelbook.reasoning.speakers.cells import SPEAKER_PLACES
from bezelbook.reasoning.wiring_asked.question import JobAsked, WiringQuestion, usual_places

# What nobody says who asks whether a thing goes in; common practice, no source.
SHOWS_IT = frozenset(
    [
        "harness",
        "harnesses",
        "adapter",
        "adaptor",
        "adapters",
        "adaptors",
        "wiring",
        "circuits",
        "lead",
        "leads",
        "aerial",
        "antenna",
        "amplify",
    ]
)
PHRASES = (
    ("keep", "the", "radio"),
    ("keep", "the", "factory", "radio"),
    ("keep", "radio"),
    ("replace", "the", "radio"),
    ("sub", "only"),
    ("add", "a", "sub"),
    ("which", "plug"),
    ("what", "plug"),
)


def asks_for_wiring(words: Sequence[str], left: Collection[str | None]) -> bool:
    """Whether words, of which those `left` named nothing in the book, ask about wiring."""
    return any(word in SHOWS_IT for word in left) or any(_says(words, phrase) for phrase in PHRASES)


def wiring_question(
    book: KnowledgeBase, vehicle: Vehicle, words: Sequence[str], places: Sequence[str], units: Sequence[str]
) -> WiringQuestion:
    """The question that words ask about a vehicle of which these places and head units were named.

    To keep the radio is for more sound, so it is answered with an amplifier and with a sub unless the words say which.
    """
    heard = [place for place in places if vehicle.places[place].kind in SPEAKER_PLACES]
    jobs: tuple[JobAsked, ...] = ("speaker lead",) if heard else tuple(_jobs(book, words, units))
    usual = usual_places(book, vehicle, jobs[0])
    return WiringQuestion(vehicle.id, tuple(places) or usual, jobs, unit=units[0] if len(units) == 1 else None)


def _jobs(book: KnowledgeBase, words: Sequence[str], units: Sequence[str]) -> list[JobAsked]:
    said = set(words)
    in_two = {unit.id for pair in pairs(book) for unit in (pair.display, pair.box)}
    if said & {"aerial", "antenna"}:
        return ["aerial"]
    if said & {"speaker", "speakers"} and not said & {"radio", "amplify", "sub"}:
        return ["speaker lead"]
    if in_two & set(units) or _says(words, ("two", "piece")):
        return ["two-piece radio"]
    louder: list[JobAsked] = ["keep it and amplify"] if said & {"amplify", "amp", "amplifier"} else []
    louder += ["add a sub"] if "sub" in said else []
    return louder or (["keep it and amplify", "add a sub"] if "keep" in said else ["replace the radio"])


def _says(words: Sequence[str], phrase: tuple[str, ...]) -> bool:
    return any(tuple(words[start : start + len(phrase)]) == phrase for start in range(len(words)))
