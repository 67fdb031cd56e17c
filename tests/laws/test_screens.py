"""What is said of a screen over its controls, against every height tried out in every world."""

from collections import Counter
from random import Random

from bezelbook.kinds.record import Record
from bezelbook.reasoning.screens.usable import Usable
from tests.laws.screen_oracle import Read, Ruled, ScreenWorld
from tests.reasoning import making
from tests.reasoning.screens.dashes import floater, over

EDGES = ("top", "bottom", "left", "right")
SEEDS = range(400)
MM = 1_000_000
# A shop whose tools err by nothing, so that a length without a ± is exact.
EXACT = making.shop(tools=dict.fromkeys(("bench_caliper", "wire", "none"), "0 mm"))


def world_of(seed: int) -> ScreenWorld:
    """A small opening, a screen that hangs over it by a little, one or two controls close by."""
    draw = Random(seed)  # noqa: S311 - made-up worlds need no cryptography
    give = draw.choice((0, 0, 1))

    def read(low: int, high: int) -> Read:
        return Read(draw.randint(low, high), give)

    height = draw.randint(4, 8)
    # A body with play in an opening that is not exact would make two numbers of one height.
    body = Read(draw.randint(2, height)) if not give else Read(height)
    controls = tuple(_control(draw, give) for _ in range(draw.choice((1, 1, 1, 2))))
    down, up = draw.randint(0, 3), draw.randint(0, 3)
    return ScreenWorld(Read(10), Read(height), body, read(8, 16), read(height, height + 6), down, up, controls)


def _control(draw: Random, give: int) -> Ruled:
    near, start = draw.randint(1, 6), draw.randint(-2, 6)
    far, end = near + draw.randint(2, 5), start + draw.randint(2, 6)
    return Ruled(draw.choice(EDGES), Read(near, give), Read(far, give), Read(start, give), Read(end, give))


def written(world: ScreenWorld) -> tuple[Record, ...]:
    """The records that a shop would have of such a world."""
    controls = [
        {"what": f"control {number}", "beyond": one.edge}
        | {name: _mm(getattr(one, name)) for name in ("near", "far", "starts", "ends")}
        for number, one in enumerate(world.controls)
    ]
    opening = (making.reading("width", _mm(world.width)), making.reading("height", _mm(world.height)))
    note = making.measured("ruled", *opening, controls=controls, numbers="read back")
    screen = {
        "width": _caliper(world.screen_width),
        "height": _caliper(world.screen_height),
        "height_down": f"{world.down} mm",
        "height_up": f"{world.up} mm",
    }
    sizes = {"body_height": _caliper(world.body), "body_width": _caliper(world.width)}
    return EXACT, note, making.changed(floater(**screen), **sizes)


def _mm(read: Read) -> str:
    return f"{read.middle} ± {read.give} mm" if read.give else f"{read.middle} mm"


def _caliper(read: Read) -> str:
    return f"{_mm(read)} caliper"


def said_of(world: ScreenWorld) -> Usable:
    lying = over(*written(world)).lying
    assert lying is not None
    return lying.usable


def test_what_is_said_of_a_screen_holds_in_every_world() -> None:
    seen = Counter[str]()
    for seed in SEEDS:
        world = world_of(seed)
        said = said_of(world)
        seen[said.verdict] += 1
        free = [(window.low / MM, window.high / MM) for window in said.free]
        for one in world.worlds():
            covered = {at: one.covers(at) for at in one.settings()}
            if said.verdict == "usable":
                assert not any(covered.values()), f"world {seed}"
            if said.verdict == "usable if set":
                assert not all(covered.values()), f"world {seed}"
            if said.verdict == "covers":
                assert all(covered.values()), f"world {seed}"
            named = [at for at in covered for low, high in free if low <= at <= high]
            assert not any(covered[at] for at in named), f"world {seed}"
    assert min(seen[verdict] for verdict in ("usable", "usable if set", "covers", "too close")) > 15, seen


def test_what_holds_in_every_world_is_said() -> None:
    """Of one control, nothing is left open that no world leaves open."""
    for seed in SEEDS:
        world = world_of(seed)
        if len(world.controls) == 1:
            outcomes = {one.covers(at) for one in world.worlds() for at in one.settings()}
            verdict = said_of(world).verdict
            assert (verdict == "usable") == (outcomes == {False}), f"world {seed}"
            assert (verdict == "covers") == (outcomes == {True}), f"world {seed}"
