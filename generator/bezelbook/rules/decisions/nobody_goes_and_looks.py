"""Somebody was to go and look, and nobody has a name for it, or it has waited nine weeks."""

from collections.abc import Iterator
from datetime import date

from bezelbook.finding import DecisionScope, Finding, Quote, Rule
from bezelbook.kinds.decision.record import Decision
from bezelbook.reasoning.proposal import Proposal

# Common practice, no source.
PATIENCE_DAYS = 63


def check(scope: DecisionScope) -> Iterator[Finding]:
    """One finding for a look that nobody owns or nobody took, while its question is still open."""
    decision, raised = scope.decision, scope.raised
    why = _why(decision, scope.today)
    if decision.decided != "go and look" or raised is None or why is None:
        return
    what = decision.look.what if decision.look else "nobody wrote down what to look at"
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{decision.id}",
        weight="look first",
        says=f"an open argument waits for a look, and {why}",
        quotes=(Quote(decision.id, what, ("decided",), "decision"), *raised.quotes),
        difference=why,
        proposals=(Proposal("scope", "name one person and one next car, or say that nobody will ever know"),),
        loss=raised.loss,
        question="Who looks, on which car?",
        answers=("a person and a car", "close it as unknown", "next time"),
        vehicle=raised.vehicle,
        place=raised.place,
    )


def _why(decision: Decision, today: str | None) -> str | None:
    if decision.look is None or decision.look.who is None:
        return "nobody has a name beside it"
    days = _days(decision.date, today)
    return f"it has waited {days // 7} weeks" if days >= PATIENCE_DAYS else None


def _days(since: str | None, until: str | None) -> int:
    return (date.fromisoformat(until) - date.fromisoformat(since)).days if since and until else 0


RULE = Rule("nobody-goes-and-looks", "An open argument that nobody owns", "gap", __doc__ or "", DecisionScope, check)
