import pytest

from bezelbook.reasoning.next_best import leads
from tests.reasoning.circuits import a_car


def test_what_the_wiring_says_is_worked_out_once_a_build(monkeypatch: pytest.MonkeyPatch) -> None:
    asked: list[tuple[object, ...]] = []
    for name in ("plug_in", "keeping"):
        monkeypatch.setattr(leads, name, lambda _, *where, name=name: asked.append((name, *where)))
    found = leads.Leads(a_car.book())
    for splits in (a_car.LATE, dict(reversed(a_car.LATE.items())), {"build": "late"}):
        found.plug_in(a_car.CAR, a_car.DASH, splits)
        found.keeping(a_car.CAR, a_car.DASH, splits)
    assert asked == [
        (name, a_car.CAR, a_car.DASH, splits)
        for splits in (a_car.LATE, {"build": "late"})
        for name in ("plug_in", "keeping")
    ]
