"""A field reads its quantity from text, keeps it as typed, and refuses a bare number with both readings."""

from typing import Any, Literal

import pytest
from pydantic import BaseModel, ConfigDict, TypeAdapter, ValidationError

from bezelbook.values import measures
from bezelbook.values.measures import FLUSH, Length, Offset, Reading, Size
from bezelbook.values.quantity import read_quantity

# What each field takes beyond a plain quantity: a sign, caliper or printed, a ±.
TAKES = {
    "Length": ("length", "", "165 mm"),
    "Reading": ("length", "±", "165 mm"),
    "Size": ("length", "w±", "165 mm"),
    "Offset": ("length", "sw±", "165 mm"),
    "Resistance": ("resistance", "±", "20 ohm"),
    "Power": ("power", "", "10 W"),
    "Minutes": ("time", "", "95 min"),
    "Mass": ("mass", "", "300 g"),
    "Current": ("current", "", "2 A"),
    "Voltage": ("voltage", "±", "12 V"),
    "Angle": ("angle", "s", "15 deg"),
    "Capacitance": ("capacitance", "", "10 µF"),
    "Frequency": ("frequency", "", "80 Hz"),
    "Sensitivity": ("sensitivity", "", "90 dB"),
    "Temperature": ("temperature", "s±", "70 °C"),
    "Share": ("share", "", "40 %"),
}


def reader(name: str) -> TypeAdapter[Any]:
    return TypeAdapter(getattr(measures, name), config=ConfigDict(strict=True))


def takes(name: str, text: str) -> bool:
    try:
        reader(name).validate_python(text)
    except ValidationError:
        return False
    return True


@pytest.mark.parametrize("name", TAKES)
def test_a_field_reads_its_own_dimension_and_no_other(name: str) -> None:
    dimension, _, text = TAKES[name]
    assert reader(name).validate_python(text) == read_quantity(text, dimension)
    others = [other for _, (of, _, other) in TAKES.items() if of != dimension]
    assert not any(takes(name, other) for other in others)


@pytest.mark.parametrize("name", TAKES)
def test_a_field_takes_a_sign_a_word_and_a_give_only_where_they_mean_something(name: str) -> None:
    _, may, text = TAKES[name]
    unit = text.partition(" ")[2]
    assert takes(name, f"-{text}") == ("s" in may)
    assert takes(name, f"{text} caliper") == ("w" in may)
    assert takes(name, f"{text} ± 1 {unit}") == ("±" in may)


class Part(BaseModel):
    model_config = ConfigDict(strict=True, frozen=True)

    depth: Length
    gap: Reading | Literal["not looked"] = "not looked"
    body: Size | None = None
    proud: Offset | None = None


def errors_of(**values: object) -> list[tuple[str, str]]:
    with pytest.raises(ValidationError) as caught:
        Part.model_validate(values)
    return [(error["type"], error["msg"]) for error in caught.value.errors()]


@pytest.mark.parametrize(("number", "digits"), [(165, "165"), (6.5, "6.5"), (165.0, "165.0"), ("165", "165")])
def test_a_bare_number_gets_both_readings(number: object, digits: str) -> None:
    said = f"{digits} is a bare number. Write {digits} mm or {digits} in."
    assert errors_of(depth=number) == [("bare_number", said)]


@pytest.mark.parametrize("value", [True, None, [1], {"mm": 5}])
def test_what_is_no_text_is_refused(value: object) -> None:
    assert errors_of(depth=value) == [("bezel", "this is not a length. Write it like 165 mm or 6 1/2 in.")]


def test_a_refusal_keeps_its_two_parts() -> None:
    with pytest.raises(ValidationError) as caught:
        Part.model_validate({"depth": "2-3 mm"})
    assert caught.value.errors()[0]["ctx"] == {"what": '"2-3 mm" is a range', "mend": "Write 2 mm or 3 mm"}


def test_a_field_is_written_as_it_was_typed() -> None:
    part = Part.model_validate({"depth": '6 1/2"', "proud": "flush"})
    assert part.model_dump(mode="json") == {"depth": '6 1/2"', "gap": "not looked", "body": None, "proud": "flush"}


def test_a_quantity_that_was_read_before_is_taken_as_it_is() -> None:
    depth = read_quantity("165 mm", "length")
    assert Part.model_validate({"depth": depth}).depth is depth
    assert errors_of(depth=read_quantity("20 ohm", "resistance"))[0][0] == "bezel"


def test_flush_is_an_offset_of_exactly_nothing() -> None:
    part = Part.model_validate({"depth": "1 mm", "proud": "flush"})
    assert part.proud is FLUSH
    assert (FLUSH.base, FLUSH.give, FLUSH.by) == (0, 0, "caliper")


@pytest.mark.parametrize("name", ["Length", "Size"])
def test_only_an_offset_is_flush(name: str) -> None:
    assert not takes(name, "flush")


def test_each_pattern_stands_once_in_a_schema() -> None:
    schema = Part.model_json_schema()
    assert schema["properties"]["depth"]["$ref"] == "#/$defs/Length"
    assert {"Length", "Reading", "Size", "Offset"} == schema["$defs"].keys()
    assert all(kind["type"] == "string" for kind in schema["$defs"].values())
