"""Where in a record's data one of the model's errors lies, with the model's own words taken out of its way."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from pydantic_core import ErrorDetails

from bezelbook.store.place import Path

_KEY = "[key]"
_OF_UNION = ("union_tag_invalid", "union_tag_not_found")


@dataclass(frozen=True, slots=True)
class Located:
    """An error with the way to the value it is about.

    `at_key` says that it is the key that is wrong. `fork` is the last point on the way at which the model tried
    several readings, with the name of the reading that this error is from.
    """

    error: ErrorDetails
    path: Path
    at_key: bool = False
    fork: tuple[Path, str] | None = None


def locate(error: ErrorDetails, data: object) -> Located:
    """Find an error of validating the data.

    The model's way to an error mixes the data's keys with names of readings; a name that is also a key is told from
    it by what stands at the end of the way.
    """
    steps = [*error["loc"]]
    if error["type"] == "missing":
        *steps, last = steps
        found = _best(error, steps, data)
        return Located(error, (*found.path, last), at_key=True, fork=found.fork)
    if error["type"] in _OF_UNION:
        found = _best(error, steps, data)
        named = error.get("ctx", {})["discriminator"].strip("'")
        return Located(error, (*found.path, named), fork=found.fork)
    if steps[-1:] == [_KEY]:
        found = _best(error, steps[:-1], data)
        return Located(error, found.path, at_key=True, fork=found.fork)
    found = _best(error, steps, data)
    return replace(found, at_key=error["type"] == "extra_forbidden")


def _best(error: ErrorDetails, steps: Sequence[int | str], data: object) -> Located:
    """Take a way that ends at the very value the error is about, and by the key that the model named last."""
    ways = list(_ways(steps, data, (), None)) or [((), None, data)]
    exact = [way for way in ways if way[2] is error["input"]]
    path, fork, _ = max(exact or ways, key=lambda way: way[0][-1:] == tuple(steps[-1:]))
    return Located(error, path, fork=fork)


_Fork = tuple[Path, str] | None


def _ways(steps: Sequence[int | str], data: object, path: Path, fork: _Fork) -> Iterator[tuple[Path, _Fork, object]]:
    if not steps:
        yield path, fork, data
        return
    first, rest = steps[0], steps[1:]
    if isinstance(first, int):
        if isinstance(data, list) and first < len(data):
            yield from _ways(rest, data[first], (*path, first), fork)
        return
    if isinstance(data, dict) and first in data:
        yield from _ways(rest, data[first], (*path, first), fork)
    yield from _ways(rest, data, path, (path, first))
