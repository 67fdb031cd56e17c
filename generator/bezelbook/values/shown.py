"""How a quantity is shown: millimetres to a tenth beside inches as a rule has them, hours and minutes."""

from decimal import Decimal
from fractions import Fraction

from bezelbook.values.quantity import Quantity
from bezelbook.values.unit import INCH, MM, UNITS, Unit

_SIXTY_FOURTH = INCH.size // 64


def show_length(nm: int, first: str = "mm") -> str:
    """Show a length given in nm in both units, `first` being mm or in, such as `60.3 mm (2 3/8 in)`."""
    ways = [show_mm(nm), show_inch(nm)]
    shown, other = ways if first == "mm" else reversed(ways)
    return f"{shown} ({other})"


def show_mm(nm: int) -> str:
    """Show a length given in nm, to a tenth of a mm half going to even, such as `60.3 mm` or `165 mm`."""
    return f"{_rounded(nm, MM, '0.1').removesuffix('.0')} mm"


def show_inch(nm: int) -> str:
    """Show a length given in nm as a fraction of an inch where that is exact to a 64th, else as `6.50 in`."""
    if nm % _SIXTY_FOURTH:
        return f"{_rounded(nm, INCH, '0.01')} in"
    whole, part = divmod(Fraction(abs(nm), INCH.size), 1)
    number = " ".join(str(piece) for piece in (whole, part) if piece) or "0"
    return f"{'-' if nm < 0 else ''}{number} in"


def show_minutes(seconds: int) -> str:
    """Show a time given in seconds to the minute, such as `35 min`, `2 h` or `1 h 35`."""
    hours, minutes = divmod(round(Fraction(seconds, 60)), 60)
    if not hours:
        return f"{minutes} min"
    return f"{hours} h {minutes:02}" if minutes else f"{hours} h"


def show_quantity(quantity: Quantity, first: str = "mm") -> str:
    """Show a quantity of any dimension with its ±; a length in both units, `first` being mm or in."""
    if quantity.dimension == "length":
        give = f" ± {show_length(quantity.give, first)}" if quantity.give else ""
        return show_length(quantity.base, first) + give
    if quantity.dimension == "time":
        return f"{quantity.base} s" if quantity.base % 60 and quantity.base < 120 else show_minutes(quantity.base)
    unit = _unit_for(quantity)
    give = f" ± {_exact(quantity.give, unit)}" if quantity.give else ""
    return f"{_exact(quantity.base, unit)}{give} {unit.name}"


def _unit_for(quantity: Quantity) -> Unit:
    """Choose the largest unit that there is a whole one of, or failing that the first of the dimension."""
    units = sorted(UNITS[quantity.dimension], key=lambda unit: -unit.size)
    return next((unit for unit in units if abs(quantity.base) >= unit.size), UNITS[quantity.dimension][0])


def _exact(base: int, unit: Unit) -> str:
    number = f"{Decimal(base) / Decimal(unit.size):f}"
    return number.rstrip("0").rstrip(".") if "." in number else number


def _rounded(nm: int, unit: Unit, step: str) -> str:
    """Round the exact quotient once: `Fraction.__round__` goes half to even."""
    places = -int(Decimal(step).as_tuple().exponent)
    tenths = round(Fraction(nm * 10**places, unit.size))
    return f"{Decimal(tenths).scaleb(-places):f}"
