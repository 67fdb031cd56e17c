"""What can be wrong with the unit of a quantity, and what each slip most likely meant."""

import re
from difflib import get_close_matches
from fractions import Fraction

from bezelbook.values.complaint import Wrong
from bezelbook.values.grammar import Form
from bezelbook.values.number import NUMERIC, VULGAR
from bezelbook.values.suggestion import called, decimal, examples, quoted, readable, units_in_words, write
from bezelbook.values.unit import PAIRS, UNITS, spellings, unit_named

_SIGNS = "".join(VULGAR)
_NUMBER = rf"[0-9.,{_SIGNS}](?:{NUMERIC}*[0-9.,{_SIGNS}])?"
_UNIT = rf"[^0-9{_SIGNS}]+?"
_ONE = re.compile(rf"({_NUMBER}) ?({_UNIT})")


def no_number(text: str, form: Form) -> Wrong | None:
    """Meet `mm`, and words without any number."""
    if re.search(f"[0-9{_SIGNS}]", text):
        return None
    return Wrong(f"{quoted(text)} has no number", f"Write it like {examples(form.dimension)}")


def unit_twice(text: str, form: Form) -> Wrong | None:
    """Meet `5 mm mm`."""
    found = _ONE.fullmatch(text)
    words = found[2].split(" ") if found else []
    if not found or len(words) < 2 or not all(unit_named(word, form.dimension) for word in words):
        return None
    ways = [f"{found[1]} {word}" for word in words]
    return Wrong(f"{quoted(text)} has more than one unit", write(form, *ways))


def number_after_unit(text: str, form: Form) -> Wrong | None:
    """Meet `6 in 1/2` and `6' 2`."""
    found = re.fullmatch(rf"({_NUMBER}) ?({_UNIT}) ?({_NUMBER}) ?({_UNIT})?", text)
    if not found or not unit_named(found[2].strip(), form.dimension):
        return None
    first, unit, second, last = found.groups()
    pair = PAIRS.get(form.dimension)
    gap = " " if unit[0].isalpha() else ""
    whole = [f"{first} {second}{gap}{unit}"] if "/" in second and not last else []
    both = [f"{text} {pair.small.name}"] if pair and not last else []
    ways = readable(form, *whole, *both) or [f"{first} {unit}", f"{second} {last or unit}"]
    return Wrong(f"{quoted(text)} has a number after its unit", write(form, *ways))


def unit_first(text: str, form: Form) -> Wrong | None:
    """Meet `mm 165`."""
    found = re.fullmatch(rf"({_UNIT}) ?({_NUMBER})", text)
    if not found or not unit_named(found[1].strip(), form.dimension):
        return None
    return Wrong(f"{quoted(text)} has its unit in front", write(form, f"{found[2]} {found[1].strip()}"))


def doubtful_unit(text: str, form: Form) -> Wrong | None:
    """Meet `80 mil`, said for thousandths of an inch and for millimetres, and `10 M`, maybe a thread."""
    found = re.fullmatch(r"([0-9]{1,6}(?:\.[0-9])?) ?(mil|mils|thou|M)", text)
    if form.dimension != "length" or not found:
        return None
    number, unit = found.groups()
    inch = f"{decimal(Fraction(number) / 1000)} in"
    ways = {"M": [f"{number} m", f"{number} mm"], "thou": [inch]}.get(unit, [inch, f"{number} mm"])
    return Wrong(f"{quoted(text)} has a unit that can be read two ways", write(form, *ways))


def fahrenheit(text: str, form: Form) -> Wrong | None:
    """Meet `175 °F`, which the book keeps in °C."""
    found = re.fullmatch(r"(-?[0-9]{1,4}(?:\.[0-9])?) ?(?:°F|F|deg F|fahrenheit)", text, flags=re.IGNORECASE)
    if form.dimension != "temperature" or not found:
        return None
    celsius = decimal((Fraction(found[1]) - 32) * Fraction(5, 9), 1)
    return Wrong(f"{quoted(text)} is in Fahrenheit", write(form, f"{celsius} °C"))


def unit_of_another(text: str, form: Form) -> Wrong | None:
    """Meet `20 ohm` where a length belongs."""
    found = _ONE.fullmatch(text)
    other = next((name for name in UNITS if found and unit_named(found[2], name)), form.dimension)
    if other == form.dimension:
        return None
    return Wrong(
        f"{quoted(text)} is {called(other)}, and {called(form.dimension)} belongs here",
        f"Write it like {examples(form.dimension)}",
    )


def unknown_unit(text: str, form: Form) -> Wrong | None:
    """Meet `5 nm` and `6 inchs`."""
    found = _ONE.fullmatch(text)
    if not found or unit_named(found[2], form.dimension):
        return None
    number, unit = found.groups()
    ways = readable(form, *(f"{number} {name}" for name in _meant(unit, form.dimension)))
    mend = write(form, *ways) if ways else f"Write it in {units_in_words(form.dimension)}"
    return Wrong(f"{quoted(text)} ends in {quoted(unit)}, which is not a unit of {form.dimension} here", mend)


def _meant(unit: str, dimension: str) -> list[str]:
    """Give the units that one wrong letter would turn into this, or failing those the likest spelling."""
    names = [known.name for known in UNITS[dimension] if 1 < len(known.name) == len(unit)]
    slips = [name for name in names if _letters_apart(name.lower(), unit.lower()) < 2]
    return slips or get_close_matches(unit.lower(), [*spellings(dimension)], n=1, cutoff=0.7)


def _letters_apart(one: str, other: str) -> int:
    return sum(a != b for a, b in zip(one, other, strict=True))
