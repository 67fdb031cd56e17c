"""Which units a shop writes, how each is spelled, and how many base units it holds."""

import re
from dataclasses import dataclass
from functools import cache

DENOMINATORS = (2, 4, 8, 16, 32, 64)
MOST_DECIMALS = 4


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit: `size` base units; `words` in any mixture of capitals, `marks` only as they stand here."""

    name: str
    size: int
    words: tuple[str, ...] = ()
    marks: tuple[str, ...] = ()

    @property
    def decimals(self) -> int:
        """How many decimals a number in this unit may have, so that it stays a whole number of base units."""
        return next(n for n in range(MOST_DECIMALS, -1, -1) if self.size % 10**n == 0)

    @property
    def denominators(self) -> tuple[int, ...]:
        """Which fractions of this unit are a whole number of base units."""
        return tuple(under for under in DENOMINATORS if self.size % under == 0)


@dataclass(frozen=True, slots=True)
class Pair:
    """Two units said in one breath, `1 ft 2 in`; there are `below` small ones, unsaid at times if `bare`."""

    big: Unit
    small: Unit
    below: int
    bare: bool = False


MM = Unit("mm", 1_000_000, ("mm", "mm.", "millimetre", "millimetres", "millimeter", "millimeters"))
CM = Unit("cm", 10_000_000, ("cm", "cm.", "centimetre", "centimetres", "centimeter", "centimeters"))
# A capital M alone may be a thread size, so metres are a small m.
METRE = Unit("m", 1_000_000_000, ("metre", "metres", "meter", "meters"), ("m",))
INCH = Unit("in", 25_400_000, ("in", "in.", "inch", "inches"), ('"', "″", "”", "“", "''"))
FOOT = Unit("ft", 304_800_000, ("ft", "ft.", "foot", "feet"), ("'", "′", "’"))
OHM = Unit("ohm", 1_000_000, ("ohm", "ohms"), ("Ω", "\u2126"))
KILOHM = Unit("kohm", 1_000_000_000, ("kohm", "kohms"), ("kΩ", "k\u2126", "KΩ", "K\u2126"))
WATT = Unit("W", 1_000_000, ("w", "watt", "watts"))
KILOWATT = Unit("kW", 1_000_000_000, ("kw", "kilowatt", "kilowatts"))
SECOND = Unit("s", 1, ("s", "sec", "sec.", "secs", "second", "seconds"))
MINUTE = Unit("min", 60, ("min", "min.", "mins", "minute", "minutes"))
HOUR = Unit("h", 3_600, ("h", "hr", "hrs", "hour", "hours"))
GRAM = Unit("g", 1_000, ("g", "gram", "grams", "gramme", "grammes"))
KILOGRAM = Unit("kg", 1_000_000, ("kg", "kilo", "kilos", "kilogram", "kilograms"))
# mA and MA, mV and MV differ by a thousand million, so the small ones are spelled one way only.
AMP = Unit("A", 1_000_000, ("a", "amp", "amps", "ampere", "amperes"))
MILLIAMP = Unit("mA", 1_000, ("milliamp", "milliamps"), ("mA", "ma"))
VOLT = Unit("V", 1_000_000, ("v", "volt", "volts"))
MILLIVOLT = Unit("mV", 1_000, ("millivolt", "millivolts"), ("mV", "mv"))
DEGREE = Unit("deg", 1_000, ("deg", "deg.", "degree", "degrees"), ("°",))
MICROFARAD = Unit("µF", 1_000_000, ("uf", "mfd", "microfarad", "microfarads"), ("µF", "\u03bcF"))
NANOFARAD = Unit("nF", 1_000, ("nf", "nanofarad", "nanofarads"))
HERTZ = Unit("Hz", 1_000, ("hz", "hertz"))
KILOHERTZ = Unit("kHz", 1_000_000, ("khz", "kilohertz"))
DECIBEL = Unit("dB", 1_000, ("db", "decibel", "decibels"))
CELSIUS = Unit("°C", 1_000, ("°c", "c", "celsius"))
PER_CENT = Unit("%", 1_000, ("percent", "per cent"), ("%",))

# The first two units of each row are the two readings of a bare number.
UNITS: dict[str, tuple[Unit, ...]] = {
    "length": (MM, INCH, CM, METRE, FOOT),
    "resistance": (OHM, KILOHM),
    "power": (WATT, KILOWATT),
    "time": (MINUTE, HOUR, SECOND),
    "mass": (GRAM, KILOGRAM),
    "current": (AMP, MILLIAMP),
    "voltage": (VOLT, MILLIVOLT),
    "angle": (DEGREE,),
    "capacitance": (MICROFARAD, NANOFARAD),
    "frequency": (HERTZ, KILOHERTZ),
    "sensitivity": (DECIBEL,),
    "temperature": (CELSIUS,),
    "share": (PER_CENT,),
}
PAIRS = {"length": Pair(FOOT, INCH, below=12), "time": Pair(HOUR, MINUTE, below=60, bare=True)}


@cache
def spellings(dimension: str) -> dict[str, Unit]:
    """Give every way to write the dimension's units, words in small letters, each with its unit."""
    return {spelled: unit for unit in UNITS[dimension] for spelled in (*unit.words, *unit.marks)}


def unit_named(text: str, dimension: str) -> Unit | None:
    """Give the unit that the text spells, or nothing when the dimension has no such unit."""
    for unit in UNITS[dimension]:
        if text in unit.marks or text.lower() in unit.words:
            return unit
    return None


def unit_pattern(units: tuple[Unit, ...]) -> str:
    """Give the part of a pattern that matches any spelling of these units, longest spelling first."""
    spelled = {text: _any_capitals(text) for unit in units for text in unit.words}
    spelled |= {text: literal(text) for unit in units for text in unit.marks}
    longest_first = sorted(spelled, key=lambda text: (-len(text), text))
    return f"(?:{'|'.join(spelled[text] for text in longest_first)})"


def literal(text: str) -> str:
    """Escape text for a pattern that Python, and a browser in unicode mode, both take."""
    return re.sub(r"([\\^$.*+?()\[\]{}|/])", r"\\\1", text)


def _any_capitals(word: str) -> str:
    return "".join(f"[{c}{c.upper()}]" if c.isascii() and c.isalpha() else literal(c) for c in word)
