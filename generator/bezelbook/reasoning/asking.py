"""A question handed over as plain data, checked against the book and read; a fault is said with what would mend it."""

from collections.abc import Mapping
from difflib import get_close_matches
from typing import Any

from bezelbook.knowledge_base import KnowledgeBase
from bezelbook.reasoning.evidence import UNCUT
from bezelbook.reasoning.needs import SIZE_FIELDS, Need
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.vocabulary import OPENINGS
from bezelbook.reasoning.words import Reading, read_words
from bezelbook.values.complaint import Wrong
from bezelbook.values.quantity import Quantity, read_quantity
from bezelbook.values.words import NINTHS, Ninth

KEYS = ("vehicle", "place", "splits", "year", "state", "what", "words")
STATE_KEYS = ("mounts", "cut", "loom", "plugs")
# What a question may call a size: the words of a note, and the shorter ones that people say.
SIZE_KEYS: Mapping[str, Need] = {name: need for need, name in SIZE_FIELDS.items()} | {"plug": "plug"}
WHAT_KEYS = (*SIZE_KEYS, "plug_exit", "exit", "like")


def read_question(book: KnowledgeBase, data: Mapping[str, Any]) -> Reading:
    """Read a question from plain data: either `words`, or `vehicle`, `place` and `what` with `splits` and `state`.

    Raises Wrong, naming the key, when something in it is not in the book or cannot be read.
    """
    _only(data, KEYS, "a question")
    if "words" in data and "vehicle" not in data:
        return read_words(book, _text(data, "words"))
    vehicle = _one_of(_text(data, "vehicle"), book.vehicles, "vehicle")
    place = _one_of(_text(data, "place"), book.vehicles[vehicle].places, f"place of {vehicle}")
    kind = book.vehicles[vehicle].places[place].kind
    if kind not in OPENINGS:
        raise Wrong(f"{place} is a {kind}; the book answers for openings that take a box", "Ask about a dash opening")
    unit, sizes, exit_ = _what(book, data.get("what"))
    state = _mapping(data, "state")
    _only(state, STATE_KEYS, "state")
    question = Question(
        vehicle,
        place,
        splits=_splits(book, vehicle, _mapping(data, "splits")),
        year=_year(data.get("year")),
        mounts=_mounts(state.get("mounts")),
        cut=_cut(state.get("cut")),
        loom="behind" if _choice(state, "loom", ("aside", "behind")) == "behind" else "aside",
        plugs="off" if _choice(state, "plugs", ("on", "off")) == "off" else "on",
        unit=unit,
        sizes=sizes,
        exit=exit_,
    )
    return Reading(question)


def _what(book: KnowledgeBase, what: object) -> tuple[str | None, dict[Need, Quantity], Ninth | None]:
    if isinstance(what, str):
        named = book.head_unit_named(what)
        return named.id if named else _one_of(what, book.head_units, "head unit"), {}, None
    if not isinstance(what, Mapping) or not what:
        raise Wrong(
            '"what" is missing or empty', 'Write a head unit\'s file name, or sizes such as {"depth": "165 mm"}'
        )
    _only(what, WHAT_KEYS, "what")
    like = what.get("like")
    unit = None if like is None else _one_of(str(like), book.head_units, "head unit")
    sizes = {SIZE_KEYS[key]: _length(key, value) for key, value in what.items() if key in SIZE_KEYS}
    if not sizes:
        raise Wrong("no size is given in what", 'Give at least one, such as {"depth": "165 mm"}')
    exit_ = what.get("plug_exit", what.get("exit"))
    return unit, sizes, None if exit_ is None else _ninth(str(exit_))


def _length(key: str, value: object) -> Quantity:
    if not isinstance(value, str):
        raise Wrong(f"{key} is a bare number, {value}", f'Write "{value} mm" or "{value} in"')
    try:
        return read_quantity(value, "length")
    except Wrong as wrong:
        raise Wrong(f"{key}: {wrong.what}", wrong.mend) from wrong


def _splits(book: KnowledgeBase, vehicle: str, said: Mapping[str, Any]) -> dict[str, str]:
    """The splits that are known; "not looked" or a blank counts as not known."""
    splits = book.vehicles[vehicle].splits
    known = {axis: str(value) for axis, value in said.items() if value not in (None, "", "not looked")}
    for axis, value in known.items():
        _one_of(axis, splits, f"split of {vehicle}")
        _one_of(value, splits[axis].values, f"value of {axis}")
    return known


def _year(year: object) -> int | None:
    if year is None or (isinstance(year, int) and not isinstance(year, bool) and 1 <= year <= 40):
        return year
    raise Wrong(f"year {year!r} is not a model year", "Count model years within the generation: 1, 2, 3 and so on")


def _mounts(mounts: object) -> tuple[str, ...] | None:
    if mounts is None:
        return None
    if mounts == "none":
        return ()
    named = [mounts] if isinstance(mounts, str) else mounts
    if isinstance(named, list | tuple) and all(isinstance(name, str) and name for name in named):
        return tuple(named)
    raise Wrong("mounts is not a list of names", 'Write ["flush-kit"], or the word "none"')


def _cut(cut: object) -> str:
    if cut is None:
        return UNCUT
    if isinstance(cut, str) and cut:
        return cut
    raise Wrong("cut is not in words", f'Write what may be cut, or "{UNCUT}"')


def _ninth(word: str) -> Ninth:
    found = [ninth for ninth in NINTHS if ninth == word]
    if not found:
        raise Wrong(f'"{word}" is not one of the nine places behind an opening', f"One of: {', '.join(NINTHS)}")
    return found[0]


def _choice(data: Mapping[str, Any], key: str, words: tuple[str, ...]) -> str | None:
    value = data.get(key)
    if value is not None and value not in words:
        raise Wrong(f"{key} is {value!r}", f"Write one of: {', '.join(words)}")
    return value


def _text(data: Mapping[str, Any], key: str) -> str:
    value = data.get(key)
    if not isinstance(value, str) or not value.strip():
        raise Wrong(f'"{key}" is missing', f'Add it as text, for example "{key}": "…"')
    return value


def _mapping(data: Mapping[str, Any], key: str) -> Mapping[str, Any]:
    value = data.get(key) or {}
    if not isinstance(value, Mapping):
        raise Wrong(f'"{key}" is not a set of keys and values', f'Write "{key}": {{…}}')
    return value


def _only(data: Mapping[str, Any], allowed: tuple[str, ...], where: str) -> None:
    for key in data:
        if key not in allowed:
            raise Wrong(f'there is no "{key}" in {where}', _near(str(key), allowed))


def _one_of(word: str, known: Mapping[str, Any], what: str) -> str:
    if word not in known:
        raise Wrong(f'the book has no {what} "{word}"', _near(word, tuple(known)))
    return word


def _near(word: str, known: tuple[str, ...]) -> str:
    close = get_close_matches(word, known, n=1)
    return f'Did you mean "{close[0]}"?' if close else f"One of: {', '.join(known)}"
