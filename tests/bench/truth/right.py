"""Whether a finding is right: its notes cannot all be true, its blank is one, its slip is one."""

from tests.bench.truth.blanks import BLANKS
from tests.bench.truth.books import TRUE, Judged
from tests.bench.truth.fired import Fired

# What a number may be false by.
SLIPS = ("a slip", "unit slip", "radius for diameter", "nominal for cut-out", "spacing for bolt circle", "wrong datum")
ONE_JOB = ("twice", "copied", "one-job", "same-job")


def is_right(book: Judged, one: Fired) -> bool | None:
    """Whether it is right; None when what it names is nothing that the simulator knows of."""
    if not one.notes:
        return None
    notes = [book.by_name[name] for name in one.notes]
    if any(word in one.rule for word in ONE_JOB):
        return any(note.false == "told twice" for note in notes) or len({str(note.in_full) for note in notes}) < len(
            notes
        )
    if one.sort == "slip":
        return any(note.false in SLIPS for note in notes)
    if one.sort == "gap":
        blank = BLANKS.get(one.rule)
        return blank(book.made.world, notes[0].content) if blank else None
    if any(note.false not in TRUE for note in notes):
        return True
    possible = book.can_be_true(one.notes)
    return None if possible is None else not possible


def is_false_alarm(book: Judged, one: Fired) -> bool:
    """Whether it sets strong notes against each other that can all be true."""
    strong = [name for name in one.notes if name in book.strong]
    return one.sort == "conflict" and len(strong) >= 2 and book.can_be_true(strong) is True


def doubts_what_is_true(book: Judged, one: Fired) -> bool:
    """Whether it says that something is wrong with a true strong note, though all that it quotes can be true."""
    true = [name for name in one.notes if name in book.strong and book.by_name[name].false in TRUE]
    return one.flags and bool(true) and book.can_be_true(one.notes) is True
