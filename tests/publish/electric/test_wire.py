from typing import Any

import pytest

from bezelbook.kinds.supply.record import Wire
from bezelbook.publish.electric.wire import wire_part
from tests.publish.pages_of import pages_about
from tests.reasoning import making


def wire(**content: Any) -> Wire:
    made: Wire = making.record("supplies", "red", {"name": "Red", "form": "wire", "size": "4 AWG"} | content)
    return made


# Trade 4.9: 4 AWG, 0.82 milliohm a metre, 100 to 150 A; at 54 A and 6 m 0.27 V.
def test_a_thick_wire_reaches_so_far() -> None:
    shown = wire_part(wire(metal="copper"))
    assert shown is not None
    assert shown.size == "4 AWG, 21.15 mm²"
    assert shown.metre == "0.82 milliohm a metre at 20 °C"
    assert shown.fuse == "Largest fuse before it: 100 A, up to 150 A on a short run; the wire maker's figure rules."
    # Half a volt by 0.81517 milliohm: 15.33 m at 40 A; what would reach more than 20 m is left out.
    assert shown.rows == (
        ("40 A", "15.3 m", "40 A: fine"),
        ("60 A", "10.2 m", "60 A: fine"),
        ("80 A", "7.6 m", "80 A: fine"),
        ("100 A", "6.1 m", "100 A: fine"),
    )


def test_a_thin_wire_stops_where_its_fuse_does() -> None:
    shown = wire_part(wire(size="16 AWG", metal="copper"))
    assert shown is not None
    assert [row[0] for row in shown.rows] == ["5 A", "10 A"]
    assert [row[2] for row in shown.rows] == ["5 A: fine", "10 A: fine"]


def test_a_metal_that_nobody_looked_at_spans_both() -> None:
    shown = wire_part(wire())
    assert shown is not None
    assert shown.metre == "0.82 to 1.3 milliohm a metre at 20 °C; whether it is copper or clad is not looked"
    assert shown.fuse.startswith("No usual fuse is known for it")
    assert shown.fuse.endswith("The usual figures are for copper, and clad carries less.")
    assert {row[2].partition(": ")[2] for row in shown.rows} == {"unknown"}


def test_a_wire_thinner_than_any_usual_one_has_no_fuse() -> None:
    shown = wire_part(wire(size="18 AWG", metal="copper"))
    assert shown is not None
    assert shown.fuse == "No usual fuse is known for it: the wire maker's figure rules."
    assert shown.rows[0][2] == "5 A: unknown"


@pytest.mark.parametrize("size", ["0 mm2", "00 mm2", "0.0 mm²", "0.000mm2"])
def test_a_wire_of_nothing_carries_nothing(size: str) -> None:
    assert wire_part(wire(size=size)) is None
    assert "What it carries" not in pages_about(wire(size=size))["supplies/red.md"].text


@pytest.mark.parametrize("size", ["0 AWG", "4/0 AWG", "40 AWG", "0.001 mm2", "999.999 mm2", "21mm²", "0.5mm2"])
def test_every_size_that_a_record_may_hold_has_a_page(size: str) -> None:
    assert "What it carries" in pages_about(wire(size=size))["supplies/red.md"].text
