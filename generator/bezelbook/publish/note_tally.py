"""What a pile of notes comes to in one line: how many, of when the newest is, and what each says."""

from collections import Counter
from collections.abc import Sequence

from bezelbook.publish.notes import Said

STANDS = {"weak": "only quoted", "aside": "set aside"}


def tally(notes: Sequence[Said]) -> str:
    """One line for any notes of a place, such as "3 notes, the newest of 2026-03-04: 2 × goes in, 1 × measured".

    What a note says is its verdict, else its form; one that carries no answer counts as that, whatever it says.
    """
    days = [one.note.date for one in notes if one.note.date]
    newest = f", the newest of {max(days)}" if days else ", without a date"
    says = Counter(STANDS.get(one.stands) or getattr(one.note, "verdict", one.note.form) for one in notes)
    said = ", ".join(f"{count}\N{NO-BREAK SPACE}× {word}" for word, count in says.items())
    return f"{len(notes)} note{'' if len(notes) == 1 else 's'}{newest}: {said}"
