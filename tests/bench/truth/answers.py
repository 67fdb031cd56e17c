"""Firm answers that a false note makes wrong, and whether anything said so beside them."""

from collections import Counter as Tally
from random import Random

from tests.bench.truth.books import Judged
from tests.simulator.counter import FIRM, asks


def wrong_answers(book: Judged, near: int, most: int) -> Tally[str]:
    """How many firm answers about places with a false note are wrong, and how many of those with nothing flagged there.

    At most so many questions a place, published and made-up ones alike. Unflagged by an ideal detector are those where
    no false note can be found out at all.
    """
    false = {where: [note.name for note in book.false_at(where)] for where in book.places}
    asked: dict[tuple[str, str], list[object]] = {}
    questions = [ask for ask in asks(book.made, near) if false[ask.platform.name, ask.place]]
    Random(f"{book.made.seed} order").shuffle(questions)
    tally: Tally[str] = Tally()
    for ask in questions:
        where = (ask.platform.name, ask.place)
        if len(asked.setdefault(where, [])) >= most:
            continue
        asked[where].append(ask)
        verdict, mounts = book.made.settled(ask)
        tally["firm"] += verdict in FIRM
        if book.made.wrong(ask, verdict, mounts):
            tally["wrong"] += 1
            tally["unflagged"] += not book.flagged & set(false[where])
            tally["unflagged by an ideal detector"] += not any(book.detectable[name] for name in false[where])
    return tally
