"""Plain data handed over from outside, key by key: what may stand there, and what would mend what does not."""

from collections.abc import Mapping
from dataclasses import replace
from difflib import get_close_matches
from typing import Any

from bezelbook.kinds.note.record import Bench
from bezelbook.knowledge_base import KnowledgeBase, folded
from bezelbook.reasoning.evidence import UNCUT
from bezelbook.values.complaint import Wrong
from bezelbook.values.quantity import Quantity, read_quantity

# No name in a book is longer, so that no more of one is said back.
LONGEST = 120
# How many names are offered when none is near.
MOST = 20


def length_of(book: KnowledgeBase, key: str, value: object) -> Quantity:
    """A length with its unit, for a key; raises Wrong on a bare number, and on a size that is only printed.

    What was measured with a caliper may be off by as much as the shop's own, where no ± is typed.
    """
    if isinstance(value, int | float) and not isinstance(value, bool):
        kept = f"{value:.4f}".rstrip("0").rstrip(".") if isinstance(value, float) else value
        raise Wrong(f"{key} is a bare number, {value}", f'Write "{kept} mm" or "{kept} in"')
    if not isinstance(value, str):
        raise Wrong(f"{key} is not a size", f'Write it as text, such as "{key}": "165 mm"')
    try:
        size = read_quantity(value, "length", sized=True)
    except Wrong as wrong:
        raise Wrong(f"{key}: {wrong.what}", wrong.mend) from wrong
    if size.by == "printed":
        plain = value[: value.lower().rindex("printed")].strip()
        raise Wrong(f"{key} is only printed, which carries no answer", f'Ask "{plain}", then put a caliper on it')
    caliper = book.shop.tools.bench_caliper.base
    return replace(size, give=caliper) if size.by == "caliper" and size.give is None else size


def splits_of(book: KnowledgeBase, vehicle: str, said: Mapping[str, Any]) -> dict[str, str]:
    """The splits that are known; "not looked" or a blank counts as not known."""
    splits = book.vehicles[vehicle].splits
    known = {axis: str(value) for axis, value in said.items() if value not in (None, "", "not looked")}
    for axis, value in known.items():
        one_of(axis, splits, f"split of {vehicle}")
        one_of(value, splits[axis].values, f"value of {axis}")
    return known


def year_of(book: KnowledgeBase, vehicle: str, year: object) -> int | None:
    """A model year of the vehicle, or None; raises Wrong on any other."""
    last = book.vehicles[vehicle].model_years
    if year is None or (isinstance(year, int) and not isinstance(year, bool) and 1 <= year <= last):
        return year
    raise Wrong(f"year {short(repr(year))} is not a model year of {vehicle}", f"Count them from 1 to {last}")


def mounts_of(book: KnowledgeBase, vehicle: str, place: str, mounts: object) -> tuple[str, ...] | None:
    """The mounts named for a place, nearest the car first; empty for the word none, None for a blank."""
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
        one_of(words, book.mounts, "mount")
    return words


def cut_of(cut: object) -> str:
    """What may be cut, in words; a blank is nothing."""
    if cut is None:
        return UNCUT
    if isinstance(cut, str) and cut:
        return cut
    raise Wrong("cut is not in words", f'Write what may be cut, or "{UNCUT}"')


def choice_of(data: Mapping[str, Any], key: str, words: tuple[str, ...]) -> str | None:
    """One of these words, or None for a blank."""
    value = data.get(key)
    if value is not None and value not in words:
        raise Wrong(f"{key} is {short(repr(value))}", f"Write one of: {', '.join(words)}")
    return value


def text_of(data: Mapping[str, Any], key: str) -> str:
    """Text that must be there."""
    value = data.get(key)
    if not isinstance(value, str) or not value.strip():
        raise Wrong(f'"{key}" is missing', f'Add it as text, for example "{key}": "…"')
    return value


def mapping_of(data: Mapping[str, Any], key: str) -> Mapping[str, Any]:
    """A set of keys and values; a blank is an empty one."""
    value = {} if data.get(key) is None else data[key]
    if not isinstance(value, Mapping):
        raise Wrong(f'"{key}" is not a set of keys and values', f'Write "{key}": {{…}}')
    return value


def only(data: Mapping[str, Any], allowed: tuple[str, ...], where: str) -> None:
    """Raises Wrong when a key is not one of these."""
    for key in data:
        if key not in allowed:
            raise Wrong(f'there is no "{short(key)}" in {where}', near(key, allowed))


def one_of(word: str, known: Mapping[str, Any], what: str) -> str:
    """A word that must be known, else Wrong names the nearest."""
    if word not in known:
        raise Wrong(f'the book has no {what} "{short(word)}"', near(word, tuple(known)))
    return word


def near(word: str, known: tuple[str, ...]) -> str:
    """What to try instead of a word: the nearest known one, else the first of them."""
    if not known:
        return "There is none to name yet"
    close = get_close_matches(word[:LONGEST], known)
    return f'Did you mean "{close[0]}"?' if close else f"One of: {', '.join(known[:MOST])}{' …' * (len(known) > MOST)}"


def short(words: str) -> str:
    """Words cut so that they can be said back."""
    return words if len(words) <= LONGEST else f"{words[:LONGEST]} …"
