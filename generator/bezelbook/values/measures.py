"""The kinds of quantity that a field of a record can hold, each read from text as spoken in the shop."""

from dataclasses import dataclass
from decimal import Decimal
from typing import Annotated

from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic.json_schema import JsonSchemaValue
from pydantic_core import CoreSchema, core_schema
from typing_extensions import TypeAliasType

from bezelbook.values.complaint import Wrong, field_error
from bezelbook.values.grammar import END, Form, form_pattern
from bezelbook.values.quantity import Quantity, read_form
from bezelbook.values.suggestion import called, examples, examples_of

FLUSH = Quantity("length", base=0, give=0, by="caliper", typed="flush")


@dataclass(frozen=True, slots=True)
class Spoken:
    """Makes a field read a quantity of one form from text, and write it back as it was typed.

    A number without a unit is refused with its readings. `word` is a quantity that one fixed text stands for.
    """

    form: Form
    word: Quantity | None = None

    def read(self, value: object) -> Quantity:
        """Read the field's value, or raise the complaint in a shape that survives a model."""
        if isinstance(value, Quantity) and value.dimension == self.form.dimension:
            return value
        if self.word and value == self.word.typed:
            return self.word
        try:
            return read_form(_as_text(value, self.form), self.form)
        except Wrong as wrong:
            raise field_error(wrong) from wrong

    def __get_pydantic_core_schema__(self, _source: object, _handler: GetCoreSchemaHandler) -> CoreSchema:
        text = core_schema.str_schema()
        write = core_schema.plain_serializer_function_ser_schema(_typed, return_schema=text)
        return core_schema.no_info_plain_validator_function(self.read, serialization=write)

    def __get_pydantic_json_schema__(self, _schema: CoreSchema, _: GetJsonSchemaHandler) -> JsonSchemaValue:
        pattern, such_as = form_pattern(self.form), examples_of(self.form)
        if self.word:
            pattern, such_as = f"^{self.word.typed}{END}|{pattern}", (self.word.typed, *such_as)
        return {"type": "string", "pattern": pattern, "examples": list(such_as)}


def _as_text(value: object, form: Form) -> str:
    """Give the text that was typed; a number read from a file gives its digits."""
    if isinstance(value, int | float) and not isinstance(value, bool):
        return f"{Decimal(repr(value)):f}"
    if isinstance(value, str):
        return value
    raise Wrong(f"this is not {called(form.dimension)}", f"Write it like {examples(form.dimension)}")


def _typed(quantity: Quantity) -> str:
    return quantity.typed


# Named types, so that each pattern stands once in a schema file.
Length = TypeAliasType("Length", Annotated[Quantity, Spoken(Form("length", plus_minus=False))])
Reading = TypeAliasType("Reading", Annotated[Quantity, Spoken(Form("length"))])
Size = TypeAliasType("Size", Annotated[Quantity, Spoken(Form("length", sized=True))])
Offset = TypeAliasType("Offset", Annotated[Quantity, Spoken(Form("length", signed=True, sized=True), FLUSH)])
Resistance = TypeAliasType("Resistance", Annotated[Quantity, Spoken(Form("resistance"))])
Power = TypeAliasType("Power", Annotated[Quantity, Spoken(Form("power", plus_minus=False))])
Minutes = TypeAliasType("Minutes", Annotated[Quantity, Spoken(Form("time", plus_minus=False))])
Mass = TypeAliasType("Mass", Annotated[Quantity, Spoken(Form("mass", plus_minus=False))])
Current = TypeAliasType("Current", Annotated[Quantity, Spoken(Form("current", plus_minus=False))])
Voltage = TypeAliasType("Voltage", Annotated[Quantity, Spoken(Form("voltage"))])
Angle = TypeAliasType("Angle", Annotated[Quantity, Spoken(Form("angle", signed=True, plus_minus=False))])
Frequency = TypeAliasType("Frequency", Annotated[Quantity, Spoken(Form("frequency", plus_minus=False))])
Sensitivity = TypeAliasType("Sensitivity", Annotated[Quantity, Spoken(Form("sensitivity", plus_minus=False))])
Temperature = TypeAliasType("Temperature", Annotated[Quantity, Spoken(Form("temperature", signed=True))])
Share = TypeAliasType("Share", Annotated[Quantity, Spoken(Form("share", plus_minus=False))])
Capacitance = TypeAliasType("Capacitance", Annotated[Quantity, Spoken(Form("capacitance", plus_minus=False))])
