"""What the page of a part says of electricity, whichever sort of part it is."""

from bezelbook.kinds.adapter.record import Adapter, LoadResistor
from bezelbook.kinds.amplifier.record import Amplifier
from bezelbook.kinds.module.record import Module
from bezelbook.kinds.record import Named
from bezelbook.kinds.speaker.record import Speaker
from bezelbook.kinds.supply.record import Resistor, Wire
from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.publish.electric.amplifier import amplifier_part, sorts_of
from bezelbook.publish.electric.heat import heat_part
from bezelbook.publish.electric.module import output_lines
from bezelbook.publish.electric.speaker import speaker_part
from bezelbook.publish.electric.wire import wire_part


class Electric:
    """What is known of electricity in a book, its speakers sorted once for the pages of all its amplifiers."""

    def __init__(self, book: KnowledgeBase) -> None:
        self._sorts = sorts_of(book)

    def of(self, record: Named) -> dict[str, object]:
        """The values that a part's template has for it: `heat` and `wire` are None where the part has none."""
        return {
            "heat": _heat(record),
            "wire": wire_part(record) if isinstance(record, Wire) else None,
            "loads": amplifier_part(self._sorts, record) if isinstance(record, Amplifier) else None,
            "load": speaker_part(record) if isinstance(record, Speaker) else None,
            "outputs": output_lines(record) if isinstance(record, Module) else (),
        }


def _heat(record: Named) -> object:
    if isinstance(record, Resistor):
        return heat_part(record.value, record.rated)
    if isinstance(record, Adapter) and isinstance(record.resistor, LoadResistor):
        return heat_part(record.resistor.value, record.resistor.rated)
    return None
