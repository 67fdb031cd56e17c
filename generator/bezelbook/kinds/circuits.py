"""What each circuit of a car's sound and each function of the car is, and maps that say something of each."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Annotated, Any, Literal, TypeVar

from pydantic import GetCoreSchemaHandler, GetJsonSchemaHandler
from pydantic.json_schema import JsonSchemaValue
from pydantic_core import CoreSchema

from bezelbook.values.words import Circuit, Function

T = TypeVar("T")

Does = Literal["passes", "broken out", "tapped", "looped", "makes", "not there", "unknown"]

CIRCUIT_MEANINGS: Mapping[Circuit, str] = {
    "constant": "12 V that stays on with the key out; memory.",
    "accessory": "12 V that comes with the key's first click and goes with it.",
    "ignition": "12 V with the key on run only.",
    "illumination": "12 V, or a signal, while the lights are on.",
    "dimmer": "The signal that says how bright the dash is.",
    "ground": "The way back to the battery.",
    "amplifier turn-on": "12 V out of the radio while it plays, to wake an amplifier.",
    "aerial feed": "12 V for the amplifier in the aerial, or for its motor.",
    "left front +": "Left front speaker, plus.",
    "left front -": "Left front speaker, minus.",
    "right front +": "Right front speaker, plus.",
    "right front -": "Right front speaker, minus.",
    "left rear +": "Left rear speaker, plus.",
    "left rear -": "Left rear speaker, minus.",
    "right rear +": "Right rear speaker, plus.",
    "right rear -": "Right rear speaker, minus.",
    "reverse": "The signal that reverse is in.",
    "park brake": "The signal that the park brake is on.",
    "speed": "The signal of how fast the car goes.",
    "wheel buttons": "The lead or the signal from the buttons on the wheel.",
    "mute": "The signal that something else wants to be heard, such as a phone.",
    "microphone": "The factory microphone.",
    "camera": "The picture from the camera.",
    "camera supply": "What feeds the camera; not always 12 V.",
    "USB": "The factory socket.",
    "bus": "The pair of wires that data runs on.",
}
FUNCTION_MEANINGS: Mapping[Function, str] = {
    "wheel buttons": "The buttons on the steering wheel.",
    "camera": "The picture when reverse is in.",
    "parking sensors": "Their sound and their picture.",
    "chimes": "Key in, lights on, door open.",
    "indicator sound": "The click of the indicators, where the radio makes it.",
    "reverse warning": "The sound while backing.",
    "pedestrian warning": "The sound a quiet car makes for people outside.",
    "emergency call": "The call that the car makes by itself, and its voice.",
    "hazard switch": "It works and can be reached.",
    "climate readout": "Temperature and fan on the screen.",
    "menus": "Settings of the car that live in the radio's screen.",
    "clock": "The clock in the dash or the screen.",
    "outlet": "The 12 V outlet.",
    "USB": "The factory sockets.",
    "phone": "Calls and their prompts.",
    "microphone": "The factory microphone.",
    "factory amplifier": "It turns on and plays at the right level.",
    "fader": "Front and rear can be set against each other.",
}


@dataclass(frozen=True)
class SaysOf:
    """Gives a map whose keys are words of a closed list a schema that offers each of them with what it means."""

    meanings: Mapping[Any, str]

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        return handler(source)

    def __get_pydantic_json_schema__(self, schema: CoreSchema, handler: GetJsonSchemaHandler) -> JsonSchemaValue:
        value = handler(schema)["additionalProperties"]
        fields = {word: {**value, "description": meaning} for word, meaning in self.meanings.items()}
        return {"type": "object", "properties": fields, "additionalProperties": False}


ByCircuit = Annotated[dict[Circuit, T], SaysOf(CIRCUIT_MEANINGS)]
ByFunction = Annotated[dict[Function, T], SaysOf(FUNCTION_MEANINGS)]
