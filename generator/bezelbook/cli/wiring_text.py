"""An answer about wiring as lines for a terminal: what to take, what becomes of every circuit, what to look at."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from bezelbook.reasoning.circuits.spoken import spoken
from bezelbook.values.words import Circuit


def wiring_lines(answer: Mapping[str, Any]) -> Iterator[str]:
    """For what it is, then job by job and build by build."""
    yield answer["for"]
    for one in answer["answers"]:
        yield ""
        yield from _build(one)


def _build(one: Mapping[str, Any]) -> Iterator[str]:
    where = one["place"].replace("-", " ")
    yield f"{one['job'].upper()}, {where}, {one['builds_words'] or 'every build'}"
    if one["tell"]:
        yield f"from the seat: {one['tell']}"
    yield f"{one['words']}{f' ({sure})' if (sure := one['sure']) else ''}"
    for plug in one["plugs"]:
        yield f"plug: {plug['plug']}, {plug['state']} ({', '.join(plug['notes'])})"
        yield from (f"  not to be taken for {alike}" for alike in plug["not_to_be_taken_for"])
    yield from (f"{seat['piece']} in the {seat['place'].replace('-', ' ')}: {seat['verdict']}" for seat in one["seats"])
    if one["cable"]:
        yield f"cable between the two: {one['cable']}"
    for number, piece in enumerate(one["pieces"], 1):
        yield f"take {number}: {', '.join(word for word in (piece['name'], piece['ends']) if word)}"
        yield f"  {piece['why']}; {piece['in_hand']}"
    yield from (f"  {line}" for line in _circuits(one["circuits"]))
    yield from one["beside"]
    if one["load"]:
        yield one["load"]
    yield from _lacks(one["lacks"])
    yield from _kept(one["kept"])
    unknown = one["unknown"]
    yield from (f"not known: {look['what']} (how: {look['look']}; changes: {look['changes']})" for look in unknown)
    if not unknown and one["pieces"]:
        yield "nothing unknown"


def _circuits(circuits: Sequence[Mapping[str, Any]]) -> Iterator[str]:
    """A line a circuit, those that fare alike on one."""
    alike: dict[tuple[str, str], list[Circuit]] = {}
    for one in circuits:
        alike.setdefault((one["becomes"], one["words"]), []).append(one["circuit"])
    yield from (f"{spoken(names)}: {becomes}, {words}" for (becomes, words), names in alike.items())


def _lacks(lacks: Sequence[Mapping[str, Any]]) -> Iterator[str]:
    """What the pieces do not bring, circuits with the same remedies on one line."""
    alike: dict[tuple[bool, str], list[Circuit]] = {}
    for one in lacks:
        alike.setdefault((one["must"], "; or ".join(one["remedies"])), []).append(one["circuit"])
    for (must, remedies), names in alike.items():
        yield f"{'missing' if must else 'not brought'}: {spoken(names)}; {remedies}"


def _kept(kept: Sequence[Mapping[str, Any]]) -> Iterator[str]:
    for one in kept:
        if one["goes"] != "not looked":
            settled = f" (until settled: {one['until_settled']})" if one["until_settled"] else ""
            yield f"{one['function']}: {one['said']}{settled}"
    blank = [one["function"] for one in kept if one["goes"] == "not looked"]
    if blank:
        yield f"not looked whether they are kept: {', '.join(blank)}"
