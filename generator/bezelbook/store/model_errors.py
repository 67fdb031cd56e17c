"""Which complaints a model's refusal of a record comes down to, one for each mistake."""

from collections import defaultdict
from dataclasses import dataclass

from pydantic import ValidationError

from bezelbook.store.expected import Expected, Schema
from bezelbook.store.located import Located, locate
from bezelbook.store.place import Path
from bezelbook.store.wording import other_way, worded


@dataclass(frozen=True, slots=True)
class Mistake:
    """Something wrong with a value, or with the key before it when `at_key`."""

    path: Path
    at_key: bool
    what: str
    mend: str


def mistakes(error: ValidationError, data: object, schema: Schema) -> tuple[Mistake, ...]:
    """Give one mistake for each thing that a person would mend, in the model's order."""
    expected = Expected(schema, data)
    errors = error.errors(include_url=False)
    found = [locate(one, data) for one in errors]
    return tuple(_mistake(group, expected) for group in _groups(found) if not _follows(group[0]))


def _mistake(group: list[Located], expected: Expected) -> Mistake:
    """Say a choice that failed in every reading as one: the first reading's complaint, with what else would do."""
    meant, *others = sorted(group, key=_is_word)
    first = worded(meant, expected)
    more = dict.fromkeys(other_way(found, expected) for found in others)
    return Mistake(group[0].path, group[0].at_key, first.what, ", or ".join([first.mend, *more]))


def _is_word(found: Located) -> bool:
    return found.error["type"] == "literal_error"


def _groups(found: list[Located]) -> list[list[Located]]:
    """Bring the readings of one choice together, and leave every other error by itself.

    A reading that got further into the value than the others is the one that was meant: only its errors count.
    """
    readings: dict[Path, dict[str, list[Located]]] = defaultdict(lambda: defaultdict(list))
    for one in found:
        if one.fork:
            readings[one.fork[0]][one.fork[1]].append(one)
    choices = {path: by_name for path, by_name in readings.items() if len(by_name) > 1}
    alone = [[one] for one in found if not one.fork or one.fork[0] not in choices]
    return alone + [group for path, by_name in choices.items() for group in _meant(path, by_name)]


def _meant(path: Path, by_name: dict[str, list[Located]]) -> list[list[Located]]:
    further = [errors for errors in by_name.values() if any(len(one.path) > len(path) for one in errors)]
    if further:
        return [[one] for one in further[0]]
    return [[errors[0] for errors in by_name.values()]]


def _follows(found: Located) -> bool:
    """Say whether the error only follows from others: a list is called empty once its entries were refused."""
    context = found.error.get("ctx", {})
    return found.error["type"] == "too_short" and len(found.error["input"]) >= context["min_length"]
