"""Pieces that records of several kinds are made of: what a thing was made for, its holes, a filter, a car's state."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Annotated, Any, Literal

from pydantic import Field, GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic.json_schema import JsonSchemaValue
from pydantic_core import CoreSchema, core_schema

from bezelbook.kinds.record import AsWhole, ById, Count, Many, Name, Part, Year, names
from bezelbook.values.clock import Clock
from bezelbook.values.ident import Id
from bezelbook.values.measures import Capacitance, Frequency, Length, Size

_RULES_OF_A_WORD = ("type", "enum", "pattern", "minLength", "maxLength")

Presence = Literal["there", "not there", "not looked"]


@dataclass(frozen=True, slots=True)
class InAWord:
    """Lets a piece be written as one word where the field of this name is all there is to say."""

    field: str

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        return core_schema.no_info_before_validator_function(self._spelled_out(), handler(source))

    def __get_pydantic_json_schema__(self, schema: CoreSchema, handler: GetJsonSchemaHandler) -> JsonSchemaValue:
        whole = handler(schema)
        word = handler.resolve_ref_schema(whole)["properties"][self.field]
        return {"anyOf": [{rule: word[rule] for rule in _RULES_OF_A_WORD if rule in word}, whole]}

    def _spelled_out(self) -> Callable[[object], object]:
        return lambda value: {self.field: value} if isinstance(value, str) else value


class MadeFor(Part):
    """A vehicle, or some builds of it, that a thing was made for."""

    vehicle: Id = Field(description="Which vehicle.", json_schema_extra=names("vehicle"))
    place: Id | None = Field(default=None, description="Which place in it, where that matters.")
    splits: ById[Id] = Field(default={}, description="Which builds, where that matters.")


MadeForAny = Annotated[MadeFor, InAWord("vehicle")]


class HolePattern(Part):
    """Holes that belong together, as they would be drilled."""

    count: Count | None = Field(default=None, description="How many holes.")
    circle: Size | None = Field(default=None, description="Diameter of the circle through the middles of the holes.")
    long_way: Size | None = Field(
        default=None, description="For an oblong pattern: from middle to middle along the longer side."
    )
    short_way: Size | None = Field(default=None, description="The same along its shorter side.")
    hole: Size | None = Field(default=None, description="Diameter of one hole.")
    first: Clock | None = Field(default=None, description="Where the first hole sits, seen from the front, 12 on top.")


class Filter(Part):
    """What keeps the wrong notes from a speaker."""

    capacitor: Capacitance | None = Field(default=None, description="The capacitor in its lead.")
    corner: Frequency | None = Field(default=None, description="Where it begins to act.")
    order: Annotated[int, Field(ge=1, le=8), AsWhole] | None = Field(
        default=None, description="How steep: 1 is a capacitor alone, each further order another 6 dB."
    )
    lets_through: Literal["high", "low", "a band"] | None = Field(default=None, description="What it lets through.")


class Screws(Part):
    """Screws of one size."""

    thread: Name = Field(description="Thread or size, such as M5 or 4.2.")
    length: Length | None = Field(default=None, description="Length below the head.")
    count: Count | None = Field(default=None, description="How many.")
    where: Name | None = Field(default=None, description="Where they go.")


class Circumstances(Part):
    """Everything besides the place that a fit depends on. A blank means not looked."""

    year: Year | None = Field(default=None, description="Model year, counted within the generation.")
    splits: ById[Id] = Field(default={}, description="Which build this car is, split by split.")
    mounts: Literal["none"] | Many[Name] | None = Field(
        default=None,
        description="The mounts used, nearest the car first; the word none when there was none.",
        json_schema_extra=names("mount", in_words=True),
    )
    plugs: Literal["on", "off"] | None = Field(
        default=None, description="Whether the plugs were on when it was offered up."
    )
    loom: Literal["behind", "aside"] | None = Field(default=None, description="Where the loom went.")
    glass: Literal["up", "down"] | None = Field(default=None, description="Where the glass was.")
    tabs: Literal["in", "out"] | None = Field(
        default=None, description="Whether the mount's tabs were in or broken out."
    )
    cut: Name | None = Field(
        default=None, description="What was cut, drilled or moved to make room; the word nothing when nothing was."
    )
