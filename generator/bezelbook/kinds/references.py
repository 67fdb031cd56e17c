"""Which other records a record names, and where in it."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache

from pydantic.fields import FieldInfo

from bezelbook.kinds.record import IN_WORDS, NAMES, Part, Record
from bezelbook.values.words import UNKNOWNS

Path = tuple[str | int, ...]
# What may stand in place of a name.
_NO_NAMES = frozenset({*UNKNOWNS, "none"})


@dataclass(frozen=True, slots=True)
class Reference:
    """What a field says of another record: `words` name one of these kinds, by id alone unless `in_words`.

    `path` is the way to the words from the top of the file.
    """

    path: Path
    kinds: tuple[str, ...]
    words: str
    in_words: bool


def references(record: Record) -> tuple[Reference, ...]:
    """Everything that a record says of other records, in the order of its fields."""
    return tuple(_in_part(record, ()))


def _in_part(part: Part, path: Path) -> Iterator[Reference]:
    marks = _marks(type(part))
    for name in type(part).model_fields:
        yield from _in_value(getattr(part, name), (*path, name), marks.get(name))


def _in_value(value: object, path: Path, mark: tuple[tuple[str, ...], bool] | None) -> Iterator[Reference]:
    if isinstance(value, Part):
        yield from _in_part(value, path)
    elif isinstance(value, str):
        if mark and value not in _NO_NAMES:
            yield Reference(path, mark[0], value, mark[1])
    elif isinstance(value, tuple | Mapping):
        for step, inner in value.items() if isinstance(value, Mapping) else enumerate(value):
            yield from _in_value(inner, (*path, step), mark)


@cache
def _marks(part: type[Part]) -> dict[str, tuple[tuple[str, ...], bool]]:
    """The kinds that each field of a piece names, and whether in words; a field that names none is not there."""
    extras = {name: _extra(field) for name, field in part.model_fields.items()}
    return {name: (tuple(extra[NAMES]), IN_WORDS in extra) for name, extra in extras.items() if NAMES in extra}


def _extra(field: FieldInfo) -> Mapping[str, list[str]]:
    extra = field.json_schema_extra
    return extra if isinstance(extra, dict) else {}  # type: ignore[return-value]
