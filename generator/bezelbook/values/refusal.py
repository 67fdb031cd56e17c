"""Why a text is not a quantity of the form asked for, and how to write what was meant."""

import re
from difflib import get_close_matches

from bezelbook.values.complaint import BareNumber, Wrong
from bezelbook.values.grammar import PLUS_MINUS, SIGN, WORD, Form, reads
from bezelbook.values.number import NUMERIC
from bezelbook.values.number_faults import (
    bracketed,
    fraction_fault,
    letter_for_point,
    over_the_top,
    spread_out,
    thousands_comma,
    too_fine,
    two_sizes,
)
from bezelbook.values.suggestion import called, examples, quoted, readable, with_units, write
from bezelbook.values.unit_faults import (
    doubtful_unit,
    fahrenheit,
    no_number,
    number_after_unit,
    unit_first,
    unit_of_another,
    unit_twice,
    unknown_unit,
)

_MOST_WORDS = 12
_AROUND = ",;:()~≈=Øø⌀"


def refusal(text: str, form: Form) -> Wrong:
    """Say what is wrong with a text that the form does not take; it takes every rewording proposed."""
    plain = " ".join(text.split())
    for fault in _FAULTS:
        wrong = fault(plain, form)
        if wrong:
            return wrong
    return Wrong(f"{quoted(plain)} is not {called(form.dimension)}", write(form))


def _blank(text: str, form: Form) -> Wrong | None:
    if text:
        return None
    return Wrong(
        f"there is no text where {called(form.dimension)} belongs",
        f"Write it like {examples(form.dimension)}, or leave the field out",
    )


def _untidy(text: str, form: Form) -> Wrong | None:
    """Meet what only odd spaces, brackets or a comma before a word keep from being read."""
    tidy = re.sub(r" ?([/⁄]) ?", r"\1", text)
    tidy = re.sub(r"(?<=\d)\. ?(?=[^\d ])| ?\+ ?(?=\d)", " ", tidy).strip()
    tidy = re.sub(r"[ ,(]+(caliper|printed)\)?$", r" \1", tidy, flags=re.IGNORECASE)
    return Wrong(f"{quoted(text)} has odd marks or spaces", f"Write {tidy}") if reads(tidy, form) else None


def _unwanted_sign(text: str, form: Form) -> Wrong | None:
    found = re.match(SIGN, text)
    if form.signed or not found:
        return None
    what = f"has a sign, and {called(form.dimension)} here never goes below nothing"
    return _without(text, text[found.end() :], form, what)


def _unwanted_word(text: str, form: Form) -> Wrong | None:
    found = re.search(f"{WORD}$", text)
    if form.sized or not found:
        return None
    what = "says how it was measured, which this field does not take"
    return _without(text, text[: found.start()], form, what)


def _unwanted_give(text: str, form: Form) -> Wrong | None:
    if form.plus_minus or not _halves(text)[1]:
        return None
    return _without(text, _without_give(text), form, "has a ±, which this field does not take")


def _without(text: str, kept: str, form: Form, what: str) -> Wrong:
    return Wrong(f"{quoted(text)} {what}", write(form, *(readable(form, kept) or with_units(form, kept))))


def _bare(text: str, form: Form) -> Wrong | None:
    """Meet a number, with or without its ± and the word after it, that lacks a unit."""
    found = re.fullmatch(f"((?:{SIGN})?{NUMERIC}+?(?:{PLUS_MINUS}{NUMERIC}+?)?)({WORD})?", text)
    ways = [f"{way}{found[2] or ''}" for way in with_units(form, found[1])] if found else []
    readings = readable(form, *ways)
    return BareNumber(text, f"Write {' or '.join(readings)}") if readings else None


def _empty_give(text: str, form: Form) -> Wrong | None:
    _, give, spread = _halves(text)
    if not give or re.search("[1-9½¼¾⅛⅜⅝⅞]", spread):
        return None
    return _without(text, _without_give(text), form, "has a ± of nothing")


def _bare_give(text: str, form: Form) -> Wrong | None:
    """Meet `6.5 in ± 1`, where the 1 may be an inch or a millimetre."""
    main, give, spread = _halves(text)
    if not give or not reads(main, form) or not re.fullmatch(f"{NUMERIC}+", spread):
        return None
    ways = with_units(form, f"{main} ± {spread}")
    return Wrong(f"{quoted(text)} has a ± without a unit", write(form, *ways))


def _either_half(text: str, form: Form) -> Wrong | None:
    """Look for the fault on the side of the ± that has one."""
    main, give, spread = _halves(text)
    if not give:
        return None
    if "±" in spread:
        kept = spread.partition("±")[0].strip()
        return Wrong(f"{quoted(text)} has more than one ±", write(form, f"{main} ± {kept}", main))
    half = Form(form.dimension, form.signed, plus_minus=False)
    sides = (side for side in (spread, main) if not reads(side, half) and re.search("[a-z]", side))
    return next((refusal(side, half) for side in sides), None)


def _halves(text: str) -> tuple[str, str, str]:
    main, give, spread = re.sub(PLUS_MINUS, "±", text).partition("±")
    return main.strip(), give, spread.strip()


def _without_give(text: str) -> str:
    """Leave the ± out, but keep a unit that only the ± carried."""
    main, _, spread = _halves(text)
    unit = re.sub(f"^{NUMERIC}*", "", spread)
    return main if re.search(r"[^\W\d]|[\"'″°]", main) else f"{main} {unit}".strip()


def _misspelt_word(text: str, form: Form) -> Wrong | None:
    """Meet `165 mm calliper`."""
    start, _, last = text.rpartition(" ")
    close = get_close_matches(last.lower(), ["caliper", "printed"], cutoff=0.75) if form.sized else []
    found = readable(form, *(f"{start} {word}" for word in close))
    if not found:
        return None
    return Wrong(f"{quoted(text)} ends in a word other than caliper or printed", write(form, *found))


def _says_more(text: str, form: Form) -> Wrong | None:
    """Meet `about 165 mm` and `165 mm or so`, by the longest run of words that can be read."""
    words = text.split(" ")[:_MOST_WORDS]
    runs = [words[start:end] for start in range(len(words)) for end in range(start + 1, len(words) + 1)]
    found = readable(form, *(" ".join(run).strip(_AROUND) for run in sorted(runs, key=len, reverse=True)))
    if not found:
        return None
    longest = [way for way in found if way.count(" ") == found[0].count(" ")]
    return Wrong(f"{quoted(text)} says more than {called(form.dimension)}", write(form, *longest[:2]))


# The first that answers is believed, so what is particular comes before what is general.
_FAULTS = (
    _blank,
    _untidy,
    _unwanted_sign,
    _unwanted_word,
    _unwanted_give,
    _bare,
    _empty_give,
    _bare_give,
    _either_half,
    _misspelt_word,
    two_sizes,
    thousands_comma,
    spread_out,
    bracketed,
    fraction_fault,
    letter_for_point,
    over_the_top,
    too_fine,
    no_number,
    unit_twice,
    number_after_unit,
    unit_first,
    doubtful_unit,
    fahrenheit,
    unit_of_another,
    _says_more,
    unknown_unit,
)
