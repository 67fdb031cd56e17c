"""What sizes mean as they are written, by the definition of the inch (25.4 mm exactly, 1959)."""

import pytest

from tests.simulator.box_world import MM, Shop
from tests.simulator.possible.sizes import gap, in_the_car, on_the_bench, read

SHOP = Shop({"bench_caliper": MM // 5, "none": 5 * MM, "putty": MM}, {})


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("165 mm", (165.0, None, None)),
        ("-3/16 in ± 0.5 mm", (-4.7625, 0.5, None)),
        ("2 21/64 in ± 0.1 mm caliper", (59.134375, 0.1, "caliper")),
        ("+5.6 mm caliper", (5.6, None, "caliper")),
        ("178 mm printed", (178.0, None, "printed")),
    ],
)
def test_a_text_is_a_size_with_its_give_and_the_word_behind_it(text: str, found: object) -> None:
    assert read(text) == pytest.approx(found)


def test_what_nobody_measured_may_be_anything() -> None:
    assert on_the_bench(SHOP, "178 mm printed") is None
    assert on_the_bench(SHOP, "178 mm") is None
    assert on_the_bench(SHOP, None) is None
    assert on_the_bench(SHOP, "178 mm", 5.0) == (173.0, 183.0)
    assert on_the_bench(SHOP, "178 mm caliper") == pytest.approx((177.8, 178.2))


def test_a_reading_is_trusted_as_far_as_its_tool() -> None:
    assert in_the_car(SHOP, {"reads": "58 mm", "tool": "putty"}) == (57.0, 59.0)
    assert in_the_car(SHOP, {"reads": "58 mm"}) == (53.0, 63.0)
    assert gap(SHOP, "8 mm ± 2 mm") == (6.0, 10.0)
