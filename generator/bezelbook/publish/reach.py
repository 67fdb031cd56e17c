"""How far one size may go in one setting: up to where it certainly goes in, and from where it certainly does not."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from bezelbook.reasoning.needs import Need


@dataclass(frozen=True, slots=True)
class Reach:
    """A size of at most `sure` nanometres goes in, one of at least `refused` does not, whatever else holds.

    `refused` is None when nothing rules any size out. From `argued` on the notes do not agree; None when they do.
    The other sizes, the plug among them, are left out of it.
    """

    sure: int
    refused: int | None
    argued: int | None


def reach(corners: Mapping[str, Any], setting: int, need: Need) -> Reach:
    """The reach of a need in one of the settings of a place, from the place's corners."""
    accounts = [account["settings"][setting] for account in corners["accounts"]]
    sure = min((cell["sure"] for one in accounts for cell in one["cells"] if cell["need"] == need), default=0)
    ends = [_refused(one, need) for one in accounts]
    known = [end for end in ends if end is not None]
    argued = min(known) if known and len(set(ends)) > 1 else None
    return Reach(max(sure, 0), None if None in ends else max(known), argued)


def _refused(setting: Mapping[str, Any], need: Need) -> int | None:
    """From where every leaf refuses a size, when the other sizes are as small as can be."""
    ours = {str(number) for number, cell in enumerate(setting["cells"]) if cell["need"] == need}
    ends = [_leaf(noes, ours) for noes in setting["leaves"]]
    return None if None in ends else max((end for end in ends if end is not None), default=None)


def _leaf(noes: Sequence[Mapping[str, int]], ours: set[str]) -> int | None:
    return _least(max(no.values(), default=0) for no in noes if ours >= set(no))


def _least(ends: Iterable[int]) -> int | None:
    return min(ends, default=None)
