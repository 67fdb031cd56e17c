"""What a YAML text says, where each part of it stands, and what in it the book does not take."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property

from yaml import MarkedYAMLError
from yaml._yaml import CParser

from bezelbook.store.builder import HIDDEN, Builder
from bezelbook.store.place import Fault, Path, Place
from bezelbook.store.places import Places
from bezelbook.store.syntax import syntax_fault

LARGEST = 256 * 1024
_BOM = b"\xef\xbb\xbf"


@dataclass(frozen=True)
class Parsed:
    """What was read: plain values, and the faults in the order in which they were met.

    Places are looked up only when asked for, which is when something has to be said about the file.
    """

    value: object
    faults: tuple[Fault, ...]
    _read: bytes | None = field(default=None, repr=False)

    @property
    def places(self) -> Mapping[Path, Place]:
        """Where each value starts, by the way to it; empty when the text could not be read to its end."""
        return self._places.values if self._places else {}

    @property
    def key_places(self) -> Mapping[Path, Place]:
        """Where the key of each value in a mapping stands, by the way to the value."""
        return self._places.keys if self._places else {}

    @cached_property
    def _places(self) -> Places | None:
        return None if self._read is None else Places(CParser(self._read).get_event)


def read_yaml(data: bytes) -> Parsed:
    """Read one YAML document of UTF-8 text, by the core schema of YAML 1.2.

    Everything that the book refuses (a key twice, a name for later, a tag, a second document ...) is a fault; the
    value is then what could still be read, or None when the text stops making sense.
    """
    plain = data.removeprefix(_BOM)
    fault = _unreadable(plain)
    if fault:
        return Parsed(None, (fault,))
    builder = Builder(CParser(plain).get_event)
    try:
        value = builder.document()
    except MarkedYAMLError as error:
        return Parsed(None, (*builder.faults, syntax_fault(error, plain.decode())))
    return Parsed(value, tuple(builder.faults), plain)


def whole_text(data: bytes) -> str:
    """A file's text without its mark at the start and with LF; UnicodeDecodeError when it is not UTF-8."""
    return data.removeprefix(_BOM).decode().replace("\r\n", "\n").replace("\r", "\n")


def _unreadable(data: bytes) -> Fault | None:
    if len(data) > LARGEST:
        return Fault(1, 1, f"this file is larger than {LARGEST // 1024} kB", "Split it; one file is one record")
    try:
        text = data.decode()
    except UnicodeDecodeError as error:
        line, column = _counted(data[: error.start].decode())
        return Fault(line, column, "this is not UTF-8 text", "Save the file as UTF-8")
    hidden = HIDDEN.search(text)
    if hidden:
        line, column = _counted(text[: hidden.start()])
        code = f"U+{ord(hidden[0]):04X}"
        return Fault(line, column, f"there is a character here that cannot be seen ({code})", "Take it out")
    return None


def _counted(before: str) -> tuple[int, int]:
    """Give the line and column that follow a text."""
    lines = before.replace("\r\n", "\n").replace("\r", "\n").split("\n")
    return len(lines), len(lines[-1]) + 1
