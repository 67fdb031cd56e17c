"""Which builds of a place its notes tie together, so that what is read of one says something of another."""

from bezelbook.kinds.note.record import Tried
from bezelbook.reasoning.builds import Build
from bezelbook.reasoning.room import Place


def linked_builds(place: Place, builds: set[Build]) -> set[Build]:
    """These builds of a place and all of which its notes say anything together with them, however far around."""
    about: dict[str, set[Build]] = {}
    for one in place.evidence.standing:
        thing = one.note.what if isinstance(one.note, Tried) else one.note.id
        about.setdefault(thing, set()).update(one.builds)
    found = set(builds)
    while more := {build for of in about.values() if of & found for build in of} - found:
        found |= more
    return found
