"""Repeated readings of a place in the shop's words: what they come to, and where to look first at the one apart."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.agreement.components import components, group_of
from bezelbook.reasoning.agreement.consensus import e_n_squared, root_up
from bezelbook.reasoning.agreement.odd_one import Agreement, agreement
from bezelbook.reasoning.agreement.repeated import DEEP, Repeated, Same, Vote, repeated
from bezelbook.reasoning.evidence import UNCUT, Standing
from bezelbook.values.listed import listed
from bezelbook.values.shown import show_length, show_mm
from bezelbook.values.words import NINTHS


@dataclass(frozen=True, slots=True)
class Told:
    """One quantity that several jobs have read: what it is, what they come to, and what that means."""

    what: str
    repeated: Repeated
    agreement: Agreement
    comes_to: str
    says: str
    look_first: tuple[str, ...]
    repeats: str


def told_apart(book: KnowledgeBase, standing: Sequence[Standing]) -> tuple[Told, ...]:
    """Every quantity of a place that two jobs or more have read. It is told beside an answer, and changes none."""
    return tuple(_told(one, book.shop.units_first) for one in repeated(book, standing))


def _told(one: Repeated, first: str) -> Told:
    found = agreement([vote.figure for vote in one.votes])
    comes_to = _comes_to(found, first)
    return Told(
        quantity_words(one.same),
        one,
        found,
        comes_to,
        _says(one, found, comes_to, first),
        tuple(_look_first(one, found.odd)) if found.odd is not None else (),
        _repeats(one.votes),
    )


def quantity_words(same: Same) -> str:
    """What was read, and in which state, such as `depth at the centre from the sub-dash face, early`."""
    where = "" if not same.ninths else " everywhere" if same.ninths == NINTHS else f" at the {listed(same.ninths)}"
    face = f" from the {same.datum}" if same.datum else ""
    state = [value for _, value in same.build]
    state += [f"through {' and '.join(same.mounts)}"] if same.mounts else []
    state += [f"tabs {same.tabs}"] if same.tabs else []
    state += [f"{same.cut} cut"] if same.cut != UNCUT else []
    state += ["loom behind"] if same.loom == "behind" else []
    return ", ".join([f"{same.of}{where}{face}", *state])


def vote_words(vote: Vote, first: str) -> str:
    """What one job says: its figure with the ±, and by whom."""
    note = vote.notes[0]
    return f"{_figure(vote.figure.value, vote.figure.give, first)} ({note.author or 'not signed'}, {_day(note.date)})"


def _day(date: str | None) -> str:
    return date or "no date"


def _figure(value: Fraction, give: Fraction | int, first: str) -> str:
    return f"{show_length(round(value), first)} ± {show_mm(round(give))}"


def _comes_to(found: Agreement, first: str) -> str:
    return _figure(found.consensus.value, found.consensus.give, first)


def _says(one: Repeated, found: Agreement, comes_to: str, first: str) -> str:
    votes = one.votes
    if found.agree:
        return f"{len(votes)} jobs agree: {comes_to}"
    if found.odd is None:
        said = listed([vote_words(vote, first) for vote in votes])
        apart = "They" if len(votes) == 2 else f"{_furthest(votes, first)}, and all together they"
        return (
            f"{len(votes)} jobs do not agree: {said}. {apart} lie further apart than their ± explains, and nothing "
            f"singles one out; until somebody reads it again, reckon with {comes_to}"
        )
    return f"{len(votes) - 1} jobs agree: {comes_to}. One stands apart: {vote_words(votes[found.odd], first)}"


def _furthest(votes: Sequence[Vote], first: str) -> str:
    """The two that are furthest apart for their ±."""
    one, other = max(combinations(votes, 2), key=lambda pair: e_n_squared(pair[0].figure, pair[1].figure))
    said = (show_length(round(vote.figure.value), first) for vote in (one, other))
    return f"Furthest apart are {' and '.join(said)}"


def _look_first(one: Repeated, odd: int) -> Iterator[str]:
    """Where a reading that stands apart most often went wrong, what differs from the others before what does not."""
    apart = one.votes[odd]
    rest = [vote for index, vote in enumerate(one.votes) if index != odd]
    own, others = _tools([apart]), _tools(rest)
    if own != others:
        yield f"its tool: {listed(own)}, where the others used {listed(others)}"
    met, met_by_others = _hits([apart]), _hits(rest)
    if met and met_by_others and met != met_by_others:
        yield f"what it met: {listed(met)}, where the others met {listed(met_by_others)}"
    if one.same.of in DEEP:
        yield f"the face it was read from: it says {one.same.datum}"
    else:
        yield "whether it was read across the sub-dash and not across the finished bezel"
    if apart.house:
        yield "its ±: nobody typed one, so the house's for the tool stands"
    if any(note.year is not None and not note.splits for note in apart.notes) and one.same.build:
        yield "which build that car was: only its model year says so"


def _tools(votes: Sequence[Vote]) -> list[str]:
    return sorted({reading.tool or "no tool named" for vote in votes for reading in vote.readings})


def _hits(votes: Sequence[Vote]) -> list[str]:
    return sorted({reading.hits for vote in votes for reading in vote.readings if reading.hits})


def _repeats(votes: Sequence[Vote]) -> str:
    """How far the readings of one job lie apart and how much further those of several, where a job read twice."""
    if all(len(vote.values) == 1 for vote in votes):
        return ""
    found = components([group_of(vote.values) for vote in votes])
    within, between = root_up(found.within), root_up(found.variance_between)
    more = f"{show_mm(between)} more" if between else "no more than that"
    return f"read again within a job: {show_mm(within)} (one standard deviation); from job to job: {more}"
