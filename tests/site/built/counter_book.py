"""A small book in which the box has to ask for everything that it can ask for."""

from bezelbook.kinds.record import Record
from tests.reasoning.making import mount, reading, record, shop, unit

HATCH, VAN, DASH = "compact-hatch-2", "cargo-van-2", "dash"
BUILD = {
    "values": {"early": {"tell": "round vents"}, "late": {"tell": "square vents"}},
    "bears_on": {"subjects": ["room"]},
}
OPENING = {"kind": "plain opening", "side": "centre", "name": "radio opening"}


def records() -> tuple[Record, ...]:
    """Two vehicles, one with two openings; two mounts for one dash and one for none; notes that are argued over."""
    here = [{"vehicle": HATCH, "place": DASH}]
    return (
        shop(name="The counter", about="An invented shop."),
        _vehicle(HATCH, "hatch 2", {DASH: OPENING, "front-door-left": _door()}, splits={"build": BUILD}),
        _vehicle(
            VAN,
            "van 2",
            {DASH: OPENING, "overhead": {"kind": "overhead console", "side": "centre", "name": "overhead slot"}},
        ),
        unit("slim-double", name="Slim double, seven inch", also=["slim one"]),
        unit("disc-double", name="Full double with a disc", body_depth="170 ± 1 mm caliper"),
        mount("flush-kit", name="flush kit", made_for=here),
        mount("proud-kit", name="proud kit", made_for=here, proud="+20 ± 0.5 mm caliper"),
        mount("tab-bracket", name="tab bracket", mount_kind="bracket"),
        *_notes(),
    )


def _vehicle(named: str, short: str, places: dict[str, object], **more: object) -> Record:
    vehicle_class = named.rpartition("-")[0].replace("-", " ")
    said = {"name": f"{vehicle_class}, generation 2", "also": [short], "vehicle_class": vehicle_class, "generation": 2}
    made: Record = record("vehicles", named, {**said, "model_years": 6, "places": places, **more})
    return made


def _door() -> dict[str, object]:
    return {"kind": "door lower", "side": "left", "name": "left front door"}


def _notes() -> tuple[Record, ...]:
    hatch = {"vehicle": HATCH, "place": DASH, "splits": {"build": "late"}, "cut": "nothing", "loom": "aside"}
    van = {"vehicle": VAN, "place": DASH, "mounts": "none", "cut": "nothing", "loom": "aside"}
    fitted = {"form": "tried", "verdict": "goes in", "sure": "fitted", "plugs": "on"}
    deep = {"form": "measured", "readings": [reading("depth", "150 ± 3 mm")]}
    return (
        record("notes", "hatch-deep", {**deep, **hatch, "mounts": "none", "author": "rk", "date": "2026-01-02"}),
        record(
            "notes", "hatch-slim", {**fitted, **hatch, "what": "slim-double", "mounts": ["flush-kit"], "job": "monday"}
        ),
        record("notes", "van-disc", {**fitted, **van, "what": "disc-double", "author": "db", "date": "2026-02-03"}),
        record("notes", "van-deep", {**deep, **van, "author": "rk", "date": "2026-02-04"}),
    )
