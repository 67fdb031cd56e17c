"""What can be wrong with the number in a quantity, and what each slip most likely meant."""

import re
from fractions import Fraction

from bezelbook.values.complaint import Wrong
from bezelbook.values.grammar import Form
from bezelbook.values.number import read_number
from bezelbook.values.suggestion import decimal, mixed, quoted, readable, with_units, write
from bezelbook.values.unit import DENOMINATORS, MOST_DECIMALS, PAIRS, UNITS, unit_named, unit_pattern

_SIMPLE = r"[0-9]{1,7}(?:[.,][0-9]{1,4})?|(?:[0-9]{1,7}[ -])?[0-9]{1,4}/[1-9][0-9]{0,3}"
_RANGE = re.compile(rf"({_SIMPLE}) ?([^\d\s.,–-]*) ?(?:-|–|—|to|\.\.\.?|…) ?({_SIMPLE}) ?(\D*)")
_TIMES = re.compile(r" ?(?:x|×|\*|by) ?", re.IGNORECASE)
_FRACTION = re.compile(r"(?:(?P<whole>[0-9]+)[ -])?(?P<over>[0-9]+)[/⁄](?P<under>[0-9]+)(?![0-9])")


def two_sizes(text: str, form: Form) -> Wrong | None:
    """Meet `182 x 53 mm`."""
    pieces = _TIMES.split(text)
    if len(pieces) < 2 or not all(re.match(r"[0-9.]", piece) for piece in pieces):
        return None
    unit = re.sub(r"^[\d.,/ -]*", "", pieces[-1])
    sizes = [readable(form, piece, f"{piece} {unit}") for piece in pieces]
    each = ": " + ", then ".join(size[0] for size in sizes) if all(sizes) else ""
    count = {2: "two", 3: "three"}.get(len(pieces), str(len(pieces)))
    return Wrong(f"{quoted(text)} is {count} sizes", f"Write each size in its own field{each}")


def thousands_comma(text: str, form: Form) -> Wrong | None:
    """Meet `1,000 mm`, a thousand to one person and one to another."""
    if not re.search(r"(?<![\d.,])\d{1,7}(?:,\d{3})+(?![\d.,])", text):
        return None
    readings = [text.replace(",", "")] + [text.replace(",", ".")] * (text.count(",") == 1)
    named = [reading for bare in readings for reading in with_units(form, bare)]
    return Wrong(f"{quoted(text)} has a comma that can be read two ways", write(form, *readings, *named))


def spread_out(text: str, form: Form) -> Wrong | None:
    """Meet the range `2-3 mm`."""
    found = _RANGE.fullmatch(text)
    if not found:
        return None
    ends = found[1], found[3]
    low, high = sorted(read_number(end.replace("-", " ")) for end in ends)
    units = [found[4]] if found[4] else [unit.name for unit in UNITS[form.dimension][:2]]
    middle = f"{decimal((low + high) / 2)} ± {decimal((high - low) / 2)}"
    texts = [f"{middle} {unit}" for unit in units]
    return Wrong(
        f"{quoted(text)} is a range",
        write(form, *(readable(form, *texts) or [f"{end} {unit}" for end in ends for unit in units])),
    )


def bracketed(text: str, form: Form) -> Wrong | None:
    """Meet `50(1) mm`, where brackets stand for a ±."""
    found = re.fullmatch(r"([\d.,]+) ?\(([\d.,]+)\) ?(\D*)", text)
    if not found:
        return None
    number, give, unit = found.groups()
    ways = f"{number} ± {give} {unit}", f"{number} {unit}"
    return Wrong(
        f"{quoted(text)} has a number in brackets",
        write(form, *(readable(form, *ways) or with_units(form, number))),
    )


def fraction_fault(text: str, form: Form) -> Wrong | None:
    """Meet two fractions in a row, a fraction above one, and a fraction that no rule is marked in."""
    found = list(_FRACTION.finditer(text))
    if not found:
        return None
    unit = text[found[-1].end() :]
    if len(found) > 1:
        ways = [f"{part[0]}{unit}" for part in found]
        return Wrong(f"{quoted(text)} has two fractions", write(form, *ways))
    if text[: found[0].start()]:
        return None
    return _one_fraction(text, found[0], unit, form)


def _one_fraction(text: str, found: re.Match[str], unit: str, form: Form) -> Wrong | None:
    over, under = int(found["over"]), int(found["under"])
    if not under:
        return Wrong(f"{quoted(text)} is divided by nothing", write(form))
    value = int(found["whole"] or 0) + Fraction(over, under)
    if over >= under:
        ways = [mixed(value) + unit, *_run_on(found, unit)]
        return Wrong(f"{quoted(text)} has a fraction above one", write(form, *ways))
    return _odd_part(text, value, under, unit, form)


def _odd_part(text: str, value: Fraction, under: int, unit: str, form: Form) -> Wrong | None:
    """Meet a third of an inch, and a 64th of an hour."""
    known = unit_named(unit.strip(), form.dimension)
    if under in (known.denominators if known else DENOMINATORS):
        return None
    nearest = mixed(Fraction(round(value * 64), 64)) + unit
    marked = "too fine to keep" if under in DENOMINATORS else "other than halves, quarters and so on to 64ths"
    return Wrong(f"{quoted(text)} has a fraction {marked}", write(form, *_rounded(value, unit, form), nearest))


def _run_on(found: re.Match[str], unit: str) -> list[str]:
    """Give the ways to part `23/8` into a whole and a fraction."""
    over, under = found["over"], found["under"]
    ways = [] if found["whole"] else [(over[:at], over[at:]) for at in range(1, len(over))]
    return [f"{whole} {rest}/{under}{unit}" for whole, rest in ways]


def letter_for_point(text: str, form: Form) -> Wrong | None:
    """Meet `4R7`, as printed on a resistor."""
    found = re.fullmatch(r"(\d+)([RrKk])(\d*)", text)
    if form.dimension != "resistance" or not found:
        return None
    number = f"{found[1]}.{found[3]}" if found[3] else found[1]
    unit = "ohm" if found[2] in "Rr" else "kohm"
    return Wrong(f"{quoted(text)} has a letter where its point belongs", write(form, f"{number} {unit}"))


def over_the_top(text: str, form: Form) -> Wrong | None:
    """Meet `1:45`, `1 h 75` and `1 ft 14 in`."""
    pair = PAIRS.get(form.dimension)
    if not pair:
        return None
    small = f"(?:{unit_pattern((pair.small,))})?"
    found = re.fullmatch(rf"(\d{{1,6}}) ?(:|{unit_pattern((pair.big,))}) ?(\d{{1,6}}) ?{small}", text)
    if not found:
        return None
    if found[2] != ":" and int(found[3]) < pair.below:
        return None
    total = int(found[1]) * pair.below + int(found[3])
    big, rest = divmod(total, pair.below)
    what = "has a colon in it" if found[2] == ":" else f"counts past {pair.below - 1} {pair.small.name}"
    return Wrong(f"{quoted(text)} {what}", write(form, f"{big} {pair.big.name} {rest} {pair.small.name}"))


def too_fine(text: str, form: Form) -> Wrong | None:
    """Meet more decimals, or more digits, than can be kept exactly."""
    found = re.fullmatch(r"(\d*)(?:[.,](\d+))? ?(\D*)", text)
    if not found or not (found[1] or found[2]):
        return None
    if len(found[1]) > 7:
        return Wrong(f"{quoted(text)} is too large a number", write(form))
    value = Fraction(f"{found[1] or 0}.{found[2] or 0}")
    ways = _kept_exactly(value, found[3], form) or _rounded(value, f" {found[3]}", form)
    if not found[3]:
        ways = readable(form, *with_units(form, decimal(value, MOST_DECIMALS)))
    return Wrong(f"{quoted(text)} has more decimals than can be kept", write(form, *ways)) if ways else None


def _rounded(value: Fraction, unit: str, form: Form) -> list[str]:
    """Give the value to as many decimals as can be kept."""
    return readable(form, *(decimal(value, places) + unit for places in range(MOST_DECIMALS, -1, -1)))[:1]


def _kept_exactly(value: Fraction, unit: str, form: Form) -> list[str]:
    """Give the value in the first unit in which it can be kept exactly, its own before all others."""
    typed = unit_named(unit, form.dimension)
    if not typed:
        return []
    amounts = [(value * typed.size / other.size, other.name) for other in (typed, *UNITS[form.dimension])]
    exact = [f"{decimal(amount)} {name}" for amount, name in amounts if Fraction(decimal(amount)) == amount]
    return readable(form, *exact)[:1]
