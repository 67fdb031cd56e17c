"""What was tried at a place: which sizes are shared by several notes, and where the plugs of such things may leave."""

from collections import Counter
from collections.abc import Iterator, Sequence
from functools import cached_property

from bezelbook.reasoning.cells import Setting
from bezelbook.reasoning.evidence import Standing
from bezelbook.reasoning.exits import Exits, affordable, every_exit
from bezelbook.reasoning.mounting import Stack
from bezelbook.reasoning.needs import Needs
from bezelbook.reasoning.told import Told


class TriedThings:
    """The things that these standing notes are about."""

    def __init__(self, notes: Sequence[Standing], told: Told) -> None:
        self._count = len(notes)
        self._tried = {one: needs for one in notes if (needs := told.needs(one))}

    @cached_property
    def parts(self) -> dict[str, Needs]:
        """What was tried, by key."""
        return {needs.key: needs for needs in self._tried.values()}

    def key_of(self, one: Standing) -> str | None:
        """Whose sizes a note is about; None for a reading."""
        return self._tried[one].key if one in self._tried else None

    @cached_property
    def varying(self) -> frozenset[str]:
        """The parts whose ± matters twice: once in a note that says yes, once in one that says no."""
        said = {(needs.key, one.says) for one, needs in self._tried.items() if not needs.exact}
        return frozenset(key for key, says in said if says == "goes in" and (key, "does not") in said)

    @cached_property
    def _leaving(self) -> tuple[str, ...]:
        """The parts of which nobody said where the plug leaves, though it matters twice, and once to a no."""
        plugged = [(one, needs) for one, needs in self._tried.items() if one.plugs_on and one.stack is not None]
        said = [(needs.key, one.says) for one, needs in plugged if needs.exit is None]
        keys = Counter(key for key, _ in said)
        return tuple(sorted(key for key, times in keys.items() if times > 1 and (key, "does not") in said))

    def exits(self, needs: Needs | None, setting: Setting | None) -> Iterator[Exits]:
        """Every way in which the plugs of the part asked about, and of those parts, may leave."""
        through: dict[str, list[Stack]] = {}
        if needs and needs.exit is None and needs.key in self.parts and setting and setting.plugs_on:
            through[needs.key] = [*self._fitted_through(needs.key), setting.stack]
        for key in self._leaving:
            through.setdefault(key, self._fitted_through(key))
        return every_exit(affordable(through, self._count))

    @cached_property
    def tries_exits(self) -> bool:
        """Whether it can be tried out where the plugs of all that went in may have left."""
        yeses = {needs.key for one, needs in self._tried.items() if one.says == "goes in" and needs.exit is None}
        through = {key: stacks for key in sorted(yeses) if (stacks := self._fitted_through(key))}
        return len(affordable(through, 1)) == len(through)

    def _fitted_through(self, key: str) -> list[Stack]:
        return [one.stack for one, needs in self._tried.items() if needs.key == key and one.stack is not None]
