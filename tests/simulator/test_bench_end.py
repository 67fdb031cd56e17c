"""The bench ends as the shell expects: with 1 and plain words where a firm answer is wrong though no note is false."""

from collections.abc import Callable, Generator, Iterator

import pytest

from tests.bench import __main__ as bench
from tests.bench import honest_shops
from tests.bench.small_worlds import share_settled
from tests.laws.oracle import Oracle
from tests.simulator.draw_world import draw_world
from tests.simulator.regimes import HONEST, UPSIDE_DOWN, Regime


def said_and_wrong(lines: Generator[str, None, int], capsys: pytest.CaptureFixture[str]) -> tuple[str, int]:
    wrong = bench.printed(lines)
    return capsys.readouterr().out, wrong


@pytest.mark.parametrize(("regime", "any_wrong"), [(HONEST, False), (UPSIDE_DOWN, True)])
def test_what_made_up_shops_come_to_is_how_many_of_their_firm_answers_are_wrong(
    regime: Regime, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], *, any_wrong: bool
) -> None:
    monkeypatch.setattr(honest_shops, "HONEST", regime)
    monkeypatch.setattr(honest_shops, "SHOWN", 0)  # to make a wrong answer small takes long, and is tested on its own
    said, wrong = said_and_wrong(honest_shops.of_one_kind("openings", "end", draw_world, 500, 60), capsys)
    assert (wrong > 0) is any_wrong
    assert f"of which {wrong} wrong" in said


def test_shops_with_openings_and_shops_with_doors_both_count(monkeypatch: pytest.MonkeyPatch) -> None:
    def of_one_kind(kind: str, *_: object) -> Generator[str, None, int]:
        yield kind
        return {"openings": 2, "doors": 3}[kind]

    monkeypatch.setattr(honest_shops, "of_one_kind", of_one_kind)
    assert bench.printed(honest_shops.lived_through("any")) == 5


def test_what_small_worlds_come_to_is_how_many_firm_answers_the_oracle_refutes(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    said, wrong = said_and_wrong(share_settled(1, 20), capsys)
    assert wrong == 0
    assert "; 0 firm answers wrong" in said
    monkeypatch.setattr(Oracle, "refutes", lambda *_: True)
    said, wrong = said_and_wrong(share_settled(1, 20), capsys)
    assert wrong > 0
    assert f"; {wrong} firm answers wrong" in said


def coming_to(wrong: int) -> Callable[[object], Generator[str, None, int]]:
    def lines(_: object) -> Generator[str, None, int]:
        yield f"{wrong} wrong"
        return wrong

    return lines


def nothing_more(_: str) -> Iterator[str]:
    yield "the rest"


@pytest.mark.parametrize(
    ("in_worlds", "in_shops", "code", "words"),
    [
        (0, 0, 0, "no firm answer is wrong"),
        (1, 0, 1, "no note is false: 1,"),
        (2, 1, 1, "no note is false: 3,"),
    ],
)
def test_the_bench_ends_with_1_and_says_so_once_any_firm_answer_is_wrong(
    in_worlds: int,
    in_shops: int,
    code: int,
    words: str,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    monkeypatch.setattr("sys.argv", ["bench", "7"])
    monkeypatch.setattr(bench, "speeds", lambda: None)
    monkeypatch.setattr(bench, "share_settled", coming_to(in_worlds))
    monkeypatch.setattr(bench, "lived_through", coming_to(in_shops))
    monkeypatch.setattr(bench, "found_out", nothing_more)
    monkeypatch.setattr(bench, "looked", nothing_more)
    assert bench.main() == code
    told = capsys.readouterr()
    assert told.out.count("the rest") == 2
    assert words in (told.err if code else told.out)
    assert bool(told.err) is bool(code)
