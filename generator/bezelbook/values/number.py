"""How a shop writes a number: decimals with point or comma, thousands apart, and fractions of an inch."""

import re
from fractions import Fraction

SPACE = "[ \u00a0\u2009\u202f]"
GAP = f"{SPACE}{{0,9}}"
WHOLE = "[0-9]{1,7}"
_DASH = "[-\u2010\u2011\u2013]"
_POINT = r"\."
_SLASH = "[/\u2044]"
VULGAR = {
    "½": Fraction(1, 2),
    "¼": Fraction(1, 4),
    "¾": Fraction(3, 4),
    "⅛": Fraction(1, 8),
    "⅜": Fraction(3, 8),
    "⅝": Fraction(5, 8),
    "⅞": Fraction(7, 8),
}
_PROPER = {
    2: "1",
    4: "[1-3]",
    8: "[1-7]",
    16: "(?:[1-9]|1[0-5])",
    32: "(?:[1-9]|[12][0-9]|3[01])",
    64: "(?:[1-9]|[1-5][0-9]|6[0-3])",
}
# A number is nothing when no digit above 0 comes before its unit.
NOT_NOTHING = f"(?=[-0 .,\u00a0\u2009\u202f\u2010\u2011\u2013]*[1-9{''.join(VULGAR)}])"

NUMERIC = f"[-0-9., \u00a0\u2009\u202f/\u2044\u2010\u2011\u2013{''.join(VULGAR)}]"

_FRACTION = re.compile(rf"(?:(?P<whole>[0-9]+)(?:{SPACE}+|{_DASH}))?(?P<over>[0-9]+){_SLASH}(?P<under>[0-9]+)")
_SIGNED_PART = re.compile(rf"(?P<whole>[0-9]*)(?:{SPACE}*|{_DASH})(?P<sign>[{''.join(VULGAR)}])")


def number_pattern(decimals: int, denominators: tuple[int, ...]) -> str:
    """Match a number of at most so many decimals, or a fraction in one of these parts."""
    forms = [_plain(decimals)]
    if denominators:
        forms.append(fraction_pattern(denominators))
    return "(?:" + "|".join(forms) + ")"


def _plain(decimals: int) -> str:
    spaced = _grouped(SPACE)
    if not decimals:
        return f"{spaced}|{WHOLE}"
    tail = f"[0-9]{{1,{decimals}}}"
    forms = [
        rf"(?:{spaced}|{WHOLE})(?:\.{tail})?",
        rf"\.{tail}|,{tail}",
        f"{spaced},{tail}",
        f"{WHOLE},{_comma_tail(decimals)}",
        f"{_grouped(_POINT)},{tail}",
        f"{_grouped(',')}{_POINT}{tail}",
    ]
    if decimals >= 3:
        forms.append("0,[0-9]{3}")
    return "|".join(forms)


def _comma_tail(decimals: int) -> str:
    """Leave three digits out: `1,000` is a thousand to one person and one to another."""
    few = f"[0-9]{{1,{min(decimals, 2)}}}"
    return f"(?:{few}|[0-9]{{4}})" if decimals == 4 else few


def _grouped(mark: str) -> str:
    return f"(?:[0-9]{{1,3}}{mark}[0-9]{{3}}|[0-9]{mark}[0-9]{{3}}{mark}[0-9]{{3}})"


def fraction_pattern(denominators: tuple[int, ...], whole: str = WHOLE) -> str:
    """Match a fraction in one of these parts, alone or after a whole number."""
    written = "|".join(f"{_PROPER[under]}{_SLASH}{under}" for under in denominators)
    signs = "".join(sign for sign, value in VULGAR.items() if value.denominator in denominators)
    before_sign = f"(?:{whole}(?:{GAP}|{_DASH}))?"
    return f"(?:{whole}(?:{SPACE}{{1,9}}|{_DASH}))?(?:{written})|{before_sign}[{signs}]"


def read_number(text: str) -> Fraction:
    """Give the exact value of a number that `number_pattern` matched."""
    found = _FRACTION.fullmatch(text)
    if found:
        return int(found["whole"] or 0) + Fraction(int(found["over"]), int(found["under"]))
    found = _SIGNED_PART.fullmatch(text)
    if found:
        return int(found["whole"] or 0) + VULGAR[found["sign"]]
    return _decimal(re.sub(SPACE, "", text))


def _decimal(text: str) -> Fraction:
    """Take the last point or comma for the decimal mark, and any other for the thousands."""
    whole, _, tail = text.replace(",", ".").rpartition(".") if re.search("[.,]", text) else (text, "", "")
    digits = whole.replace(".", "") + tail
    return Fraction(int(digits), 10 ** len(tail))
