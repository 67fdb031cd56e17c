"""Which plug-in adapter a radio wants at a place, in the builds that a question leaves open."""

from collections.abc import Mapping
from dataclasses import dataclass

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.circuits.cars import Car, cars_of
from bezelbook.reasoning.circuits.suits import adapter_suits
from bezelbook.values.listed import listed


@dataclass(frozen=True, slots=True)
class PlugIn:
    """The one adapter that is right in every build, if there is one, and what to say of adapters."""

    adapters: tuple[str, ...]
    lines: tuple[str, ...]


def plug_in(book: KnowledgeBase, vehicle: str, place: str, splits: Mapping[str, str]) -> PlugIn:
    """The adapters that are known to be right, build by build where the builds differ."""
    right: dict[tuple[str, ...], list[str]] = {}
    for car in cars_of(book, book.vehicles[vehicle], place, splits):
        right.setdefault(_right(car), []).append(" ".join(value for _, value in car.build))
    if not any(right):
        return PlugIn((), ("an adapter that is right here: the book has none",))
    if len(right) == 1:
        [adapters] = right
        return PlugIn(adapters if len(adapters) == 1 else (), (_said(book, adapters),))
    lines = (f"{listed(builds, 'or')}: {_said(book, adapters)}" for adapters, builds in right.items())
    return PlugIn((), tuple(lines))


def _right(car: Car) -> tuple[str, ...]:
    plug_ins = (one for one in car.book.adapters.values() if one.adapter_kind == "plug-in")
    return tuple(one.id for one in plug_ins if adapter_suits(car, one).right)


def _said(book: KnowledgeBase, adapters: tuple[str, ...]) -> str:
    names = [book.adapters[one].name for one in adapters]
    return listed(names, "or") if names else "no adapter of the book is right"
