"""A clip comes off in some job, and nobody has measured it, so that no spare can be ordered."""

from collections.abc import Iterator

from bezelbook.finding import BookScope, Finding, Quote, Rule
from bezelbook.kinds.note.record import After, Seen
from bezelbook.kinds.supply.record import Fastener
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.counts.fixing import fixings, is_clip, kind_key
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import CLIPS_GONE
from bezelbook.reasoning.proposal import Proposal
from bezelbook.values.listed import listed

SHOWN = 3


def check(scope: BookScope) -> Iterator[Finding]:
    """One finding for all clips that notes name and that have neither shank nor hole on record."""
    book = scope.book
    unknown = [kind for kind in sorted(_used(book)) if not _sized(book, kind)]
    if not unknown:
        return
    names = [book.supplies[kind].name if kind in book.supplies else kind for kind in unknown]
    more = [f"{len(names) - SHOWN} more"] if len(names) > SHOWN else []
    used = _used(book)
    yield Finding(
        rule=RULE.name,
        key=f"{RULE.name}/book",
        weight="tidy up",
        says=f"nobody has measured {listed([*names[:SHOWN], *more], 'or')}",
        quotes=tuple(Quote(used[kind], name) for kind, name in zip(unknown[:SHOWN], names, strict=False)),
        difference="shank and hole",
        proposals=(Proposal("tool", "caliper the first one that flies: shank, head, length, 1 min"),),
        loss=CLIPS_GONE,
        question="Who has one lying about?",
        answers=("measure it now", "the next one that flies", "leave it"),
    )


def _used(book: KnowledgeBase) -> dict[str, str]:
    """The clips that notes tell of, each with the first note that does."""
    notes = unreplaced(book.notes.values())
    found: dict[str, str] = {}
    for note in notes:
        if isinstance(note, Seen):
            kinds = [one.kind for one in fixings(book, [note])]
        else:
            said = note.clips if isinstance(note, After) else ()
            kinds = [kind for one in said if is_clip(book, kind := kind_key(book, one.kind))]
        for kind in kinds:
            found.setdefault(kind, note.id)
    return found


def _sized(book: KnowledgeBase, kind: str) -> bool:
    record = book.supplies.get(kind)
    return isinstance(record, Fastener) and (record.shank is not None or record.hole is not None)


RULE = Rule("clip-without-a-size", "A clip nobody has measured", "gap", __doc__ or "", BookScope, check)
