"""Which texts are a quantity: the grammar that the reader, the refusals and the schema patterns share."""

import re
from dataclasses import dataclass
from functools import cache
from itertools import groupby

from bezelbook.values.number import GAP, NOT_NOTHING, SPACE, WHOLE, fraction_pattern, number_pattern
from bezelbook.values.unit import PAIRS, UNITS, Pair, Unit, unit_pattern

PLUS_MINUS = "(?:±|\\+/?[-\u2212])"
SIGN = f"[-+\u2212\u2013]{GAP}"
WORD = f"{SPACE}{{1,9}}(?:[cC][aA][lL][iI][pP][eE][rR]|[pP][rR][iI][nN][tT][eE][dD])"
# The end of the text in Python and in a browser alike: Python's `$` alone lets a last line break pass.
END = r"$(?!\n)"
_BELOW = {12: "(?:0?[0-9]|1[01])", 60: "[0-5]?[0-9]"}


@dataclass(frozen=True, slots=True)
class Form:
    """What a field takes: a dimension, and whether a sign, caliper or printed, and a ± may stand in it."""

    dimension: str
    signed: bool = False
    sized: bool = False
    plus_minus: bool = True


def form_pattern(form: Form) -> str:
    """Give the pattern, for Python and a browser in unicode mode, of the texts that the form takes."""
    sign = f"(?:{SIGN})?" if form.signed else ""
    word = f"(?:{WORD})?" if form.sized else ""
    return f"^{GAP}{sign}(?:{_amount(form)}){word}{GAP}{END}"


def reads(text: str, form: Form) -> bool:
    """Say whether the text is a quantity of this form."""
    return _compiled(form).match(text) is not None


@cache
def _compiled(form: Form) -> re.Pattern[str]:
    return re.compile(form_pattern(form))


def _amount(form: Form) -> str:
    single = _single(form.dimension)
    pair = f"|{_pair(PAIRS[form.dimension])}" if form.dimension in PAIRS else ""
    if not form.plus_minus:
        return single + pair
    give = f"(?:{GAP}{PLUS_MINUS}{GAP}{NOT_NOTHING}{single})?"
    return "|".join([f"(?:{single}{pair}){give}", *map(_shared, _alike(form.dimension))])


def _alike(dimension: str) -> list[tuple[Unit, ...]]:
    """Group the dimension's units by which numbers they take."""

    def takes(unit: Unit) -> tuple[int, tuple[int, ...]]:
        return unit.decimals, unit.denominators

    return [tuple(units) for _, units in groupby(sorted(UNITS[dimension], key=takes), key=takes)]


def _number(units: tuple[Unit, ...]) -> str:
    return number_pattern(units[0].decimals, units[0].denominators)


def _single(dimension: str) -> str:
    forms = [f"{_number(units)}{GAP}{unit_pattern(units)}" for units in _alike(dimension)]
    return f"(?:{'|'.join(forms)})"


def _shared(units: tuple[Unit, ...]) -> str:
    """Match `165 ± 1 mm`: two numbers, one unit."""
    return f"{_number(units)}{GAP}{PLUS_MINUS}{GAP}{NOT_NOTHING}{_number(units)}{GAP}{unit_pattern(units)}"


def _pair(pair: Pair) -> str:
    below = _BELOW[pair.below]
    start = f"{WHOLE}{GAP}{unit_pattern((pair.big,))}{GAP}"
    if pair.bare:
        return f"{start}{below}(?:{GAP}{unit_pattern((pair.small,))})?"
    small = rf"(?:{below}(?:[.,][0-9]{{1,2}})?|{fraction_pattern(pair.small.denominators, below)})"
    return f"{start}{small}{GAP}{unit_pattern((pair.small,))}"
