"""Whether the shop saw this very speaker go in with no more room in front: it plays there as it would here."""

from collections.abc import Sequence

from tests.simulator.box_world import UNCUT, Platform, World
from tests.simulator.doors.world import Foam, Mounting, Ring
from tests.simulator.notes import Content, Note, is_strong


def least_front(world: World, notes: Sequence[Note], platform: Platform, place: str, speaker: str) -> int | None:
    """The least room in front in which a strong note truly saw it go in, in nm; None where none did."""
    fronts = [
        _front(world, platform, place, note.in_full)
        for note in notes
        if is_strong(note.in_full) and went_in(note.in_full, platform, place, speaker)
    ]
    return min((front for front in fronts if front is not None), default=None)


def went_in(content: Content, platform: Platform, place: str, speaker: str) -> bool:
    """Whether a note says of a speaker that it went in at a place."""
    where = (content.get("vehicle"), content.get("place"), content.get("what"))
    return where == (platform.name, place, speaker) and str(content.get("verdict")).startswith("goes in")


def _front(world: World, platform: Platform, place: str, content: Content) -> int | None:
    """What was left in front of the seat, at most; None behind a mount that no record tells of."""
    named = {ring.name: ring for ring in world.rings}
    mounts, splits = content.get("mounts", "none"), content["splits"]
    rings: list[Ring | None] = [named.get(name) for name in mounts] if isinstance(mounts, list) else []
    known = tuple(ring for ring in rings if ring is not None)
    if len(known) < len(rings) or not isinstance(splits, dict):
        return None
    # A bead of putty of any thickness holds it no less far out than nothing.
    foams: dict[object, Foam] = {foam.name: foam for foam in world.foams}
    held = Mounting(known, foams.get(content.get("gasket"))).held
    room = platform.door_room(tuple(splits.items()), place, str(content.get("cut", UNCUT)))
    return room["front"] - held
