"""How one of a model's errors is said to a person at the bench."""

import re
from collections.abc import Callable, Mapping
from typing import Any

from bezelbook.store.expected import Expected
from bezelbook.store.located import Located
from bezelbook.store.near_miss import nearest
from bezelbook.values.complaint import Wrong
from bezelbook.values.listed import listed

_MOST_FIELDS = 15
_LONGEST_QUOTE = 60


def worded(found: Located, expected: Expected) -> Wrong:
    """Say what is wrong and what would mend it."""
    say = _SAYINGS.get(found.error["type"], _anything_else)
    return say(found, expected)


def _missing(found: Located, expected: Expected) -> Wrong:
    name = found.path[-1]
    words = expected.words(found.path)
    what_for = _listed(words, "one of ") or _small(expected.purpose(found.path)) or "it is needed"
    return Wrong(f'"{name}" is missing', f"Add it: {what_for}")


def _unknown_field(found: Located, expected: Expected) -> Wrong:
    name = str(found.path[-1])
    fields = expected.fields(found.path[:-1])
    close = nearest(name, fields)
    if close:
        return Wrong(f'there is no field "{name}" here', f'Did you mean "{close}"?')
    listed = ", ".join(fields[:_MOST_FIELDS]) + (" or others" if len(fields) > _MOST_FIELDS else "")
    return Wrong(f'there is no field "{name}" here', f"Take it out, or use one of {listed}")


def _wrong_word(found: Located, _: Expected) -> Wrong:
    words = re.findall(r"'([^']*)'", _context(found)["expected"])
    value = found.error["input"]
    if value is None:
        return Wrong(f"{_name(found)} is blank", f"Write {listed(words, 'or')}")
    return _not_one_of(value, words)


def other_way(found: Located, expected: Expected) -> str:
    """Say what else would do, after what would mend another reading of the same value."""
    if found.error["type"] == "literal_error":
        words = re.findall(r"'([^']*)'", _context(found)["expected"])
        return f"write {listed(words, 'or')}"
    mend = worded(found, expected).mend
    return f"{mend[:1].lower()}{mend[1:]}"


def _wrong_form(found: Located, _: Expected) -> Wrong:
    words = re.findall(r"'([^']*)'", _context(found)["expected_tags"])
    return _not_one_of(found.error["input"][found.path[-1]], words)


def _not_one_of(value: object, words: list[str]) -> Wrong:
    close = nearest(value, words) if isinstance(value, str) else None
    one_of, mend = ("", f"Write {words[0]}") if len(words) == 1 else ("one of ", "Write one of these")
    what = f"{_shown(value)} is not {one_of}{', '.join(words)}"
    return Wrong(what, f'Did you mean "{close}"?' if close else mend)


def _own_words(found: Located, _: Expected) -> Wrong:
    context = _context(found)
    what = context["what"] if found.at_key else f"{_name(found)}: {context['what']}"
    return Wrong(what, context["mend"])


def _bare_number(found: Located, _: Expected) -> Wrong:
    context = _context(found)
    return Wrong(f"{_name(found)} is a bare number, {context['number']}", context["mend"])


def _not_text(found: Located, _: Expected) -> Wrong:
    value = found.error["input"]
    if isinstance(value, bool | int | float):
        return Wrong(f"{_name(found)} is {_shown(value)}, not text", f'Put it in quotes: "{_shown(value)}"')
    return _instead(found, "text", "Write it as text on one line")


def _not_whole(found: Located, _: Expected) -> Wrong:
    return _instead(found, "a whole number", "Write a whole number, without quotes, fraction or unit")


def _not_list(found: Located, _: Expected) -> Wrong:
    value, mend = found.error["input"], "Write each entry on a line of its own below, after a hyphen"
    if isinstance(value, str) and value and not set(value) & set("[]{},#:\n"):
        mend = f"Put it in square brackets: [{value}]"
    return _instead(found, "a list", mend)


def _not_group(found: Located, _: Expected) -> Wrong:
    return _instead(found, "a group of fields", "Write its fields as key: value lines below, further in")


def _instead(found: Located, wanted: str, mend: str) -> Wrong:
    if found.error["input"] is None:
        return Wrong(f"{_name(found)} is blank", "Fill it in, or take the line out")
    return Wrong(f"{_name(found)} is {_shown(found.error['input'])}, not {wanted}", mend)


def _limit(words: str, key: str) -> Callable[[Located, Expected], Wrong]:
    def say(found: Located, _: Expected) -> Wrong:
        bound = _context(found)[key]
        what = f"{_name(found)} is {_shown(found.error['input'])}"
        return Wrong(what, f"Write {words.format(bound)}")

    return say


def _too_short(found: Located, _: Expected) -> Wrong:
    least = _context(found)["min_length"]
    if not found.error["input"]:
        return Wrong(f"{_name(found)} is empty", "Fill it in, or take the line out")
    return Wrong(f"{_name(found)} has fewer than {least}", f"Write at least {least}")


def _too_long(found: Located, _: Expected) -> Wrong:
    most = _context(found)["max_length"]
    count = len(found.error["input"])
    return Wrong(f"{_name(found)} is {count} long, and {most} is the most", f"Shorten it to {most}")


def _pattern(found: Located, expected: Expected) -> Wrong:
    purpose = _small(expected.purpose(found.path)) or f"it like {_context(found)['pattern']}"
    return Wrong(f"{_name(found)} cannot be {_shown(found.error['input'])}", f"Write {purpose}")


def _anything_else(found: Located, expected: Expected) -> Wrong:
    """Say what no other saying covers: our own complaint if one was raised, else the model's English."""
    raised = _context(found).get("error")
    if isinstance(raised, Wrong):
        return Wrong(f"{_name(found)}: {raised.what}", raised.mend)
    purpose = expected.purpose(found.path)
    return Wrong(
        f"{_name(found)}: {_small(found.error['msg'])}",
        f"It is for this: {_small(purpose)}" if purpose else "Compare it with an example of this kind",
    )


def _context(found: Located) -> Mapping[str, Any]:
    return found.error.get("ctx", {})


def _name(found: Located) -> str:
    """Name the field, or the entry of a list with the list's name."""
    *before, last = found.path or ("this record",)
    return f"entry {last + 1} of {before[-1]}" if isinstance(last, int) and before else str(last)


def _shown(value: object) -> str:
    if isinstance(value, str):
        short = value if len(value) <= _LONGEST_QUOTE else f"{value[: _LONGEST_QUOTE - 3]}..."
        return f'"{short}"'
    if isinstance(value, bool):
        return str(value).lower()
    kinds: dict[type, str] = {type(None): "blank", list: "a list", dict: "a group of fields"}
    return kinds.get(type(value), str(value))


def _listed(words: tuple[str, ...], lead: str) -> str:
    return f"{lead if len(words) > 1 else ''}{', '.join(words)}"


def _small(sentence: str) -> str:
    return sentence[:1].lower() + sentence[1:]


_SAYINGS: dict[str, Callable[[Located, Expected], Wrong]] = {
    "missing": _missing,
    "union_tag_not_found": _missing,
    "extra_forbidden": _unknown_field,
    "literal_error": _wrong_word,
    "union_tag_invalid": _wrong_form,
    "bezel": _own_words,
    "bare_number": _bare_number,
    "string_type": _not_text,
    "int_type": _not_whole,
    "int_from_float": _not_whole,
    "tuple_type": _not_list,
    "list_type": _not_list,
    "dict_type": _not_group,
    "model_type": _not_group,
    "model_attributes_type": _not_group,
    "greater_than_equal": _limit("{0} or more", "ge"),
    "less_than_equal": _limit("{0} or less", "le"),
    "greater_than": _limit("more than {0}", "gt"),
    "less_than": _limit("less than {0}", "lt"),
    "string_too_short": _too_short,
    "too_short": _too_short,
    "string_too_long": _too_long,
    "too_long": _too_long,
    "string_pattern_mismatch": _pattern,
}
