"""Why an adapter is a piece of no chain, where its record gives a chain nothing to go by."""

from collections.abc import Mapping

from bezelbook.kinds.adapter.record import Adapter
from bezelbook.reasoning.circuits.aerial import KINDS as AERIAL_KINDS

# These are offered, or asked for, by other parts of a page than a chain; common practice, no source.
_ELSEWHERE: Mapping[str, str] = {
    "speaker lead": "it is offered at a speaker's place",
    "load resistor lead": "it is asked for by the test with and without a load",
    "chime speaker": "it is joined to the module that makes the chimes",
    "line converter": "it is joined by hand behind a T, for an amplifier that has no input for speaker leads",
}


def not_offered(adapter: Adapter) -> str:
    """Why no chain has it, in words; empty where one may."""
    if adapter.adapter_kind in AERIAL_KINDS:
        return ""
    if adapter.adapter_kind in _ELSEWHERE:
        return _ELSEWHERE[adapter.adapter_kind]
    if not adapter.ends:
        return "nobody has written its ends: which plug is on each, and which half"
    if not any(end.connector and end.side for end in adapter.ends.values()):
        return "none of its ends names a plug of the book and which half of it that is"
    if not adapter.circuits:
        return "nobody has written what becomes of any circuit in it"
    return ""
