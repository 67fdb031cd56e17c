"""Bounds that many questions start from, solved as far as they go without any question."""

from collections.abc import Callable, Hashable, Iterable, Iterator, Mapping, Sequence
from functools import cached_property

from bezelbook.reasoning.bounds import Constraint, Leaf, Number, Search, before_choices, numbers_of
from bezelbook.reasoning.extremes import Ends, N, ends_of

# How many starting points for questions are kept; each is worked out again when it is wanted again.
MOST_STARTS = 200
NO_BOUNDS = Leaf({}, {}, [], [])


class Start:
    """A set of bounds, ready to be asked whether more of them can be satisfied as well."""

    def __init__(self, constraints: Iterable[Constraint], branch: Leaf | None = NO_BOUNDS) -> None:
        """Solve these bounds together with those that a branch has; nothing mends a branch that cannot be."""
        self._added = tuple(constraints)
        self._branch = before_choices(self._added, branch) if branch else None

    def adding(self, more: Iterable[Constraint]) -> "Start":
        """The same bounds and more of them."""
        return Start(more, self._branch)

    @cached_property
    def numbers(self) -> frozenset[Number | None]:
        """Every number that occurs in what was added last."""
        return frozenset(numbers_of(self._added))

    @cached_property
    def _example(self) -> Leaf | None:
        return next(self.leaves(), None)

    def leaves(self, *, eager: bool = False) -> Iterator[Leaf]:
        """The least solution of each consistent way through the choices, as `Search` has it."""
        return Search(eager=eager).leaves((), self._branch) if self._branch else iter(())

    def ends(self, numbers: Sequence[N]) -> Mapping[N, Ends]:
        """How small and how large each number can be, as `ends_of` has it."""
        return ends_of(self._branch, numbers)

    def agrees(self, extra: Iterable[Constraint]) -> bool:
        """Whether any numbers satisfy these bounds and those; never a false no.

        One solution is looked at first, since it often goes on to satisfy both: then nothing has to be chosen again.
        """
        more = tuple(extra)
        if self._branch is None or self._example is None:
            return False
        return Search().consistent(more, self._example) or Search().consistent(more, self._branch)


class Starts:
    """Starts that are kept for the next question, by everything that they depend on."""

    def __init__(self) -> None:
        self._kept: dict[Hashable, Start] = {}

    def of(self, key: Hashable, begin: Callable[[], Start]) -> Start:
        """The start of this key, begun when nobody asked for it lately."""
        if key not in self._kept:
            if len(self._kept) >= MOST_STARTS:
                self._kept.clear()
            self._kept[key] = begin()
        return self._kept[key]
