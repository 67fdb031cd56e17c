"""A record as its author typed it: every field that was written, by its own name."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from bezelbook.kinds.record import Part
from bezelbook.values.quantity import Quantity


@dataclass(frozen=True, slots=True)
class Line:
    """A field and what was typed in it: one text, or one for each thing that has fields of its own."""

    label: str
    words: tuple[str, ...]


def typed_lines(part: Part, leave_out: Iterable[str] = ()) -> tuple[Line, ...]:
    """The fields that were typed, in the kind's own order; a blank one is not there."""
    return tuple(Line(_label(name), tuple(_texts(value))) for name, value in _typed(part) if name not in leave_out)


def flow(data: Mapping[str, object]) -> str:
    """Plain data in one line, as somebody could type it into a file."""
    return ", ".join(f"{name}: {_flow(value)}" for name, value in data.items())


def _typed(part: Part) -> Iterator[tuple[str, object]]:
    for name in type(part).model_fields:
        if name in part.model_fields_set:
            yield name, getattr(part, name)


def _label(name: str) -> str:
    return name.replace("_", " ")


def _texts(value: object) -> Iterator[str]:
    """Words stand in one text; things with fields of their own have a text each."""
    if isinstance(value, Sequence) and any(isinstance(one, Part) for one in value):
        yield from map(_inline, value)
    elif isinstance(value, Mapping) and any(isinstance(one, Part) for one in value.values()):
        yield from (f"{name}: {_inline(one)}" for name, one in value.items())
    else:
        yield _inline(value)


def _inline(value: object) -> str:
    if isinstance(value, Quantity):
        return value.typed
    if isinstance(value, Part):
        return " · ".join(f"{_label(name)} {_inline(one)}" for name, one in _typed(value))
    if isinstance(value, Mapping):
        return " · ".join(f"{name} {_inline(one)}" for name, one in value.items())
    if isinstance(value, Sequence) and not isinstance(value, str):
        return ", ".join(map(_inline, value))
    return str(value)


def _flow(value: object) -> str:
    if isinstance(value, Mapping):
        return f"{{{flow(value)}}}"
    if isinstance(value, Sequence) and not isinstance(value, str):
        return f"[{', '.join(map(_flow, value))}]"
    return str(value)
