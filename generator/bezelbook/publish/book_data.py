"""What the browser is told about the whole book: its names, how words are read, and which pages there are."""

import re
from collections.abc import Iterator
from typing import Any

from bezelbook.kinds.record import Named
from bezelbook.publish.address import HOME, Links, vehicle_script
from bezelbook.publish.knowledge import Knowledge
from bezelbook.reasoning.vocabulary import OPENINGS, SAME_WORDS, vocabulary
from bezelbook.reasoning.words import BARE_UNITS, CHASSIS_MM, NEED_WORDS, SIZES, UNIT

# Python counts the fraction signs among the characters of a word, and a browser does not.
_WORD = "[0-9a-z_\u00bc-\u00be\u215b-\u215e]"
_EDGE = f"(?:(?<={_WORD})(?!{_WORD})|(?<!{_WORD})(?={_WORD}))"


def book_data(knowledge: Knowledge) -> dict[str, Any]:
    """Everything that the box has to know before a vehicle is named, as plain data."""
    book = knowledge.book
    return {
        "shop": {"name": book.shop.name, "first": book.shop.units_first},
        "today": knowledge.today,
        "phrases": [
            [" ".join(one.words), one.points, one.id, *([one.vehicle, one.axis] if one.vehicle else [])]
            for one in vocabulary(book)
        ],
        "reading": {
            "same": [[browser_pattern(pattern), instead] for pattern, instead in SAME_WORDS],
            "sizes": browser_pattern(SIZES.pattern),
            "unit": UNIT,
            "needs": dict(NEED_WORDS),
            "bare": list(BARE_UNITS),
            "usual": {need: list(limits) for need, limits in CHASSIS_MM.items()},
        },
        "vehicles": [
            {
                "id": vehicle.id,
                "name": vehicle.name,
                "data": vehicle_script(vehicle.id),
                "places": [
                    {"id": id_, "name": place.name or id_.replace("-", " "), "opening": place.kind in OPENINGS}
                    for id_, place in vehicle.places.items()
                ],
            }
            for vehicle in book.vehicles.values()
        ],
        "units": [{"id": unit.id, "name": unit.name} for unit in book.head_units.values()],
        "mounts": [{"id": mount.id, "name": mount.name} for mount in book.mounts.values()],
        "pages": list(_pages(knowledge)),
    }


def browser_pattern(pattern: str) -> str:
    r"""A pattern that a browser matches as Python does: `\b` and `\d` spelled out, no character beyond them."""
    return re.sub(r"\\d", "[0-9]", re.sub(r"\\b", lambda _: _EDGE, pattern))


def _pages(knowledge: Knowledge) -> Iterator[list[Any]]:
    """Each page that has a name of its own: the name, what it is, where it is, and what else it is called."""
    book, to = knowledge.book, Links(HOME, knowledge.book)
    for vehicle in book.vehicles.values():
        yield _page(vehicle, "vehicle", to.vehicle(vehicle.id))
    for unit in book.head_units.values():
        yield _page(unit, "head unit", to.head_unit(unit.id))
    for mount in book.mounts.values():
        yield _page(mount, mount.mount_kind, to.mount(mount.id))
    for rule in knowledge.rules:
        yield [rule.title, "how the book checks itself", to.rule(rule.name), []]


def _page(record: Named, what: str, at: str) -> list[Any]:
    return [record.name, what, at, [*record.also, record.id.replace("-", " ")]]
