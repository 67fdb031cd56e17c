"""What a quantity is: as spoken in the shop, kept as typed and as an exact whole number of base units."""

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from bezelbook.values.grammar import PLUS_MINUS, Form, form_pattern, reads
from bezelbook.values.number import GAP, NUMERIC, VULGAR, read_number
from bezelbook.values.refusal import refusal
from bezelbook.values.unit import PAIRS, Unit, unit_named

_SIGNS = "".join(VULGAR)
_PART = re.compile(rf"([0-9.,{_SIGNS}]{NUMERIC}*)([^0-9{_SIGNS}]*)")


@dataclass(frozen=True, slots=True)
class Quantity:
    """A quantity in whole base units of its dimension, beside the text it was read from.

    The base units: length nm, resistance micro-ohm, power microwatt, time second, mass milligram, current
    microamp, voltage microvolt, angle millidegree, capacitance picofarad, frequency millihertz, and a thousandth of
    a dB, of a °C and of a % for sensitivity, temperature and share. `give` is the ± in the same unit, or None when
    none was typed; `by` is caliper or printed, or None.
    """

    dimension: str
    base: int
    give: int | None
    by: str | None
    typed: str


def read_quantity(
    text: str, dimension: str, *, signed: bool = False, sized: bool = False, plus_minus: bool = True
) -> Quantity:
    """Read a quantity of this dimension exactly, or raise Wrong with what is wrong and what would mend it.

    `signed` allows a sign before it, `sized` the word caliper or printed behind it, `plus_minus` a ± in it.
    """
    return read_form(text, Form(dimension, signed, sized, plus_minus))


def pattern(dimension: str, *, signed: bool = False, sized: bool = False, plus_minus: bool = True) -> str:
    """Give the pattern, for Python and for a browser, of exactly the texts that `read_quantity` reads."""
    return form_pattern(Form(dimension, signed, sized, plus_minus))


# A book says the same few sizes over and over.
@lru_cache(maxsize=4096)
def read_form(text: str, form: Form) -> Quantity:
    """Read a quantity of this form, as `read_quantity` does."""
    if not reads(text, form):
        raise refusal(text, form)
    rest, by = _without_word(text)
    main, _, give = re.sub(PLUS_MINUS, "±", rest).partition("±")
    spread, unit = _amount(give, form.dimension, None)
    base, _ = _amount(main, form.dimension, unit)
    return Quantity(form.dimension, _sign(main) * base, spread if give else None, by, text)


def _without_word(text: str) -> tuple[str, str | None]:
    found = re.search(f"(caliper|printed){GAP}$", text, re.IGNORECASE)
    return (text[: found.start()], found[1].lower()) if found else (text, None)


def _sign(text: str) -> int:
    return -1 if re.match(f"{GAP}[-\u2212\u2013]", text) else 1


def _amount(text: str, dimension: str, lent: Unit | None) -> tuple[int, Unit | None]:
    """Add up the numbers in the text, each times its unit, and give the last unit.

    A number without a unit takes the one lent to it; without that it is the tail of a pair, as in `1 h 45`.
    """
    total, unit = Fraction(0), lent
    for number, spelled in _PART.findall(text):
        unit = unit_named(spelled.strip(), dimension) or lent or PAIRS[dimension].small
        total += read_number(number.strip()) * unit.size
    return int(total), unit
