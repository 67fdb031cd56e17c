"""An answer as lines for a terminal, in the order in which a counter needs it."""

from collections.abc import Iterator, Mapping
from typing import Any

from bezelbook.cli.outcome import counted
from bezelbook.pipeline import Choice


def answer_lines(answer: Mapping[str, Any]) -> Iterator[str]:
    """The verdict, for exactly what, the number, how sure, what is argued, unknown and needed, and the notes."""
    needs = list(answer["needs"])
    condition = f" {needs.pop(0)}" if answer["verdict"] == "goes in if" and needs else ""
    yield f"{answer['verdict'].upper()}{condition}"
    if answer["until_settled"]:
        yield f"until settled: {answer['until_settled']}"
    yield answer["for"]["words"]
    if answer["number"]:
        yield answer["number"]["words"]
    if answer["sure"]:
        yield _sure(answer["sure"], answer["witnesses"])
    yield from (f"argued over: {note['note']}: {note['words']}" for note in answer["argued"])
    unknown = answer["unknown"]
    yield from (f"not known: {one['what']} (look: {one['look']}; changes {one['changes']})" for one in unknown)
    if not unknown:
        yield "nothing unknown"
    yield from (f"needs: {need}" for need in needs)
    yield from (_instead(offer) for offer in answer["instead"])
    yield from (f"note {note['note']}, {note['why']}: {note['words']}" for note in answer["notes"])


def _instead(offer: Mapping[str, Any]) -> str:
    """An offer in one line: what, whether it goes in, how sure, what it takes and what of that is to buy."""
    condition = f" {offer['condition']}" if offer["condition"] else ""
    said = [
        f"{offer['verdict']}{condition}",
        _sure(offer["sure"], offer["witnesses"]) if offer["sure"] else "",
        f"needs {'; '.join(offer['needs'])}" if offer["needs"] else "",
        f"to buy: {', '.join(offer['to_buy'])}" if offer["to_buy"] else "nothing to buy",
    ]
    return f"instead, {offer['kind']}: {offer['words']}: {'; '.join(one for one in said if one)}"


def _sure(sure: str, jobs: int) -> str:
    return sure if not jobs else f"{sure}, {counted(jobs, 'independent job')}"


def choice_lines(choice: Choice) -> Iterator[str]:
    """What is known so far, and what has to be said first, with the answers there are."""
    yield from choice.known
    yield choice.ask
    yield from (f"  {words}" for words, _ in choice.options)
