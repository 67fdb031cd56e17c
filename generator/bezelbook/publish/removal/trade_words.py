"""The words of the trade, each explained in half a line where a page says it for the first time."""

import re
from collections.abc import Mapping, Sequence
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
    "deep": "a deep one, for a nut with the end of its bolt in the way",
    "extension": "a bar that makes a tool longer",
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
    "sail clip": FASTENERS["W-base clip"],
    "fir-tree clip": FASTENERS["fir-tree clip"],
    "push rivet": FASTENERS["push rivet"],
    "hex screw": "a screw with a six-sided head, turned with a tool that fits over it",
    "loom": "the bundle of wires",
    "pry": "a flat lever; one of plastic leaves no mark",
    "powered driver": "a screwdriver with a motor: it strips plastic in a moment",
    "boss": "the round post of plastic that a screw goes into",
    "blank": "a small cover where other cars have a switch",
    "hazard switch": "the switch of the warning flashers, with the red triangle",
    "outlet": "the socket for a 12 V plug, where a lighter used to be",
    "climate panel": "the knobs or buttons for heat and air",
    "door pull": "the handle inside that shuts the door",
    "in the pull": "in the handle inside that shuts the door",
    "parcel shelf": "the board behind the rear seats, under the rear glass",
    "boot": "the luggage space at the tail",
    "tree": FASTENERS["fir-tree clip"],
    "cross screw": "a screw with a cross in its head",
    "swivel": REACH["swivel"],
    "lip": "an edge that stands out",
    "peg": "a pin moulded into a piece, which sits in a hole",
    "tongue": "a flat pin moulded into a piece, which sits in a slot",
    "T20": "a bit in the shape of a six-pointed star, size 20",
    "six-lobe": "a bit in the shape of a six-pointed star",
}
# What the lines of a step are called, which is the same on every page.
LINES: Mapping[str, str] = {
    "start at": "this edge comes free first, so what is at the other end lets go last",
    "ease out": "put the tool in beside a clip and lift there, one clip after the other along the edge",
    "unplug": "press its latch and pull at the plug, never at the wires; let nothing hang by them",
    "into cup": "a numbered cup on a tray: what is undone in a step goes into the cup of its number",
    "thin": "so said by fewer than three jobs: promise nothing by it",
}
REACH_WORDS = tuple(REACH)
DIRECTION_WORDS: tuple[Direction, ...] = get_args(Direction)


class FirstUse:
    """Remembers what was explained already: words of the trade in an order, what a line or a question is on a page."""

    def __init__(self) -> None:
        self._page: set[str] = set()
        self._order: set[str] = set()

    def begin(self) -> None:
        """Begin another order, which somebody may read without the one before it."""
        self._order.clear()

    def once(self, words: str) -> bool:
        """Whether these words are new to the page; from now on they are not."""
        new = words not in self._page
        self._page.add(words)
        return new

    def said(self, texts: Sequence[str], *more: tuple[str, str]) -> list[tuple[str, str]]:
        """What the order has not explained of the words in these texts, and of `more` (word, meaning) pairs."""
        found = [pair for pair in PIECES.items() if _said_in(texts, pair[0])]
        new = {meaning: word for word, meaning in reversed((*more, *found)) if meaning not in self._order}
        self._order |= new.keys()
        lines = [(word, meaning) for word, meaning in LINES.items() if _said_in(texts, word) and self.once(meaning)]
        return [*((word, meaning) for meaning, word in reversed(new.items())), *lines]


def _said_in(texts: Sequence[str], word: str) -> bool:
    return any(_has(text, word) for text in texts)


def _has(text: str, word: str) -> bool:
    """Whether a text has a word, in one or in several."""
    return re.search(rf"\b{re.escape(word)}s?\b", text.replace("-", " ") + " " + text, re.IGNORECASE) is not None
