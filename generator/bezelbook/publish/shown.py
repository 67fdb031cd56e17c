"""Plain data without the words that no output may carry."""

from typing import Any, TypeVar

from bezelbook.values.withheld import withheld

T = TypeVar("T")
# What names a thing and is no sentence: a name with a word left out would name nothing.
NAMES = frozenset({"key", "id", "rule", "ruleId", "places", "path", "uri", "$schema", "partialFingerprints"})


def shown(data: T) -> T:
    """The same data, each text in it as it may be shown; what names a record or a file is left alone."""
    kept: Any = _shown(data)
    return kept  # type: ignore[no-any-return]


def _shown(data: Any) -> Any:
    if isinstance(data, str):
        return withheld(data)
    if isinstance(data, dict):
        return {key: value if key in NAMES else _shown(value) for key, value in data.items()}
    if isinstance(data, list | tuple):
        return [_shown(one) for one in data]
    return data
