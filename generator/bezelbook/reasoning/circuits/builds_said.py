"""Several builds as somebody would say them: what they have in common, and nothing that makes no difference."""

from collections.abc import Sequence

from bezelbook.kinds.vehicle.record import Vehicle
from bezelbook.reasoning.builds import Build
from bezelbook.values.listed import listed


def builds_said(vehicle: Vehicle, builds: Sequence[Build]) -> str:
    """`late`, `late, upgraded`, `early, base or late, upgraded`; empty when these are all there are.

    A split is left out when these builds have every value of it with every other value that they have.
    """
    pairs = [dict(build) for build in builds]
    axes = [axis for axis in (pairs[0] if pairs else {}) if not _free(vehicle, axis, pairs)]
    said = dict.fromkeys(", ".join(pair[axis] for axis in axes) for pair in pairs)
    return listed([words for words in said if words], "or")


def _free(vehicle: Vehicle, axis: str, pairs: Sequence[dict[str, str]]) -> bool:
    """Whether a split makes no difference among these builds."""
    rest: dict[tuple[tuple[str, str], ...], set[str]] = {}
    for pair in pairs:
        others = tuple((key, value) for key, value in pair.items() if key != axis)
        rest.setdefault(others, set()).add(pair[axis])
    return all(values == set(vehicle.splits[axis].values) for values in rest.values())
