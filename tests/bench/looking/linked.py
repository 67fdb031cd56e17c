"""What the notes of a place tie together, so that what is seen in one build says something of another."""

from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.room import Place


def linked(place: Place, builds: set[Build]) -> tuple[set[Build], set[str]]:
    """These builds of a place and all of which its notes say anything together with them, however far around.

    Also the units and the mounts that were tried in any of them: those are the same ones in every build.
    """
    about: dict[str, set[Build]] = {}
    for one in place.evidence.standing:
        things = [one.note.what if isinstance(one.note, Tried) else one.note.id, *(one.stack.key if one.stack else ())]
        for thing in things:
            about.setdefault(thing, set()).update(one.builds)
    found = set(builds)
    while more := {build for of in about.values() if of & found for build in of} - found:
        found |= more
    return found, {thing for thing, of in about.items() if of & found}
