"""Several things said in one breath."""

from collections.abc import Sequence


def listed(words: Sequence[str], joined: str = "and") -> str:
    """`a`, `a and b`, `a, b and c`; the last two are joined by the word given; nothing is empty."""
    return f"{', '.join(words[:-1])} {joined} {words[-1]}" if len(words) > 1 else "".join(words)


def counted(things: Sequence[object], what: str = "note") -> str:
    """`1 note`, `3 notes`."""
    return f"{len(things)} {what}" if len(things) == 1 else f"{len(things)} {what}s"
