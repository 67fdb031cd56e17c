"""Two head units agree in every size that both have, plug and nose among them, within their ±."""

from collections.abc import Iterator
from itertools import combinations

from bezelbook.finding import BookScope, Finding, Quote, Rule
from bezelbook.kinds.head_unit.record import HeadUnit
from bezelbook.reasoning.losses import BOUGHT_TWICE
from bezelbook.reasoning.proposal import Proposal

# Fewer sizes than this agree by chance.
LEAST = 3
SIZES = ("body_width", "body_height", "body_depth", "nose_width", "nose_height", "plug_and_bend")


def check(scope: BookScope) -> Iterator[Finding]:
    """One finding for each two that nothing on record tells apart."""
    for one, other in combinations(scope.book.head_units.values(), 2):
        if one.size_class == other.size_class and one.plug_exit == other.plug_exit and _alike(one, other):
            yield _finding(one, other)


def _alike(one: HeadUnit, other: HeadUnit) -> bool:
    pairs = [(getattr(one, size), getattr(other, size)) for size in SIZES]
    both = [(ours, theirs) for ours, theirs in pairs if ours is not None and theirs is not None]
    depths = one.body_depth is not None and other.body_depth is not None
    return (
        depths
        and len(both) >= LEAST
        and all(abs(ours.base - theirs.base) <= (ours.give or 0) + (theirs.give or 0) for ours, theirs in both)
    )


def _finding(one: HeadUnit, other: HeadUnit) -> Finding:
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{one.id}/{other.id}",
        weight="tidy up",
        says=f"nothing on record tells {one.name} from {other.name}",
        quotes=tuple(Quote(unit.id, unit.name, ("name",), "head_unit") for unit in (one, other)),
        difference="the name",
        proposals=(
            Proposal("which thing", "one thing with two names: keep one, and the other as a further word for it"),
        ),
        loss=BOUGHT_TWICE,
        question="Are these one thing, or two?",
        answers=("one thing, join them", "two things, keep both", "put both on the bench"),
    )


RULE = Rule("two-names-one-thing", "Two names, perhaps one thing", "conflict", __doc__ or "", BookScope, check)
