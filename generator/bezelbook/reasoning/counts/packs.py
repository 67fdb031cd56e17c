"""How many packs to order."""

from typing import NamedTuple


class Packs(NamedTuple):
    """How many pieces are short, how many come in a pack, and how many packs that is; None where no pack is known."""

    short: int
    pack: int | None
    packs: int | None


def packs(need: int, on_shelf: int | None, pack: int | None) -> Packs:
    """What to order: the need less what lies on the shelf, none where that is not looked, in whole packs."""
    short = max(0, need - (on_shelf or 0))
    return Packs(short, pack, None if pack is None else -(-short // pack))
