"""What nobody knows about an order: each with where to look, with what, how long, and what it would change."""

from collections.abc import Iterator

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.evidence import witnesses
from bezelbook.reasoning.order.near import RESTRAINT
from bezelbook.reasoning.order.precedence import Before
from bezelbook.reasoning.order.removal import Circle, Removal
from bezelbook.reasoning.order.step import Step, name_of
from bezelbook.reasoning.unknowns import Missing
from bezelbook.values.listed import listed

NUMBERS = ("none", "one", "two", "three", "four", "five", "six")
# Nobody is sent to count, feel or pull there: the vehicle's service information says how it comes off.
EYES = "look at the next car, eyes only, 1 min"


def asked_of(book: KnowledgeBase, vehicle: Vehicle, removal: Removal) -> tuple[Missing, ...]:
    """Everything that this order leaves open, what is argued over first."""
    if not removal.written:
        return (_nobody_wrote(),)
    return (
        *(_argued(book, vehicle, circle) for circle in removal.argued),
        *(one for step in removal.steps for one in _of_step(book, vehicle, step)),
        *(_build_not_said(book, note) for note in removal.open_notes),
    )


def _nobody_wrote() -> Missing:
    return Missing(
        "nobody wrote what comes off first",
        "note it next time, piece by piece as it comes off, 3 min",
        "the order, the clips to have ready, the hours",
    )


def _argued(book: KnowledgeBase, vehicle: Vehicle, circle: Circle) -> Missing:
    claims = [
        f"{name_of(vehicle, one.first)} {_reason(one)} {name_of(vehicle, one.then)} "
        f"({listed([by_whom(book, note) for note in one.notes])})"
        for one in circle.befores
    ]
    return Missing(
        f"argued over: {listed(claims)}",
        "look at the next car which edge lies on top, and take a picture, 1 min",
        f"which of {listed([name_of(vehicle, piece) for piece in circle.pieces])} comes off first",
    )


def by_whom(book: KnowledgeBase, note: str) -> str:
    """Whose word a note is, and of which day."""
    said = book.notes[note]
    return f"{said.author or 'not signed'}, {said.date or 'no date'}"


def _reason(one: Before) -> str:
    """A before as words between two names."""
    first = one.why[0]
    return first if first in ("lies over", "overlaps the edge of", "traps") else f"comes off first ({first}) before"


def _of_step(book: KnowledgeBase, vehicle: Vehicle, step: Step) -> Iterator[Missing]:
    if step.stands == "asked":
        yield Missing(
            f"{_few(step.lists)} of {_few(step.out_of)} jobs took the {step.name} off: needed or habit?",
            EYES,
            "one step more or less",
        )
    elif 0 < step.lists < step.out_of:
        yield Missing(
            f"{_few(step.lists)} of {_few(step.out_of)} jobs listed the {step.name}, and something asks for it: "
            "did the others leave it on, or not write it down?",
            EYES,
            "whether it has to come off at all",
        )
    if step.stands == "a layer":
        yield Missing(f"nobody wrote whether the {step.name} itself comes off", EYES, "whether that step is one")
    for one in step.first:
        if not one.says_why:
            yield Missing(
                f"nobody wrote why the {name_of(vehicle, one.first)} is off before the {step.name}: "
                "overlap, reach, cable, screw or habit?",
                "ask who wrote it, or look, 1 min",
                "whether the order is a must",
            )
    if RESTRAINT not in step.safety:
        yield from _differing(book, step)


def _differing(book: KnowledgeBase, step: Step) -> Iterator[Missing]:
    """Where notes about one piece do not say the same; the safe side is taken until somebody looks."""
    for fixing in step.held:
        if len(fixing.counts) > 1:
            said = listed([str(count.what) for count in fixing.counts], "or")
            yield Missing(
                f"{said} × {fixing.name} on the {step.name}",
                "count them off the back of it, 1 min",
                f"how many to have ready: {fixing.most} until then",
            )
    if len(step.lead_edges) > 1:
        edges = listed([one.what for one in step.lead_edges], "or")
        yield Missing(f"start at the {edges} of the {step.name}?", EYES, "which hook snaps")
    if len(step.pulls) > 1:
        ways = listed([", then ".join(one.what) for one in step.pulls], "or")
        yield Missing(f"{ways}: which way does the {step.name} come?", EYES, "which hook snaps")
    jobs = _jobs(book, step.notes)
    for hook in step.hooks:
        if (seen := _jobs(book, hook.notes)) < jobs:
            yield Missing(
                f"hooks on the {step.name}, in {_few(seen)} of {_few(jobs)} jobs: {hook.what}",
                "feel along that edge before you pull, 1 min",
                "which hook snaps",
            )


def _build_not_said(book: KnowledgeBase, note: str) -> Missing:
    author = book.notes[note].author or "its author"
    return Missing(
        f"the note of {by_whom(book, note)}, does not say which build the car was",
        f"ask {author}",
        "how far that note carries",
    )


def _jobs(book: KnowledgeBase, notes: tuple[str, ...]) -> int:
    return witnesses(book.notes[id_] for id_ in notes)


def _few(number: int) -> str:
    return NUMBERS[number] if number < len(NUMBERS) else str(number)
