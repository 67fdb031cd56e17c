"""`bezelbook decide`: writes down what the team settled about a question that the book raises."""

import argparse
from collections.abc import Iterable, Iterator, Mapping
from datetime import date
from typing import Any, get_args

from bezelbook.cli.outcome import add_book, book_folder, ending
from bezelbook.kinds.decision.record import Decision
from bezelbook.pipeline import open_book, settle
from bezelbook.publish.settle_lines import OPEN
from bezelbook.values.complaint import Wrong
from bezelbook.values.words import AXES

DECIDED: tuple[str, ...] = get_args(Decision.model_fields["decided"].annotation)
LOOK = {"who": "who", "next_car": "next car", "tool": "tool", "takes": "time it takes"}


def add_to(commands: Any) -> None:
    """Add this command's arguments."""
    command = commands.add_parser("decide", help="write down what was settled about a question")
    add_book(command)
    command.add_argument("question", metavar="QUESTION", help="its key, as bezelbook check gives it")
    command.add_argument("decided", choices=[word.replace(" ", "-") for word in DECIDED], help="what was decided")
    command.add_argument("--reason", required=True, help="why, in one line")
    command.add_argument("--differs", action="append", choices=AXES, default=[], help="what differs, if both are true")
    reading = ("--read", "NOTE", "FIELD=VALUE")
    command.add_argument(reading[0], action="append", nargs="+", default=[], metavar=reading[1:], help=READ_HELP)
    lost = ("--strike", "NOTE", "BECAUSE")
    command.add_argument(lost[0], action="append", nargs="+", default=[], metavar=lost[1:], help=STRIKE_HELP)
    command.add_argument("--look", metavar="WHAT", help="what somebody goes and looks at")
    for name, what in LOOK.items():
        command.add_argument(f"--{name.replace('_', '-')}", dest=name, help=f"of that look: {what}")
    command.add_argument("--new-split", nargs="+", metavar=("VEHICLE", "AXIS VALUE=TELL"), help=SPLIT_HELP)
    command.add_argument("--reopens", help="what would open it again")
    command.add_argument("--author", help="initials or role of who decided")
    command.add_argument("--name", help="the file's name (default: made of the question)")
    command.set_defaults(run=run)


GONE = "The question is off the list: bezelbook check no longer raises it."
STILL = "The question stays on the list: see bezelbook check for what is left of it."
READ_HELP = "how a note is read from now on: mounts=kit,ring splits.build=late datum='sub-dash face' ..."
STRIKE_HELP = "a note that lost, and why; without why it is the reason"
SPLIT_HELP = "a split that the vehicle has not got yet: its name, and each value with how to tell it from the seat"


def run(given: argparse.Namespace) -> int:
    """Write the decision and say what it did to the question."""
    said = decision_of(given)
    book = open_book(book_folder(given.book))
    split = _split(given.new_split) if given.new_split else None
    done = settle(book, said, given.name, split)
    print(f"Written to {done.path.as_posix()}.")
    print(GONE if done.gone else STILL)
    return ending(done.book)


def decision_of(given: argparse.Namespace) -> dict[str, Any]:
    """The decision that a line says, as its file has it.

    Raises Wrong for a line that was copied from a list and still has a gap for the team's own words.
    """
    if any(OPEN in word for value in vars(given).values() for word in _words(value)):
        raise Wrong(f"the line still has {OPEN} in it", "Write what belongs there, such as the reason")
    said = {
        "question": given.question,
        "decided": given.decided.replace("-", " "),
        "differs": given.differs,
        "read_as": [_read_as(words) for words in given.read],
        "struck": [_struck(given.reason, *words) for words in given.strike],
        "look": _look(given),
        "reason": given.reason,
        "reopens": given.reopens,
        "author": given.author,
        "date": given.today or _today(),
    }
    return {key: value for key, value in said.items() if value}


def _today() -> str:
    """The day of the calendar: what is written down by hand is dated as a hand would date it."""
    return date.today().isoformat()  # noqa: DTZ011, TID251


def _words(value: Any) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, list):
        for one in value:
            yield from _words(one)


def _struck(reason: str, note: str, *because: str) -> dict[str, str]:
    return {"note": note, "because": " ".join(because) or reason}


def _look(given: argparse.Namespace) -> dict[str, str] | None:
    more = {name: getattr(given, name) for name in LOOK if getattr(given, name)}
    if more and not given.look:
        raise Wrong("nobody said what to look at", "Write --look and what")
    return {"what": given.look, **more} if given.look else None


def _read_as(words: list[str]) -> dict[str, Any]:
    note, *fields = words
    said: dict[str, Any] = {"note": note}
    for name, value in _pairs(fields):
        if name.startswith("splits."):
            said.setdefault("splits", {})[name.removeprefix("splits.")] = value
        elif name == "mounts" and value != "none":
            said[name] = value.split(",")
        else:
            said[name] = int(value) if name == "year" and value.isdecimal() else value
    return said


def _split(words: list[str]) -> tuple[str, str, Mapping[str, Any]]:
    if len(words) < 4:
        raise Wrong("a split has a vehicle, a name and at least two values", SPLIT_HELP.capitalize())
    vehicle, axis, *values = words
    return vehicle, axis, {"values": {value: {"tell": tell} for value, tell in _pairs(values)}}


def _pairs(words: Iterable[str]) -> list[tuple[str, str]]:
    found = [word.partition("=") for word in words]
    wrong = next((name for name, sign, value in found if not (name and sign and value)), None)
    if wrong is not None:
        raise Wrong(f'"{wrong}" says nothing', "Write a name, an equals sign and what it is: mounts=none")
    return [(name, value) for name, _, value in found]
