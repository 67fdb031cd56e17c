"""What was settled is open again: a note that was weighed says something else now, or the clash still stands."""

from collections.abc import Iterator

from bezelbook.finding import DecisionScope, Finding, Quote, Rule
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed


def check(scope: DecisionScope) -> Iterator[Finding]:
    """One finding for a decision that no longer does what it was made for; a note that agrees opens nothing."""
    decision, clash = scope.decision, _clash(scope)
    if clash is None:
        return
    why = _why(scope, clash)
    said = Quote(decision.id, f"{decision.decided}: {decision.reason}", ("decided",), "decision")
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{decision.id}",
        weight="look first",
        says=f"what was settled about this is open again: {why}",
        quotes=(said, *clash.quotes),
        difference=why,
        proposals=(
            Proposal("one is wrong", "weigh it again as the notes read now"),
            Proposal("scope", "write down what else would make them both true"),
        ),
        loss=clash.loss,
        question="Does what was settled still hold?",
        answers=("it holds", "settle it again", "go and look"),
        vehicle=clash.vehicle,
        place=clash.place,
    )


def _clash(scope: DecisionScope) -> Finding | None:
    """What is open again, if anything is; who goes and looks has not settled anything that could open again."""
    if scope.changed:
        return scope.raised
    return None if scope.decision.decided in ("go and look", "no problem") else scope.left


def _why(scope: DecisionScope, clash: Finding) -> str:
    if scope.changed:
        return f"{listed(scope.changed)} {'says' if len(scope.changed) == 1 else 'say'} something else now"
    weighed = {one.note for one in scope.decision.notes}
    others = [note for note in clash.notes if note not in weighed]
    if others:
        return f"{listed(others)}, which nobody weighed, {'speaks' if len(others) == 1 else 'speak'} against it"
    return "with it acting, they still cannot all be true"


RULE = Rule("settled-question-open-again", "Settled, and open again", "conflict", __doc__ or "", DecisionScope, check)
