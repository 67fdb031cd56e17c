from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.electric.channel import Hanging, sees
from bezelbook.reasoning.electric.stand_in import stand_ins
from tests.reasoning import making
from tests.reasoning.electric.ranges import span


def amplifier(named: str, **content: Any) -> Record:
    made: Record = making.record("amplifiers", named, {"name": named, "origin": "added"} | content)
    return made


BOOK = making.book(
    amplifier("four", least_load="4 ohm"),
    amplifier("two", least_load="2 ohm"),
    amplifier("blank"),
    amplifier("factory", origin="factory", least_load="1 ohm"),
)


def test_an_amplifier_may_stand_in_where_its_limit_lets_it() -> None:
    pair = sees([Hanging("door", span(4)), Hanging("mirror", span(4), high_only=True)], nothing_else=True)
    assert stand_ins(BOOK, pair) == {"below the minimum": ("four",), "fine": ("two",), "unknown": ("blank",)}


def test_until_somebody_looked_what_hangs_there_it_is_unknown_for_all() -> None:
    assert stand_ins(BOOK, sees([Hanging("door", span(4))], nothing_else=False)) == {
        "unknown": ("blank", "four", "two")
    }
