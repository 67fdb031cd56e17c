"""A question handed over as plain data, checked against the book and read; a fault is said with what would mend it."""

from collections.abc import Mapping
from difflib import get_close_matches
from typing import Any

from bezelbook.kinds.note.record import Bench
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.reasoning.evidence import UNCUT
from bezelbook.reasoning.needs import SIZE_FIELDS, Need
from bezelbook.reasoning.question import Question
from bezelbook.reasoning.vocabulary import OPENINGS, Phrase
from bezelbook.reasoning.words import Reading, read_words
from bezelbook.values.complaint import Wrong
from bezelbook.values.quantity import Quantity, read_quantity
from bezelbook.values.words import NINTHS, Ninth

KEYS = ("vehicle", "place", "splits", "year", "state", "what", "words")
STATE_KEYS = ("mounts", "cut", "loom", "plugs")
# What a question may call a size: the words of a note, and the shorter ones that people say.
SIZE_KEYS: Mapping[str, Need] = {name: need for need, name in SIZE_FIELDS.items()} | {"plug": "plug"}
# No name in a book is longer, so that no more of one is said back.
LONGEST = 120
# How many names are offered when none is near.
MOST = 20
WHAT_KEYS = (*SIZE_KEYS, "plug_exit", "exit", "like")


def read_question(book: KnowledgeBase, data: Mapping[str, Any], phrases: tuple[Phrase, ...] | None = None) -> Reading:
    """Read a question from plain data: either `words`, or `vehicle`, `place` and `what` with `splits` and `state`.

    Raises Wrong, naming the key, when something in it is not in the book or cannot be read. `phrases` is the book's
    vocabulary, where many questions are read one after the other.
    """
    _only(data, KEYS, "a question")
    if "words" in data:
        _only(data, ("words",), "a question in words")
        return read_words(book, _text(data, "words"), phrases)
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
        year=_year(book, vehicle, data.get("year")),
        mounts=_mounts(book, vehicle, place, state.get("mounts")),
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
    if isinstance(value, int | float) and not isinstance(value, bool):
        raise Wrong(f"{key} is a bare number, {value}", f'Write "{value} mm" or "{value} in"')
    if not isinstance(value, str):
        raise Wrong(f"{key} is not a size", f'Write it as text, such as "{key}": "165 mm"')
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


def _year(book: KnowledgeBase, vehicle: str, year: object) -> int | None:
    last = book.vehicles[vehicle].model_years
    if year is None or (isinstance(year, int) and not isinstance(year, bool) and 1 <= year <= last):
        return year
    raise Wrong(f"year {_short(repr(year))} is not a model year of {vehicle}", f"Count them from 1 to {last}")


def _mounts(book: KnowledgeBase, vehicle: str, place: str, mounts: object) -> tuple[str, ...] | None:
    if mounts is None:
        return None
    if mounts == "none":
        return ()
    named = [mounts] if isinstance(mounts, str) else mounts
    if isinstance(named, list | tuple) and all(isinstance(name, str) and name for name in named):
        return tuple(_mount(book, vehicle, place, name) for name in named)
    raise Wrong("mounts is not a list of names", 'Write ["flush-kit"], or the word "none"')


def _mount(book: KnowledgeBase, vehicle: str, place: str, words: str) -> str:
    """A mount of the book, or words that a note about this place has for one."""
    noted = (note for note in book.notes_at(vehicle, place) if not isinstance(note, Bench))
    said = {folded(name) for note in noted if isinstance(note.mounts, tuple) for name in note.mounts}
    if book.mount_named(words) is None and folded(words) not in said:
        _one_of(words, book.mounts, "mount")
    return words


def _cut(cut: object) -> str:
    if cut is None:
        return UNCUT
    if isinstance(cut, str) and cut:
        return cut
    raise Wrong("cut is not in words", f'Write what may be cut, or "{UNCUT}"')


def _ninth(word: str) -> Ninth:
    found = [ninth for ninth in NINTHS if ninth == word]
    if not found:
        raise Wrong(f'"{_short(word)}" is not one of the nine places behind an opening', f"One of: {', '.join(NINTHS)}")
    return found[0]


def _choice(data: Mapping[str, Any], key: str, words: tuple[str, ...]) -> str | None:
    value = data.get(key)
    if value is not None and value not in words:
        raise Wrong(f"{key} is {_short(repr(value))}", f"Write one of: {', '.join(words)}")
    return value


def _text(data: Mapping[str, Any], key: str) -> str:
    value = data.get(key)
    if not isinstance(value, str) or not value.strip():
        raise Wrong(f'"{key}" is missing', f'Add it as text, for example "{key}": "…"')
    return value


def _mapping(data: Mapping[str, Any], key: str) -> Mapping[str, Any]:
    value = {} if data.get(key) is None else data[key]
    if not isinstance(value, Mapping):
        raise Wrong(f'"{key}" is not a set of keys and values', f'Write "{key}": {{…}}')
    return value


def _only(data: Mapping[str, Any], allowed: tuple[str, ...], where: str) -> None:
    for key in data:
        if key not in allowed:
            raise Wrong(f'there is no "{_short(key)}" in {where}', _near(key, allowed))


def _one_of(word: str, known: Mapping[str, Any], what: str) -> str:
    if word not in known:
        raise Wrong(f'the book has no {what} "{_short(word)}"', _near(word, tuple(known)))
    return word


def _near(word: str, known: tuple[str, ...]) -> str:
    if not known:
        return "There is none to name yet"
    close = get_close_matches(word[:LONGEST], known, n=1)
    return f'Did you mean "{close[0]}"?' if close else f"One of: {', '.join(known[:MOST])}{' …' * (len(known) > MOST)}"


def _short(words: str) -> str:
    return words if len(words) <= LONGEST else f"{words[:LONGEST]} …"
