"""A head unit is called one size class and its body was measured as another."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PartScope, Quote, Rule
from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.reasoning.losses import BOUGHT_TWICE
from bezelbook.reasoning.proposal import Proposal

# Common practice, no source: how high the body of each class is, in nanometres, at least and at most.
HIGH = {"single": (40, 60), "one and a half": (60, 90), "double": (85, 120), "wide double": (85, 120)}
MM = 1_000_000


def check(scope: PartScope) -> Iterator[Finding]:
    """One finding for a unit whose body is too low or too high for its class."""
    unit = scope.part
    if isinstance(unit, HeadUnit) and unit.body_height is not None and unit.size_class in HIGH:
        low, high = HIGH[unit.size_class]
        if not low * MM <= unit.body_height.base <= high * MM:
            yield _finding(unit, unit.body_height.typed)


def _finding(unit: HeadUnit, typed: str) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{unit.id}",
        weight="look first",
        says=f"{unit.name} is called {unit.size_class}, and its body is {typed} high",
        quotes=(Quote(unit.id, f"{unit.name}: {unit.size_class}, body height {typed}", ("body_height",), "head_unit"),),
        difference="the class, or the number",
        proposals=(Proposal("which thing", "the number is of the nose, or the class is another"),),
        loss=BOUGHT_TWICE,
        question="Which is it, the class or the number?",
        answers=("the class is another", "the number is of the nose", "put it on the bench"),
    )


RULE = Rule(
    "class-and-size-differ", "The class and the size do not go together", "conflict", __doc__ or "", PartScope, check
)
