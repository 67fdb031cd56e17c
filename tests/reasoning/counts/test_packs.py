import pytest

from bezelbook.reasoning.counts.packs import packs


# Trade 4.10 and 13: need 10, shelf 2, pack of 10, one pack.
@pytest.mark.parametrize(
    ("need", "shelf", "pack", "short", "count"),
    [
        (10, 2, 10, 8, 1),
        (10, 0, 10, 10, 1),
        (11, 0, 10, 11, 2),
        (10, 10, 10, 0, 0),
        (10, 30, 10, 0, 0),
        (10, None, 10, 10, 1),
        (10, 2, None, 8, None),
        (0, None, 5, 0, 0),
    ],
)
def test_what_is_short_is_ordered_in_whole_packs(
    need: int, shelf: int | None, pack: int | None, short: int, count: int | None
) -> None:
    assert packs(need, shelf, pack) == (short, pack, count)
