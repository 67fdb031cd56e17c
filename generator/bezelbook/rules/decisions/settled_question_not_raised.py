"""A decision is about a question that nothing in the book raises any more."""

from collections.abc import Iterator

from bezelbook.finding import DecisionScope, Finding, Quote, Rule
from bezelbook.reasoning.losses import WALK
from bezelbook.reasoning.proposal import Proposal


def check(scope: DecisionScope) -> Iterator[Finding]:
    """One finding for a decision whose question has gone; it does nothing until somebody has looked."""
    decision = scope.decision
    if scope.raised is not None:
        return
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{decision.id}",
        weight="tidy up",
        says="something was settled that no note raises as it stands now, so the decision does nothing",
        quotes=(Quote(decision.id, f"{decision.decided}: {decision.reason}", ("question",), "decision"),),
        difference="the question it names is not among those that the book raises",
        proposals=(
            Proposal("which thing", "a note was mended since, and there is nothing left to settle"),
            Proposal("one is wrong", "the question was copied with a slip, or a build or a mount has a new name"),
        ),
        loss=WALK,
        question="Is it over, or is the question another one now?",
        answers=("it is over: take the decision out", "it belongs to another question: write that one", "leave it"),
    )


RULE = Rule("settled-question-not-raised", "Settled, and nobody asks", "gap", __doc__ or "", DecisionScope, check)
