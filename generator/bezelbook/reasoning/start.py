"""Bounds that many questions start from, solved as far as they go without any question."""

from collections.abc import Iterable, Iterator
from functools import cached_property

from bezelbook.reasoning.bounds import Constraint, Leaf, Search, before_choices


class Start:
    """A set of bounds, ready to be asked whether more of them can be satisfied as well."""

    def __init__(self, constraints: Iterable[Constraint]) -> None:
        self._branch = before_choices(constraints)

    @cached_property
    def _example(self) -> Leaf | None:
        return next(self.leaves(), None)

    def leaves(self, *, eager: bool = False) -> Iterator[Leaf]:
        """The least solution of each consistent way through the choices, as `Search` has it."""
        return Search(eager=eager).leaves((), self._branch) if self._branch else iter(())

    def agrees(self, extra: Iterable[Constraint]) -> bool:
        """Whether any numbers satisfy these bounds and those; never a false no.

        One solution is looked at first, since it often goes on to satisfy both: then nothing has to be chosen again.
        """
        more = tuple(extra)
        if self._branch is None or self._example is None:
            return False
        return Search().consistent(more, self._example) or Search().consistent(more, self._branch)
