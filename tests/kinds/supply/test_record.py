from typing import Any

import pytest
from pydantic import TypeAdapter, ValidationError

from bezelbook.kinds.supply.record import AnySupply, Fastener, Foam, Resistor, SupplyFile, Wire

READER: TypeAdapter[AnySupply] = TypeAdapter(SupplyFile)
LEAST: dict[str, dict[str, Any]] = {
    "fastener": {"fastener_kind": "W-base clip"},
    "foam": {"foam_kind": "closed-cell tape"},
    "tape": {"tape_kind": "fleece"},
    "wire": {"size": "4 AWG"},
    "terminal": {"terminal_kind": "ring"},
    "resistor": {"value": "20 ohm"},
    "tool": {"tool_kind": "hex socket"},
    "other": {},
}


def supply(form: str, **fields: Any) -> AnySupply:
    return READER.validate_python({"id": "some-file", "name": "Some thing", "form": form, **LEAST[form], **fields})


@pytest.mark.parametrize("form", LEAST)
def test_each_form_loads_with_what_it_cannot_do_without(form: str) -> None:
    loaded = supply(form)
    assert (loaded.form, loaded.pack, loaded.single_use) == (form, None, None)


@pytest.mark.parametrize(("form", "missing"), [(form, field) for form, least in LEAST.items() for field in least])
def test_and_with_nothing_less(form: str, missing: str) -> None:
    with pytest.raises(ValidationError, match=missing):
        READER.validate_python({"id": "some-file", "name": "Some thing", "form": form})


@pytest.mark.parametrize("form", ["screw", "clip", None])
def test_a_form_that_nobody_knows_is_refused(form: object) -> None:
    with pytest.raises(ValidationError, match="form"):
        READER.validate_python({"id": "some-file", "name": "Some thing", "form": form})


def test_a_clip_says_where_it_stays_and_whether_it_may_go_back() -> None:
    clip = supply("fastener", shank="8 mm caliper", stays="in the body", single_use="single use", pack=10)
    assert isinstance(clip, Fastener)
    assert (clip.stays, clip.single_use, clip.pack) == ("in the body", "single use", 10)


def test_foam_is_measured_with_nothing_pressing_on_it() -> None:
    foam = supply("foam", free_thickness="1.6 mm", squeeze="40 %")
    assert isinstance(foam, Foam)
    assert foam.free_thickness is not None
    assert foam.squeeze is not None
    assert (foam.free_thickness.base, foam.squeeze.base) == (1_600_000, 40_000)


@pytest.mark.parametrize("size", ["4 AWG", "21 mm2"])
def test_wire_has_a_gauge_or_an_area(size: str) -> None:
    wire = supply("wire", size=size)
    assert isinstance(wire, Wire)
    assert wire.size == size


def test_a_resistor_may_say_how_far_off_it_can_be() -> None:
    resistor = supply("resistor", value="20 ohm ± 1 ohm", rated="25 W")
    assert isinstance(resistor, Resistor)
    assert resistor.value.give == 1_000_000


@pytest.mark.parametrize(
    ("form", "field", "wrong"),
    [
        ("fastener", "fastener_kind", "xmas tree"),
        ("fastener", "shank", 8),
        ("fastener", "tether", True),
        ("fastener", "pack", 0),
        ("fastener", "single_use", "yes"),
        ("foam", "foam_kind", "foam"),
        ("foam", "free_thickness", "1.6"),
        ("foam", "squeeze", 40),
        ("foam", "hottest", "70"),
        ("tape", "outside", "yes"),
        ("wire", "size", "thick"),
        ("wire", "size", 4),
        ("wire", "metal", "aluminium"),
        ("terminal", "terminal_kind", "eye"),
        ("terminal", "wire_most", "10"),
        ("resistor", "value", "20 W"),
        ("resistor", "value", 20),
        ("tool", "reach", ["bendy"]),
        ("tool", "instead", ["Stubby seven"]),
        ("other", "rated", "30"),
        ("other", "value", "20 ohm"),
    ],
)
def test_a_field_says_which_value_it_does_not_take(form: str, field: str, wrong: object) -> None:
    with pytest.raises(ValidationError, match=field):
        supply(form, **{field: wrong})
