"""What an amplifier sees of the speakers that a job hung on it, and which other way of wiring them it may see."""

from collections.abc import Sequence

from bezelbook.kinds.note.fitting import Hung
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.electric.amounts import Range, above_zero, spanning
from bezelbook.reasoning.electric.least_load import Least, Sight, may_see, ohms
from bezelbook.reasoning.electric.speaker import coil
from bezelbook.reasoning.electric.wiring import in_parallel, in_series

WAYS = ("in series", "in parallel")


def hung_load(book: KnowledgeBase, hung: Hung) -> Range | None:
    """The load in ohm of all that hangs there together; what nobody wrote may be either way. None when not known."""
    each = _each(book, hung)
    return _wired([each] * (hung.count or 1), hung.wired) if each else None


def hung_sight(book: KnowledgeBase, hung: Hung) -> Sight:
    """Whether the amplifier may see that; where nobody wrote that it is bridged, as one channel, which asks less."""
    return may_see(hung_load(book, hung), _least(book, hung), hung.bridged or "single")


def would_do(book: KnowledgeBase, hung: Hung) -> tuple[str, ...]:
    """Each other way to wire the same speakers that the amplifier may see: `in series: 4 ohm`."""
    ways = [hung.model_copy(update={"wired": way}) for way in WAYS if way != hung.wired and (hung.count or 1) > 1]
    return tuple(
        f"{one.wired}: {ohms(load)}"
        for one in ways
        if (load := hung_load(book, one)) and hung_sight(book, one).says == "fine"
    )


def _each(book: KnowledgeBase, hung: Hung) -> Range | None:
    """The load of one speaker: as the note says, or its record, whose coils may be wired either way."""
    if hung.load is not None:
        return above_zero(hung.load)
    found = book.named("speaker", hung.speaker)
    if not isinstance(found, Speaker) or (one := coil(found)) is None:
        return None
    return _wired([one] * (found.voice_coils or 1), hung.coils)


def _wired(loads: Sequence[Range], how: str | None) -> Range:
    """What these loads come to; over both ways where nobody wrote which."""
    both = {"in series": in_series(loads), "in parallel": in_parallel(loads)}
    return both[how] if how else spanning(both.values())


def _least(book: KnowledgeBase, hung: Hung) -> Least:
    found = book.amplifiers.get(getattr(book.named("amplifier", hung.amplifier), "id", ""))
    return Least(found.least_load, found.least_load_bridged) if found else Least(None, None)
