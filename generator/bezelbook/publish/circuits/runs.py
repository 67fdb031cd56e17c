"""The lines of a chain's drawing: from which bar to which each circuit runs, a pair drawn as one."""

from collections.abc import Iterator, Sequence

from bezelbook.publish.drawing.chain import Mark, Run
from bezelbook.reasoning.circuits.chain import Chain
from bezelbook.reasoning.circuits.table import Row
from bezelbook.values.words import Circuit


def bars_of(chain: Chain) -> tuple[str, ...]:
    """The bars from the left: the car, the pieces by their numbers, and the radio or what stays of it."""
    end = "the radio that stays" if chain.task and chain.task.site.radio else "the radio"
    return ("the car", *(str(number) for number, _ in enumerate(chain.pieces, 1)), end)


def runs_of(chain: Chain, rows: Sequence[Row]) -> tuple[Run, ...]:
    """A line a circuit; plus and minus of a pair that fare alike are one."""
    found: dict[tuple[str, str], Run] = {}
    pairs = _pairs(rows)
    for row in rows:
        label = pairs.get(row.circuit, row.circuit)
        start, end, mark = _from_to(chain, row)
        found.setdefault((label, row.becomes), Run(label, row.becomes, start, end, mark))
    return tuple(found.values())


def _pairs(rows: Sequence[Row]) -> dict[Circuit, str]:
    becomes = {row.circuit: row.becomes for row in rows}
    return {
        circuit: f"{circuit[:-2]} ±"
        for circuit in becomes
        if circuit[-1] in "+-" and len({becomes.get(other) for other in _both(circuit)}) == 1
    }


def _both(circuit: Circuit) -> Iterator[Circuit]:
    yield circuit
    yield circuit[:-1] + ("-" if circuit[-1] == "+" else "+")  # type: ignore[misc]


def _from_to(chain: Chain, row: Row) -> tuple[int, int, Mark]:
    last = len(chain.pieces) + 1
    numbers = {one.piece.name: number for number, one in enumerate(chain.pieces, 1)}
    feeds = chain.outcome.feeds if chain.outcome else {}
    ats = [(need.kind, feed.at) for need, feed in feeds.items() if need.circuit == row.circuit and feed.at]
    if row.becomes == "not there":
        return 0, min(1, last - 1), "blank"
    if row.becomes in ("unknown", "capped"):
        return 0, min(1, last - 1), "cap"
    if any(kind in ("from radio", "to car") for kind, _ in ats):
        return 0, last, "cut"
    modules = [numbers[at[0]] for _, at in ats if not at[1]]
    if modules:
        return modules[0], last, ""
    takers = [numbers[one.piece.name] for one in chain.pieces if row.circuit in one.piece.wants]
    if takers and not ats:
        return 0, takers[0], ""
    return 0, last, ""
