"""What the bench says of looking: the same lines whenever and wherever it runs, and whether that is enough."""

import os
import subprocess
import sys
from collections.abc import Iterator, Mapping
from pathlib import Path

import pytest

from tests.bench.looking import report
from tests.bench.looking.draw import shop
from tests.bench.looking.orders import minutes_to_half

ROOT = Path(__file__).parents[2]
# Looks in one made-up shop in each order, and what the tool puts first there, a line each.
LOOK = """
from tests.bench.looking.draw import shop
from tests.bench.looking.orders import compared
print(compared("481516-looks-2"))
print(*(look.todo for look in shop("481516-looks-2").looks()), sep="\\n")
"""


def test_looking_takes_as_long_and_says_the_same_in_whatever_order_sets_are_gone_through() -> None:
    said = []
    for number in ("1", "2"):
        env = {**os.environ, "PYTHONHASHSEED": number, "PYTHONPATH": os.pathsep.join(["generator", "."])}
        ran = subprocess.run(
            [sys.executable, "-c", LOOK], cwd=ROOT, env=env, capture_output=True, text=True, check=True
        )
        said.append(ran.stdout.splitlines())
    assert said[0] == said[1]
    assert len(said[0]) > 10


def test_nobody_looks_at_the_same_for_ever() -> None:
    one = shop("481516-looks-2")
    same = next(do for do in one.could() if not do.where)
    with pytest.raises(ValueError, match="is to be taken again"):
        minutes_to_half(one, lambda *_: same)
    assert minutes_to_half(one, lambda *_: same, 3 * same.minutes) == 3 * same.minutes


@pytest.mark.parametrize(
    ("ours", "verdict", "ratios"),
    [(10, "that holds", ("0.25", "0.83")), (13, "that does not hold", ("0.33", "1.08"))],
)
def test_the_report_sums_minutes_over_the_shops_in_which_something_is_open(
    ours: int, verdict: str, ratios: tuple[str, str], monkeypatch: pytest.MonkeyPatch
) -> None:
    def minutes(_: str) -> Iterator[Mapping[str, int]]:
        yield {"ours": ours, "random": 20, "random, read first": 30, "most asked first": 10}
        yield {}
        yield {"ours": 0, "random": 20, "random, read first": 10, "most asked first": 2}
        raise AssertionError("no more shops than were asked for")

    monkeypatch.setattr(report, "_minutes", minutes)
    sums, rest, of_random, of_most_asked, _ = report.looked("any", 2)
    assert "2 shops" in sums
    assert f"ours {ours / 2:.1f}, random 20.0, random, read first 20.0, most asked first 6.0" in sums
    assert rest.split() == ["1", "more", "in", "which", "nothing", "is", "open"]
    assert ratios[0] in of_random
    assert f"{ratios[1]}, at most 1.00: {verdict}" in of_most_asked
