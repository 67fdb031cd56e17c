"""An answer as plain data: the keys that the command line, the pages and any other program share."""

from typing import NotRequired

from typing_extensions import TypedDict

from bezelbook.values.words import AnswerVerdict


class PlainNote(TypedDict):
    """A note beside an answer, quoted as one line, with why it stands where it does."""

    note: str
    author: str | None
    date: str | None
    sure: str
    words: str
    why: str


class PlainMissing(TypedDict):
    """Something unknown, where to look and what it changes."""

    what: str
    look: str
    changes: str


class PlainNumber(TypedDict):
    """The number that decides, in words with both units; `to_spare` is null when the room has one known end only."""

    need: str
    where: str | None
    asks: str
    room: str
    to_spare: str | None
    words: str


class PlainFor(TypedDict):
    """For exactly what the answer holds; a split that is not known says not looked.

    At a place for a speaker, loom and plugs do not apply, and tabs, glass and gasket are said too.
    """

    vehicle: str
    place: str
    splits: dict[str, str]
    mounts: list[list[str]]
    cut: str
    loom: str
    plugs: str
    what: str
    words: str
    tabs: NotRequired[str]
    glass: NotRequired[str]
    gasket: NotRequired[str]


class PlainOffer(TypedDict):
    """Something to offer instead; `what` is the id of what is fitted, null for what was asked about itself.

    `condition` ends the sentence of goes in if; `to_buy` are the names of what does not lie on the shelf.
    """

    kind: str
    words: str
    what: str | None
    place: str
    mounts: list[str]
    verdict: AnswerVerdict
    condition: str
    sure: str | None
    witnesses: int
    needs: list[str]
    to_buy: list[str]


PlainAnswer = TypedDict(
    "PlainAnswer",
    {
        "verdict": AnswerVerdict,
        "until_settled": str | None,
        "for": PlainFor,
        "number": PlainNumber | None,
        "sure": str | None,
        "witnesses": int,
        "notes": list[PlainNote],
        "argued": list[PlainNote],
        "unknown": list[PlainMissing],
        "needs": list[str],
        "instead": list[PlainOffer],
    },
)
"""The whole answer. With the verdict goes in if, the first of `needs` ends that sentence.

`instead` is what to offer when it does not go in, or when nobody knows: surest first, then least to buy.
"""
