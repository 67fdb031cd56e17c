from fractions import Fraction

from bezelbook.kinds.record import Record
from bezelbook.reasoning.looks.bench_looks import bench_looks
from bezelbook.reasoning.looks.look import PLUG, Look
from bezelbook.reasoning.looks.pair import open_pairs
from tests.reasoning import making

NOSE = {"nose_width": "170 ± 1 mm caliper", "nose_height": "95 ± 1 mm caliper"}
DEEP = making.reading("depth", "205 ± 3 mm")
FRAME = (making.roomy(), making.measured("wire", DEEP))


def looks(*records: Record) -> dict[str, Look]:
    base = making.book(*records)
    place = making.place(base)
    found = bench_looks(base, {(making.CAR, making.HOLE): place}, open_pairs(place))
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
