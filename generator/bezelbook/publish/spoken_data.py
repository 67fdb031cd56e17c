"""What the browser is told of how questions about speakers are read."""

from typing import Any

from bezelbook.publish.patterns import browser_pattern, browser_patterns
from bezelbook.reasoning.size_classes import NUMBER_WORDS, SIZE_CLASSES
from bezelbook.reasoning.spoken.fitting import FITTING_WORDS, LEAST_RING, NEAR, RING
from bezelbook.reasoning.spoken.question import ENOUGH
from bezelbook.reasoning.spoken.shop_words import (
    NEEDLESS_WORDS,
    PLACE_WORDS,
    SHOP_WORDS,
    SIDES,
    SPEAKER_WORDS,
    TELLING_WORDS,
)
from bezelbook.reasoning.spoken.sizes import DEEPEST, LABEL_WORDS, LABELS, SAID, USUAL_MM


def spoken_data() -> dict[str, Any]:
    """The tables of shop words and patterns, as plain data."""
    return {
        "shopWords": browser_patterns(SHOP_WORDS),
        "placeWords": list(PLACE_WORDS),
        "tellingWords": list(TELLING_WORDS),
        "needlessWords": list(NEEDLESS_WORDS),
        "sides": list(SIDES),
        "speakerWords": {word: list(kinds) for word, kinds in SPEAKER_WORDS.items()},
        "numberWords": browser_patterns(NUMBER_WORDS),
        "classes": [[name, browser_pattern(said)] for name, said in SIZE_CLASSES.items()],
        "labels": dict(LABELS),
        "labelWords": browser_patterns(LABEL_WORDS),
        "said": browser_pattern(SAID.pattern),
        "usual": {of: list(limits) for of, limits in USUAL_MM.items()},
        "deepest": DEEPEST,
        "enough": list(ENOUGH),
        "fittingWords": browser_patterns(FITTING_WORDS),
        "ring": browser_pattern(RING.pattern),
        "leastRing": LEAST_RING,
        "near": NEAR,
    }
