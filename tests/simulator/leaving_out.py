"""Whoever measures and leaves out what was not as usual: every word is true, and a blank is read as the usual thing."""

from collections.abc import Mapping
from random import Random

from tests.simulator.box_world import World
from tests.simulator.doors.jobs import DoorJob
from tests.simulator.jobs import Job
from tests.simulator.notes import Content
from tests.simulator.regimes import Falsehood, Regime

# What a reading is taken to be made with where it does not say.
USUAL = {"mounts": "none", "loom": "aside", "cut": "nothing"}


def leaves_out(field: str) -> Falsehood:
    """A measuring note without this field, where it says what is not usual; the same where it does not."""

    def told(_dice: Random, _world: World, _job: Job | DoorJob, content: Content) -> Content:
        if content["form"] != "measured" or content.get(field, USUAL[field]) == USUAL[field]:
            return content
        return {key: said for key, said in content.items() if key != field}

    return told


LEFT_OUT: Mapping[str, Falsehood] = {f"{field} left out": leaves_out(field) for field in USUAL}
# A shop in which nobody who measures thinks of the reader: harsher than any, so that there are cases enough.
FORGETFUL = Regime("left out", 1.0, LEFT_OUT)
