"""How an exact number is shown in decimals: rounded once, half to even, and said to be about where that lost any."""

from decimal import Decimal
from fractions import Fraction


def decimals(number: Fraction, places: int) -> str:
    """The number to so many places at most, without zeros that say nothing, such as `2.67` or `4`."""
    shown = f"{Decimal(round(number * 10**places)).scaleb(-places):f}"
    return shown.rstrip("0").rstrip(".") if places else shown


def exact_or_about(number: Fraction, places: int, unit: str) -> str:
    """The number with its unit, `4 ohm`, and with `about` before it where these places do not hold all of it."""
    about = "" if number * 10**places == round(number * 10**places) else "about "
    return f"{about}{decimals(number, places)} {unit}"
