"""Strategies for quantities as people write them, each with its exact value, made without the code under test."""

from fractions import Fraction

from hypothesis import strategies as st

# Sizes in base units: the inch is 25.4 mm by the agreement of 1959, a foot twelve of them; the rest are prefixes.
SIZES: dict[str, dict[str, int]] = {
    "length": {
        "mm": 10**6,
        "millimetres": 10**6,
        "cm": 10**7,
        "m": 10**9,
        "in": 25_400_000,
        "in.": 25_400_000,
        "inches": 25_400_000,
        '"': 25_400_000,
        "″": 25_400_000,
        "”": 25_400_000,
        "ft": 304_800_000,
        "'": 304_800_000,
    },
    "resistance": {"ohm": 10**6, "ohms": 10**6, "Ω": 10**6, "kohm": 10**9},
    "power": {"W": 10**6, "watts": 10**6, "kW": 10**9},
    "time": {"s": 1, "sec": 1, "seconds": 1, "min": 60, "minutes": 60, "h": 3600, "hours": 3600},
    "mass": {"g": 1000, "kg": 10**6, "grams": 1000},
    "current": {"A": 10**6, "mA": 1000, "amps": 10**6},
    "voltage": {"V": 10**6, "mV": 1000, "volts": 10**6},
    "angle": {"deg": 1000, "°": 1000, "degrees": 1000},
    "capacitance": {"µF": 10**6, "uF": 10**6, "nF": 1000},
    "frequency": {"Hz": 1000, "kHz": 10**6, "hertz": 1000},
    "sensitivity": {"dB": 1000, "decibels": 1000},
    "temperature": {"°C": 1000, "C": 1000, "celsius": 1000},
    "share": {"%": 1000, "percent": 1000},
}
_KEEPS_ITS_CASE = {"m", "mA", "mV", "Ω", "µF"}
_SIGNS = {(1, 2): "½", (1, 4): "¼", (3, 4): "¾", (1, 8): "⅛", (3, 8): "⅜", (5, 8): "⅝", (7, 8): "⅞"}

Written = tuple[str, Fraction]


@st.composite
def units(draw: st.DrawFn, dimension: str) -> tuple[str, int]:
    """A spelling of a unit, capitals as they come, with its size."""
    name, size = draw(st.sampled_from(sorted(SIZES[dimension].items())))
    if name in _KEEPS_ITS_CASE:
        return name, size
    return draw(st.sampled_from([name, name.upper(), name.capitalize(), name.lower()])), size


@st.composite
def plain_numbers(draw: st.DrawFn, size: int) -> Written:
    """A number with a point, a comma or neither, that makes a whole number of base units."""
    places = draw(st.sampled_from([n for n in range(5) if size % 10**n == 0]))
    whole = draw(st.integers(0, 9_999_999))
    shown = draw(st.sampled_from([f"{whole}", f"{whole:07}", *_in_thousands(whole)]))
    if not places:
        return shown, Fraction(whole)
    tail = draw(st.integers(0, 10**places - 1))
    # A comma before three digits can be read two ways, unless a single 0 or spaced thousands come before it.
    marks = ["."] if places == 3 and " " not in shown and shown != "0" else [".", ","]
    return f"{shown}{draw(st.sampled_from(marks))}{tail:0{places}}", whole + Fraction(tail, 10**places)


def _in_thousands(whole: int) -> list[str]:
    return [f"{whole:,}".replace(",", " ")] if whole >= 1000 else []


@st.composite
def both_marks(draw: st.DrawFn) -> Written:
    """A number that has thousands apart by one mark and decimals by the other."""
    whole, tail = draw(st.integers(1000, 9_999_999)), draw(st.integers(0, 99))
    english = f"{whole:,}.{tail:02}"
    swapped = english.translate(str.maketrans(",.", ".,"))
    return draw(st.sampled_from([english, swapped])), whole + Fraction(tail, 100)


@st.composite
def fractions(draw: st.DrawFn, size: int) -> Written:
    """A fraction of a unit, alone or after a whole number."""
    under = draw(st.sampled_from([d for d in (2, 4, 8, 16, 32, 64) if size % d == 0]))
    over = draw(st.integers(1, under - 1))
    ways = [f"{over}/{under}", f"{over}⁄{under}"]
    sign = _SIGNS.get((over, under))
    whole = draw(st.none() | st.integers(0, 9999))
    if whole is None:
        return draw(st.sampled_from([*ways, *([sign] if sign else [])])), Fraction(over, under)
    joined = [f"{whole}{gap}{way}" for gap in (" ", "-", "–") for way in ways]
    joined += [f"{whole}{gap}{sign}" for gap in ("", " ", "-") if sign]
    return draw(st.sampled_from(joined)), whole + Fraction(over, under)


@st.composite
def numbers(draw: st.DrawFn, size: int) -> Written:
    """Any number that makes a whole number of base units of a unit of this size."""
    ways = [plain_numbers(size)]
    ways += [fractions(size)] * (size % 2 == 0)
    ways += [both_marks()] * (size % 100 == 0)
    return draw(st.one_of(ways))


@st.composite
def singles(draw: st.DrawFn, dimension: str) -> tuple[str, int]:
    """A number and its unit, with the value in base units."""
    unit, size = draw(units(dimension))
    number, value = draw(numbers(size))
    base = value * size
    assert base.denominator == 1
    gap = draw(st.sampled_from(["", " ", "  ", "\u00a0"]))
    return f"{number}{gap}{unit}", int(base)


@st.composite
def with_give(draw: st.DrawFn, dimension: str) -> tuple[str, int, int]:
    """A quantity with a ± that is not nothing, each with its own unit or both with one."""
    mark = draw(st.sampled_from([" ± ", "±", " +/- ", " +- "]))
    if draw(st.booleans()):
        unit, size = draw(units(dimension))
        first, second = draw(numbers(size)), draw(numbers(size).filter(lambda number: number[1] > 0))
        return f"{first[0]}{mark}{second[0]} {unit}", int(first[1] * size), int(second[1] * size)
    main, give = draw(singles(dimension)), draw(singles(dimension).filter(lambda single: single[1] > 0))
    return f"{main[0]}{mark}{give[0]}", main[1], give[1]


_DEBRIS = "0123456789./,-–−+±½¼xX'\"″ inmcftMh:()#°ΩµA\u00a0\n\t"


@st.composite
def mangled(draw: st.DrawFn, good: st.SearchStrategy[str]) -> str:
    """A quantity after one to four slips of the hand."""
    text = draw(good)
    for _ in range(draw(st.integers(1, 4))):
        at = draw(st.integers(0, len(text)))
        gone = draw(st.integers(0, 2))
        text = text[:at] + draw(st.text(_DEBRIS, max_size=2)) + text[at + gone :]
    return text
