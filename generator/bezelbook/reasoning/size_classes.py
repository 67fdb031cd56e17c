"""The sizes that speakers are sold as, and how they are said; none of them is a size that anything measures."""

import re
from collections.abc import Mapping

# Number words as shops write them, before anything else is read.
NUMBER_WORDS: tuple[tuple[str, str], ...] = (
    (r"\bsix (?:and )?(?:a )?half\b", "6.5"),
    (r"\bsix (?:and )?(?:a )?(?:three quarters?|3/4)\b", "6.75"),
    (r"\bfive (?:and )?(?:a )?quarter\b", "5.25"),
    (r"\bthree (?:and )?(?:a )?half\b", "3.5"),
    (r"\btwo (?:and )?(?:a )?(?:three quarters?|3/4)\b", "2.75"),
    (r"\bfour (?:by|x) six\b", "4x6"),
    (r"\bfive (?:by|x) seven\b", "5x7"),
    (r"\bsix (?:by|x) eight\b", "6x8"),
    (r"\bsix (?:by|x) nine\b", "6x9"),
    (r"\b(4|5|6) ?(?:by|x) ?(6|7|8|9)\b", "$1x$2"),
    (r"\bfour(?= (?:inch|in)\b)", "4"),
    (r"\beight(?= (?:inch|in)\b)", "8"),
    (r"\bten(?= (?:inch|in)\b)", "10"),
    (r"\btwelve(?= (?:inch|in)\b)", "12"),
)
INCH = '(?: ?(?:inches|inch|in|"))?'
# Each class by the name it is told by, and the pattern of everything that means it; common practice, no source.
SIZE_CLASSES: Mapping[str, str] = {
    "2 3/4 in": f"(?:2[.,]75|2 3/4|2 ?\u00be){INCH}",
    "3 1/2 in": f"(?:3[.,]5|3 1/2|3 ?\u00bd){INCH}",
    "4 in": f"4{INCH}|100(?: ?mm)?",
    "4 x 6 in": f"4x6{INCH}",
    "5 1/4 in": f"(?:5[.,]25|5 1/4|5 ?\u00bc){INCH}|130(?: ?mm)?",
    "5 x 7 in": f"(?:5x7|6x8){INCH}",
    "6 1/2 in": f"(?:6[.,]5|6 1/2|6 ?\u00bd){INCH}|165(?: ?mm)?",
    "6 3/4 in": f"(?:6[.,]75|6 3/4|6 ?\u00be){INCH}",
    "6 x 9 in": f"6x9{INCH}",
    "8 in": f"8{INCH}|200(?: ?mm)?",
    "10 in": f"10{INCH}|250(?: ?mm)?",
    "12 in": f"12{INCH}|300(?: ?mm)?",
}


def size_class(words: str) -> str | None:
    """The class that these words mean, and nothing but it."""
    return next((name for name, said in SIZE_CLASSES.items() if re.fullmatch(said, words)), None)


def class_of_nominal(nominal: str) -> str | None:
    """The class of what a speaker's record says that it is sold as; None for any other."""
    return size_class(re.sub(r"(\d) ?x ?(\d)", r"\1x\2", nominal.lower().strip()))
