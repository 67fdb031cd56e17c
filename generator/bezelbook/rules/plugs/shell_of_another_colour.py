"""A plug was seen in a colour that its record has no word for, or that another note calls otherwise."""

from collections.abc import Iterator

from bezelbook.finding import Finding, PlaceScope, Quote, Rule
from bezelbook.kinds.connector.record import Connector
from bezelbook.kinds.note.record import Seen
from bezelbook.knowledge_base import folded
from bezelbook.reasoning.circuits.wire_colour import colours_said
from bezelbook.reasoning.evidence import unreplaced
from bezelbook.reasoning.losses import WRONG_HARNESS
from bezelbook.reasoning.proposal import Proposal

# Plastic without a dye, and what it fades to, has as many names as people who look at it (common practice, no source).
UNDYED = frozenset({"natural", "white", "ivory", "cream", "clear", "off white", "beige", "tan", "milky"})


def check(scope: PlaceScope) -> Iterator[Finding]:
    """One finding a plug: the first note of a colour that nobody else has for it."""
    notes = unreplaced(scope.book.notes_at(scope.vehicle, scope.place))
    seen = [note for note in notes if isinstance(note, Seen) and note.plug and note.plug_colour]
    first: dict[str, Seen] = {}
    done: set[str] = set()
    for note in seen:
        plug = scope.book.named("connector", note.plug or "")
        if not isinstance(plug, Connector) or plug.id in done:
            continue
        before = first.setdefault(plug.id, note)
        known = plug.shell_colours or (before.plug_colour or "",)
        if _hue(note.plug_colour or "") not in {_hue(word) for word in known}:
            done.add(plug.id)
            yield _finding(scope, plug, note, before)


def _hue(words: str) -> frozenset[str]:
    """What a colour comes down to: its colours, or its own words where no colour is known by them."""
    said = folded(words)
    return frozenset({"undyed"}) if said in UNDYED else colours_said(words) or frozenset({said})


def _finding(scope: PlaceScope, plug: Connector, note: Seen, before: Seen) -> Finding:
    colour = note.plug_colour or ""
    alike = [scope.book.connectors[one.connector] for one in plug.looks_like if one.connector in scope.book.connectors]
    others = [one.name for one in alike if _hue(colour) in {_hue(word) for word in one.shell_colours}]
    mistaken = Proposal("which thing", f"it was {' or '.join(others)}, which looks like it: compare the keys")
    hint = Proposal("one is wrong", f"one more word for one plastic: add {colour} to its colours")
    held = Quote(plug.id, f"{plug.name}: {', '.join(plug.shell_colours)}", ("shell_colours",), "connector")
    against = held if plug.shell_colours else Quote.of(scope.book, before, ("plug_colour",))
    return Finding(
        rule=RULE.name,
        key=f"{RULE.name}/{scope.vehicle}/{scope.place}/{plug.id}",
        weight="look first" if others else "tidy up",
        says=f"{plug.name} is {colour}, and was {' or '.join(plug.shell_colours) or before.plug_colour}",
        quotes=(Quote.of(scope.book, note, ("plug_colour",)), against),
        difference="the colour",
        proposals=(mistaken, hint) if others else (hint,),
        loss=WRONG_HARNESS,
        question="Is it the same plug?",
        answers=("the same: add the word", "another plug", "look at its key next car"),
        vehicle=scope.vehicle,
        place=scope.place,
    )


RULE = Rule("shell-of-another-colour", "A plug of another colour", "conflict", __doc__ or "", PlaceScope, check)
