"""A question has come more than once, and nobody could answer it."""

from collections.abc import Iterator

from bezelbook.finding import BookScope, Finding, Quote, Rule
from bezelbook.kinds.asked.record import Asked
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.reasoning.losses import SALE_LOST
from bezelbook.reasoning.proposal import Proposal

OFTEN = 2


def check(scope: BookScope) -> Iterator[Finding]:
    """One finding for each place that was asked about twice, or for each wording where the place was not understood."""
    groups: dict[tuple[str, str, str], list[Asked]] = {}
    for one in scope.book.questions.values():
        about = (one.vehicle or "", one.place or "", folded(one.what or ("" if one.place else one.words)))
        groups.setdefault(about, []).append(one)
    for about, asked in sorted(groups.items()):
        times = sum(one.times for one in asked)
        if times >= OFTEN:
            yield _finding(scope.book, about, asked, times)


def _finding(book: KnowledgeBase, about: tuple[str, str, str], asked: list[Asked], times: int) -> Finding:
    vehicle, place, what = about
    known = vehicle in book.vehicles
    often = max(asked, key=lambda one: (one.times, one.id))
    return Finding(
        rule=RULE.name,
        key="/".join(filter(None, (RULE.name, vehicle, place, what))),
        weight="look first",
        says=f'"{often.words}" was asked {times} times, and nobody could say',
        quotes=tuple(Quote(one.id, f"{one.words} ({one.times} times)", ("words",), "asked") for one in asked[:3]),
        difference="nobody has looked",
        proposals=(Proposal("scope", "give it to one person and the next such car: ten minutes"),),
        loss=SALE_LOST,
        question="Who looks, when?",
        answers=("a person and a car", "somebody here knows: write it down", "drop it"),
        vehicle=vehicle if known else "",
        place=place if known else "",
    )


RULE = Rule("asked-and-never-answered", "Asked again and again", "gap", __doc__ or "", BookScope, check)
