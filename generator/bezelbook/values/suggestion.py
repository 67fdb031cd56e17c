"""Which ways of writing a quantity to propose in place of one that cannot be read."""

from decimal import ROUND_HALF_EVEN, Decimal
from fractions import Fraction

from bezelbook.values.grammar import Form, reads
from bezelbook.values.listed import listed
from bezelbook.values.unit import MOST_DECIMALS, UNITS

_NAMES = {"angle": "an angle"}
_EXAMPLES = {
    "length": ("165 mm", "6 1/2 in"),
    "resistance": ("20 ohm",),
    "power": ("10 W",),
    "time": ("95 min", "1 h 35"),
    "mass": ("1.2 kg", "300 g"),
    "current": ("2 A", "500 mA"),
    "voltage": ("12.4 V",),
    "angle": ("15 deg",),
    "capacitance": ("10 µF",),
    "frequency": ("80 Hz", "3.5 kHz"),
    "sensitivity": ("90 dB",),
    "temperature": ("70 °C",),
    "share": ("40 %",),
}


def called(dimension: str) -> str:
    """Name the dimension in a sentence, such as `a length`."""
    return _NAMES.get(dimension, f"a {dimension}")


def quoted(text: str) -> str:
    """Quote what somebody typed, cut short when it runs on."""
    short = text if len(text) <= 60 else f"{text[:57]}..."
    return f"'{short}'" if '"' in short else f'"{short}"'


def examples(dimension: str) -> str:
    """Give one or two well-written quantities of the dimension."""
    return " or ".join(_EXAMPLES[dimension])


def examples_of(form: Form) -> tuple[str, ...]:
    """Give well-written quantities of a form, the plainest first; some lengths with a ± or a source."""
    more = ("150 ± 3 mm", "96 mm caliper") if form.dimension == "length" else ()
    return tuple(text for text in (*_EXAMPLES[form.dimension], *more) if reads(text, form))


def units_in_words(dimension: str) -> str:
    """List the dimension's units, such as `mm, in, cm, m or ft`."""
    return listed([unit.name for unit in UNITS[dimension]], "or")


def write(form: Form, *texts: str) -> str:
    """Propose those of the texts that the form takes, or failing all of them an example."""
    good = readable(form, *texts)
    return f"Write {' or '.join(good)}" if good else f"Write it like {examples(form.dimension)}"


def readable(form: Form, *texts: str) -> list[str]:
    """Keep those of the texts that the form takes, each once."""
    return [text for text in dict.fromkeys(texts) if reads(text, form)]


def with_units(form: Form, number: str) -> list[str]:
    """Give the number with each of the dimension's two usual units, where that can be read."""
    return readable(form, *(f"{number} {unit.name}" for unit in UNITS[form.dimension][:2]))


def decimal(value: Fraction, places: int = MOST_DECIMALS) -> str:
    """Write a number with at most so many decimals, rounded half to even, without idle zeros."""
    exact = Decimal(value.numerator) / Decimal(value.denominator)
    text = f"{exact.quantize(Decimal(1).scaleb(-places), ROUND_HALF_EVEN):f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def mixed(value: Fraction) -> str:
    """Write a number as a whole and a fraction, such as `2 3/8`."""
    whole, part = divmod(value, 1)
    return " ".join(str(piece) for piece in (whole, part) if piece) or "0"
