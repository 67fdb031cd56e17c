"""How often each value of an axis is said where it is said at all, and whether a blank is unlike its author."""

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from fractions import Fraction

from bezelbook.kinds.note.record import AnyNote

Said = Callable[[AnyNote], str | None]
# So many other notes of one author have to say it before a blank is unlike them.
A_HABIT = 2


def shares(
    notes: Sequence[AnyNote], said: Said, values: Sequence[str], unnamed: str | None = None
) -> Mapping[str, Fraction]:
    """The share of each of these values among the notes that say one, each counted once more than it was seen.

    What nobody named comes as often as what was named only once (Good and Turing's estimate; from memory).
    """
    counted = Counter(value for note in notes if (value := said(note)) in values)
    if unnamed is not None:
        counted[unnamed] += sum(count == 1 for count in counted.values())
    total = sum(counted.values()) + len(values)
    return {value: Fraction(counted[value] + 1, total) for value in values}


def chance(has: str | None, usual: Mapping[str, Fraction], doubt: Fraction) -> Mapping[str, Fraction]:
    """How likely each value is for a note that has one: that one, but for the doubt; a blank is as usual.

    The doubt is shared among the others as usual.
    """
    if has is None:
        return usual
    others = {value: share for value, share in usual.items() if value != has}
    rest = sum(others.values())
    kept = 1 - doubt if others else Fraction(1)
    return {value: doubt * share / rest for value, share in others.items()} | {has: kept}


def unlike_its_author(notes: Sequence[AnyNote], note: AnyNote, said: Said) -> bool:
    """Whether a note leaves blank what every other note of its author says."""
    if said(note) is not None or note.author is None:
        return False
    others = [said(one) for one in notes if one.author == note.author and one.id != note.id]
    return len(others) >= A_HABIT and None not in others
