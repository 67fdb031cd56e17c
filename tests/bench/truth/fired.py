"""What the rules found in a book, as far as the truth can judge it, whatever rules there are."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from bezelbook.checking import rules
from bezelbook.finding import Finding

SLIP_RULES = frozenset({"unit-slip"})
# What else people call an axis than the simulator does.
SAME_AXIS = {"a cut": "cut", "audio": "package"}
# A way in which cars differ that the book was not told of, whatever it is: nobody can name it before having looked.
NEW_SPLIT, SAID_OF_IT = "a new split", "the book has no split for"
Path = tuple[str | int, ...]


@dataclass(frozen=True)
class Fired:
    """One finding: its rule and the sort of that, the notes it names, the fields it points at, the axes it proposes."""

    rule: str
    sort: str
    notes: tuple[str, ...]
    fields: tuple[tuple[str, Path], ...]
    axes: tuple[str, ...]

    @property
    def flags(self) -> bool:
        """Whether it says that something is wrong, rather than not looked at."""
        return self.sort in ("conflict", "slip")


def fired(findings: Iterable[Finding]) -> Iterator[Fired]:
    """Everything that was found."""
    sorts = {rule.name: str(getattr(rule, "sort", _guessed(rule.name))) for rule in rules()}
    for finding in findings:
        fields = tuple((_note(quote), quote.path) for quote in finding.quotes if _note(quote))
        notes = tuple(dict.fromkeys(note for note, _ in fields))
        axes = tuple(dict.fromkeys(map(_axis, finding.proposals)))
        yield Fired(finding.rule, sorts.get(finding.rule, _guessed(finding.rule)), notes, fields, axes)


def _guessed(rule: str) -> str:
    """The sort of a rule that does not say it."""
    return "slip" if rule in SLIP_RULES else "conflict"


def _note(quote: object) -> str:
    """The note that a quote is from; empty for one from another record."""
    if getattr(quote, "kind", "note") != "note":
        return ""
    return str(getattr(quote, "note", None) or getattr(quote, "id", ""))


def _axis(proposal: object) -> str:
    """What a proposal turns on: its own word for it, or else how its sentence begins."""
    if SAID_OF_IT in str(getattr(proposal, "words", proposal)):
        return NEW_SPLIT
    words = str(getattr(proposal, "axis", None) or str(proposal).partition(":")[0])
    words = words.removeprefix("the ")
    return SAME_AXIS.get(words, words)
