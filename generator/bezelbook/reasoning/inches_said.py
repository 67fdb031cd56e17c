"""A thing named by its inches, such as a nine inch screen, under every way to write and to type those inches."""

import re
from collections.abc import Iterator

# By this a screen is sold, whatever it measures.
NUMBERS = {
    "six": "6",
    "seven": "7",
    "eight": "8",
    "nine": "9",
    "ten": "10",
    "eleven": "11",
    "twelve": "12",
    "thirteen": "13",
    "fourteen": "14",
    "fifteen": "15",
}
INCHES = re.compile(rf'(?<!\S)({"|".join(NUMBERS)}|\d{{1,2}}(?:[.,]\d)?) ?(?:inches|inch|in|")(?!\S)')
WAYS = ("{} inch", "{} in", "{}inch", "{}in", '{}"')


def other_inches(words: tuple[str, ...]) -> Iterator[tuple[str, ...]]:
    """The same name with its inches written in each other way; none for a name that is nothing but a size."""
    name = " ".join(words)
    found = INCHES.search(name)
    if found is None or found[0] == name:
        return
    number = NUMBERS.get(found[1], found[1])
    spelled = [f"{word} inch" for word, digits in NUMBERS.items() if digits == number]
    for inches in (*(way.format(number) for way in WAYS), *spelled):
        if inches != found[0]:
            yield tuple(f"{name[: found.start()]}{inches}{name[found.end() :]}".split())
