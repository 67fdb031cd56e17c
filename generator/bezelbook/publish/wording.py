"""How an answer is worded on a page; the browser is told these words and makes up none of its own."""

from collections.abc import Iterable, Mapping

from bezelbook.publish.choices import Choice
from bezelbook.reasoning.answer import Answer
from bezelbook.reasoning.builds import Build
from bezelbook.values.words import AnswerVerdict

VERDICTS: Mapping[AnswerVerdict, str] = {
    "goes in": "Goes in",
    "goes in if": "Goes in if",
    "too close": "Too close: offer it up first",
    "does not": "Does not go in",
    "nobody has tried": "Nobody has tried",
    "argued over": "Argued over",
}
NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")


def counted(number: int, thing: str) -> str:
    """`one job`, `two jobs`, `13 jobs`."""
    said = NUMBERS[number] if number < len(NUMBERS) else str(number)
    return f"{said} {thing}" if number == 1 else f"{said} {thing}s"


def sure_words(sure: str, jobs: int) -> str:
    """How sure an answer is, and how many independent jobs stand behind it."""
    return f"{sure} · {counted(jobs, 'job')}" if jobs else sure


def short_reason(answer: Answer) -> str:
    """The few words that go under a verdict in a table; empty when there is nothing to add."""
    if answer.conditions:
        return answer.conditions[0].words
    if answer.until_settled:
        return f"until settled: {answer.until_settled}"
    return sure_words(answer.sure, answer.witnesses) if answer.sure else ""


def build_words(build: Build) -> str:
    """A build as a person says it: its values, in the vehicle's own order."""
    return ", ".join(value for _, value in build)


def ask_words(vehicle: str, place: str, choice: Choice, things: Iterable[str]) -> str:
    """The words that ask about things at a place, in a published way; all are ids."""
    splits = [value for _, value in choice.splits]
    return " ".join([vehicle, place, *splits, *(choice.mounts or ()), *things]).replace("-", " ")
