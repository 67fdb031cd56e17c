"""A made-up book of any size, the same for the same seed."""

import random
from pathlib import Path

VEHICLE = """\
name: made-up vehicle {number}
vehicle_class: made-up
generation: {number}
model_years: 6
splits:
  build:
    values:
      early: {{tell: long plug, years: [1, 2, 3]}}
      late: {{tell: square plug, years: [4, 5, 6]}}
places:
  dash: {{kind: plain opening, side: centre}}
"""
UNIT = """\
name: made-up unit {number}
size_class: double
body_width: 178 ± 0.2 mm caliper
body_height: 100 ± 0.2 mm caliper
body_depth: {depth} ± 0.5 mm caliper
plug_exit: right
plug_and_bend: 30 ± 3 mm caliper
"""
NOTE = """\
form: tried
author: ab
date: 2026-03-{day:02}
job: job-{number}
vehicle: vehicle-{vehicle}
place: dash
splits: {{build: {build}}}
mounts: none
cut: nothing
loom: aside
what: unit-{unit}
verdict: {verdict}
sure: fitted
{reason}words: offered up as usual, nothing else to say about it
"""
UNITS = 20


def write_book(folder: Path, notes: int, seed: int = 1) -> None:
    """Write a book with so many notes, ten to a vehicle, about openings that are 150 to 200 mm deep."""
    dice = random.Random(seed)
    _write(folder / "shop.yaml", "name: made-up shop\nformat: 1\n")
    depths = [90 + 5 * number for number in range(UNITS)]
    for number, depth in enumerate(depths):
        _write(folder / f"head_units/unit-{number}.yaml", UNIT.format(number=number, depth=depth))
    vehicles = max(1, notes // 10)
    rooms = {(number, build): dice.randint(150, 200) for number in range(vehicles) for build in ("early", "late")}
    for number in range(vehicles):
        _write(folder / f"vehicles/vehicle-{number}.yaml", VEHICLE.format(number=number % 20 + 1))
    for number in range(notes):
        vehicle, build, unit = number % vehicles, dice.choice(["early", "late"]), dice.randrange(UNITS)
        fits = depths[unit] + 34 <= rooms[vehicle, build]
        text = NOTE.format(
            number=number,
            day=number % 28 + 1,
            vehicle=vehicle,
            build=build,
            unit=unit,
            verdict="goes in" if fits else "does not",
            reason="" if fits else "reason: depth\n",
        )
        _write(folder / f"notes/2026/note-{number}.yaml", text)


def _write(path: Path, text: str) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, encoding="utf-8")
