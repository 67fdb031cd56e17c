"""The words of the trade, each explained in half a line where a page says it for the first time."""

import re
from collections.abc import Iterable, Mapping
from typing import get_args

from bezelbook.kinds.note.removal import Direction
from bezelbook.kinds.supply.fastener import FastenerKind

FASTENERS: Mapping[FastenerKind, str] = {
    "machine screw": "a screw with a fine thread that goes into a nut or a threaded hole",
    "self-tapping screw": "a pointed or coarse screw that cuts its own thread",
    "thread-forming screw": "a screw that presses its own thread into plastic: start it by hand, in its old thread",
    "bolt": "a thick screw, turned with a spanner or a socket",
    "nut": "the threaded ring that a bolt or a stud goes through",
    "expanding nut": "a plastic nut that spreads in its hole when the screw goes in",
    "clip nut": "a bent strip of sheet metal with a thread, pushed over an edge; it falls off easily",
    "rivet nut": "a thread fixed in sheet metal like a rivet",
    "fir-tree clip": "a plastic pin with rows of barbs, pulled straight out of its hole",
    "W-base clip": "a plastic clip that sits in a slot of the panel and snaps into a hole behind it",
    "metal claw": "a bent metal spring on the back of a panel; it may stay behind in the dash",
    "push rivet": "a plastic pin in two parts: the middle moves first, then the whole comes out",
    "quarter-turn": "a fastener that lets go after a quarter of a turn",
    "ball stud": "a ball on a stalk, pulled straight out of a rubber or plastic socket",
    "slide stud": "a headed pin in a keyhole slot: slide the piece, then lift it",
    "hook tab": "a hook moulded into the piece, which has to come out of its slot last",
    "tethered pillar clip": "a clip on a strap; on many cars it goes in once only",
}
DIRECTIONS: Mapping[Direction, str] = {
    "toward you": "straight out, at a right angle to the piece",
    "up": "to the roof",
    "down": "to the floor",
    "left": "to the left as you sit in the car facing forward",
    "right": "to the right as you sit in the car facing forward",
    "forward": "to the nose of the car",
    "rearward": "to the tail of the car",
    "inward": "to the middle of the car",
    "outward": "away from the middle of the car",
}
REACH: Mapping[str, str] = {
    "stubby": "a short one, for where there is no room behind it",
    "long": "a long one, for a screw deep in a hole",
    "deep": "a deep socket, for a nut with the end of its bolt in the way",
    "extension": "a bar between ratchet and socket",
    "swivel": "a joint, so that the socket may stand at an angle",
    "magnet": "a magnet, so that the screw does not fall into the dash",
    "right angle": "a head that turns round a corner",
}
# What pieces are called, and what is said of them.
PIECES: Mapping[str, str] = {
    "bezel": "the frame that shows round a radio or a screen",
    "surround": "the frame that shows round something",
    "finisher": "a cover that is there for looks",
    "fascia": "the front of the dash",
    "console": "what stands between the seats, or hangs from the roof",
    "lining": "the panel that hides the metal: of a door, a boot, a roof",
    "pillar": "one of the posts that carry the roof",
    "vent": "where the air comes out",
    "strip": "a long narrow cover",
    "pod": "a small housing that stands up from the dash",
    "column": "the post of the steering wheel",
    "shifter": "the gear lever",
    "sill": "the step under a door",
    "hooks": "hooks that are part of the piece: they hold one edge while the clips let go of the other",
    "claw": FASTENERS["metal claw"],
    "sail clip": "a flat plastic clip on the back of a piece that snaps into a slot behind it",
    "fir-tree clip": FASTENERS["fir-tree clip"],
    "push rivet": FASTENERS["push rivet"],
    "hex screw": "a screw with a six-sided head, turned with a socket",
    "loom": "the bundle of wires",
    "pry": "a flat lever; one of plastic leaves no mark",
    "T20": "a bit in the shape of a six-pointed star, size 20",
    "six-lobe": "a bit in the shape of a six-pointed star",
}
REACH_WORDS = tuple(REACH)
DIRECTION_WORDS: tuple[Direction, ...] = get_args(Direction)


class FirstUse:
    """Remembers which words of the trade a page has explained already."""

    def __init__(self) -> None:
        self._told: set[str] = set()

    def said(self, texts: Iterable[str], *more: tuple[str, str]) -> list[tuple[str, str]]:
        """The words of the trade in these texts, and `more` (word, meaning) pairs, that the page has not explained."""
        found = [(word, meaning) for text in texts for word, meaning in PIECES.items() if _has(text, word)]
        new = {meaning: word for word, meaning in reversed((*more, *found)) if meaning not in self._told}
        self._told |= new.keys()
        return [(word, meaning) for meaning, word in reversed(new.items())]


def _has(text: str, word: str) -> bool:
    """Whether a text has a word, in one or in several."""
    return re.search(rf"\b{re.escape(word)}s?\b", text.replace("-", " ") + " " + text, re.IGNORECASE) is not None
