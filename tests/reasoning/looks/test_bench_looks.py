from fractions import Fraction
from typing import Any

from bezelbook.kinds.record import Record
from bezelbook.reasoning.looks.bench_looks import _reading, bench_looks
from bezelbook.reasoning.looks.look import PLUG, Look
from bezelbook.reasoning.looks.pair import open_pairs
from bezelbook.reasoning.needs import needs_of_unit
from tests.reasoning import making

NOSE: dict[str, Any] = {"nose_width": "170 ± 1 mm caliper", "nose_height": "95 ± 1 mm caliper"}
DEEP = making.reading("depth", "205 ± 3 mm")
FRAME = (making.roomy(), making.measured("wire", DEEP))


def looks(*records: Record) -> dict[str, Look]:
    base = making.book(*records)
    place = making.place(base)
    found = bench_looks(base, {(making.CAR, making.HOLE): place}, list(open_pairs(place)))
    return {look.todo.what: look for look in found}


def test_a_printed_depth_is_worth_a_caliper() -> None:
    found = looks(making.unit(**NOSE, body_depth="110 mm printed"), *FRAME)
    look = found["depth of box"]
    assert (look.todo.tool, look.todo.minutes, look.todo.vehicle) == ("caliper", 2, None)
    assert set(look.settles.values()) == {Fraction(1)}


def test_a_blank_depth_may_be_anything_usual() -> None:
    # Thirds of the usual 20 to 220 mm have their middles at 53.3, 120 and 186.7; with plug and bend of 32 ± 5 the first
    # two go into 205 ± 3, and the last is 218.7 ± 5.2.
    [share] = looks(making.unit(**NOSE, body_depth=None), *FRAME)["depth of box"].settles.values()
    assert share == Fraction(1)


def test_a_plug_that_nobody_ruled_is_worth_plugging_in() -> None:
    found = looks(making.unit(**NOSE, plug_and_bend=None, body_depth="165 ± 1 mm caliper"), *FRAME)
    look = found["plug and bend of box"]
    assert (look.todo.minutes, look.todo.bay_hours) == (3, PLUG)
    # 15 to 65 mm in thirds: 23.3, 40 and 56.7. Behind 165 ± 1 the first goes into 205 ± 3, the last does not, and
    # 205 ± 2 is too near to say.
    assert set(look.settles.values()) == {Fraction(2, 3)}


def test_a_unit_of_which_all_is_known_needs_no_bench() -> None:
    assert looks(making.unit(**NOSE), *FRAME) == {}


def test_a_unit_that_no_reading_of_its_own_would_settle_is_not_looked_at() -> None:
    assert looks(making.unit(**NOSE, body_depth="110 mm printed")) == {}


def test_a_look_at_one_unit_settles_that_unit_alone() -> None:
    found = looks(making.unit(**NOSE, body_depth="110 mm printed"), making.unit("other", body_depth="110 mm"), *FRAME)
    assert {pair.unit for pair in found["depth of box"].settles} == {"box"}


def test_what_is_printed_may_read_half_a_millimetre_off_and_what_is_blank_anything_usual() -> None:
    base = making.book(making.unit(body_width="178 mm printed", body_depth=None))
    needs = needs_of_unit(base, base.head_units["box"])
    printed = [_reading(needs, "width", number) for number in range(3)]
    assert [(span.low, span.high) for span in printed] == [
        (177_300_000, 177_700_000),
        (177_800_000, 178_200_000),
        (178_300_000, 178_700_000),
    ]
    # A depth is usually 20 to 220 mm; the middles of its thirds to the nanometre, each read to 0.2 mm.
    blank = [_reading(needs, "depth", number) for number in range(3)]
    assert [span.low for span in blank] == [53_133_333, 119_800_000, 186_466_666]
    assert {(span.high or 0) - (span.low or 0) for span in blank} == {400_000}
