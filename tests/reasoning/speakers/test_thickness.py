"""How thick a ring must and may be, by the trade's formulas (trade.md 4.4; common practice, no source)."""

from typing import Any

from bezelbook.reasoning.speakers.stacks import BARE
from bezelbook.reasoning.speakers.thickness import End, thickness
from tests.reasoning.speakers.doors import (
    BUILDS,
    book,
    car,
    foam,
    measured,
    place,
    reading,
    resolved,
    roomy,
    shop,
    speaker,
    tried,
)

MM = 1_000_000


def ends(*records: Any, **question: Any) -> tuple[End | None, End | None]:
    of = book(*records)
    return thickness(place(of), resolved(of, **question).narrowed(stacks=(BARE,)))


def test_both_ends_with_margins_gasket_and_tolerances() -> None:
    found = ends(shop(glass="5 mm", grille="3 mm"), foam(), roomy(glass="58 ± 1 mm"), gasket="foam")
    # 60 + 5 - 58 - 1 behind, 20 - 1 - 10 - 3 in front
    assert found == (End(6 * MM, MM, "glass"), End(6 * MM, MM, "front"))


def test_sizes_and_gasket_add_to_the_tolerance() -> None:
    rough = speaker(mounting_depth="60 ± 2 mm")
    low, _ = ends(rough, roomy(glass="58 ± 1 mm"), foam(squeeze="50 %"), gasket="foam")
    assert low == End(1 * MM, 3 * MM, "glass")


def test_the_worse_of_glass_and_steel_and_of_the_builds_decides() -> None:
    fixed = measured("f", reading("rear depth to fixed", "50 ± 1 mm"))
    assert ends(roomy(glass="58 ± 1 mm"), fixed)[0] == End(10 * MM, MM, "fixed")
    both = [
        roomy("a", glass="58 ± 1 mm", splits={"build": "early"}),
        roomy("b", glass="55 ± 1 mm", splits={"build": "late"}),
    ]
    assert ends(car(splits=BUILDS), *both)[0] == End(5 * MM, MM, "glass")


def test_what_nobody_measured_sets_no_end() -> None:
    assert ends() == (None, None)
    assert ends(tried()) == (None, None)
    low, high = ends(measured("m", reading("front clearance", "20 ± 1 mm")))
    assert (low, high) == (None, End(10 * MM, MM, "front"))


def test_what_nobody_knows_of_the_speaker_or_its_gasket_sets_none() -> None:
    assert ends(speaker(mounting_depth=None), roomy())[0] is None
    assert ends(foam(free_thickness=None), roomy(), gasket="a bead of mastic") == (None, None)
