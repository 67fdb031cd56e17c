"""Whether a length is typed in millimetres or in inches does not matter."""

from decimal import Decimal

from tests.laws.random_worlds import world_of
from tests.laws.records import Written
from tests.laws.small_world import Size

SEEDS = range(8_000, 8_300)


def inches(size: Size) -> str:
    """A size with an inch for a unit."""
    return f"{size.middle} ± {size.give} in" if size.give else f'{size.middle}"'


def inches_in_mm(size: Size) -> str:
    """The same size in millimetres."""
    return f"{_mm(size.middle)} ± {_mm(size.give)} mm" if size.give else f"{_mm(size.middle)} mm"


def _mm(count: int) -> str:
    return str(Decimal(count) * Decimal("25.4"))


def test_an_answer_is_the_same_in_millimetres_and_in_inches() -> None:
    for seed in SEEDS:
        world = world_of(seed)
        assert Written(world, inches).verdicts() == Written(world, inches_in_mm).verdicts(), f"world {seed}"


def test_only_proportions_matter_to_a_firm_answer() -> None:
    for seed in SEEDS:
        world = world_of(seed)
        assert Written(world, inches).verdicts() == Written(world).verdicts(), f"world {seed}"
