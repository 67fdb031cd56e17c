"""Which amplifiers of the book may drive what a factory channel drives."""

from collections.abc import Mapping

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.electric.channel import Seen
from bezelbook.reasoning.electric.least_load import Least, Says, may_see


def stand_ins(book: KnowledgeBase, sees: Seen) -> Mapping[Says, tuple[str, ...]]:
    """The ids of the amplifiers that a shop adds, by whether one channel of theirs may see all that hangs there.

    What a channel sees and nobody knows is unknown for each of them.
    """
    found: dict[Says, list[str]] = {}
    for amplifier in book.amplifiers.values():
        if amplifier.origin == "added":
            least = Least(amplifier.least_load, amplifier.least_load_bridged)
            found.setdefault(may_see(sees.least, least, "single").says, []).append(amplifier.id)
    return {says: tuple(ids) for says, ids in found.items()}
