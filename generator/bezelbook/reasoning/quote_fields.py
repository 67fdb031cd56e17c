"""What a note holds beyond its words, field by field as its author would read it out."""

from collections.abc import Iterator, Mapping
from typing import Any

from pydantic import BaseModel

from bezelbook.kinds.note.record import Signed
from bezelbook.kinds.note.state import State
from bezelbook.values.quantity import Quantity

# Who, when and in which car is said elsewhere.
ELSEWHERE = frozenset({"id", "form", *Signed.model_fields, *State.model_fields})
# A way into a note: a field, the number of a thing in its list, a field of that.
Path = tuple[str | int, ...]
# More than this is no line any more; the note itself has the rest.
MOST = 6


def fields_said(note: BaseModel, at: Path = ()) -> str:
    """The fields of a note that its author filled in, but for car, author and words; empty when none are.

    With a path only what it leads to: the field, of a list that thing alone, of that its name and the one field.
    """
    filled = [(name, value) for name, value in _filled(note) if name not in ELSEWHERE and name in (at[:1] or (name,))]
    said = [_labelled(name, _within(value, at[1:])) for name, value in filled]
    more = [f"and {len(said) - MOST} more"] if len(said) > MOST else []
    return "; ".join([*said[:MOST], *more])


def _within(value: Any, at: Path) -> Any:
    if not at or not isinstance(value, list | tuple) or not isinstance(at[0], int) or at[0] >= len(value):
        return value
    one = value[at[0]]
    if not isinstance(one, BaseModel) or at[1:2] not in {(name,) for name, _ in _filled(one)}:
        return (one,)
    first = next(name for name, _ in _filled(one))
    return (one.model_copy(update={name: None for name, _ in _filled(one) if name not in (first, at[1])}),)


def _filled(part: BaseModel) -> Iterator[tuple[str, Any]]:
    """What was written down: a field that was left out, or left empty, is not."""
    for name in type(part).model_fields:
        value = getattr(part, name)
        if name in part.model_fields_set and value not in (None, (), {}):
            yield name, value


def _labelled(name: str, value: Any) -> str:
    label, said = name.replace("_", " "), _value(value)
    return said if said == label else f"{label} {said}"


def _value(value: Any) -> str:
    if isinstance(value, Quantity):
        return value.typed
    if isinstance(value, BaseModel):
        return _piece(value)
    if isinstance(value, Mapping):
        return ", ".join(f"{key}: {_value(one)}" for key, one in value.items())
    if isinstance(value, list | tuple):
        return ", ".join(map(_value, value))
    return str(value)


def _piece(piece: BaseModel) -> str:
    """A piece by the first thing that it says, with the rest in brackets: `white-sail-clip (count 4, where top)`."""
    said = list(_filled(piece))
    if not said:
        return "nothing"
    first, *rest = said
    brackets = ", ".join(_labelled(name, value) for name, value in rest)
    return _value(first[1]) + (f" ({brackets})" if brackets else "")
