"""What a word without quotes means: the core schema of YAML 1.2, where `on` and `12:30` are text."""

import re

_WORDS: dict[str, bool | None] = {
    **dict.fromkeys(("", "~", "null", "Null", "NULL")),
    **dict.fromkeys(("true", "True", "TRUE"), True),
    **dict.fromkeys(("false", "False", "FALSE"), False),
}
_NOT_FINITE = {
    f"{sign}{word}": float(f"{sign}inf") for sign in ("", "+", "-") for word in (".inf", ".Inf", ".INF")
} | dict.fromkeys((".nan", ".NaN", ".NAN"), float("nan"))
_INTEGER = re.compile(r"[-+]?[0-9]+")
_BASED = re.compile(r"0o[0-7]+|0x[0-9a-fA-F]+")
_FLOAT = re.compile(r"[-+]?(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?")

_NUMBERS_START = frozenset("0123456789+-.")
_MOST_DIGITS = 400

Scalar = str | int | float | bool | None


def resolve(text: str) -> Scalar:
    """Give what a plain scalar means; a number too large to hold comes out as infinite."""
    if text in _WORDS:
        return _WORDS[text]
    if text[0] not in _NUMBERS_START:
        return text
    if _INTEGER.fullmatch(text) and len(text) < _MOST_DIGITS:
        return int(text)
    if _BASED.fullmatch(text):
        return int(text, 0)
    if _FLOAT.fullmatch(text):
        return float(text)
    return _NOT_FINITE.get(text, text)
