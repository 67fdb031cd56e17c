"""Which circuit and which function somebody meant by the words in a note."""

import re
from collections.abc import Mapping

from bezelbook.kinds.note.record import After, AnyNote, Metered, Tried
from bezelbook.values.words import CIRCUITS, FUNCTIONS, STRONG, Circuit, Function

NOTHING = "nothing"

# Said in the trade for the same thing; common practice, no source.
_CIRCUITS: Mapping[str, Circuit] = {
    "acc": "accessory",
    "switched": "accessory",
    "ignition hot": "accessory",
    "key on": "accessory",
    "memory": "constant",
    "b+": "constant",
    "battery": "constant",
    "earth": "ground",
    "remote": "amplifier turn-on",
    "rem": "amplifier turn-on",
    "amp turn-on": "amplifier turn-on",
    "amp turn on": "amplifier turn-on",
    "antenna feed": "aerial feed",
    "lights": "illumination",
    "handbrake": "park brake",
    "parking brake": "park brake",
    "mic": "microphone",
}
_FUNCTIONS: Mapping[str, Function] = {
    "steering wheel buttons": "wheel buttons",
    "wheel controls": "wheel buttons",
    "reverse camera": "camera",
    "park sensors": "parking sensors",
    "door chime": "chimes",
    "chime": "chimes",
    "indicators": "indicator sound",
    "indicator click": "indicator sound",
    "hazard": "hazard switch",
    "mic": "microphone",
    "factory amp": "factory amplifier",
    "usb": "USB",
}


def circuit_said(words: str) -> Circuit | None:
    """The circuit that these words are the name of; None when they are no circuit's name."""
    return _ALL_CIRCUITS.get(_plain(words))


def says_nothing(words: str) -> bool:
    """Whether a cavity was looked at and found to carry nothing."""
    return _plain(words).split(" ")[0] == NOTHING


def functions_said(words: str) -> tuple[Function, ...]:
    """Every function that these words name, in the order of the list; `hazard switch by hand` names one."""
    said = f" {_plain(words)} "
    found = {function for name, function in _ALL_FUNCTIONS.items() if f" {name} " in said}
    return tuple(function for function in FUNCTIONS if function in found)


def strong(note: AnyNote) -> bool:
    """Whether a note may carry a firm answer: told, eyeballed and worked out do not."""
    if isinstance(note, Tried | Metered):
        return note.sure is None or note.sure in STRONG
    return not (isinstance(note, After) and note.comeback)


def _plain(words: str) -> str:
    return " ".join(re.sub(r"[^a-z0-9+-]", " ", words.casefold().replace("−", "-").replace("–", "-")).split())


def _by_name(names: tuple[str, ...], others: Mapping[str, str]) -> Mapping[str, str]:
    return {_plain(name): name for name in names} | {_plain(name): word for name, word in others.items()}


_ALL_CIRCUITS: Mapping[str, Circuit] = _by_name(CIRCUITS, _CIRCUITS)  # type: ignore[assignment]
_ALL_FUNCTIONS: Mapping[str, Function] = _by_name(FUNCTIONS, _FUNCTIONS)  # type: ignore[assignment]
