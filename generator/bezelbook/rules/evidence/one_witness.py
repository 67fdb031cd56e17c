"""A job is to come, and what is wished for was seen to go in once only."""

from collections.abc import Iterator

from bezelbook.finding import Finding, Quote, Rule, VehicleScope
from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.evidence import unreplaced, witnesses
from bezelbook.reasoning.losses import TOO_DEEP
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.words import STRONG


def check(scope: VehicleScope) -> Iterator[Finding]:
    """One finding for each thing at a place that a job wishes for and one job alone has shown."""
    wished = {(wish.place, wish.what) for job in scope.book.jobs.values() for wish in job.wishes if wish.place}
    for place, what in sorted(wished):
        notes = unreplaced(scope.book.notes_at(scope.vehicle, place or ""))
        tried = [note for note in notes if isinstance(note, Tried) and note.what == what and note.sure in STRONG]
        yeses = [note for note in tried if note.verdict == "goes in"]
        if yeses and len(yeses) == len(tried) and witnesses(yeses) == 1:
            yield _finding(scope, yeses)


def _finding(scope: VehicleScope, yeses: list[Tried]) -> Finding:
    note = yeses[0]
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{note.place}/{note.what}",
        weight="tidy up",
        says="a job is booked on what one job alone has shown",
        quotes=tuple(Quote.of(scope.book, one, ("verdict",)) for one in yeses[:2]),
        difference="how many have seen it",
        proposals=(Proposal("how sure", "how sure: write at this job whether it went as the page says"),),
        loss=TOO_DEEP,
        question="Will the next job write down whether it went in?",
        answers=("yes", "it has been done before", "look before"),
        vehicle=scope.vehicle,
        place=note.place,
    )


RULE = Rule("one-witness", "One witness for a job", "gap", __doc__ or "", VehicleScope, check)
