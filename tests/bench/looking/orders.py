"""Which look is taken next: what the tool puts first, anything at all, or what was asked most."""

from collections import Counter as Tally
from collections.abc import Callable, Mapping
from random import Random

from bezelbook.reasoning.looks.bench_looks import RULER
from bezelbook.reasoning.looks.look import Look
from bezelbook.reasoning.looks.offer_looks import UNIT_ITSELF
from bezelbook.reasoning.looks.opening_looks import CALIPER, GAUGE
from tests.bench.looking.do import DEEP, FRONT, MOUNT, PLUGGED, SIZES, WHOLE, Do
from tests.bench.looking.draw import shop
from tests.bench.looking.shop import Shop

Order = Callable[[Shop, Random], Do]
# Looking at anything at all is given up once it has taken so many times the minutes of what the tool puts first.
STOPPED = 3
OFTEN = 5


def ours(one: Shop, dice: Random) -> Do:
    """The look that the tool puts first; anything at all where it knows of none."""
    could = one.could()
    return next((do for look in one.looks() if (do := as_do(one, look)) in could), dice.choice(could))


def at_random(one: Shop, dice: Random) -> Do:
    """Whatever is at hand."""
    return dice.choice(one.could())


def at_random_read_first(one: Shop, dice: Random) -> Do:
    """Whatever is at hand to read, and once all is read, any unit that is open."""
    could = one.could()
    return dice.choice([do for do in could if not do.is_offer] or could)


def most_asked_first(one: Shop, dice: Random) -> Do:
    """What bears on the open question that was asked most: its opening, then its unit, then what it goes in with.

    Once nothing of that is left to read, its unit is offered up.
    """
    could = one.could()
    read = [do for do in could if not do.is_offer]
    ranked = sorted(one.open, key=lambda pair: (-one.weights[pair], pair.vehicle, pair.place, pair.build, pair.unit))
    for pair in ranked:
        here = [do for do in read if do.where == (pair.vehicle, pair.place) and do.build == pair.build]
        used = [pair.unit, *(key for stack in one.open[pair].stacks for key in stack.key)]
        bench = [do for part in used for do in read if do.part == part]
        found = [*here, *bench, *one.offers(pair)]
        if found:
            return found[0]
    return dice.choice(could)


ORDERS: Mapping[str, Order] = {
    "ours": ours,
    "random": at_random,
    "random, read first": at_random_read_first,
    "most asked first": most_asked_first,
}


def as_do(one: Shop, look: Look) -> Do | None:
    """A look of the tool in terms of what can be done here; None for asking somebody and for offering up again."""
    todo = look.todo
    if todo.vehicle and todo.place and todo.tool == UNIT_ITSELF:
        return Do((todo.vehicle, todo.place), todo.builds[0], todo.about or "", WHOLE, todo.mounts)
    if todo.vehicle and todo.place:
        sizes = {CALIPER: FRONT, GAUGE: DEEP}.get(todo.tool)
        return Do((todo.vehicle, todo.place), todo.builds[0], "", sizes) if sizes else None
    part = todo.about or ""
    return Do(None, (), part, MOUNT if part in one.book.mounts else PLUGGED if todo.tool == RULER else SIZES)


def minutes_to_half(one: Shop, order: Order, most: int | None = None) -> int:
    """The minutes of looking in a shop until half is settled; no look is taken once `most` minutes are spent.

    What was looked at `OFTEN` times and is to be looked at again tells nothing, and would be looked at for ever.
    """
    one, dice = one.again(), Random(f"{one.seed} order")
    taken: Tally[Do] = Tally()
    while not one.half and (most is None or one.minutes < most):
        do = order(one, dice)
        taken[do] += 1
        if taken[do] > OFTEN:
            raise ValueError(f"{one.seed}: {do} was taken {OFTEN} times, and is to be taken again")
        one.do(do)
    return one.minutes if most is None else min(one.minutes, most)


def compared(seed: str) -> Mapping[str, int]:
    """The minutes by order in the shop of a seed; none where nothing is open, since all else can be offered up.

    Anything at all takes so long that it is left once it has taken `STOPPED` times as long as what the tool puts first,
    and counts as just that: less than it would take.
    """
    one = shop(seed)
    if not one.open:
        return {}
    first = minutes_to_half(one, ours)
    others = {name: order for name, order in ORDERS.items() if order is not ours}
    most: Mapping[Order, int] = {at_random: STOPPED * first}
    return {"ours": first} | {name: minutes_to_half(one, order, most.get(order)) for name, order in others.items()}
