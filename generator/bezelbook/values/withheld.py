"""Words that no output may carry: plates, phones, chassis numbers, people, tightening figures, work on restraints."""

import re
from collections.abc import Iterator

# A name without a title, and a plate that looks like a shop's own word, cannot be told from other words.
_VIN = r"\b(?=[A-HJ-NPR-Z0-9]*[A-Z])(?=(?:[A-HJ-NPR-Z]*[0-9]){4})[A-HJ-NPR-Z0-9]{17}\b"
_DATE = r"(?![0-9]{4}-[0-9]{2}-[0-9]{2}\b)"
# A ring is also what a speaker sits on.
_RING = r"ring (?:me|him|her|us|them|back|up|the [a-z]+)"
_PHONE = (
    r"(?<![\w.+])\+[0-9][0-9 ().-]{6,16}[0-9]\b"
    rf"|(?<![\w.,/-]){_DATE}0[0-9]{{1,4}}[ /-][0-9][0-9 -]{{4,10}}[0-9]\b(?! ?(?:mm|cm|in|V|ohm)\b)"
    r"|(?<![\w.,-])\(?[0-9]{3}\)?[-. ]?[0-9]{3}[-.][0-9]{4}\b"
    rf"|(?i:\b(?:phone|tel|telephone|mobile|cell|call|text|{_RING})\b)[^0-9\n]{{0,20}}"
    rf"\+?{_DATE}[0-9](?:[0-9 ().-]{{4,14}})[0-9]\b"
    r"|(?i:\bring )[0-9]{6,}\b"
)
_PLATE = (
    r"\b[A-Z]{2}[0-9]{2} ?[A-Z]{3}\b"
    r"|\b[A-Z]{2}-[0-9]{3}-[A-Z]{2}\b"
    r"|\b[0-9][A-Z]{3}[0-9]{3}\b"
    r"|\b[A-Z]{1,3}-[A-Z]{1,2} ?[0-9]{3,4}\b"
    r"|\b[A-Z]{3}-[0-9]{4}\b"
    r"|(?i:\b(?:plate|plates|number plate|licen[cs]e|registration|reg)\b)[ :.#]{1,3}(?:is |no\.? )?"
    r"(?=[A-Z0-9 -]{0,8}[0-9])(?=[A-Z0-9 -]{0,8}[A-Z])[A-Z0-9]{2,8}(?:[ -][A-Z0-9]{1,4})?\b"
)
_PERSON = (
    r"[\w.+-]+@[\w-]+\.[\w.-]+\w"
    r"|\b(?:Mr|Mrs|Ms|Miss|Dr|Herr|Frau|Mme|Señora?)\.? [A-Z][\w'-]+(?: [A-Z][\w'-]+)?"
    r"|(?i:\b(?:customer|owner)(?:'s name)? (?:is|was|called|named)) (?-i:[A-Z][a-z]+(?: [A-Z][a-z]+)?)"
)
_NUMBER = r"[0-9]+(?:[.,][0-9]+)?"
_TORQUE = (
    rf"{_NUMBER} ?(?:N ?[·.-]? ?m|NM|newton[ -]?met(?:er|re)s?)\b"
    rf"|(?i:{_NUMBER} ?(?:ft|foot|in|inch)[ .·-]?(?:lbf?|lbs|pounds?)\b)"
    rf"|(?i:{_NUMBER} ?(?:lbf?|lbs|pounds?)[ .·-]?(?:ft|foot|feet|in)\b)"
    rf"|(?i:{_NUMBER} ?kgf?[ .·-]?c?m\b)"
    rf"|(?i:\b(?:torque|torqued|tighten|tightened)\b[^.;\n0-9]{{0,20}}\bto {_NUMBER})"
)
_BAG = r"(?:restraints?|air ?bags?|SRS|pre-?tensioners?|seat ?belts?|clock ?spring)"
_WORK = (
    r"(?:disconnect|unplug|bridge|jump|short|reset|clear|unbolt|unscrew|unclip|remove|take (?:out|off)"
    r"|pull (?:out|off)?"
    r"|fit a resistor|plug a resistor)(?:ed|d|ing|s)?"
)
_WHILE = rf"(?:{_NUMBER}|a few|ten|five|three|two|a) ?(?:s|min|sec|minutes?|seconds?)"
_RESTRAINT = (
    rf"(?i:\b{_WORK}\b[^.;\n]{{0,40}}\b{_BAG}\b[^.;\n]*)"
    rf"|(?i:\b{_BAG}\b[^.;\n]{{0,60}}\b(?:wait|after) {_WHILE}\b[^.;\n]*)"
    rf"|(?i:\bwait\b[^.;\n]{{0,40}}\b{_BAG}\b[^.;\n]*)"
)
_SORTS = (
    ("a chassis number", re.compile(_VIN)),
    ("a person", re.compile(_PERSON)),
    ("a phone number", re.compile(_PHONE)),
    ("a plate", re.compile(_PLATE)),
    ("a tightening figure", re.compile(_TORQUE)),
    ("work on a restraint, for which the vehicle's service information rules", re.compile(_RESTRAINT)),
)


def withheld(text: str) -> str:
    """The text with whatever no output may carry replaced by `withheld:` and what it was; else the very same text."""
    for what, pattern in _SORTS:
        text = pattern.sub(f"withheld: {what}", text)
    return text


def found_in(text: str) -> Iterator[str]:
    """What would be withheld of a text, each sort once, in a fixed order."""
    for what, pattern in _SORTS:
        if pattern.search(text):
            yield what
